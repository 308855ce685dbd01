pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// How even the room's work is: the rackets' chart, what stands out and why, what can be held, and each machine against its gauge.
ScrollColumn {
    id: view

    readonly property var points: QualityModel.points
    readonly property bool some: points.length > 0
    readonly property var marks: ({ racket: qsTr("a racket by itself"), machine: qsTr("a machine"), stringer: qsTr("a stringer") })
    property int chosen: -1
    signal careAsked(var machine)

    onPointsChanged: if (chosen >= points.length) chosen = -1

    spacing: Theme.room

    Notice {
        objectName: "qualityFault"
        Layout.fillWidth: true
        visible: QualityModel.fault.length > 0
        title: qsTr("Nothing can be told")
        text: QualityModel.fault
    }
    EmptyState {
        objectName: "nothingRead"
        Layout.fillWidth: true
        visible: QualityModel.ready && QualityModel.fault.length === 0 && !view.some
        iconName: "bench"
        title: qsTr("No string bed was measured yet")
        text: qsTr("Measure each racket before it leaves the bench and enter the reading there; from the fifth of a kind on it is compared.")
    }
    PickList {
        objectName: "qualityOf"
        Layout.fillWidth: true
        Layout.maximumWidth: 420
        visible: QualityModel.choices.length > 1
        value: QualityModel.of
        options: QualityModel.choices
        onPicked: value => QualityModel.of = value
    }
    Card {
        Layout.fillWidth: true
        visible: view.some
        title: qsTr("Racket after racket")
        detail: QualityModel.rackets > view.points.length
                ? qsTr("The newest %1 of %2; per cent from what was to be expected, estimates").arg(view.points.length).arg(QualityModel.rackets)
                : qsTr("Per cent from what was to be expected, estimates")

        QualityChart {
            id: chart
            objectName: "qualityChart"
            Layout.fillWidth: true
            points: view.points
            limit: QualityModel.limit
            tolerance: QualityModel.tolerance
            reach: QualityModel.reach
            chosen: view.chosen
            onPicked: point => view.chosen = point
        }
        Column {
            Layout.fillWidth: true
            spacing: 2
            Words {
                objectName: "chosenRacket"
                width: parent.width
                meaning: Words.Strong
                text: view.chosen >= 0 && view.chosen < view.points.length ? view.points[view.chosen].text : qsTr("Tap a racket to read it.")
            }
            Words {
                width: parent.width
                visible: text.length > 0
                meaning: Words.Caption
                text: view.chosen < 0 || view.chosen >= view.points.length ? ""
                    : Listing.dotted([view.points[view.chosen].detail,
                                      view.points[view.chosen].mark.length > 0 ? qsTr("alarm of %1").arg(view.marks[view.points[view.chosen].mark]) : "",
                                      view.points[view.chosen].beyond ? qsTr("beyond the tolerance") : ""])
            }
        }
        Flow {
            Layout.fillWidth: true
            spacing: Theme.gap
            Repeater {
                model: [{ mark: "", told: true, beyond: true, text: qsTr("beyond the tolerance (the band)") },
                        { mark: "", told: false, beyond: false, text: qsTr("nothing to compare with yet") },
                        { mark: "racket", told: true, beyond: false, text: qsTr("alarm of a racket (dashed: its limits)") },
                        { mark: "machine", told: true, beyond: false, text: qsTr("alarm of a machine") },
                        { mark: "stringer", told: true, beyond: false, text: qsTr("alarm of a stringer") }]
                Row {
                    id: legend
                    required property var modelData
                    spacing: Theme.tight
                    QualityMark { mark: legend.modelData.mark; told: legend.modelData.told; beyond: legend.modelData.beyond }
                    Words { meaning: Words.Caption; text: legend.modelData.text; wrapMode: Text.NoWrap }
                }
            }
            Row {
                visible: QualityModel.of.length > 0
                spacing: Theme.tight
                Rectangle { width: 20; height: 3; y: 8; color: Theme.colour.action }
                Words { meaning: Words.Caption; text: qsTr("moving average, begun anew after an alarm"); wrapMode: Text.NoWrap }
            }
        }
        Words { Layout.fillWidth: true; text: QualityModel.scatter }
        Words { objectName: "capability"; Layout.fillWidth: true; meaning: Words.Strong; text: QualityModel.capability }
    }
    Card {
        Layout.fillWidth: true
        visible: view.some
        title: qsTr("What stands out")
        detail: QualityModel.olderAlarms > 0 ? qsTr("The newest first; %n older one(s) are on the chart", "", QualityModel.olderAlarms) : ""

        Words {
            objectName: "noAlarms"
            Layout.fillWidth: true
            visible: QualityModel.alarms.length === 0
            text: qsTr("Nothing stands out beyond what chance alone would do.")
        }
        Repeater {
            model: QualityModel.alarms
            ColumnLayout {
                id: alarm
                required property var modelData
                Layout.fillWidth: true
                spacing: 2
                Repeater {
                    model: alarm.modelData.titles
                    RowLayout {
                        id: title
                        required property var modelData
                        required property int index
                        spacing: Theme.gap
                        QualityMark {
                            Layout.alignment: Qt.AlignTop
                            Layout.preferredWidth: 20
                            Layout.preferredHeight: 20
                            mark: title.modelData.mark
                        }
                        Words {
                            Layout.fillWidth: true
                            meaning: Words.Strong
                            text: Listing.dotted([title.modelData.text, title.index === 0 ? alarm.modelData.when : ""])
                        }
                    }
                }
                Column {
                    Layout.fillWidth: true
                    Layout.leftMargin: 20 + Theme.gap
                    spacing: 2
                    Words { width: parent.width; visible: text.length > 0; text: alarm.modelData.text }
                    Words {
                        width: parent.width
                        visible: text.length > 0
                        meaning: Words.Caption
                        quiet: true
                        text: alarm.modelData.causes.length === 0 ? ""
                            : qsTr("Likely causes (estimate): %1").arg(Listing.commas(Array.from(alarm.modelData.causes).map(one => qsTr("%1, %2 %").arg(one.text).arg(one.chance))))
                    }
                    Words { width: parent.width; visible: text.length > 0; meaning: Words.Strong; text: alarm.modelData.advice }
                }
            }
        }
    }
    Card {
        Layout.fillWidth: true
        visible: view.some
        title: qsTr("Where the scatter comes from")
        Words {
            Layout.fillWidth: true
            visible: QualityModel.variance.length === 0
            text: qsTr("Too few readings, or too few who strung them, to tell.")
        }
        Repeater {
            model: QualityModel.variance
            Words { required property string modelData; Layout.fillWidth: true; text: modelData }
        }
    }
    Notice {
        objectName: "leftOut"
        Layout.fillWidth: true
        visible: QualityModel.leftOut.length > 0
        kind: Notice.Attention
        title: qsTr("Left out: these readings can’t be of their rackets")
        text: Array.from(QualityModel.leftOut).join("\n")
    }
    SideBySide {
        id: ways
        Layout.fillWidth: true
        visible: QualityModel.ready && QualityModel.fault.length === 0
        least: 240
        most: 3

        ActionButton {
            objectName: "saveQualityPdf"
            width: ways.columnWidth
            visible: view.some
            enabled: !QualityModel.busy
            kind: ActionButton.Secondary
            iconName: "note"
            text: qsTr("Save as a sheet (PDF)")
            onClicked: savingPdf.open()
        }
        ActionButton {
            objectName: "saveQuality"
            width: ways.columnWidth
            visible: view.some
            kind: ActionButton.Secondary
            iconName: "note"
            text: qsTr("Save as a table (CSV)")
            onClicked: saving.open()
        }
        ActionButton {
            objectName: "qualityRules"
            width: ways.columnWidth
            kind: ActionButton.Secondary
            text: qsTr("The room’s rules")
            onClicked: rules.begin()
        }
    }
    SavedLine {
        objectName: "qualitySaved"
        Layout.fillWidth: true
        note: QualityModel.saved
    }
    Words {
        Layout.fillWidth: true
        visible: QualityModel.machines.length > 0
        meaning: Words.Title
        text: qsTr("Machines against the gauge")
    }
    TextEntry {
        objectName: "wantedPull"
        Layout.fillWidth: true
        Layout.maximumWidth: 420
        visible: Array.from(QualityModel.machines).some(one => one.known)
        label: qsTr("What to set for a pull of, in kg")
        error: QualityModel.wrongWanted
        inputMethodHints: Qt.ImhFormattedNumbersOnly
        onEdited: text => QualityModel.wanted = text
    }
    SideBySide {
        id: machines
        Layout.fillWidth: true
        least: 340
        spacing: Theme.room

        Repeater {
            model: QualityModel.machines.length
            Card {
                id: card
                required property int index
                readonly property var machine: QualityModel.machines[index] ?? { id: "", name: "", known: false, overdue: false, due: "", sentences: [] }
                objectName: "pulls" + index
                width: machines.columnWidth
                title: machine.name

                PullLine {
                    Layout.fillWidth: true
                    visible: card.machine.known
                    machine: card.machine
                }
                Repeater {
                    model: card.machine.sentences ?? []
                    Words {
                        required property string modelData
                        required property int index
                        Layout.fillWidth: true
                        meaning: index === 0 ? Words.Strong : Words.Body
                        text: modelData
                    }
                }
                Words {
                    Layout.fillWidth: true
                    visible: text.length > 0
                    text: card.machine.missing ?? ""
                }
                IconLine {
                    Layout.fillWidth: true
                    iconName: card.machine.overdue || !card.machine.known ? "warning" : "info"
                    text: card.machine.due
                }
                ActionButton {
                    objectName: "enterPull"
                    Layout.fillWidth: true
                    kind: ActionButton.Secondary
                    text: qsTr("Enter a pull against the gauge")
                    onClicked: view.careAsked(card.machine)
                }
            }
        }
    }
    Words {
        Layout.fillWidth: true
        visible: view.some
        meaning: Words.Caption
        quiet: true
        text: qsTr("All figures are estimates of readings and say nothing on anybody’s health; whose arm hurts sees a physician.")
    }
    QualityRulesSheet { id: rules }
    FileDialog {
        id: saving
        fileMode: FileDialog.SaveFile
        nameFilters: [qsTr("Table (*.csv)")]
        defaultSuffix: "csv"
        onAccepted: QualityModel.save(selectedFile)
    }
    FileDialog {
        id: savingPdf
        fileMode: FileDialog.SaveFile
        nameFilters: [qsTr("Sheet (*.pdf)")]
        defaultSuffix: "pdf"
        onAccepted: QualityModel.savePdf(selectedFile)
    }
}
