import QtQuick
import Weavelog.Theme
import Weavelog.View

// A figure with its unit beside it, told from a distance. Shrinks to the width it is given.
Item {
    id: digits

    property string value
    property string unit
    property int size: Theme.type.figure
    property color colour: Theme.colour.ink
    readonly property string shownValue: value.length > 0 ? Figures.shown(value, Settings.language) : "\u2013"
    readonly property real wish: figure.implicitWidth + (unit.length > 0 ? unitWords.implicitWidth + size * 0.12 : 0)
    readonly property real shrink: width > 0 && wish > width ? width / wish : 1

    implicitWidth: Math.ceil(wish)
    implicitHeight: Math.ceil(size * 1.05)
    Accessible.role: Accessible.StaticText
    Accessible.name: unit.length > 0 ? shownValue + " " + unit : shownValue

    Row {
        // A figure and its unit are read from left to right in every script.
        LayoutMirroring.enabled: false
        LayoutMirroring.childrenInherit: true
        scale: digits.shrink
        transformOrigin: Item.Left
        anchors.verticalCenter: parent.verticalCenter
        spacing: digits.size * 0.12

        Text {
            id: figure
            text: digits.shownValue
            font.pixelSize: digits.size
            font.weight: Font.Bold
            color: digits.colour
            Accessible.ignored: true
        }
        Text {
            id: unitWords
            anchors.baseline: figure.baseline
            visible: digits.unit.length > 0
            text: digits.unit
            font.pixelSize: Math.max(Theme.type.caption, digits.size * 0.34)
            font.weight: Font.DemiBold
            color: digits.colour
            Accessible.ignored: true
        }
    }
}
