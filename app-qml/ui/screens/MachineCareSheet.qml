pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// What was measured at a machine, or why it can't be used.
Sheet {
    id: sheet

    property var machine: null
    readonly property string wrongAsked: MachinesModel.wrongTension(asked.text)
    readonly property string wrongRead: MachinesModel.wrongTension(read.text)

    function begin(one) {
        machine = one;
        for (const entry of [asked, read, reason]) entry.text = "";
        open();
    }

    function calibrate() { return MachinesModel.calibrate(sheet.machine.id, asked.text, read.text, qsTr("Calibration kept")); }

    title: machine ? machine.name : ""
    hasChanges: asked.text.length + read.text.length + reason.text.length > 0

    Words { Layout.fillWidth: true; meaning: Words.Strong; text: qsTr("Calibration") }
    TextEntry {
        id: asked
        objectName: "asked"
        Layout.fillWidth: true
        label: qsTr("Tension that was set, in kg")
        error: sheet.wrongAsked
        inputMethodHints: Qt.ImhFormattedNumbersOnly
    }
    TextEntry {
        id: read
        objectName: "read"
        Layout.fillWidth: true
        label: qsTr("What the gauge showed, in kg")
        hint: qsTr("Hold the gauge as its maker says; eyes protected while it is under tension.")
        error: sheet.wrongRead
        inputMethodHints: Qt.ImhFormattedNumbersOnly
    }
    ActionButton {
        id: keep
        objectName: "keepCalibration"
        Layout.fillWidth: true
        enabled: asked.text.trim().length > 0 && read.text.trim().length > 0 && sheet.wrongAsked.length === 0 && sheet.wrongRead.length === 0
        text: qsTr("Keep the calibration")
        onClicked: if (sheet.calibrate()) sheet.close()
    }
    ActionButton {
        objectName: "keepAndAnother"
        Layout.fillWidth: true
        kind: ActionButton.Secondary
        enabled: keep.enabled
        text: qsTr("Keep it, and enter another pull")
        onClicked: if (sheet.calibrate()) {
            read.text = "";
            read.takeFocus();
        }
    }
    Words { Layout.fillWidth: true; meaning: Words.Strong; text: qsTr("Out of order") }
    TextEntry { id: reason; objectName: "reason"; Layout.fillWidth: true; label: qsTr("What is wrong with it") }
    ActionButton {
        objectName: "breakDown"
        Layout.fillWidth: true
        kind: ActionButton.Danger
        enabled: reason.text.trim().length > 0
        text: qsTr("Take it out of order")
        onClicked: if (MachinesModel.breakDown(sheet.machine.id, reason.text, qsTr("%1 is out of order").arg(sheet.machine.name))) sheet.close()
    }
}
