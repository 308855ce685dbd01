import QtQuick
import Weavelog.Parts
import Weavelog.View

// Once somebody wanted to read back: what stringing still waits for.
Notice {
    id: needed

    required property DropOffDraft draft
    property bool asked: false
    readonly property bool noRacket: draft.pickedCount === 0

    visible: asked && (noRacket || draft.stillNeeded.length > 0)
    kind: Notice.Attention
    title: noRacket ? qsTr("No racket is chosen") : qsTr("Stringing cannot begin without this")
    text: noRacket ? qsTr("Choose at least one.") : Array.from(draft.stillNeeded).join(", ")

    Connections {
        target: DeskModel
        function onHeldBack(part) { needed.asked = true; }
    }
}
