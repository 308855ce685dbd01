pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// A player gives, changes or withdraws the consent, on a screen turned to them.
TurnedScreen {
    id: screen

    required property PlayerCard card
    property int choice: 0
    readonly property int before: card.person["consent"]
    readonly property var words: card.consentWords(language)

    function begin() {
        const said = card.person["language"].slice(0, 2);
        language = ["en", "fr", "es", "de"].includes(said) ? said : Settings.language;
        choice = before;
        open();
    }

    name: qsTr("Consent of %1").arg(card.name)
    title: card.name
    onLanguageChosen: language => screen.language = language
    onOpened: leave.forceActiveFocus(Qt.PopupFocusReason)

    ConsentQuestion {
        Layout.fillWidth: true
        Layout.rightMargin: Theme.room
        words: screen.words
        choice: screen.choice
        wordSize: screen.wordSize
        onAnswered: choice => screen.choice = choice
    }
    Item { Layout.fillHeight: true }

    actions: [
        ActionButton {
            id: leave
            objectName: "leaveConsent"
            width: parent?.columnWidth ?? 0
            height: Theme.mainTouch + Theme.gap
            kind: ActionButton.Secondary
            text: (screen.before > 0 ? screen.words["keep"] : screen.words["later"]) ?? ""
            onClicked: screen.close()
        },
        ActionButton {
            objectName: "noteConsent"
            width: parent?.columnWidth ?? 0
            height: Theme.mainTouch + Theme.gap
            enabled: screen.choice > 0 && screen.choice !== screen.before
            iconName: "check"
            text: screen.words["yes"] ?? ""
            onClicked: if (screen.card.giveConsent(screen.choice, screen.language,
                                                   screen.card.consentText(screen.choice, screen.language))) screen.close()
        }
    ]
}
