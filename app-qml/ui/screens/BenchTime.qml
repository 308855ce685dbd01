import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// How long the racket has been on the machine, and how often it was done again.
Flow {
    id: row

    readonly property int seconds: BenchModel.work.seconds

    function two(number) { return String(number).padStart(2, "0"); }

    visible: seconds >= 0 || BenchModel.work.redos > 0
    spacing: Theme.room

    RowLayout {
        visible: row.seconds >= 0
        spacing: Theme.tight
        Icon { name: "half"; size: 26 }
        Words {
            objectName: "time"
            meaning: Words.Title
            wrapMode: Text.NoWrap
            text: Math.floor(row.seconds / 60) + ":" + row.two(row.seconds % 60)
            Accessible.name: qsTr("%n minute(s) on the machine", "", Math.floor(row.seconds / 60))
        }
        Words {
            quiet: true
            text: qsTr("on the machine")
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
    }
    RowLayout {
        visible: BenchModel.work.redos > 0
        spacing: Theme.tight
        Icon { name: "turn"; size: 24; colour: Theme.colour.attention }
        Words {
            meaning: Words.Strong
            color: Theme.colour.attention
            text: qsTr("Done again: %n time(s)", "", BenchModel.work.redos)
            wrapMode: Text.NoWrap
        }
    }
}
