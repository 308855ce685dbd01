pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Rows of a table of past jobs: what is wrong with some, and how the first of the others would come in.
Card {
    id: card

    title: qsTr("Its rows")
    spacing: Theme.tight

    Notice {
        objectName: "pastFaults"
        Layout.fillWidth: true
        visible: PastJobsModel.badRows > 0
        kind: Notice.Attention
        title: qsTr("Left out: %n row(s) with a mistake", "", PastJobsModel.badRows)
        text: {
            const lines = Array.from(PastJobsModel.faults).map(one => one.text);
            if (PastJobsModel.badRows > lines.length) lines.push(qsTr("... and %1 more").arg(PastJobsModel.badRows - lines.length));
            return lines.join("\n");
        }
    }
    Repeater {
        model: PastJobsModel.rows

        Column {
            id: row
            required property var modelData
            Layout.fillWidth: true
            Words {
                width: row.width
                text: qsTr("%1. %2").arg(row.modelData.line).arg(row.modelData.name)
            }
            Words {
                width: row.width
                meaning: Words.Caption
                quiet: true
                text: row.modelData.detail
            }
        }
    }
    Words {
        Layout.fillWidth: true
        visible: PastJobsModel.goodRows > PastJobsModel.rows.length
        quiet: true
        text: qsTr("... and %1 more").arg(PastJobsModel.goodRows - PastJobsModel.rows.length)
    }
}
