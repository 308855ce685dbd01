pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// Event servers and tablets that let others in and answer on this network: with one that is known the exchange begins, of another one its address
// is taken for pairing.
Card {
    id: card

    // Somebody wants to pair with whoever is there.
    signal addressPicked(string address)

    objectName: "near"
    title: qsTr("Near here")
    detail: qsTr("Event servers, and tablets that let others in, on this network. Only pairing proves who they are.")

    Repeater {
        model: NearbyModel

        ListRow {
            id: server
            required property int index
            required property string name
            required property string event
            required property string address
            required property int standing
            required property string serverKey

            objectName: "near" + index
            Layout.fillWidth: true
            iconName: "exchange"
            text: name
            detail: Listing.dotted([event, address])
            endText: standing === NearbyModel.Connected ? qsTr("Connected")
                   : standing === NearbyModel.Paired ? qsTr("Paired") : qsTr("Not paired yet")
            chosen: standing === NearbyModel.Connected
            opens: standing !== NearbyModel.Connected
            onClicked: {
                if (standing === NearbyModel.NotPaired) card.addressPicked(address);
                else ExchangeModel.meet(serverKey, address);
            }
        }
    }
    ColumnLayout {
        objectName: "nobodyNear"
        Layout.fillWidth: true
        visible: NearbyModel.count === 0
        spacing: 2

        Words {
            Layout.fillWidth: true
            meaning: Words.Strong
            text: NearbyModel.settled ? qsTr("Nobody answers here.") : qsTr("Looking ...")
        }
        Words {
            Layout.fillWidth: true
            quiet: true
            text: qsTr("Join the Wi-Fi that the other one is in, and wait a moment; or type its address below. The code comes from its screen or from the head of the room.")
        }
    }
}
