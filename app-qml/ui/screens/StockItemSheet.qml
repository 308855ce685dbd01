pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// A string that was not in stock before: whose it is, reel or sets, and what came of it.
Sheet {
    id: sheet

    property bool reel: true
    property int owner: StockModel.Room
    property string player
    property int material: 0
    property var players: []
    readonly property string wrongGauge: StockModel.wrongGauge(gauge.text)
    readonly property string wrongAmount: StockModel.wrongWith(amount.text, reel)
    readonly property string wrongLow: StockModel.wrongWith(low.text, reel)
    readonly property bool owned: owner === StockModel.Room || (owner === StockModel.Stringer && whose.text.trim().length > 0)
        || (owner === StockModel.Player && player.length > 0)

    function begin() {
        for (const entry of [name, gauge, whose, amount, low]) entry.text = "";
        reel = true;
        owner = StockModel.Room;
        player = "";
        material = 0;
        players = StockModel.players();
        open();
        name.takeFocus();
    }

    title: qsTr("New string")
    hasChanges: name.text.length + gauge.text.length + whose.text.length + amount.text.length + low.text.length > 0

    TextEntry {
        id: name
        objectName: "itemName"
        Layout.fillWidth: true
        label: qsTr("Name of the string, as jobs call it")
    }
    TextEntry {
        id: gauge
        objectName: "itemGauge"
        Layout.fillWidth: true
        label: qsTr("Gauge in mm")
        error: sheet.wrongGauge
        inputMethodHints: Qt.ImhFormattedNumbersOnly
    }
    PickList {
        objectName: "itemMaterial"
        Layout.fillWidth: true
        label: qsTr("What it is made of")
        options: [{ value: 0, text: qsTr("not said") }, { value: 1, text: qsTr("Natural gut") }, { value: 2, text: qsTr("Multifilament") },
                  { value: 3, text: qsTr("Synthetic gut") }, { value: 4, text: qsTr("Polyester") }, { value: 5, text: qsTr("Aramid") }]
        value: sheet.material
        onPicked: value => sheet.material = value
    }
    ChoiceBar {
        objectName: "itemSupply"
        Layout.fillWidth: true
        label: qsTr("Counted in")
        value: sheet.reel
        options: [{ value: true, text: qsTr("Metres of a reel") }, { value: false, text: qsTr("Sets") }]
        onChosen: value => sheet.reel = value
    }
    ChoiceBar {
        objectName: "itemOwner"
        Layout.fillWidth: true
        label: qsTr("Whose it is")
        value: sheet.owner
        options: [{ value: StockModel.Room, text: qsTr("The room's") }, { value: StockModel.Stringer, text: qsTr("A stringer's") },
                  { value: StockModel.Player, text: qsTr("A player's") }]
        onChosen: value => sheet.owner = value
    }
    TextEntry {
        id: whose
        objectName: "itemWhose"
        Layout.fillWidth: true
        visible: sheet.owner === StockModel.Stringer
        label: qsTr("Name of the stringer")
    }
    PickList {
        objectName: "itemPlayer"
        Layout.fillWidth: true
        visible: sheet.owner === StockModel.Player
        label: qsTr("Player")
        options: sheet.players
        value: sheet.player
        onPicked: value => sheet.player = value
    }
    TextEntry {
        id: amount
        objectName: "itemAmount"
        Layout.fillWidth: true
        label: sheet.reel ? qsTr("Metres that are there") : qsTr("Sets that are there")
        error: sheet.wrongAmount
        inputMethodHints: Qt.ImhFormattedNumbersOnly
    }
    TextEntry {
        id: low
        objectName: "itemLow"
        Layout.fillWidth: true
        label: sheet.reel ? qsTr("Call it low at so many metres") : qsTr("Call it low at so many sets")
        error: sheet.wrongLow
        inputMethodHints: Qt.ImhFormattedNumbersOnly
    }
    ActionButton {
        objectName: "keepItem"
        Layout.fillWidth: true
        enabled: name.text.trim().length > 0 && sheet.owned && sheet.wrongGauge.length === 0 && sheet.wrongAmount.length === 0
                 && sheet.wrongLow.length === 0
        text: qsTr("Keep")
        onClicked: {
            const kept = StockModel.add({ name: name.text, gauge: gauge.text, material: sheet.material, reel: sheet.reel, owner: sheet.owner, whose: whose.text,
                                          player: sheet.player, low: low.text, amount: amount.text, note: "" },
                                        qsTr("In stock: %1").arg(name.text.trim()));
            if (kept) sheet.close();
        }
    }
}
