pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Which rackets are handed over; new ones get their mark and model here.
Card {
    id: card

    required property DropOffDraft draft

    title: qsTr("Rackets")
    detail: qsTr("Handed over: %1").arg(card.draft.pickedCount)

    SideBySide {
        id: row
        Layout.fillWidth: true
        least: 190
        most: 4

        Repeater {
            model: card.draft.rackets

            CheckChip {
                id: chip
                required property var modelData
                required property int index
                objectName: "racket" + chip.index
                width: row.columnWidth
                text: chip.modelData.label.length > 0 ? qsTr("Racket %1").arg(chip.modelData.label) : qsTr("Racket without a mark")
                detail: chip.modelData.stage >= 0 ? qsTr("in the room already")
                      : chip.modelData.mains.length > 0
                        ? chip.modelData.mains + " / " + chip.modelData.crosses : chip.modelData.model
                checked: chip.modelData.picked
                enabled: chip.modelData.stage < 0
                onToggled: card.draft.pick(chip.index, checked)
            }
        }
        ActionButton {
            objectName: "addRacket"
            width: parent.columnWidth
            kind: ActionButton.Secondary
            iconName: "plus"
            text: qsTr("Add a racket")
            onClicked: card.draft.addRacket()
        }
    }
    Repeater {
        model: card.draft.asWhole ? card.draft.rackets : []

        SideBySide {
            id: fresh
            required property var modelData
            required property int index
            Layout.fillWidth: true
            visible: fresh.modelData.made && fresh.modelData.picked
            least: 200
            most: 4

            TextEntry {
                width: parent.columnWidth
                label: qsTr("Mark on racket %1").arg(fresh.index + 1)
                text: fresh.modelData.fields.label
                onEdited: text => card.draft.setRacket(fresh.index, "label", text)
            }
            TextEntry {
                width: parent.columnWidth
                label: qsTr("Maker")
                text: fresh.modelData.fields.maker
                onEdited: text => card.draft.setRacket(fresh.index, "maker", text)
            }
            TextEntry {
                width: parent.columnWidth
                label: qsTr("Model")
                text: fresh.modelData.fields.model
                onEdited: text => card.draft.setRacket(fresh.index, "model", text)
            }
            ActionButton {
                width: parent.columnWidth
                visible: card.draft.rackets.length > 1
                kind: ActionButton.Quiet
                text: qsTr("Take racket %1 out").arg(fresh.modelData.label)
                onClicked: card.draft.removeRacket(fresh.index)
            }
        }
    }
}
