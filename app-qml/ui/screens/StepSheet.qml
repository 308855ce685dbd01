pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// The words of one step, or of a new one.
Sheet {
    id: sheet

    property var step: null
    property bool tried: false
    readonly property string wrong: ListsModel.wrongWords(step?.name ?? "", words.text)

    function begin(one) {
        step = one;
        words.text = one?.text ?? "";
        tried = false;
        open();
        words.takeFocus();
    }
    function keep() {
        tried = true;
        if (wrong.length > 0) return;
        if (step === null ? ListsModel.add(words.text, qsTr("Step added")) : words.text.trim() === step.text
                          || ListsModel.reword(step.name, words.text, qsTr("Words changed"))) {
            words.text = step?.text ?? "";
            close();
        }
    }

    title: step === null ? qsTr("New step") : qsTr("Words of the step")
    hasChanges: words.text !== (step?.text ?? "")
    onDiscarded: words.text = step?.text ?? ""

    TextEntry {
        id: words
        objectName: "stepWords"
        Layout.fillWidth: true
        label: qsTr("What is to be done")
        hint: sheet.step !== null && !sheet.step.own ? qsTr("Left empty, the usual words come back.") : ""
        // Nobody is told off for what is not written yet.
        error: sheet.tried || text.trim().length > 0 ? sheet.wrong : ""
        onAccepted: sheet.keep()
    }
    ActionButton {
        objectName: "keepStep"
        Layout.fillWidth: true
        text: qsTr("Keep")
        onClicked: sheet.keep()
    }
}
