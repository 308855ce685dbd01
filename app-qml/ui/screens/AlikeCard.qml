pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// A new player is being written down who may be one that is known: who was written beside who is here, and one tap takes the known one.
Card {
    id: card

    required property KnownAlike alike
    readonly property var person: DeskModel.draft.person

    objectName: "alike"
    title: alike.known ? qsTr("This player is known here") : qsTr("Is it one of these players?")
    detail: qsTr("Written down: %1").arg(Listing.dotted([
        Listing.said([person["family_name"], person["given_name"]]).join(" "), person["native_name"], person["country"]]))

    Column {
        id: people
        Layout.fillWidth: true
        spacing: Theme.tight
        Repeater {
            model: card.alike.people

            CandidateRow {
                required property var modelData
                required property int index
                objectName: "alike" + index
                width: people.width
                candidate: modelData
                onClicked: DeskModel.takeKnown(modelData.book)
            }
        }
    }
    ActionButton {
        objectName: "someoneElse"
        Layout.fillWidth: true
        kind: ActionButton.Quiet
        text: qsTr("None of these: somebody else")
        onClicked: card.alike.someoneElse()
    }
}
