pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// What has to be said about the rackets that are handed over, before they are taken.
ColumnLayout {
    id: notes

    required property DropOffDraft draft

    visible: draft.cautions.length > 0
    spacing: Theme.gap

    Repeater {
        model: notes.draft.cautions

        Notice {
            id: note
            required property var modelData
            objectName: "caution"
            Layout.fillWidth: true
            kind: Notice.Attention
            title: note.modelData.rackets.length > 0 ? qsTr("Racket %1").arg(note.modelData.rackets) : ""
            text: note.modelData.written.length > 0
                ? note.modelData.text + "\n" + qsTr("Written beside it: %1").arg(note.modelData.written) : note.modelData.text
        }
    }
}
