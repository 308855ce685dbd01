pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic as Basic
import QtQuick.Templates as T
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The screen for the player, turned round on the desk: exactly the text that is stored, large and light. Only the two
// answers leave it.
Basic.Popup {
    id: confirm

    property bool turned: true
    // Held while the player reads: what stands here is what is confirmed, whatever happens elsewhere meanwhile.
    property string shown

    function read() { shown = DeskModel.draft.readBack; }

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
        read();
    }
    onOpened: no.forceActiveFocus(Qt.PopupFocusReason)
    onAboutToHide: Theme.dark = Settings.dark

    background: Rectangle { color: Theme.colour.surface }
    contentItem: Item {
        Item {
            id: sheet
            anchors.fill: parent
            rotation: confirm.turned ? 180 : 0
            Accessible.role: Accessible.Dialog
            Accessible.name: qsTr("Read-back for %1").arg(DeskModel.draft.player)

            readonly property int margin: width < Theme.phoneWidth ? Theme.gap + 4 : Theme.page

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
                        text: DeskModel.draft.player
                    }
                    ActionButton {
                        objectName: "turn"
                        kind: ActionButton.Secondary
                        iconName: "turn"
                        text: qsTr("Turn")
                        onClicked: confirm.turned = !confirm.turned
                    }
                }
                LanguageBar {
                    objectName: "readBackLanguage"
                    Layout.fillWidth: true
                    value: DeskModel.draft.language
                    onChosen: value => {
                        DeskModel.draft.language = value;
                        confirm.read();
                    }
                }
                Flickable {
                    id: flick
                    objectName: "readBackView"
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    contentHeight: words.implicitHeight
                    clip: true
                    boundsBehavior: Flickable.StopAtBounds
                    Basic.ScrollBar.vertical: Basic.ScrollBar { policy: flick.contentHeight > flick.height ? Basic.ScrollBar.AlwaysOn : Basic.ScrollBar.AsNeeded }

                    Words {
                        id: words
                        objectName: "readBackText"
                        width: flick.width - Theme.room
                        font.pixelSize: sheet.width < Theme.phoneWidth ? Theme.type.title : Theme.type.title * 1.2
                        lineHeight: 1.2
                        text: confirm.shown
                    }
                }
                SideBySide {
                    Layout.fillWidth: true
                    least: 180
                    ActionButton {
                        id: no
                        objectName: "no"
                        width: parent.columnWidth
                        height: Theme.mainTouch + Theme.gap
                        kind: ActionButton.Secondary
                        text: DeskModel.draft.answers["no"]
                        onClicked: DeskModel.back()
                    }
                    ActionButton {
                        objectName: "yes"
                        width: parent.columnWidth
                        height: Theme.mainTouch + Theme.gap
                        iconName: "check"
                        text: DeskModel.draft.answers["yes"]
                        onClicked: DeskModel.confirm(confirm.shown)
                    }
                }
            }
        }
    }
}
