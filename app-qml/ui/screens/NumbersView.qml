pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// How much, how fast, how punctual: the whole event or today.
ScrollColumn {
    id: view

    readonly property var sums: NumbersModel.sums
    readonly property var growth: NumbersModel.growth
    // Room for a name and a detail of two lines each in every tile.
    readonly property real tileHeight: Math.ceil(4 * small.height + large.height) + 2 * Theme.gap + 2 * 2

    spacing: Theme.room

    FontMetrics { id: small; font.pixelSize: Theme.type.caption }
    FontMetrics { id: large; font.pixelSize: Theme.type.heading; font.weight: Font.DemiBold }
    SideBySide {
        id: top
        Layout.fillWidth: true
        least: 300

        ChoiceBar {
            objectName: "numbersSpan"
            width: top.columnWidth
            value: NumbersModel.today
            options: [{ value: false, text: qsTr("Whole event") }, { value: true, text: qsTr("Today") }]
            Accessible.name: qsTr("What is counted")
            onChosen: value => NumbersModel.today = value
        }
        ActionButton {
            objectName: "saveNumbers"
            width: top.columnWidth
            kind: ActionButton.Secondary
            iconName: "note"
            text: qsTr("Save as a table (CSV)")
            onClicked: saving.open()
        }
    }
    SavedLine {
        objectName: "numbersSaved"
        Layout.fillWidth: true
        note: NumbersModel.saved
    }
    SideBySide {
        id: figures
        Layout.fillWidth: true
        least: 150
        most: 4

        Repeater {
            model: [
                { name: qsTr("Taken in"), figure: view.sums.jobs ?? 0, detail: qsTr("%1 in the room now").arg(view.sums.inRoom ?? 0) },
                { name: qsTr("Strung"), figure: view.sums.strung ?? 0,
                  detail: (view.sums.redone ?? 0) > 0 ? qsTr("%1 strung again").arg(view.sums.redone) : "" },
                { name: qsTr("On time"), figure: view.sums.onTime || "–",
                  detail: Listing.commas([qsTr("%1 late").arg(view.sums.late ?? 0),
                                          (view.sums.overdue ?? 0) > 0 ? qsTr("%1 overdue").arg(view.sums.overdue) : ""]) },
                { name: qsTr("From drop-off to ready"), figure: view.sums.turnaround || "–",
                  detail: view.sums.slow ? qsTr("nine of ten under %1").arg(view.sums.slow) : "" },
                { name: qsTr("Rush"), figure: view.sums.rush ?? 0, detail: qsTr("%1 from the court").arg(view.sums.onCourt ?? 0) },
                { name: qsTr("Waiting for an answer"), figure: view.sums.waiting ?? 0,
                  detail: view.sums.wait ? qsTr("usually %1").arg(view.sums.wait) : "" },
                { name: qsTr("Collected"), figure: view.sums.collected ?? 0,
                  detail: (view.sums.aside ?? 0) > 0 ? qsTr("%1 put aside").arg(view.sums.aside) : "" },
                { name: view.growth.name ?? "", figure: view.growth.more ?? "–",
                  detail: view.growth.name ? qsTr("%1 now, %2 then").arg(view.growth.now).arg(view.growth.before) : "" }
            ].filter(one => one.name.length > 0)

            Card {
                id: figure
                required property var modelData
                width: figures.columnWidth
                height: view.tileHeight
                padding: Theme.gap
                spacing: 2
                Accessible.name: modelData.name + ": " + modelData.figure

                Words {
                    Layout.fillWidth: true
                    meaning: Words.Caption
                    quiet: true
                    text: figure.modelData.name
                    maximumLineCount: 2
                    elide: Text.ElideRight
                }
                Words {
                    Layout.fillWidth: true
                    meaning: Words.Heading
                    text: figure.modelData.figure
                    wrapMode: Text.NoWrap
                    fontSizeMode: Text.HorizontalFit
                    minimumPixelSize: 16
                }
                Words {
                    Layout.fillWidth: true
                    meaning: Words.Caption
                    text: figure.modelData.detail
                    maximumLineCount: 2
                    elide: Text.ElideRight
                }
            }
        }
    }
    SideBySide {
        id: charts
        Layout.fillWidth: true
        least: 340
        spacing: Theme.room

        BarCard { width: charts.columnWidth; title: qsTr("Made ready, by day"); rows: NumbersModel.days; figure: "ready" }
        BarCard { width: charts.columnWidth; title: qsTr("Taken in, by hour"); rows: NumbersModel.hours; figure: "taken" }
        BarCard { width: charts.columnWidth; title: qsTr("Strung, by stringer"); rows: NumbersModel.stringers }
        BarCard { width: charts.columnWidth; title: qsTr("Strung, by string"); rows: Array.from(NumbersModel.strings).slice(0, 12) }
        BarCard { width: charts.columnWidth; title: qsTr("Strung, by tension of the mains"); rows: NumbersModel.tensions }
    }
    FileDialog {
        id: saving
        fileMode: FileDialog.SaveFile
        nameFilters: [qsTr("Table (*.csv)")]
        defaultSuffix: "csv"
        onAccepted: NumbersModel.save(selectedFile)
    }
}
