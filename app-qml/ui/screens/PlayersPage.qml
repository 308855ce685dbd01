import QtQuick
import QtQuick.Layouts
import Weavelog.Parts

// Everybody whose book this device holds.
PageFrame {
    title: qsTr("Players")

    EmptyState {
        Layout.fillWidth: true
        Layout.alignment: Qt.AlignCenter
        iconName: "players"
        title: qsTr("No player is known on this device")
        text: qsTr("Players come with an entry list, with an exchange, or are added at the desk.")
    }
}
