pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme

// One match of a draw: its two sides, who won in bold with a tick.
TouchButton {
    id: card

    // As DrawModel.rounds has it.
    property var match: null
    readonly property var sides: [match?.one ?? null, match?.other ?? null]

    function nameOf(side) {
        if (side === null || side.line === 0) return "";
        if (side.bye) return qsTr("bye");
        return side.known ? side.name : qsTr("not known yet");
    }

    padding: 2
    enabled: match !== null && (sides[0]?.known || sides[1]?.known || match.decided)
    text: Array.from(sides).map(one => nameOf(one)).filter(one => one.length > 0).join(" – ") || qsTr("Not known yet who meets here")
    Accessible.description: match?.one.won ? qsTr("won by %1").arg(match.one.name) : match?.other.won ? qsTr("won by %1").arg(match.other.name) : ""

    background: Rectangle {
        radius: Theme.radius
        color: card.down ? Theme.colour.chosenGround : Theme.colour.raised
        border.width: 1
        border.color: Theme.colour.controlLine
    }
    contentItem: ColumnLayout {
        spacing: 0
        Repeater {
            model: 2
            RowLayout {
                id: side
                required property int index
                readonly property var held: card.sides[side.index]
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.leftMargin: Theme.gap
                Layout.rightMargin: Theme.gap
                spacing: Theme.tight
                Icon {
                    visible: side.held?.won ?? false
                    name: "check"
                    size: 18
                }
                Words {
                    Layout.fillWidth: true
                    meaning: side.held?.won ? Words.Strong : Words.Body
                    quiet: (side.held?.lost ?? false) || (side.held?.out ?? false) || !(side.held?.known ?? false)
                    font.pixelSize: Theme.type.caption + 1
                    font.strikeout: side.held?.out ?? false
                    maximumLineCount: 1
                    elide: Text.ElideRight
                    text: card.nameOf(side.held)
                }
                Words {
                    visible: text.length > 0
                    meaning: Words.Caption
                    quiet: true
                    text: side.held?.bench?.length > 0 ? side.held.bench : side.held?.mark ?? ""
                }
            }
        }
    }
    Rectangle {
        x: 1
        y: Math.round(parent.height / 2)
        width: parent.width - 2
        height: 1
        color: Theme.colour.line
    }
}
