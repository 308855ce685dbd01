pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The string that is here: the room's, the stringers', the players' own; what is left, and until when.
FocusScope {
    id: page

    readonly property int margin: width < Theme.phoneWidth ? Theme.gap + 4 : Theme.page

    ColumnLayout {
        x: Math.max(page.margin, (page.width - 1000) / 2)
        y: page.margin
        width: Math.min(1000, page.width - 2 * page.margin)
        height: page.height - page.margin
        spacing: Theme.gap

        RowLayout {
            spacing: Theme.gap
            ColumnLayout {
                Layout.fillWidth: true
                spacing: 2
                Words {
                    Layout.fillWidth: true
                    meaning: Words.Heading
                    text: qsTr("Stock")
                }
                Words {
                    Layout.fillWidth: true
                    visible: StockModel.count > 0
                    quiet: true
                    text: StockModel.low > 0 ? qsTr("%n string(s) low", "", StockModel.low) : qsTr("Nothing is low")
                }
            }
            ActionButton {
                objectName: "newItem"
                visible: StockModel.hasEvent
                kind: ActionButton.Secondary
                iconName: "plus"
                text: qsTr("New string")
                onClicked: itemSheet.begin()
            }
        }
        ListView {
            id: list
            objectName: "stockList"
            Layout.fillWidth: true
            Layout.fillHeight: true
            clip: true
            boundsBehavior: Flickable.StopAtBounds
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Stock")
            model: StockModel
            delegate: StockRow {
                width: list.width
                onOpened: row => moveSheet.begin(row)
            }

            EmptyState {
                anchors.centerIn: parent
                width: Math.min(460, parent.width)
                visible: list.count === 0 && StockModel.hasEvent
                iconName: "stock"
                title: qsTr("Nothing is in stock")
                text: qsTr("Note every reel and set that comes; then you see what is left and until when.")
            }
            NoEvent {
                anchors.centerIn: parent
                width: Math.min(460, parent.width)
                visible: !StockModel.hasEvent
                iconName: "stock"
                brings: qsTr("Pair with an event server under Exchange; its stock comes here by itself.")
            }
        }
    }
    StockSheet { id: moveSheet }
    StockItemSheet { id: itemSheet }
}
