pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Shapes
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The frame as it lies before one, head up, with the hours round it. A tap takes the nearest place; the arrow keys walk from place
// to place. The same is said in words in the list beside it.
Item {
    id: drawing

    property bool taking: true
    readonly property real unit: width / 200
    readonly property var marks: InspectionModel.findings
    readonly property color frameColour: Theme.colour.ink

    function at(part, minutes, inside) { return InspectionModel.pointOf(part, minutes, inside); }

    implicitWidth: 240
    implicitHeight: Math.round(unit * 400)
    activeFocusOnTab: taking
    Accessible.role: Accessible.Graphic
    Accessible.name: qsTr("Drawing of the frame, 12 o'clock at the head")
    Accessible.description: InspectionModel.place >= 0
        ? InspectionModel.summary : qsTr("The arrow keys choose a place; so does the list of places.")
    Accessible.focusable: taking
    Keys.onRightPressed: InspectionModel.stepPlace(1)
    Keys.onLeftPressed: InspectionModel.stepPlace(-1)
    Keys.onDownPressed: InspectionModel.stepPlace(InspectionModel.place < 0 ? 1 : InspectionModel.place > 11 && InspectionModel.place < 24 ? -1 : 1)
    Keys.onUpPressed: InspectionModel.stepPlace(InspectionModel.place > 11 && InspectionModel.place < 24 ? 1 : -1)

    Shape {
        width: 200
        height: 400
        transform: Scale { xScale: drawing.unit; yScale: drawing.unit }

        // Strings: that it is a racket, and no more.
        ShapePath {
            strokeColor: Theme.colour.line
            strokeWidth: 1
            fillColor: "transparent"
            PathSvg { path: "M52 40V184M76 24V200M100 18V206M124 24V200M148 40V184M34 64H166M24 88H176M22 112H178M24 136H176M34 160H166" }
        }
        ShapePath {
            strokeColor: drawing.frameColour
            strokeWidth: 7
            fillColor: "transparent"
            PathSvg { path: "M100 8A86 104 0 1 1 100 216A86 104 0 1 1 100 8Z" }
        }
        // Throat and shaft.
        ShapePath {
            strokeColor: drawing.frameColour
            strokeWidth: 6
            fillColor: "transparent"
            joinStyle: ShapePath.RoundJoin
            PathSvg { path: "M58 203C70 236 88 262 92 284V328M142 203C130 236 112 262 108 284V328M92 296H108" }
        }
        // Handle with its grip.
        ShapePath {
            strokeColor: drawing.frameColour
            strokeWidth: 3
            fillColor: Theme.colour.raised
            joinStyle: ShapePath.RoundJoin
            PathSvg { path: "M87 328H113V388A4 4 0 0 1 109 392H91A4 4 0 0 1 87 388ZM87 346L113 336M87 362L113 352M87 378L113 368" }
        }
    }
    Repeater {
        model: 24

        Item {
            id: tick
            required property int index
            readonly property bool hour: index % 2 === 0
            readonly property point place: drawing.at(1, index * 30, hour ? 0.2 : 0.1)

            x: place.x * drawing.unit
            y: place.y * drawing.unit

            Rectangle {
                visible: !tick.hour
                anchors.centerIn: parent
                width: 4
                height: 4
                radius: 2
                color: Theme.colour.controlLine
            }
            Rectangle {
                visible: tick.hour
                anchors.centerIn: parent
                width: number.implicitWidth + 4
                height: number.implicitHeight
                color: Theme.colour.surface
                Words {
                    id: number
                    anchors.centerIn: parent
                    meaning: Words.Strong
                    font.pixelSize: Theme.type.caption
                    quiet: true
                    text: tick.index === 0 ? "12" : String(tick.index / 2)
                    wrapMode: Text.NoWrap
                    Accessible.ignored: true
                }
            }
        }
    }
    // Where the next finding is.
    Rectangle {
        readonly property point place: drawing.at(InspectionModel.part, InspectionModel.minutes, 0)
        visible: InspectionModel.place >= 0
        x: place.x * drawing.unit - width / 2
        y: place.y * drawing.unit - height / 2
        width: 44
        height: 44
        radius: 22
        color: "transparent"
        border.width: 4
        border.color: Theme.colour.focus
    }
    Repeater {
        model: drawing.marks

        Rectangle {
            id: mark
            required property var modelData
            required property int index
            // Several at one place stand beside each other, towards the middle.
            readonly property int same: drawing.marks.slice(0, index).filter(
                one => one.part === modelData.part && one.minutes === modelData.minutes).length
            readonly property point place: drawing.at(modelData.part, modelData.minutes, 0)

            x: place.x * drawing.unit - width / 2 + (place.x > 100 ? -1 : 1) * same * 20
            y: place.y * drawing.unit - height / 2
            width: Math.max(28, label.implicitWidth + 10)
            height: 28
            radius: 14
            color: modelData.hold > 0 ? Theme.colour.dangerAction : modelData.earlier ? Theme.colour.raised : Theme.colour.action
            border.width: 2
            border.color: modelData.earlier ? Theme.colour.ink : Theme.colour.surface
            Words {
                id: label
                anchors.centerIn: parent
                meaning: Words.Strong
                text: mark.modelData.number
                color: mark.modelData.hold > 0 ? Theme.colour.onDangerAction : mark.modelData.earlier ? Theme.colour.ink : Theme.colour.onAction
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
        }
    }
    TapHandler {
        enabled: drawing.taking
        onTapped: point => InspectionModel.tap(point.position.x / drawing.unit, point.position.y / drawing.unit)
    }
    FocusRing { shown: drawing.activeFocus }
}
