pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// One tension: the usual steps by one tap, the figure itself, its unit, and what is odd about it.
ColumnLayout {
    id: tension

    required property DropOffDraft draft
    required property string part
    property string label

    readonly property string field: part + "_tension"
    readonly property string unit: draft.units[field] ?? ""
    readonly property string figure: draft.wish[field] ?? ""

    spacing: Theme.gap

    WishField {
        id: wish
        draft: tension.draft
        field: tension.field
    }

    Connections {
        target: tension.draft
        function onFieldFirst(field) { if (field === tension.field) figure.takeFocus(); }
    }
    FigureStepper {
        id: figure
        objectName: tension.part + "Figure"
        Layout.fillWidth: true
        label: tension.label
        unit: tension.unit
        value: tension.figure
        step: tension.unit === "N" ? "5" : "0.5"
        least: "1"
        most: "999"
        enabled: !wish.inQuestion
        hint: wish.hint
        noteLines: wish.lines
        differs: wish.differs
        first: tension.unit.length > 0 ? tension.draft.usualFirst(tension.field) : ""
        onEdited: value => tension.draft.set(tension.field, value)
        onEachStepped: by => tension.draft.stepEach(tension.field, by, least, most)
        onMistyped: text => tension.draft.mistyped(tension.field, text)
    }
    SideBySide {
        id: row
        Layout.fillWidth: true
        least: 64
        most: 4
        spacing: Theme.tight
        visible: !wish.inQuestion && (tension.figure.length > 0 || wish.differs)

        Repeater {
            model: tension.draft.steps(tension.part)

            ActionButton {
                id: step
                required property string modelData
                objectName: tension.part + step.modelData
                width: row.columnWidth
                leftPadding: Theme.tight
                rightPadding: Theme.tight
                kind: ActionButton.Secondary
                text: Figures.shown(step.modelData, Settings.language).replace("-", "\u2212").replace(/^(?=\d)/, "+")
                Accessible.name: qsTr("%1 by %2 %3").arg(tension.label).arg(step.modelData).arg(tension.unit)
                onClicked: tension.draft.adjust(tension.part, step.modelData)
            }
        }
    }
    FindingNote {
        Layout.fillWidth: true
        finding: tension.draft.findings[tension.field]
    }
    ChoiceBar {
        objectName: tension.part + "Unit"
        Layout.fillWidth: true
        visible: tension.draft.asWhole || tension.draft.findings[tension.field] !== undefined
        label: qsTr("Said in")
        value: tension.unit
        options: [{ value: "kg", text: "kg" }, { value: "lb", text: "lb" }, { value: "N", text: "N" }]
        onChosen: value => tension.draft.setUnit(tension.field, value)
    }
}
