pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// How this tablet and the event server bring each other up to date.
PageFrame {
    id: page

    title: qsTr("Exchange")
    detail: qsTr("Everything works without a network; here devices bring each other up to date.")
    widest: 820

    signal arrivalAsked()

    // Before the first event server pairing is what one comes here for.
    readonly property bool paired: ExchangeModel.hosts.length > 0
    // Afterwards it is asked for, and does not stand in the way.
    property bool pairsAgain: false

    // The network is asked only while somebody can see the answers.
    Binding {
        target: NearbyModel
        property: "looking"
        value: page.visible
    }
    ExchangeTrouble {
        Layout.fillWidth: true
        visible: kindOfTrouble !== ExchangeModel.NoTrouble
    }
    Notice {
        Layout.fillWidth: true
        visible: ExchangeModel.clockAhead !== 0
        kind: Notice.Attention
        title: qsTr("This tablet's clock or theirs is off by %1").arg(page.spanWords(Math.abs(ExchangeModel.clockAhead)))
        text: ExchangeModel.clockAhead > 0
            ? qsTr("The other clock is ahead. Look at both and set the wrong one; nothing is lost meanwhile.")
            : qsTr("This tablet's clock is ahead. Look at both and set the wrong one; nothing is lost meanwhile.")
    }
    Notice {
        Layout.fillWidth: true
        visible: ExchangeModel.fastClocks.length > 0
        kind: Notice.Attention
        title: qsTr("A clock far ahead: %1").arg(ExchangeModel.fastClocks)
        text: qsTr("What was written there carries a time to come. Everything is kept; set that device's clock before it is used again.")
    }
    Notice {
        Layout.fillWidth: true
        visible: ExchangeModel.atOdds
        kind: Notice.Attention
        title: qsTr("Some books could not be made equal")
        text: qsTr("One side may not hand them on, or holds them otherwise. Nothing is lost and everything else has crossed; compare those players at the desk.")
    }
    Card {
        id: arrival
        readonly property bool begun: ArrivalSteps.goingOn && ArrivalSteps.step !== ArrivalSteps.Meet
        Layout.fillWidth: true
        title: begun ? qsTr("An arrival is under way") : qsTr("Arriving at an event")
        detail: begun ? qsTr("It goes on where it stopped.")
                      : qsTr("Step by step: the event server, its entry list, who of it is known here, what goes across, and what came of it.")

        ActionButton {
            objectName: "arrive"
            Layout.fillWidth: true
            kind: arrival.begun || !page.paired ? ActionButton.Primary : ActionButton.Secondary
            text: arrival.begun ? qsTr("Go on with the arrival") : qsTr("Arrive")
            onClicked: {
                EventModel.showHosts();  // an arrival is at the server's event
                page.arrivalAsked();
            }
        }
    }
    ExchangeState { Layout.fillWidth: true }
    Notice {
        objectName: "otherEvent"
        Layout.fillWidth: true
        visible: EventModel.hosts.length > 0
        title: qsTr("This tablet shows %1").arg(AppDevice.eventName)
        text: qsTr("The event server’s is %1. Both are kept here; %2 does not go to the server.").arg(EventModel.hosts).arg(AppDevice.eventName)
        actionText: qsTr("Show %1").arg(EventModel.hosts)
        onActed: EventModel.showHosts()
    }
    MetCard {
        Layout.fillWidth: true
        visible: MetModel.host.length > 0
    }
    Card {
        Layout.fillWidth: true
        visible: ExchangeModel.copies.length > 0
        title: qsTr("Copied devices")
        detail: qsTr("The data of one device was copied, and both copies wrote on. The words of both are kept; where they differ, a question is open. Go on with one of them only.")

        Repeater {
            model: ExchangeModel.copies
            Words {
                required property var modelData
                Layout.fillWidth: true
                text: qsTr("%1: %n book(s)", "", modelData.books).arg(modelData.device)
            }
        }
    }
    NearCard {
        Layout.fillWidth: true
        onAddressPicked: address => {
            page.pairsAgain = page.paired;
            (page.paired ? later : first).takeAddress(address);
        }
    }
    PairCard {
        id: first
        Layout.fillWidth: true
        visible: !page.paired
        onPaired: page.flickable.contentY = 0
    }
    ActionButton {
        objectName: "pairAnother"
        Layout.fillWidth: true
        visible: page.paired && !page.pairsAgain
        kind: ActionButton.Quiet
        iconName: "plus"
        text: qsTr("Pair with another one")
        onClicked: page.pairsAgain = true
    }
    PairCard {
        id: later
        Layout.fillWidth: true
        visible: page.paired && page.pairsAgain
        onPaired: {
            page.pairsAgain = false;
            page.flickable.contentY = 0;
        }
    }
    OthersCard { Layout.fillWidth: true }
    CarryCard { Layout.fillWidth: true }
    HostsCard {
        Layout.fillWidth: true
        visible: ExchangeModel.hosts.length > 0
    }
    DevicesCard {
        Layout.fillWidth: true
        visible: ExchangeModel.role === ExchangeModel.Head
    }
    KeepCard {
        Layout.fillWidth: true
        visible: page.paired && (DevicesModel.setsRule || DevicesModel.keepDays >= 0)
    }
    Card {
        Layout.fillWidth: true
        visible: ExchangeModel.quarantined > 0
        title: qsTr("Set aside: %n entry(s)", "", ExchangeModel.quarantined)
        detail: qsTr("They came in but break a rule, so they are kept and not taken over. Show them to whoever looks after the event server.")

        Repeater {
            model: ExchangeModel.quarantine
            Words {
                required property var modelData
                Layout.fillWidth: true
                text: "%1 × %2 (%3)".arg(modelData.count).arg(modelData.reason).arg(modelData.at)
            }
        }
    }
    Item { Layout.fillHeight: true }

    function spanWords(minutes) {
        return minutes < 120 ? qsTr("%n minute(s)", "", minutes)
             : minutes < 2880 ? qsTr("%n hour(s)", "", Math.round(minutes / 60))
             : qsTr("%n day(s)", "", Math.round(minutes / 1440));
    }
}
