pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// What is agreed about the racket on the bench; what differs from the player's last job is marked.
Card {
    title: qsTr("Setup")
    detail: BenchModel.comparedWith.length > 0
        ? qsTr("What differs from the last job (%1) is marked.").arg(BenchModel.comparedWith)
        : qsTr("The first job of this player that is known here.")

    SideBySide {
        id: pairs
        Layout.fillWidth: true
        least: 380
        spacing: Theme.tight
        Repeater {
            model: BenchModel.lines
            OldNew {
                required property var modelData
                width: pairs.columnWidth
                label: modelData.label
                oldValue: modelData.oldValue
                newValue: modelData.newValue
            }
        }
    }
}
