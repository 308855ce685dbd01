import QtQuick
import QtQuick.Shapes
import Weavelog.Theme

// A line drawing on a grid of 24, of our own, by name. Decoration only: the word beside it, or the control around
// it, carries the meaning for screen readers.
Item {
    id: icon

    property string name
    property real size: 24
    property color colour: Theme.colour.ink
    property real stroke: 2
    readonly property real unit: size / 24  // of the drawing, in pixels
    // Arrows turn round where reading runs from right to left.
    readonly property bool turned: LayoutMirroring.enabled && directed.indexOf(name) >= 0

    readonly property list<string> directed: ["arrow", "chevron", "back", "undo", "in", "out"]
    readonly property string ring: "M12 3A9 9 0 1 1 12 21A9 9 0 1 1 12 3Z"
    readonly property var paths: ({
        "minus": "M5 12H19",
        "plus": "M5 12H19M12 5V19",
        "close": "M6 6L18 18M18 6L6 18",
        "check": "M5 12.5L10 17.5L19 7",
        "search": "M10.5 4A6.5 6.5 0 1 1 10.5 17A6.5 6.5 0 1 1 10.5 4ZM15.5 15.5L20.5 20.5",
        "arrow": "M4 12H20M14 6L20 12L14 18",
        "back": "M20 12H4M10 6L4 12L10 18",
        "chevron": "M9 5L16 12L9 19",
        "down": "M5 9L12 16L19 9",
        "up": "M5 15L12 8L19 15",
        "question": ring + "M9.3 9.6A2.8 2.8 0 1 1 13 12.2C12.3 12.5 12 13 12 13.8M12 17V17.1",
        "warning": "M12 3.5L21.5 20H2.5ZM12 10V14.3M12 17V17.1",
        "info": ring + "M12 11V16.8M12 7.4V7.5",
        "desk": "M2.5 11H21.5M5 11V20M19 11V20M8.5 11V5H15.5V11M11 8H13",
        "room": "M3 4.5H7.5V19.5H3ZM10 4.5H14.5V12H10ZM17 4.5H21.5V16H17Z",
        "bench": "M9.5 3C13 3 17 7 17 11C17 14 15 16 12 16C8 16 3.5 12 3.5 8C3.5 5 6 3 9.5 3Z"
                 + "M15.8 14.5L21.5 20.5M8.5 3.2V14.2M12.7 4.3V15.8M3.8 7H15.3M5.2 11.3H16.9",
        "players": "M9 4.5A3.3 3.3 0 1 1 9 11.1A3.3 3.3 0 1 1 9 4.5ZM2.8 19.5C2.8 15.8 5.5 14 9 14C12.5 14 15.2 15.8 15.2 19.5"
                   + "M16 5A3 3 0 0 1 16 10.7M18 14.4C20 15.2 21.2 16.8 21.2 19.5",
        "exchange": "M4 8H19M15 4L19 8L15 12M20 16H5M9 12L5 16L9 20",
        "settings": "M3.5 7H12.5M18 7H20.5M15.3 4.3A2.7 2.7 0 1 1 15.3 9.7A2.7 2.7 0 1 1 15.3 4.3Z"
                    + "M3.5 17H6M11.5 17H20.5M8.7 14.3A2.7 2.7 0 1 1 8.7 19.7A2.7 2.7 0 1 1 8.7 14.3Z",
        "undo": "M4 9H15A5 5 0 0 1 15 19H9M8 5L4 9L8 13",
        "turn": "M5 9A8 8 0 0 1 19 9M19 4V9H14M19 15A8 8 0 0 1 5 15M5 20V15H10",
        "more": "M5 12V12.1M12 12V12.1M19 12V12.1",
        "grip": "M9 6V6.1M15 6V6.1M9 12V12.1M15 12V12.1M9 18V18.1M15 18V18.1",
        "rush": "M13.5 2.5L5 13.5H11L10 21.5L19 10H13Z",
        "in": "M21 12H10M14 8L10 12L14 16M9 4H4V20H9",
        "out": "M4 12H15M11 8L15 12L11 16M15 4H20V20H15",
        "half": ring + "M12 3V21M12 7H19.4M12 11H20.8M12 15H20.2",
        "strung": "M4 4H20V20H4ZM9.3 4V20M14.7 4V20M4 9.3H20M4 14.7H20",
        "ready": ring + "M7.5 12.5L10.7 15.7L16.5 9",
        "stopped": ring + "M8.5 8.5L15.5 15.5M15.5 8.5L8.5 15.5",
        "cut": "M6.5 15A3 3 0 1 1 6.5 21A3 3 0 1 1 6.5 15ZM17.5 15A3 3 0 1 1 17.5 21A3 3 0 1 1 17.5 15ZM8.2 15.6L17 3"
               + "M15.8 15.6L7 3",
        "ink": "M12 3.5C15 8 18 11 18 14.5A6 6 0 0 1 6 14.5C6 11 9 8 12 3.5ZM9 14.5A3 3 0 0 0 12 17.5",
        "tag": "M3.5 3.5H12L20.5 12L12 20.5L3.5 12ZM8 7.9V8",
        "plan": "M3.5 5H9.5V11.5M3.5 18H9.5V11.5H15.5M15.5 8V15M15.5 11.5H20.5",
        "team": "M4 5.5H20V20.5H4ZM4 10H20M8.5 3V7.5M15.5 3V7.5M8 14H11M8 17H14",
        "money": "M2.5 6H21.5V18H2.5ZM12 9A3 3 0 1 1 12 15A3 3 0 1 1 12 9ZM5.5 9.2V9.3M18.5 14.7V14.8",
        "stock": ring + "M12 8.5A3.5 3.5 0 1 1 12 15.5A3.5 3.5 0 1 1 12 8.5ZM20.6 14.5L22 21H15",
        "camera": "M3 7.5H7.5L9.5 4.5H14.5L16.5 7.5H21V19H3ZM12 9.2A3.8 3.8 0 1 1 12 16.8A3.8 3.8 0 1 1 12 9.2Z",
        "clock": ring + "M12 7V12L15.5 14",
        "note": "M5 3.5H19V20.5H5ZM8.5 8H15.5M8.5 12H15.5M8.5 16H12.5"
    })

    implicitWidth: size
    implicitHeight: size
    Accessible.ignored: true

    Shape {
        anchors.centerIn: parent
        width: icon.size
        height: icon.size
        transform: Scale { xScale: icon.turned ? -1 : 1; origin.x: icon.size / 2 }

        ShapePath {
            strokeColor: icon.colour
            strokeWidth: icon.stroke * icon.unit
            fillColor: "transparent"
            capStyle: ShapePath.RoundCap
            joinStyle: ShapePath.RoundJoin
            scale: Qt.size(icon.unit, icon.unit)
            PathSvg { path: icon.paths[icon.name] ?? "" }
        }
    }
}
