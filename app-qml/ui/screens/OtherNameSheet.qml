import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// By what else a player is called: found and recognised by it from then on.
Sheet {
    id: sheet

    required property PersonLinks links
    property int why: 1
    readonly property bool named: (family.text + given.text + own.text).trim().length > 0

    function begin() {
        family.text = given.text = own.text = "";
        why = 1;
        open();
        family.takeFocus();
    }
    function keep() {
        if (!links.addName(family.text, given.text, own.text, why, Settings.stringer, qsTr("Name kept"))) return;
        family.text = given.text = own.text = "";
        close();
    }

    title: qsTr("Another name")
    hasChanges: named
    onDiscarded: family.text = given.text = own.text = ""

    TextEntry {
        id: family
        objectName: "otherFamily"
        Layout.fillWidth: true
        label: qsTr("Family name")
    }
    TextEntry {
        id: given
        objectName: "otherGiven"
        Layout.fillWidth: true
        label: qsTr("Given name")
    }
    TextEntry {
        id: own
        Layout.fillWidth: true
        label: qsTr("Name in the own script")
    }
    PickList {
        objectName: "nameWhy"
        Layout.fillWidth: true
        label: qsTr("Why")
        value: sheet.why
        options: [{ value: 1, text: qsTr("From before") }, { value: 2, text: qsTr("Since a marriage") }, { value: 3, text: qsTr("Short form") },
                  { value: 4, text: qsTr("Another spelling") }]
        onPicked: value => sheet.why = value
    }
    SaidBy { Layout.fillWidth: true }
    ActionButton {
        objectName: "keepName"
        Layout.fillWidth: true
        enabled: sheet.named && Settings.stringer.length > 0
        text: qsTr("Keep")
        onClicked: sheet.keep()
    }
}
