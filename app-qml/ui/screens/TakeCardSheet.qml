pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// A player card that comes in: who signed it and when, how it compares with what is held here, and taking it in.
Sheet {
    id: sheet

    readonly property int cardState: TakeCardModel.state
    readonly property bool readable: cardState === TakeCardModel.Read || cardState === TakeCardModel.Stored || cardState === TakeCardModel.NothingNew
    property bool acceptNewer: false
    property bool vouched: false
    readonly property bool stranger: TakeCardModel.signer === TakeCardModel.Stranger
    signal showAsked(string book)

    title: readable ? qsTr("Card of %1").arg(TakeCardModel.name) : qsTr("Take a card in")
    onClosed: TakeCardModel.leave()

    Connections {
        target: TakeCardModel
        function onAsked() {
            sheet.acceptNewer = false;
            sheet.vouched = false;
            typed.text = "";
        }
    }

    Notice {
        objectName: "cardFault"
        Layout.fillWidth: true
        visible: sheet.cardState !== TakeCardModel.Waiting && !sheet.readable
        kind: sheet.cardState === TakeCardModel.Forged || sheet.cardState === TakeCardModel.Revoked ? Notice.Danger : Notice.Attention
        title: {
            switch (sheet.cardState) {
            case TakeCardModel.NoFile: return qsTr("The picture can't be read");
            case TakeCardModel.NoCode: return qsTr("No code is to be seen on the picture");
            case TakeCardModel.NoCard: return qsTr("This is no player card");
            case TakeCardModel.Damaged: return qsTr("The card is damaged");
            case TakeCardModel.Forged: return qsTr("The card is forged");
            case TakeCardModel.FromNewer: return qsTr("The card is of a newer version");
            case TakeCardModel.Revoked: return qsTr("Signed by a device that was shut out");
            case TakeCardModel.Forgotten: return qsTr("This player was forgotten here");
            case TakeCardModel.NoConsent: return qsTr("The player did not agree to this");
            default: return qsTr("The card is not taken");
            }
        }
        text: {
            switch (sheet.cardState) {
            case TakeCardModel.NoCode: return qsTr("Take a picture from nearer by, straight from above and without shine.");
            case TakeCardModel.NoCard: return qsTr("The code says something else. A card begins with WEAVELOG:CARD.");
            case TakeCardModel.Damaged: return qsTr("Some of its letters are wrong or missing: scan it again.");
            case TakeCardModel.Forged: return qsTr("The device that it names did not sign it. Do not use it: ask the player, and tell the head of the room.");
            case TakeCardModel.FromNewer: return qsTr("Update Weavelog on this device.");
            case TakeCardModel.Revoked:
                return qsTr("The card is whole. But %1 signed it, which was lost or shut out, on %2. Ask the player, or somebody else for a card.")
                    .arg(TakeCardModel.device).arg(TakeCardModel.made);
            case TakeCardModel.Forgotten: return qsTr("The player withdrew. Who wants to be known again begins anew at the desk, and is asked for consent.");
            case TakeCardModel.NoConsent: return qsTr("Withdrawn, or for one room only. Ask the player and record the answer first.");
            default: return TakeCardModel.fault;
            }
        }
    }
    // Where it comes from.
    SideBySide {
        id: ways
        Layout.fillWidth: true
        visible: !sheet.readable
        least: 200
        ActionButton {
            objectName: "cardByCamera"
            width: ways.columnWidth
            visible: CameraModel.present
            iconName: "camera"
            text: qsTr("With the camera")
            onClicked: CameraModel.on = true
        }
        ActionButton {
            objectName: "cardByPicture"
            width: CameraModel.present ? ways.columnWidth : ways.width
            kind: CameraModel.present ? ActionButton.Secondary : ActionButton.Primary
            iconName: "in"
            enabled: !TakeCardModel.looking
            text: TakeCardModel.looking ? qsTr("Looking ...") : qsTr("From a picture")
            onClicked: choosing.open()
        }
    }
    Words {
        Layout.fillWidth: true
        visible: !sheet.readable
        text: qsTr("Or scan it with a scanner now, or paste its text here.")
    }
    TextEntry {
        id: typed
        objectName: "cardText"
        Layout.fillWidth: true
        visible: !sheet.readable
        placeholder: "WEAVELOG:CARD:..."
        field.Accessible.name: qsTr("Text of the card")
        inputMethodHints: Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase
        onAccepted: if (text.trim().length > 0) TakeCardModel.take(text)
    }
    ActionButton {
        objectName: "readCardText"
        Layout.fillWidth: true
        visible: !sheet.readable && typed.text.trim().length > 0
        text: qsTr("Read it")
        onClicked: TakeCardModel.take(typed.text)
    }

    // What it says.
    Notice {
        objectName: "cardDone"
        Layout.fillWidth: true
        visible: sheet.cardState === TakeCardModel.Stored || sheet.cardState === TakeCardModel.NothingNew
        kind: Notice.Agreed
        title: sheet.cardState === TakeCardModel.Stored ? qsTr("Taken in") : qsTr("Nothing new: all of it is here")
    }
    Column {
        id: who
        Layout.fillWidth: true
        visible: sheet.readable
        spacing: 2
        Words {
            width: who.width
            visible: TakeCardModel.about.length > 0
            text: TakeCardModel.about
        }
        Words {
            objectName: "signedBy"
            width: who.width
            meaning: Words.Strong
            text: qsTr("Signed by %1, on %2").arg(TakeCardModel.device).arg(TakeCardModel.made)
        }
        Words {
            objectName: "signerKnown"
            width: who.width
            text: {
                switch (TakeCardModel.signer) {
                case TakeCardModel.Self: return qsTr("That is this device.");
                case TakeCardModel.Host: return qsTr("An event server that this device was paired with.");
                case TakeCardModel.Member: return qsTr("A device of this room.");
                case TakeCardModel.Author: return qsTr("A device whose work is held here.");
                default: return qsTr("This device does not know it.");
                }
            }
        }
        Words {
            width: who.width
            meaning: Words.Caption
            quiet: true
            text: qsTr("Words of its key: %1").arg(TakeCardModel.words)
        }
    }
    Notice {
        Layout.fillWidth: true
        visible: sheet.readable && TakeCardModel.ahead
        kind: Notice.Attention
        text: qsTr("It was signed by a clock that is ahead of this device's: what seems newer on it may not be.")
    }
    Notice {
        objectName: "takenBefore"
        Layout.fillWidth: true
        visible: sheet.cardState === TakeCardModel.Read && TakeCardModel.takenBefore
        kind: Notice.Info
        text: qsTr("This very card was taken in before.")
    }
    Card {
        Layout.fillWidth: true
        visible: sheet.readable
        title: qsTr("What is on it")
        CardLines {
            Layout.fillWidth: true
            lines: TakeCardModel.lines
        }
    }
    CardDifferences {
        objectName: "cardNewer"
        Layout.fillWidth: true
        visible: sheet.cardState === TakeCardModel.Read && TakeCardModel.newer.length > 0
        title: qsTr("Newer on the card")
        differences: TakeCardModel.newer
        ToggleRow {
            objectName: "acceptNewer"
            Layout.fillWidth: true
            text: qsTr("Take these as well: the player says so")
            checked: sheet.acceptNewer
            onToggled: sheet.acceptNewer = checked
        }
    }
    CardDifferences {
        objectName: "cardOlder"
        Layout.fillWidth: true
        visible: sheet.cardState === TakeCardModel.Read && TakeCardModel.older.length > 0
        title: qsTr("Older than what is held here: stays as it is here")
        differences: TakeCardModel.older
    }
    CardDifferences {
        objectName: "cardQuestions"
        Layout.fillWidth: true
        visible: sheet.cardState === TakeCardModel.Read && TakeCardModel.questions.length > 0
        title: qsTr("Open questions: a person closes them first")
        differences: TakeCardModel.questions
    }
    Words {
        objectName: "cardNew"
        Layout.fillWidth: true
        visible: sheet.cardState === TakeCardModel.Read
        text: !TakeCardModel.held ? qsTr("The player is not known here yet: the card begins the book.")
            : TakeCardModel.fresh > 0 ? qsTr("New here: %n field(s)", "", TakeCardModel.fresh) : qsTr("Nothing on it is missing here.")
    }
    Words {
        objectName: "cardConsent"
        Layout.fillWidth: true
        visible: sheet.readable
        quiet: true
        text: TakeCardModel.consent > 0 ? qsTr("Agreed to here: %1").arg(TakeCardModel.consentText)
                                        : qsTr("A card carries no consent. Ask the player where this may go, and record the answer.")
    }
    Notice {
        objectName: "strangerNotice"
        Layout.fillWidth: true
        visible: sheet.cardState === TakeCardModel.Read && sheet.stranger
        kind: Notice.Attention
        title: qsTr("A stranger signed it")
        text: qsTr("The signature holds, but no signature says that a stranger is honest. Read it to the player first.")
    }
    ToggleRow {
        objectName: "vouched"
        Layout.fillWidth: true
        visible: sheet.cardState === TakeCardModel.Read && sheet.stranger
        text: qsTr("The player says that it is right")
        checked: sheet.vouched
        onToggled: sheet.vouched = checked
    }
    Words {
        Layout.fillWidth: true
        visible: sheet.cardState === TakeCardModel.Read
        meaning: Words.Caption
        quiet: true
        text: qsTr("Ask the player before stringing by a card; the makers’ instructions for frame and string come first.")
    }
    ActionButton {
        objectName: "storeCard"
        Layout.fillWidth: true
        visible: sheet.cardState === TakeCardModel.Read
        enabled: !sheet.stranger || sheet.vouched
        iconName: "in"
        text: qsTr("Take it in")
        onClicked: TakeCardModel.store(sheet.acceptNewer)
    }
    ActionButton {
        objectName: "showPlayer"
        Layout.fillWidth: true
        visible: sheet.readable && TakeCardModel.book.length > 0 && sheet.cardState !== TakeCardModel.Read
        text: qsTr("To the player")
        onClicked: {
            const book = TakeCardModel.book;
            sheet.close();
            sheet.showAsked(book);
        }
    }
    FileDialog {
        id: choosing
        nameFilters: [qsTr("Pictures (*.png *.jpg *.jpeg *.PNG *.JPG *.JPEG)")]
        onAccepted: TakeCardModel.takePicture(selectedFile)
    }
}
