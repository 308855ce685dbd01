pragma ComponentBehavior: Bound
import QtQuick
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// What is estimated of a bed: now, and at its match.
Column {
    id: table

    readonly property real cellWidth: Math.floor((width - 2 * Theme.gap) * 0.31)
    readonly property real nameWidth: width - 2 * cellWidth - 2 * Theme.gap

    spacing: Theme.tight

    Row {
        spacing: Theme.gap
        Words {
            anchors.bottom: parent.bottom
            width: table.nameWidth
            meaning: Words.Caption
            text: qsTr("Estimates")
        }
        Words {
            anchors.bottom: parent.bottom
            width: table.cellWidth
            meaning: Words.Caption
            horizontalAlignment: Text.AlignRight
            text: qsTr("Now")
        }
        Words {
            width: table.cellWidth
            meaning: Words.Caption
            horizontalAlignment: Text.AlignRight
            text: qsTr("At the match, %1").arg(BedModel.matchTime)
        }
    }
    Repeater {
        model: BedModel.figures
        Column {
            id: row
            required property var modelData
            width: table.width
            spacing: Theme.tight
            Accessible.role: Accessible.StaticText
            Accessible.name: qsTr("%1: estimate %2, %3; at the match %4, %5").arg(row.modelData.name).arg(row.modelData.now)
                .arg(row.modelData.nowBand).arg(row.modelData.match).arg(row.modelData.matchBand)
            Rectangle {
                width: parent.width
                height: 1
                color: Theme.colour.line
            }
            Row {
                spacing: Theme.gap
                Words {
                    width: table.nameWidth
                    text: row.modelData.name
                    Accessible.ignored: true
                }
                Repeater {
                    model: [[row.modelData.now, row.modelData.nowBand], [row.modelData.match, row.modelData.matchBand]]
                    Column {
                        id: cell
                        required property var modelData
                        width: table.cellWidth
                        Words {
                            width: parent.width
                            meaning: Words.Strong
                            horizontalAlignment: Text.AlignRight
                            text: cell.modelData[0]
                            Accessible.ignored: true
                        }
                        Words {
                            width: parent.width
                            meaning: Words.Caption
                            quiet: true
                            horizontalAlignment: Text.AlignRight
                            text: cell.modelData[1]
                            Accessible.ignored: true
                        }
                    }
                }
            }
        }
    }
    Words {
        width: parent.width
        meaning: Words.Caption
        quiet: true
        text: qsTr("The true figure lies in the band nine times of ten, as far as is known.")
    }
}
