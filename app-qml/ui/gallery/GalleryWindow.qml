import QtQuick
import QtQuick.Window
import Weavelog.Theme

// The window of `weavelog --gallery`.
Window {
    width: 1280
    height: 800
    visible: true
    title: qsTr("Weavelog: every part in every state")
    color: Theme.colour.ground

    Gallery { anchors.fill: parent }
}
