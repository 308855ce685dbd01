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

    contentItem: Item {
        implicitWidth: measure.implicitWidth + row.iconRoom
        implicitHeight: words.implicitHeight

        // How wide the text would like to be, whatever it is given.
        Text {
            id: measure
            visible: false
            text: button.text
            font: button.font
        }
        Row {
            id: row
            readonly property real iconRoom: icon.visible ? icon.size + spacing : 0
            anchors.centerIn: parent
            spacing: Theme.tight + 2

            Icon {
                id: icon
                anchors.verticalCenter: parent.verticalCenter
                visible: button.iconName.length > 0
                name: button.iconName
                colour: button.inkColour
                size: Math.round(button.font.pixelSize * 1.3)
            }
            Text {
                id: words
                anchors.verticalCenter: parent.verticalCenter
                width: Math.min(Math.ceil(measure.implicitWidth), Math.max(0, button.availableWidth - row.iconRoom))
                text: button.text
                font: button.font
                color: button.inkColour
                wrapMode: Text.Wrap
                maximumLineCount: 2
                elide: Text.ElideRight
                horizontalAlignment: Text.AlignHCenter
                Accessible.ignored: true
            }
        }
    }
}
