pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// A player's card to be scanned off this screen, or to be taken along as picture, paper or text.
Sheet {
    id: sheet

    function show(book) {
        GiveCardModel.show(book);
        open();
    }

    title: qsTr("Card of %1").arg(GiveCardModel.name)
    onClosed: GiveCardModel.leave()

    Notice {
        objectName: "cardTrouble"
        Layout.fillWidth: true
        visible: GiveCardModel.trouble !== GiveCardModel.None
        kind: Notice.Attention
        title: qsTr("There is no card")
        text: GiveCardModel.trouble === GiveCardModel.NoConsent
            ? qsTr("The player did not agree that this goes to others. Ask, and record the answer under Consent first.") : GiveCardModel.troubleText
    }
    CodeSquare {
        objectName: "cardCode"
        // As large as there is room, so that a phone reads it at arm's length, and no more white around it than the quiet zone.
        readonly property int room: Math.min(sheet.width - 2 * Theme.room, 0.62 * (sheet.parent?.height ?? 800))
        readonly property int side: Math.max(1, Math.floor(room / modules)) * modules
        Layout.alignment: Qt.AlignHCenter
        Layout.preferredWidth: side
        Layout.preferredHeight: side
        visible: rows.length > 0
        rows: GiveCardModel.rows
        name: sheet.title
    }
    Words {
        Layout.fillWidth: true
        visible: GiveCardModel.rows.length > 0
        text: qsTr("Scan it where the next racket is strung. Whoever sees it can read it.")
    }
    Words {
        objectName: "cardSigned"
        Layout.fillWidth: true
        visible: GiveCardModel.rows.length > 0
        meaning: Words.Caption
        quiet: true
        text: qsTr("Signed by %1, as of %2").arg(GiveCardModel.device).arg(GiveCardModel.made)
    }
    Card {
        objectName: "cardHolds"
        Layout.fillWidth: true
        visible: GiveCardModel.rows.length > 0
        title: qsTr("What is on it")
        spacing: 0

        CardLines {
            Layout.fillWidth: true
            lines: GiveCardModel.lines
        }
        Words {
            Layout.fillWidth: true
            Layout.topMargin: Theme.tight
            visible: GiveCardModel.leftOut > 0
            meaning: Words.Caption
            quiet: true
            text: qsTr("Older setups and rackets for which there was no room: %1").arg(GiveCardModel.leftOut)
        }
    }
    SideBySide {
        id: ways
        Layout.fillWidth: true
        visible: GiveCardModel.rows.length > 0
        least: 200
        ActionButton {
            objectName: "cardOnPaper"
            width: ways.columnWidth
            text: qsTr("On paper")
            onClicked: papers.showCards([GiveCardModel.book])
        }
        ActionButton {
            objectName: "saveCardPicture"
            width: ways.columnWidth
            kind: ActionButton.Secondary
            text: qsTr("Save as picture")
            onClicked: GiveCardModel.savePicture()
        }
    }
    SideBySide {
        id: texts
        Layout.fillWidth: true
        visible: GiveCardModel.rows.length > 0
        least: 200
        ActionButton {
            objectName: "saveCardText"
            width: texts.columnWidth
            kind: ActionButton.Secondary
            text: qsTr("Save as text")
            onClicked: GiveCardModel.saveText()
        }
        ActionButton {
            objectName: "copyCardText"
            width: texts.columnWidth
            kind: ActionButton.Secondary
            text: qsTr("Copy the text")
            onClicked: GiveCardModel.copyText()
        }
    }
    Notice {
        objectName: "cardResult"
        Layout.fillWidth: true
        visible: GiveCardModel.result !== GiveCardModel.Nothing
        kind: GiveCardModel.result === GiveCardModel.NotSaved ? Notice.Danger : Notice.Agreed
        title: {
            switch (GiveCardModel.result) {
            case GiveCardModel.PictureSaved: return qsTr("The picture is saved");
            case GiveCardModel.TextSaved: return qsTr("The text is saved");
            case GiveCardModel.TextCopied: return qsTr("The text is copied");
            default: return qsTr("The card was not saved");
            }
        }
        text: GiveCardModel.told
    }
    PrintSheet { id: papers }
}
