import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// How far both sides are, and how long it will still take.
Card {
    id: card

    property bool waitsForList: false
    readonly property bool nothingToCount: ArrivalSteps.toCome === 0 && ArrivalSteps.toGo === 0

    title: ArrivalSteps.cut ? qsTr("Waits for the connection")
         : waitsForList && ExchangeModel.state === ExchangeModel.Agreed ? qsTr("This event has no entry list yet") : qsTr("Coming and going")
    detail: ArrivalSteps.secondsLeft > 0 ? timeWords(ArrivalSteps.secondsLeft)
          : waitsForList && ExchangeModel.state === ExchangeModel.Agreed
            ? qsTr("It comes by itself as soon as the room has one. You can go on without it and arrive once more later.")
          : qsTr("Players that are here can be used already; the app may be closed meanwhile.")

    function timeWords(seconds) {
        return seconds < 60 ? qsTr("About %n second(s) left", "", seconds) : qsTr("About %n minute(s) left", "", Math.ceil(seconds / 60));
    }

    ProgressLine {
        objectName: "coming"
        Layout.fillWidth: true
        visible: ArrivalSteps.toCome > 0
        text: qsTr("From the room to this tablet: books")
        detail: qsTr("%1 of %2").arg(ArrivalSteps.come).arg(ArrivalSteps.toCome)
        value: ArrivalSteps.toCome > 0 ? ArrivalSteps.come / ArrivalSteps.toCome : 0
    }
    ProgressLine {
        objectName: "going"
        Layout.fillWidth: true
        visible: ArrivalSteps.toGo > 0
        text: qsTr("From this tablet to the room: entries")
        detail: qsTr("%1 of %2").arg(ArrivalSteps.gone).arg(ArrivalSteps.toGo)
        value: ArrivalSteps.toGo > 0 ? ArrivalSteps.gone / ArrivalSteps.toGo : 0
    }
    ProgressLine {
        Layout.fillWidth: true
        visible: card.nothingToCount && !ArrivalSteps.cut && ExchangeModel.state !== ExchangeModel.Agreed
        text: qsTr("Finding out what either side lacks")
        indeterminate: visible
    }
}
