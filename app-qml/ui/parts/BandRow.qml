pragma ComponentBehavior: Bound
import QtQuick
import Weavelog.Theme

// One bar of an estimate: its mean, and over the bar the band in which it lies eight times of ten.
Item {
    id: row

    property string text
    property int value: 0
    property int low: 0
    property int high: 0
    property int most: 1      // the highest end of any band in the chart
    property string more      // what belongs to the figure, such as "6 benches"

    implicitWidth: 320
    implicitHeight: Math.max(36, label.implicitHeight, figure.implicitHeight) + 4
    Accessible.role: Accessible.StaticText
    Accessible.name: qsTr("%1: %2, between %3 and %4").arg(row.text).arg(row.value).arg(row.low).arg(row.high) + (row.more.length > 0 ? ", " + row.more : "")

    Words {
        id: label
        anchors.verticalCenter: parent.verticalCenter
        width: row.width * 0.26
        meaning: Words.Caption
        text: row.text
        maximumLineCount: 2
        elide: Text.ElideRight
        Accessible.ignored: true
    }
    Item {
        id: space
        readonly property real unit: width / Math.max(1, row.most)
        anchors.left: label.right
        anchors.leftMargin: Theme.tight
        anchors.right: figure.left
        anchors.rightMargin: Theme.gap
        height: parent.height

        Rectangle {
            anchors.verticalCenter: parent.verticalCenter
            width: row.value > 0 ? Math.max(3, space.unit * row.value) : 0
            height: 16
            radius: 2
            color: Theme.colour.chosenGround
            border.width: 1
            border.color: Theme.colour.action
        }
        Rectangle {
            anchors.verticalCenter: parent.verticalCenter
            x: space.unit * row.low
            width: Math.max(2, space.unit * (row.high - row.low))
            height: 3
            color: Theme.colour.action
        }
        Repeater {
            model: [row.low, row.high]
            Rectangle {
                required property int modelData
                anchors.verticalCenter: parent?.verticalCenter
                x: space.unit * modelData - 1
                width: 3
                height: 12
                color: Theme.colour.action
            }
        }
    }
    Column {
        id: figure
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        width: row.width * 0.4
        Words {
            width: parent.width
            meaning: Words.Strong
            horizontalAlignment: Text.AlignRight
            text: row.value
            Accessible.ignored: true
        }
        Words {
            width: parent.width
            visible: text.length > 0
            meaning: Words.Caption
            quiet: true
            horizontalAlignment: Text.AlignRight
            text: Listing.commas([row.low === row.high ? "" : qsTr("%1–%2").arg(row.low).arg(row.high), row.more])
            Accessible.ignored: true
        }
    }
}
