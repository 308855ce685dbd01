import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic as Basic
import Weavelog.Theme

// One of several things that may each be taken or left, side by side; the whole chip is touched.
Basic.CheckBox {
    id: chip

    property string detail
    property int mostLines: 2

    implicitWidth: Math.max(132, implicitContentWidth + leftPadding + rightPadding)
    implicitHeight: Math.max(Theme.mainTouch, implicitContentHeight + topPadding + bottomPadding)
    leftPadding: Theme.gap
    rightPadding: Theme.gap
    topPadding: Theme.tight
    bottomPadding: Theme.tight
    activeFocusOnTab: true
    font.pixelSize: Theme.type.body
    indicator: null
    Accessible.name: text
    Accessible.description: detail
    Keys.onReturnPressed: flip()
    Keys.onEnterPressed: flip()

    function flip() {
        toggle();
        toggled();
    }

    background: Rectangle {
        radius: Theme.radius
        color: !chip.enabled ? Theme.colour.disabledGround
             : chip.checked ? Theme.colour.chosenGround : Theme.colour.raised
        border.width: 2
        border.color: !chip.enabled ? Theme.colour.disabledInk
                    : chip.checked ? Theme.colour.action : Theme.colour.controlLine
    }
    contentItem: RowLayout {
        spacing: Theme.gap

        Rectangle {
            implicitWidth: 26
            implicitHeight: 26
            radius: 4
            color: chip.checked && chip.enabled ? Theme.colour.action : "transparent"
            border.width: 2
            border.color: !chip.enabled ? Theme.colour.disabledInk
                        : chip.checked ? Theme.colour.action : Theme.colour.controlLine
            Icon {
                anchors.centerIn: parent
                visible: chip.checked
                name: "check"
                size: 20
                stroke: 3
                colour: chip.enabled ? Theme.colour.onAction : Theme.colour.disabledInk
            }
        }
        ColumnLayout {
            Layout.fillWidth: true
            spacing: 0
            Words {
                Layout.fillWidth: true
                meaning: Words.Strong
                text: chip.text
                maximumLineCount: chip.mostLines
                color: !chip.enabled ? Theme.colour.disabledInk
                     : chip.checked ? Theme.colour.onChosen : Theme.colour.ink
                Accessible.ignored: true
            }
            Words {
                Layout.fillWidth: true
                visible: chip.detail.length > 0
                meaning: Words.Caption
                text: chip.detail
                maximumLineCount: 2
                color: !chip.enabled ? Theme.colour.disabledInk
                     : chip.checked ? Theme.colour.onChosen : Theme.colour.quietInk
                Accessible.ignored: true
            }
        }
    }
    FocusRing { shown: chip.visualFocus }
}
