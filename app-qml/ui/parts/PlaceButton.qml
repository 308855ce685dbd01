import QtQuick
import QtQuick.Layouts
import Weavelog.Theme

// One place in the rail or the bar, with the number of things that wait there.
TouchButton {
    id: place

    property string iconName
    property int waiting: 0
    property bool current: false

    padding: 2
    ringInside: true
    implicitHeight: Math.max(60, implicitContentHeight + 2 * padding)
    Accessible.role: Accessible.PageTab
    Accessible.name: waiting > 0 ? qsTr("%1, %2 waiting").arg(text).arg(waiting) : text
    Accessible.selected: current

    background: Rectangle {
        radius: Theme.radius
        color: place.current ? Theme.colour.action : place.down ? Theme.colour.chosenGround : "transparent"
    }
    contentItem: ColumnLayout {
        spacing: 2

        Item { Layout.fillHeight: true }
        Icon {
            Layout.alignment: Qt.AlignHCenter
            name: place.iconName
            size: 28
            stroke: place.iconName === "more" ? 4 : 1.8
            colour: place.current ? Theme.colour.onAction : Theme.colour.ink

            Rectangle {
                visible: place.waiting > 0
                x: parent.width - 8
                y: -6
                width: Math.max(22, count.implicitWidth + 10)
                height: 22
                radius: 11
                color: Theme.colour.rush

                Text {
                    id: count
                    anchors.centerIn: parent
                    text: place.waiting > 99 ? "99+" : place.waiting
                    font.pixelSize: 13
                    font.weight: Font.DemiBold
                    color: Theme.colour.onRush
                    Accessible.ignored: true
                }
            }
        }
        Text {
            Layout.fillWidth: true
            text: place.text
            font.pixelSize: Math.min(Theme.type.caption, 18)
            font.weight: place.current ? Font.DemiBold : Font.Normal
            color: place.current ? Theme.colour.onAction : Theme.colour.ink
            horizontalAlignment: Text.AlignHCenter
            elide: Text.ElideRight
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: 11
            Accessible.ignored: true
        }
        Item { Layout.fillHeight: true }
    }
}
