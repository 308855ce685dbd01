pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The string that the racket takes of the stock: one tap notes it.
Card {
    id: card

    readonly property var suggested: BenchModel.work.suggested
    readonly property var taken: BenchModel.work.taken

    function amount(use) { return use.sets > 0 ? qsTr("%n set(s)", "", use.sets) : use.amount; }
    function part(name) {
        return name === "mains" ? qsTr("Mains") : name === "crosses" ? qsTr("Crosses") : qsTr("Whole bed");
    }

    visible: suggested.length > 0 || taken.length > 0
    title: qsTr("String from the stock")
    detail: taken.length > 0 ? qsTr("Noted.") : qsTr("An estimate of what this bed takes.")

    Repeater {
        model: card.taken.length > 0 ? card.taken : card.suggested

        RowLayout {
            id: line
            required property var modelData
            Layout.fillWidth: true
            spacing: Theme.gap
            Icon { Layout.alignment: Qt.AlignTop; name: card.taken.length > 0 ? "check" : "strung" }
            Words {
                Layout.fillWidth: true
                text: line.modelData.part ? qsTr("%1: %2").arg(card.part(line.modelData.part)).arg(line.modelData.name)
                                          : line.modelData.name
            }
            Words {
                meaning: Words.Strong
                text: card.amount(line.modelData)
                wrapMode: Text.NoWrap
            }
        }
    }
    ActionButton {
        objectName: "takeString"
        Layout.fillWidth: true
        visible: card.taken.length === 0
        kind: ActionButton.Secondary
        iconName: "check"
        text: qsTr("Taken from the stock")
        onClicked: BenchModel.work.takeString(qsTr("Taken: %1").arg(
            Listing.commas(card.suggested.map(use => use.name + ", " + card.amount(use)))))
    }
}
