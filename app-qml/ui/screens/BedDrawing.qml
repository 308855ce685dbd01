pragma ComponentBehavior: Bound
import QtQuick
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The string bed drawn: with the steps of its stiffness and what they mean, or as it is strung.
Column {
    id: drawing

    property bool narrow
    property bool mapped: true
    readonly property var map: BedModel.map
    readonly property var legend: map.legend ?? []
    // From the ground to the accent by even steps; edges and figures tell the same without colours.
    readonly property var stepColours: Array.from(legend).map((text, step) => mixed(0.08 + 0.77 * step / Math.max(1, legend.length - 1)))

    function mixed(part) {
        const a = Theme.colour.surface, b = Theme.colour.action;
        return Qt.rgba(a.r + part * (b.r - a.r), a.g + part * (b.g - a.g), a.b + part * (b.b - a.b), 1);
    }

    spacing: Theme.gap

    ChoiceBar {
        objectName: "bedDrawn"
        width: parent.width
        label: qsTr("What is drawn")
        value: drawing.mapped
        options: [{ value: true, text: qsTr("Stiffness map") }, { value: false, text: qsTr("Strings") }]
        onChosen: value => drawing.mapped = value
    }
    BedPicture {
        objectName: "bedPicture"
        width: parent.width
        height: drawing.narrow ? 300 : 340
        strings: BedModel.strings
        outline: BedModel.outline
        map: drawing.mapped ? drawing.map : ({})
        stepColours: drawing.stepColours
        plateColour: Theme.colour.surface
        frameColour: Theme.colour.ink
        mainsColour: drawing.mapped ? Theme.colour.controlLine : Theme.colour.action
        crossesColour: drawing.mapped ? Theme.colour.controlLine : Theme.colour.quietInk
        font.pixelSize: Theme.type.caption
        Accessible.role: Accessible.Graphic
        Accessible.name: drawing.mapped ? qsTr("Stiffness over the string bed. %1").arg(drawing.map.spoken ?? "")
                                        : qsTr("The string bed as it is strung: %1").arg(BedModel.strung)
    }
    Flow {
        objectName: "bedLegend"
        width: parent.width
        visible: drawing.mapped
        spacing: Theme.gap
        Words {
            meaning: Words.Caption
            text: "N/mm"
        }
        Repeater {
            model: drawing.legend
            Row {
                id: step
                required property string modelData
                required property int index
                spacing: Theme.tight
                Rectangle {
                    width: 22
                    height: 16
                    color: drawing.stepColours[step.index] ?? Theme.colour.surface
                    border.width: 1
                    border.color: Theme.colour.ink
                }
                Words {
                    meaning: Words.Caption
                    text: step.modelData
                    wrapMode: Text.NoWrap
                }
            }
        }
    }
    Words {
        objectName: "mapNote"
        width: parent.width
        visible: drawing.mapped
        meaning: Words.Caption
        quiet: true
        text: BedModel.mapNote
    }
}
