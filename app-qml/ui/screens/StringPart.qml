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

    spacing: Theme.gap

    WishField { id: name; draft: string.draft; field: string.part + "_string" }
    WishField { id: thick; draft: string.draft; field: string.part + "_gauge" }
    WishField { id: supply; draft: string.draft; field: string.part + "_supply" }
    WishField { id: owner; draft: string.draft; field: string.part + "_owner" }
    TextEntry {
        objectName: string.part + "Name"
        Layout.fillWidth: true
        label: string.label
        enabled: !name.inQuestion
        hint: name.hint
        noteLines: name.lines
        text: name.value ?? ""
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
        enabled: !thick.inQuestion
        hint: thick.hint
        noteLines: thick.lines
        differs: thick.differs
        value: thick.value ?? ""
        step: "0.01"
        least: "0.5"
        most: "2.5"
        first: string.draft.usualFirst(string.part + "_gauge")
        onEdited: value => string.draft.set(string.part + "_gauge", value)
        onEachStepped: by => string.draft.stepEach(string.part + "_gauge", by, least, most)
        onMistyped: text => string.draft.mistyped(string.part + "_gauge", text)
    }
    FindingNote {
        Layout.fillWidth: true
        finding: string.draft.findings[string.part + "_gauge"]
    }
    ChoiceBar {
        objectName: string.part + "Supply"
        Layout.fillWidth: true
        label: qsTr("Taken from")
        value: supply.choice
        options: [{ value: 0, text: qsTr("Not said") }, { value: 1, text: qsTr("Reel") }, { value: 2, text: qsTr("Set") }]
        onChosen: value => string.draft.set(string.part + "_supply", value)
    }
    FieldNote {
        Layout.fillWidth: true
        hint: supply.hint
        lines: supply.lines
    }
    ChoiceBar {
        Layout.fillWidth: true
        label: qsTr("Whose string")
        value: owner.choice
        options: [{ value: 0, text: qsTr("Not said") }, { value: 1, text: qsTr("The room’s") }, { value: 2, text: qsTr("The player’s") }]
        onChosen: value => string.draft.set(string.part + "_owner", value)
    }
    FieldNote {
        Layout.fillWidth: true
        hint: owner.hint
        lines: owner.lines
    }
}
