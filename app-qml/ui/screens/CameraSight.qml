import QtQuick
import QtMultimedia
import Weavelog.Theme
import Weavelog.View

// What the camera sees. Loaded only while it is on, so that nobody waits for the multimedia library who needs no camera.
Rectangle {
    color: Theme.colour.ink
    radius: Theme.radius
    clip: true

    VideoOutput {
        id: output
        anchors.fill: parent
        fillMode: VideoOutput.PreserveAspectCrop
        Component.onCompleted: CameraModel.picture = output.videoSink
    }
    // Where the code is held.
    Rectangle {
        visible: !CameraModel.photos
        anchors.centerIn: parent
        width: Math.min(parent.width, parent.height) * 0.6
        height: width
        color: "transparent"
        border.width: 3
        border.color: Theme.colour.surface
        radius: Theme.radius
    }
}
