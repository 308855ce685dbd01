pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The guard against the wrong racket: the tag on the racket and the tag on its bag or paper have to be of the same job.
Sheet {
    id: sheet

    readonly property var sides: ScanModel.sides
    readonly property int compared: ScanModel.compared
    readonly property var both: ScanModel.both

    function side(at) { return sides[at] ?? null; }
    function takeTyped() {
        const typed = entry.text;
        entry.text = "";
        if (typed.trim().length > 0) ScanModel.take(typed);
    }

    title: qsTr("The right racket?")
    onClosed: ScanModel.comparing = false
    onOpened: entry.takeFocus()

    Words {
        Layout.fillWidth: true
        text: qsTr("Scan the tag on the racket, then the tag on its bag or paper.")
    }
    SideBySide {
        id: pair
        Layout.fillWidth: true
        least: 220
        Repeater {
            model: [qsTr("On the racket"), qsTr("On the bag")]

            Rectangle {
                id: box
                required property string modelData
                required property int index
                readonly property var read: sheet.side(index)
                readonly property bool next: sheet.sides.length === index || (read?.fault ?? false)
                objectName: "side" + index
                width: pair.columnWidth
                height: said.height + 2 * Theme.gap
                radius: Theme.radius
                color: Theme.colour.raised
                border.width: next ? 3 : 1
                border.color: next ? Theme.colour.action : Theme.colour.line

                Column {
                    id: said
                    x: Theme.gap
                    y: Theme.gap
                    width: parent.width - 2 * Theme.gap
                    spacing: 2
                    Words {
                        width: parent.width
                        meaning: Words.Caption
                        quiet: true
                        text: box.modelData
                    }
                    Words {
                        width: parent.width
                        meaning: Words.Title
                        text: box.read ? box.read.text : box.next ? qsTr("Scan it now") : qsTr("Then this one")
                        color: box.read?.fault ? Theme.colour.danger : box.read || box.next ? Theme.colour.ink : Theme.colour.quietInk
                    }
                    Words {
                        width: parent.width
                        visible: text.length > 0
                        meaning: Words.Caption
                        text: box.read?.detail ?? ""
                    }
                }
            }
        }
    }
    Notice {
        objectName: "alarm"
        Layout.fillWidth: true
        visible: sheet.compared === ScanModel.Different
        kind: Notice.Danger
        title: qsTr("Wrong racket: stop")
        text: {
            const racket = sheet.side(0), bag = sheet.side(1);
            if (!racket?.player || !bag?.player) return "";
            return racket.player === bag.player
                ? qsTr("Both tags are of %1, but of two rackets: %2 and %3. Look at both before anything goes on.")
                      .arg(racket.player).arg(racket.text).arg(bag.text)
                : qsTr("The racket is of %1, the bag is of %2. Look at both before anything goes on.").arg(racket.player).arg(bag.player);
        }
    }
    Notice {
        objectName: "unread"
        Layout.fillWidth: true
        visible: sheet.compared === ScanModel.Unknown
        kind: Notice.Danger
        text: qsTr("This tag says nothing that is known here. Scan it again, or type its number.")
    }
    Notice {
        objectName: "same"
        Layout.fillWidth: true
        visible: sheet.compared === ScanModel.Same
        kind: Notice.Agreed
        title: qsTr("Racket and bag belong together")
        text: sheet.both.text ?? ""
    }
    ActionButton {
        objectName: "comparedStep"
        Layout.fillWidth: true
        visible: sheet.compared === ScanModel.Same && sheet.both.nextStage > 0
        iconName: StageWords.iconName(sheet.both.nextStage ?? 0)
        text: StageWords.title(sheet.both.nextStage ?? 0)
        onClicked: {
            const it = sheet.both;
            if (RoomModel.take(it.book, it.job, it.nextStage, "", it.text + ": " + StageWords.title(it.nextStage))) sheet.close();
        }
    }
    ActionButton {
        objectName: "lookForTags"
        Layout.fillWidth: true
        visible: CameraModel.present
        kind: ActionButton.Secondary
        iconName: "camera"
        text: qsTr("Scan with the camera")
        onClicked: CameraModel.on = true
    }
    TextEntry {
        id: entry
        objectName: "typedTag"
        Layout.fillWidth: true
        label: qsTr("Number on the tag")
        hint: qsTr("For whoever has no scanner; Enter takes it.")
        inputMethodHints: Qt.ImhDigitsOnly
        onAccepted: sheet.takeTyped()
    }
    ActionButton {
        objectName: "compareAgain"
        Layout.fillWidth: true
        visible: sheet.sides.length > 0
        kind: ActionButton.Secondary
        text: qsTr("Begin again")
        onClicked: {
            ScanModel.compareAgain();
            entry.takeFocus();
        }
    }
}
