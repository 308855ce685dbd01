import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// One line of an account: taken back by one of the opposite amount, with a reason. Nothing is ever rubbed out.
Sheet {
    id: sheet

    required property AccountModel account
    property var line: ({})

    function begin(one) {
        line = one;
        reason.text = "";
        title = MoneyWords.line(one);
        open();
    }

    hasChanges: reason.text.trim().length > 0
    onOpened: reason.takeFocus()

    SumRow {
        Layout.fillWidth: true
        strong: true
        text: Listing.commas([sheet.line.note ?? "", sheet.line.by ?? "", sheet.line.at ?? ""])
        amount: sheet.line.amount ?? ""
    }
    Notice {
        Layout.fillWidth: true
        visible: sheet.line.open ?? false
        kind: Notice.Attention
        title: qsTr("Two tablets charged different amounts")
        text: qsTr("Close that under Questions first.")
    }
    TextEntry {
        id: reason
        objectName: "reverseReason"
        Layout.fillWidth: true
        label: qsTr("Reason")
        hint: qsTr("The line stays, and one of the opposite amount is written beside it.")
    }
    ActionButton {
        objectName: "reverse"
        Layout.fillWidth: true
        kind: ActionButton.Danger
        enabled: sheet.hasChanges && !(sheet.line.open ?? false)
        text: qsTr("Reverse this line")
        onClicked: {
            const why = reason.text;
            const say = qsTr("Reversed: %1").arg(sheet.title);
            sheet.close();
            sheet.account.reverse(sheet.line.id, why, say);
        }
    }
}
