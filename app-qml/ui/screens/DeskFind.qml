pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic as Basic
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The beginning of every drop-off: what was left unfinished, and finding the player.
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
        Repeater {
            model: DeskModel.draft.unfinished
            UnfinishedRow { Layout.fillWidth: true }
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
}
