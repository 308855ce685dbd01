import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// For which rackets the answers below hold: all, or one that is to be strung otherwise.
ColumnLayout {
    id: scope

    required property DropOffDraft draft
    readonly property var options: Array.of({ value: -1, text: qsTr("All %1").arg(draft.pickedCount) }).concat(
        Array.from(draft.rackets).map((racket, i) => ({ value: i, text: racket.label.length > 0 ? racket.label : (i + 1).toString(),
                                            picked: racket.picked })).filter(option => option.picked))

    ChoiceBar {
        objectName: "scope"
        Layout.fillWidth: true
        visible: scope.options.length <= 5
        label: qsTr("These answers are for")
        value: scope.draft.scope
        options: scope.options
        onChosen: value => scope.draft.scope = value
    }
    PickList {
        Layout.fillWidth: true
        visible: scope.options.length > 5
        label: qsTr("These answers are for")
        value: scope.draft.scope
        options: scope.options
        onPicked: value => scope.draft.scope = value
    }
}
