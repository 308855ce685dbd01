pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// Everything on which two people gave different answers while apart. Nobody is overruled: a person closes each.
PageFrame {
    id: page

    property string lastClosed

    title: qsTr("Questions")
    detail: cards.count > 0 ? qsTr("%n open. Ask the player, then close it with the answer.", "", QuestionsModel.count) : ""
    widest: 820

    Notice {
        objectName: "closed"
        Layout.fillWidth: true
        visible: page.lastClosed.length > 0
        kind: Notice.Agreed
        title: qsTr("Closed")
        text: page.lastClosed
        actionText: qsTr("Good")
        onActed: page.lastClosed = ""
    }
    EmptyState {
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.alignment: Qt.AlignCenter
        visible: cards.count === 0
        iconName: "question"
        title: qsTr("No question is open")
        text: qsTr("Where two people gave different answers without seeing each other, both stand here until someone closes the question.")
    }
    Repeater {
        id: cards
        model: QuestionsModel

        QuestionCard {
            id: card
            Layout.fillWidth: true
            onSettled: text => page.lastClosed = qsTr("%1, %2: %3. All devices follow.")
                .arg(card.player).arg(card.field).arg(text)
        }
    }
    Item { Layout.fillHeight: true; visible: cards.count > 0 }
}
