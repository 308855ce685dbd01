import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic as Basic
import QtQuick.Templates as T
import Weavelog.Theme

// A card over the page for one errand. While it holds changes neither a tap beside it nor Escape throws them away:
// Escape and the cross ask first.
Basic.Popup {
    id: sheet

    property string title
    property bool hasChanges: false
    property bool asking: false
    property Item actions: null
    default property alias content: body.content
    property alias foot: feet.data  // stays in sight below while the rest is scrolled
    property bool footShown: feet.children.length > 0
    readonly property bool narrow: (parent?.width ?? 0) < Theme.phoneWidth
    signal discarded()

    // What the cross and Escape do.
    function leave() {
        if (hasChanges) {
            asking = true;
            keepButton.forceActiveFocus(Qt.TabFocusReason);
        } else {
            close();
        }
    }

    parent: T.Overlay.overlay
    modal: true
    focus: true
    closePolicy: hasChanges ? Basic.Popup.NoAutoClose
                            : Basic.Popup.CloseOnEscape | Basic.Popup.CloseOnPressOutside
    padding: 0
    width: narrow ? (parent?.width ?? 0) : Math.min(620, (parent?.width ?? 0) - 2 * Theme.page)
    height: Math.min(implicitContentHeight, (parent?.height ?? 0) - (narrow ? Theme.touch : 2 * Theme.page))
    x: Math.round(((parent?.width ?? 0) - width) / 2)
    y: narrow ? (parent?.height ?? 0) - height : Math.round(((parent?.height ?? 0) - height) / 2)
    onOpened: if (!contentItem.activeFocus) closeButton.forceActiveFocus(Qt.PopupFocusReason)
    onClosed: asking = false

    T.Overlay.modal: Rectangle { color: Theme.colour.scrim }
    background: Rectangle {
        color: Theme.colour.surface
        radius: Theme.radius + 2
        border.width: 1
        border.color: Theme.colour.line
    }
    contentItem: FocusScope {
        implicitHeight: column.implicitHeight
        LayoutMirroring.enabled: Theme.rightToLeft
        LayoutMirroring.childrenInherit: true
        Accessible.role: Accessible.Dialog
        Accessible.name: sheet.title

        Shortcut {
            sequence: "Escape"
            enabled: sheet.opened && sheet.hasChanges
            onActivated: sheet.asking ? (sheet.asking = false) : sheet.leave()
        }
        ColumnLayout {
            id: column
            anchors.fill: parent
            spacing: 0

            RowLayout {
                Layout.fillWidth: true
                Layout.leftMargin: Theme.room
                Layout.rightMargin: Theme.tight
                Layout.topMargin: Theme.tight
                Words {
                    Layout.fillWidth: true
                    meaning: Words.Title
                    text: sheet.title
                    Accessible.role: Accessible.Heading
                }
                IconAction {
                    id: closeButton
                    objectName: "close"
                    iconName: "close"
                    text: qsTr("Close")
                    onClicked: sheet.leave()
                }
            }
            Rectangle {
                Layout.fillWidth: true
                Layout.leftMargin: Theme.room
                Layout.rightMargin: Theme.room
                Layout.topMargin: Theme.tight
                implicitHeight: Theme.hair
                color: Theme.colour.ink
            }
            Basic.Pane {
                visible: sheet.asking
                Layout.fillWidth: true
                padding: Theme.room
                background: Rectangle { color: Theme.colour.attentionGround }
                contentItem: ColumnLayout {
                    spacing: Theme.gap
                    Words {
                        Layout.fillWidth: true
                        meaning: Words.Strong
                        text: qsTr("There are changes that are not kept yet.")
                    }
                    SideBySide {
                        Layout.fillWidth: true
                        least: 220
                        ActionButton {
                            id: keepButton
                            objectName: "keep"
                            width: parent.columnWidth
                            text: qsTr("Go on with them")
                            onClicked: sheet.asking = false
                        }
                        ActionButton {
                            objectName: "discard"
                            width: parent.columnWidth
                            kind: ActionButton.Danger
                            text: qsTr("Throw them away")
                            onClicked: {
                                sheet.discarded();
                                sheet.close();
                            }
                        }
                    }
                }
            }
            ScrollColumn {
                id: body
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredHeight: contentHeight
                margin: Theme.room
                spacing: Theme.gap
            }
            Rectangle {
                visible: feet.visible
                Layout.fillWidth: true
                implicitHeight: 1
                color: Theme.colour.line
            }
            ColumnLayout {
                id: feet
                visible: sheet.footShown
                Layout.fillWidth: true
                Layout.margins: Theme.room
                Layout.topMargin: Theme.gap
                spacing: Theme.gap
            }
        }
    }
}
