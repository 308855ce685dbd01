pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// Takes a part off what one job costs; everybody who reads the account later sees why.
Sheet {
    id: sheet

    required property AccountModel account
    property string job
    readonly property bool reasonGiven: reason.text.trim().length > 0

    function begin(id, name) {
        job = id;
        title = name.length > 0 ? qsTr("Discount: %1").arg(name) : qsTr("Discount");
        reason.text = "";
        open();
    }

    hasChanges: reasonGiven
    onOpened: reason.takeFocus()

    TextEntry {
        id: reason
        objectName: "discountReason"
        Layout.fillWidth: true
        label: qsTr("Reason")
        hint: qsTr("Say why; then choose how much.")
    }
    Repeater {
        model: [{ share: 100, text: qsTr("A tenth off") }, { share: 200, text: qsTr("A fifth off") },
                { share: 1000, text: qsTr("Free of charge") }]

        ActionButton {
            required property var modelData
            objectName: "off" + modelData.share
            Layout.fillWidth: true
            kind: ActionButton.Secondary
            enabled: sheet.reasonGiven
            text: modelData.text
            onClicked: {
                const say = modelData.text;
                sheet.close();
                sheet.account.discount(sheet.job, modelData.share, reason.text, say);
            }
        }
    }
}
