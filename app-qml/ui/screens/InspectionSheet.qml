pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// A frame under inspection: the drawing, what was found on it in words, and what is noted next.
Sheet {
    id: sheet

    readonly property var findings: InspectionModel.findings
    property bool noting: false
    readonly property bool anonymous: Settings.stringer.length === 0
    readonly property string about: InspectionModel.tag.length > 0
        ? qsTr("Tag %1, %2").arg(InspectionModel.tag).arg(InspectionModel.player) : InspectionModel.player

    title: qsTr("Frame: %1").arg(about)
    width: narrow ? (parent?.width ?? 0) : Math.min(1060, (parent?.width ?? 0) - 2 * Theme.page)
    hasChanges: InspectionModel.open && InspectionModel.begun
    onDiscarded: InspectionModel.clearForm()
    onAboutToShow: noting = false
    onFindingsChanged: noting = false

    Words {
        Layout.fillWidth: true
        visible: text.length > 0
        quiet: true
        text: InspectionModel.racket.length > 0 ? qsTr("Racket %1").arg(InspectionModel.racket) : ""
    }
    Notice {
        objectName: "frameCaution"
        Layout.fillWidth: true
        visible: InspectionModel.caution.length > 0
        kind: Notice.Danger
        text: InspectionModel.caution
        actionText: qsTr("I see")
        onActed: InspectionModel.cautionRead()
    }
    Notice {
        Layout.fillWidth: true
        visible: !InspectionModel.open
        text: qsTr("This racket is past its inspection. Step it back with a reason to note something new.")
    }
    // The name stands beside everything that is noted here; without one the desk cannot say who took an answer.
    TextEntry {
        objectName: "inspector"
        Layout.fillWidth: true
        visible: sheet.anonymous || field.activeFocus
        label: qsTr("Your name")
        hint: qsTr("It stands beside what you find and the answers that you take.")
        field.onEditingFinished: Settings.stringer = text
    }
    ActionButton {
        objectName: "sound"
        Layout.fillWidth: true
        visible: InspectionModel.canBeSound
        iconName: "check"
        text: sheet.findings.length > 0 ? qsTr("Nothing new on the frame") : qsTr("The frame is sound")
        onClicked: if (InspectionModel.sound(qsTr("%1: inspected").arg(sheet.about))) sheet.close()
    }
    SideBySide {
        id: halves
        Layout.fillWidth: true
        least: 330
        spacing: Theme.room

        Item {
            width: halves.columns > 1 ? 300 : halves.columnWidth
            implicitHeight: drawing.implicitHeight + 2 * Theme.tight
            height: implicitHeight
            FrameDrawing {
                id: drawing
                objectName: "drawing"
                y: Theme.tight
                anchors.horizontalCenter: parent.horizontalCenter
                width: halves.columns > 1 ? 280 : 240
                height: implicitHeight
                taking: InspectionModel.open
            }
        }
        Column {
            id: words
            width: halves.columns > 1 ? halves.width - 300 - halves.spacing : halves.columnWidth
            spacing: Theme.gap

            // Beside the drawing, or right below it, so that whoever taps a place sees what comes next.
            Words {
                width: words.width
                visible: form.visible
                meaning: Words.Title
                text: qsTr("Note a finding")
            }
            FindingForm {
                id: form
                width: words.width
                visible: InspectionModel.open && (sheet.noting || InspectionModel.begun || sheet.findings.length === 0)
            }
            ActionButton {
                objectName: "another"
                width: words.width
                visible: InspectionModel.open && !form.visible
                kind: ActionButton.Secondary
                iconName: "plus"
                text: qsTr("Note another finding")
                onClicked: sheet.noting = true
            }
            Words {
                width: words.width
                visible: sheet.findings.length > 0
                meaning: Words.Title
                text: qsTr("Found on this frame")
            }
            Repeater {
                model: sheet.findings
                FindingCard {
                    required property var modelData
                    required property int index
                    objectName: "finding" + modelData.number
                    width: words.width
                    height: implicitHeight
                    finding: modelData
                    onAsked: question.ask(modelData.id)
                    onGoneOn: override.ask(modelData.id, modelData.text)
                    onMended: InspectionModel.mend(modelData.id, Settings.stringer, qsTr("Put right: %1").arg(modelData.text))
                }
            }
            Words {
                width: words.width
                visible: InspectionModel.history.length > 0
                meaning: Words.Title
                text: qsTr("Put right earlier")
            }
            Repeater {
                model: InspectionModel.history
                Column {
                    id: past
                    required property var modelData
                    width: words.width
                    spacing: 2
                    Words {
                        width: past.width
                        text: past.modelData.text
                    }
                    Words {
                        width: past.width
                        meaning: Words.Caption
                        quiet: true
                        text: past.modelData.detail
                    }
                }
            }
        }
    }
    FrameQuestionScreen { id: question }
    GoOnSheet { id: override }
}
