pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Something sold that belongs to no racket: overgrips, a reel. What the price list has is one tap away.
Sheet {
    id: sheet

    required property AccountModel account
    property int count: 1
    readonly property string wrong: account.wrongWith(each.text)
    readonly property bool ready: what.text.trim().length > 0 && each.text.trim().length > 0 && wrong.length === 0

    function begin() {
        what.text = "";
        each.text = "";
        note.text = "";
        count = 1;
        open();
    }

    title: qsTr("Charge something else")
    hasChanges: what.text.trim().length > 0 || each.text.trim().length > 0

    SideBySide {
        id: wares
        Layout.fillWidth: true
        visible: sheet.account.wares.length > 0
        least: 170
        most: 3

        Repeater {
            model: sheet.account.wares

            ActionButton {
                required property var modelData
                width: wares.columnWidth
                objectName: "ware"
                kind: ActionButton.Secondary
                text: qsTr("%1, %2").arg(modelData.service).arg(modelData.amount)
                onClicked: {
                    what.text = modelData.service;
                    each.text = modelData.typed;
                }
            }
        }
    }
    TextEntry {
        id: what
        objectName: "saleWhat"
        Layout.fillWidth: true
        label: qsTr("What")
    }
    TextEntry {
        id: each
        objectName: "saleEach"
        Layout.fillWidth: true
        label: qsTr("Price of one in %1").arg(sheet.account.currency)
        error: sheet.wrong
        inputMethodHints: Qt.ImhFormattedNumbersOnly
    }
    FigureStepper {
        objectName: "saleCount"
        Layout.fillWidth: true
        label: qsTr("How many")
        value: sheet.count.toString()
        step: "1"
        least: "1"
        most: "99"
        onEdited: figure => sheet.count = Math.max(1, Math.round(Number(figure)))
    }
    TextEntry {
        id: note
        objectName: "saleNote"
        Layout.fillWidth: true
        label: qsTr("Note")
    }
    ActionButton {
        objectName: "sellNow"
        Layout.fillWidth: true
        enabled: sheet.ready
        text: qsTr("Charge it")
        onClicked: {
            const say = sheet.count > 1 ? qsTr("Charged: %1 × %2").arg(sheet.count).arg(what.text.trim())
                                        : qsTr("Charged: %1").arg(what.text.trim());
            sheet.close();
            sheet.account.sell(what.text, each.text, sheet.count, note.text, say);
        }
    }
}
