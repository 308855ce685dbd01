import QtQuick
import QtQuick.Layouts
import Weavelog.Theme

// One bar of a chart that is read as a table too: what it is, how long it is beside the others, and its figure.
Item {
    id: row

    property string text
    property int value: 0
    property int most: 1      // the longest of them all
    property int part: 0      // of the value: marked at its end
    property real figureShare: 0.16  // of the width: the same for all bars of a chart, so that they compare
    property string partText  // what the part is, such as "3 late"

    implicitWidth: 320
    implicitHeight: Math.max(30, label.implicitHeight, figure.implicitHeight) + 4
    Accessible.role: Accessible.StaticText
    Accessible.name: row.text + ": " + row.value + (row.part > 0 ? ", " + row.partText : "")

    Words {
        id: label
        anchors.verticalCenter: parent.verticalCenter
        width: row.width * 0.34
        meaning: Words.Caption
        text: row.text
        maximumLineCount: 2
        elide: Text.ElideRight
        Accessible.ignored: true
    }
    Item {
        id: space
        anchors.left: label.right
        anchors.leftMargin: Theme.tight
        anchors.right: figure.left
        anchors.rightMargin: Theme.tight
        height: parent.height

        Rectangle {
            id: bar
            anchors.verticalCenter: parent.verticalCenter
            width: row.value > 0 ? Math.max(3, space.width * row.value / Math.max(1, row.most)) : 0
            height: 18
            radius: 2
            color: Theme.colour.action

            Rectangle {
                anchors.right: parent.right
                width: parent.width * Math.min(1, row.part / Math.max(1, row.value))
                height: parent.height
                radius: 2
                color: Theme.colour.attention
            }
        }
    }
    Words {
        id: figure
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        width: row.width * row.figureShare
        meaning: Words.Caption
        horizontalAlignment: Text.AlignRight
        text: row.part > 0 ? row.value + "  ·  " + row.partText : row.value
        Accessible.ignored: true
    }
}
