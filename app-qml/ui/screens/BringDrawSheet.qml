pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// A draw out of a table, or typed line by line.
Sheet {
    id: sheet

    property string kind: "draw"
    readonly property bool qualifying: kind === "qualifying"
    readonly property bool group: kind === "group"
    property url file
    readonly property string path: String(file)
    property bool byHand: false
    property int size: 8
    property var lines: []  // [{player, seed, bye}], one a line

    function resize(to) {
        const next = Array.from(lines).slice(0, to);
        while (next.length < to) next.push({ player: "", seed: 0, bye: false });
        lines = next;
        size = to;
    }
    function say(index, what) {
        lines[index] = Object.assign({}, lines[index], what);
    }

    function begin() {
        name.text = "";
        through.value = "";
        kind = "draw";
        file = "";
        byHand = false;
        lines = [];
        resize(8);
        open();
        name.takeFocus();
    }

    title: qsTr("Bring a draw in")
    hasChanges: name.text.length > 0 && (path.length > 0 || byHand)
    onDiscarded: { name.text = ""; file = ""; }

    TextEntry {
        id: name
        objectName: "drawName"
        Layout.fillWidth: true
        label: qsTr("Name of the draw")
        placeholder: qsTr("Women’s singles")
        field.maximumLength: 80
    }
    ChoiceBar {
        objectName: "drawKind"
        Layout.fillWidth: true
        label: qsTr("What it is")
        value: sheet.kind
        options: [{ value: "draw", text: qsTr("Main draw") }, { value: "qualifying", text: qsTr("Qualifying") }, { value: "group", text: qsTr("Round-robin group") }]
        onChosen: value => {
            sheet.kind = value;
            sheet.resize(sheet.group ? 4 : 8);
        }
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
    ChoiceBar {
        objectName: "drawFrom"
        Layout.fillWidth: true
        label: qsTr("Where it comes from")
        value: sheet.byHand
        options: [{ value: false, text: qsTr("A table") }, { value: true, text: qsTr("Typed in") }]
        onChosen: value => sheet.byHand = value
    }
    ChoiceBar {
        objectName: "drawSize"
        Layout.fillWidth: true
        visible: sheet.byHand
        label: qsTr("Lines")
        value: sheet.size
        options: Array.from(sheet.group ? [3, 4, 5, 6, 7, 8] : [4, 8, 16, 32, 64, 128]).map(one => ({ value: one, text: String(one) }))
        onChosen: value => sheet.resize(value)
    }
    Words {
        Layout.fillWidth: true
        visible: sheet.byHand
        meaning: Words.Caption
        quiet: true
        text: qsTr("From top to bottom. Leave empty who is not known yet; they can be put in later.")
    }
    Repeater {
        model: sheet.byHand ? sheet.size : 0
        Flow {
            id: line
            required property int index
            property bool bye: sheet.lines[line.index]?.bye ?? false
            readonly property int endWidth: sheet.group ? 72 : 212
            Layout.fillWidth: true
            spacing: Theme.tight
            RowLayout {
                width: sheet.narrow ? line.width : line.width - line.endWidth - Theme.tight
                spacing: Theme.tight
                Words { Layout.preferredWidth: 34; horizontalAlignment: Text.AlignRight; text: line.index + 1 }
                TextEntry {
                    objectName: "line" + (line.index + 1)
                    Layout.fillWidth: true
                    placeholder: line.bye ? qsTr("bye") : qsTr("Player, or player / partner")
                    readOnly: line.bye
                    text: line.bye ? "" : sheet.lines[line.index]?.player ?? ""
                    field.maximumLength: 160
                    field.Accessible.name: qsTr("Line %1").arg(line.index + 1)
                    onEdited: text => sheet.say(line.index, { player: text })
                }
            }
            RowLayout {
                width: sheet.narrow ? line.width : line.endWidth
                spacing: Theme.tight
                Item { Layout.preferredWidth: 34; visible: sheet.narrow }
                TextEntry {
                    objectName: "seed" + (line.index + 1)
                    Layout.preferredWidth: 72
                    Layout.fillWidth: sheet.narrow
                    placeholder: qsTr("Seed")
                    readOnly: line.bye
                    text: sheet.lines[line.index]?.seed > 0 ? sheet.lines[line.index].seed : ""
                    inputMethodHints: Qt.ImhDigitsOnly
                    field.maximumLength: 3
                    field.Accessible.name: qsTr("Seed of line %1").arg(line.index + 1)
                    onEdited: text => sheet.say(line.index, { seed: Number(text) || 0 })
                }
                CheckChip {
                    objectName: "bye" + (line.index + 1)
                    Layout.preferredWidth: 134
                    visible: !sheet.group
                    mostLines: 1
                    text: qsTr("bye")
                    checked: line.bye
                    Accessible.name: qsTr("Line %1 is free").arg(line.index + 1)
                    onToggled: {
                        sheet.say(line.index, { bye: !line.bye, player: "", seed: 0 });
                        line.bye = !line.bye;
                    }
                }
            }
        }
    }
    ActionButton {
        objectName: "chooseDraw"
        Layout.fillWidth: true
        visible: !sheet.byHand
        kind: ActionButton.Secondary
        iconName: "in"
        text: sheet.path.length > 0 ? decodeURIComponent(sheet.path.split("/").pop()) : qsTr("Choose the table (CSV)")
        onClicked: choosing.open()
    }
    Words {
        Layout.fillWidth: true
        visible: !sheet.byHand
        meaning: Words.Caption
        quiet: true
        text: sheet.group ? qsTr("Columns: player; if they are known partner, seed, rating. Three to eight rows.")
                          : qsTr("Columns: line (from 1), player; if they are known partner, seed, rating, entry. A free line of the draw is called bye.")
    }
    ActionButton {
        objectName: "keepDraw"
        Layout.fillWidth: true
        enabled: name.text.trim().length > 0 && (sheet.byHand || sheet.path.length > 0) && (!sheet.qualifying || Number(through.value) > 0)
        text: qsTr("Bring it in")
        onClicked: {
            const sections = sheet.qualifying ? Number(through.value) : 0;
            const typed = Array.from(sheet.lines).map(one => {
                const people = one.player.split("/");
                return { player: people[0], partner: people[1] ?? "", seed: one.seed, bye: one.bye };
            });
            const done = sheet.byHand ? DrawModel.make(name.text, typed, sections, sheet.group, qsTr("Draw made"))
                                      : DrawModel.bringIn(sheet.file, name.text, sections, sheet.group, qsTr("Draw brought in"));
            if (!done) return;
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
