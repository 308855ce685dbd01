pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Theme

// The places of the app at the bottom of a narrow window: the first four, and the others behind "More".
Rectangle {
    id: bar

    // [{key, text, icon, waiting}]
    property var places: []
    property string current
    readonly property int direct: 4
    readonly property var others: places.slice(direct)
    signal picked(string key)

    implicitWidth: 412
    implicitHeight: 72
    color: Theme.colour.surface
    Accessible.role: Accessible.PageTabList
    Accessible.name: qsTr("Places")

    Rectangle {
        width: parent.width
        height: 1
        color: Theme.colour.line
    }
    RowLayout {
        anchors.fill: parent
        anchors.margins: 4
        spacing: 2

        Repeater {
            model: bar.places.slice(0, bar.direct)

            PlaceButton {
                id: place
                required property var modelData
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                Layout.fillHeight: true
                objectName: place.modelData.key
                text: place.modelData.text
                iconName: place.modelData.icon
                waiting: place.modelData.waiting ?? 0
                current: bar.current === place.modelData.key
                onClicked: bar.picked(place.modelData.key)
            }
        }
        PlaceButton {
            objectName: "more"
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.fillHeight: true
            text: qsTr("More")
            iconName: "more"
            waiting: bar.others.reduce((sum, one) => sum + (one.waiting ?? 0), 0)
            current: bar.others.some(one => one.key === bar.current)
            onClicked: sheet.open()
        }
    }
    Sheet {
        id: sheet
        title: qsTr("More places")

        Repeater {
            model: bar.others

            ListRow {
                id: other
                required property var modelData
                Layout.fillWidth: true
                objectName: other.modelData.key
                text: other.modelData.text
                iconName: other.modelData.icon
                endText: other.modelData.waiting > 0 ? other.modelData.waiting : ""
                chosen: bar.current === other.modelData.key
                onClicked: {
                    sheet.close();
                    bar.picked(other.modelData.key);
                }
            }
        }
    }
}
