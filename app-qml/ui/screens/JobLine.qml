import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme

// One old job in two lines.
ColumnLayout {
    id: line

    required property var modelData

    spacing: 0

    RowLayout {
        Layout.fillWidth: true
        spacing: Theme.gap
        // At the top: the row is laid out first at a width at which its words break, and is not laid out anew when it is less high then.
        Words {
            Layout.fillWidth: true
            Layout.alignment: Qt.AlignTop
            meaning: Words.Strong
            text: line.modelData.tension
        }
        Words {
            Layout.alignment: Qt.AlignTop
            quiet: true
            wrapMode: Text.NoWrap
            text: line.modelData.day
        }
    }
    Words {
        Layout.fillWidth: true
        meaning: Words.Caption
        quiet: true
        text: [line.modelData.racket.length > 0 ? qsTr("Racket %1").arg(line.modelData.racket) : "",
               line.modelData.strings, line.modelData.event].filter(part => part.length > 0).join(" · ")
    }
    Rectangle {
        Layout.fillWidth: true
        Layout.topMargin: Theme.tight
        implicitHeight: 1
        color: Theme.colour.line
    }
}
