pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// The events that this tablet holds: which one every place shows, what it is called, and a new one. However many there are and whoever may change
// them, what is below stays where it is.
Card {
    id: card

    title: qsTr("Event")

    PickList {
        objectName: "events"
        Layout.fillWidth: true
        label: qsTr("Which one is shown")
        enabled: EventModel.events.length > 0
        placeholder: enabled ? qsTr("Choose") : qsTr("There is no event yet")
        hint: qsTr("Desk, room, bench, plan, money, stock and team show this one. The others stay here as they are.")
        options: Array.from(EventModel.events).map(event => ({
            value: event.id, text: event.name,
            detail: Listing.dotted([event.detail, event.hosts ? qsTr("of the event server") : "",
                                    event.waiting > 0 ? qsTr("%n racket(s) here", "", event.waiting) : ""]) }))
        value: Array.from(EventModel.events).find(event => event.shown)?.id
        onPicked: value => EventModel.show(value)
    }
    SideBySide {
        id: ways
        Layout.fillWidth: true
        least: 240

        ActionButton {
            objectName: "changeEvent"
            width: ways.columnWidth
            enabled: EventModel.mayChange
            kind: ActionButton.Secondary
            text: qsTr("Change name and days")
            onClicked: EventModel.ask(true)
        }
        ActionButton {
            objectName: "newEvent"
            width: ways.columnWidth
            kind: EventModel.events.length === 0 ? ActionButton.Primary : ActionButton.Quiet
            iconName: "plus"
            text: qsTr("Make an event")
            onClicked: EventModel.ask()
        }
    }
}
