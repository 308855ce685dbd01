import QtQuick
import QtQuick.Layouts
import Weavelog.Theme

// A line of an account that nothing is done with: what it is, and its amount at the end, below each other by their decimal signs.
RowLayout {
    id: row

    property string text
    property string amount
    property bool strong: false

    spacing: Theme.gap
    Accessible.role: Accessible.StaticText
    Accessible.name: text + ": " + amount

    Words {
        Layout.fillWidth: true
        meaning: row.strong ? Words.Strong : Words.Body
        text: row.text
        Accessible.ignored: true
    }
    Words {
        meaning: row.strong ? Words.Strong : Words.Body
        text: row.amount
        wrapMode: Text.NoWrap
        horizontalAlignment: Text.AlignRight
        Accessible.ignored: true
    }
}
