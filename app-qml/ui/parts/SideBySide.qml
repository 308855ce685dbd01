import QtQuick
import Weavelog.Theme

// Equal columns, as many as have room, otherwise below each other. A child takes `width: parent.columnWidth`.
Flow {
    property real least: 250
    property int most: 2
    readonly property int columns: Math.max(1, Math.min(most, Math.floor((width + spacing) / (least + spacing))))
    readonly property real columnWidth: Math.floor((width - (columns - 1) * spacing) / columns)

    spacing: Theme.gap
}
