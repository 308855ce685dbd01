pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// A machine that is new to the room.
Sheet {
    id: sheet

    property int machineKind: 1
    readonly property string wrongMost: MachinesModel.wrongTension(most.text)

    function begin() {
        for (const entry of [name, maker, most, prestretch, every]) entry.text = "";
        machineKind = 1;
        open();
        name.takeFocus();
    }

    title: qsTr("New machine")
    hasChanges: name.text.length + maker.text.length + most.text.length + prestretch.text.length + every.text.length > 0

    TextEntry { id: name; objectName: "machineName"; Layout.fillWidth: true; label: qsTr("What the room calls it") }
    ChoiceBar {
        objectName: "machineKind"
        Layout.fillWidth: true
        label: qsTr("How it pulls")
        value: sheet.machineKind
        options: [{ value: 1, text: qsTr("Constant-pull") }, { value: 2, text: qsTr("Lockout") }, { value: 3, text: qsTr("Drop-weight") }]
        onChosen: value => sheet.machineKind = value
    }
    TextEntry { id: maker; objectName: "machineMaker"; Layout.fillWidth: true; label: qsTr("Maker and model") }
    TextEntry {
        id: most
        objectName: "machineMost"
        Layout.fillWidth: true
        label: qsTr("Highest tension that its maker allows, in kg")
        error: sheet.wrongMost
        inputMethodHints: Qt.ImhFormattedNumbersOnly
    }
    TextEntry { id: prestretch; objectName: "machinePrestretch"; Layout.fillWidth: true; label: qsTr("Pre-stretch that can be set, per cent: 0 10 20") }
    TextEntry {
        id: every
        objectName: "machineEvery"
        Layout.fillWidth: true
        label: qsTr("Clean the clamps after so many rackets (empty: every evening)")
        inputMethodHints: Qt.ImhDigitsOnly
    }
    ActionButton {
        objectName: "keepMachine"
        Layout.fillWidth: true
        enabled: name.text.trim().length > 0 && sheet.wrongMost.length === 0
        text: qsTr("Keep")
        onClicked: {
            if (MachinesModel.add({ name: name.text, kind: sheet.machineKind, maker: maker.text, most: most.text, prestretch: prestretch.text,
                                    every: every.text }, qsTr("Machine %1 listed").arg(name.text.trim())))
                sheet.close();
        }
    }
}
