import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme

Card {
    id: card
    title: "Actions"

    Repeater {
        model: [
            { text: "Confirm", kind: ActionButton.Primary, icon: "check" },
            { text: "Change something", kind: ActionButton.Secondary, icon: "" },
            { text: "Not now", kind: ActionButton.Quiet, icon: "" },
            { text: "Forget this player", kind: ActionButton.Danger, icon: "warning" }
        ]

        RowLayout {
            id: pair
            required property var modelData
            spacing: Theme.gap

            ActionButton {
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                text: pair.modelData.text
                kind: pair.modelData.kind
                iconName: pair.modelData.icon
            }
            ActionButton {
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                text: pair.modelData.text
                kind: pair.modelData.kind
                iconName: pair.modelData.icon
                enabled: false
            }
        }
    }
    Flow {
        Layout.fillWidth: true
        spacing: Theme.gap

        IconAction { iconName: "search"; text: "Find" }
        IconAction { iconName: "undo"; text: "Undo" }
        IconAction { iconName: "plus"; text: "Add"; framed: true }
        IconAction { iconName: "close"; text: "Close"; enabled: false }
        IconAction { iconName: "minus"; text: "Less"; framed: true; enabled: false }
    }
    ActionButton {
        objectName: "openPlainSheet"
        Layout.fillWidth: true
        kind: ActionButton.Secondary
        text: "Open a sheet without changes"
        onClicked: plain.open()
    }
    ActionButton {
        objectName: "openChangedSheet"
        Layout.fillWidth: true
        kind: ActionButton.Secondary
        text: "Open a sheet with changes"
        onClicked: changed.open()
    }
    Sheet {
        id: plain
        title: "Nothing changed here"
        Words { Layout.fillWidth: true; text: "A tap beside this sheet closes it." }
        ActionButton { text: "Done"; onClicked: plain.close() }
    }
    Sheet {
        id: changed
        title: "Note to the stringer"
        hasChanges: true
        TextEntry { Layout.fillWidth: true; label: "Note"; text: "Dampener stays in the bag" }
        ActionButton { text: "Keep"; onClicked: changed.close() }
    }
}
