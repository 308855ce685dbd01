import QtQuick
import Weavelog.Theme

// One thing to do, said in a word or two. Primary: the one next step of a page. Danger: what cannot be undone.
TouchButton {
    id: button

    enum Kind { Primary, Secondary, Quiet, Danger }
    property int kind: ActionButton.Primary
    property string iconName

    readonly property color inkColour: {
        if (!enabled) return Theme.colour.disabledInk;
        switch (kind) {
        case ActionButton.Primary: return Theme.colour.onAction;
        case ActionButton.Danger: return Theme.colour.onDangerAction;
        default: return Theme.colour.action;
        }
    }
    readonly property color groundColour: {
        if (!enabled) return kind === ActionButton.Quiet ? "transparent" : Theme.colour.disabledGround;
        switch (kind) {
        case ActionButton.Primary: return down ? Theme.colour.actionPressed : Theme.colour.action;
        case ActionButton.Danger: return down ? Theme.colour.dangerActionPressed : Theme.colour.dangerAction;
        case ActionButton.Secondary: return down ? Theme.colour.chosenGround : Theme.colour.raised;
        default: return down ? Theme.colour.chosenGround : "transparent";
        }
    }

    implicitHeight: Math.max(Theme.mainTouch, implicitContentHeight + topPadding + bottomPadding)
    leftPadding: kind === ActionButton.Quiet ? Theme.gap : Theme.room
    rightPadding: leftPadding
    topPadding: Theme.tight
    bottomPadding: Theme.tight
    font.weight: Font.DemiBold

    background: Rectangle {
        radius: Theme.radius
        color: button.groundColour
        border.width: button.kind === ActionButton.Secondary ? 2 : 0
        border.color: button.enabled ? Theme.colour.action : Theme.colour.disabledInk
    }

    contentItem: ButtonWords {
        text: button.text
        iconName: button.iconName
        font: button.font
        colour: button.inkColour
    }
}
