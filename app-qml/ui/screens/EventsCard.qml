pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The events that this tablet holds: which one every place shows, what it is called, and a new one.
Card {
    id: card

    title: qsTr("Event")
    detail: EventModel.events.length === 0 ? qsTr("There is no event yet")
          : EventModel.events.length === 1 ? "" : qsTr("Desk, room, bench, plan, money, stock and team show the one that is ticked. The others stay here as they are.")

    Repeater {
        model: EventModel.events
        ListRow {
            id: row
            required property var modelData
            required property int index
            objectName: "event" + index
            Layout.fillWidth: true
            opens: false
            chosen: modelData.shown
            text: modelData.name
            detail: Listing.dotted([modelData.detail, modelData.hosts ? qsTr("of the event server") : "",
                                    modelData.waiting > 0 ? qsTr("%n racket(s) here", "", modelData.waiting) : ""])
            onClicked: EventModel.show(modelData.id)
            Icon {
                visible: row.chosen
                name: "check"
                colour: Theme.colour.action
            }
        }
    }
    SideBySide {
        id: ways
        Layout.fillWidth: true
        least: 240

        ActionButton {
            objectName: "changeEvent"
            width: ways.columnWidth
            visible: EventModel.mayChange
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
