pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// What is not as last time, old and new.
Card {
    id: card

    required property DropOffDraft draft

    title: card.draft.changes.length > 0 ? qsTr("Changed") : qsTr("Nothing changed: same as last time")
    spacing: 0

    Repeater {
        model: card.draft.changes

        OldNew {
            id: change
            required property var modelData
            Layout.fillWidth: true
            label: change.modelData.label
            oldValue: change.modelData.before
            newValue: change.modelData.after
        }
    }
}
