pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// A payment: what is due stands in the field, and one tap on the means takes it.
Card {
    id: card

    required property AccountModel account
    readonly property string whose: account.book
    readonly property string due: account.due.length > 0 ? account.due[0].typed : ""
    readonly property string wrong: account.wrongWith(amount.text)
    readonly property bool ready: amount.text.trim().length > 0 && wrong.length === 0

    function refill() { amount.text = due; }

    title: qsTr("Take a payment")
    onDueChanged: refill()
    onWhoseChanged: refill()
    Component.onCompleted: refill()

    TextEntry {
        id: amount
        objectName: "payAmount"
        Layout.fillWidth: true
        label: qsTr("Amount in %1").arg(card.account.currency)
        error: card.wrong
        inputMethodHints: Qt.ImhFormattedNumbersOnly
    }
    SideBySide {
        id: ways
        Layout.fillWidth: true
        least: 150
        most: 4

        Repeater {
            model: [1, 2, 3, 4]

            ActionButton {
                required property int modelData
                width: ways.columnWidth
                objectName: "pay" + modelData
                kind: modelData === 1 ? ActionButton.Primary : ActionButton.Secondary
                enabled: card.ready
                text: MoneyWords.paidBy(modelData)
                Accessible.description: qsTr("Takes the payment")
                onClicked: {
                    const say = qsTr("%1 paid: %2").arg(card.account.told(amount.text)).arg(MoneyWords.paidBy(modelData));
                    if (card.account.pay(amount.text, modelData, "", say)) card.refill();
                }
            }
        }
    }
}
