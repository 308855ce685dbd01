import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// A head lets another tablet in at the event server.
ColumnLayout {
    id: part

    property int role: ExchangeModel.Stringer
    readonly property bool connected: ExchangeModel.state === ExchangeModel.Agreed
                                      || ExchangeModel.state === ExchangeModel.Bringing

    spacing: Theme.gap

    ChoiceBar {
        objectName: "role"
        Layout.fillWidth: true
        label: qsTr("Its role")
        value: part.role
        options: [
            { value: ExchangeModel.Head, text: qsTr("Head") }, { value: ExchangeModel.Desk, text: qsTr("Desk") },
            { value: ExchangeModel.Stringer, text: qsTr("Stringer") }, { value: ExchangeModel.Reader, text: qsTr("Reader") }
        ]
        onChosen: value => {
            part.role = value;
            ExchangeModel.endInvite();
        }
    }
    ActionButton {
        objectName: "invite"
        Layout.fillWidth: true
        kind: ActionButton.Secondary
        enabled: part.connected
        text: part.connected ? qsTr("Make a code") : qsTr("Needs a connection to the event server")
        onClicked: ExchangeModel.invite(part.role)
    }
    CodeShown {
        objectName: "inviteCode"
        Layout.fillWidth: true
        visible: ExchangeModel.inviteWords.length > 0
        whose: qsTr("Code of the event server %1").arg(ExchangeModel.host)
        rows: ExchangeModel.inviteRows
        words: ExchangeModel.inviteWords
        address: ExchangeModel.inviteAddress
        until: ExchangeModel.inviteUntil
    }
}
