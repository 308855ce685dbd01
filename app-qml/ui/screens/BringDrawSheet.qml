import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// A draw out of a table.
Sheet {
    id: sheet

    property bool qualifying: false
    property url file
    readonly property string path: String(file)

    function begin() {
        name.text = "";
        through.value = "";
        qualifying = false;
        file = "";
        open();
        name.takeFocus();
    }

    title: qsTr("Bring a draw in")
    hasChanges: name.text.length > 0 && path.length > 0
    onDiscarded: { name.text = ""; file = ""; }

    TextEntry {
        id: name
        objectName: "drawName"
        Layout.fillWidth: true
        label: qsTr("Name of the draw")
        placeholder: qsTr("Women’s singles")
        field.maximumLength: 80
    }
    ToggleRow {
        objectName: "drawQualifying"
        Layout.fillWidth: true
        text: qsTr("It is qualifying")
        checked: sheet.qualifying
        onToggled: sheet.qualifying = !sheet.qualifying
    }
    FigureStepper {
        id: through
        objectName: "drawThrough"
        Layout.fillWidth: true
        visible: sheet.qualifying
        label: qsTr("So many come through")
        step: "1"
        least: "1"
        most: "32"
        onEdited: next => value = next
    }
    ActionButton {
        objectName: "chooseDraw"
        Layout.fillWidth: true
        kind: ActionButton.Secondary
        iconName: "in"
        text: sheet.path.length > 0 ? decodeURIComponent(sheet.path.split("/").pop()) : qsTr("Choose the table (CSV)")
        onClicked: choosing.open()
    }
    Words {
        Layout.fillWidth: true
        meaning: Words.Caption
        quiet: true
        text: qsTr("Columns: line (from 1), player; if they are known partner, seed, rating, entry. A free line of the draw is called bye.")
    }
    ActionButton {
        objectName: "keepDraw"
        Layout.fillWidth: true
        enabled: name.text.trim().length > 0 && sheet.path.length > 0 && (!sheet.qualifying || Number(through.value) > 0)
        text: qsTr("Bring it in")
        onClicked: {
            if (!DrawModel.bringIn(sheet.file, name.text, sheet.qualifying ? Number(through.value) : 0, qsTr("Draw brought in"))) return;
            name.text = "";
            sheet.close();
        }
    }
    FileDialog {
        id: choosing
        nameFilters: [qsTr("Tables (*.csv *.CSV)")]
        onAccepted: sheet.file = selectedFile
    }
}
