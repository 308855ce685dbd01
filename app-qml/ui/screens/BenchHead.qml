import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// How it stands with the racket on the bench: its promise, its stage, its hurry.
Flow {
    id: head

    property bool withPromise: true

    spacing: Theme.room

    ColumnLayout {
        visible: head.withPromise && BenchModel.readyBy.length > 0
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
