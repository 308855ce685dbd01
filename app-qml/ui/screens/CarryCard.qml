pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// What travels in a file on a stick: made here, brought in here, and who has what was made.
Card {
    id: card

    function begin(kind) {
        BundleModel.begin(kind);
        bundle.open();
    }
    // A file as a dialog would give it.
    function bringIn(file) {
        IntakeModel.open(file);
        intake.open();
    }

    objectName: "carry"
    title: qsTr("Without a network")
    detail: qsTr("In one file on a stick, sealed for one tablet or by a passphrase. It can be brought in twice without harm.")

    Notice {
        objectName: "waits"
        Layout.fillWidth: true
        visible: BundleModel.state === BundleModel.Waiting && !bundle.opened
        kind: Notice.Attention
        title: qsTr("A file has not arrived yet")
        text: BundleModel.file
        actionText: qsTr("Go on with it")
        onActed: bundle.open()
    }
    SideBySide {
        Layout.fillWidth: true
        least: 300

        ActionButton {
            objectName: "carryEvent"
            width: parent.columnWidth
            kind: ActionButton.Secondary
            enabled: AppDevice.event.length > 0
            text: qsTr("Take this event with me")
            onClicked: card.begin(BundleModel.Event)
        }
        ActionButton {
            objectName: "carryPlayers"
            width: parent.columnWidth
            kind: ActionButton.Secondary
            text: qsTr("Hand players to a colleague")
            onClicked: card.begin(BundleModel.Players)
        }
        ActionButton {
            objectName: "carryBackup"
            width: parent.columnWidth
            kind: ActionButton.Secondary
            text: qsTr("Everything, as a backup")
            onClicked: card.begin(BundleModel.Backup)
        }
        ActionButton {
            objectName: "carryIn"
            width: parent.columnWidth
            kind: ActionButton.Secondary
            text: qsTr("Bring in a file")
            onClicked: choosing.open()
        }
    }
    Repeater {
        model: BundleModel.made

        ColumnLayout {
            id: one
            required property var modelData
            required property int index
            Layout.fillWidth: true
            spacing: 2

            Words {
                Layout.fillWidth: true
                Layout.topMargin: one.index === 0 ? Theme.gap : 0
                visible: one.index === 0
                meaning: Words.Strong
                text: qsTr("Made here")
            }
            Words {
                objectName: "made" + one.index
                Layout.fillWidth: true
                text: one.modelData.text
            }
            Words {
                Layout.fillWidth: true
                meaning: Words.Caption
                quiet: true
                text: [one.modelData.detail].concat(Array.from(one.modelData.taken)).join("\n")
            }
        }
    }
    Words {
        objectName: "ownWords"
        Layout.fillWidth: true
        Layout.topMargin: Theme.tight
        meaning: Words.Caption
        quiet: true
        text: qsTr("Words of this tablet’s key, for whoever brings in a file of it and does not know it: %1").arg(BundleModel.ownWords)
    }
    BundleSheet { id: bundle }
    IntakeSheet { id: intake; onAnother: choosing.open() }
    FileDialog {
        id: choosing
        nameFilters: [qsTr("Bundles and receipts (*.weavelog *.bundle *.receipt)"), qsTr("All files (*)")]
        onAccepted: card.bringIn(selectedFile)
    }
}
