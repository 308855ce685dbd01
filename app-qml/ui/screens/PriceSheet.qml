import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// The price of one service: a new one, another one, or none any more.
Sheet {
    id: sheet

    property string prefix
    property string service
    property string before
    readonly property bool fresh: service.length === 0
    readonly property string wrong: MoneyPlace.prices.wrongWith(amount.text)
    readonly property string named: fresh ? (name.text.trim().length > 0 ? prefix + name.text.trim() : "") : service

    function change(row) {
        begin("", row.service, row.typed, MoneyWords.service(row.service));
        amount.takeFocus();
    }
    function add(kind) {
        begin(kind, "", "", kind.length > 0 ? qsTr("Price of one string") : qsTr("Something else"));
        name.takeFocus();
    }
    function begin(kind, what, typed, heading) {
        prefix = kind;
        service = what;
        before = typed;
        name.text = "";
        amount.text = typed;
        title = heading;
        open();
    }
    function keep(typed, say) { if (MoneyPlace.prices.set(named, typed, say)) close(); }

    hasChanges: amount.text !== before || (fresh && name.text.length > 0)

    TextEntry {
        id: name
        objectName: "priceName"
        Layout.fillWidth: true
        visible: sheet.fresh
        label: sheet.prefix.length > 0 ? qsTr("Name of the string, as jobs call it") : qsTr("What")
    }
    TextEntry {
        id: amount
        objectName: "priceAmount"
        Layout.fillWidth: true
        label: qsTr("Price in %1").arg(MoneyPlace.prices.currency)
        hint: qsTr("0 if it is free.")
        error: sheet.wrong
        inputMethodHints: Qt.ImhFormattedNumbersOnly
    }
    ActionButton {
        objectName: "keepPrice"
        Layout.fillWidth: true
        enabled: sheet.named.length > 0 && amount.text.trim().length > 0 && sheet.wrong.length === 0 && sheet.hasChanges
        text: qsTr("Keep")
        onClicked: sheet.keep(amount.text, qsTr("Price: %1").arg(MoneyWords.service(sheet.named)))
    }
    ActionButton {
        objectName: "dropPrice"
        Layout.fillWidth: true
        visible: !sheet.fresh && sheet.before.length > 0
        kind: ActionButton.Secondary
        text: qsTr("Take it off the list")
        onClicked: sheet.keep("", qsTr("Off the list: %1").arg(MoneyWords.service(sheet.named)))
    }
}
