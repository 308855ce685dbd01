import QtQuick
import Weavelog.Theme

// What stands on a button: a drawing and a few words in its middle, on two lines where they do not fit on one.
Item {
    id: face

    property string text
    property string iconName
    property color colour
    property alias font: words.font

    implicitWidth: Math.ceil(measure.implicitWidth) + row.iconRoom
    implicitHeight: words.implicitHeight

    // How wide the text would like to be, whatever it is given.
    Text {
        id: measure
        visible: false
        text: face.text
        font: words.font
        Accessible.ignored: true
    }
    Row {
        id: row
        readonly property real iconRoom: icon.visible ? icon.size + spacing : 0
        anchors.centerIn: parent
        spacing: Theme.tight + 2

        Icon {
            id: icon
            anchors.verticalCenter: parent.verticalCenter
            visible: face.iconName.length > 0
            name: face.iconName
            colour: face.colour
            size: Math.round(words.font.pixelSize * 1.3)
            stroke: 2.4
        }
        Text {
            id: words
            anchors.verticalCenter: parent.verticalCenter
            width: Math.min(Math.ceil(measure.implicitWidth), Math.max(0, face.width - row.iconRoom))
            text: face.text
            textFormat: Text.PlainText
            color: face.colour
            wrapMode: Text.Wrap
            maximumLineCount: 2
            elide: Text.ElideRight
            horizontalAlignment: Text.AlignHCenter
            Accessible.ignored: true
        }
    }
}
