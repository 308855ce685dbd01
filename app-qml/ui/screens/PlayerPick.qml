pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Whose books go to somebody. Who may not go is shown with the reason.
ColumnLayout {
    id: players

    required property PlayerChoice choice

    spacing: Theme.gap

    SideBySide {
        Layout.fillWidth: true
        least: 200
        ActionButton {
            objectName: "thoseOfEvent"
            width: parent.columnWidth
            kind: ActionButton.Secondary
            enabled: AppDevice.event.length > 0
            text: qsTr("All of this event")
            onClicked: players.choice.chooseThoseOfEvent()
        }
        ActionButton {
            objectName: "nobody"
            width: parent.columnWidth
            kind: ActionButton.Quiet
            enabled: players.choice.chosen > 0
            text: qsTr("Nobody")
            onClicked: players.choice.chooseNobody()
        }
    }
    SearchEntry {
        objectName: "findPlayer"
        Layout.fillWidth: true
        name: qsTr("Find a player")
        text: players.choice.typed
        onEdited: text => players.choice.typed = text
    }
    Words {
        objectName: "chosen"
        Layout.fillWidth: true
        meaning: Words.Strong
        text: players.choice.chosen === 0 ? qsTr("Nobody is chosen yet") : qsTr("%n player(s) chosen", "", players.choice.chosen)
    }
    ListView {
        id: list
        objectName: "chooseFrom"
        Layout.fillWidth: true
        Layout.preferredHeight: Math.min(contentHeight, 5.5 * Theme.mainTouch)
        clip: true
        spacing: Theme.tight
        boundsBehavior: Flickable.StopAtBounds
        model: players.choice

        delegate: CheckChip {
            required property string book
            required property string name
            required property string why
            required property bool chosen
            required property bool allowed
            required property var model

            width: list.width
            enabled: allowed
            text: name
            detail: allowed ? model.detail : why
            checked: chosen
            onToggled: players.choice.choose(book, checked)
        }
    }
}
