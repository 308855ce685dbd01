import QtQuick
import QtQuick.Layouts
import Weavelog.Theme

// What a place says while nothing is in it, and how something gets there.
ColumnLayout {
    id: empty

    property string iconName: "note"
    property string title
    property string text
    property string actionText
    signal acted()

    spacing: Theme.gap

    Icon {
        Layout.alignment: Qt.AlignHCenter
        name: empty.iconName
        size: 72
        stroke: 1.2
        colour: Theme.colour.quietInk
    }
    Words {
        Layout.fillWidth: true
        meaning: Words.Title
        text: empty.title
        horizontalAlignment: Text.AlignHCenter
    }
    Words {
        Layout.fillWidth: true
        Layout.maximumWidth: 460
        Layout.alignment: Qt.AlignHCenter
        visible: empty.text.length > 0
        quiet: true
        text: empty.text
        horizontalAlignment: Text.AlignHCenter
    }
    ActionButton {
        objectName: "emptyAction"
        Layout.alignment: Qt.AlignHCenter
        Layout.maximumWidth: empty.width
        visible: empty.actionText.length > 0
        text: empty.actionText
        onClicked: empty.acted()
    }
}
