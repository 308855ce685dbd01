pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// What was strung before, out of a table kept by hand: looked at first, then brought in, and taken back as one.
Sheet {
    id: sheet

    readonly property bool chosen: PastJobsModel.file.length > 0
    readonly property bool storing: PastJobsModel.toStore > 0

    function begin() {
        PastJobsModel.leave();
        open();
    }

    title: qsTr("Past jobs")
    onClosed: if (!PastJobsModel.busy) PastJobsModel.leave()

    Words {
        Layout.fillWidth: true
        visible: !sheet.chosen
        text: qsTr("A table of rackets strung before becomes the history of its players. Nothing is stored before you have looked at it, and an import can be taken back as one.")
    }
    ActionButton {
        objectName: "choosePast"
        Layout.fillWidth: true
        kind: sheet.chosen ? ActionButton.Secondary : ActionButton.Primary
        iconName: "in"
        enabled: !PastJobsModel.busy
        text: sheet.chosen ? PastJobsModel.file : qsTr("Choose the table (CSV)")
        onClicked: choosing.open()
    }
    ProgressLine {
        objectName: "pastProgress"
        Layout.fillWidth: true
        visible: PastJobsModel.busy
        indeterminate: !sheet.storing
        value: sheet.storing ? PastJobsModel.stored / PastJobsModel.toStore : 0
        text: sheet.storing ? qsTr("Bringing in") : qsTr("Working on it")
        detail: sheet.storing ? qsTr("%1 of %2").arg(PastJobsModel.stored).arg(PastJobsModel.toStore) : ""
    }
    Notice {
        objectName: "pastResult"
        Layout.fillWidth: true
        visible: PastJobsModel.result !== PastJobsModel.Nothing
        kind: PastJobsModel.result === PastJobsModel.BroughtIn || PastJobsModel.result === PastJobsModel.TakenBack ? Notice.Agreed : Notice.Attention
        title: {
            switch (PastJobsModel.result) {
            case PastJobsModel.BroughtIn: return qsTr("Brought in");
            case PastJobsModel.NotAllBroughtIn: return qsTr("Not all of it was brought in");
            case PastJobsModel.TakenBack: return qsTr("Taken back");
            case PastJobsModel.PartlyTakenBack: return qsTr("Taken back, but for players on whom work went on since");
            default: return qsTr("Not taken back");
            }
        }
        text: PastJobsModel.told
    }
    Notice {
        objectName: "pastTrouble"
        Layout.fillWidth: true
        visible: PastJobsModel.trouble !== PastJobsModel.None && !PastJobsModel.busy
        kind: Notice.Attention
        title: {
            switch (PastJobsModel.trouble) {
            case PastJobsModel.NoFile: return qsTr("The file can't be read");
            case PastJobsModel.NoTable: return qsTr("This is no table that can be read");
            case PastJobsModel.NoNames: return qsTr("Which column holds the players' names?");
            case PastJobsModel.NoStrings: return qsTr("Which column holds a string or a tension?");
            default: return qsTr("The table can't be brought in like this");
            }
        }
        text: PastJobsModel.troubleText
    }
    ChoiceBar {
        objectName: "pastEncoding"
        Layout.fillWidth: true
        visible: sheet.chosen && (PastJobsModel.trouble === PastJobsModel.NoTable || PastJobsModel.encoding !== 0)
        label: qsTr("How its letters are written")
        value: PastJobsModel.encoding
        options: [{ value: 0, text: qsTr("Unicode") }, { value: 3, text: qsTr("Windows, western") }]
        onChosen: value => PastJobsModel.encoding = value
    }
    PastColumnsCard {
        Layout.fillWidth: true
        visible: PastJobsModel.columns.length > 0
    }
    ChoiceBar {
        objectName: "pastUnit"
        Layout.fillWidth: true
        visible: PastJobsModel.unitDoubt !== PastJobsModel.Clear
        label: PastJobsModel.unitDoubt === PastJobsModel.Open ? qsTr("In which unit are tensions that say none? The figures do not tell.")
            : PastJobsModel.unitDoubt === PastJobsModel.Found ? qsTr("Tensions that say no unit look like this one. Is that right?")
                                                              : qsTr("Tensions that say no unit")
        value: PastJobsModel.unit
        options: [{ value: "kg", text: "kg" }, { value: "lb", text: "lb" }, { value: "N", text: "N" }]
        onChosen: value => PastJobsModel.unit = value
    }
    ChoiceBar {
        objectName: "pastDays"
        Layout.fillWidth: true
        visible: PastJobsModel.dayDoubt !== PastJobsModel.Clear
        label: PastJobsModel.dayDoubt === PastJobsModel.Open ? qsTr("What stands first in dates such as 03/04/2031? The table does not tell.")
                                                             : qsTr("What stands first in dates with slashes")
        value: PastJobsModel.dayDoubt === PastJobsModel.Open ? 0 : PastJobsModel.dayOrder
        options: [{ value: 1, text: qsTr("The day") }, { value: 2, text: qsTr("The month") }]
        onChosen: value => PastJobsModel.dayOrder = value
    }
    PastRowsCard {
        Layout.fillWidth: true
        visible: PastJobsModel.goodRows + PastJobsModel.badRows > 0
    }
    Repeater {
        model: PastJobsModel.likely

        Card {
            id: ask
            required property var modelData
            Layout.fillWidth: true
            title: ask.modelData.name
            detail: qsTr("May be %1, who is known here. Rackets in the table: %2").arg(ask.modelData.looksLike).arg(ask.modelData.jobs)
            ChoiceBar {
                objectName: "pastLikely" + ask.modelData.index
                Layout.fillWidth: true
                value: ask.modelData.answer
                options: [{ value: PastJobsModel.LeaveOut, text: qsTr("Leave out") }, { value: PastJobsModel.Same, text: qsTr("The same") },
                          { value: PastJobsModel.Another, text: qsTr("Somebody else") }]
                Accessible.name: qsTr("Who %1 is").arg(ask.modelData.name)
                onChosen: value => PastJobsModel.answer(ask.modelData.index, value)
            }
        }
    }
    Column {
        id: account
        objectName: "pastAccount"
        Layout.fillWidth: true
        visible: PastJobsModel.goodRows > 0
        spacing: 2
        Words {
            width: account.width
            meaning: Words.Strong
            text: qsTr("Would come in: %n racket(s)", "", PastJobsModel.newJobs)
        }
        Words {
            width: account.width
            visible: PastJobsModel.heldJobs > 0
            text: qsTr("Here already: %n racket(s)", "", PastJobsModel.heldJobs)
        }
        Words {
            width: account.width
            text: qsTr("Players known here: %1, new: %2").arg(PastJobsModel.knownPlayers).arg(PastJobsModel.newPlayers)
        }
        Words {
            width: account.width
            visible: PastJobsModel.badRows > 0
            text: qsTr("Left out: %n row(s) with a mistake", "", PastJobsModel.badRows)
        }
    }
    ActionButton {
        objectName: "bringPastIn"
        Layout.fillWidth: true
        visible: sheet.chosen
        enabled: PastJobsModel.ready
        text: qsTr("Bring in")
        onClicked: PastJobsModel.bringIn()
    }
    Card {
        objectName: "pastImports"
        Layout.fillWidth: true
        visible: PastJobsModel.imports.length > 0
        title: qsTr("Brought in on this device")
        spacing: 0

        Repeater {
            model: PastJobsModel.imports

            SideBySide {
                id: row
                required property var modelData
                Layout.fillWidth: true
                least: 180
                ListRow {
                    width: row.columnWidth
                    leftPadding: 0
                    opens: false
                    flat: true
                    text: row.modelData.name
                    detail: qsTr("%1, players: %2").arg(row.modelData.when).arg(row.modelData.players)
                }
                ActionButton {
                    objectName: "takePastBack" + row.modelData.index
                    width: row.columnWidth
                    kind: ActionButton.Secondary
                    iconName: "undo"
                    enabled: !PastJobsModel.busy
                    text: qsTr("Take back")
                    Accessible.name: qsTr("Take %1 back").arg(row.modelData.name)
                    onClicked: {
                        sure.index = row.modelData.index;
                        sure.title = Accessible.name;
                        sure.open();
                    }
                }
            }
        }
    }
    Sheet {
        id: sure
        objectName: "takeBackSure"
        property int index: 0

        Words {
            Layout.fillWidth: true
            text: qsTr("Every racket and player that came with it goes again, as one. What work has gone on with since stays.")
        }
        ActionButton {
            objectName: "takeBackNow"
            Layout.fillWidth: true
            kind: ActionButton.Danger
            text: qsTr("Take it back")
            onClicked: {
                sure.close();
                PastJobsModel.takeBack(sure.index);
            }
        }
    }
    FileDialog {
        id: choosing
        nameFilters: [qsTr("Tables (*.csv *.CSV *.txt *.tsv)")]
        onAccepted: PastJobsModel.choose(selectedFile)
    }
}
