pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The room's lists, changed where everybody sees them: the steps at the bench and the list of the check.
ScrollColumn {
    id: view

    readonly property var steps: ListsModel.steps
    readonly property var removed: ListsModel.removed
    signal addAsked()
    signal stepAsked(var step)

    spacing: Theme.room

    ChoiceBar {
        objectName: "whichList"
        Layout.fillWidth: true
        Layout.maximumWidth: 640
        value: ListsModel.list
        options: [{ value: 1, text: qsTr("Steps at the bench") }, { value: 2, text: qsTr("List of the check") }]
        Accessible.name: qsTr("Which list")
        onChosen: value => ListsModel.list = value
    }
    Card {
        Layout.fillWidth: true
        title: ListsModel.list === 2 ? qsTr("List of the check") : qsTr("Steps at the bench")
        detail: ListsModel.usual ? qsTr("Common practice. What you change holds for every tablet of this event; the makers’ instructions come before it.")
                                 : qsTr("As this room has it. It holds for every tablet of this event; the makers’ instructions come before it.")
        spacing: 0

        Repeater {
            // The rows stay while one is moved, and so does the focus.
            model: view.steps.length

            // Positioners: the buttons lie beside the words, or below them on a phone.
            Column {
                id: row
                required property int index
                readonly property var step: view.steps[row.index] ?? { name: "", text: "", own: false }
                Layout.fillWidth: true

                Flow {
                    width: row.width
                    ListRow {
                        objectName: "step" + row.index
                        width: view.width < Theme.phoneWidth ? row.width : row.width - buttons.width
                        leftPadding: 0
                        mostLines: 8
                        opens: false
                        flat: true
                        text: qsTr("%1. %2").arg(row.index + 1).arg(row.step.text)
                        detail: row.step.own ? qsTr("added by this room") : ""
                        Accessible.description: qsTr("Tap to change the words")
                        onClicked: view.stepAsked(row.step)
                    }
                    Row {
                        id: buttons
                        topPadding: view.width < Theme.phoneWidth ? 0 : Theme.tight
                        spacing: Theme.tight
                        IconAction {
                            objectName: "up" + row.index
                            framed: true
                            iconName: "up"
                            enabled: row.index > 0
                            text: qsTr("Up: %1").arg(row.step.text)
                            onClicked: ListsModel.move(row.step.name, -1)
                        }
                        IconAction {
                            objectName: "down" + row.index
                            framed: true
                            iconName: "down"
                            enabled: row.index < view.steps.length - 1
                            text: qsTr("Down: %1").arg(row.step.text)
                            onClicked: ListsModel.move(row.step.name, 1)
                        }
                        IconAction {
                            objectName: "remove" + row.index
                            framed: true
                            iconName: "close"
                            text: qsTr("Take off: %1").arg(row.step.text)
                            onClicked: ListsModel.remove(row.step.name, qsTr("Taken off the list"))
                        }
                    }
                }
                Item { width: 1; height: Theme.tight }
                Rectangle {
                    width: row.width
                    height: 1
                    color: Theme.colour.line
                }
            }
        }
        Words {
            Layout.fillWidth: true
            visible: view.steps.length === 0
            quiet: true
            text: qsTr("The list is empty.")
        }
        SideBySide {
            id: ways
            Layout.fillWidth: true
            Layout.topMargin: Theme.gap
            least: 220
            ActionButton {
                objectName: "addStep"
                width: ways.columnWidth
                kind: ActionButton.Secondary
                iconName: "plus"
                text: qsTr("Add a step")
                onClicked: view.addAsked()
            }
            ActionButton {
                objectName: "usualList"
                width: ways.columnWidth
                kind: ActionButton.Quiet
                iconName: "undo"
                enabled: !ListsModel.usual
                text: qsTr("Back to the usual list")
                onClicked: ListsModel.backToUsual(qsTr("The usual list again"))
            }
        }
    }
    Card {
        Layout.fillWidth: true
        visible: view.removed.length > 0
        title: qsTr("Taken off")
        spacing: 0

        Repeater {
            model: view.removed
            ListRow {
                required property var modelData
                objectName: "putBack"
                Layout.fillWidth: true
                leftPadding: 0
                mostLines: 8
                opens: false
                iconName: "plus"
                text: modelData.text
                detail: qsTr("Tap to put it on again")
                onClicked: ListsModel.putBack(modelData.name, qsTr("On the list again"))
            }
        }
    }
}
