import QtQuick
import QtQuick.Shapes
import Weavelog.Theme

// How a racket stands on the chart, told by shape as well as by colour: a dot; a ring where nothing compares; a dot with a bar where it is beyond
// the tolerance; a diamond, a triangle or a square where it set off the alarm of a racket, a machine or a stringer.
Item {
    id: item

    property string mark
    property bool told: true
    property bool beyond: false

    width: 20
    height: 20

    Rectangle {
        anchors.centerIn: parent
        visible: item.mark === ""
        width: 10
        height: 10
        radius: 5
        color: item.told ? Theme.colour.ink : "transparent"
        border.width: 2
        border.color: item.told ? Theme.colour.ink : Theme.colour.controlLine
    }
    Rectangle {
        anchors.centerIn: parent
        visible: item.beyond && item.mark === ""
        width: 18
        height: 3
        color: Theme.colour.ink
    }
    Rectangle {
        anchors.centerIn: parent
        visible: item.mark === "racket" || item.mark === "stringer"
        width: 14
        height: 14
        rotation: item.mark === "racket" ? 45 : 0
        color: Theme.colour.danger
    }
    Shape {
        anchors.fill: parent
        visible: item.mark === "machine"
        ShapePath {
            strokeWidth: 0
            strokeColor: "transparent"
            fillColor: Theme.colour.danger
            startX: 10
            startY: 1
            PathLine { x: 19; y: 18 }
            PathLine { x: 1; y: 18 }
            PathLine { x: 10; y: 1 }
        }
    }
}
