import QtQuick
import QtQuick.Layouts
import Weavelog.Theme

// A sheet of card with what belongs together on it.
Rectangle {
    id: card

    property string title
    property string detail
    default property alias content: body.data
    property alias spacing: body.spacing
    property int padding: Theme.room
    property bool filled: true  // false: nothing stands below the heading now

    implicitWidth: 320
    implicitHeight: column.implicitHeight + 2 * padding
    radius: Theme.radius + 2
    color: Theme.colour.surface
    border.width: 1
    border.color: Theme.colour.line
    Accessible.role: Accessible.Grouping
    Accessible.name: title

    ColumnLayout {
        id: column
        x: card.padding
        y: card.padding
        width: card.width - 2 * card.padding
        spacing: Theme.gap

        // A positioner: its height follows a wrapped text at once.
        Column {
            id: head
            Layout.fillWidth: true
            visible: card.title.length > 0
            spacing: 2
            Words {
                width: head.width
                meaning: Words.Title
                text: card.title
            }
            Words {
                width: head.width
                visible: card.detail.length > 0
                meaning: Words.Caption
                quiet: true
                text: card.detail
            }
            Item {
                width: 1
                height: Theme.tight - 2
                visible: body.visible
            }
            Rectangle {
                width: head.width
                visible: body.visible
                height: Theme.hair
                color: Theme.colour.ink
            }
        }
        ColumnLayout {
            id: body
            Layout.fillWidth: true
            visible: card.filled
            spacing: Theme.gap
        }
    }
}
