pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Shapes
import Weavelog.Parts
import Weavelog.Theme

// What a machine pulls against what was set: each pull of the newest day, and the line through them, as per cent off.
Rectangle {
    id: chart

    property var machine: ({})
    readonly property real low: machine.low ?? 0
    readonly property real high: machine.high ?? 1
    readonly property real reach: machine.reach ?? 1
    readonly property real tolerance: machine.tolerance ?? 0
    readonly property int scale: 66
    readonly property int foot: 26
    readonly property real middle: (height - foot) / 2

    function xOf(set) { return scale + (set - low) / Math.max(0.001, high - low) * (width - scale - 8); }
    function yOf(percent) { return middle - percent / Math.max(0.001, reach) * (middle - 10); }
    function signed(value) { return (value > 0 ? "+" : value < 0 ? "−" : "") + Math.abs(value).toLocaleString(Qt.locale(), "f", value % 1 === 0 ? 0 : 1) + " %"; }

    implicitHeight: 170
    radius: Theme.radius
    color: Theme.colour.raised
    border.width: 1
    border.color: Theme.colour.line
    clip: true
    Accessible.role: Accessible.Graphic
    Accessible.name: qsTr("Calibration line of %1").arg(machine.name ?? "")

    Rectangle { x: chart.scale; y: chart.yOf(chart.tolerance); width: chart.width - chart.scale - 1; height: chart.yOf(-chart.tolerance) - y; color: Theme.colour.agreedGround }
    Rectangle { x: chart.scale; y: chart.middle; width: chart.width - chart.scale - 1; height: 1; color: Theme.colour.controlLine }
    Repeater {
        model: [0, chart.tolerance, -chart.tolerance]
        Words {
            required property real modelData
            x: 4
            y: chart.yOf(modelData) - height / 2
            width: chart.scale - 8
            meaning: Words.Caption
            horizontalAlignment: Text.AlignRight
            text: modelData === 0 ? "0" : chart.signed(modelData)
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
    }
    Shape {
        anchors.fill: parent
        ShapePath {
            strokeColor: Theme.colour.action
            strokeWidth: 3
            fillColor: "transparent"
            PathPolyline { path: Array.from(chart.machine.line ?? []).map(one => Qt.point(chart.xOf(one.x), chart.yOf(one.y))) }
        }
    }
    Repeater {
        model: chart.machine.points ?? []
        Rectangle {
            required property var modelData
            x: chart.xOf(modelData.x) - 5
            y: chart.yOf(modelData.y) - 5
            width: 10
            height: 10
            radius: 5
            color: Theme.colour.ink
        }
    }
    Words {
        x: chart.scale + 4
        y: chart.height - height - 4
        meaning: Words.Caption
        quiet: true
        text: qsTr("set to %1").arg(chart.machine.lowText ?? "")
        wrapMode: Text.NoWrap
        Accessible.ignored: true
    }
    Words {
        x: chart.width - width - 8
        y: chart.height - height - 4
        meaning: Words.Caption
        quiet: true
        text: chart.machine.highText ?? ""
        wrapMode: Text.NoWrap
        Accessible.ignored: true
    }
}
