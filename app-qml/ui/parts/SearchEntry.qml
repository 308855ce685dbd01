import QtQuick
import QtQuick.Controls.Basic as Basic
import Weavelog.Theme

// Find as you type. Escape or the cross empties it.
Basic.TextField {
    id: search

    property string name: qsTr("Find")
    signal edited(string text)

    function empty() {
        if (text.length === 0) return;
        clear();
        edited("");
    }

    implicitWidth: 320
    implicitHeight: Math.max(Theme.mainTouch, contentHeight + 2 * Theme.gap)
    leftPadding: LayoutMirroring.enabled ? Theme.touch : 52
    rightPadding: LayoutMirroring.enabled ? 52 : Theme.touch
    font.pixelSize: Theme.type.title
    color: enabled ? Theme.colour.ink : Theme.colour.disabledInk
    selectionColor: Theme.colour.action
    selectedTextColor: Theme.colour.onAction
    selectByMouse: true
    verticalAlignment: TextInput.AlignVCenter
    inputMethodHints: Qt.ImhNoPredictiveText
    Accessible.name: name
    Accessible.searchEdit: true
    onTextEdited: edited(text)
    Keys.onEscapePressed: event => { event.accepted = text.length > 0; empty(); }
    background: FieldGround { focused: search.activeFocus }

    // Rather smaller than cut off: what is searched for stands at its end.
    Text {
        visible: search.text.length === 0 && search.preeditText.length === 0
        anchors.fill: parent
        leftPadding: search.leftPadding
        rightPadding: search.LayoutMirroring.enabled ? search.rightPadding : Theme.gap
        horizontalAlignment: Text.AlignLeft
        verticalAlignment: Text.AlignVCenter
        text: search.name
        textFormat: Text.PlainText
        color: Theme.colour.quietInk
        font.pixelSize: search.font.pixelSize
        fontSizeMode: Text.HorizontalFit
        minimumPixelSize: Theme.type.caption
        Accessible.ignored: true
    }
    Icon {
        anchors.left: parent.left
        anchors.leftMargin: 15
        anchors.verticalCenter: parent.verticalCenter
        name: "search"
        colour: Theme.colour.quietInk
    }
    IconAction {
        anchors.right: parent.right
        anchors.rightMargin: 4
        anchors.verticalCenter: parent.verticalCenter
        visible: search.text.length > 0 && search.enabled
        iconName: "close"
        text: qsTr("Clear")
        onClicked: {
            search.empty();
            search.forceActiveFocus();
        }
    }
    FocusRing { shown: search.activeFocus && search.focusReason !== Qt.MouseFocusReason }
}
