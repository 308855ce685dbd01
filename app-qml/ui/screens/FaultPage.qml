import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// Instead of every place where this device's folder could not be opened: what, where, what to do.
PageFrame {
    title: qsTr("What this device holds cannot be opened")
    widest: 760

    Notice {
        objectName: "fault"
        Layout.fillWidth: true
        kind: Notice.Danger
        title: AppDevice.faultWhat
        text: AppDevice.faultToDo
    }
    Words {
        Layout.fillWidth: true
        visible: AppDevice.faultWhere.length > 0
        quiet: true
        text: AppDevice.faultWhere
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("Nothing was changed. Mend it, then start the app again.")
    }
    ActionButton {
        text: qsTr("Leave")
        onClicked: Qt.quit()
    }
    Item { Layout.fillHeight: true }
}
