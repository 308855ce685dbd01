import QtQuick
import QtQuick.Layouts
import Weavelog.Theme

// Beside the field: what is odd about what was said, and what to do. Refused: it cannot stand; otherwise a warning.
RowLayout {
    id: note

    // {what, toDo, refused}; undefined for nothing.
    property var finding
    readonly property bool refused: finding?.refused ?? false

    visible: finding !== undefined
    spacing: Theme.tight
    Accessible.role: Accessible.AlertMessage
    Accessible.name: words.text

    Icon {
        Layout.alignment: Qt.AlignTop
        name: note.refused ? "warning" : "question"
        size: 20
        colour: note.refused ? Theme.colour.danger : Theme.colour.attention
    }
    Words {
        id: words
        Layout.fillWidth: true
        text: note.finding ? qsTr("%1: %2.").arg(note.finding.what).arg(note.finding.toDo) : ""
        color: note.refused ? Theme.colour.danger : Theme.colour.attention
        Accessible.ignored: true
    }
}
