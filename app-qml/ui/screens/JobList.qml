pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic as Basic
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Every job of a career, newest first. Rows of one height: the list knows where row 40,000 is without making it.
ColumnLayout {
    id: list

    signal opened(string book, string job, string name)

    spacing: Theme.gap

    RowLayout {
        spacing: Theme.gap
        Words {
            Layout.fillWidth: true
            quiet: true
            text: qsTr("%n job(s), newest first", "", JobsModel.count)
        }
        ToggleRow {
            Layout.preferredWidth: 260
            text: qsTr("Only this event")
            checked: JobsModel.todayOnly
            visible: RoomModel.hasEvent
            onToggled: JobsModel.todayOnly = checked
        }
    }
    EmptyState {
        Layout.fillWidth: true
        Layout.fillHeight: true
        visible: JobsModel.count === 0
        iconName: "strung"
        title: qsTr("No racket was ever taken in here")
        text: qsTr("What the desk takes in and what comes by an exchange stands here, newest first.")
    }
    ListView {
        id: view
        objectName: "rows"
        Layout.fillWidth: true
        Layout.fillHeight: true
        visible: JobsModel.count > 0
        clip: true
        reuseItems: true
        boundsBehavior: Flickable.StopAtBounds
        Basic.ScrollBar.vertical: Basic.ScrollBar { minimumSize: 0.06 }
        model: JobsModel

        delegate: ListRow {
            id: row
            required property string player
            required property string racket
            required property string tension
            required property string strings
            required property string eventName
            required property string takenIn
            required property string tag
            required property string book
            required property string job
            required property int stage

            width: view.width
            height: Math.max(76, 4 * Theme.type.body)
            text: row.player
            detail: Listing.dotted([row.tag.length > 0 ? qsTr("Tag %1").arg(row.tag) : "",
                     row.racket.length > 0 ? qsTr("Racket %1").arg(row.racket) : "", row.tension, row.eventName,
                     row.takenIn])
            opens: false
            onClicked: list.opened(row.book, row.job, row.player)
            StageMark { visible: view.width > 600; stage: row.stage }
            Icon { visible: view.width <= 600; name: StageWords.iconName(row.stage) }
        }
    }
}
