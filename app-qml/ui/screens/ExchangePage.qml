import QtQuick
import QtQuick.Layouts
import Weavelog.Parts

// Bringing this device and others up to date.
PageFrame {
    title: qsTr("Exchange")

    EmptyState {
        Layout.fillWidth: true
        Layout.alignment: Qt.AlignCenter
        iconName: "exchange"
        title: qsTr("This device has met no other yet")
        text: qsTr("Pair it with an event server, or bring a bundle in from a file.")
    }
}
