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
        Words {
            Layout.fillWidth: true
            meaning: Words.Strong
            text: line.modelData.tension
        }
        Words {
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
