pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme

// One wish of a player as it stands now: tensions and strings large, the rest in lines, what changed since marked.
Card {
    id: card

    required property var modelData

    title: card.modelData.rackets.length > 0 ? qsTr("Agreed now: rackets %1").arg(card.modelData.rackets) : qsTr("Agreed now")
    detail: card.modelData.event.length === 0 ? card.modelData.day
        : (card.modelData.takenIn ? qsTr("Taken in %1, %2; not yet strung") : qsTr("Last strung %1, %2"))
              .arg(card.modelData.event).arg(card.modelData.day)

    SideBySide {
        Layout.fillWidth: true
        least: 150
        spacing: Theme.gap

        ColumnLayout {
            width: parent.columnWidth
            spacing: 0
            Words { quiet: true; text: qsTr("Mains"); Accessible.ignored: true }
            Digits {
                Layout.fillWidth: true
                value: card.modelData.mains
                unit: card.modelData.mainsUnit
                size: Theme.type.figure * 1.6
            }
        }
        ColumnLayout {
            width: parent.columnWidth
            spacing: 0
            Words { quiet: true; text: qsTr("Crosses"); Accessible.ignored: true }
            Digits {
                Layout.fillWidth: true
                value: card.modelData.crosses
                unit: card.modelData.crossesUnit
                size: Theme.type.figure * 1.6
            }
        }
    }
    Words {
        Layout.fillWidth: true
        meaning: Words.Title
        text: card.modelData.strings
    }
    Repeater {
        model: card.modelData.since
        OldNew {
            id: change
            required property var modelData
            Layout.fillWidth: true
            label: change.modelData.label
            oldValue: change.modelData.before
            newValue: change.modelData.after
        }
    }
    // Positioners, whose heights follow wrapped texts at once; nested layouts keep those of their first width.
    Column {
        id: lines
        Layout.fillWidth: true
        spacing: 2
        Repeater {
            model: card.modelData.lines
            Row {
                id: line
                required property var modelData
                width: lines.width
                spacing: Theme.gap
                Words {
                    width: (line.width - Theme.gap) / 2
                    quiet: true
                    text: line.modelData.label
                }
                Words {
                    width: (line.width - Theme.gap) / 2
                    text: line.modelData.value
                }
            }
        }
    }
}
