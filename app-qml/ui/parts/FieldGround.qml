import QtQuick
import Weavelog.Theme

// The ground of everything that is typed into or picked from.
Rectangle {
    property bool focused: false
    property bool wrong: false

    radius: Theme.radius
    color: enabled ? Theme.colour.field : Theme.colour.disabledGround
    border.width: wrong || focused ? 2 : 1.5
    border.color: !enabled ? Theme.colour.disabledInk
                : wrong ? Theme.colour.danger : focused ? Theme.colour.action : Theme.colour.controlLine
}
