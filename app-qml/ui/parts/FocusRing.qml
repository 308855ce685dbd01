import QtQuick
import Weavelog.Theme

// Where the keyboard is: the same ring round every control.
Rectangle {
    property bool shown: false

    anchors.fill: parent
    anchors.margins: -4
    z: 10
    visible: shown
    color: "transparent"
    radius: Theme.radius + 4
    border.width: 3
    border.color: Theme.colour.focus
    Accessible.ignored: true
}
