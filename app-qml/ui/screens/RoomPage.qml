pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// All jobs of the event by their stage, or all jobs that this device holds.
PageFrame {
    id: page

    property string view: "board"
    readonly property bool empty: RoomModel.shown === 0

    function advance(book, job, stage, tag, name) {
        if (!RoomModel.tapCounts()) return;
        // These two have something to look at first.
        if (stage === 7) return CheckModel.show(book, job);
        if (stage === 8) return CheckModel.showStencils(book, job);
        // The usual machine is not for this setup: look first.
        if (stage === StageMark.OnMachine && RoomModel.machineDoubts(book, job).length > 0) return sheet.show(book, job, name);
        RoomModel.advance(book, job, tag.length > 0 ? qsTr("Tag %1: %2").arg(tag).arg(StageWords.title(stage))
                                                    : StageWords.title(stage));
    }

    title: qsTr("Room")
    widest: 100000
    detail: {
        if (!RoomModel.hasEvent) return "";
        const here = qsTr("%n racket(s) here", "", RoomModel.open);
        const parts = [here];
        if (RoomModel.late > 0) parts.push(qsTr("%n late", "", RoomModel.late));
        if (RoomModel.collected > 0) parts.push(qsTr("%n collected", "", RoomModel.collected));
        return parts.join(", ");
    }

    SideBySide {
        id: head
        Layout.fillWidth: true
        least: 300
        most: 3
        ChoiceBar {
            objectName: "view"
            width: Math.min(520, head.columnWidth)
            value: page.view
            options: [{ value: "board", text: qsTr("By stage") }, { value: "jobs", text: qsTr("All jobs") }]
            Accessible.name: qsTr("What is shown")
            onChosen: value => page.view = value
        }
        ActionButton {
            objectName: "compareTags"
            width: Math.min(420, head.columnWidth)
            visible: !page.empty
            kind: ActionButton.Secondary
            iconName: "tag"
            text: qsTr("Compare two tags")
            onClicked: ScanModel.comparing = true
        }
        ActionButton {
            objectName: "printLists"
            width: Math.min(420, head.columnWidth)
            visible: RoomModel.hasEvent
            kind: ActionButton.Secondary
            iconName: "note"
            text: qsTr("Print")
            onClicked: papers.showRoom()
        }
    }
    // One place for all that is shown by turns: Qt 6.4 does not place anew what a layout makes visible late.
    Item {
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.minimumHeight: 420

        EmptyState {
            anchors.centerIn: parent
            width: Math.min(parent.width, 560)
            visible: page.view === "board" && page.empty && RoomModel.hasEvent
            iconName: "room"
            title: qsTr("No racket is in the room")
            text: qsTr("Every job of the event stands here under its stage, from taken in to handed over.")
        }
        NoEvent {
            anchors.centerIn: parent
            width: Math.min(parent.width, 560)
            visible: page.view === "board" && page.empty && !RoomModel.hasEvent
            iconName: "room"
            brings: qsTr("Pair with an event server under Exchange; its rackets come here by themselves.")
        }
        RoomBoard {
            objectName: "board"
            anchors.fill: parent
            visible: page.view === "board" && !page.narrow && !page.empty
            onOpened: (book, job, name) => sheet.show(book, job, name)
            onAdvanced: (book, job, stage, tag, name) => page.advance(book, job, stage, tag, name)
        }
        RoomList {
            objectName: "stages"
            anchors.fill: parent
            visible: page.view === "board" && page.narrow && !page.empty
            onOpened: (book, job, name) => sheet.show(book, job, name)
            onAdvanced: (book, job, stage, tag, name) => page.advance(book, job, stage, tag, name)
        }
        JobList {
            objectName: "jobs"
            anchors.fill: parent
            visible: page.view === "jobs"
            onOpened: (book, job, name) => sheet.show(book, job, name)
        }
    }
    JobSheet { id: sheet }
    PrintSheet { id: papers }
}
