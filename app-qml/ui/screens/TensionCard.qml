import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Mains and crosses, each in its own unit.
Card {
    id: card

    required property DropOffDraft draft

    title: qsTr("Tension")

    SideBySide {
        Layout.fillWidth: true
        least: 300
        spacing: Theme.room

        TensionPart {
            objectName: "mains"
            width: parent.columnWidth
            draft: card.draft
            part: "mains"
            label: qsTr("Mains")
        }
        TensionPart {
            objectName: "crosses"
            width: parent.columnWidth
            draft: card.draft
            part: "crosses"
            label: qsTr("Crosses")
        }
    }
}
