pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// A drop-off in the making. As last time: rackets, tensions and time on one page. Everything asked: the same and all
// other questions on four short pages.
FocusScope {
    id: page

    readonly property real footHeight: strip.height
    readonly property DropOffDraft draft: DeskModel.draft
    property int part: 0
    readonly property var parts: draft.asWhole
        ? [{ value: 0, text: qsTr("Player") }, { value: 1, text: qsTr("Strings") },
           { value: 2, text: qsTr("Tension") }, { value: 3, text: qsTr("Finish") }]
        : []
    readonly property bool lastPart: !draft.asWhole || part === 3

    function turnTo(next) {
        part = next;
        frame.flickable.contentY = 0;
    }

    Connections {
        target: DeskModel
        function onHeldBack(part) {
            if (part >= 0 && page.draft.asWhole) page.turnTo(part);
            else frame.flickable.contentY = 0;
        }
    }
    Connections {
        target: page.draft
        function onQuestionFirst() { frame.flickable.contentY = 0; }
    }
    PageFrame {
        id: frame
        anchors.top: parent.top
        anchors.bottom: strip.top
        anchors.bottomMargin: ToastRoom.height
        width: parent.width
        title: page.draft.player.length > 0 ? page.draft.player : qsTr("New player")
        detail: page.draft.asWhole ? qsTr("Ask what is known; everything but strings and tensions can wait.")
                                   : qsTr("As last time. Say what is different.")

        ChoiceBar {
            objectName: "parts"
            Layout.fillWidth: true
            visible: page.draft.asWhole && !frame.narrow
            value: page.part
            options: page.parts
            onChosen: value => page.turnTo(value)
        }
        Words {
            Layout.fillWidth: true
            visible: page.draft.asWhole && frame.narrow
            meaning: Words.Strong
            text: qsTr("%1, page %2 of 4").arg(page.parts[page.part]?.text ?? "").arg(page.part + 1)
        }
        NeededNotice {
            Layout.fillWidth: true
            draft: page.draft
        }
        Column {
            id: asked
            readonly property int count: page.draft.questions.length
            Layout.fillWidth: true
            visible: count > 0
            spacing: Theme.room
            Repeater {
                model: asked.count
                AskedCard {
                    width: asked.width
                    visible: !page.draft.asWhole || held.part === page.part
                    draft: page.draft
                }
            }
        }
        AlikeCard {
            Layout.fillWidth: true
            visible: page.draft.fresh && page.part === 0 && alike.people.length > 0
            alike: DeskModel.alike
        }
        PersonCard {
            Layout.fillWidth: true
            visible: page.draft.asWhole && page.part === 0 && page.draft.fresh
            draft: page.draft
        }
        RacketsCard {
            Layout.fillWidth: true
            visible: !page.draft.asWhole || page.part === 0
            draft: page.draft
        }
        ScopeBar {
            Layout.fillWidth: true
            visible: page.draft.pickedCount > 1 && (!page.draft.asWhole || page.part === 1 || page.part === 2)
            draft: page.draft
        }
        StringsCard {
            Layout.fillWidth: true
            visible: page.draft.asWhole && page.part === 1
            draft: page.draft
        }
        TensionCard {
            Layout.fillWidth: true
            visible: page.draft.pickedCount > 0 && (!page.draft.asWhole || page.part === 2)
            draft: page.draft
        }
        CautionNotes {
            Layout.fillWidth: true
            draft: page.draft
        }
        MakingCard {
            Layout.fillWidth: true
            visible: page.draft.asWhole && page.part === 2
            draft: page.draft
        }
        ReadyCard {
            Layout.fillWidth: true
            visible: !page.draft.asWhole || page.part === 3
            draft: page.draft
        }
        FinishCard {
            Layout.fillWidth: true
            visible: page.draft.asWhole && page.part === 3
            draft: page.draft
        }
        ChangesCard {
            Layout.fillWidth: true
            visible: !page.draft.fresh && page.draft.pickedCount > 0 && page.lastPart
            draft: page.draft
        }
        ActionButton {
            objectName: "askAll"
            Layout.fillWidth: true  // else its words set the width of the page
            visible: !page.draft.asWhole
            kind: ActionButton.Quiet
            text: qsTr("Something else is different")
            onClicked: {
                page.draft.askAll();
                page.turnTo(1);
            }
        }
        ActionButton {
            objectName: "storeUnconfirmed"
            Layout.fillWidth: true
            visible: page.lastPart && page.draft.pickedCount > 0
            kind: ActionButton.Quiet
            text: qsTr("The player is not here: store unconfirmed")
            onClicked: DeskModel.storeUnconfirmed()
        }
        Item { Layout.fillHeight: true }
    }
    ActionStrip {
        id: strip
        anchors.bottom: parent.bottom
        width: parent.width

        IconAction {
            objectName: "back"
            Layout.preferredWidth: Theme.mainTouch
            Layout.preferredHeight: Theme.mainTouch
            iconName: "back"
            text: page.draft.asWhole && page.part > 0 ? qsTr("Back") : qsTr("Leave it unfinished")
            framed: true
            onClicked: page.draft.asWhole && page.part > 0 ? page.turnTo(page.part - 1) : DeskModel.back()
        }
        ActionButton {
            objectName: "nextPart"
            Layout.fillWidth: true
            Layout.preferredWidth: 2
            visible: !page.lastPart
            kind: ActionButton.Primary
            text: qsTr("Next")
            onClicked: page.turnTo(page.part + 1)
        }
        ActionButton {
            objectName: "readBack"
            focus: true
            Layout.fillWidth: true
            Layout.preferredWidth: 3
            kind: page.lastPart ? ActionButton.Primary : ActionButton.Secondary
            text: qsTr("Read back")
            onClicked: DeskModel.readBack()
        }
    }
}
