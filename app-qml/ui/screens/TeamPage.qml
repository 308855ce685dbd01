pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// What the room itself needs: its people, its machines, its lists, its numbers, how even its work is.
FocusScope {
    id: page

    readonly property string view: TeamModel.view
    readonly property int margin: width < Theme.phoneWidth ? Theme.gap + 4 : Theme.page

    Binding { target: NumbersModel; property: "watched"; value: page.visible && page.view === "numbers" }
    Binding { target: QualityModel; property: "watched"; value: page.visible && page.view === "evenness" }

    ColumnLayout {
        id: head
        x: page.margin
        y: page.margin
        width: page.width - 2 * page.margin
        spacing: Theme.gap

        Words { Layout.fillWidth: true; meaning: Words.Heading; text: qsTr("Team") }
        ChoiceBar {
            objectName: "teamView"
            Layout.fillWidth: true
            Layout.maximumWidth: 960
            value: page.view
            options: [{ value: "people", text: qsTr("People") }, { value: "machines", text: qsTr("Machines") },
                      { value: "lists", text: qsTr("Lists") }, { value: "numbers", text: qsTr("Numbers") },
                      { value: "evenness", text: qsTr("Evenness") }]
            Accessible.name: qsTr("What is shown")
            onChosen: value => TeamModel.view = value
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
            iconName: "players"
            brings: qsTr("Pair with an event server under Exchange; its team and machines come here by themselves.")
        }
        TeamView {
            anchors.fill: parent
            visible: TeamModel.hasEvent && page.view === "people"
            margin: page.margin
            onMemberAsked: member => memberSheet.begin(member)
            onShiftAsked: shiftSheet.begin()
        }
        MachinesView {
            anchors.fill: parent
            visible: TeamModel.hasEvent && page.view === "machines"
            margin: page.margin
            onAddAsked: machineSheet.begin()
            onCareAsked: machine => careSheet.begin(machine)
        }
        ListsView {
            anchors.fill: parent
            visible: TeamModel.hasEvent && page.view === "lists"
            margin: page.margin
            onAddAsked: stepSheet.begin(null)
            onStepAsked: step => stepSheet.begin(step)
        }
        NumbersView {
            anchors.fill: parent
            visible: TeamModel.hasEvent && page.view === "numbers"
            margin: page.margin
        }
        QualityView {
            anchors.fill: parent
            visible: TeamModel.hasEvent && page.view === "evenness"
            margin: page.margin
            onCareAsked: machine => careSheet.begin(machine)
        }
    }
    MemberSheet { id: memberSheet }
    ShiftSheet { id: shiftSheet }
    MachineSheet { id: machineSheet }
    StepSheet { id: stepSheet }
    MachineCareSheet { id: careSheet }
}
