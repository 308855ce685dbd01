import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// Another tablet is let in: at the event server, by a head, or on this tablet. One at a time is shown, so that nobody takes one code for the other.
Card {
    id: card

    enum Where { AtServer, Here }
    readonly property bool head: ExchangeModel.role === ExchangeModel.Head
    property int picked: -1
    readonly property int where: !head ? OthersCard.Here : picked >= 0 ? picked : OthersCard.AtServer

    objectName: "others"
    title: qsTr("Let another tablet in")
    detail: card.where === OthersCard.AtServer
        ? qsTr("For a tablet that works in this room: it exchanges with the event server from then on, whether this tablet is here or not.")
        : qsTr("For a colleague, or where no event server can be reached: it exchanges with this very tablet, in one Wi-Fi and as long as this is on.")

    ChoiceBar {
        objectName: "letInWhere"
        Layout.fillWidth: true
        visible: card.head
        label: qsTr("Where it comes in")
        value: card.where
        options: [{ value: OthersCard.AtServer, text: qsTr("At the event server") }, { value: OthersCard.Here, text: qsTr("On this tablet") }]
        onChosen: value => card.picked = value
    }
    InvitePart {
        Layout.fillWidth: true
        visible: card.where === OthersCard.AtServer
    }
    HostPart {
        Layout.fillWidth: true
        visible: card.where === OthersCard.Here
    }
    Words {
        objectName: "alsoHere"
        Layout.fillWidth: true
        visible: card.where === OthersCard.AtServer && HostModel.on
        quiet: true
        text: qsTr("This tablet lets others in as well, at %1.").arg(HostModel.address)
    }
}
