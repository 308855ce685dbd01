pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// On which machine a racket goes, or is: one tap chooses; what is out of order says why and can't be chosen.
ColumnLayout {
    id: chips

    required property MachineChoice choice
    property string racket // what the toast calls it

    visible: choice.machines.length > 0
    spacing: 6

    Words {
        Layout.fillWidth: true
        meaning: Words.Strong
        text: chips.choice.mounted ? qsTr("On which machine it is") : qsTr("On which machine it goes")
    }
    SideBySide {
        id: row
        Layout.fillWidth: true
        least: 160
        most: 4
        spacing: 6

        Repeater {
            // The chips stay while one is chosen.
            model: chips.choice.machines.length

            CheckChip {
                id: chip
                required property int index
                readonly property var machine: chips.choice.machines[chip.index] ?? { id: "", name: "", detail: "", broken: false }
                objectName: "machine" + chip.index
                width: row.columnWidth
                enabled: !machine.broken
                text: machine.name
                detail: machine.detail
                checked: machine.id === chips.choice.chosen
                onToggled: {
                    chips.choice.choose(machine.id, qsTr("%1: machine %2").arg(chips.racket).arg(machine.name));
                    // What is chosen decides, not the tap.
                    checked = Qt.binding(() => chip.machine.id === chips.choice.chosen);
                }
            }
        }
    }
    Repeater {
        model: chips.choice.doubts
        Notice {
            required property string modelData
            Layout.fillWidth: true
            Layout.topMargin: 6
            kind: Notice.Attention
            title: modelData
            text: qsTr("Take another machine, or ask at the desk; the machine maker’s instructions come first.")
        }
    }
}
