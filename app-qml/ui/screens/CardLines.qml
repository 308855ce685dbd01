pragma ComponentBehavior: Bound
import QtQuick
import Weavelog.Parts
import Weavelog.Theme

// What a player card says: its setups and rackets. A positioner: rows that come while a sheet opens have their height at once.
Column {
    id: list

    // [{kind, text, detail}]
    property var lines: []

    spacing: Theme.tight

    Repeater {
        model: list.lines

        Column {
            id: line
            required property var modelData
            width: list.width
            Words {
                width: line.width
                meaning: line.modelData.kind === "setup" ? Words.Strong : Words.Body
                text: line.modelData.kind === "setup" ? line.modelData.text : qsTr("Racket %1").arg(line.modelData.text)
            }
            Words {
                width: line.width
                visible: line.modelData.detail.length > 0
                meaning: Words.Caption
                quiet: true
                text: line.modelData.detail
            }
        }
    }
    Words {
        width: list.width
        visible: list.lines.length === 0
        quiet: true
        text: qsTr("No setup and no racket")
    }
}
