pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The room's money: the players' accounts, the day with the count of the box, the price list.
FocusScope {
    id: page

    readonly property string view: MoneyPlace.view
    readonly property bool narrow: width < 900
    readonly property bool slim: width < Theme.phoneWidth
    readonly property int margin: width < Theme.phoneWidth ? Theme.gap + 4 : Theme.page

    Binding { target: MoneyPlace.list; property: "watched"; value: page.visible && page.view === "accounts" }
    Binding { target: MoneyPlace.day; property: "watched"; value: page.visible && page.view === "day" }

    ColumnLayout {
        id: head
        x: page.margin
        y: page.margin
        width: page.width - 2 * page.margin
        spacing: Theme.gap

        Words {
            Layout.fillWidth: true
            meaning: Words.Heading
            text: qsTr("Money")
        }
        ChoiceBar {
            objectName: "moneyView"
            Layout.fillWidth: true
            Layout.maximumWidth: 640
            value: page.view
            options: [{ value: "accounts", text: page.slim ? qsTr("Players") : qsTr("Accounts") },
                      { value: "day", text: page.slim ? qsTr("Day") : qsTr("Day's money") },
                      { value: "prices", text: page.slim ? qsTr("Prices") : qsTr("Price list") }]
            Accessible.name: qsTr("What is shown")
            onChosen: value => MoneyPlace.view = value
        }
    }
    Item {
        anchors.top: head.bottom
        anchors.topMargin: Theme.gap
        anchors.bottom: parent.bottom
        width: parent.width

        NoEvent {
            anchors.centerIn: parent
            width: Math.min(parent.width - 2 * page.margin, 460)
            visible: !MoneyPlace.prices.hasEvent
            iconName: "money"
            brings: qsTr("Pair with an event server under Exchange; its price list and accounts come here by themselves.")
        }
        MoneyAccounts {
            anchors.fill: parent
            visible: MoneyPlace.prices.hasEvent && page.view === "accounts"
            narrow: page.narrow
            margin: page.margin
            onPricesAsked: MoneyPlace.view = "prices"
        }
        MoneyDay {
            anchors.fill: parent
            visible: MoneyPlace.prices.hasEvent && page.view === "day"
            margin: page.margin
        }
        MoneyPrices {
            anchors.fill: parent
            visible: MoneyPlace.prices.hasEvent && page.view === "prices"
            margin: page.margin
        }
    }
}
