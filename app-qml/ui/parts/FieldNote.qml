import QtQuick
import QtQuick.Layouts
import Weavelog.Theme

// The line under a field: what is wrong with it, otherwise a hint.
RowLayout {
    id: note

    property string hint
    property string error
    // So many lines keep their room, said or not, so that what stands below stays where it is.
    property int lines: 0

    visible: lines > 0 || hint.length > 0 || error.length > 0
    Layout.minimumHeight: lines * Math.ceil(metrics.lineSpacing)
    spacing: Theme.tight

    FontMetrics {
        id: metrics
        font: words.font
    }
    Icon {
        visible: note.error.length > 0
        name: "warning"
        colour: Theme.colour.danger
        size: 18
        Layout.alignment: Qt.AlignTop
    }
    Words {
        id: words
        Layout.fillWidth: true
        Layout.alignment: Qt.AlignTop
        meaning: Words.Caption
        text: note.error.length > 0 ? note.error : note.hint
        color: note.error.length > 0 ? Theme.colour.danger : Theme.colour.quietInk
    }
}
