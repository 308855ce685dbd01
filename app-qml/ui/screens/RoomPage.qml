import QtQuick
import QtQuick.Layouts
import Weavelog.Parts

// All jobs of the event by their stage.
PageFrame {
    title: qsTr("Room")

    EmptyState {
        Layout.fillWidth: true
        Layout.alignment: Qt.AlignCenter
        iconName: "room"
        title: qsTr("No racket is in the room")
        text: qsTr("Every job of the event stands here under its stage, from taken in to handed over.")
    }
}
