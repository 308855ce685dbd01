import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The string of the mains or of the crosses.
ColumnLayout {
    id: string

    required property DropOffDraft draft
    required property string part
    property string label

    readonly property var inQuestion: Array.from(draft.openFields)
    readonly property string first: qsTr("Choose one of the answers above first")

    function of(field) { return draft.wish[part + "_" + field] ?? ""; }

    spacing: Theme.gap

    TextEntry {
        objectName: string.part + "Name"
        Layout.fillWidth: true
        label: string.label
        enabled: !string.inQuestion.includes(string.part + "_string")
        hint: enabled ? "" : string.first
        text: string.of("string")
        onEdited: text => string.draft.set(string.part + "_string", text)
    }
    FindingNote {
        Layout.fillWidth: true
        finding: string.draft.findings[string.part + "_string"]
    }
    Connections {
        target: string.draft
        function onFieldFirst(field) { if (field === string.part + "_gauge") gauge.takeFocus(); }
    }
    FigureStepper {
        id: gauge
        objectName: string.part + "Gauge"
        Layout.fillWidth: true
        label: qsTr("Gauge")
        unit: "mm"
        enabled: !string.inQuestion.includes(string.part + "_gauge")
        hint: enabled ? "" : string.first
        value: string.of("gauge")
        step: "0.01"
        least: "0.5"
        most: "2.5"
        first: string.draft.usualFirst(string.part + "_gauge")
        onEdited: value => string.draft.set(string.part + "_gauge", value)
        onMistyped: text => string.draft.mistyped(string.part + "_gauge", text)
    }
    FindingNote {
        Layout.fillWidth: true
        finding: string.draft.findings[string.part + "_gauge"]
    }
    ChoiceBar {
        Layout.fillWidth: true
        label: qsTr("Taken from")
        value: string.of("supply")
        options: [{ value: 0, text: qsTr("Not said") }, { value: 1, text: qsTr("Reel") }, { value: 2, text: qsTr("Set") }]
        onChosen: value => string.draft.set(string.part + "_supply", value)
    }
    ChoiceBar {
        Layout.fillWidth: true
        label: qsTr("Whose string")
        value: string.of("owner")
        options: [{ value: 0, text: qsTr("Not said") }, { value: 1, text: qsTr("The room’s") }, { value: 2, text: qsTr("The player’s") }]
        onChosen: value => string.draft.set(string.part + "_owner", value)
    }
}
