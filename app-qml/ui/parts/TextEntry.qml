import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic as Basic
import Weavelog.Theme

// One line of text with its label, and a hint or what is wrong with it below.
ColumnLayout {
    id: entry

    property string label
    property string hint
    property string error
    property int noteLines: 0  // room kept below for what is said there, in lines
    property alias text: field.text
    property alias placeholder: field.placeholderText
    property alias inputMethodHints: field.inputMethodHints
    property alias readOnly: field.readOnly
    property alias field: field
    signal accepted()
    signal edited(string text)

    function takeFocus() { field.forceActiveFocus(Qt.TabFocusReason); }

    spacing: Theme.tight

    // A positioner: its height follows a wrapped text at once.
    Column {
        id: head
        Layout.fillWidth: true
        visible: entry.label.length > 0
        Words {
            width: head.width
            meaning: Words.Strong
            font.pixelSize: Theme.type.caption
            text: entry.label
            Accessible.ignored: true
        }
    }
    Basic.TextField {
        id: field

        Layout.fillWidth: true
        implicitHeight: Math.max(Theme.mainTouch, contentHeight + 2 * Theme.gap)
        leftPadding: Theme.gap
        rightPadding: Theme.gap
        font.pixelSize: Theme.type.body
        color: enabled ? Theme.colour.ink : Theme.colour.disabledInk
        placeholderTextColor: Theme.colour.quietInk
        selectionColor: Theme.colour.action
        selectedTextColor: Theme.colour.onAction
        selectByMouse: true
        verticalAlignment: TextInput.AlignVCenter
        activeFocusOnTab: true
        Accessible.name: entry.label.length > 0 ? entry.label : placeholderText
        Accessible.description: entry.error.length > 0 ? entry.error : entry.hint
        onAccepted: entry.accepted()
        onTextEdited: entry.edited(text)
        background: FieldGround {
            focused: field.activeFocus
            wrong: entry.error.length > 0
        }

        FocusRing { shown: field.activeFocus && field.focusReason !== Qt.MouseFocusReason }
    }
    FieldNote {
        Layout.fillWidth: true
        hint: entry.hint
        error: entry.error
        lines: entry.noteLines
    }
}
