pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The end of an arrival: what came, what went, what stayed and why, what needs an answer, and the words that both sides show.
ColumnLayout {
    id: account

    readonly property var staying: ArrivalModel.staying
    function stayed(why) { return staying.filter(one => one.why === why); }
    function names(list) { return list.slice(0, 8).map(one => one.name).join(", ") + (list.length > 8 ? " ..." : ""); }

    spacing: Theme.room

    Card {
        objectName: "moved"
        Layout.fillWidth: true
        title: qsTr("Came and went")

        SumRow {
            objectName: "playersCame"
            Layout.fillWidth: true
            text: qsTr("Players who were not here before")
            amount: ArrivalSteps.playersCame
        }
        SumRow {
            Layout.fillWidth: true
            text: qsTr("Rackets that came")
            amount: ArrivalSteps.racketsCame
        }
        SumRow {
            objectName: "playersWent"
            Layout.fillWidth: true
            text: qsTr("Players who went to the room")
            amount: ArrivalSteps.playersWent
        }
        SumRow {
            Layout.fillWidth: true
            text: qsTr("Rackets that went")
            amount: ArrivalSteps.racketsWent
        }
    }
    Card {
        objectName: "stayed"
        Layout.fillWidth: true
        title: account.staying.length > 0 ? qsTr("Stayed here: %n player(s) of the list", "", account.staying.length) : qsTr("Nobody of the list stayed behind")
        detail: qsTr("Everybody else on this tablet stayed too; the event server does not learn of them.")
        filled: account.staying.length > 0

        Repeater {
            model: [{ why: ArrivalModel.NotAgreed, text: qsTr("Have not agreed to it: %1"), icon: "question" },
                    { why: ArrivalModel.NotAnswered, text: qsTr("Nobody said whether it is them: %1"), icon: "question" },
                    { why: ArrivalModel.NotTicked, text: qsTr("Were not ticked: %1"), icon: "minus" }]
            IconLine {
                required property var modelData
                readonly property var list: account.stayed(modelData.why)
                Layout.fillWidth: true
                visible: list.length > 0
                iconName: modelData.icon
                text: modelData.text.arg(account.names(list))
            }
        }
    }
    Notice {
        objectName: "needsAnswer"
        Layout.fillWidth: true
        visible: QuestionsModel.count > 0
        kind: Notice.Attention
        title: qsTr("%n question(s) need(s) an answer", "", QuestionsModel.count)
        text: qsTr("Where two rooms gave different answers both stand, until the player is asked.")
        actionText: qsTr("Questions")
        onActed: ArrivalSteps.questionsAsked()
    }
    Notice {
        Layout.fillWidth: true
        visible: ExchangeModel.quarantined > 0
        kind: Notice.Attention
        title: qsTr("Set aside: %n entry(s)", "", ExchangeModel.quarantined)
        text: qsTr("They broke a rule and were not taken over; the exchange shows them.")
    }
    Notice {
        objectName: "sameWords"
        Layout.fillWidth: true
        visible: !ExchangeModel.atOdds && ExchangeModel.agreedWords.length > 0
        kind: Notice.Agreed
        title: ExchangeModel.agreedWords
        text: qsTr("Both hold the same, over %n book(s). The other side tells the same words: compare them.", "", ExchangeModel.agreedBooks)
    }
    Notice {
        objectName: "odds"
        Layout.fillWidth: true
        visible: ExchangeModel.atOdds
        kind: Notice.Attention
        title: qsTr("Some books could not be made equal")
        text: qsTr("One side may not hand them on, or holds them otherwise. Nothing is lost and everything else has crossed; compare those players at the desk.")
    }
}
