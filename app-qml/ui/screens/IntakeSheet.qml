pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// A file that was carried here, looked at before anything of it is taken in; the account and the receipt at the end.
Sheet {
    id: sheet

    property bool compared: false
    // Another file is to be chosen.
    signal another()

    objectName: "intakeSheet"
    title: qsTr("Bring in a file")
    onOpened: compared = false
    onClosed: IntakeModel.leave()

    Words {
        objectName: "intakeFile"
        Layout.fillWidth: true
        quiet: true
        text: IntakeModel.fileName
    }
    ProgressLine {
        objectName: "intakeProgress"
        Layout.fillWidth: true
        visible: IntakeModel.state === IntakeModel.Looking || IntakeModel.state === IntakeModel.Taking
        text: IntakeModel.state === IntakeModel.Looking ? qsTr("Looking into it ...") : qsTr("It is being taken in; the app stays usable.")
        value: IntakeModel.progress
        indeterminate: IntakeModel.state === IntakeModel.Looking
    }
    TextEntry {
        id: words
        objectName: "intakeWords"
        Layout.fillWidth: true
        visible: IntakeModel.state === IntakeModel.Locked
        label: qsTr("Passphrase")
        hint: qsTr("Whoever made the file told it to you.")
        error: IntakeModel.wrongWords ? qsTr("It does not open with that. Small and large letters count.") : ""
        inputMethodHints: Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase | Qt.ImhSensitiveData
        onAccepted: IntakeModel.unlock(text)
    }
    Words {
        objectName: "intakeMaker"
        Layout.fillWidth: true
        visible: IntakeModel.maker.length > 0
        meaning: Words.Strong
        text: (IntakeModel.backup ? qsTr("Backup of %1 (%2), made %3") : qsTr("From %1 (%2), made %3"))
            .arg(IntakeModel.maker).arg(IntakeModel.standing).arg(IntakeModel.made)
    }
    Words {
        Layout.fillWidth: true
        visible: IntakeModel.note.length > 0
        text: qsTr("“%1”").arg(IntakeModel.note)
    }
    Repeater {
        model: IntakeModel.state === IntakeModel.Seen ? IntakeModel.holds : []
        Words {
            required property string modelData
            Layout.fillWidth: true
            text: modelData
        }
    }
    Words {
        objectName: "newNames"
        Layout.fillWidth: true
        visible: IntakeModel.state === IntakeModel.Seen && IntakeModel.newNames.length > 0
        quiet: true
        text: qsTr("New here: %1").arg(Array.from(IntakeModel.newNames).join(", "))
              + (IntakeModel.newNamesMore > 0 ? " " + qsTr("and %n more", "", IntakeModel.newNamesMore) : "")
    }
    Notice {
        Layout.fillWidth: true
        visible: IntakeModel.state === IntakeModel.Seen && IntakeModel.backup && IntakeModel.takeable
        kind: Notice.Info
        title: qsTr("This tablet takes the place of %1").arg(IntakeModel.maker)
        text: qsTr("Everything of it comes here, the private kit too. From then on this tablet writes in its own name; pair it with the event servers again.")
    }
    Notice {
        objectName: "stranger"
        Layout.fillWidth: true
        visible: IntakeModel.state === IntakeModel.Seen && IntakeModel.mustTrust
        kind: Notice.Attention
        title: qsTr("Nobody here knows %1").arg(IntakeModel.maker)
        text: qsTr("Its Exchange page shows the words of its key. Are they these? %1").arg(IntakeModel.keyWords)
    }
    ToggleRow {
        objectName: "compared"
        Layout.fillWidth: true
        visible: IntakeModel.state === IntakeModel.Seen && IntakeModel.mustTrust
        text: qsTr("The words are the same")
        checked: sheet.compared
        onToggled: sheet.compared = checked
    }
    Notice {
        objectName: "intakeDone"
        Layout.fillWidth: true
        visible: IntakeModel.state === IntakeModel.Taken && IntakeModel.complete
        kind: Notice.Agreed
        title: qsTr("All of it is here")
    }
    CarryTrouble {
        objectName: "intakeTrouble"
        Layout.fillWidth: true
        trouble: IntakeModel.trouble
    }
    Repeater {
        model: IntakeModel.account
        Words {
            required property string modelData
            Layout.fillWidth: true
            text: modelData
        }
    }
    Words {
        Layout.fillWidth: true
        visible: IntakeModel.state === IntakeModel.Taken && IntakeModel.questions > 0
        meaning: Words.Strong
        text: qsTr("Two answers to one question: %n to be settled under Questions.", "", IntakeModel.questions)
    }
    Words {
        objectName: "receipt"
        Layout.fillWidth: true
        visible: IntakeModel.state === IntakeModel.Taken
        quiet: true
        text: IntakeModel.receiptFile.length > 0
            ? qsTr("The receipt for %1 lies at %2. Give it back with the stick.").arg(IntakeModel.maker).arg(IntakeModel.receiptFile)
            : qsTr("The receipt for %1 could not be put beside the file; save it elsewhere.").arg(IntakeModel.maker)
    }

    foot: ColumnLayout {
        Layout.fillWidth: true

        ActionButton {
            objectName: "unlock"
            Layout.fillWidth: true
            visible: IntakeModel.state === IntakeModel.Locked
            enabled: words.text.length > 0
            text: qsTr("Open")
            onClicked: IntakeModel.unlock(words.text)
        }
        ActionButton {
            objectName: "take"
            Layout.fillWidth: true
            visible: IntakeModel.state === IntakeModel.Seen && IntakeModel.takeable
            enabled: !IntakeModel.mustTrust || sheet.compared
            text: IntakeModel.backup ? qsTr("Put it back here") : qsTr("Take it in")
            onClicked: IntakeModel.take(sheet.compared)
        }
        ActionButton {
            objectName: "intakeStop"
            Layout.fillWidth: true
            visible: IntakeModel.state === IntakeModel.Looking || IntakeModel.state === IntakeModel.Taking
            kind: ActionButton.Secondary
            text: qsTr("Stop")
            onClicked: IntakeModel.stop()
        }
        SideBySide {
            Layout.fillWidth: true
            visible: IntakeModel.state === IntakeModel.Taken || IntakeModel.state === IntakeModel.Failed || IntakeModel.state === IntakeModel.Told
            least: 180
            ActionButton {
                objectName: "intakeGoOn"
                width: parent.columnWidth
                visible: IntakeModel.state === IntakeModel.Failed || (IntakeModel.state === IntakeModel.Taken && !IntakeModel.complete)
                text: IntakeModel.state === IntakeModel.Failed ? qsTr("Try again") : qsTr("Go on")
                onClicked: IntakeModel.goOn()
            }
            ActionButton {
                objectName: "saveReceipt"
                width: parent.columnWidth
                visible: IntakeModel.state === IntakeModel.Taken
                kind: ActionButton.Secondary
                text: qsTr("Save the receipt elsewhere")
                onClicked: folder.open()
            }
            ActionButton {
                objectName: "intakeClose"
                width: parent.columnWidth
                kind: IntakeModel.state === IntakeModel.Failed ? ActionButton.Secondary : ActionButton.Primary
                text: IntakeModel.state === IntakeModel.Failed ? qsTr("Another file") : qsTr("Done")
                onClicked: {
                    const again = IntakeModel.state === IntakeModel.Failed;
                    sheet.close();
                    if (again) sheet.another();
                }
            }
        }
    }
    Connections {
        target: IntakeModel
        function onReceiptRead() { BundleModel.readMade(); }
    }
    FolderDialog {
        id: folder
        onAccepted: IntakeModel.saveReceipt(selectedFolder)
    }
}
