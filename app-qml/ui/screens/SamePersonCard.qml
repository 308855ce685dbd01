pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// What belongs together with a player's book: other names, books made elsewhere, and where those differ.
Card {
    id: card

    required property PersonLinks links
    readonly property bool linked: links.books.length > 0

    title: qsTr("Names and books")
    spacing: Theme.tight

    Repeater {
        model: card.links.names

        RowLayout {
            id: name
            required property var modelData
            Layout.fillWidth: true
            spacing: Theme.tight
            Words {
                Layout.fillWidth: true
                text: [qsTr("Also %1"), qsTr("Before: %1"), qsTr("Married: %1"), qsTr("Called %1"), qsTr("Also spelt %1")][name.modelData.why].arg(name.modelData.text)
            }
            IconAction {
                iconName: "close"
                text: qsTr("Take back: %1").arg(name.modelData.text)
                onClicked: card.links.dropName(name.modelData.id, qsTr("Name taken back"))
            }
        }
    }
    ActionButton {
        objectName: "addName"
        Layout.fillWidth: true
        kind: ActionButton.Quiet
        iconName: "plus"
        text: qsTr("Another name")
        onClicked: nameSheet.begin()
    }
    Repeater {
        model: card.links.books

        IconLine {
            id: book
            required property var modelData
            Layout.fillWidth: true
            iconName: book.modelData.here ? "players" : "question"
            text: book.modelData.here ? Listing.commas([book.modelData.name, book.modelData.about])
                                      : qsTr("One more book of this person, not on this device")
        }
    }
    Repeater {
        model: card.links.differences

        ColumnLayout {
            id: question
            required property var modelData
            required property int index
            Layout.fillWidth: true
            spacing: Theme.tight

            Words {
                Layout.fillWidth: true
                Layout.topMargin: Theme.tight
                text: question.modelData.subject.length > 0 ? qsTr("The books differ: %1, %2").arg(question.modelData.field).arg(question.modelData.subject)
                                                            : qsTr("The books differ: %1").arg(question.modelData.field)
            }
            Repeater {
                model: question.modelData.answers
                AnswerRow {
                    required property var modelData
                    required property int index
                    objectName: "book" + question.index + "-" + index
                    Layout.fillWidth: true
                    text: modelData.text
                    detail: modelData.about
                    onClicked: card.links.settle(question.index, index, qsTr("Both books say: %1").arg(modelData.text))
                }
            }
        }
    }
    SideBySide {
        Layout.fillWidth: true
        Layout.topMargin: Theme.tight
        least: 240
        ActionButton {
            objectName: "linkBook"
            width: parent.columnWidth
            kind: ActionButton.Secondary
            text: qsTr("Another book of this person")
            onClicked: linkSheet.begin()
        }
        ActionButton {
            objectName: "partBook"
            width: parent.columnWidth
            visible: card.linked
            kind: ActionButton.Quiet
            text: qsTr("Not the same person")
            onClicked: partSheet.begin()
        }
    }
    SamePersonSheet {
        id: linkSheet
        links: card.links
    }
    PartBooksSheet {
        id: partSheet
        links: card.links
    }
    OtherNameSheet {
        id: nameSheet
        links: card.links
    }
}
