pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// One day: what was charged, what came in, what lies in the box, and the close of the day.
ScrollColumn {
    id: view

    widest: 1000
    spacing: Theme.room

    RowLayout {
        Layout.fillWidth: true
        spacing: Theme.gap

        IconAction {
            objectName: "dayBefore"
            Layout.preferredWidth: Theme.mainTouch
            Layout.preferredHeight: Theme.mainTouch
            iconName: "back"
            framed: true
            text: qsTr("The day before")
            onClicked: MoneyPlace.day.step(-1)
        }
        Words {
            Layout.fillWidth: true
            meaning: Words.Title
            horizontalAlignment: Text.AlignHCenter
            text: MoneyPlace.day.today ? qsTr("Today, %1").arg(MoneyPlace.day.dayText) : MoneyPlace.day.dayText
        }
        IconAction {
            objectName: "dayAfter"
            Layout.preferredWidth: Theme.mainTouch
            Layout.preferredHeight: Theme.mainTouch
            iconName: "arrow"
            framed: true
            enabled: !MoneyPlace.day.today
            text: qsTr("The day after")
            onClicked: MoneyPlace.day.step(1)
        }
    }
    Words {
        objectName: "nothing"
        Layout.fillWidth: true
        visible: MoneyPlace.day.totals.length === 0
        quiet: true
        horizontalAlignment: Text.AlignHCenter
        text: qsTr("Nothing was charged or paid on this day.")
    }
    Repeater {
        model: MoneyPlace.day.totals

        SideBySide {
            id: sums
            required property var modelData
            Layout.fillWidth: true
            least: 320
            spacing: Theme.room

            Card {
                width: sums.columnWidth
                title: qsTr("Charged")
                spacing: Theme.tight

                Repeater {
                    model: sums.modelData.services
                    SumRow {
                        required property var modelData
                        Layout.fillWidth: true
                        text: MoneyWords.service(modelData.service)
                        amount: modelData.amount
                    }
                }
                SumRow {
                    objectName: "charged"
                    Layout.fillWidth: true
                    Layout.topMargin: Theme.tight
                    strong: true
                    text: qsTr("Together")
                    amount: sums.modelData.charged
                }
            }
            Card {
                width: sums.columnWidth
                title: qsTr("Paid")
                spacing: Theme.tight

                Repeater {
                    model: sums.modelData.means
                    SumRow {
                        required property var modelData
                        Layout.fillWidth: true
                        text: MoneyWords.paidBy(modelData.means)
                        amount: modelData.amount
                    }
                }
                SumRow {
                    objectName: "paid"
                    Layout.fillWidth: true
                    Layout.topMargin: Theme.tight
                    strong: true
                    text: qsTr("Together")
                    amount: sums.modelData.paid
                }
            }
        }
    }
    Repeater {
        model: MoneyPlace.day.closes

        Notice {
            id: closed
            required property var modelData
            readonly property bool more: modelData.chargedSince.length > 0 || modelData.paidSince.length > 0
            objectName: "closed"
            Layout.fillWidth: true
            kind: more ? Notice.Attention : Notice.Agreed
            title: qsTr("Closed: %1").arg(Listing.commas([modelData.by, modelData.at]))
            text: Listing.said([
                modelData.sign === 0 ? qsTr("Counted %1, as the lines say").arg(modelData.counted)
                    : modelData.sign > 0 ? qsTr("Counted %1, %2 too much").arg(modelData.counted).arg(modelData.difference)
                                         : qsTr("Counted %1, %2 too little").arg(modelData.counted).arg(modelData.difference),
                modelData.note,
                more ? qsTr("Written for this day since: charged %1, paid %2")
                           .arg(modelData.chargedSince.length > 0 ? modelData.chargedSince : "0")
                           .arg(modelData.paidSince.length > 0 ? modelData.paidSince : "0") : ""]).join("\n")
        }
    }
    Card {
        id: box
        readonly property var difference: MoneyPlace.day.difference(counted.text)
        readonly property string wrong: MoneyPlace.day.wrongWith(counted.text)
        Layout.fillWidth: true
        visible: MoneyPlace.day.currency.length > 0
        title: qsTr("The box")

        SumRow {
            objectName: "cash"
            Layout.fillWidth: true
            text: qsTr("Cash taken this day, by the lines")
            amount: MoneyPlace.day.cash
        }
        TextEntry {
            id: counted
            objectName: "counted"
            Layout.fillWidth: true
            label: qsTr("Cash counted, without the change that was there in the morning, in %1").arg(MoneyPlace.day.currency)
            error: box.wrong
            inputMethodHints: Qt.ImhFormattedNumbersOnly
        }
        Words {
            objectName: "difference"
            Layout.fillWidth: true
            visible: box.difference.sign !== undefined
            meaning: Words.Title
            color: box.difference.sign === 0 ? Theme.colour.agreed : Theme.colour.attention
            text: box.difference.sign === undefined ? "" : box.difference.sign === 0 ? qsTr("It agrees with the lines")
                : box.difference.sign > 0 ? qsTr("%1 too much in the box").arg(box.difference.amount)
                                          : qsTr("%1 too little in the box").arg(box.difference.amount)
        }
        TextEntry {
            id: note
            objectName: "closeNote"
            Layout.fillWidth: true
            label: qsTr("Note")
        }
        ActionButton {
            objectName: "closeDay"
            Layout.fillWidth: true
            enabled: counted.text.trim().length > 0 && box.wrong.length === 0
            iconName: "check"
            text: MoneyPlace.day.closes.length > 0 ? qsTr("Close the day again") : qsTr("Close the day")
            onClicked: {
                if (!MoneyPlace.day.close(counted.text, note.text, qsTr("Day closed"))) return;
                counted.text = "";
                note.text = "";
            }
        }
    }
    Item { Layout.fillHeight: true }
}
