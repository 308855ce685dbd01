pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// The room's steps at the bench, ticked as they are done.
Card {
    id: card

    readonly property var steps: BenchModel.work.steps

    title: qsTr("Steps")
    detail: qsTr("%1 of %2 done. The room may change this list; the makers’ instructions come before it.")
        .arg(BenchModel.work.stepsDone).arg(steps.length)
    filled: steps.length > 0
    spacing: 6

    Repeater {
        // The rows stay while they are ticked.
        model: card.steps.length

        CheckChip {
            id: chip
            required property int index
            readonly property var step: card.steps[chip.index] ?? { name: "", text: "", done: false }
            objectName: "tick" + chip.index
            Layout.fillWidth: true
            mostLines: 6
            text: step.text
            checked: step.done
            onToggled: {
                // What is stored decides, not the tap.
                const wanted = checked;
                if (!BenchModel.work.tick(step.name, wanted)) checked = Qt.binding(() => step.done);
            }
        }
    }
}
