pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// Something of a string came, was counted or went.
Sheet {
    id: sheet

    property var row: ({})
    readonly property bool reel: row.reel ?? false
    // The numbers of StockWhy; what jobs use is noted at the bench.
    property int why: 1
    readonly property string wrong: StockModel.wrongWith(amount.text, reel)

    function begin(of) {
        row = of;
        why = 1;
        amount.text = "";
        note.text = "";
        title = of.name;
        open();
    }

    hasChanges: amount.text.length > 0 || note.text.length > 0

    SumRow {
        Layout.fillWidth: true
        strong: true
        text: qsTr("Left")
        amount: sheet.row.left ?? ""
    }
    SumRow {
        Layout.fillWidth: true
        visible: (sheet.row.lowMark ?? "").length > 0
        text: qsTr("Called low at")
        amount: (sheet.row.lowMark ?? "").length > 0 ? StockWords.amount(sheet.row.lowMark, sheet.reel) : ""
    }
    ChoiceBar {
        objectName: "stockWhy"
        Layout.fillWidth: true
        label: qsTr("What happened")
        value: sheet.why
        options: [{ value: 1, text: qsTr("It came") }, { value: 3, text: qsTr("Counted") }, { value: 6, text: qsTr("Taken out") },
                  { value: 4, text: qsTr("Spoilt") }, { value: 5, text: qsTr("Brought back") }]
        onChosen: value => sheet.why = value
    }
    TextEntry {
        id: amount
        objectName: "stockAmount"
        Layout.fillWidth: true
        label: sheet.why === 3 ? (sheet.reel ? qsTr("Metres that are there") : qsTr("Sets that are there"))
                               : sheet.reel ? qsTr("Metres") : qsTr("Sets")
        error: sheet.wrong
        inputMethodHints: Qt.ImhFormattedNumbersOnly
    }
    TextEntry {
        id: note
        objectName: "stockNote"
        Layout.fillWidth: true
        label: qsTr("Note")
    }
    ActionButton {
        objectName: "keepStock"
        Layout.fillWidth: true
        enabled: amount.text.trim().length > 0 && sheet.wrong.length === 0
        text: qsTr("Keep")
        onClicked: {
            if (StockModel.move(sheet.row.item, sheet.why, amount.text, note.text, qsTr("Stock: %1").arg(sheet.title))) sheet.close();
        }
    }
}
