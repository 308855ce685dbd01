import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic as Basic
import Weavelog.Theme

// One column that scrolls where it does not fit, and follows the keyboard.
Flickable {
    id: flick

    property int widest: 100000
    property int margin: 0
    property alias spacing: column.spacing
    default property alias content: column.data

    // Brings an item into view that the keyboard has reached.
    function reveal(item) {
        let inside = false;
        for (let up = item; up; up = up.parent) inside = inside || up === column;
        if (!inside) return;
        const top = item.mapToItem(column, 0, 0).y;
        if (top < contentY + margin) {
            contentY = Math.max(0, top - margin);
        } else if (top + item.height > contentY + height - margin) {
            contentY = Math.min(Math.max(0, contentHeight - height), top + item.height + margin - height);
        }
    }

    contentWidth: width
    contentHeight: column.implicitHeight + 2 * margin
    boundsBehavior: Flickable.StopAtBounds
    clip: true
    Basic.ScrollBar.vertical: Basic.ScrollBar {
        policy: flick.contentHeight > flick.height + 1 ? Basic.ScrollBar.AlwaysOn : Basic.ScrollBar.AlwaysOff
    }

    Connections {
        target: flick.Window.window
        function onActiveFocusItemChanged() {
            const item = flick.Window.window?.activeFocusItem;
            if (item) flick.reveal(item);
        }
    }
    ColumnLayout {
        id: column
        x: Math.max(flick.margin, (flick.width - flick.widest) / 2)
        y: flick.margin
        width: Math.min(flick.widest, flick.width - 2 * flick.margin)
        // A page with little on it still gives its column the height of the window.
        height: Math.max(implicitHeight, flick.height - 2 * flick.margin)
    }
}
