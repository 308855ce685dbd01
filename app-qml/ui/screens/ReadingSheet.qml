pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// One reading, as the instrument shows it.
Sheet {
    id: sheet

    property int what: BenchWork.BedStiffness
    property int unit: units[0].value
    property string figure
    property string setTo
    readonly property var units: BenchModel.work.unitsOf(what)
    readonly property string unitText: units.find(one => one.value === unit)?.text ?? ""

    // Whose racket it is: another one may lie on the bench by the time it is kept.
    property string about

    function show() {
        BenchModel.work.beginReading();
        about = Listing.commas([BenchModel.tag.length > 0 ? qsTr("Tag %1").arg(BenchModel.tag) : "", BenchModel.player]);
        figure = "";
        setTo = "";
        note.text = "";
        open();
    }
    function choose(kind) {
        what = kind;
        unit = units[0].value;
        figure = "";
        setTo = "";
    }

    title: qsTr("Enter a reading: %1").arg(about)
    hasChanges: figure.length > 0
    onDiscarded: figure = ""

    ChoiceBar {
        objectName: "what"
        Layout.fillWidth: true
        label: qsTr("What was measured")
        value: sheet.what
        options: [{ value: BenchWork.BedStiffness, text: qsTr("String bed") }, { value: BenchWork.Tone, text: qsTr("Tone") },
                  { value: BenchWork.TensionHead, text: qsTr("Tension head") }]
        onChosen: value => sheet.choose(value)
    }
    FigureStepper {
        objectName: "reading"
        Layout.fillWidth: true
        label: sheet.what === BenchWork.Tone ? qsTr("Tone of the string bed")
             : sheet.what === BenchWork.TensionHead ? qsTr("Pull of the tension head") : qsTr("String-bed stiffness")
        unit: sheet.unitText
        value: sheet.figure
        step: sheet.what === BenchWork.Tone ? "1" : "0.1"
        least: "0"
        most: "5000"
        onEdited: value => sheet.figure = value
    }
    FigureStepper {
        objectName: "setTo"
        Layout.fillWidth: true
        visible: sheet.what === BenchWork.TensionHead
        label: qsTr("What the machine was set to")
        unit: sheet.unitText
        value: sheet.setTo
        step: "0.5"
        least: "0"
        most: "5000"
        onEdited: value => sheet.setTo = value
    }
    ChoiceBar {
        objectName: "unit"
        Layout.fillWidth: true
        visible: sheet.units.length > 1
        label: qsTr("Unit on the instrument")
        value: sheet.unit
        options: sheet.units.map(one => ({ value: one.value, text: one.text.length > 0 ? one.text : qsTr("Its own scale") }))
        onChosen: value => sheet.unit = value
    }
    TextEntry {
        id: note
        objectName: "instrument"
        Layout.fillWidth: true
        label: qsTr("Instrument, or a note")
    }
    ActionButton {
        objectName: "keepReading"
        Layout.fillWidth: true
        enabled: sheet.figure.length > 0
        text: qsTr("Keep this reading")
        onClicked: if (BenchModel.work.measure(sheet.what, sheet.figure, sheet.unit, note.text,
                       qsTr("Measured: %1 %2").arg(Figures.shown(sheet.figure, Settings.language)).arg(sheet.unitText),
                       sheet.what === BenchWork.TensionHead ? sheet.setTo : "")) {
            sheet.figure = "";
            sheet.close();
        }
    }
}
