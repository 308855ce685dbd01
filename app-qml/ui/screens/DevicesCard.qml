pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The tablets of the room, for its head: what each is called, what it may do, and how to shut one out.
Card {
    id: card

    // Asked when somebody looks: the list is the event server's.
    readonly property bool looks: visible && DevicesModel.manages
    onLooksChanged: if (looks) asks.restart()
    Component.onCompleted: if (looks) asks.restart()

    title: qsTr("Tablets of this room")
    detail: DevicesModel.manages ? qsTr("Touch one to give it another name or role, or to shut it out.")
                                 : qsTr("Needs a connection to the event server")
    spacing: 0

    Timer {
        id: asks
        interval: 0 // when the page stands
        onTriggered: DevicesModel.ask()
    }
    ProgressLine {
        Layout.fillWidth: true
        visible: DevicesModel.asking
        indeterminate: true
    }
    Notice {
        Layout.fillWidth: true
        Layout.bottomMargin: Theme.tight
        visible: DevicesModel.trouble.length > 0
        kind: Notice.Attention
        title: qsTr("That was not done")
        text: DevicesModel.trouble
    }
    Repeater {
        model: DevicesModel.devices

        ListRow {
            id: device
            required property var modelData
            readonly property bool out: device.modelData.revoked.length > 0
            Layout.fillWidth: true
            text: device.modelData.self ? qsTr("%1 (this tablet)").arg(device.modelData.name) : device.modelData.name
            detail: device.out ? qsTr("shut out since %1").arg(device.modelData.revoked)
                               : Listing.commas([words.title(device.modelData.role), qsTr("since %1").arg(device.modelData.since)])
            endText: device.modelData.late > 0 ? qsTr("%n entry(s) came later", "", device.modelData.late) : ""
            enabled: DevicesModel.manages
            onClicked: sheet.begin(device.modelData)
        }
    }
    RoleWords { id: words }
    DeviceSheet { id: sheet }
}
