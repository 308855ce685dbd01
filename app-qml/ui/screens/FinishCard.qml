pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Stencils, dampener, overgrip, who collects, and a note to the stringer.
Card {
    id: card

    required property DropOffDraft draft

    title: qsTr("Stencils and notes")

    SideBySide {
        id: row
        Layout.fillWidth: true
        least: 260
        most: 3

        Repeater {
            model: [{ field: "racket_stencil", text: qsTr("Racket stencil") },
                    { field: "racket_ink", text: qsTr("Its ink") },
                    { field: "string_stencil", text: qsTr("String stencil") },
                    { field: "string_ink", text: qsTr("Its ink") },
                    { field: "dampener", text: qsTr("Dampener") },
                    { field: "overgrip", text: qsTr("Overgrip") }]

            TextEntry {
                id: entry
                required property var modelData
                width: row.columnWidth
                WishField { id: wish; draft: card.draft; field: entry.modelData.field }
                objectName: entry.modelData.field
                label: entry.modelData.text
                enabled: !wish.inQuestion
                hint: wish.hint
                noteLines: wish.lines
                text: wish.value ?? ""
                onEdited: text => card.draft.set(entry.modelData.field, text)
            }
        }
        TextEntry {
            width: parent.columnWidth
            label: qsTr("Brought by")
            text: card.draft.dropOff["brought_by"]
            onEdited: text => card.draft.setDropOff("brought_by", text)
        }
        TextEntry {
            width: parent.columnWidth
            label: qsTr("May be collected by")
            text: card.draft.dropOff["collected_by"]
            onEdited: text => card.draft.setDropOff("collected_by", text)
        }
    }
    WishField { id: note; draft: card.draft; field: "note" }
    TextEntry {
        objectName: "note"
        Layout.fillWidth: true
        label: qsTr("Note to the stringer")
        hint: note.hint
        noteLines: note.lines
        text: note.value ?? ""
        onEdited: text => card.draft.set("note", text)
    }
}
