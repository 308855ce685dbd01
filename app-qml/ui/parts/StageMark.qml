import QtQuick
import QtQuick.Layouts
import Weavelog.Theme

// How far a job is: a drawing and a word, the colour only underlines them.
Rectangle {
    id: mark

    enum Stage { TakenIn, Asked, OnBench, Strung, Ready, HandedOver, Stopped }
    property int stage: StageMark.TakenIn
    property bool rush: false

    readonly property string word: [
        qsTr("Taken in"), qsTr("Asked player"), qsTr("On the bench"), qsTr("Strung"), qsTr("Ready"),
        qsTr("Handed over"), qsTr("Stopped")
    ][stage]
    readonly property string iconName: ["in", "question", "half", "strung", "ready", "out", "stopped"][stage]
    readonly property color inkColour: {
        switch (stage) {
        case StageMark.Asked: return Theme.colour.attention;
        case StageMark.OnBench: return Theme.colour.onChosen;
        case StageMark.Strung: return Theme.colour.onChosen;
        case StageMark.Ready: return Theme.colour.agreed;
        case StageMark.Stopped: return Theme.colour.danger;
        default: return Theme.colour.ink;
        }
    }
    readonly property color groundColour: {
        switch (stage) {
        case StageMark.Asked: return Theme.colour.attentionGround;
        case StageMark.OnBench: return Theme.colour.chosenGround;
        case StageMark.Strung: return Theme.colour.chosenGround;
        case StageMark.Ready: return Theme.colour.agreedGround;
        case StageMark.Stopped: return Theme.colour.dangerGround;
        default: return Theme.colour.raised;
        }
    }

    implicitWidth: row.implicitWidth + 2 * Theme.gap
    implicitHeight: Math.max(32, row.implicitHeight + Theme.tight)
    radius: Theme.radius
    color: groundColour
    border.width: 1
    border.color: stage === StageMark.TakenIn || stage === StageMark.HandedOver ? Theme.colour.line : groundColour
    Accessible.role: Accessible.StaticText
    Accessible.name: rush ? qsTr("%1, rush").arg(word) : word

    RowLayout {
        id: row
        anchors.centerIn: parent
        spacing: Theme.tight

        Icon {
            name: mark.iconName
            size: Math.round(Theme.type.caption * 1.3)
            colour: mark.inkColour
        }
        Words {
            meaning: Words.Strong
            font.pixelSize: Theme.type.caption
            text: mark.word
            color: mark.inkColour
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
        Rectangle {
            visible: mark.rush
            implicitWidth: rushRow.implicitWidth + 2 * Theme.tight
            implicitHeight: rushRow.implicitHeight
            radius: 3
            color: Theme.colour.rush

            RowLayout {
                id: rushRow
                anchors.centerIn: parent
                spacing: 3
                Icon { name: "rush"; size: Theme.type.caption; colour: Theme.colour.onRush }
                Words {
                    meaning: Words.Strong
                    font.pixelSize: Theme.type.caption
                    text: qsTr("Rush")
                    color: Theme.colour.onRush
                    wrapMode: Text.NoWrap
                    Accessible.ignored: true
                }
            }
        }
    }
}
