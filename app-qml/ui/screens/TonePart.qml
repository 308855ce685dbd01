pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// What the tone of a tapped bed says: listened to, out of a recording, or typed as another instrument told it; kept as a reading.
ColumnLayout {
    id: part

    property string figure
    // The figure is as it was heard, with its own doubt.
    property bool listened: false
    readonly property var heard: BedModel.heard
    readonly property bool listening: ToneModel.state === ToneModel.Listening
    readonly property bool known: ToneModel.state === ToneModel.Known
    readonly property string levelText: ToneModel.level === ToneModel.Clipped ? qsTr("too loud: tap more softly")
                                      : ToneModel.level === ToneModel.Fine ? qsTr("loud enough") : qsTr("silent")

    function begin() {
        figure = "";
        listened = false;
        BedModel.hear("");
        ToneModel.forget();
    }
    function ask(value, doubt) {
        figure = value;
        listened = doubt > 0;
        BedModel.hear(value, doubt);
    }

    spacing: Theme.gap

    Connections {
        target: ToneModel
        function onFound() { part.ask(ToneModel.hertz, ToneModel.doubt); }
    }

    Words {
        Layout.fillWidth: true
        meaning: Words.Title
        text: qsTr("What a tone says")
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("Hold the racket at its handle close to the microphone, tap the middle of the bed three times (five where it is loud) with something light, and move the racket a little in between.")
    }
    SideBySide {
        id: ways
        Layout.fillWidth: true
        least: 220

        ActionButton {
            objectName: "listen"
            width: ways.columnWidth
            enabled: ToneModel.state !== ToneModel.Finding
            text: part.listening ? qsTr("That is enough") : qsTr("Listen")
            onClicked: if (part.listening) ToneModel.enough(); else ToneModel.listen(BedModel.toneNow)
        }
        ActionButton {
            objectName: "hearFile"
            width: ways.columnWidth
            kind: ActionButton.Secondary
            enabled: ToneModel.state !== ToneModel.Finding && !part.listening
            text: qsTr("From a recording (WAV)")
            onClicked: choosing.open()
        }
    }
    ProgressLine {
        objectName: "level"
        Layout.fillWidth: true
        visible: part.listening
        text: qsTr("Level: %1").arg(part.levelText)
        detail: qsTr("%n second(s) left", "", ToneModel.secondsLeft)
        value: ToneModel.loudness
    }
    Words {
        Layout.fillWidth: true
        visible: ToneModel.state === ToneModel.Finding
        quiet: true
        text: qsTr("Working it out …")
    }
    Notice {
        objectName: "toneUnknown"
        Layout.fillWidth: true
        visible: ToneModel.state === ToneModel.Unknown
        kind: Notice.Attention
        title: ToneModel.title
        text: ToneModel.text
    }
    Notice {
        objectName: "toneKnown"
        Layout.fillWidth: true
        visible: part.known
        kind: Notice.Info
        title: ToneModel.title
        text: ToneModel.text
    }
    FigureStepper {
        objectName: "tone"
        Layout.fillWidth: true
        label: qsTr("Tone of the string bed, now")
        unit: "Hz"
        value: part.figure
        step: "1"
        least: "0"
        most: "2000"
        onEdited: value => part.ask(value, 0)
    }
    Notice {
        objectName: "toneFault"
        Layout.fillWidth: true
        visible: (part.heard.fault ?? "").length > 0
        kind: Notice.Attention
        text: part.heard.fault ?? ""
    }
    Notice {
        objectName: "heard"
        Layout.fillWidth: true
        visible: (part.heard.lines ?? []).length > 0
        title: qsTr("Estimate from the tone")
        text: (part.heard.lines ?? []).join("\n")
    }
    ActionButton {
        objectName: "keepTone"
        Layout.fillWidth: true
        visible: (part.heard.lines ?? []).length > 0
        kind: ActionButton.Secondary
        text: qsTr("Keep this tone as a reading")
        onClicked: {
            const note = part.listened ? qsTr("listened to") : "";
            if (BedModel.keepTone(part.figure, note, qsTr("Measured: %1 Hz").arg(Figures.shown(part.figure, Settings.language)))) part.begin();
        }
    }
    FileDialog {
        id: choosing
        nameFilters: [qsTr("Recording (*.wav)")]
        onAccepted: ToneModel.hearFile(selectedFile, BedModel.toneNow)
    }
}
