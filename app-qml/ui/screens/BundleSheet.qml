pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// A file to be carried: what goes in, for whom, how large; then on its way to a folder or stick.
Sheet {
    id: sheet

    readonly property bool choosing: BundleModel.state === BundleModel.Choosing
    readonly property bool working: BundleModel.state === BundleModel.Making || BundleModel.state === BundleModel.Bringing
    readonly property bool backup: BundleModel.kind === BundleModel.Backup

    objectName: "bundleSheet"
    title: backup ? qsTr("Everything, as a backup")
         : BundleModel.kind === BundleModel.Event ? qsTr("Take this event with me") : qsTr("Hand players to a colleague")
    onClosed: if (BundleModel.state === BundleModel.Arrived || BundleModel.state === BundleModel.Choosing) BundleModel.seen()

    Words {
        Layout.fillWidth: true
        visible: sheet.choosing && sheet.backup
        text: qsTr("All players, jobs, events, pictures and your private kit, for this tablet or for a new one that takes its place. Other tablets do not take it in. The pairing with event servers is not in it: pair again after putting it back.")
    }
    Words {
        Layout.fillWidth: true
        visible: sheet.choosing && BundleModel.kind === BundleModel.Event
        text: qsTr("%1 with its draws, order of play and the books of its players.").arg(AppDevice.eventName)
    }
    PlayerPick {
        Layout.fillWidth: true
        choice: BundleModel.choice
        visible: sheet.choosing && BundleModel.kind === BundleModel.Players
    }
    ToggleRow {
        objectName: "forRoom"
        Layout.fillWidth: true
        visible: sheet.choosing && !sheet.backup && AppDevice.event.length > 0
        text: qsTr("Whoever gets it works in the room of %1").arg(AppDevice.eventName)
        detail: qsTr("Players who agreed to that room only go along then.")
        checked: BundleModel.forRoom
        onToggled: BundleModel.forRoom = checked
    }
    BundleSeal {
        Layout.fillWidth: true
        visible: sheet.choosing
    }
    TextEntry {
        objectName: "note"
        Layout.fillWidth: true
        visible: sheet.choosing && !sheet.backup
        label: qsTr("Note for whoever opens it")
        field.maximumLength: 200
        text: BundleModel.note
        onEdited: text => BundleModel.note = text
    }
    Words {
        objectName: "size"
        Layout.fillWidth: true
        visible: sheet.choosing && (BundleModel.sizing || BundleModel.players + BundleModel.events > 0)
        meaning: Words.Strong
        text: {
            if (BundleModel.sizing || BundleModel.size.length === 0) return qsTr("Working out how large it is ...");
            const parts = [qsTr("%n player(s)", "", BundleModel.players)];
            if (BundleModel.events > 0) parts.push(qsTr("%n event(s)", "", BundleModel.events));
            if (BundleModel.pictures > 0) parts.push(qsTr("%n picture(s)", "", BundleModel.pictures));
            return qsTr("%1, about %2").arg(parts.join(", ")).arg(BundleModel.size);
        }
    }
    Notice {
        objectName: "leftOut"
        Layout.fillWidth: true
        visible: sheet.choosing && BundleModel.leftOut.length > 0
        kind: Notice.Info
        title: qsTr("Stays here: %n book(s)", "", BundleModel.leftOut.length + BundleModel.leftOutMore)
        text: Array.from(BundleModel.leftOut).map(one => "%1: %2".arg(one.name).arg(one.why)).join("\n")
              + (BundleModel.leftOutMore > 0 ? "\n" + qsTr("and %n more", "", BundleModel.leftOutMore) : "")
    }
    ProgressLine {
        objectName: "progress"
        Layout.fillWidth: true
        visible: sheet.working
        text: BundleModel.state === BundleModel.Making ? qsTr("It is being made ...") : qsTr("It is on its way to %1").arg(BundleModel.file)
        value: BundleModel.progress
    }
    CarryTrouble {
        objectName: "trouble"
        Layout.fillWidth: true
        trouble: BundleModel.trouble
    }
    Words {
        Layout.fillWidth: true
        visible: BundleModel.state === BundleModel.Waiting
        text: qsTr("The file is whole on this tablet (%1, for %2). What has arrived at %3 stays; put the stick in again and go on, also later.")
            .arg(BundleModel.fileSize).arg(BundleModel.fileFor).arg(BundleModel.file)
    }
    Notice {
        objectName: "arrived"
        Layout.fillWidth: true
        visible: BundleModel.state === BundleModel.Arrived
        kind: Notice.Agreed
        title: qsTr("It is written: %1, for %2").arg(BundleModel.fileSize).arg(BundleModel.fileFor)
        text: BundleModel.file + "\n" + (sheet.backup ? qsTr("Keep it apart from this tablet, and its passphrase apart from it.")
            : qsTr("Whoever brings it in gets a receipt beside it. Bring that in here, and you know that it came."))
    }
    Notice {
        objectName: "picturesGone"
        Layout.fillWidth: true
        visible: BundleModel.state === BundleModel.Arrived && BundleModel.picturesGone > 0
        kind: Notice.Attention
        title: qsTr("%n picture(s) could not be read and are not in it.", "", BundleModel.picturesGone)
    }

    foot: ColumnLayout {
        Layout.fillWidth: true

        ActionButton {
            objectName: "write"
            Layout.fillWidth: true
            visible: sheet.choosing
            enabled: BundleModel.ready
            text: qsTr("Choose folder or stick")
            onClicked: folder.open()
        }
        ActionButton {
            objectName: "stop"
            Layout.fillWidth: true
            visible: sheet.working
            kind: ActionButton.Secondary
            text: qsTr("Stop")
            onClicked: BundleModel.stop()
        }
        SideBySide {
            Layout.fillWidth: true
            visible: BundleModel.state === BundleModel.Waiting
            least: 180
            most: 3
            ActionButton { objectName: "goOn"; width: parent.columnWidth; text: qsTr("Go on"); onClicked: BundleModel.goOn() }
            ActionButton {
                width: parent.columnWidth
                kind: ActionButton.Secondary
                text: qsTr("Another place")
                onClicked: folder.open()
            }
            ActionButton {
                objectName: "giveUp"
                width: parent.columnWidth
                kind: ActionButton.Danger
                text: qsTr("Throw it away")
                onClicked: {
                    BundleModel.giveUp();
                    sheet.close();
                }
            }
        }
        ActionButton {
            objectName: "done"
            Layout.fillWidth: true
            visible: BundleModel.state === BundleModel.Arrived
            text: qsTr("Done")
            onClicked: sheet.close()
        }
    }
    FolderDialog {
        id: folder
        onAccepted: BundleModel.state === BundleModel.Waiting ? BundleModel.goOnIn(selectedFolder) : BundleModel.write(selectedFolder)
    }
}
