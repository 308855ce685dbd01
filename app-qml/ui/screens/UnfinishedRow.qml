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

    // The second tap of a finger that taps twice answers nothing.
    function ask(now) {
        if (!now && asked.running) return;
        asking = now;
        if (now) asked.restart();
    }

    Timer { id: asked; interval: 500 }

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
                text: row.asking ? (row.modelData.player.length > 0 ? qsTr("Throw away the drop-off of %1?").arg(row.modelData.player)
                                                                    : qsTr("Throw away the drop-off of a new player?"))
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
            // What throws it away stands elsewhere than what asks for it: a second tap at one place keeps it.
            ActionButton {
                objectName: row.asking ? "throwAwayYes" : "goOn"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                kind: row.asking ? ActionButton.Danger : ActionButton.Primary
                text: row.asking ? qsTr("Throw away") : qsTr("Go on")
                Accessible.name: text + ": " + words.text
                onClicked: row.asking ? DeskModel.draft.discard(row.modelData.id) : DeskModel.resume(row.modelData.id)
            }
            ActionButton {
                objectName: row.asking ? "keepIt" : "throwAway"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                kind: ActionButton.Secondary
                text: row.asking ? qsTr("Keep it") : qsTr("Throw away")
                Accessible.name: text + ": " + words.text
                onClicked: row.ask(!row.asking)
            }
        }
    }
}
