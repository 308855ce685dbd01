import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic as Basic
import Weavelog.Theme

// How far something that takes a while is; without an end in sight (indeterminate) a part of it wanders.
ColumnLayout {
    id: line

    property string text
    property string detail
    property alias value: bar.value
    property alias indeterminate: bar.indeterminate

    spacing: Theme.tight

    RowLayout {
        Layout.fillWidth: true
        Words {
            Layout.fillWidth: true
            text: line.text
            Accessible.ignored: true
        }
        Words {
            visible: line.detail.length > 0
            quiet: true
            text: line.detail
            wrapMode: Text.NoWrap
        }
    }
    Basic.ProgressBar {
        id: bar
        Layout.fillWidth: true
        implicitHeight: 12
        Accessible.name: line.text
        background: Rectangle {
            radius: 6
            color: Theme.colour.raised
            border.width: 1.5
            border.color: Theme.colour.controlLine
        }
        contentItem: Item {
            implicitHeight: 12
            clip: true

            Rectangle {
                id: fill
                height: parent.height
                radius: 6
                width: bar.indeterminate ? parent.width * 0.3 : parent.width * bar.position
                x: bar.mirrored && !bar.indeterminate ? parent.width - width : 0
                color: Theme.colour.action

                NumberAnimation on x {
                    running: bar.indeterminate && bar.visible
                    from: 0
                    to: bar.width * 0.7
                    duration: 1400
                    loops: Animation.Infinite
                    easing.type: Easing.InOutQuad
                }
            }
        }
    }
}
