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
    readonly property bool turned: LayoutMirroring.enabled
    readonly property bool picked: MoneyPlace.account.book.length > 0
    signal pricesAsked()

    ColumnLayout {
        id: side
        x: view.turned && !view.narrow ? view.width - width - view.margin : view.margin
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
            text: MoneyPlace.list.owing > 0 ? qsTr("%n player(s) owe something", "", MoneyPlace.list.owing) : qsTr("Nobody owes anything")
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
        x: view.turned ? scroll.width : scroll.x - 1
        width: 1
        height: parent.height
        color: Theme.colour.line
    }
    ScrollColumn {
        id: scroll
        x: view.narrow || view.turned ? 0 : view.width - width
        width: view.narrow ? view.width : view.width - side.width - view.margin - Theme.room
        height: view.height
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
        anchors.verticalCenter: parent.verticalCenter
        x: scroll.x + (scroll.width - width) / 2
        width: 420
        visible: !view.narrow && !view.picked && list.count > 0
        iconName: "money"
        title: qsTr("Pick a player")
        text: qsTr("What is due, and every line by its racket, appears here.")
    }
}
