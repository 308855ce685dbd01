pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Shapes
import Weavelog.Parts
import Weavelog.Theme

// A string bed with the mark that goes on it, drawn simply: the mark by its name, the ink in words.
Column {
    id: bed

    property string title
    property string mark
    property string ink

    spacing: Theme.tight
    Accessible.role: Accessible.Grouping
    Accessible.name: title + ": " + mark + (ink.length > 0 ? ", " + qsTr("ink: %1").arg(ink) : "")

    Words {
        width: parent.width
        meaning: Words.Strong
        font.pixelSize: Theme.type.caption
        text: bed.title
        Accessible.ignored: true
    }
    Item {
        id: face
        width: parent.width
        height: 210

        readonly property real w: Math.min(width, 168)
        readonly property real h: 200
        readonly property real edge: (width - w) / 2

        // Strings behind, the outline of the head before them.
        Repeater {
            model: 9
            Rectangle {
                required property int index
                readonly property real at: (index + 1) / 10
                readonly property real half: Math.sqrt(Math.max(0, 1 - Math.pow(2 * at - 1, 2)))
                x: face.edge + face.w * at
                y: 5 + face.h / 2 * (1 - half)
                width: 1
                height: face.h * half
                color: Theme.colour.line
            }
        }
        Repeater {
            model: 11
            Rectangle {
                required property int index
                readonly property real at: (index + 1) / 12
                readonly property real half: Math.sqrt(Math.max(0, 1 - Math.pow(2 * at - 1, 2)))
                y: 5 + face.h * at
                x: face.edge + face.w / 2 * (1 - half)
                width: face.w * half
                height: 1
                color: Theme.colour.line
            }
        }
        Shape {
            anchors.fill: parent
            ShapePath {
                strokeColor: Theme.colour.ink
                strokeWidth: 4
                fillColor: "transparent"
                PathAngleArc {
                    centerX: face.edge + face.w / 2
                    centerY: 5 + face.h / 2
                    radiusX: face.w / 2
                    radiusY: face.h / 2
                    startAngle: 0
                    sweepAngle: 360
                }
            }
        }
        Rectangle {
            anchors.centerIn: parent
            width: Math.min(face.width, Math.max(72, name.implicitWidth + 2 * Theme.gap))
            height: name.height + 2 * Theme.tight
            radius: Theme.radius
            color: Theme.colour.surface
            border.width: 2
            border.color: Theme.colour.ink
            Words {
                id: name
                anchors.centerIn: parent
                width: Math.min(implicitWidth, face.width - 2 * Theme.gap)
                meaning: Words.Title
                horizontalAlignment: Text.AlignHCenter
                text: bed.mark.length > 0 ? bed.mark : "\u2013"
                Accessible.ignored: true
            }
        }
    }
    Words {
        width: parent.width
        horizontalAlignment: Text.AlignHCenter
        text: bed.ink.length > 0 ? qsTr("Ink: %1").arg(bed.ink) : qsTr("Ink not said")
        Accessible.ignored: true
    }
}
