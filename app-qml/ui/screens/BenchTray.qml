pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Templates as T
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// While a player is carried by the finger: every bench with what the move costs, to let go over one of them.
Item {
    id: tray

    property var who: null
    property var ways: []
    property int over: -1     // the bench under the finger
    property point at
    readonly property bool carried: who !== null

    function begin(person, point) {
        ways = BenchesModel.waysOf(person.person);
        over = -1;
        at = point;
        who = person;
    }
    function follow(point) {
        if (!who) return;
        at = point;
        over = -1;
        for (let i = 0; i < targets.count; ++i) {
            const target = targets.itemAt(i);
            if (target && target.contains(target.mapFromItem(null, point.x, point.y))) over = i;
        }
    }
    function end() {
        const person = who, way = ways[over];
        who = null;
        if (person && way && way.allowed && !way.here) BenchesModel.move(person.person, way.bench, qsTr("Moved, and pinned there"));
    }

    implicitHeight: 0

    Item {
        parent: T.Overlay.overlay
        anchors.fill: parent
        visible: tray.carried
        z: 10

        Rectangle {
            id: ground
            anchors.bottom: parent.bottom
            width: parent.width
            // Of a room with many benches each target is lower, so that all are in reach.
            readonly property int rows: Math.ceil(tray.ways.length / grid.columns)
            readonly property real room: parent.height * 0.72 - head.height - 3 * Theme.gap
            readonly property int target: Math.max(28, Math.min(64, Math.floor(room / Math.max(1, rows)) - grid.spacing))
            height: head.height + grid.height + 3 * Theme.gap
            color: Theme.colour.surface
            border.width: 1
            border.color: Theme.colour.controlLine
            Words {
                id: head
                x: Theme.room
                y: Theme.gap
                width: parent.width - 2 * Theme.room
                meaning: Words.Strong
                text: qsTr("Let %1 go over a bench. The number says what the plan loses by it.").arg(tray.who?.name ?? "")
            }
            Grid {
                id: grid
                x: Theme.room
                anchors.top: head.bottom
                anchors.topMargin: Theme.gap
                columns: Math.max(2, Math.min(6, tray.ways.length, Math.floor((parent.width - 2 * Theme.room) / 150)))
                spacing: Theme.tight
                Repeater {
                    id: targets
                    model: tray.ways
                    Rectangle {
                        id: target
                        required property var modelData
                        required property int index
                        readonly property bool open: modelData.allowed && !modelData.here
                        objectName: "target" + modelData.bench
                        width: Math.floor((ground.width - 2 * Theme.room - (grid.columns - 1) * grid.spacing) / grid.columns)
                        height: ground.target
                        radius: Theme.radius
                        color: !target.open ? Theme.colour.disabledGround : tray.over === index ? Theme.colour.action : Theme.colour.raised
                        border.width: tray.over === index ? 3 : 1
                        border.color: tray.over === index ? Theme.colour.focus : Theme.colour.controlLine
                        Column {
                            anchors.centerIn: parent
                            width: parent.width - 2 * Theme.tight
                            Words {
                                width: parent.width
                                horizontalAlignment: Text.AlignHCenter
                                meaning: Words.Strong
                                maximumLineCount: 1
                                elide: Text.ElideRight
                                color: !target.open ? Theme.colour.disabledInk : tray.over === target.index ? Theme.colour.onAction : Theme.colour.ink
                                text: ground.target > 44 || !target.open ? target.modelData.name : target.modelData.name + "  " + target.modelData.cost
                            }
                            Words {
                                width: parent.width
                                visible: ground.target > 44
                                horizontalAlignment: Text.AlignHCenter
                                meaning: Words.Caption
                                color: !target.open ? Theme.colour.disabledInk : tray.over === target.index ? Theme.colour.onAction : Theme.colour.quietInk
                                text: target.modelData.here ? qsTr("here") : target.modelData.allowed ? target.modelData.cost : qsTr("a wish forbids it")
                            }
                        }
                    }
                }
            }
        }
        Rectangle {
            x: Math.min(Math.max(0, tray.at.x - 20), parent.width - width)
            y: tray.at.y - height - 12
            width: Math.min(260, carriedName.implicitWidth + 2 * Theme.gap)
            height: 44
            radius: Theme.radius
            color: Theme.colour.toast
            Words {
                id: carriedName
                anchors.centerIn: parent
                width: Math.min(implicitWidth, 240)
                elide: Text.ElideRight
                wrapMode: Text.NoWrap
                meaning: Words.Strong
                color: Theme.colour.onToast
                text: tray.who?.name ?? ""
            }
        }
    }
}
