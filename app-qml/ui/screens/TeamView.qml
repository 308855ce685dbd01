pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Who is here, what they can do, when they come, and whose days grow too long.
ScrollColumn {
    id: view

    readonly property var roles: ["", qsTr("Head of the room"), qsTr("Desk"), qsTr("Stringer"), qsTr("Reader")]
    signal memberAsked(var member)
    signal shiftAsked()

    spacing: Theme.room

    Repeater {
        model: TeamModel.warnings

        Notice {
            required property var modelData
            objectName: "shiftWarning"
            Layout.fillWidth: true
            kind: Notice.Attention
            title: modelData.rest ? qsTr("%1 rests only %2 before %3").arg(modelData.name).arg(modelData.length).arg(modelData.day)
                                  : qsTr("%1 works %2 on %3").arg(modelData.name).arg(modelData.length).arg(modelData.day)
            text: modelData.rest ? qsTr("Eleven hours between two days are usual; local law and contracts say what holds.")
                                 : qsTr("Tired hands make uneven beds. Local law and contracts say how long a day may be.")
        }
    }
    SideBySide {
        id: sides
        Layout.fillWidth: true
        least: 360
        spacing: Theme.room

        Card {
            width: sides.columnWidth
            title: qsTr("Team")
            spacing: 0

            Repeater {
                model: TeamModel.members

                ListRow {
                    required property var modelData
                    objectName: "member"
                    Layout.fillWidth: true
                    text: modelData.name
                    detail: Listing.dotted([view.roles[modelData.role] ?? "", modelData.languages, modelData.skills])
                    endText: modelData.here ? qsTr("here until %1").arg(modelData.until) : ""
                    onClicked: view.memberAsked(modelData)
                }
            }
            ActionButton {
                objectName: "addMember"
                Layout.fillWidth: true
                Layout.topMargin: Theme.gap
                kind: ActionButton.Secondary
                iconName: "plus"
                text: qsTr("Add somebody")
                onClicked: view.memberAsked(null)
            }
        }
        Card {
            width: sides.columnWidth
            title: qsTr("Shifts from today on")
            spacing: 0

            Repeater {
                model: TeamModel.shifts

                RowLayout {
                    id: shift
                    required property var modelData
                    Layout.fillWidth: true
                    spacing: Theme.gap

                    ColumnLayout {
                        Layout.fillWidth: true
                        spacing: 0
                        Words { Layout.fillWidth: true; meaning: Words.Strong; text: shift.modelData.name }
                        Words {
                            Layout.fillWidth: true
                            meaning: Words.Caption
                            quiet: true
                            text: qsTr("%1, %2 to %3").arg(shift.modelData.day).arg(shift.modelData.from).arg(shift.modelData.until)
                        }
                    }
                    IconAction {
                        objectName: "removeShift"
                        iconName: "close"
                        text: qsTr("Take the shift of %1 off the plan").arg(shift.modelData.name)
                        onClicked: TeamModel.removeShift(shift.modelData.id, qsTr("Shift taken off the plan"))
                    }
                }
            }
            Words {
                Layout.fillWidth: true
                visible: TeamModel.shifts.length === 0
                quiet: true
                text: qsTr("No shift is planned.")
            }
            ActionButton {
                objectName: "addShift"
                Layout.fillWidth: true
                Layout.topMargin: Theme.gap
                kind: ActionButton.Secondary
                iconName: "plus"
                enabled: TeamModel.members.length > 0
                text: qsTr("Plan a shift")
                onClicked: view.shiftAsked()
            }
        }
    }
}
