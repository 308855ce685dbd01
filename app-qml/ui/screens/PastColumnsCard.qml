pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Every column of a table of past jobs with its first values, and what it is taken for.
Card {
    id: card

    title: qsTr("What its columns hold")
    detail: qsTr("Found by their headings. Look whether it is right; what is not said is not used.")

    Repeater {
        // The rows stay while a meaning is changed, and so does the focus.
        model: PastJobsModel.columns.length

        SideBySide {
            id: row
            required property int index
            readonly property var column: PastJobsModel.columns[row.index] ?? { header: "", first: "", ours: "", unit: "" }
            Layout.fillWidth: true
            least: 220
            Column {
                width: row.columnWidth
                Words {
                    width: parent.width
                    meaning: Words.Strong
                    text: row.column.header
                }
                Words {
                    width: parent.width
                    meaning: Words.Caption
                    quiet: true
                    text: row.column.first.length > 0 ? row.column.first : qsTr("empty")
                }
            }
            PickList {
                objectName: "meaning" + row.index
                width: row.columnWidth
                enabled: !PastJobsModel.busy
                options: PastJobsModel.meanings
                value: row.column.ours
                placeholder: qsTr("Not used")
                hint: row.column.unit.length > 0 ? qsTr("in %1, as its heading says").arg(row.column.unit) : ""
                onPicked: value => PastJobsModel.setMeaning(row.index, value)
            }
        }
    }
}
