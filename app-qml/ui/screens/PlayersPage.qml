pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Everybody whose book this device holds: the list, and beside it or instead of it the player that was picked.
FocusScope {
    id: page

    readonly property bool narrow: width < 900
    readonly property bool picked: PlayersPlace.card.book.length > 0
    readonly property int margin: width < Theme.phoneWidth ? Theme.gap + 4 : Theme.page

    // "card" or "record" of the first player so found, "cards" of several, or "past-jobs" out of a table.
    function begin(what, which) {
        if (what === "cards") return picksSheet.begin();
        if (what === "past-jobs") {
            pastSheet.begin();
            if (which.length > 0) PastJobsModel.choose("file:" + which);
            return;
        }
        PlayersPlace.list.typed = which;
        const found = PlayersPlace.list.firstBook();
        if (found.length === 0) return;
        PlayersPlace.card.show(found);
        if (what === "record") recordSheet.showRecord(found);
        else giveSheet.show(found);
    }

    ColumnLayout {
        id: side
        x: page.margin
        y: page.margin
        width: page.narrow ? page.width - 2 * page.margin : 380
        height: page.height - page.margin
        visible: !page.narrow || !page.picked
        spacing: Theme.gap

        ColumnLayout {
            spacing: 2
            Words {
                Layout.fillWidth: true
                meaning: Words.Heading
                text: qsTr("Players")
            }
            Words {
                Layout.fillWidth: true
                quiet: true
                text: qsTr("Known on this device: %1").arg(PlayersPlace.list.known)
            }
        }
        SearchEntry {
            objectName: "findPlayer"
            focus: true
            Layout.fillWidth: true
            name: qsTr("Find a player")
            text: PlayersPlace.list.typed
            onEdited: text => PlayersPlace.list.typed = text
            Keys.onDownPressed: if (list.count > 0) list.itemAtIndex(0).forceActiveFocus(Qt.TabFocusReason)
        }
        PlayersView {
            id: list
            objectName: "playerList"
            Layout.fillWidth: true
            Layout.fillHeight: true
            model: PlayersPlace.list
            onChosen: (row, book) => PlayersPlace.card.show(book)

            EmptyState {
                anchors.centerIn: parent
                width: Math.min(380, parent.width)
                visible: list.count === 0
                iconName: "players"
                title: PlayersPlace.list.typed.length > 0 ? qsTr("Nobody of that name") : qsTr("No player is known on this device")
                text: PlayersPlace.list.typed.length > 0 ? qsTr("Look at the spelling.")
                    : qsTr("Players come with an entry list, with an exchange, or are added at the desk.")
            }
        }
        SideBySide {
            id: ways
            Layout.fillWidth: true
            Layout.bottomMargin: Theme.tight
            visible: PlayersPlace.list.typed.length === 0  // who looks for somebody has the room for the list
            spacing: Theme.tight
            least: 150
            ActionButton {
                objectName: "takeACard"
                width: ways.columnWidth
                kind: ActionButton.Secondary
                text: qsTr("Take a card in")
                onClicked: TakeCardModel.ask()
            }
            ActionButton {
                objectName: "severalCards"
                width: ways.columnWidth
                kind: ActionButton.Secondary
                enabled: PlayersPlace.list.known > 0
                text: qsTr("Make cards")
                onClicked: picksSheet.begin()
            }
            ActionButton {
                objectName: "pastJobs"
                width: ways.width
                kind: ActionButton.Quiet
                text: qsTr("Past jobs")
                onClicked: pastSheet.begin()
            }
        }
    }
    Rectangle {
        visible: !page.narrow
        x: side.x + side.width + Theme.room - 1
        width: 1
        height: parent.height
        color: Theme.colour.line
    }
    PageFrame {
        anchors.left: page.narrow ? parent.left : side.right
        anchors.leftMargin: page.narrow ? 0 : Theme.room
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.bottom: parent.bottom
        visible: page.picked
        title: PlayersPlace.card.name
        detail: PlayersPlace.card.detail

        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap
            ActionButton {
                objectName: "toList"
                visible: page.narrow
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                kind: ActionButton.Secondary
                iconName: "back"
                text: qsTr("All players")
                onClicked: PlayersPlace.card.show("")
            }
            ActionButton {
                objectName: "editPlayer"
                Layout.fillWidth: page.narrow
                Layout.preferredWidth: page.narrow ? 1 : -1
                kind: ActionButton.Secondary
                text: qsTr("Change player")
                onClicked: personSheet.begin()
            }
            ActionButton {
                objectName: "consent"
                Layout.fillWidth: page.narrow
                Layout.preferredWidth: page.narrow ? 1 : -1
                kind: ActionButton.Secondary
                text: qsTr("Consent")
                onClicked: consentScreen.begin()
            }
        }
        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap
            ActionButton {
                objectName: "giveCard"
                kind: ActionButton.Secondary
                text: qsTr("Player card")
                onClicked: giveSheet.show(PlayersPlace.card.book)
            }
            AccountButton {
                objectName: "account"
                Layout.fillWidth: page.narrow
                book: PlayersPlace.card.book
            }
        }
        PlayerDetails {
            Layout.fillWidth: true
            card: PlayersPlace.card
        }
        SamePersonCard {
            Layout.fillWidth: true
            Layout.maximumWidth: 760
            links: PlayersPlace.links
        }
        ActionButton {
            objectName: "showRecord"
            Layout.topMargin: Theme.room
            kind: ActionButton.Quiet
            text: qsTr("All that is held on this player")
            onClicked: recordSheet.showRecord(PlayersPlace.card.book)
        }
        ActionButton {
            objectName: "forgetPlayer"
            kind: ActionButton.Quiet
            text: qsTr("Forget this player")
            onClicked: forgetSheet.begin()
        }
        Item { Layout.fillHeight: true }
    }
    EmptyState {
        anchors.centerIn: parent
        anchors.horizontalCenterOffset: (side.width + page.margin) / 2
        width: 420
        visible: !page.narrow && !page.picked && list.count > 0
        iconName: "players"
        title: qsTr("Pick a player")
        text: qsTr("What was agreed, the rackets and the last jobs appear here.")
    }
    PrintSheet { id: recordSheet }
    PersonSheet {
        id: personSheet
        card: PlayersPlace.card
    }
    ForgetSheet {
        id: forgetSheet
        card: PlayersPlace.card
    }
    GiveCardSheet { id: giveSheet }
    CardPicksSheet { id: picksSheet }
    PastJobsSheet { id: pastSheet }
    ConsentScreen {
        id: consentScreen
        card: PlayersPlace.card
    }
}
