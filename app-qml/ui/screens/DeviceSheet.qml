pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// One tablet of the room: its name, its role, and shutting it out.
Sheet {
    id: sheet
    objectName: "deviceSheet"

    property var device: ({ key: "", name: "", role: 0, revoked: "", self: false })
    property int role: 0
    property bool sure: false
    readonly property bool out: device.revoked.length > 0
    readonly property bool renamed: name.text.trim().length > 0 && name.text.trim() !== device.name

    function begin(which) {
        sheet.device = which;
        sheet.role = which.role;
        sheet.sure = false;
        name.text = which.name;
        sheet.open();
    }

    title: device.name

    Words {
        Layout.fillWidth: true
        visible: sheet.out
        text: qsTr("Shut out since %1. It comes in again with a new code; what it wrote stays.").arg(sheet.device.revoked)
    }
    TextEntry {
        id: name
        objectName: "deviceName"
        Layout.fillWidth: true
        label: qsTr("Name")
    }
    ChoiceBar {
        objectName: "deviceRole"
        Layout.fillWidth: true
        label: qsTr("Its role")
        value: sheet.role
        options: [
            { value: ExchangeModel.Head, text: qsTr("Head") }, { value: ExchangeModel.Desk, text: qsTr("Desk") },
            { value: ExchangeModel.Stringer, text: qsTr("Stringer") }, { value: ExchangeModel.Reader, text: qsTr("Reader") }
        ]
        onChosen: value => sheet.role = value
    }
    Words {
        Layout.fillWidth: true
        quiet: true
        text: ["", qsTr("May do everything, invite tablets and shut them out."),
               qsTr("Takes rackets in and hands them out, keeps money, stock and plans. Does not change team, prices or lists of steps."),
               qsTr("Strings, checks and takes rackets in. Does not change money, stock, plans or the event."),
               qsTr("Sees everything that may come to this room, changes nothing.")][sheet.role] ?? ""
    }
    ActionButton {
        objectName: "saveDevice"
        Layout.fillWidth: true
        enabled: sheet.renamed || sheet.role !== sheet.device.role
        text: qsTr("Save")
        onClicked: {
            if (sheet.renamed) DevicesModel.rename(sheet.device.key, name.text);
            if (sheet.role !== sheet.device.role) DevicesModel.setRole(sheet.device.key, sheet.role);
            sheet.close();
        }
    }
    ActionButton {
        objectName: "shutOut"
        Layout.fillWidth: true
        visible: !sheet.out && !sheet.device.self
        kind: sheet.sure ? ActionButton.Danger : ActionButton.Quiet
        text: sheet.sure ? qsTr("Yes, shut it out now") : qsTr("Shut it out: it is lost or not ours")
        onClicked: {
            if (!sheet.sure) {
                sheet.sure = true;
                return;
            }
            DevicesModel.revoke(sheet.device.key);
            sheet.close();
        }
    }
}
