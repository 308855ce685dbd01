pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic as Basic
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The beginning of every drop-off: what was left unfinished, and finding the player.
FocusScope {
    id: page

    readonly property int margin: width < Theme.phoneWidth ? Theme.gap + 4 : Theme.page

    ColumnLayout {
        x: Math.max(page.margin, (page.width - 1000) / 2)
        y: page.margin
        width: Math.min(1000, page.width - 2 * page.margin)
        height: page.height - page.margin
        spacing: Theme.gap

        ColumnLayout {
            spacing: 2
            Words {
                Layout.fillWidth: true
                meaning: Words.Heading
                text: qsTr("Desk")
            }
            Words {
                Layout.fillWidth: true
                quiet: true
                text: AppDevice.eventName.length > 0 ? AppDevice.eventName : qsTr("No event yet: rackets get no tag numbers")
            }
        }
        Repeater {
            model: DeskModel.draft.unfinished
            UnfinishedRow { Layout.fillWidth: true }
        }
        RowLayout {
            spacing: Theme.gap
            SearchEntry {
                id: find
                objectName: "find"
                focus: true
                Layout.fillWidth: true
                name: qsTr("Whose rackets? Type a name")
                text: DeskModel.finder.typed
                onEdited: text => DeskModel.finder.typed = text
                onAccepted: if (DeskModel.finder.count > 0) DeskModel.choose(0)
                Keys.onDownPressed: if (list.count > 0) list.itemAtIndex(0).forceActiveFocus(Qt.TabFocusReason)
            }
            ActionButton {
                objectName: "newPlayer"
                visible: page.width >= Theme.phoneWidth
                kind: ActionButton.Secondary
                iconName: "plus"
                text: qsTr("New player")
                onClicked: DeskModel.addPlayer()
            }
        }
        ActionButton {
            objectName: "newPlayerBelow"
            Layout.fillWidth: true
            visible: page.width < Theme.phoneWidth
            kind: ActionButton.Secondary
            iconName: "plus"
            text: qsTr("New player")
            onClicked: DeskModel.addPlayer()
        }
        PlayersView {
            id: list
            objectName: "found"
            Layout.fillWidth: true
            Layout.fillHeight: true
            model: DeskModel.finder
            onChosen: (row, book) => DeskModel.choose(row)

            EmptyState {
                anchors.centerIn: parent
                width: Math.min(520, parent.width)
                visible: list.count === 0
                iconName: "players"
                title: find.text.length > 0 ? qsTr("Nobody of that name") : qsTr("No player is known on this device")
                text: find.text.length > 0
                    ? qsTr("Look at the spelling, or begin a new player with this name.")
                    : qsTr("Players come with an entry list, with an exchange, or are added here.")
            }
        }
    }
}
