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

    Binding { target: PromiseModel; property: "watched"; value: card.visible && card.draft.pickedCount > 0 }

    Notice {
        objectName: "promise"
        Layout.fillWidth: true
        visible: PromiseModel.earliest.length > 0 || PromiseModel.answered
        kind: !PromiseModel.answered ? Notice.Info : PromiseModel.canBeKept ? Notice.Agreed : Notice.Attention
        title: !PromiseModel.answered ? qsTr("The room can promise %1").arg(PromiseModel.earliest)
             : PromiseModel.canBeKept ? qsTr("This time can be kept")
             : PromiseModel.earliest.length > 0 ? qsTr("This time can’t be kept with certainty. The room can promise %1").arg(PromiseModel.earliest)
             : qsTr("This time can’t be kept, and no shift has room")
        text: !PromiseModel.answered ? qsTr("Estimate: %1 of such promises are kept, by the queue, the shifts and how long rackets took so far.").arg(PromiseModel.confidence)
            : PromiseModel.canBeKept ? qsTr("Estimate: %1.").arg(PromiseModel.chance)
            : (PromiseModel.impossible ? qsTr("Not even before all that waits.") : qsTr("In its turn: %1.").arg(PromiseModel.chance))
              + (PromiseModel.mustMove.length > 0 ? "\n" + qsTr("For it would have to give way:") + "\n" + Array.from(PromiseModel.mustMove).join("\n") : "")
        actionText: PromiseModel.earliest.length > 0 && (!PromiseModel.answered || !PromiseModel.canBeKept) ? qsTr("Take %1").arg(PromiseModel.earliest) : ""
        onActed: PromiseModel.takeEarliest()
    }
    Words {
        objectName: "promiseFault"
        Layout.fillWidth: true
        visible: text.length > 0
        meaning: Words.Caption
        quiet: true
        text: PromiseModel.fault.length > 0 ? qsTr("No time can be reckoned: %1").arg(PromiseModel.fault) : ""
    }
    SideBySide {
        Layout.fillWidth: true
        least: 300
        spacing: Theme.room

        ColumnLayout {
            width: parent.columnWidth
            spacing: Theme.gap
            RowLayout {
                Layout.fillWidth: true
                spacing: Theme.tight
                IconAction {
                    Layout.preferredWidth: 64
                    Layout.preferredHeight: 64
                    framed: true
                    iconName: "minus"
                    text: qsTr("A quarter of an hour sooner")
                    autoRepeat: true
                    enabled: card.draft.readyBy.length > 0
                    onClicked: card.draft.moveReady(-15)
                }
                ColumnLayout {
                    Layout.fillWidth: true
                    spacing: 0
                    Words {
                        Layout.fillWidth: true
                        horizontalAlignment: Text.AlignHCenter
                        meaning: Words.Heading
                        text: card.draft.readyBy.length > 0 ? card.draft.readyBy : qsTr("No time")
                    }
                    Words {
                        Layout.fillWidth: true
                        visible: card.draft.readyDay.length > 0
                        horizontalAlignment: Text.AlignHCenter
                        meaning: Words.Caption
                        quiet: true
                        text: card.draft.readyDay
                    }
                }
                IconAction {
                    Layout.preferredWidth: 64
                    Layout.preferredHeight: 64
                    framed: true
                    iconName: "plus"
                    text: qsTr("A quarter of an hour later")
                    autoRepeat: true
                    onClicked: card.draft.moveReady(15)
                }
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
            objectName: "bags"
            width: parent.columnWidth
            label: qsTr("Bags that came with the rackets")
            value: String(card.draft.dropOff["bags"])
            step: "1"
            least: "0"
            most: "9"
            onEdited: value => card.draft.setDropOff("bags", Number(value))
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
}
