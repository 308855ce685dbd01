pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// Who comes when.
Sheet {
    id: sheet

    property string member
    property int days: 0
    readonly property string wrongFrom: TeamModel.wrongTime(from.text)
    readonly property string wrongUntil: TeamModel.wrongTime(until.text)

    function begin() {
        days = 0;
        from.text = "8:00";
        until.text = "16:00";
        open();
    }

    title: qsTr("Plan a shift")

    PickList {
        objectName: "shiftMember"
        Layout.fillWidth: true
        label: qsTr("Who")
        options: Array.from(TeamModel.members).map(one => ({ value: one.id, text: one.name }))
        value: sheet.member
        onPicked: value => sheet.member = value
    }
    PickList {
        objectName: "shiftDay"
        Layout.fillWidth: true
        label: qsTr("Day")
        options: [...Array(15).keys()].map(days => ({ value: days, text: days === 0 ? qsTr("Today") : TeamModel.dayIn(days) }))
        value: sheet.days
        onPicked: value => sheet.days = value
    }
    TextEntry { id: from; objectName: "shiftFrom"; Layout.fillWidth: true; label: qsTr("From"); error: sheet.wrongFrom }
    TextEntry {
        id: until
        objectName: "shiftUntil"
        Layout.fillWidth: true
        label: qsTr("Until")
        hint: qsTr("A time that is earlier than the beginning is on the next day.")
        error: sheet.wrongUntil
    }
    ActionButton {
        objectName: "keepShift"
        Layout.fillWidth: true
        enabled: sheet.member.length > 0 && sheet.wrongFrom.length === 0 && sheet.wrongUntil.length === 0 && from.text.length > 0 && until.text.length > 0
        text: qsTr("Keep")
        onClicked: if (TeamModel.addShift(sheet.member, sheet.days, from.text, until.text, qsTr("Shift planned"))) sheet.close()
    }
}
