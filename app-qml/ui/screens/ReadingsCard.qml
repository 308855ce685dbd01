pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// What was measured on the racket on the bench, and the way to more.
Card {
    id: card

    signal asked()

    readonly property var readings: BenchModel.work.readings

    title: qsTr("Readings")
    detail: readings.length === 0 ? qsTr("Nothing was measured yet.") : ""

    Repeater {
        model: card.readings

        RowLayout {
            id: line
            required property var modelData
            Layout.fillWidth: true
            spacing: Theme.gap
            ColumnLayout {
                Layout.fillWidth: true
                spacing: 0
                Words {
                    Layout.fillWidth: true
                    text: line.modelData.text
                }
                Words {
                    Layout.fillWidth: true
                    meaning: Words.Caption
                    quiet: true
                    text: Listing.commas(line.modelData.detail)
                }
            }
            Words {
                meaning: Words.Title
                text: line.modelData.value
                wrapMode: Text.NoWrap
            }
        }
    }
    OffNotice { Layout.fillWidth: true; who: "bench" }
    ActionButton {
        objectName: "measure"
        Layout.fillWidth: true
        kind: ActionButton.Secondary
        iconName: "plus"
        text: qsTr("Enter a reading")
        onClicked: card.asked()
    }
}
