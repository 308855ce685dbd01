import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// A drop-off that was begun and neither stored nor thrown away.
Rectangle {
    id: row

    required property var modelData
    property bool asking: false

    implicitHeight: flow.implicitHeight + 2 * Theme.gap
    radius: Theme.radius
    color: Theme.colour.attentionGround
    Accessible.role: Accessible.Grouping
    Accessible.name: words.text

    SideBySide {
        id: flow
        x: Theme.room
        y: Theme.gap
        width: parent.width - 2 * Theme.room
        least: 300

        ColumnLayout {
            width: parent.columnWidth
            spacing: 0
            Words {
                id: words
                Layout.fillWidth: true
                meaning: Words.Strong
                color: Theme.colour.attention
                text: row.asking ? qsTr("Throw this drop-off away?")
                    : row.modelData.player.length > 0 ? qsTr("Unfinished drop-off: %1").arg(row.modelData.player)
                    : qsTr("Unfinished drop-off of a new player")
            }
            Words {
                Layout.fillWidth: true
                text: qsTr("Rackets: %1, begun %2").arg(row.modelData.rackets).arg(row.modelData.day)
            }
        }
        RowLayout {
            width: parent.columnWidth
            spacing: Theme.gap
            ActionButton {
                objectName: "goOn"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                text: row.asking ? qsTr("Keep it") : qsTr("Go on")
                onClicked: row.asking ? (row.asking = false) : DeskModel.resume(row.modelData.id)
            }
            ActionButton {
                objectName: "throwAway"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                kind: row.asking ? ActionButton.Danger : ActionButton.Secondary
                text: qsTr("Throw away")
                onClicked: row.asking ? DeskModel.draft.discard(row.modelData.id) : (row.asking = true)
            }
        }
    }
}
