import QtQuick
import QtQuick.Layouts
import Weavelog.Parts

// Where two people said different things without seeing each other.
PageFrame {
    title: qsTr("Questions")

    EmptyState {
        Layout.fillWidth: true
        Layout.alignment: Qt.AlignCenter
        iconName: "question"
        title: qsTr("No open question")
        text: qsTr("Where two devices hold different answers for one player, both are shown here until somebody picks one.")
    }
}
