pragma ComponentBehavior: Bound
import QtQuick
import Weavelog.View

// Where devices bring each other up to date: the overview, or the arrival at an event, step by step. One that was interrupted goes on.
FocusScope {
    id: place

    property bool arriving: ArrivalSteps.goingOn && ArrivalSteps.step > ArrivalSteps.Meet && ArrivalSteps.step < ArrivalSteps.Account

    readonly property var shown: pages.item
    readonly property real footHeight: shown?.footHeight ?? 0

    // By its file: Qt 6.4 makes no bound component here.
    Loader {
        id: pages
        anchors.fill: parent
        focus: true
        source: place.arriving ? "ArrivalPage.qml" : "ExchangeOverview.qml"
        onLoaded: if (place.activeFocus) (item as Item).forceActiveFocus(Qt.OtherFocusReason)
    }
    Connections {
        target: pages.item
        ignoreUnknownSignals: true
        function onArrivalAsked() { place.arriving = true; }
        function onLeaving() { place.arriving = false; }
    }
}
