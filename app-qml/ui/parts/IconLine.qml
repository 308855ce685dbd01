import QtQuick
import Weavelog.Theme

// A text with a drawing before it. A positioner: its height follows the wrapped text at once.
Row {
    id: line

    property string text
    property string iconName
    property color colour: Theme.colour.ink

    spacing: Theme.gap

    Icon {
        id: icon
        anchors.verticalCenter: parent.verticalCenter
        name: line.iconName
        size: 24
        colour: line.colour
    }
    Words {
        width: line.width - icon.width - line.spacing
        anchors.verticalCenter: parent.verticalCenter
        text: line.text
    }
}
