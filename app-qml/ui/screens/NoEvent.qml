import Weavelog.Parts
import Weavelog.View

// A place that shows an event, while there is none: where one comes from.
EmptyState {
    property string brings  // what a server's event would bring

    title: qsTr("There is no event yet")
    text: brings + " " + qsTr("Or work alone, with no network.")
    actionText: qsTr("Work on your own: make an event")
    onActed: EventModel.ask()
}
