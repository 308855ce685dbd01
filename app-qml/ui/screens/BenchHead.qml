import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Which racket it is that lies on the bench: its tag, its label, its frame, its promise.
Flow {
    spacing: Theme.room

    RowLayout {
        visible: BenchModel.tag.length > 0
        spacing: Theme.tight
        Icon { name: "tag"; size: 28 }
        Words {
            meaning: Words.Figure
            text: BenchModel.tag
            wrapMode: Text.NoWrap
            Accessible.name: qsTr("Tag %1").arg(text)
        }
    }
    ColumnLayout {
        visible: BenchModel.racket.length > 0 || BenchModel.racketModel.length > 0
        spacing: 0
        Words {
            meaning: Words.Title
            visible: BenchModel.racket.length > 0
            text: qsTr("Racket %1").arg(BenchModel.racket)
            wrapMode: Text.NoWrap
        }
        Words {
            quiet: true
            visible: BenchModel.racketModel.length > 0
            text: BenchModel.racketModel
            wrapMode: Text.NoWrap
        }
    }
    ColumnLayout {
        visible: BenchModel.readyBy.length > 0
        spacing: 0
        Words {
            meaning: Words.Title
            color: BenchModel.due === 3 ? Theme.colour.danger
                 : BenchModel.due === 2 ? Theme.colour.attention : Theme.colour.ink
            text: BenchModel.due === 3 ? qsTr("Late: %1").arg(BenchModel.readyBy) : qsTr("By %1").arg(BenchModel.readyBy)
            wrapMode: Text.NoWrap
        }
        Words {
            quiet: true
            text: qsTr("promised")
            wrapMode: Text.NoWrap
        }
    }
    StageMark { stage: BenchModel.stage }
    RushMark { rush: BenchModel.rush; height: Math.max(32, implicitHeight) }
}
