import Weavelog.Parts
import Weavelog.View

// Whose word it is, asked only where this tablet does not know who stands at it.
TextEntry {
    id: entry

    readonly property bool said: Settings.stringer.length > 0

    objectName: "saidBy"
    visible: !said || field.activeFocus
    label: qsTr("Your name")
    field.onEditingFinished: Settings.stringer = text
}
