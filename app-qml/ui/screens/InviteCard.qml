import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// A head invites another tablet: a code to scan, or five words and an address to say aloud.
Card {
    id: card

    property int role: ExchangeModel.Stringer
    readonly property bool connected: ExchangeModel.state === ExchangeModel.Agreed
                                      || ExchangeModel.state === ExchangeModel.Bringing

    title: qsTr("Invite another tablet")
    detail: qsTr("The event server makes a code for one tablet, good for fifteen minutes.")

    ChoiceBar {
        objectName: "role"
        Layout.fillWidth: true
        label: qsTr("Its role")
        value: card.role
        options: [
            { value: ExchangeModel.Head, text: qsTr("Head") }, { value: ExchangeModel.Desk, text: qsTr("Desk") },
            { value: ExchangeModel.Stringer, text: qsTr("Stringer") }, { value: ExchangeModel.Reader, text: qsTr("Reader") }
        ]
        onChosen: value => {
            card.role = value;
            ExchangeModel.endInvite();
        }
    }
    ActionButton {
        objectName: "invite"
        Layout.fillWidth: true
        kind: ActionButton.Secondary
        enabled: card.connected
        text: card.connected ? qsTr("Make a code") : qsTr("Needs a connection to the event server")
        onClicked: ExchangeModel.invite(card.role)
    }
    CodeSquare {
        objectName: "square"
        Layout.alignment: Qt.AlignHCenter
        visible: ExchangeModel.inviteRows.length > 0
        Layout.preferredWidth: Math.min(340, card.width - 2 * card.padding)
        Layout.preferredHeight: Math.min(340, card.width - 2 * card.padding)
        rows: ExchangeModel.inviteRows
    }
    Words {
        objectName: "words"
        Layout.fillWidth: true
        visible: ExchangeModel.inviteWords.length > 0
        meaning: Words.Title
        text: ExchangeModel.inviteWords
        horizontalAlignment: Text.AlignHCenter
    }
    Words {
        Layout.fillWidth: true
        visible: ExchangeModel.inviteWords.length > 0
        quiet: true
        text: qsTr("At %1, until %2").arg(ExchangeModel.inviteAddress).arg(ExchangeModel.inviteUntil)
        horizontalAlignment: Text.AlignHCenter
    }
}
