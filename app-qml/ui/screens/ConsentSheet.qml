pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// What the player allows, each choice in the very words that are kept; shown to the player, who says which.
Sheet {
    id: sheet

    required property PlayerCard card
    property string language: "en"
    property int choice: 0

    function begin() {
        language = card.person["language"].length > 0 ? card.person["language"].slice(0, 2) : Settings.language;
        choice = card.person["consent"];
        open();
    }

    title: qsTr("Consent of %1").arg(card.name)

    LanguageBar {
        Layout.fillWidth: true
        value: sheet.language
        onChosen: value => sheet.language = value
    }
    Repeater {
        model: [1, 2, 3, 4]

        ListRow {
            id: row
            required property int modelData
            Layout.fillWidth: true
            text: sheet.card.consentText(row.modelData, sheet.language)
            opens: false
            chosen: sheet.choice === row.modelData
            onClicked: sheet.choice = row.modelData
            Icon {
                visible: row.chosen
                name: "check"
            }
        }
    }
    ActionButton {
        objectName: "noteConsent"
        Layout.fillWidth: true
        enabled: sheet.choice > 0 && sheet.choice !== sheet.card.person["consent"]
        text: qsTr("The player said so")
        onClicked: if (sheet.card.giveConsent(sheet.choice, sheet.language,
                                              sheet.card.consentText(sheet.choice, sheet.language))) sheet.close()
    }
}
