import QtQuick
import Weavelog.Parts
import Weavelog.View

// The way to a player's account from wherever the player stands, with what is open on it.
ActionButton {
    id: button

    property string book
    property var standing: ({})

    function look() { standing = visible && book.length > 0 ? MoneyPlace.standing(book) : ({}); }

    kind: ActionButton.Secondary
    iconName: "money"
    text: (standing.due ?? "").length > 0 ? qsTr("Account: %1 due").arg(standing.due)
        : (standing.uncharged ?? 0) > 0 ? qsTr("Account: %n racket(s) not charged", "", standing.uncharged) : qsTr("Account")
    onBookChanged: look()
    onVisibleChanged: look()
    onClicked: MoneyPlace.go(book)
    Component.onCompleted: look()

    Connections {
        target: Work
        function onChanged() { button.look(); }
    }
}
