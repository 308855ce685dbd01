import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Another book of the same person is looked for; or two that look alike are told to be two people's.
Sheet {
    id: sheet

    required property PersonLinks links
    property string other
    property string otherName
    property string otherAbout

    function begin() {
        other = otherName = "";
        links.finder.typed = "";
        open();
    }

    title: qsTr("Another book of this person")

    Words {
        Layout.fillWidth: true
        text: qsTr("Linked books are shown together: history in order, the last time of either. Nothing is copied, and they can be parted again.")
    }
    SearchEntry {
        objectName: "findOther"
        Layout.fillWidth: true
        visible: sheet.other.length === 0
        name: qsTr("Find a player")
        text: sheet.links.finder.typed
        onEdited: text => sheet.links.finder.typed = text
    }
    PlayersView {
        objectName: "otherList"
        Layout.fillWidth: true
        Layout.preferredHeight: Math.min(320, Math.max(72, contentHeight))
        visible: sheet.other.length === 0
        model: sheet.links.finder
        onChosen: (row, book, name) => {
            sheet.otherAbout = itemAtIndex(row)?.about ?? "";
            sheet.other = book;
            sheet.otherName = name;
        }
    }
    Words {
        objectName: "otherName"
        Layout.fillWidth: true
        visible: sheet.other.length > 0
        meaning: Words.Heading
        text: sheet.otherName
    }
    Words {
        Layout.fillWidth: true
        visible: sheet.other.length > 0 && sheet.otherAbout.length > 0
        quiet: true
        text: sheet.otherAbout
    }
    SaidBy { Layout.fillWidth: true }
    ActionButton {
        objectName: "samePerson"
        Layout.fillWidth: true
        visible: sheet.other.length > 0
        enabled: Settings.stringer.length > 0
        text: qsTr("The same person")
        onClicked: if (sheet.links.link(sheet.other, Settings.stringer, "")) sheet.close()
    }
    ActionButton {
        objectName: "differentPeople"
        Layout.fillWidth: true
        visible: sheet.other.length > 0
        enabled: Settings.stringer.length > 0
        kind: ActionButton.Secondary
        text: qsTr("Two different people")
        onClicked: if (sheet.links.sayDifferent(sheet.other, Settings.stringer, "")) sheet.close()
    }
    ActionButton {
        Layout.fillWidth: true
        visible: sheet.other.length > 0
        kind: ActionButton.Quiet
        text: qsTr("Somebody else")
        onClicked: sheet.other = ""
    }
}
