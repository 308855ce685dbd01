pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// What is asked of the player about the frame, on a screen turned to them, in their language; the answer is theirs or of who speaks
// for them.
TurnedScreen {
    id: screen

    property string finding
    property int choice: 0
    readonly property var words: finding.length > 0 ? InspectionModel.question(finding, language) : ({})
    readonly property var asking: InspectionModel.asking
    readonly property string player: asking.player ?? ""
    // It was answered elsewhere while it is asked here.
    readonly property string meanwhile: asking.meanwhile ?? ""
    readonly property bool ready: meanwhile.length === 0 && choice > 0 && who.text.trim().length > 0

    function ask(id) {
        if (!InspectionModel.ask(id)) return;
        finding = id;
        const said = InspectionModel.language;
        language = ["en", "fr", "es", "de"].includes(said) ? said : Settings.language;
        choice = 0;
        who.text = InspectionModel.player;
        open();
    }

    name: qsTr("Question to %1 about the frame").arg(player)
    title: player
    onLanguageChosen: language => screen.language = language
    onOpened: later.forceActiveFocus(Qt.PopupFocusReason)

    Words {
        Layout.fillWidth: true
        Layout.rightMargin: Theme.room
        meaning: Words.Title
        text: screen.words["title"] ?? ""
    }
    // In place of the question, so that nobody answers what is answered.
    Notice {
        objectName: "meanwhile"
        Layout.fillWidth: true
        Layout.rightMargin: Theme.room
        visible: screen.meanwhile.length > 0
        kind: Notice.Attention
        title: qsTr("This was answered elsewhere meanwhile")
        text: screen.meanwhile
    }
    Words {
        objectName: "frameQuestion"
        visible: screen.meanwhile.length === 0
        Layout.fillWidth: true
        Layout.rightMargin: Theme.room
        font.pixelSize: screen.wordSize
        lineHeight: 1.15
        text: screen.words["question"] ?? ""
    }
    Notice {
        Layout.fillWidth: true
        Layout.rightMargin: Theme.room
        visible: text.length > 0 && screen.meanwhile.length === 0
        kind: Notice.Attention
        text: screen.words["caution"] ?? ""
    }
    Repeater {
        model: screen.words["remedies"] ?? []
        AnswerChoice {
            id: remedy
            required property var modelData
            objectName: "remedy" + remedy.modelData.value
            Layout.fillWidth: true
            Layout.rightMargin: Theme.room
            font.pixelSize: screen.wordSize
            text: remedy.modelData.text
            visible: screen.meanwhile.length === 0
            on: screen.choice === remedy.modelData.value
            onClicked: screen.choice = remedy.modelData.value
        }
    }
    TextEntry {
        id: who
        objectName: "saidBy"
        visible: screen.meanwhile.length === 0
        Layout.fillWidth: true
        Layout.rightMargin: Theme.room
        label: screen.words["who"] ?? ""
    }
    Item { Layout.fillHeight: true }

    actions: [
        ActionButton {
            id: later
            objectName: "answerLater"
            width: parent?.columnWidth ?? 0
            height: Theme.mainTouch + Theme.gap
            kind: ActionButton.Secondary
            text: screen.words["later"] ?? ""
            onClicked: screen.close()
        },
        ActionButton {
            objectName: "answerYes"
            width: parent?.columnWidth ?? 0
            height: Theme.mainTouch + Theme.gap
            enabled: screen.ready
            iconName: "check"
            text: screen.words["yes"] ?? ""
            onClicked: {
                if (InspectionModel.answer(screen.finding, screen.choice, who.text, Settings.stringer, qsTr("Answer noted"))) screen.close();
            }
        }
    ]
}
