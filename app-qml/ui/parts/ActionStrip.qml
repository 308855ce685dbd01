import QtQuick
import QtQuick.Layouts
import Weavelog.Theme

// The next steps of a page, always in sight at its foot.
Rectangle {
    id: strip

    default property alias content: row.data
    property int widest: 1000

    implicitHeight: row.implicitHeight + 2 * Theme.gap
    color: Theme.colour.surface

    Rectangle {
        width: parent.width
        height: Theme.hair
        color: Theme.colour.line
    }
    RowLayout {
        id: row
        x: Math.max(Theme.gap + 4, (strip.width - width) / 2)
        y: Theme.gap
        width: Math.min(strip.widest, strip.width - 2 * (Theme.gap + 4))
        spacing: Theme.gap
    }
}
