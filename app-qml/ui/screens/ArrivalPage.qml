pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Arriving at an event, one step below the other. Only the step that one is at is open; what is done stays as a line.
FocusScope {
    id: page

    signal leaving()

    readonly property real footHeight: strip.height
    readonly property int step: ArrivalSteps.step
    readonly property bool bringing: step === ArrivalSteps.Across || step === ArrivalSteps.List

    function standing(of) {
        return step === of ? ArrivalStepHead.Now : step > of ? ArrivalStepHead.Done : ArrivalStepHead.Later;
    }
    // What one is at comes into sight, not the steps that are done.
    function toStep() {
        const column = frame.flickable;
        const at = [meetHead, listHead, peopleHead, acrossHead, accountHead][page.step];
        const y = at ? at.mapToItem(column.contentItem, 0, 0).y - frame.margin : 0;
        column.contentY = Math.max(0, Math.min(y, column.contentHeight - column.height));
    }
    onStepChanged: settled.restart()
    Timer {
        id: settled
        interval: 50 // when the step stands in its place
        onTriggered: if (page.step > ArrivalSteps.List) page.toStep(); else frame.flickable.contentY = 0
    }

    Binding {
        target: ArrivalModel
        property: "looking"
        value: page.visible
    }
    Binding {
        target: NearbyModel
        property: "looking"
        value: page.visible && page.step === ArrivalSteps.Meet
    }
    PageFrame {
        id: frame
        anchors.top: parent.top
        anchors.bottom: strip.top
        anchors.bottomMargin: ToastRoom.height
        width: parent.width
        widest: 820
        title: qsTr("Arriving at an event")
        detail: Listing.dotted([page.step > ArrivalSteps.Meet ? AppDevice.eventName : "", page.step > ArrivalSteps.Meet ? ExchangeModel.host : ""])

        ExchangeTrouble {
            objectName: "trouble"
            Layout.fillWidth: true
            visible: kindOfTrouble !== ExchangeModel.NoTrouble
        }
        Notice {
            objectName: "cut"
            Layout.fillWidth: true
            visible: ArrivalSteps.cut && ExchangeModel.trouble === ExchangeModel.NoTrouble
            kind: Notice.Attention
            title: qsTr("Not connected just now")
            text: qsTr("Nothing is lost: everything goes on by itself where it stopped, also after the app was closed.")
        }

        ArrivalStepHead {
            id: meetHead
            Layout.fillWidth: true
            number: 1
            title: qsTr("Meet the event server")
            standing: page.standing(ArrivalSteps.Meet)
            summary: page.step > ArrivalSteps.Meet ? Listing.commas([ExchangeModel.host, ExchangeModel.role !== ExchangeModel.NoRole
                                                                     ? roleWords.title(ExchangeModel.role) : ""]) : ""
        }
        ArrivalMeet {
            Layout.fillWidth: true
            visible: page.step === ArrivalSteps.Meet
        }
        ArrivalStepHead {
            id: listHead
            Layout.fillWidth: true
            number: 2
            title: qsTr("The entry list comes over")
            standing: page.standing(ArrivalSteps.List)
            summary: ArrivalModel.count > 0 && page.step > ArrivalSteps.Meet ? qsTr("%n entry(s)", "", ArrivalModel.count) : ""
        }
        ArrivalProgress {
            Layout.fillWidth: true
            visible: page.step === ArrivalSteps.List
            waitsForList: true
        }
        ArrivalStepHead {
            id: peopleHead
            Layout.fillWidth: true
            number: 3
            title: qsTr("Who of it is known here, and what each side gains")
            standing: page.standing(ArrivalSteps.People)
            summary: page.step >= ArrivalSteps.People ? qsTr("%1 known, %2 to be looked at, %3 new")
                .arg(ArrivalModel.known).arg(ArrivalModel.likely).arg(ArrivalModel.fresh) : ""
        }
        ArrivalPeople {
            Layout.fillWidth: true
            visible: page.step === ArrivalSteps.People
        }
        ArrivalStepHead {
            id: acrossHead
            Layout.fillWidth: true
            number: 4
            title: qsTr("Both bring each other up to date")
            standing: page.standing(ArrivalSteps.Across)
        }
        ArrivalProgress {
            Layout.fillWidth: true
            visible: page.step === ArrivalSteps.Across
        }
        ArrivalStepHead {
            id: accountHead
            Layout.fillWidth: true
            number: 5
            title: qsTr("What came of it")
            standing: page.standing(ArrivalSteps.Account)
        }
        ArrivalAccount {
            Layout.fillWidth: true
            visible: page.step === ArrivalSteps.Account
        }
        Item { Layout.fillHeight: true }
    }
    ActionStrip {
        id: strip
        anchors.bottom: parent.bottom
        width: parent.width
        widest: 820

        IconAction {
            objectName: "leaveArrival"
            Layout.preferredWidth: Theme.mainTouch
            Layout.preferredHeight: Theme.mainTouch
            iconName: "back"
            text: qsTr("Back to the exchange")
            framed: true
            onClicked: page.leaving()
        }
        ActionButton {
            objectName: "lookAgain"
            Layout.fillWidth: true
            Layout.preferredWidth: 3
            visible: page.step === ArrivalSteps.Account
            kind: ActionButton.Secondary
            text: qsTr("Look at the players again")
            onClicked: ArrivalSteps.lookAgain()
        }
        ActionButton {
            objectName: "send"
            Layout.fillWidth: true
            visible: page.step === ArrivalSteps.People
            kind: ArrivalModel.ticked > 0 ? ActionButton.Primary : ActionButton.Secondary
            text: ArrivalModel.ticked > 0 ? qsTr("Send %n player(s)", "", ArrivalModel.ticked) : qsTr("Go on, nobody is ticked")
            onClicked: ArrivalSteps.goOn(ArrivalModel)
        }
        ActionButton {
            objectName: "withoutList"
            Layout.fillWidth: true
            visible: page.step === ArrivalSteps.List
            kind: ActionButton.Secondary
            text: qsTr("Go on without an entry list")
            onClicked: ArrivalSteps.goOn(ArrivalModel)
        }
        ActionButton {
            objectName: "finishArrival"
            Layout.fillWidth: true
            Layout.preferredWidth: 2
            visible: page.step === ArrivalSteps.Account
            text: qsTr("Done")
            onClicked: {
                ArrivalSteps.finish();
                page.leaving();
            }
        }
        Item {
            Layout.fillWidth: true
            visible: page.step === ArrivalSteps.Meet || page.step === ArrivalSteps.Across
        }
    }
    RoleWords { id: roleWords }
}
