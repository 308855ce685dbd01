import QtQuick
import QtQuick.Layouts
import Weavelog.Parts

// Where rackets come in and go out.
PageFrame {
    title: qsTr("Desk")

    EmptyState {
        Layout.fillWidth: true
        Layout.alignment: Qt.AlignCenter
        iconName: "desk"
        title: qsTr("Nobody has handed rackets over yet")
        text: qsTr("Drop-offs of this event appear here, the newest first.")
    }
}
