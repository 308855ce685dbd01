import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Which string for mains and crosses, how thick, from where, and whose.
Card {
    id: card

    required property DropOffDraft draft

    title: qsTr("Strings")

    SideBySide {
        Layout.fillWidth: true
        least: 320
        spacing: Theme.room

        StringPart {
            objectName: "mainsString"
            width: parent.columnWidth
            draft: card.draft
            part: "mains"
            label: qsTr("Mains string")
        }
        StringPart {
            objectName: "crossesString"
            width: parent.columnWidth
            draft: card.draft
            part: "crosses"
            label: qsTr("Crosses string")
        }
    }
    ActionButton {
        objectName: "sameForCrosses"
        kind: ActionButton.Secondary
        text: qsTr("Crosses as the mains")
        onClicked: card.draft.sameForCrosses()
    }
}
