pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The string bed of one racket: how it is drawn, what is estimated of it now and at its match, and what keeps its feel.
Sheet {
    id: sheet

    readonly property bool shown: BedModel.ready && BedModel.fault.length === 0

    title: BedModel.title.length > 0 ? qsTr("String bed: %1").arg(BedModel.title) : qsTr("String bed")
    width: narrow ? (parent?.width ?? 0) : Math.min(980, (parent?.width ?? 0) - 2 * Theme.page)
    onAboutToShow: {
        BedModel.watched = true;
        feel.begin();
        tone.begin();
    }
    onClosed: {
        BedModel.watched = false;
        tone.begin();
    }

    // A scan may show another racket meanwhile: what was said of the one before is not said of this one.
    Connections {
        target: BedModel
        function onAsked() {
            feel.begin();
            tone.begin();
        }
    }
    Repeater {
        model: BedModel.cautions
        Notice {
            required property string modelData
            Layout.fillWidth: true
            kind: Notice.Danger
            text: modelData
        }
    }
    Notice {
        objectName: "bedFault"
        Layout.fillWidth: true
        visible: BedModel.fault.length > 0
        kind: Notice.Attention
        title: qsTr("Nothing can be said of this bed")
        text: BedModel.fault
    }
    Words {
        Layout.fillWidth: true
        visible: !BedModel.ready
        quiet: true
        text: qsTr("Working it out …")
    }
    Words {
        objectName: "strung"
        Layout.fillWidth: true
        visible: sheet.shown
        text: BedModel.strung
    }
    SideBySide {
        id: halves
        Layout.fillWidth: true
        visible: sheet.shown
        least: 380

        BedDrawing {
            width: halves.columnWidth
            narrow: sheet.narrow
        }
        BedFigures {
            width: halves.columnWidth
        }
    }
    Words {
        objectName: "bedData"
        Layout.fillWidth: true
        visible: sheet.shown
        meaning: Words.Strong
        text: BedModel.data
    }
    Notice {
        objectName: "bedAssumed"
        Layout.fillWidth: true
        visible: sheet.shown && BedModel.assumed.length > 0
        kind: Notice.Info
        title: qsTr("Assumed, because nobody has said it")
        text: Array.from(BedModel.assumed).join("\n")
    }
    Words {
        Layout.fillWidth: true
        Layout.topMargin: Theme.gap
        visible: sheet.shown
        meaning: Words.Title
        text: qsTr("What is left of the tension")
    }
    TensionLeftPicture {
        Layout.fillWidth: true
        Layout.preferredHeight: 190
        visible: sheet.shown
        curve: BedModel.curve
        moments: BedModel.curveMoments
        times: BedModel.curveTimes
        parts: BedModel.curveParts
        inkColour: Theme.colour.ink
        lineColour: Theme.colour.line
        curveColour: Theme.colour.action
        bandColour: Theme.colour.chosenGround
        font.pixelSize: Theme.type.caption
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("Tension over the time since stringing. %1").arg(BedModel.left)
    }
    Words {
        objectName: "left"
        Layout.fillWidth: true
        visible: sheet.shown
        text: BedModel.left
    }
    SameFeelPart {
        id: feel
        Layout.fillWidth: true
        Layout.topMargin: Theme.gap
        visible: sheet.shown
    }
    TonePart {
        id: tone
        Layout.fillWidth: true
        Layout.topMargin: Theme.gap
        visible: sheet.shown
    }
    SideBySide {
        id: saves
        Layout.fillWidth: true
        Layout.topMargin: Theme.gap
        visible: sheet.shown
        least: 260

        ActionButton {
            objectName: "saveBedPdf"
            width: saves.columnWidth
            kind: ActionButton.Secondary
            enabled: !BedModel.busy
            iconName: "note"
            text: qsTr("Save the sheet (PDF)")
            onClicked: savingPdf.open()
        }
        ActionButton {
            objectName: "saveBed"
            width: saves.columnWidth
            kind: ActionButton.Secondary
            iconName: "note"
            text: qsTr("Save the figures as a table (CSV)")
            onClicked: saving.open()
        }
    }
    SavedLine {
        objectName: "bedSaved"
        Layout.fillWidth: true
        note: BedModel.saved
    }
    Words {
        Layout.fillWidth: true
        visible: sheet.shown
        meaning: Words.Caption
        quiet: true
        text: qsTr("Nothing here speaks of health: pain in the arm is a matter for a physician.")
    }
    FileDialog {
        id: saving
        fileMode: FileDialog.SaveFile
        nameFilters: [qsTr("Table (*.csv)")]
        defaultSuffix: "csv"
        onAccepted: BedModel.saveCsv(selectedFile)
    }
    FileDialog {
        id: savingPdf
        fileMode: FileDialog.SaveFile
        nameFilters: [qsTr("Sheet (*.pdf)")]
        defaultSuffix: "pdf"
        onAccepted: BedModel.savePdf(selectedFile)
    }
}
