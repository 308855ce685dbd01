import QtQuick
import QtQuick.Layouts
import Weavelog.Parts

Card {
    id: card
    title: "Places"

    property string current: "room"
    readonly property var places: [
        { key: "desk", text: "Desk", icon: "desk", waiting: 3 }, { key: "room", text: "Room", icon: "room" },
        { key: "bench", text: "Bench", icon: "bench" }, { key: "players", text: "Players", icon: "players" },
        { key: "questions", text: "Questions", icon: "question", waiting: 120 },
        { key: "exchange", text: "Exchange", icon: "exchange" }, { key: "settings", text: "Settings", icon: "settings" }
    ]

    PlaceBar {
        Layout.fillWidth: true
        places: card.places
        current: card.current
        onPicked: key => card.current = key
    }
    PlaceRail {
        Layout.preferredHeight: 640
        places: card.places
        current: card.current
        onPicked: key => card.current = key
    }
}
