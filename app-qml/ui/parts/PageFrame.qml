import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic as Basic
import Weavelog.Theme

// A page of the app: its heading, and its content in one column that scrolls and follows the keyboard.
FocusScope {
    id: page

    property string title
    property string detail
    property int widest: 1000
    default property alias content: body.data
    property alias flickable: flick
    readonly property bool narrow: width < Theme.phoneWidth
    readonly property int margin: narrow ? Theme.gap + 4 : Theme.page

    // Brings an item into view that the keyboard has reached.
    function reveal(item) {
        let inside = false;
        for (let up = item; up; up = up.parent) inside = inside || up === column;
        if (!inside) return;
        const top = item.mapToItem(column, 0, 0).y;
        if (top < flick.contentY + margin) {
            flick.contentY = Math.max(0, top - margin);
        } else if (top + item.height > flick.contentY + flick.height - margin) {
            flick.contentY = Math.min(Math.max(0, flick.contentHeight - flick.height),
                                      top + item.height + margin - flick.height);
        }
    }

    Connections {
        target: page.Window.window
        function onActiveFocusItemChanged() {
            const item = page.Window.window?.activeFocusItem;
            if (item) page.reveal(item);
        }
    }
    Flickable {
        id: flick
        anchors.fill: parent
        contentWidth: width
        contentHeight: column.implicitHeight + 2 * page.margin
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        Basic.ScrollBar.vertical: Basic.ScrollBar {}

        ColumnLayout {
            id: column
            x: Math.max(page.margin, (flick.width - page.widest) / 2)
            y: page.margin
            width: Math.min(page.widest, flick.width - 2 * page.margin)
            // A page with little on it still gives its column the height of the window.
            height: Math.max(implicitHeight, flick.height - 2 * page.margin)
            spacing: Theme.room

            ColumnLayout {
                Layout.fillHeight: false
                spacing: 2
                Words {
                    Layout.fillWidth: true
                    meaning: Words.Heading
                    text: page.title
                }
                Words {
                    Layout.fillWidth: true
                    visible: page.detail.length > 0
                    quiet: true
                    text: page.detail
                }
            }
            ColumnLayout {
                id: body
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.maximumHeight: Infinity
                spacing: Theme.room
            }
        }
    }
}
