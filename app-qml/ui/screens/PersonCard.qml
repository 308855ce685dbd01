import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Who a new player is.
Card {
    id: card

    required property DropOffDraft draft

    title: qsTr("Player")

    SideBySide {
        Layout.fillWidth: true
        least: 260
        most: 3

        TextEntry {
            objectName: "familyName"
            width: parent.columnWidth
            label: qsTr("Family name")
            text: card.draft.person["family_name"]
            onEdited: text => card.draft.setPerson("family_name", text)
        }
        TextEntry {
            objectName: "givenName"
            width: parent.columnWidth
            label: qsTr("Given name")
            text: card.draft.person["given_name"]
            onEdited: text => card.draft.setPerson("given_name", text)
        }
        TextEntry {
            width: parent.columnWidth
            label: qsTr("Name in the own script")
            text: card.draft.person["native_name"]
            onEdited: text => card.draft.setPerson("native_name", text)
        }
        TextEntry {
            width: parent.columnWidth
            label: qsTr("Country, three letters")
            text: card.draft.person["country"]
            onEdited: text => card.draft.setPerson("country", text.toUpperCase())
        }
        TextEntry {
            width: parent.columnWidth
            label: qsTr("How to reach the player")
            text: card.draft.person["contact"]
            onEdited: text => card.draft.setPerson("contact", text)
        }
    }
    LanguageBar {
        Layout.fillWidth: true
        label: qsTr("Reads best")
        value: card.draft.language
        onChosen: value => card.draft.setPerson("language", value)
    }
}
