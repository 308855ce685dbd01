import QtQuick
import Weavelog.View

// What has to be known of one field of a drop-off before somebody answers it: whether its answer is in question, and whether the rackets that are
// answered for differ in it.
QtObject {
    id: wish

    required property DropOffDraft draft
    required property string field
    readonly property bool inQuestion: Array.from(draft.openFields).includes(field)
    readonly property bool differs: !inQuestion && Array.from(draft.differing).includes(field)
    readonly property string hint: inQuestion ? qsTr("Choose one of the answers above first")
                                 : differs ? qsTr("The rackets differ: %1").arg(draft.apart[field] ?? "") : ""
    // Where several are answered for at once, they may come to differ, and no more: the room for that is kept.
    readonly property int lines: draft.pickedCount > 1 ? 1 : 0
    readonly property var value: draft.wish[field]
    // Of a choice: none of the options where there is no one answer.
    readonly property var choice: inQuestion || differs ? undefined : value
}
