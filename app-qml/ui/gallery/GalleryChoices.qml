import QtQuick
import QtQuick.Layouts
import Weavelog.Parts

Card {
    title: "Choices"

    ChoiceBar { Layout.fillWidth: true; label: "Unit"; value: "kg"; options: [{ value: "kg", text: "kg" }, { value: "lb", text: "lb" }, { value: "N", text: "N" }]; onChosen: answer => value = answer }
    ChoiceBar { Layout.fillWidth: true; label: "Nothing chosen yet"; options: [{ value: 1, text: "One-piece" }, { value: 2, text: "Two-piece" }]; onChosen: answer => value = answer }
    ChoiceBar {
        Layout.fillWidth: true
        onChosen: answer => value = answer
        label: "Too long for one line"
        value: 2
        options: [{ value: 1, text: "Reel of the room, charged by the metre" }, { value: 2, text: "Set of the player, brought along" }]
    }
    ChoiceBar { Layout.fillWidth: true; label: "Switched off"; enabled: false; value: 2; options: [{ value: 2, text: "Two knots" }, { value: 4, text: "Four knots" }]; onChosen: answer => value = answer }
    AnswerChoice { Layout.fillWidth: true; on: true; text: "A whole sentence that is the answer, however long it is, for it is what will be stored and is never cut." }
    AnswerChoice { Layout.fillWidth: true; text: "The other answer." }
    ToggleRow { Layout.fillWidth: true; text: "Stencil"; detail: "Paint the mark after stringing"; checked: true }
    ToggleRow { Layout.fillWidth: true; text: "Dampener comes off" }
    ToggleRow { Layout.fillWidth: true; text: "Switched off"; detail: "Cannot be changed here"; checked: true; enabled: false }
    PickList {
        onPicked: answer => value = answer
        objectName: "shortPick"
        Layout.fillWidth: true
        label: "String of the mains"
        value: 2
        options: [{ value: 1, text: "Heron 1.25", detail: "polyester" }, { value: 2, text: "Alder 1.30", detail: "multifilament" }]
    }
    PickList {
        onPicked: answer => value = answer
        objectName: "longPick"
        Layout.fillWidth: true
        label: "Bench"
        error: "This bench is closed today"
        options: Array.from({ length: 12 }, (unused, i) => ({ value: i, text: "Bench " + (i + 1) }))
    }
    PickList { Layout.fillWidth: true; label: "Switched off"; enabled: false }
}
