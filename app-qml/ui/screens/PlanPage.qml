pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// What the head of the room looks ahead with: the draw, and whose rackets go to whom.
FocusScope {
    id: page

    readonly property string view: DrawModel.view
    readonly property int margin: width < Theme.phoneWidth ? Theme.gap + 4 : Theme.page

    Binding { target: DrawModel; property: "watched"; value: page.visible && page.view === "draw" }
    Binding { target: BenchesModel; property: "watched"; value: page.visible && page.view === "benches" }
    Binding { target: DayModel; property: "watched"; value: page.visible && page.view === "day" }
    Binding { target: ForecastModel; property: "watched"; value: page.visible && page.view === "forecast" }

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
            Layout.maximumWidth: 720
            value: page.view
            options: [{ value: "draw", text: qsTr("Draw") }, { value: "benches", text: qsTr("Home benches") }, { value: "day", text: qsTr("Day") },
                      { value: "forecast", text: qsTr("To come") }]
            Accessible.name: qsTr("What is shown")
            onChosen: value => DrawModel.view = value
        }
    }
    Item {
        anchors.top: head.bottom
        anchors.topMargin: Theme.gap
        anchors.bottom: parent.bottom
        width: parent.width

        NoEvent {
            anchors.centerIn: parent
            width: Math.min(parent.width - 2 * page.margin, 460)
            visible: !TeamModel.hasEvent
            iconName: "plan"
            brings: qsTr("Pair with an event server under Exchange; its draws come here by themselves.")
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
        DayView {
            anchors.fill: parent
            visible: TeamModel.hasEvent && page.view === "day"
            margin: page.margin
        }
        ForecastView {
            anchors.fill: parent
            visible: TeamModel.hasEvent && page.view === "forecast"
            margin: page.margin
        }
    }
}
