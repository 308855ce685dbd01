pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The read-back: exactly the text that is stored, and yes or no to it. Whoever has not said yet where their setups may
// go is asked before it, or, with "same as last time", beside it; that answer is stored with the yes.
TurnedScreen {
    id: confirm

    readonly property DropOffDraft draft: DeskModel.draft
    // Held while the player reads: what stands here is what is confirmed, whatever happens elsewhere meanwhile.
    property string shown
    // The player opened the question by hand.
    property bool byHand: false
    readonly property bool asking: draft.consentFirst || byHand
    readonly property var words: draft.consentWords

    function read() { shown = draft.readBack; }
    function answer(choice) {
        draft.answerConsent(choice);
        byHand = false;
        flickable.contentY = 0;
        no.forceActiveFocus(Qt.OtherFocusReason);
    }

    name: qsTr("Read-back for %1").arg(draft.player)
    title: draft.player
    language: draft.language
    onLanguageChosen: language => {
        draft.language = language;
        read();
    }
    onAboutToShow: {
        byHand = false;
        read();
    }
    onOpened: (asking ? later : no).forceActiveFocus(Qt.PopupFocusReason)

    ConsentQuestion {
        objectName: "consentQuestion"
        Layout.fillWidth: true
        Layout.rightMargin: Theme.room
        visible: confirm.asking
        words: confirm.words
        choice: confirm.draft.consent
        wordSize: confirm.wordSize
        onAnswered: choice => confirm.answer(choice)
    }
    Words {
        objectName: "readBackText"
        Layout.fillWidth: true
        Layout.rightMargin: Theme.room
        visible: !confirm.asking
        font.pixelSize: confirm.wordSize
        lineHeight: 1.2
        text: confirm.shown
    }
    Item { Layout.fillHeight: true }

    footer: [
        Rectangle {
            Layout.fillWidth: true
            visible: answered.visible
            implicitHeight: 1
            color: Theme.colour.line
        },
        RowLayout {
            id: answered
            Layout.fillWidth: true
            visible: confirm.draft.consentOpen && !confirm.asking
            spacing: Theme.gap

            Words {
                objectName: "consentSaid"
                Layout.fillWidth: true
                text: confirm.draft.consent > 0
                    ? (confirm.words["choices"].find(choice => choice.value === confirm.draft.consent)?.text ?? "")
                    : confirm.words["open"] ?? ""
            }
            ActionButton {
                objectName: "consentOpen"
                Layout.maximumWidth: confirm.narrow ? 150 : 320
                kind: ActionButton.Secondary
                text: (confirm.draft.consent > 0 ? confirm.words["change"] : confirm.words["answer"]) ?? ""
                onClicked: {
                    confirm.byHand = true;
                    confirm.flickable.contentY = 0;
                    later.forceActiveFocus(Qt.OtherFocusReason);
                }
            }
        }
    ]
    actions: [
        ActionButton {
            id: later
            objectName: "consentLater"
            visible: confirm.asking
            width: parent?.width ?? 0
            height: Theme.mainTouch + Theme.gap
            kind: ActionButton.Secondary
            text: confirm.words["later"] ?? ""
            onClicked: confirm.answer(0)
        },
        ActionButton {
            id: no
            objectName: "no"
            visible: !confirm.asking
            width: parent?.columnWidth ?? 0
            height: Theme.mainTouch + Theme.gap
            kind: ActionButton.Secondary
            text: confirm.draft.answers["no"]
            onClicked: DeskModel.back()
        },
        ActionButton {
            objectName: "yes"
            visible: !confirm.asking
            width: parent?.columnWidth ?? 0
            height: Theme.mainTouch + Theme.gap
            iconName: "check"
            text: confirm.draft.answers["yes"]
            onClicked: DeskModel.confirm(confirm.shown)
        }
    ]
}
