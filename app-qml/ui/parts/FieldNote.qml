import QtQuick
import QtQuick.Layouts
import Weavelog.Theme

// The line under a field: what is wrong with it, otherwise a hint.
RowLayout {
    id: note

    property string hint
    property string error

    visible: hint.length > 0 || error.length > 0
    spacing: Theme.tight

    Icon {
        visible: note.error.length > 0
        name: "warning"
        colour: Theme.colour.danger
        size: 18
        Layout.alignment: Qt.AlignTop
    }
    Words {
        Layout.fillWidth: true
        meaning: Words.Caption
        text: note.error.length > 0 ? note.error : note.hint
        color: note.error.length > 0 ? Theme.colour.danger : Theme.colour.quietInk
    }
}
