pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The first step of an arrival: the event server is near, its code is scanned, or its words are typed; or it is one that is known.
ColumnLayout {
    id: meet

    spacing: Theme.room

    Card {
        objectName: "knownServer"
        Layout.fillWidth: true
        visible: ExchangeModel.hosts.length > 0
        title: qsTr("Met before")
        detail: qsTr("Paired already: it only has to be met again.")

        Repeater {
            model: ExchangeModel.hosts

            ListRow {
                required property var modelData
                required property int index
                objectName: "arriveAt" + index
                Layout.fillWidth: true
                iconName: "exchange"
                text: modelData.name
                detail: modelData.address
                onClicked: {
                    if (ExchangeModel.state < ExchangeModel.Greeting || !modelData.chosen) ExchangeModel.chooseHost(modelData.key);
                    ArrivalSteps.begin();
                }
            }
        }
    }
    NearCard {
        Layout.fillWidth: true
        onAddressPicked: address => pairing.takeAddress(address)
    }
    PairCard {
        id: pairing
        Layout.fillWidth: true
    }
    Words {
        objectName: "pairingNow"
        Layout.fillWidth: true
        visible: ExchangeModel.state === ExchangeModel.Pairing
        text: qsTr("Pairing ...")
    }
    ActionButton {
        objectName: "scanCode"
        Layout.fillWidth: true
        visible: CameraModel.present
        kind: ActionButton.Secondary
        iconName: "camera"
        text: qsTr("Scan the code with the camera")
        onClicked: CameraModel.on = true
    }
}
