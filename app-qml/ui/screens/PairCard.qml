import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// Pairing with an event server, or with a tablet that lets others in, by its code, or by its five words and address.
Card {
    id: card

    property string wrong
    readonly property bool whole: ExchangeModel.isWholeCode(code.text)
    signal paired()

    function pair() {
        wrong = ExchangeModel.pair(code.text, address.text);
        if (wrong.length > 0) return;
        code.text = "";
        paired();
    }

    // The address of one that was picked elsewhere; its code is what is still needed.
    function takeAddress(at) {
        address.text = at;
        wrong = "";
        code.takeFocus();
    }

    title: qsTr("Pair")
    detail: qsTr("With an event server, or with a tablet that lets others in. It shows a code and five words, good for fifteen minutes and one tablet.")

    TextEntry {
        id: code
        objectName: "code"
        Layout.fillWidth: true
        label: qsTr("Code or five words")
        placeholder: "lusab-babad-gutih-tugad-gutuk"
        inputMethodHints: Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase
        error: card.wrong
        onEdited: card.wrong = ""
        onAccepted: if (button.enabled) card.pair()
    }
    TextEntry {
        id: address
        objectName: "address"
        Layout.fillWidth: true
        visible: !card.whole
        label: qsTr("Its address")
        hint: qsTr("It stands beside the words, such as desk.local or 192.168.1.20:26110.")
        inputMethodHints: Qt.ImhUrlCharactersOnly
        onEdited: card.wrong = ""
        onAccepted: if (button.enabled) card.pair()
    }
    ActionButton {
        id: button
        objectName: "pair"
        Layout.fillWidth: true
        kind: ExchangeModel.hosts.length > 0 ? ActionButton.Secondary : ActionButton.Primary
        enabled: code.text.trim().length > 0 && (card.whole || address.text.trim().length > 0)
        text: qsTr("Pair")
        onClicked: card.pair()
    }
}
