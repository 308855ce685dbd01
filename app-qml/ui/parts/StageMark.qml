import QtQuick
import QtQuick.Layouts
import Weavelog.Theme

// How far a job is: a drawing and a word, the colour only underlines them.
Rectangle {
    id: mark

    // The numbers are those of core/model/choices.h.
    enum Stage { None, Received, Inspected, Waiting, CutOut, OnMachine, Strung, Checked, Stencilled, Ready, Collected, Aside }
    property int stage: StageMark.Received
    property bool rush: false

    readonly property string word: StageWords.title(stage)
    readonly property string iconName: StageWords.iconName(stage)
    readonly property color inkColour: {
        switch (stage) {
        case StageMark.Waiting: return Theme.colour.attention;
        case StageMark.CutOut:
        case StageMark.OnMachine:
        case StageMark.Strung:
        case StageMark.Checked:
        case StageMark.Stencilled: return Theme.colour.onChosen;
        case StageMark.Ready: return Theme.colour.agreed;
        case StageMark.Aside: return Theme.colour.danger;
        default: return Theme.colour.ink;
        }
    }
    readonly property color groundColour: {
        switch (stage) {
        case StageMark.Waiting: return Theme.colour.attentionGround;
        case StageMark.CutOut:
        case StageMark.OnMachine:
        case StageMark.Strung:
        case StageMark.Checked:
        case StageMark.Stencilled: return Theme.colour.chosenGround;
        case StageMark.Ready: return Theme.colour.agreedGround;
        case StageMark.Aside: return Theme.colour.dangerGround;
        default: return Theme.colour.raised;
        }
    }

    implicitWidth: row.implicitWidth + 2 * Theme.gap
    implicitHeight: Math.max(32, row.implicitHeight + Theme.tight)
    radius: Theme.radius
    color: groundColour
    border.width: 1
    border.color: groundColour === Theme.colour.raised ? Theme.colour.line : groundColour
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
        RushMark {
            rush: mark.rush ? 1 : 0
            Accessible.ignored: true
        }
    }
}
