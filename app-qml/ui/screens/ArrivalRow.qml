pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// One line of the entry list: a tick for one who is known, the candidates to choose from for one who may be.
ColumnLayout {
    id: row

    required property int index
    required property string name
    required property string detail
    required property int band
    required property var candidates
    required property int ticked
    required property bool sent

    spacing: Theme.tight

    RowLayout {
        spacing: Theme.gap
        ColumnLayout {
            Layout.fillWidth: true
            spacing: 0
            Words {
                Layout.fillWidth: true
                meaning: Words.Strong
                text: row.name
            }
            Words {
                Layout.fillWidth: true
                visible: row.detail.length > 0
                meaning: Words.Caption
                quiet: true
                text: row.detail
            }
        }
        Icon {
            name: row.sent ? "ready" : row.band === ArrivalModel.Known ? "check"
                : row.band === ArrivalModel.Likely ? "question" : "plus"
            colour: row.band === ArrivalModel.Likely && !row.sent ? Theme.colour.attention : Theme.colour.ink
            size: 20
        }
        Words {
            meaning: Words.Caption
            color: row.band === ArrivalModel.Likely && !row.sent ? Theme.colour.attention : Theme.colour.ink
            text: row.sent ? qsTr("Goes across") : row.band === ArrivalModel.Known ? qsTr("Known")
                : row.band === ArrivalModel.Likely ? qsTr("Is it this one?") : qsTr("New here")
            wrapMode: Text.NoWrap
        }
    }
    Repeater {
        model: row.sent ? [] : row.candidates

        AnswerRow {
            required property var modelData
            required property int index
            objectName: "candidate" + index
            Layout.fillWidth: true
            enabled: modelData.mayCross
            text: modelData.name
            detail: !modelData.mayCross ? qsTr("Has not agreed that this history goes to other events: ask the player")
                : [modelData.detail, modelData.last].filter(part => part.length > 0).join("  ·  ")
            checked: row.ticked === index
            onClicked: ArrivalModel.tick(row.index, row.ticked === index ? -1 : index)
        }
    }
    Rectangle {
        Layout.fillWidth: true
        implicitHeight: 1
        color: Theme.colour.line
    }
}
