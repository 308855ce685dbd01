pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The entry list beside what this tablet knows: what either side gains, what the players agreed to, and each of them.
ColumnLayout {
    id: people

    readonly property var gains: ArrivalModel.gains
    readonly property var staying: ArrivalModel.staying
    readonly property var notAgreed: staying.filter(one => one.why === ArrivalModel.NotAgreed)

    function roomWords() {
        if (gains.roomPlayers === 0) return qsTr("Nobody is ticked that the room does not have: it gains nothing yet.");
        return Listing.dotted([qsTr("The room gains %n player(s)", "", gains.roomPlayers), qsTr("%n racket(s)", "", gains.roomRackets),
                               gains.roomFirst > 0 ? qsTr("%1 all new to it").arg(gains.roomFirst) : "",
                               gains.roomNewer > 0 ? qsTr("%1 with a newer last time").arg(gains.roomNewer) : ""]);
    }
    function hereWords() {
        if (gains.herePlayers === 0) return qsTr("The room had nothing of these players that was not here.");
        return Listing.dotted([qsTr("From the room came %n player(s)", "", gains.herePlayers), qsTr("%n racket(s)", "", gains.hereRackets),
                               gains.hereFirst > 0 ? qsTr("%1 all new here").arg(gains.hereFirst) : "",
                               gains.hereNewer > 0 ? qsTr("%1 with a newer last time").arg(gains.hereNewer) : ""]);
    }
    function consentWords(choice) {
        return [qsTr("never answered: may go, and are asked at their first drop-off"), qsTr("for this room only"),
                qsTr("to events that they enter"), qsTr("to any room"), ""][choice] ?? "";
    }

    spacing: Theme.room

    Card {
        objectName: "gains"
        Layout.fillWidth: true
        title: qsTr("What each side gains")
        detail: qsTr("Ticked players' histories go to the event server; it learns of nobody else.")

        IconLine {
            objectName: "roomGains"
            Layout.fillWidth: true
            iconName: "out"
            text: people.roomWords()
        }
        IconLine {
            objectName: "hereGains"
            Layout.fillWidth: true
            iconName: "in"
            text: people.hereWords()
        }
        Column {
            id: consents
            Layout.fillWidth: true
            visible: ArrivalModel.consents.length > 0
            spacing: Theme.gap
            Repeater {
                model: ArrivalModel.consents
                IconLine {
                    required property var modelData
                    width: consents.width
                    iconName: "check"
                    text: (modelData.choice === 0 ? "%1 × %2" : qsTr("%1 × agreed: %2")).arg(modelData.count).arg(people.consentWords(modelData.choice))
                }
            }
        }
        Notice {
            objectName: "notAgreed"
            Layout.fillWidth: true
            visible: people.notAgreed.length > 0
            kind: Notice.Attention
            title: qsTr("%n player(s) stay(s) here", "", people.notAgreed.length)
            text: qsTr("They have not agreed that their history goes to this room: %1. Ask them at the desk; their card there has the question.")
                .arg(people.notAgreed.slice(0, 8).map(one => one.name).join(", ") + (people.notAgreed.length > 8 ? " ..." : ""))
        }
    }
    Card {
        Layout.fillWidth: true
        title: qsTr("Entry list")
        detail: ArrivalModel.unanswered > 0 ? qsTr("%n to be answered: is it this one?", "", ArrivalModel.unanswered) : ""

        // Without counts, which change while it is laid out and would make its buttons anew; they stand above.
        ChoiceBar {
            objectName: "filter"
            Layout.fillWidth: true
            label: qsTr("Show")
            value: ArrivalModel.filter
            options: [{ value: ArrivalModel.All, text: qsTr("All") },
                      { value: ArrivalModel.OnlyKnown, text: qsTr("Known") },
                      { value: ArrivalModel.OnlyLikely, text: qsTr("To look at") },
                      { value: ArrivalModel.OnlyNew, text: qsTr("New") }]
            onChosen: value => ArrivalModel.filter = value
        }
        ActionButton {
            objectName: "tickKnown"
            Layout.fillWidth: true
            kind: ActionButton.Secondary
            enabled: ArrivalModel.known > 0
            text: qsTr("Tick all known players")
            onClicked: ArrivalModel.tickAllKnown()
        }
        // A positioner: rows that come and go must not be held by a layout.
        Column {
            id: rows
            Layout.fillWidth: true
            spacing: Theme.gap
            Repeater {
                model: ArrivalModel
                ArrivalRow { width: rows.width }
            }
        }
        ActionButton {
            objectName: "showMore"
            Layout.fillWidth: true
            visible: ArrivalModel.hidden > 0
            kind: ActionButton.Quiet
            text: qsTr("Show more; %n still hidden", "", ArrivalModel.hidden)
            onClicked: ArrivalModel.showMore()
        }
    }
}
