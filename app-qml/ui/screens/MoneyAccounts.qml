pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic as Basic
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Who owes what: the list, and beside it or instead of it the account that was picked.
FocusScope {
    id: view

    required property bool narrow
    required property int margin
    readonly property bool picked: MoneyPlace.account.book.length > 0
    signal pricesAsked()

    ColumnLayout {
        id: side
        x: view.margin
        width: view.narrow ? view.width - 2 * view.margin : 380
        height: view.height
        visible: !view.narrow || !view.picked
        spacing: Theme.gap

        SearchEntry {
            objectName: "findAccount"
            Layout.fillWidth: true
            name: qsTr("Find a player")
            text: MoneyPlace.list.typed
            onEdited: text => MoneyPlace.list.typed = text
        }
        Words {
            Layout.fillWidth: true
            quiet: true
            text: qsTr("%n player(s) owe something", "", MoneyPlace.list.owing)
        }
        ListView {
            id: list
            objectName: "accountList"
            Layout.fillWidth: true
            Layout.fillHeight: true
            clip: true
            reuseItems: true
            boundsBehavior: Flickable.StopAtBounds
            Basic.ScrollBar.vertical: Basic.ScrollBar {}
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Accounts")
            model: MoneyPlace.list

            delegate: ListRow {
                id: row
                required property string book
                required property string name
                required property string due
                required property int sign
                required property bool lines
                width: list.width
                text: row.name
                detail: row.sign > 0 ? qsTr("owes") : row.sign < 0 ? qsTr("gets back")
                      : row.lines ? qsTr("even") : qsTr("nothing charged yet")
                endText: row.due
                chosen: row.book === MoneyPlace.account.book
                onClicked: MoneyPlace.account.show(row.book)
            }
            EmptyState {
                anchors.centerIn: parent
                width: Math.min(360, parent.width)
                visible: list.count === 0
                iconName: "players"
                title: MoneyPlace.list.typed.length > 0 ? qsTr("Nobody of that name") : qsTr("No player has a racket here yet")
            }
        }
    }
    Rectangle {
        visible: !view.narrow
        x: side.x + side.width + Theme.room - 1
        width: 1
        height: parent.height
        color: Theme.colour.line
    }
    ScrollColumn {
        id: scroll
        anchors.left: view.narrow ? parent.left : side.right
        anchors.leftMargin: view.narrow ? 0 : Theme.room
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.bottom: parent.bottom
        visible: view.picked
        margin: view.narrow ? view.margin : Theme.room
        widest: 860
        spacing: Theme.room

        ActionButton {
            objectName: "toAccounts"
            Layout.fillWidth: true
            visible: view.narrow
            kind: ActionButton.Secondary
            iconName: "back"
            text: qsTr("All accounts")
            onClicked: MoneyPlace.account.show("")
        }
        AccountDetails {
            Layout.fillWidth: true
            account: MoneyPlace.account
            onPricesAsked: view.pricesAsked()
        }
        Item { Layout.fillHeight: true }
    }
    Connections {
        target: MoneyPlace
        function onAsked() { scroll.contentY = 0; }
    }
    EmptyState {
        anchors.centerIn: parent
        anchors.horizontalCenterOffset: (side.width + view.margin) / 2
        width: 420
        visible: !view.narrow && !view.picked && list.count > 0
        iconName: "money"
        title: qsTr("Pick a player")
        text: qsTr("What is due, and every line by its racket, appears here.")
    }
}
