import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// The camera as a scanner: a tag or a player card is held before it.
Sheet {
    id: sheet

    title: qsTr("Scan with the camera")
    onClosed: if (!CameraModel.photos) CameraModel.on = false

    Words {
        Layout.fillWidth: true
        text: qsTr("Hold the code of one tag or card in the frame.")
    }
    Loader {
        objectName: "sight"
        Layout.fillWidth: true
        Layout.preferredHeight: Math.min(420, width * 0.75)
        active: sheet.opened
        visible: status !== Loader.Error
        source: "CameraSight.qml"
    }
    Notice {
        objectName: "cameraFault"
        Layout.fillWidth: true
        visible: CameraModel.fault.length > 0
        kind: Notice.Attention
        text: CameraModel.fault
    }
}
