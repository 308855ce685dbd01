pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// What the room charges: what rackets are charged by themselves, and everything else that is sold.
ScrollColumn {
    id: view

    widest: 860
    spacing: Theme.room

    component PriceRow: ListRow {
        id: row
        required property var modelData
        readonly property bool priced: modelData.amount.length > 0
        Layout.fillWidth: true
        text: MoneyWords.service(row.modelData.service)
        iconName: row.priced ? "" : "question"
        endText: row.priced ? row.modelData.amount : qsTr("no price")
        enabled: MoneyPlace.prices.currency.length > 0
    }

    Notice {
        Layout.fillWidth: true
        visible: MoneyPlace.prices.fault.length > 0
        kind: Notice.Danger
        title: qsTr("Nothing can be charged")
        text: MoneyPlace.prices.fault
    }
    Card {
        id: money
        readonly property string wrong: MoneyPlace.prices.wrongCurrency(currency.text)
        Layout.fillWidth: true
        visible: MoneyPlace.prices.currency.length === 0 && MoneyPlace.prices.fault.length === 0
        title: qsTr("Currency of the event")

        TextEntry {
            id: currency
            objectName: "currency"
            Layout.fillWidth: true
            label: qsTr("Three letters, such as EUR")
            error: money.wrong
            inputMethodHints: Qt.ImhUppercaseOnly
        }
        ActionButton {
            objectName: "keepCurrency"
            Layout.fillWidth: true
            enabled: currency.text.trim().length > 0 && money.wrong.length === 0
            text: qsTr("Keep")
            onClicked: MoneyPlace.prices.setCurrency(currency.text, qsTr("Currency: %1").arg(currency.text.trim().toUpperCase()))
        }
    }
    Card {
        Layout.fillWidth: true
        spacing: 0
        title: qsTr("What rackets are charged")
        detail: MoneyPlace.prices.currency.length > 0 ? qsTr("In %1. A string without a price of its own costs what stands beside \"String\"; a hybrid costs half of each.").arg(MoneyPlace.prices.currency) : ""

        Repeater {
            model: MoneyPlace.prices.ofJobs
            PriceRow {
                objectName: "price " + modelData.service
                onClicked: priceSheet.change(modelData)
            }
        }
        ActionButton {
            objectName: "addString"
            Layout.topMargin: Theme.tight
            enabled: MoneyPlace.prices.currency.length > 0
            kind: ActionButton.Quiet
            iconName: "plus"
            text: qsTr("Price of one string")
            onClicked: priceSheet.add("string ")
        }
    }
    Card {
        Layout.fillWidth: true
        spacing: 0
        title: qsTr("What else is sold")

        Repeater {
            model: MoneyPlace.prices.others
            PriceRow {
                objectName: "price " + modelData.service
                onClicked: priceSheet.change(modelData)
            }
        }
        ActionButton {
            objectName: "addWare"
            Layout.topMargin: Theme.tight
            enabled: MoneyPlace.prices.currency.length > 0
            kind: ActionButton.Quiet
            iconName: "plus"
            text: qsTr("Something else")
            onClicked: priceSheet.add("")
        }
    }
    Item { Layout.fillHeight: true }

    PriceSheet { id: priceSheet }
}
