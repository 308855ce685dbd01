pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic as Basic
import QtQuick.Templates as T
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// A screen for the player, turned round on the desk: large, light, in the player's language. Only its own actions
// leave it.
Basic.Popup {
    id: screen

    property bool turned: true
    property string title
    // For screen readers.
    property string name
    property string language
    signal languageChosen(string language)

    // The second of two quick taps that were meant for the page before lands where the head of this one now is.
    property bool settled: false

    readonly property bool narrow: (parent?.width ?? 0) < Theme.phoneWidth
    // Read by somebody who stands at the other side of the desk.
    readonly property int wordSize: narrow ? Theme.type.title : Theme.type.title * 1.2
    default property alias content: scroll.content
    property alias flickable: scroll
    property alias footer: foot.data
    property alias actions: bar.data

    parent: T.Overlay.overlay
    width: parent?.width ?? 0
    height: parent?.height ?? 0
    padding: 0
    modal: true
    focus: true
    closePolicy: Basic.Popup.NoAutoClose
    onAboutToShow: {
        Theme.dark = false;
        turned = true;
        settled = false;
        settling.restart();
        scroll.contentY = 0;
    }
    onAboutToHide: Theme.dark = Settings.dark

    background: Rectangle { color: Theme.colour.surface }
    contentItem: Item {
        Timer {
            id: settling
            interval: 500
            onTriggered: screen.settled = true
        }
        Item {
            id: sheet
            objectName: "turned"
            readonly property bool settled: screen.settled
            anchors.fill: parent
            rotation: screen.turned ? 180 : 0
            Accessible.role: Accessible.Dialog
            Accessible.name: screen.name

            readonly property int margin: screen.narrow ? Theme.gap + 4 : Theme.page

            ColumnLayout {
                x: Math.max(sheet.margin, (sheet.width - 1000) / 2)
                y: sheet.margin
                width: Math.min(1000, sheet.width - 2 * sheet.margin)
                height: sheet.height - 2 * sheet.margin
                spacing: Theme.gap

                RowLayout {
                    Layout.fillWidth: true
                    spacing: Theme.gap
                    Words {
                        Layout.fillWidth: true
                        meaning: Words.Heading
                        text: screen.title
                    }
                    ActionButton {
                        objectName: "turn"
                        kind: ActionButton.Secondary
                        iconName: "turn"
                        text: qsTr("Turn")
                        onClicked: if (screen.settled) screen.turned = !screen.turned
                    }
                }
                // Two bars, because one loses its places when its words change.
                LanguageBar {
                    objectName: visible ? "readBackLanguage" : ""
                    Layout.fillWidth: true
                    visible: !screen.narrow
                    value: screen.language
                    onChosen: value => { if (screen.settled) screen.languageChosen(value); }
                }
                LanguageBar {
                    objectName: visible ? "readBackLanguage" : ""
                    Layout.fillWidth: true
                    visible: screen.narrow
                    brief: true
                    value: screen.language
                    onChosen: value => { if (screen.settled) screen.languageChosen(value); }
                }
                ScrollColumn {
                    id: scroll
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    spacing: Theme.gap
                }
                ColumnLayout {
                    id: foot
                    Layout.fillWidth: true
                    Layout.fillHeight: false
                    spacing: Theme.gap
                }
                SideBySide {
                    id: bar
                    Layout.fillWidth: true
                    least: 180
                }
            }
        }
    }
}
