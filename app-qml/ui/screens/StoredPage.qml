pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The rackets are taken in: their tags, to be written or printed and hung on.
FocusScope {
    readonly property real footHeight: strip.height

    PageFrame {
        anchors.top: parent.top
        anchors.bottom: strip.top
        anchors.bottomMargin: ToastRoom.height
        width: parent.width
        title: qsTr("Taken in: %1").arg(DeskModel.card.name)
        detail: AppDevice.event.length > 0 ? qsTr("Hang each number on its racket.") : ""

        Notice {
            objectName: "noNumbers"
            Layout.fillWidth: true
            visible: AppDevice.event.length === 0
            kind: Notice.Attention
            title: qsTr("There is no event yet")
            text: qsTr("Without one these rackets have no number, and neither room nor bench shows them. They can come into an event later.")
            actionText: qsTr("Make an event")
            onActed: EventModel.ask()
        }
        SideBySide {
            id: row
            Layout.fillWidth: true
            least: 240
            most: 3
            spacing: Theme.room

            Repeater {
                model: DeskModel.draft.tags

                Card {
                    id: tag
                    required property var modelData
                    width: row.columnWidth
                    title: tag.modelData.racket.length > 0 ? qsTr("Racket %1").arg(tag.modelData.racket) : qsTr("Racket without a mark")
                    padding: row.columns > 1 ? Theme.room : Theme.gap
                    Digits {
                        Layout.fillWidth: true
                        visible: tag.modelData.tag.length > 0
                        value: tag.modelData.tag
                        size: Theme.type.giant * (row.columns > 1 ? 0.6 : 0.42)
                    }
                }
            }
        }
        Item { Layout.fillHeight: true }
    }
    ActionStrip {
        id: strip
        anchors.bottom: parent.bottom
        width: parent.width

        ActionButton {
            objectName: "showCard"
            Layout.fillWidth: true
            Layout.preferredWidth: 2
            kind: ActionButton.Secondary
            text: qsTr("The player’s card")
            onClicked: DeskModel.showPlayer(DeskModel.card.book)
        }
        ActionButton {
            objectName: "printTags"
            Layout.fillWidth: true
            Layout.preferredWidth: 2
            kind: ActionButton.Secondary
            iconName: "tag"
            text: qsTr("Print tags")
            onClicked: papers.showDropOff(DeskModel.card.book, true)
        }
        ActionButton {
            objectName: "nextPlayer"
            focus: true
            Layout.fillWidth: true
            Layout.preferredWidth: 3
            text: qsTr("Next player")
            onClicked: DeskModel.next()
        }
    }
    PrintSheet { id: papers }
}
