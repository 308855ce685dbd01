pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Shapes
import Weavelog.Parts
import Weavelog.Theme

// Racket after racket: how far each is from what was to be expected, with the room's tolerance, the limits of one racket, and marks where an
// alarm was set off. A tap or the arrow keys choose a racket; it is said in words beside the chart.
Rectangle {
    id: chart

    property var points: []
    property real limit: 0
    property real tolerance: 0
    property real reach: 1
    property int chosen: -1
    signal picked(int point)

    readonly property int perPoint: 26
    readonly property int ends: 16
    readonly property int scale: 74
    readonly property real middle: height / 2
    readonly property real perPercent: (height / 2 - ends) / Math.max(0.1, reach)
    // Where the two lines would stand on each other's words, the tolerance alone is named.
    readonly property bool limitNamed: Math.abs(limit - tolerance) * perPercent > 18

    function yOf(percent) { return middle - percent * perPercent; }
    function xOf(index) { return ends + index * perPoint; }
    function signed(value) { return (value > 0 ? "+" : value < 0 ? "−" : "") + Math.abs(value).toLocaleString(Qt.locale(), "f", value % 1 === 0 ? 0 : 1) + " %"; }
    function pick(index) {
        if (points.length === 0) return;
        picked(Math.max(0, Math.min(points.length - 1, index)));
    }

    implicitHeight: 260
    radius: Theme.radius
    color: Theme.colour.surface
    border.width: 1
    border.color: Theme.colour.line
    activeFocusOnTab: points.length > 0
    Accessible.role: Accessible.Graphic
    Accessible.name: qsTr("Chart of %n racket(s)", "", points.length)
    Accessible.description: chosen >= 0 && chosen < points.length ? points[chosen].text : qsTr("The arrow keys choose a racket.")
    Accessible.focusable: points.length > 0
    Keys.onRightPressed: pick(chosen < 0 ? points.length - 1 : chosen + 1)
    Keys.onLeftPressed: pick(chosen < 0 ? points.length - 1 : chosen - 1)

    Repeater {
        model: [{ at: 0, text: "0", named: true },
                { at: chart.tolerance, text: chart.signed(chart.tolerance), named: true }, { at: -chart.tolerance, text: chart.signed(-chart.tolerance), named: true },
                { at: chart.limit, text: chart.signed(Math.round(chart.limit * 10) / 10), named: chart.limitNamed },
                { at: -chart.limit, text: chart.signed(-Math.round(chart.limit * 10) / 10), named: chart.limitNamed }]
        Words {
            required property var modelData
            x: Theme.tight
            y: chart.yOf(modelData.at) - height / 2
            width: chart.scale - 2 * Theme.tight
            visible: modelData.named
            meaning: Words.Caption
            horizontalAlignment: Text.AlignRight
            text: modelData.text
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
    }
    Item {
        x: chart.scale
        width: chart.width - chart.scale - 1
        height: chart.height
        clip: true

        Rectangle { y: chart.yOf(chart.tolerance); width: parent.width; height: 2 * chart.tolerance * chart.perPercent; color: Theme.colour.agreedGround }
        Rectangle { y: chart.middle; width: parent.width; height: 1; color: Theme.colour.controlLine }
        Repeater {
            model: [chart.limit, -chart.limit]
            Shape {
                id: dashes
                required property real modelData
                y: chart.yOf(modelData)
                width: parent.width
                height: 2
                ShapePath {
                    strokeColor: Theme.colour.attention
                    strokeWidth: 2
                    strokeStyle: ShapePath.DashLine
                    dashPattern: [4, 3]
                    fillColor: "transparent"
                    startX: 0
                    startY: 1
                    PathLine { x: dashes.width; y: 1 }
                }
            }
        }
    }
    Flickable {
        id: flick
        // Until somebody moves it, it stands at the newest.
        property bool moved: false
        onMovementStarted: moved = true
        x: chart.scale
        width: chart.width - chart.scale - 1
        height: chart.height
        contentWidth: Math.max(width, 2 * chart.ends + chart.points.length * chart.perPoint)
        contentHeight: height
        boundsBehavior: Flickable.StopAtBounds
        flickableDirection: Flickable.HorizontalFlick
        clip: true

        Binding {
            target: flick
            property: "contentX"
            value: Math.max(0, flick.contentWidth - flick.width)
            when: !flick.moved
            restoreMode: Binding.RestoreNone
        }
        Rectangle {
            visible: chart.chosen >= 0 && chart.chosen < chart.points.length
            x: chart.xOf(chart.chosen) - 1
            y: 2
            width: 2
            height: chart.height - 4
            color: Theme.colour.focus
        }
        Shape {
            anchors.fill: parent
            visible: chart.points.some(one => one.average !== undefined)
            ShapePath {
                strokeColor: Theme.colour.action
                strokeWidth: 3
                fillColor: "transparent"
                joinStyle: ShapePath.RoundJoin
                PathPolyline {
                    path: chart.points.map((one, index) => ({ at: one.average, x: chart.xOf(index) })).filter(one => one.at !== undefined)
                                      .map(one => Qt.point(one.x, chart.yOf(one.at)))
                }
            }
        }
        Repeater {
            model: chart.points.length
            QualityMark {
                required property int index
                readonly property var point: chart.points[index] ?? { told: false, percent: 0, mark: "", beyond: false }
                x: chart.xOf(index) - width / 2
                y: chart.yOf(point.percent) - height / 2
                // Software rendering draws a shape that is wholly out of sight over what lies there.
                visible: x + width > flick.contentX && x < flick.contentX + flick.width
                mark: point.mark
                told: point.told
                beyond: point.beyond
            }
        }
        TapHandler {
            onTapped: point => chart.pick(Math.round((point.position.x - chart.ends) / chart.perPoint))
        }
    }
    FocusRing { shown: chart.activeFocus }
}
