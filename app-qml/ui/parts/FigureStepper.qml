import QtQuick
import QtQuick.Layouts
import Weavelog.Theme
import Weavelog.View

// A decimal figure with its unit: large minus and plus, arrow keys, or typed. The value is text with a point
// ("24.5"), exactly as said; "" is no figure yet. What cannot be is said in the error line and not
// taken over. The value is its owner's: edited() asks for another. Where it stands for several that differ, there is no one figure: minus and plus
// ask for a step of each with eachStepped(), and what is typed holds for all.
ColumnLayout {
    id: figureStepper

    property string label
    property string unit
    property string value
    property string step: "0.5"
    property string least: "0"
    property string most: "100"
    property string hint
    property string error
    property bool differs: false
    property int noteLines: 0  // room kept below for what is said there, in lines
    // Where the first step goes while there is no figure; "": to the least.
    property string first
    readonly property string rangeError: field.acceptable ? ""
        : (Figures.read(field.text).length > 0 ? qsTr("Between %1 and %2 %3") : qsTr("This is no figure. Between %1 and %2 %3"))
            .arg(Figures.shown(least, Settings.language)).arg(Figures.shown(most, Settings.language)).arg(unit).trim()
    signal edited(string value)
    // What was typed cannot stand and was not taken over; "": it can again.
    signal mistyped(string text)
    signal eachStepped(string by)

    function stepBy(signed) {
        if (differs) return eachStepped(signed);
        const next = Figures.stepped(value, signed, least, most, first);
        if (next !== value) edited(next);
        field.refresh();
    }

    function takeFocus() { field.forceActiveFocus(Qt.TabFocusReason); }

    spacing: Theme.tight

    Words {
        Layout.fillWidth: true
        visible: figureStepper.label.length > 0
        meaning: Words.Strong
        font.pixelSize: Theme.type.caption
        text: figureStepper.label
        Accessible.ignored: true
    }
    RowLayout {
        spacing: Theme.tight
        Layout.fillWidth: true

        IconAction {
            objectName: "minus"
            Layout.preferredWidth: 64
            Layout.preferredHeight: 64
            framed: true
            iconName: "minus"
            text: qsTr("Less: %1").arg(figureStepper.label)
            autoRepeat: true
            enabled: figureStepper.enabled && figureStepper.value !== Figures.read(figureStepper.least)
            onClicked: figureStepper.stepBy("-" + figureStepper.step)
        }
        FigureField {
            id: field
            objectName: "field"
            Layout.fillWidth: true
            Layout.minimumWidth: 110
            Layout.preferredHeight: 64
            label: figureStepper.label
            unit: figureStepper.unit
            value: figureStepper.value
            least: figureStepper.least
            most: figureStepper.most
            error: figureStepper.error.length > 0 ? figureStepper.error : figureStepper.rangeError
            onTaken: figure => figureStepper.edited(figure)
            onMistyped: text => figureStepper.mistyped(text)
            onStepAsked: up => figureStepper.stepBy(up ? figureStepper.step : "-" + figureStepper.step)
        }
        IconAction {
            objectName: "plus"
            Layout.preferredWidth: 64
            Layout.preferredHeight: 64
            framed: true
            iconName: "plus"
            text: qsTr("More: %1").arg(figureStepper.label)
            autoRepeat: true
            enabled: figureStepper.enabled && figureStepper.value !== Figures.read(figureStepper.most)
            onClicked: figureStepper.stepBy(figureStepper.step)
        }
    }
    FieldNote {
        Layout.fillWidth: true
        hint: figureStepper.hint
        error: figureStepper.error.length > 0 ? figureStepper.error : figureStepper.rangeError
        lines: figureStepper.noteLines
    }
}
