pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Who can open a bundle: one device, or whoever knows a passphrase.
ColumnLayout {
    id: seal

    property bool shown: false
    readonly property bool byWords: BundleModel.receiver === ""

    spacing: Theme.gap

    PickList {
        objectName: "receiver"
        Layout.fillWidth: true
        label: qsTr("Who can open it")
        options: BundleModel.receivers
        value: BundleModel.receiver
        onPicked: value => BundleModel.receiver = value
    }
    Words {
        Layout.fillWidth: true
        visible: !seal.byWords
        meaning: Words.Caption
        quiet: true
        text: qsTr("Only that device can read it. Nobody has to remember anything.")
    }
    TextEntry {
        objectName: "words"
        Layout.fillWidth: true
        visible: seal.byWords && !BundleModel.wordsMade
        label: qsTr("Passphrase")
        hint: BundleModel.strengthWords.length > 0 ? BundleModel.strengthWords : qsTr("Four or five words that do not belong together.")
        inputMethodHints: Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase | Qt.ImhSensitiveData
        field.echoMode: seal.shown ? TextInput.Normal : TextInput.Password
        text: BundleModel.words
        onEdited: text => BundleModel.words = text
    }
    TextEntry {
        objectName: "wordsAgain"
        Layout.fillWidth: true
        visible: seal.byWords && !BundleModel.wordsMade
        label: qsTr("The same once more")
        inputMethodHints: Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase | Qt.ImhSensitiveData
        field.echoMode: seal.shown ? TextInput.Normal : TextInput.Password
        text: BundleModel.wordsAgain
        error: BundleModel.wordsAgain.length > 0 && BundleModel.wordsAgain !== BundleModel.words ? qsTr("It is not the same yet.") : ""
        onEdited: text => BundleModel.wordsAgain = text
    }
    Words {
        objectName: "madeWords"
        Layout.fillWidth: true
        visible: seal.byWords && BundleModel.wordsMade
        meaning: Words.Title
        horizontalAlignment: Text.AlignHCenter
        text: BundleModel.words
    }
    Words {
        Layout.fillWidth: true
        visible: seal.byWords
        meaning: Words.Caption
        quiet: true
        text: BundleModel.wordsMade ? qsTr("Write them down now, and tell them; do not leave them beside the stick. They are shown this once.")
                                    : qsTr("Nobody can open the file without it, this tablet neither.")
    }
    SideBySide {
        Layout.fillWidth: true
        visible: seal.byWords
        least: 200
        ActionButton {
            objectName: "makeUp"
            width: parent.columnWidth
            kind: ActionButton.Quiet
            text: BundleModel.wordsMade ? qsTr("Make up others") : qsTr("Make five words up")
            onClicked: BundleModel.makeUpWords()
        }
        ActionButton {
            width: parent.columnWidth
            visible: !BundleModel.wordsMade
            kind: ActionButton.Quiet
            text: seal.shown ? qsTr("Hide what is typed") : qsTr("Show what is typed")
            onClicked: seal.shown = !seal.shown
        }
        ActionButton {
            width: parent.columnWidth
            visible: BundleModel.wordsMade
            kind: ActionButton.Quiet
            text: qsTr("Type my own")
            onClicked: {
                BundleModel.words = "";
                BundleModel.wordsAgain = "";
            }
        }
    }
}
