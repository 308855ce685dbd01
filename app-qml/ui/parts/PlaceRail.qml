pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Theme

// The places of the app at the side of a wide window.
Rectangle {
    id: rail

    // [{key, text, icon, waiting}]
    property var places: []
    property string current
    signal picked(string key)

    implicitWidth: 112
    implicitHeight: column.implicitHeight + 2 * Theme.gap
    color: Theme.colour.surface
    Accessible.role: Accessible.PageTabList
    Accessible.name: qsTr("Places")

    ColumnLayout {
        id: column
        anchors.fill: parent
        anchors.margins: Theme.tight
        anchors.topMargin: Theme.gap
        spacing: 4

        Repeater {
            model: rail.places

            PlaceButton {
                id: place
                required property var modelData
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.maximumHeight: 84
                objectName: place.modelData.key
                text: place.modelData.text
                iconName: place.modelData.icon
                waiting: place.modelData.waiting ?? 0
                current: rail.current === place.modelData.key
                onClicked: rail.picked(place.modelData.key)
            }
        }
        Item {
            Layout.fillHeight: true
            Layout.preferredHeight: 0
        }
    }
    Rectangle {
        anchors.right: parent.right
        width: 1
        height: parent.height
        color: Theme.colour.line
    }
}
