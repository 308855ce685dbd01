pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// How it is strung: pre-stretch, lengths of string, knots and the pull before them.
Card {
    id: card

    required property DropOffDraft draft

    title: qsTr("Pre-stretch, lengths and knots")

    // A number of per cent, with what players usually ask for (common practice) at one tap.
    component Percentage: ColumnLayout {
        id: percentage
        property string field
        property string text
        property var usual: []
        property string meaning
        spacing: Theme.tight
        WishField { id: wish; draft: card.draft; field: percentage.field }
        Connections {
            target: card.draft
            function onFieldFirst(field) { if (field === percentage.field) per.takeFocus(); }
        }
        FigureStepper {
            id: per
            Layout.fillWidth: true
            label: percentage.text
            unit: "%"
            enabled: !wish.inQuestion
            hint: wish.hint
            noteLines: wish.lines
            differs: wish.differs
            value: wish.value ?? ""
            step: "1"
            least: "0"
            most: "100"
            onEdited: value => card.draft.set(percentage.field, value)
            onEachStepped: by => card.draft.stepEach(percentage.field, by, least, most)
            onMistyped: text => card.draft.mistyped(percentage.field, text)
        }
        SideBySide {
            id: taps
            Layout.fillWidth: true
            least: 48
            most: 5
            spacing: Theme.tight
            Repeater {
                model: percentage.usual
                ActionButton {
                    required property string modelData
                    objectName: percentage.field + modelData
                    width: taps.columnWidth
                    leftPadding: Theme.tight
                    rightPadding: Theme.tight
                    enabled: !wish.inQuestion
                    kind: wish.value === modelData ? ActionButton.Primary : ActionButton.Secondary
                    text: modelData
                    Accessible.name: qsTr("%1: %2 %").arg(percentage.text).arg(modelData)
                    onClicked: card.draft.set(percentage.field, modelData)
                }
            }
        }
        Words {
            Layout.fillWidth: true
            visible: text.length > 0
            meaning: Words.Caption
            quiet: true
            text: percentage.meaning
        }
        FindingNote {
            Layout.fillWidth: true
            finding: card.draft.findings[percentage.field]
        }
    }

    WishField { id: pieces; draft: card.draft; field: "pieces" }
    WishField { id: knots; draft: card.draft; field: "knots" }
    SideBySide {
        id: row
        Layout.fillWidth: true
        least: 300
        spacing: Theme.room

        Repeater {
            model: [{ field: "mains_prestretch", text: qsTr("Pre-stretch of the mains") },
                    { field: "crosses_prestretch", text: qsTr("Pre-stretch of the crosses") }]

            Percentage {
                required property var modelData
                width: row.columnWidth
                field: modelData.field
                text: modelData.text
                usual: ["0", "5", "10", "15", "20"]
            }
        }
        ColumnLayout {
            width: parent.columnWidth
            spacing: Theme.tight
            ChoiceBar {
                objectName: "pieces"
                Layout.fillWidth: true
                label: qsTr("Lengths of string")
                enabled: !pieces.inQuestion
                value: pieces.choice
                options: [{ value: 0, text: qsTr("Not said") }, { value: 1, text: qsTr("One") }, { value: 2, text: qsTr("Two") }]
                onChosen: value => card.draft.set("pieces", value)
            }
            FieldNote {
                Layout.fillWidth: true
                hint: pieces.hint
                lines: pieces.lines
            }
            // Common practice; the frame's maker may ask for one or the other.
            Words {
                objectName: "piecesMean"
                Layout.fillWidth: true
                visible: card.draft.wish["pieces"] > 0
                meaning: Words.Caption
                quiet: true
                text: card.draft.wish["pieces"] === 1
                    ? qsTr("One length for mains and crosses, usually two knots: one string for both. Which end the crosses begin at follows from the pattern; the frame maker’s instructions decide.")
                    : qsTr("Mains and crosses each with a length of their own, usually four knots: the crosses may be another string. Some frames need them strung from the head down, so that the load on the frame stays even; the frame maker’s instructions decide.")
            }
            FindingNote {
                Layout.fillWidth: true
                finding: card.draft.findings["pieces"]
            }
        }
        ColumnLayout {
            width: parent.columnWidth
            spacing: Theme.tight
            ChoiceBar {
                objectName: "knots"
                Layout.fillWidth: true
                label: qsTr("Knots")
                enabled: !knots.inQuestion
                value: knots.choice
                options: [{ value: 0, text: qsTr("Not said") }, { value: 2, text: qsTr("Two") }, { value: 4, text: qsTr("Four") }]
                onChosen: value => card.draft.set("knots", value)
            }
            FieldNote {
                Layout.fillWidth: true
                hint: knots.hint
                lines: knots.lines
            }
            Words {
                objectName: "knotsMean"
                Layout.fillWidth: true
                visible: card.draft.wish["knots"] > 0
                meaning: Words.Caption
                quiet: true
                text: card.draft.wish["knots"] === 2
                    ? qsTr("Two knots go with one length: each end is tied off once, and nothing parts mains and crosses.")
                    : qsTr("Four knots go with two lengths: mains and crosses are tied off apart, so each can have its own string and tension.")
            }
            FindingNote {
                Layout.fillWidth: true
                finding: card.draft.findings["knots"]
            }
        }
        Percentage {
            width: row.columnWidth
            field: "knot_pretension"
            text: qsTr("Knot pre-tension")
            usual: ["0", "10", "20"]
            meaning: qsTr("So much more on the last string before a knot: it makes up for what the knot gives way. Common practice; the instructions of frame and machine come first.")
        }
    }
}
