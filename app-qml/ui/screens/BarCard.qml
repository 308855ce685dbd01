pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts

// A chart of the room's numbers: one bar a row, the late ones marked at its end.
Card {
    id: card

    property var rows: []
    property string figure: "strung"
    readonly property int most: rows.reduce((most, row) => Math.max(most, row[figure]), 1)

    visible: rows.length > 0
    spacing: 0

    Repeater {
        model: card.rows

        BarRow {
            required property var modelData
            Layout.fillWidth: true
            text: modelData.key
            value: modelData[card.figure]
            most: card.most
            figureShare: card.figure === "ready" ? 0.3 : 0.14
            part: card.figure === "ready" ? modelData.late : 0
            partText: qsTr("%1 late").arg(modelData.late)
        }
    }
}
