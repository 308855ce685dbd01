import QtQuick
import Weavelog.Parts
import Weavelog.Theme

// One old job in two lines. Positioners: in nested layouts heights of wrapped texts go stale, and lines run through the words.
Column {
    id: line

    required property var modelData

    spacing: 0

    Row {
        spacing: Theme.gap
        Words {
            width: line.width - day.width - Theme.gap
            meaning: Words.Strong
            text: line.modelData.tension
        }
        Words {
            id: day
            quiet: true
            wrapMode: Text.NoWrap
            text: line.modelData.day
        }
    }
    Words {
        width: line.width
        meaning: Words.Caption
        quiet: true
        text: [line.modelData.racket.length > 0 ? qsTr("Racket %1").arg(line.modelData.racket) : "",
               line.modelData.strings, line.modelData.event].filter(part => part.length > 0).join(" · ")
    }
    Item {
        width: 1
        height: Theme.tight
    }
    Rectangle {
        width: line.width
        height: 1
        color: Theme.colour.line
    }
}
