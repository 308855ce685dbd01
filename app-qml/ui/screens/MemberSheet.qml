pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// Somebody of the team: what they do, which languages they speak, what they are good at.
Sheet {
    id: sheet

    property int role: 3
    property bool known: false

    function begin(member) {
        known = member !== null;
        name.text = member?.name ?? "";
        languages.text = member?.languages ?? "";
        skills.text = member?.skills ?? "";
        role = member?.role || 3;
        open();
        if (!known) name.takeFocus();
    }

    title: known ? name.text : qsTr("Add somebody")
    hasChanges: !known && name.text.length > 0

    TextEntry { id: name; objectName: "memberName"; Layout.fillWidth: true; readOnly: sheet.known; label: qsTr("Name") }
    ChoiceBar {
        objectName: "memberRole"
        Layout.fillWidth: true
        label: qsTr("Does")
        value: sheet.role
        options: [{ value: 1, text: qsTr("Head of the room") }, { value: 2, text: qsTr("Desk") }, { value: 3, text: qsTr("Stringer") }]
        onChosen: value => sheet.role = value
    }
    TextEntry { id: languages; objectName: "memberLanguages"; Layout.fillWidth: true; label: qsTr("Languages, such as: en pt") }
    TextEntry { id: skills; objectName: "memberSkills"; Layout.fillWidth: true; label: qsTr("Good at, such as: natural gut, left-handed") }
    ActionButton {
        objectName: "keepMember"
        Layout.fillWidth: true
        enabled: name.text.trim().length > 0
        text: qsTr("Keep")
        onClicked: if (TeamModel.setMember(name.text, sheet.role, languages.text, skills.text, qsTr("%1 is on the team").arg(name.text.trim()))) sheet.close()
    }
}
