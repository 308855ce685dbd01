pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// What is still to come: rackets by day and hour, the benches and the string that they need. Everything is an estimate with its band.
ScrollColumn {
    id: view

    readonly property var days: ForecastModel.days
    readonly property var hours: ForecastModel.hours
    readonly property var strings: ForecastModel.strings

    function highest(rows) {
        return Array.from(rows).reduce((most, row) => Math.max(most, row.high, row.mean), 1);
    }

    spacing: Theme.room

    Notice {
        objectName: "forecastFault"
        Layout.fillWidth: true
        visible: ForecastModel.fault.length > 0
        kind: Notice.Info
        title: qsTr("There can be no forecast")
        text: ForecastModel.fault
    }
    Words {
        Layout.fillWidth: true
        visible: ForecastModel.busy && view.days.length === 0 && ForecastModel.fault.length === 0
        text: qsTr("Working it out …")
    }
    Words {
        objectName: "forecastSum"
        Layout.fillWidth: true
        visible: view.days.length > 0
        text: view.days.length > 0 ? qsTr("Some %1 rackets are still to come (eight times of ten between %2 and %3), %4 for each player and match. Estimates, from the draws and from what came so far.")
              .arg(ForecastModel.sums.mean).arg(ForecastModel.sums.low).arg(ForecastModel.sums.high).arg(ForecastModel.sums.perMatch) : ""
    }
    SideBySide {
        id: cards
        Layout.fillWidth: true
        visible: view.days.length > 0
        least: 360
        spacing: Theme.room

        Card {
            width: cards.columnWidth
            title: qsTr("Rackets, by day")
            detail: qsTr("Tap a day for its hours")
            spacing: 0
            Repeater {
                model: view.days.length
                TouchButton {
                    id: dayRow
                    required property int index
                    readonly property var row: view.days[index] ?? { name: "", mean: 0, low: 0, high: 0, benches: 0 }
                    objectName: "forecastDay" + index
                    Layout.fillWidth: true
                    implicitHeight: Math.max(Theme.touch, band.implicitHeight)
                    Accessible.name: band.Accessible.name
                    background: Rectangle {
                        radius: Theme.radius
                        color: dayRow.index === ForecastModel.day ? Theme.colour.chosenGround : "transparent"
                        border.width: dayRow.index === ForecastModel.day ? 2 : 0
                        border.color: Theme.colour.action
                    }
                    contentItem: Item {
                        implicitHeight: band.implicitHeight
                        BandRow {
                            id: band
                            x: Theme.tight
                            width: parent.width - 2 * Theme.tight
                            anchors.verticalCenter: parent.verticalCenter
                            text: dayRow.row.name
                            value: dayRow.row.mean
                            low: dayRow.row.low
                            high: dayRow.row.high
                            most: view.highest(view.days)
                            more: qsTr("%n bench(es)", "", dayRow.row.benches)
                        }
                    }
                    onClicked: ForecastModel.day = index
                }
            }
        }
        Card {
            width: cards.columnWidth
            title: view.days[ForecastModel.day]?.name ?? ""
            detail: qsTr("Rackets brought in each hour, and the benches on which they are ready within three hours")
            spacing: 0
            Repeater {
                model: view.hours.length
                BandRow {
                    required property int index
                    readonly property var row: view.hours[index] ?? { name: "", mean: 0, low: 0, high: 0, benches: 0 }
                    Layout.fillWidth: true
                    text: row.name
                    value: row.mean
                    low: row.low
                    high: row.high
                    most: view.highest(view.hours)
                    more: qsTr("%n bench(es)", "", row.benches)
                }
            }
        }
        Card {
            width: cards.columnWidth
            title: qsTr("String, metres of all days")
            detail: qsTr("By what each player had most at this event")
            spacing: 0
            Repeater {
                model: Math.min(12, view.strings.length)
                BandRow {
                    required property int index
                    readonly property var row: view.strings[index] ?? { name: "", mean: 0, low: 0, high: 0 }
                    Layout.fillWidth: true
                    text: row.name
                    value: row.mean
                    low: row.low
                    high: row.high
                    most: view.highest(view.strings)
                }
            }
        }
    }
}
