pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Whose cards go onto sheets to be cut: a team, everybody in the room, or one by one.
Sheet {
    id: sheet

    function begin() {
        CardPicksModel.begin();
        open();
    }

    title: qsTr("Cards for several players")

    PickList {
        objectName: "cardCountry"
        Layout.fillWidth: true
        visible: CardPicksModel.countries.length > 0
        label: qsTr("A whole team")
        placeholder: qsTr("Everybody of a country")
        options: CardPicksModel.countries
        onPicked: code => CardPicksModel.tickCountry(code)
    }
    SideBySide {
        id: ways
        Layout.fillWidth: true
        least: 200
        ActionButton {
            objectName: "cardsOfRoom"
            width: ways.columnWidth
            kind: ActionButton.Secondary
            text: qsTr("Everybody in the room")
            onClicked: CardPicksModel.tickRoom()
        }
        ActionButton {
            objectName: "cardsOfNobody"
            width: ways.columnWidth
            kind: ActionButton.Quiet
            enabled: CardPicksModel.ticked > 0
            text: qsTr("Nobody")
            onClicked: CardPicksModel.tickNobody()
        }
    }
    SearchEntry {
        objectName: "findForCards"
        Layout.fillWidth: true
        name: qsTr("Find a player")
        text: CardPicksModel.typed
        onEdited: text => CardPicksModel.typed = text
    }
    Repeater {
        model: CardPicksModel

        ToggleRow {
            id: row
            required property string book
            required property string name
            required property string about
            required property bool ticked
            objectName: "pick " + row.name
            Layout.fillWidth: true
            text: row.about.length > 0 ? row.name + "  " + row.about : row.name
            checked: row.ticked
            onToggled: CardPicksModel.tick(row.book, checked)
        }
    }
    Words {
        Layout.fillWidth: true
        visible: CardPicksModel.more
        quiet: true
        text: qsTr("There are more: type a name.")
    }
    Words {
        Layout.fillWidth: true
        visible: CardPicksModel.count === 0
        quiet: true
        text: qsTr("Nobody of that name")
    }
    foot: ActionButton {
        objectName: "cardsOnPaper"
        Layout.fillWidth: true
        enabled: CardPicksModel.ticked > 0
        text: CardPicksModel.ticked > 0 ? qsTr("Make the cards (%1)").arg(CardPicksModel.ticked) : qsTr("Make the cards")
        onClicked: papers.showCards(CardPicksModel.books)
    }
    PrintSheet { id: papers }
}
