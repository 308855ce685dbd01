pragma ComponentBehavior: Bound
import QtQuick
import Weavelog.Parts
import Weavelog.Theme

// The players of one bench below each other. Lines on their right join two who may meet: the likelier, the stronger; dashed where it can be so late
// that it should not be. A handle carries a player to another bench.
Item {
    id: list

    property var people: []    // as BenchesModel.benches has them
    property var meetings: []
    signal opened(var person)
    signal taken(var person, point at)
    signal moved(point at)
    signal letGo()

    implicitHeight: rows.implicitHeight

    Column {
        id: rows
        width: list.width
        Repeater {
            id: each
            model: list.people
            Item {
                id: row
                required property var modelData
                width: rows.width
                height: button.height

                ListRow {
                    id: button
                    objectName: "person" + row.modelData.person
                    width: row.width
                    leftPadding: 48
                    rightPadding: lines.visible ? 38 : Theme.gap
                    mostLines: 3
                    opens: false
                    text: row.modelData.name
                    detail: row.modelData.meets
                    endText: row.modelData.pinned ? qsTr("pinned") : ""
                    onClicked: list.opened(row.modelData)
                }
                MouseArea {
                    objectName: "grip" + row.modelData.person
                    width: 48
                    height: parent.height
                    preventStealing: true
                    cursorShape: Qt.OpenHandCursor
                    Accessible.role: Accessible.Button
                    Accessible.name: qsTr("Carry %1 to another bench").arg(row.modelData.name)  // whoever has no pointer opens the row
                    onPressed: mouse => list.taken(row.modelData, mapToItem(null, mouse.x, mouse.y))
                    onPositionChanged: mouse => list.moved(mapToItem(null, mouse.x, mouse.y))
                    onReleased: list.letGo()
                    onCanceled: list.letGo()
                    Icon { anchors.centerIn: parent; name: "grip"; colour: Theme.colour.quietInk }
                }
            }
        }
    }
    Item {
        id: lines
        anchors.right: parent.right
        width: 34
        height: rows.height
        visible: list.meetings.length > 0

        Repeater {
            model: Array.from(list.meetings).slice(0, 6)
            Item {
                id: line
                required property var modelData
                required property int index
                readonly property Item from: each.count > modelData.one ? each.itemAt(modelData.one) : null
                readonly property Item to: each.count > modelData.other ? each.itemAt(modelData.other) : null
                readonly property real upper: from && to ? Math.min(from.y + from.height / 2, to.y + to.height / 2) + index % 3 * 3 : 0
                readonly property real lower: from && to ? Math.max(from.y + from.height / 2, to.y + to.height / 2) - index % 3 * 3 : 0
                readonly property int thick: modelData.odds >= 0.25 ? 4 : modelData.odds >= 0.08 ? 3 : 2
                readonly property color colour: modelData.late ? Theme.colour.danger : Theme.colour.attention

                y: upper
                width: 10 + 4 * index
                height: Math.max(0, lower - upper)
                Rectangle { width: line.width; height: line.thick; color: line.colour }
                Rectangle { y: line.height - height; width: line.width; height: line.thick; color: line.colour }
                Rectangle { visible: !line.modelData.late; x: line.width - width; width: line.thick; height: line.height; color: line.colour }
                Repeater {
                    model: line.modelData.late ? Math.ceil(line.height / 10) : 0
                    Rectangle {
                        required property int index
                        x: line.width - width
                        y: index * 10
                        width: line.thick
                        height: Math.min(6, line.height - y)
                        color: line.colour
                    }
                }
            }
        }
    }
}
