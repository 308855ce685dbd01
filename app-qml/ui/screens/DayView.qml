pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The day: time across, benches down. Above it what happened since the last look and what is not as it was told.
ScrollColumn {
    id: view

    readonly property bool narrow: width < Theme.phoneWidth
    readonly property real perMinute: 3
    readonly property int rowHeight: 66
    readonly property var benches: DayModel.benches

    spacing: Theme.room

    Notice {
        objectName: "dayFault"
        Layout.fillWidth: true
        visible: DayModel.fault.length > 0
        kind: Notice.Info
        title: qsTr("There can be no plan of the day")
        text: DayModel.fault
    }
    Notice {
        objectName: "dayNews"
        Layout.fillWidth: true
        visible: DayModel.news.length > 0
        kind: Notice.Info
        title: qsTr("Since you last looked (%1)").arg(DayModel.lookedAt)
        text: Array.from(DayModel.news).join("\n")
        actionText: qsTr("Seen")
        onActed: DayModel.seen()
    }
    RowLayout {
        Layout.fillWidth: true
        visible: DayModel.ready && DayModel.fault.length === 0
        spacing: Theme.gap
        Words {
            objectName: "daySum"
            Layout.fillWidth: true
            text: DayModel.late > 0 ? qsTr("%n racket(s) to string", "", DayModel.rackets) + ", " + qsTr("%n of them late", "", DayModel.late)
                                    : qsTr("%n racket(s) to string", "", DayModel.rackets) + (DayModel.rackets > 0 ? ", " + qsTr("all in time") : "")
        }
        ActionButton {
            objectName: "planAnew"
            kind: ActionButton.Quiet
            visible: DayModel.told
            text: qsTr("Plan anew")
            onClicked: DayModel.planAnew()
        }
    }
    Notice {
        objectName: "dayChanges"
        Layout.fillWidth: true
        visible: DayModel.changes.length > 0
        kind: Notice.Attention
        title: qsTr("Not as it was told")
        text: Array.from(DayModel.changes).join("\n")
    }
    ActionButton {
        objectName: "tellDay"
        Layout.fillWidth: true
        Layout.maximumWidth: 420
        visible: DayModel.ready && DayModel.fault.length === 0 && DayModel.toTell > 0
        kind: ActionButton.Primary
        text: DayModel.told ? qsTr("Tell the room (%n change(s))", "", DayModel.toTell) : qsTr("Tell the room this plan")
        onClicked: DayModel.tell(qsTr("The room knows"))
    }
    Rectangle {
        id: chart
        Layout.fillWidth: true
        Layout.preferredHeight: 36 + view.benches.length * view.rowHeight + 14
        visible: view.benches.length > 0
        radius: Theme.radius
        color: Theme.colour.surface
        border.width: 1
        border.color: Theme.colour.line
        clip: true

        Column {
            id: names
            y: 36
            width: view.narrow ? 92 : 150
            Repeater {
                model: view.benches.length
                Item {
                    id: nameCell
                    required property int index
                    readonly property var bench: view.benches[nameCell.index] ?? { name: "", machine: "" }
                    width: names.width
                    height: view.rowHeight
                    Column {
                        x: Theme.tight
                        width: parent.width - 2 * Theme.tight
                        anchors.verticalCenter: parent.verticalCenter
                        Words { width: parent.width; meaning: Words.Strong; text: nameCell.bench.name; maximumLineCount: 1; elide: Text.ElideRight; wrapMode: Text.NoWrap }
                        Words { width: parent.width; meaning: Words.Caption; quiet: true; text: nameCell.bench.machine; maximumLineCount: 1; elide: Text.ElideRight; wrapMode: Text.NoWrap }
                    }
                    Rectangle { y: parent.height - 1; width: chart.width; height: 1; color: Theme.colour.line }
                }
            }
        }
        Binding {
            target: flick
            property: "contentX"
            value: Math.max(0, Math.min(DayModel.now * view.perMinute - 48, flick.contentWidth - flick.width))
            when: !flick.moved
            restoreMode: Binding.RestoreNone
        }
        Flickable {
            id: flick
            objectName: "dayFlick"
            // Until somebody moves it, it stands where now is.
            property bool moved: false
            onMovementStarted: moved = true
            x: names.width
            width: chart.width - names.width - 1
            height: chart.height
            contentWidth: DayModel.minutes * view.perMinute
            contentHeight: height
            boundsBehavior: Flickable.StopAtBounds
            flickableDirection: Flickable.HorizontalFlick
            clip: true

            Repeater {
                model: DayModel.hours
                Item {
                    required property var modelData
                    x: modelData.at * view.perMinute
                    height: flick.height
                    Rectangle { y: 30; width: 1; height: parent.height - 30; color: Theme.colour.line }
                    Words { x: 4; y: 8; meaning: Words.Caption; quiet: true; text: parent.modelData.text }
                }
            }
            Repeater {
                model: view.benches.length
                DayLine {
                    required property int index
                    y: 36 + index * view.rowHeight
                    width: flick.contentWidth
                    height: view.rowHeight - 1
                    bench: view.benches[index] ?? null
                    perMinute: view.perMinute
                    onOpened: job => sheet.begin(job, view.benches[index].name)
                }
            }
            Rectangle {
                x: DayModel.now * view.perMinute
                y: 30
                width: 2
                height: flick.height - 30
                color: Theme.colour.action
                Accessible.ignored: true
            }
        }
    }
    Notice {
        objectName: "dayDoubts"
        Layout.fillWidth: true
        visible: DayModel.doubts.length > 0
        kind: Notice.Attention
        title: qsTr("To be looked at")
        text: Array.from(DayModel.doubts).join("\n")
    }
    Sheet {
        id: sheet
        property var job: ({ whole: "", times: "", promised: "", late: 0, inWork: false, onCourt: false, changed: false, away: "" })
        property string bench

        function begin(what, where) {
            job = what;
            bench = where;
            open();
        }

        title: sheet.job.whole
        SumRow { Layout.fillWidth: true; text: qsTr("Bench"); amount: sheet.bench }
        SumRow { Layout.fillWidth: true; text: sheet.job.inWork ? qsTr("On the machine, strung by about") : qsTr("Strung"); amount: sheet.job.times }
        SumRow { Layout.fillWidth: true; text: qsTr("Promised for"); amount: sheet.job.promised.length > 0 ? sheet.job.promised : qsTr("no time") }
        Notice {
            Layout.fillWidth: true
            visible: sheet.job.late > 0
            kind: Notice.Danger
            title: qsTr("%n minute(s) late", "", sheet.job.late)
            text: qsTr("Check, stencil and bag are counted in. Ask the player, or move what can wait.")
        }
        Words { Layout.fillWidth: true; visible: sheet.job.onCourt; text: qsTr("A rush from the court: it goes before all that waits.") }
        Words { Layout.fillWidth: true; visible: sheet.job.away.length > 0; text: qsTr("Its home bench is %1; there it would be later.").arg(sheet.job.away) }
        Words { Layout.fillWidth: true; visible: sheet.job.changed; text: qsTr("The room was told something else.") }
    }
}
