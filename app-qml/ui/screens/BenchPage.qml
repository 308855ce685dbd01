import QtQuick
import QtQuick.Layouts
import Weavelog.Parts

// The racket that is strung now, and the next.
PageFrame {
    title: qsTr("Bench")

    EmptyState {
        Layout.fillWidth: true
        Layout.alignment: Qt.AlignCenter
        iconName: "bench"
        title: qsTr("No racket is waiting for this bench")
        text: qsTr("The next racket appears here with what was agreed, in large digits.")
    }
}
