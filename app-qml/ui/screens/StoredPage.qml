pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The rackets are taken in: their tags, to be written or printed and hung on.
FocusScope {
    PageFrame {
        anchors.top: parent.top
        anchors.bottom: strip.top
        width: parent.width
        title: qsTr("Taken in: %1").arg(DeskModel.card.name)
        detail: qsTr("Hang each number on its racket.")

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
                    Digits {
                        Layout.fillWidth: true
                        value: tag.modelData.tag
                        size: Theme.type.giant * 0.6
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
