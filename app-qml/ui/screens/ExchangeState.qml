import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// With whom, how far, what waits, and the last agreement in words that both screens show.
Card {
    id: card

    readonly property int state: ExchangeModel.state
    readonly property bool bringing: state === ExchangeModel.Bringing
                                     && ExchangeModel.booksExpected > ExchangeModel.booksReceived

    filled: ExchangeModel.host.length > 0 || bringing || ExchangeModel.role !== ExchangeModel.NoRole
    title: ExchangeModel.host.length > 0 ? ExchangeModel.host : qsTr("No event server yet")
    detail: [qsTr("Work goes on without one. Pair when you arrive at an event."), qsTr("Pairing ..."),
             qsTr("Not connected; tried again in the background."), qsTr("Greeting ..."), qsTr("Connected, bringing each other up to date."),
             qsTr("Connected and up to date; changes cross at once.")][card.state]

    IconLine {
        Layout.fillWidth: true
        visible: ExchangeModel.role !== ExchangeModel.NoRole
        iconName: "players"
        text: qsTr("This tablet's role there: %1").arg(roleWords.title(ExchangeModel.role))
    }
    ProgressLine {
        objectName: "progress"
        Layout.fillWidth: true
        visible: card.bringing
        text: qsTr("Players coming in; those that are here can be used already")
        detail: qsTr("%1 of %2").arg(ExchangeModel.booksReceived).arg(ExchangeModel.booksExpected)
        value: ExchangeModel.booksExpected > 0 ? ExchangeModel.booksReceived / ExchangeModel.booksExpected : 0
    }
    IconLine {
        objectName: "waiting"
        Layout.fillWidth: true
        visible: ExchangeModel.host.length > 0
        iconName: ExchangeModel.waiting > 0 ? "out" : "ready"
        colour: ExchangeModel.waiting > 0 ? Theme.colour.attention : Theme.colour.agreed
        text: ExchangeModel.waiting === 0 ? qsTr("Nothing waits to be sent.")
            : ExchangeModel.moreWaiting ? qsTr("More than %n action(s) wait to be sent.", "", ExchangeModel.waiting)
            : qsTr("%n action(s) wait to be sent.", "", ExchangeModel.waiting)
    }
    IconLine {
        objectName: "stayHere"
        Layout.fillWidth: true
        visible: ExchangeModel.host.length > 0 && ExchangeModel.stayHere > 0
        iconName: "info"
        text: qsTr("%n player(s) stay on this tablet only. Whoever plays here is ticked under “Arrive”.", "", ExchangeModel.stayHere)
    }
    ColumnLayout {
        objectName: "agreement"
        visible: ExchangeModel.agreedWords.length > 0
        spacing: 2
        Words {
            Layout.fillWidth: true
            quiet: true
            text: qsTr("Last agreement: %1, over %n book(s). Both screens show the same words.", "", ExchangeModel.agreedBooks)
                .arg(ExchangeModel.agreedAt)
        }
        Words {
            Layout.fillWidth: true
            meaning: Words.Heading
            text: ExchangeModel.agreedWords
        }
    }
    RoleWords { id: roleWords }
}
