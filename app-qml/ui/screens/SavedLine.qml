import QtQuick
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Where a file was saved, or why it was not, in one line below the buttons that save it.
IconLine {
    required property SaveNote note

    visible: note.text.length > 0
    iconName: note.saved ? "check" : "warning"
    colour: note.saved ? Theme.colour.agreed : Theme.colour.danger
    text: note.text
    Accessible.role: Accessible.AlertMessage
    Accessible.name: text
}
