import QtQuick
import Weavelog.Parts
import Weavelog.View

// What went wrong with an exchange and what to do about it.
Notice {
    id: trouble

    property int kindOfTrouble: ExchangeModel.trouble
    property string inItsWords: ExchangeModel.troubleDetail

    readonly property var titles: [
        "", qsTr("The other side is out of reach"), qsTr("The other side shows another certificate"),
        qsTr("The other side does not know this tablet"), qsTr("The code does not hold"), qsTr("The code has expired"),
        qsTr("The other side refuses this tablet"), qsTr("The other side speaks a newer protocol"),
        qsTr("A clock is too far off"), qsTr("This tablet's disk is full"), qsTr("The exchange has stopped")
    ]
    readonly property var doings: [
        "", qsTr("Work goes on; this tablet tries again by itself. Are both in one network, and is the address right?"),
        qsTr("It is not the one this tablet was paired with, or it was set up anew. Ask the head of the room, and pair again only if that is so."),
        qsTr("Ask for a new code and pair again. Nothing on this tablet is lost."),
        qsTr("Compare it with the other screen word by word, or ask for a new one."),
        qsTr("Ask for a new one: a code is good for fifteen minutes and for one tablet."),
        qsTr("Ask the head of the room: this tablet may have been taken off the list, or the code was used already."),
        qsTr("Update Weavelog on the older device. Work goes on until then."),
        qsTr("Set the clock of this tablet, and have a look at the other one."),
        qsTr("Make room; nothing that was confirmed is lost. Then try again."),
        qsTr("Try again; if it stays, show the line below to whoever looks after the tablets.")
    ]

    kind: kindOfTrouble === ExchangeModel.Unreachable ? Notice.Attention : Notice.Danger
    title: titles[kindOfTrouble] ?? ""
    // The program's own words only where ours do not say all.
    readonly property bool needsMore: kindOfTrouble === ExchangeModel.Refused || kindOfTrouble === ExchangeModel.Other
    text: needsMore && inItsWords.length > 0 ? doings[kindOfTrouble] + "\n" + inItsWords : doings[kindOfTrouble] ?? ""
    actionText: qsTr("Try now")
    onActed: ExchangeModel.tryNow()
}
