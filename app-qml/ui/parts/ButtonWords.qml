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
    implicitHeight: Theme.mainTouch - 2 * Theme.tight

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
            height: face.implicitHeight
            wrapMode: Text.WordWrap
            // What does not fit on two lines is written smaller rather than broken or cut.
            fontSizeMode: Text.Fit
            minimumPixelSize: 12
            horizontalAlignment: Text.AlignHCenter
            verticalAlignment: Text.AlignVCenter
            Accessible.ignored: true
        }
    }
}
