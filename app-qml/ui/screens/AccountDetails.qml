pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// A player's account: what is due, what was not charged yet, a payment, and every line by its job.
ColumnLayout {
    id: details

    required property AccountModel account
    signal pricesAsked()

    spacing: Theme.room

    Card {
        Layout.fillWidth: true
        title: details.account.name

        Repeater {
            model: details.account.due

            ColumnLayout {
                id: sum
                required property var modelData
                required property int index
                Layout.fillWidth: true
                spacing: 2

                Words {
                    Layout.fillWidth: true
                    meaning: Words.Strong
                    text: sum.modelData.sign > 0 ? qsTr("Due") : sum.modelData.sign < 0 ? qsTr("To give back") : qsTr("Nothing is due")
                }
                Digits {
                    objectName: "due" + sum.index
                    Layout.fillWidth: true
                    value: sum.modelData.digits
                    unit: sum.modelData.currency
                    size: Math.round(Theme.type.figure * 1.7)
                }
                Words {
                    Layout.fillWidth: true
                    quiet: true
                    text: qsTr("Charged %1, paid %2").arg(sum.modelData.charged).arg(sum.modelData.paid)
                }
            }
        }
        Notice {
            Layout.fillWidth: true
            visible: details.account.currency.length === 0
            kind: Notice.Attention
            title: qsTr("The event has no currency yet")
            text: qsTr("Give it one in the price list; then rackets can be charged.")
            actionText: qsTr("Price list")
            onActed: details.pricesAsked()
        }
        Notice {
            objectName: "differs"
            Layout.fillWidth: true
            visible: details.account.questions > 0
            kind: Notice.Attention
            title: qsTr("Two tablets charged different amounts")
            text: qsTr("Until somebody closes that under Questions, the newer amount counts here, and nothing is taken off it.")
        }
    }
    UnchargedCard {
        Layout.fillWidth: true
        visible: details.account.uncharged.length > 0
        account: details.account
        onPricesAsked: details.pricesAsked()
    }
    PaymentCard {
        Layout.fillWidth: true
        visible: details.account.currency.length > 0
        account: details.account
    }
    Repeater {
        model: details.account.parts

        AccountPart {
            Layout.fillWidth: true
            onDiscountAsked: (job, title) => discountSheet.begin(job, title)
            onLineAsked: line => lineSheet.begin(line)
        }
    }
    ActionButton {
        objectName: "sell"
        Layout.fillWidth: true
        visible: details.account.currency.length > 0
        kind: ActionButton.Secondary
        iconName: "plus"
        text: qsTr("Charge something else")
        onClicked: saleSheet.begin()
    }
    DiscountSheet {
        id: discountSheet
        account: details.account
    }
    MoneyLineSheet {
        id: lineSheet
        account: details.account
    }
    SaleSheet {
        id: saleSheet
        account: details.account
    }
}
