import QtQuick
import Weavelog.Theme

// An action shown by a drawing alone; its text is what a screen reader says.
TouchButton {
    id: button

    required property string iconName
    property bool framed: false

    implicitWidth: Theme.touch
    implicitHeight: Theme.touch

    background: Rectangle {
        radius: Theme.radius
        color: button.down ? Theme.colour.chosenGround
             : button.framed ? (button.enabled ? Theme.colour.raised : Theme.colour.disabledGround) : "transparent"
        border.width: button.framed ? 2 : 0
        border.color: button.enabled ? Theme.colour.controlLine : Theme.colour.disabledInk
    }

    contentItem: Icon {
        name: button.iconName
        colour: button.enabled ? Theme.colour.action : Theme.colour.disabledInk
        size: button.width > Theme.touch ? 28 : 24
        stroke: 2.4
    }
}
