import QtQuick
import QtQuick.Controls.Basic as Basic
import Weavelog.Theme
import Weavelog.View

// The typed part of a FigureStepper.
Basic.TextField {
    id: field

    required property FigureStepper stepper
    property bool typing: false
    // An empty field is no figure, not a wrong one.
    readonly property bool acceptable: text.length === 0
        || Figures.within(Figures.read(text), stepper.least, stepper.most)

    function refresh() {
        typing = false;
        text = Figures.shown(stepper.value, stepper.language);
    }

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
    Accessible.name: stepper.unit.length > 0 ? stepper.label + ", " + stepper.unit : stepper.label
    Accessible.description: stepper.error.length > 0 ? stepper.error : stepper.rangeError
    background: FieldGround {
        focused: field.activeFocus
        wrong: !field.acceptable || field.stepper.error.length > 0
    }

    Component.onCompleted: refresh()
    onTextEdited: {
        typing = true;
        const figure = Figures.read(text);
        if (text.length === 0 || Figures.within(figure, stepper.least, stepper.most)) {
            if (figure !== stepper.value) stepper.take(figure);
        }
    }
    onEditingFinished: if (acceptable) refresh()
    onActiveFocusChanged: if (activeFocus) selectAll()
    Keys.onUpPressed: stepper.stepBy(stepper.step)
    Keys.onDownPressed: stepper.stepBy("-" + stepper.step)

    Words {
        id: unitWords
        visible: field.stepper.unit.length > 0
        anchors.right: parent.right
        anchors.rightMargin: Theme.gap
        anchors.baseline: parent.baseline
        text: field.stepper.unit
        color: field.enabled ? Theme.colour.quietInk : Theme.colour.disabledInk
        wrapMode: Text.NoWrap
        Accessible.ignored: true
    }
    FocusRing { shown: field.activeFocus && field.focusReason !== Qt.MouseFocusReason }
}
