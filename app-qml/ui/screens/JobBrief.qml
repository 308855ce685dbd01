pragma ComponentBehavior: Bound
import QtQuick
import Weavelog.Parts
import Weavelog.Theme

// What a racket in the hand is compared with: strings and tensions, pattern, stencils, promise. Positioners: their heights follow wrapped
// texts at once.
Column {
    id: lines

    required property var brief
    readonly property var said: brief.mains === undefined ? [] : [
        { label: qsTr("Mains"), value: brief.mains.length > 0 ? brief.mains : qsTr("not said"), strong: true },
        { label: qsTr("Crosses"), value: brief.crosses.length > 0 ? brief.crosses : qsTr("not said"), strong: true },
        { label: qsTr("Pattern"), value: brief.pattern, strong: false },
        { label: qsTr("Stencil"), value: stencils, strong: false },
        { label: qsTr("Promised"), value: brief.readyBy.length === 0 ? ""
              : brief.due === 3 ? qsTr("Late: %1").arg(brief.readyBy) : qsTr("By %1").arg(brief.readyBy), strong: brief.due > 1, due: brief.due }
    ].filter(line => line.value.length > 0)
    readonly property string stencils: brief.racketStencil === undefined ? ""
        : brief.racketStencil.length === 0 && brief.stringStencil.length === 0 ? qsTr("none agreed")
        : Listing.dotted([brief.racketStencil,
                          brief.stringStencil.length > 0 ? qsTr("string stencil: %1").arg(brief.stringStencil) : ""])

    spacing: 2

    Repeater {
        model: lines.said
        Row {
            id: line
            required property var modelData
            width: lines.width
            spacing: Theme.gap
            Accessible.role: Accessible.StaticText
            Accessible.name: line.modelData.label + ": " + line.modelData.value
            Words {
                id: label
                width: Math.min(150, line.width * 0.3)
                quiet: true
                text: line.modelData.label
                Accessible.ignored: true
            }
            Words {
                width: line.width - label.width - line.spacing
                meaning: line.modelData.strong ? Words.Strong : Words.Body
                color: line.modelData.due === 3 ? Theme.colour.danger : line.modelData.due === 2 ? Theme.colour.attention : Theme.colour.ink
                text: line.modelData.value
                Accessible.ignored: true
            }
        }
    }
}
