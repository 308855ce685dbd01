pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic as Basic
import Weavelog.Parts
import Weavelog.Theme

// A list of players of any length; only what is in sight is made.
ListView {
    id: view

    signal chosen(int row, string book, string name)

    clip: true
    boundsBehavior: Flickable.StopAtBounds
    reuseItems: true
    Basic.ScrollBar.vertical: Basic.ScrollBar {}
    Accessible.role: Accessible.List
    Accessible.name: qsTr("Players")

    delegate: ListRow {
        id: row

        required property int index
        required property string book
        required property string name
        required property string ownScript
        required property string about
        required property bool fresh

        width: view.width
        detail: row.about
        text: row.ownScript.length > 0 ? row.name + "  " + row.ownScript : row.name
        iconName: row.fresh ? "plus" : "players"
        endText: row.fresh ? qsTr("new here") : ""
        Accessible.description: row.fresh ? qsTr("new here") + " " + row.about : row.about
        onClicked: view.chosen(row.index, row.book, row.name)
        Keys.onDownPressed: view.itemAtIndex(row.index + 1)?.forceActiveFocus(Qt.TabFocusReason)
        Keys.onUpPressed: view.itemAtIndex(row.index - 1)?.forceActiveFocus(Qt.TabFocusReason)
    }
}
