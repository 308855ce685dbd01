import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme

Card {
    title: "Notices"

    Notice { Layout.fillWidth: true; title: "Up to date"; text: "Both devices agree: heron, alder, slate." }
    Notice { Layout.fillWidth: true; kind: Notice.Attention; title: "Two answers"; text: "Mains 24 kg from the desk, 23.5 kg from tablet B."; actionText: "Look" }
    Notice { Layout.fillWidth: true; kind: Notice.Danger; title: "Crack at two o'clock"; text: "Do not string it. Ask the player, and follow the maker's instructions."; actionText: "Ask" }
    Notice { Layout.fillWidth: true; kind: Notice.Agreed; text: "Confirmed by the player at 10:42." }
    ActionButton {
        objectName: "showToast"
        text: "Do something"
        onClicked: toast.show("Racket 3 handed over")
    }
    UndoToast {
        id: toast
        objectName: "toast"
        Layout.fillWidth: true
        shown: true
        text: "Racket 2 handed over"
    }
    IconLine { Layout.fillWidth: true; iconName: "ready"; colour: Theme.colour.agreed; text: "Nothing waits to be sent." }
    IconLine { Layout.fillWidth: true; iconName: "out"; text: "A line of text with a drawing before it, long enough to go on below its first line on a small telephone" }
}
