import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// Somebody answers by name for a racket that goes on without the player's word, or against it.
Sheet {
    id: sheet

    property string finding
    readonly property var asking: InspectionModel.asking
    readonly property string meanwhile: asking.meanwhile ?? ""
    readonly property bool complete: meanwhile.length === 0 && by.text.trim().length > 0 && why.text.trim().length > 0

    function ask(id, text) {
        if (!InspectionModel.ask(id)) return;
        finding = id;
        about.text = text;
        by.text = Settings.stringer;
        why.text = "";
        open();
    }

    title: qsTr("Go on without the player's word")
    hasChanges: why.text.trim().length > 0
    onDiscarded: why.text = ""

    Words {
        id: about
        Layout.fillWidth: true
        meaning: Words.Strong
    }
    Notice {
        Layout.fillWidth: true
        objectName: "goOnNotice"
        kind: Notice.Attention
        title: sheet.meanwhile.length > 0 ? qsTr("This was answered elsewhere meanwhile") : ""
        text: sheet.meanwhile.length > 0 ? sheet.meanwhile : qsTr("Your name and your reason stay beside this racket. A damaged frame can break under tension; the maker's advice and the rules of the place come first.")
    }
    TextEntry {
        id: by
        objectName: "goOnBy"
        Layout.fillWidth: true
        label: qsTr("Who answers for it")
    }
    TextEntry {
        id: why
        objectName: "goOnWhy"
        Layout.fillWidth: true
        label: qsTr("Reason")
    }
    ActionButton {
        objectName: "goOnYes"
        Layout.fillWidth: true
        kind: ActionButton.Danger
        enabled: sheet.complete
        text: sheet.meanwhile.length > 0 ? qsTr("Nothing is to be answered here now") : sheet.complete ? qsTr("I answer for it") : qsTr("Give a name and a reason")
        onClicked: {
            if (!InspectionModel.letGoOn(sheet.finding, by.text, why.text, qsTr("Going on: %1").arg(about.text))) return;
            why.text = "";
            sheet.close();
        }
    }
}
