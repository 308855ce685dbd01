import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme

Card {
    title: "Marks and lines"

    Flow {
        Layout.fillWidth: true
        spacing: Theme.gap
        Repeater {
            model: 12
            StageMark {
                required property int index
                stage: index
            }
        }
        StageMark { stage: StageMark.OnMachine; rush: true }
    }
    OldNew { Layout.fillWidth: true; label: "Mains"; oldValue: "24.5 kg"; newValue: "23.5 kg" }
    OldNew { Layout.fillWidth: true; label: "Crosses"; oldValue: "23.5 kg"; newValue: "23.5 kg" }
    OldNew { Layout.fillWidth: true; label: "String of the crosses"; oldValue: "Heron 1.25"; newValue: "Alder 1.30" }
    ProgressLine { Layout.fillWidth: true; text: "Bringing players in"; detail: "412 of 1,000"; value: 0.412 }
    ProgressLine { Layout.fillWidth: true; text: "Waiting for the server"; indeterminate: true }
    ProgressLine { Layout.fillWidth: true; text: "Done"; value: 1 }
    RowLayout {
        spacing: Theme.room
        CodeSquare {
            implicitWidth: 203
            implicitHeight: 203
            rows: Array.from({ length: 21 }, (unused, y) => Array.from({ length: 21 }, (none, x) => {
                const corner = (x < 7 && y < 7) || (x > 13 && y < 7) || (x < 7 && y > 13);
                const u = x > 13 ? x - 14 : x;
                const v = y > 13 ? y - 14 : y;
                if (corner) return u === 0 || v === 0 || u === 6 || v === 6 || (u > 1 && u < 5 && v > 1 && v < 5);
                return (x * 7 + y * 5 + x * y) % 3 === 0;
            }))
        }
        Words { Layout.fillWidth: true; meaning: Words.Caption; quiet: true; text: "A pattern to look at, not a code that can be read" }
    }
}
