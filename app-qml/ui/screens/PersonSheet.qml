import QtQuick
import QtQuick.Layouts
import Weavelog.Parts

// Name, contact, language and unit of a player.
FieldsSheet {
    id: sheet

    function begin() { beginWith(card.person); }

    title: qsTr("Change player")
    fields: [{ field: "family_name", text: qsTr("Family name") },
             { field: "given_name", text: qsTr("Given name") },
             { field: "native_name", text: qsTr("Name in the own script") },
             { field: "country", text: qsTr("Country, three letters") },
             { field: "contact", text: qsTr("How to reach the player") },
             { field: "note", text: qsTr("Note") }]
    onKept: if (card.savePerson(now)) close()

    LanguageBar {
        Layout.fillWidth: true
        label: qsTr("Reads best")
        value: sheet.now["language"]
        onChosen: value => sheet.put("language", value)
    }
    ChoiceBar {
        Layout.fillWidth: true
        label: qsTr("Says tensions in")
        value: sheet.now["tension_unit"]
        options: [{ value: 1, text: "kg" }, { value: 2, text: "lb" }, { value: 3, text: "N" }]
        onChosen: value => sheet.put("tension_unit", value)
    }
}
