pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// The answers to an open question, each with who said it, and another one if the player says so.
ColumnLayout {
    id: form

    // [{text, detail}]
    property var answers: []
    property int entry: QuestionsModel.None
    property var units: []
    property string field
    // Which one is chosen; their number for another answer, -1 for none.
    property int chosen: -1
    property string other
    property string unit: units.length > 0 ? units[0] : ""
    property string wrong
    readonly property int anew: answers.length
    signal picked(int answer)
    signal said(string text, string unit)

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
        onClicked: form.picked(form.anew)
    }
    TextEntry {
        objectName: "other"
        Layout.fillWidth: true
        visible: form.chosen === form.anew
        label: form.field
        text: form.other
        error: form.wrong
        inputMethodHints: form.entry === QuestionsModel.Figure ? Qt.ImhFormattedNumbersOnly : Qt.ImhNone
        onEdited: text => {
            form.other = text;
            form.said(text, form.unit);
        }
    }
    ChoiceBar {
        Layout.fillWidth: true
        visible: form.chosen === form.anew && form.units.length > 1
        label: qsTr("Unit")
        value: form.unit
        options: form.units.map(unit => ({ value: unit, text: unit }))
        onChosen: value => {
            form.unit = value;
            form.said(form.other, value);
        }
    }
}
