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
                required property var modelData
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                Layout.fillHeight: true
                objectName: modelData.key
                text: modelData.text
                iconName: modelData.icon
                waiting: modelData.waiting ?? 0
                current: bar.current === modelData.key
                onClicked: bar.picked(modelData.key)
            }
        }
        PlaceButton {
            objectName: "more"
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.fillHeight: true
            text: qsTr("More")
            iconName: "more"
            waiting: bar.others.reduce((sum, place) => sum + (place.waiting ?? 0), 0)
            current: bar.others.some(place => place.key === bar.current)
            onClicked: sheet.open()
        }
    }
    Sheet {
        id: sheet
        title: qsTr("More places")

        Repeater {
            model: bar.others

            ListRow {
                required property var modelData
                Layout.fillWidth: true
                objectName: modelData.key
                text: modelData.text
                iconName: modelData.icon
                endText: modelData.waiting > 0 ? modelData.waiting : ""
                chosen: bar.current === modelData.key
                onClicked: {
                    sheet.close();
                    bar.picked(modelData.key);
                }
            }
        }
    }
}
