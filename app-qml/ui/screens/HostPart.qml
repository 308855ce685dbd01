pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// This tablet as host for others near it, where there is no event server.
ColumnLayout {
    id: part

    property bool reads: false

    objectName: "hosting"
    spacing: Theme.gap

    ChoiceBar {
        objectName: "share"
        Layout.fillWidth: true
        visible: !HostModel.on
        label: qsTr("What they get")
        value: HostModel.share
        options: (AppDevice.event.length > 0 ? [{ value: HostModel.Event, text: qsTr("This event") }] : [])
            .concat([{ value: HostModel.Players, text: qsTr("Chosen players") }, { value: HostModel.Nothing, text: qsTr("Nothing") }])
        onChosen: value => HostModel.share = value
    }
    Words {
        Layout.fillWidth: true
        quiet: true
        text: HostModel.share === HostModel.Event
            ? qsTr("%1 and its players; they work at it with this tablet, and both see what the other does.").arg(AppDevice.eventName)
                : HostModel.share === HostModel.Players ? qsTr("The players that are ticked here, and nobody else: they do not even learn of others.")
            : qsTr("Nothing: what they bring comes here, and they learn of nobody.")
    }
    PlayerPick {
        Layout.fillWidth: true
        visible: !HostModel.on && HostModel.share === HostModel.Players
        choice: HostModel.choice
    }
    CarryTrouble {
        objectName: "hostTrouble"
        Layout.fillWidth: true
        kind: Notice.Attention
        trouble: HostModel.trouble
    }
    ActionButton {
        objectName: "hostStart"
        Layout.fillWidth: true
        visible: !HostModel.on
        kind: ActionButton.Secondary
        enabled: HostModel.ready
        text: qsTr("Start")
        onClicked: HostModel.start()
    }
    Words {
        objectName: "hostAddress"
        Layout.fillWidth: true
        visible: HostModel.on
        meaning: Words.Strong
        text: qsTr("Others reach this tablet at %1").arg(HostModel.address)
    }
    Words {
        objectName: "hostShares"
        Layout.fillWidth: true
        visible: HostModel.on && HostModel.shared.length > 0
        text: qsTr("They get: %1").arg(HostModel.shared)
    }
    Repeater {
        model: HostModel.guests

        ListRow {
            required property var modelData
            required property int index
            objectName: "guest" + index
            Layout.fillWidth: true
            opens: false
            iconName: modelData.agreed ? "check" : "exchange"
            text: modelData.name
            endText: modelData.detail
        }
    }
    Words {
        objectName: "nobodyHere"
        Layout.fillWidth: true
        visible: HostModel.on && HostModel.guests.length === 0
        quiet: true
        text: HostModel.known.length > 0
            ? qsTr("Nobody is here yet. Without a code may come: %1").arg(Array.from(HostModel.known).join(", "))
            : qsTr("Nobody is here yet. Make a code; on the other tablet it is taken under Exchange, Pair.")
    }
    ChoiceBar {
        objectName: "reads"
        Layout.fillWidth: true
        visible: HostModel.on
        label: qsTr("The next tablet")
        value: part.reads
        options: [{ value: false, text: qsTr("Gets and brings") }, { value: true, text: qsTr("Only gets") }]
        onChosen: value => {
            part.reads = value;
            HostModel.endInvite();
        }
    }
    CodeShown {
        objectName: "hostCode"
        Layout.fillWidth: true
        visible: HostModel.inviteWords.length > 0
        whose: qsTr("Code of this tablet")
        rows: HostModel.inviteRows
        words: HostModel.inviteWords
        address: HostModel.address
        until: HostModel.inviteUntil
    }
    SideBySide {
        Layout.fillWidth: true
        visible: HostModel.on
        least: 200
        ActionButton {
            objectName: "hostInvite"
            width: parent.columnWidth
            text: qsTr("Make a code")
            onClicked: HostModel.invite(part.reads)
        }
        ActionButton {
            objectName: "hostStop"
            width: parent.columnWidth
            kind: ActionButton.Secondary
            text: qsTr("Stop")
            onClicked: HostModel.stop()
        }
    }
}
