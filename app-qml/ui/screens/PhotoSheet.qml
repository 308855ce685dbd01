import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The camera for photos of a racket: every tap keeps one.
Sheet {
    id: sheet

    required property PhotosModel photos
    property int kept: 0

    function show() {
        kept = 0;
        CameraModel.showForPhotos();
        open();
    }

    title: qsTr("Take a photo")
    onClosed: if (CameraModel.photos) CameraModel.on = false

    Connections {
        target: CameraModel
        function onTaken(picture) {
            if (sheet.opened && sheet.photos.addPicture(picture, qsTr("Photo kept"))) sheet.kept += 1;
        }
    }
    Loader {
        objectName: "photoSight"
        Layout.fillWidth: true
        Layout.preferredHeight: Math.min(420, width * 0.75)
        active: sheet.opened
        visible: status !== Loader.Error && CameraModel.fault.length === 0
        source: "CameraSight.qml"
    }
    Notice {
        objectName: "photoCameraFault"
        Layout.fillWidth: true
        visible: CameraModel.fault.length > 0
        kind: Notice.Attention
        text: CameraModel.fault
    }
    Words {
        objectName: "photosTaken"
        Layout.fillWidth: true
        visible: sheet.kept > 0
        text: qsTr("%n photo(s) kept", "", sheet.kept)
    }
    foot: ActionButton {
        objectName: "takePhoto"
        Layout.fillWidth: true
        iconName: "camera"
        text: qsTr("Take it")
        onClicked: CameraModel.take()
    }
}
