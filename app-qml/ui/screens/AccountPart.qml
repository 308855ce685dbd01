pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme

// The lines of one job, or a payment or a sale alone; a tap on a line opens what can be done with it.
Card {
    id: part

    required property var modelData
    readonly property bool ofJob: modelData.job.length > 0
    readonly property string jobTitle: MoneyWords.jobTitle(modelData.tag, modelData.racket)
    signal discountAsked(string job, string title)
    signal lineAsked(var line)

    spacing: 0
    title: ofJob ? (jobTitle.length > 0 ? jobTitle : qsTr("A racket")) : ""
    detail: ofJob ? qsTr("Together %1").arg(modelData.sum) : ""

    Repeater {
        model: part.modelData.lines

        ListRow {
            id: row
            required property var modelData
            objectName: "line"
            Layout.fillWidth: true
            text: MoneyWords.line(row.modelData)
            detail: Listing.commas([row.modelData.note, row.modelData.by, row.modelData.at,
                                    row.modelData.open ? qsTr("two tablets differ") : ""])
            iconName: row.modelData.open ? "question" : row.modelData.payment ? "in" : "money"
            endText: row.modelData.amount
            opens: !row.modelData.reversed && !row.modelData.reverses
            enabled: opens
            onClicked: part.lineAsked(row.modelData)
            Words {
                visible: row.modelData.reversed
                meaning: Words.Caption
                quiet: true
                text: qsTr("reversed")
            }
        }
    }
    ActionButton {
        objectName: "discount" + part.modelData.tag
        Layout.topMargin: Theme.tight
        visible: part.ofJob && part.modelData.charged
        kind: ActionButton.Quiet
        text: qsTr("Give a discount")
        onClicked: part.discountAsked(part.modelData.job, part.jobTitle)
    }
}
