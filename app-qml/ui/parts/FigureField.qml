import QtQuick
import QtQuick.Controls.Basic as Basic
import Weavelog.Theme
import Weavelog.View

// The typed part of a FigureStepper.
Basic.TextField {
    id: field

    property string label
    property string unit
    property string value
    property string least
    property string most
    property string error
    readonly property string language: Settings.language
    property bool typing: false
    property string before  // the value before somebody began to type
    property string asked   // the value that was last asked for here
    // An empty field is no figure, not a wrong one.
    readonly property bool acceptable: canStand(text)
    // A figure that may stand, as it is typed; a step that a key asks for (up or down).
    signal taken(string figure)
    signal stepAsked(bool up)
    // What was typed cannot stand; "": it can again.
    signal mistyped(string text)

    function canStand(typed) { return typed.length === 0 || Figures.within(Figures.read(typed), least, most); }
    function refresh() {
        typing = false;
        text = Figures.shown(value, language);
    }

    // Figures are read from left to right in every script.
    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true
    horizontalAlignment: TextInput.AlignHCenter
    verticalAlignment: TextInput.AlignVCenter
    leftPadding: Theme.tight
    rightPadding: unitWords.visible ? unitWords.width + Theme.gap + Theme.tight : Theme.tight
    font.pixelSize: Math.min(Theme.type.figure, 44)
    font.weight: Font.DemiBold
    color: enabled ? Theme.colour.ink : Theme.colour.disabledInk
    selectionColor: Theme.colour.action
    selectedTextColor: Theme.colour.onAction
    selectByMouse: true
    inputMethodHints: Qt.ImhFormattedNumbersOnly
    Accessible.role: Accessible.SpinBox
    Accessible.name: unit.length > 0 ? label + ", " + unit : label
    Accessible.description: error
    background: FieldGround {
        focused: field.activeFocus
        wrong: field.error.length > 0
    }

    Component.onCompleted: refresh()
    // Another hand than this field's changed it: that is what is shown.
    onValueChanged: if (!typing || value !== asked) refresh()
    onAcceptableChanged: mistyped(acceptable ? "" : text)
    onLanguageChanged: refresh()
    onTextEdited: {
        if (!typing) before = value;
        typing = true;
        // The good beginning of what turns out to be none is not taken for it.
        const figure = canStand(text) ? Figures.read(text) : before; // not `acceptable`: what it is bound to may not know of the text yet
        if (figure === value) return;
        asked = figure;
        taken(figure);
    }
    onEditingFinished: if (acceptable) refresh()
    onActiveFocusChanged: if (activeFocus) selectAll()
    Keys.onUpPressed: stepAsked(true)
    Keys.onDownPressed: stepAsked(false)

    Words {
        id: unitWords
        visible: field.unit.length > 0
        anchors.right: parent.right
        anchors.rightMargin: Theme.gap
        anchors.baseline: parent.baseline
        text: field.unit
        color: field.enabled ? Theme.colour.quietInk : Theme.colour.disabledInk
        wrapMode: Text.NoWrap
        Accessible.ignored: true
    }
    FocusRing { shown: field.activeFocus && field.focusReason !== Qt.MouseFocusReason }
}
