pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic as Basic
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The beginning of every drop-off: finding the player, and what was left unfinished.
FocusScope {
    id: page

    // Whoever comes back with a tag is found by its number too.
    readonly property var tagged: ScanModel.withNumber(DeskModel.finder.typed)

    function accept() {
        if (ScanModel.isCode(find.text)) {
            ScanModel.take(find.text);
            DeskModel.finder.typed = "";
        } else if (tagged.length > 0) {
            ScanModel.found(tagged[0].book, tagged[0].job);
        } else if (DeskModel.finder.count > 0) {
            DeskModel.choose(0);
        }
    }

    readonly property var unfinished: Array.from(DeskModel.draft.unfinished)
    readonly property int margin: width < Theme.phoneWidth ? Theme.gap + 4 : Theme.page

    ColumnLayout {
        x: Math.max(page.margin, (page.width - 1000) / 2)
        y: page.margin
        width: Math.min(1000, page.width - 2 * page.margin)
        height: page.height - page.margin
        spacing: Theme.gap

        ColumnLayout {
            spacing: 2
            Words {
                Layout.fillWidth: true
                meaning: Words.Heading
                text: qsTr("Desk")
            }
            Words {
                Layout.fillWidth: true
                quiet: true
                text: AppDevice.eventName.length > 0 ? AppDevice.eventName : qsTr("No event yet: rackets get no tag numbers")
            }
        }
        ActionButton {
            objectName: "makeEvent"
            Layout.fillWidth: page.width < Theme.phoneWidth
            visible: AppDevice.event.length === 0
            kind: ActionButton.Secondary
            text: qsTr("Work on your own: make an event")
            onClicked: EventModel.ask()
        }
        RowLayout {
            spacing: Theme.gap
            SearchEntry {
                id: find
                objectName: "find"
                focus: true
                Layout.fillWidth: true
                name: qsTr("Whose rackets? Name or tag")
                text: DeskModel.finder.typed
                onEdited: text => DeskModel.finder.typed = text
                onAccepted: page.accept()
                Keys.onDownPressed: if (list.count > 0) list.itemAtIndex(0).forceActiveFocus(Qt.TabFocusReason)
            }
            IconAction {
                objectName: "lookForTag"
                visible: CameraModel.present
                framed: true
                Layout.preferredWidth: find.height
                Layout.preferredHeight: find.height
                iconName: "camera"
                text: qsTr("Scan a tag with the camera")
                onClicked: CameraModel.on = true
            }
            ActionButton {
                objectName: "newPlayer"
                visible: page.width >= Theme.phoneWidth
                kind: ActionButton.Secondary
                iconName: "plus"
                text: qsTr("New player")
                onClicked: DeskModel.addPlayer()
            }
        }
        ActionButton {
            objectName: "newPlayerBelow"
            Layout.fillWidth: true
            visible: page.width < Theme.phoneWidth
            kind: ActionButton.Secondary
            iconName: "plus"
            text: qsTr("New player")
            onClicked: DeskModel.addPlayer()
        }
        // One stands here itself; of several a line, so that however many there are the search stays where it is.
        Column {
            id: single
            Layout.fillWidth: true
            visible: page.unfinished.length === 1
            Repeater {
                model: page.unfinished.length === 1 ? page.unfinished : []
                UnfinishedRow { width: single.width }
            }
        }
        ListRow {
            objectName: "unfinished"
            Layout.fillWidth: true
            visible: page.unfinished.length > 1
            iconName: "question"
            text: qsTr("%n unfinished drop-off(s)", "", page.unfinished.length)
            detail: page.unfinished.map(one => one.player).filter(name => name.length > 0).join(", ")
            onClicked: left.open()
        }
        Repeater {
            model: page.tagged.slice(0, 3)
            ListRow {
                required property var modelData
                required property int index
                objectName: "tagged" + index
                Layout.fillWidth: true
                iconName: "tag"
                text: modelData.text
                detail: modelData.detail
                endText: StageWords.title(modelData.stage)
                onClicked: ScanModel.found(modelData.book, modelData.job)
            }
        }
        PlayersView {
            id: list
            objectName: "found"
            Layout.fillWidth: true
            Layout.fillHeight: true
            model: DeskModel.finder
            onChosen: (row, book) => DeskModel.choose(row)

            EmptyState {
                anchors.centerIn: parent
                width: Math.min(520, parent.width)
                visible: list.count === 0 && page.tagged.length === 0
                iconName: "players"
                title: find.text.length > 0 ? qsTr("Nobody of that name") : qsTr("No player is known on this device")
                text: find.text.length > 0
                    ? qsTr("Look at the spelling, or begin a new player with this name.")
                    : qsTr("Players come with an entry list, with an exchange, or are added here.")
            }
        }
    }
    Sheet {
        id: left
        title: qsTr("Unfinished drop-offs")

        Column {
            id: rows
            Layout.fillWidth: true
            spacing: Theme.gap
            Repeater {
                model: page.unfinished
                UnfinishedRow { width: rows.width }
            }
        }
        Connections {
            target: DeskModel
            function onPageChanged() { left.close(); }
        }
        Connections {
            target: DeskModel.draft
            function onUnfinishedChanged() { if (page.unfinished.length === 0) left.close(); }
        }
    }
}
