import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic as Basic
import Weavelog.Theme

// Something that holds or does not; the whole row is touched.
Basic.Switch {
    id: toggle

    property string detail

    implicitWidth: 320
    implicitHeight: Math.max(Theme.mainTouch, implicitContentHeight + topPadding + bottomPadding)
    topPadding: Theme.tight
    bottomPadding: Theme.tight
    leftPadding: 0
    rightPadding: 0
    activeFocusOnTab: true
    font.pixelSize: Theme.type.body
    Accessible.name: text
    Accessible.description: detail
    Keys.onReturnPressed: toggle.click()
    Keys.onEnterPressed: toggle.click()

    contentItem: RowLayout {
        spacing: Theme.gap

        ColumnLayout {
            spacing: 0
            Layout.fillWidth: true

            Words {
                Layout.fillWidth: true
                text: toggle.text
                color: toggle.enabled ? Theme.colour.ink : Theme.colour.disabledInk
                Accessible.ignored: true
            }
            Words {
                Layout.fillWidth: true
                visible: toggle.detail.length > 0
                meaning: Words.Caption
                text: toggle.detail
                color: toggle.enabled ? Theme.colour.quietInk : Theme.colour.disabledInk
                Accessible.ignored: true
            }
        }
        Item {
            implicitWidth: 64
            implicitHeight: 36
        }
    }
    indicator: Rectangle {
        x: toggle.mirrored ? 0 : toggle.width - width
        y: (toggle.height - height) / 2
        implicitWidth: 64
        implicitHeight: 36
        radius: 18
        color: !toggle.enabled ? Theme.colour.disabledGround
             : toggle.checked ? Theme.colour.action : Theme.colour.raised
        border.width: 2
        border.color: !toggle.enabled ? Theme.colour.disabledInk
                    : toggle.checked ? Theme.colour.action : Theme.colour.controlLine

        Rectangle {
            readonly property bool atRight: toggle.checked !== toggle.mirrored
            x: atRight ? parent.width - width - 5 : 5
            anchors.verticalCenter: parent.verticalCenter
            width: 26
            height: 26
            radius: 13
            color: !toggle.enabled ? Theme.colour.disabledInk
                 : toggle.checked ? Theme.colour.onAction : Theme.colour.controlLine
            Behavior on x { NumberAnimation { duration: 90 } }

            Icon {
                anchors.centerIn: parent
                size: 18
                stroke: 3
                name: toggle.checked ? "check" : "minus"
                colour: toggle.checked ? Theme.colour.action : Theme.colour.raised
            }
        }
    }
    background: null

    FocusRing { shown: toggle.visualFocus }
}
