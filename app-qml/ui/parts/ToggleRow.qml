import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic as Basic
import Weavelog.Theme

// Something that holds or does not; the whole row is touched.
Basic.Switch {
    id: row

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
    Keys.onReturnPressed: flip()
    Keys.onEnterPressed: flip()

    function flip() {
        toggle();
        toggled();
        clicked();
    }

    contentItem: RowLayout {
        spacing: Theme.gap

        ColumnLayout {
            spacing: 0
            Layout.fillWidth: true

            Words {
                Layout.fillWidth: true
                text: row.text
                color: row.enabled ? Theme.colour.ink : Theme.colour.disabledInk
                Accessible.ignored: true
            }
            Words {
                Layout.fillWidth: true
                visible: row.detail.length > 0
                meaning: Words.Caption
                text: row.detail
                color: row.enabled ? Theme.colour.quietInk : Theme.colour.disabledInk
                Accessible.ignored: true
            }
        }
        Item {
            implicitWidth: 64
            implicitHeight: 36
        }
    }
    indicator: Rectangle {
        x: row.mirrored ? 0 : row.width - width
        y: (row.height - height) / 2
        implicitWidth: 64
        implicitHeight: 36
        radius: 18
        color: !row.enabled ? Theme.colour.disabledGround
             : row.checked ? Theme.colour.action : Theme.colour.raised
        border.width: 2
        border.color: !row.enabled ? Theme.colour.disabledInk
                    : row.checked ? Theme.colour.action : Theme.colour.controlLine

        Rectangle {
            readonly property bool atRight: row.checked !== row.mirrored
            x: atRight ? parent.width - width - 5 : 5
            anchors.verticalCenter: parent.verticalCenter
            width: 26
            height: 26
            radius: 13
            color: !row.enabled ? Theme.colour.disabledInk
                 : row.checked ? Theme.colour.onAction : Theme.colour.controlLine
            Behavior on x { NumberAnimation { duration: 90 } }

            Icon {
                anchors.centerIn: parent
                size: 18
                stroke: 3
                name: row.checked ? "check" : "minus"
                colour: row.checked ? Theme.colour.action : Theme.colour.raised
            }
        }
    }
    background: null

    FocusRing { shown: row.visualFocus }
}
