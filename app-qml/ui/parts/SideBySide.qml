import QtQuick
import Weavelog.Theme

// Equal columns, as many as have room, otherwise below each other. A child takes `width: parent.columnWidth`.
Flow {
    property real least: 250
    property int most: 2
    readonly property int columns: Math.max(1, Math.min(most, Math.floor((width + spacing) / (least + spacing))))
    // Before there is a width, that of a column that just fits: a positioner leaves children without one out, and texts
    // would be measured in a column of no width.
    readonly property real columnWidth: width < 1 ? least : Math.floor((width - (columns - 1) * spacing) / columns)

    spacing: Theme.gap
}
