pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// By when the rackets are promised, whether it is a rush, and with how many bags they came.
Card {
    id: card

    required property DropOffDraft draft

    title: qsTr("Ready by")

    Connections {
        target: card.draft
        function onFieldFirst(field) { if (field === "bags") bags.takeFocus(); }
    }
    Binding { target: PromiseModel; property: "watched"; value: card.visible && card.draft.pickedCount > 0 }

    SideBySide {
        Layout.fillWidth: true
        least: 300
        spacing: Theme.room

        ColumnLayout {
            width: parent.columnWidth
            spacing: Theme.gap
            TimeStepper {
                Layout.fillWidth: true
                time: card.draft.readyBy
                day: card.draft.readyDay
                onMoved: minutes => card.draft.moveReady(minutes)
            }
            SideBySide {
                id: row
                Layout.fillWidth: true
                least: 64
                most: 4
                spacing: Theme.tight
                Repeater {
                    model: [1, 2, 4]
                    ActionButton {
                        id: hours
                        required property int modelData
                        width: row.columnWidth
                        leftPadding: Theme.tight
                        rightPadding: Theme.tight
                        kind: ActionButton.Secondary
                        text: qsTr("%1 h").arg(hours.modelData)
                        Accessible.name: qsTr("Ready in %1 h").arg(hours.modelData)
                        onClicked: card.draft.readyIn(60 * hours.modelData)
                    }
                }
                ActionButton {
                    width: parent.columnWidth
                    leftPadding: Theme.tight
                    rightPadding: Theme.tight
                    kind: ActionButton.Quiet
                    text: qsTr("None")
                    Accessible.name: qsTr("No time said")
                    onClicked: card.draft.noReadyTime()
                }
            }
        }
        FigureStepper {
            id: bags
            objectName: "bags"
            width: parent.columnWidth
            label: qsTr("Bags that came with the rackets")
            value: String(card.draft.dropOff["bags"])
            step: "1"
            least: "0"
            most: "9"
            onEdited: value => card.draft.setDropOff("bags", Number(value))
            onMistyped: text => card.draft.mistyped("bags", text)
        }
        ChoiceBar {
            objectName: "rush"
            width: parent.columnWidth
            label: qsTr("Rush")
            value: card.draft.rush
            options: [{ value: 0, text: qsTr("No") }, { value: 1, text: qsTr("Rush") }, { value: 2, text: qsTr("On court") }]
            onChosen: value => card.draft.setDropOff("rush", value)
        }
    }
    // Last in the card: the answer comes while fingers are at the stepper, and nothing above it moves.
    PromiseNotice {
        Layout.fillWidth: true
        promise: PromiseModel
    }
}
