import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// A player withdraws: what will be gone, for whom, and that it can't be undone.
Sheet {
    id: sheet

    required property PlayerCard card

    function begin() {
        asked.checked = false;
        open();
    }

    title: qsTr("Forget %1?").arg(card.name)

    Notice {
        Layout.fillWidth: true
        kind: Notice.Danger
        title: qsTr("This can't be undone")
        text: qsTr("Setups, rackets, jobs, notes and the name are erased on this device now, and on every other device at its next exchange. Only a mark stays that keeps them from coming back.")
    }
    Words {
        objectName: "allBooks"
        Layout.fillWidth: true
        visible: sheet.card.bookCount > 1
        meaning: Words.Strong
        text: qsTr("All %n books of this person that are linked go together.", "", sheet.card.bookCount)
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("Entry lists of events stay as they are.")
    }
    ToggleRow {
        id: asked
        objectName: "askedFor"
        Layout.fillWidth: true
        text: qsTr("The player has asked for it")
    }
    ActionButton {
        objectName: "forgetNow"
        Layout.fillWidth: true
        kind: ActionButton.Danger
        enabled: asked.checked
        text: qsTr("Forget this player")
        onClicked: if (sheet.card.forget()) sheet.close()
    }
}
