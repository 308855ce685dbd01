pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// What the head of the room looks ahead with: the draw, and whose rackets go to whom.
FocusScope {
    id: page

    readonly property string view: BenchesModel.shown ? "benches" : "draw"
    readonly property int margin: width < Theme.phoneWidth ? Theme.gap + 4 : Theme.page

    Binding { target: BenchesModel; property: "watched"; value: page.visible && page.view === "benches" }

    ColumnLayout {
        id: head
        x: page.margin
        y: page.margin
        width: page.width - 2 * page.margin
        spacing: Theme.gap

        Words { Layout.fillWidth: true; meaning: Words.Heading; text: qsTr("Plan") }
        ChoiceBar {
            objectName: "planView"
            Layout.fillWidth: true
            Layout.maximumWidth: 420
            value: page.view
            options: [{ value: "draw", text: qsTr("Draw") }, { value: "benches", text: qsTr("Home benches") }]
            Accessible.name: qsTr("What is shown")
            onChosen: value => BenchesModel.shown = value === "benches"
        }
    }
    Item {
        anchors.top: head.bottom
        anchors.topMargin: Theme.gap
        anchors.bottom: parent.bottom
        width: parent.width

        EmptyState {
            anchors.centerIn: parent
            width: Math.min(parent.width - 2 * page.margin, 460)
            visible: !TeamModel.hasEvent
            iconName: "plan"
            title: qsTr("There is no event yet")
            text: qsTr("Pair with an event server under Exchange; its draws come here by themselves.")
        }
        DrawView {
            anchors.fill: parent
            visible: TeamModel.hasEvent && page.view === "draw"
            margin: page.margin
        }
        BenchesView {
            anchors.fill: parent
            visible: TeamModel.hasEvent && page.view === "benches"
            margin: page.margin
        }
    }
}
