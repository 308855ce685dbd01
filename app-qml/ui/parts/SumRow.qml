import QtQuick
import Weavelog.Theme

// A line of an account that nothing is done with: what it is, and its amount at the end, below each other by their decimal signs. No layout:
// its height follows a wrapped text at once.
Item {
    id: row

    property string text
    property string amount
    property bool strong: false

    implicitWidth: 320
    implicitHeight: Math.max(label.implicitHeight, sum.implicitHeight)
    Accessible.role: Accessible.StaticText
    Accessible.name: text + ": " + amount

    Words {
        id: label
        anchors.left: parent.left
        anchors.right: sum.left
        anchors.rightMargin: Theme.gap
        meaning: row.strong ? Words.Strong : Words.Body
        text: row.text
        Accessible.ignored: true
    }
    Words {
        id: sum
        anchors.right: parent.right
        anchors.bottom: label.bottom
        meaning: row.strong ? Words.Strong : Words.Body
        text: row.amount
        wrapMode: Text.NoWrap
        horizontalAlignment: Text.AlignRight
        Accessible.ignored: true
    }
}
