pragma ComponentBehavior: Bound
import QtQuick
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// One line of the entry list: a tick for one who is known, the candidates to choose from for one who may be.
Column {
    id: row

    required property int index
    required property string name
    required property string detail
    required property int band
    required property var candidates
    required property int ticked
    required property bool sent

    spacing: Theme.tight

    // Positioners: a row's height follows what is in it at once.
    Item {
        width: row.width
        height: Math.max(words.height, state.height)
        Column {
            id: words
            anchors.verticalCenter: parent.verticalCenter
            width: row.width - state.width - Theme.gap
            Words {
                width: words.width
                meaning: Words.Strong
                text: row.name
            }
            Words {
                width: words.width
                visible: row.detail.length > 0
                meaning: Words.Caption
                quiet: true
                text: row.detail
            }
        }
        Row {
            id: state
            readonly property color ink: row.band === ArrivalModel.Likely && !row.sent ? Theme.colour.attention : Theme.colour.ink
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            spacing: Theme.tight
            Icon {
                anchors.verticalCenter: parent.verticalCenter
                name: row.sent ? "ready" : row.band === ArrivalModel.Known ? "check"
                    : row.band === ArrivalModel.Likely ? "question" : "plus"
                colour: state.ink
                size: 20
            }
            Words {
                anchors.verticalCenter: parent.verticalCenter
                meaning: Words.Caption
                color: state.ink
                text: row.sent ? qsTr("Goes across") : row.band === ArrivalModel.Known ? qsTr("Known")
                    : row.band === ArrivalModel.Likely ? qsTr("Is it this one?") : qsTr("New here")
                wrapMode: Text.NoWrap
            }
        }
    }
    Repeater {
        model: row.sent ? [] : row.candidates

        AnswerRow {
            required property var modelData
            required property int index
            objectName: "candidate" + index
            width: row.width
            enabled: modelData.mayCross
            text: modelData.name
            detail: !modelData.mayCross ? qsTr("Has not agreed that this history goes to other events: ask the player")
                : [[modelData.detail, modelData.last].filter(part => part.length > 0).join("  ·  "),
                   modelData.like.length > 0 ? qsTr("Alike: %1").arg(modelData.like) : "",
                   modelData.unlike.length > 0 ? qsTr("Differs: %1").arg(modelData.unlike) : ""].filter(part => part.length > 0).join("\n")
            checked: row.ticked === index
            onClicked: ArrivalModel.tick(row.index, row.ticked === index ? -1 : index)
        }
    }
    Rectangle {
        width: row.width
        height: 1
        color: Theme.colour.line
    }
}
