pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// The answers to an open question, each with who said it, and another one if the player says so. Whatever is chosen or wrong, every line keeps
// its place.
ColumnLayout {
    id: form

    // [{text, detail}]
    property var answers: []
    property int entry: QuestionsModel.None
    property var units: []
    property string field
    // Which one is chosen; their number for another answer, -1 for none.
    property int chosen: -1
    property string unitChosen
    readonly property string unit: Array.from(units).includes(unitChosen) ? unitChosen : units[0] ?? ""
    property string wrong
    readonly property string other: typed.text
    readonly property int anew: answers.length
    signal picked(int answer)
    signal said(string text, string unit)

    // What stands in the field of another answer.
    function fill(text, unit) {
        typed.text = text;
        unitChosen = unit;
    }

    Repeater {
        model: form.answers.length

        AnswerRow {
            required property int index
            objectName: "answer" + index
            Layout.fillWidth: true
            text: form.answers[index]?.text ?? ""
            detail: form.answers[index]?.detail ?? ""
            checked: form.chosen === index
            onClicked: form.picked(index)
        }
    }
    AnswerRow {
        objectName: "anew"
        Layout.fillWidth: true
        visible: form.entry !== QuestionsModel.None
        text: qsTr("Another answer")
        checked: form.chosen === form.anew
        onClicked: {
            form.picked(form.anew);
            typed.takeFocus();
        }
    }
    // Writing it chooses it.
    TextEntry {
        id: typed
        objectName: "other"
        Layout.fillWidth: true
        visible: form.entry !== QuestionsModel.None
        label: form.field
        hint: qsTr("If the player says none of these")
        noteLines: 2
        error: form.wrong
        inputMethodHints: form.entry === QuestionsModel.Figure ? Qt.ImhFormattedNumbersOnly : Qt.ImhNone
        onEdited: text => {
            if (form.chosen !== form.anew) form.picked(form.anew);
            form.said(text, form.unit);
        }
    }
    ChoiceBar {
        objectName: "otherUnit"
        Layout.fillWidth: true
        visible: form.entry !== QuestionsModel.None && form.units.length > 1
        label: qsTr("Unit")
        value: form.unit
        options: Array.from(form.units).map(unit => ({ value: unit, text: unit }))
        onChosen: value => {
            form.unitChosen = value;
            if (form.chosen === form.anew) form.said(form.other, value);
        }
    }
}
