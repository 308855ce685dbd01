pragma ComponentBehavior: Bound
import QtQuick
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// One line of the entry list: a tick for one who is known; side by side with whoever it may be for one who is not.
Column {
    id: row

    required property int index
    required property string name
    required property string detail
    required property int band
    required property var candidates
    required property int ticked
    required property bool sent
    required property string came
    required property bool asksForLink
    required property var facts

    readonly property bool asks: band === ArrivalModel.Likely && !sent
    // Wide enough for the line of the list and whoever it may be side by side.
    readonly property bool beside: width >= 640

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
                visible: row.detail.length > 0 && !row.asks
                meaning: Words.Caption
                quiet: true
                text: row.detail
            }
            Words {
                width: words.width
                visible: row.came.length > 0
                meaning: Words.Caption
                text: row.came
            }
        }
        Row {
            id: state
            readonly property color ink: row.asks ? Theme.colour.attention : Theme.colour.ink
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
                text: row.sent ? qsTr("Both have it") : row.band === ArrivalModel.Known ? qsTr("Known")
                    : row.band === ArrivalModel.Likely ? qsTr("Is it this one?") : qsTr("New here")
                wrapMode: Text.NoWrap
            }
        }
    }
    FactsBeside {
        objectName: "listFacts"
        width: row.width
        visible: row.asks && !row.beside
        here: row.facts
    }
    Repeater {
        model: row.sent ? [] : row.candidates

        CandidateRow {
            id: answer
            required property var modelData
            required property int index
            readonly property bool none: row.asksForLink && index === 0
            objectName: "candidate" + index
            width: row.width
            enabled: none || modelData.mayCross
            candidate: modelData
            compared: row.asks && !none
            sure: row.band === ArrivalModel.Known
            more: FactsBeside {
                width: parent?.width ?? 0
                visible: answer.compared
                list: row.facts
                here: answer.modelData.facts ?? {}
                wide: row.beside
                ink: answer.checked ? Theme.colour.onChosen : Theme.colour.ink
                otherInk: answer.checked ? Theme.colour.onChosen : Theme.colour.attention
                quietInk: answer.checked ? Theme.colour.onChosen : Theme.colour.quietInk
            }
            heading: !row.asksForLink ? "" : none ? qsTr("None of these: the room's %1 is somebody else").arg(modelData.name) : ""
            about: none ? "" : !modelData.mayCross ? qsTr("Has not agreed that this history goes to other events: ask the player") : modelData.room
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
