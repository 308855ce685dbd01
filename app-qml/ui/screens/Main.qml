pragma ComponentBehavior: Bound
import QtQuick
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The window of the app: the places at the side or at the bottom, and the page of the place one is in. A place
// keeps its page, and what is on it, while one is elsewhere.
Window {
    id: window

    property string startPlace: "desk"
    // A page to begin with: see DeskModel.open() and MoneyPlace.open().
    property string startPage
    property string place: startPlace
    readonly property bool narrow: width < Theme.phoneWidth
    readonly property var places: [
        { key: "desk", text: qsTr("Desk"), icon: "desk", page: "DeskPage.qml" },
        { key: "room", text: qsTr("Room"), icon: "room", page: "RoomPage.qml" },
        { key: "bench", text: qsTr("Bench"), icon: "bench", page: "BenchPage.qml" },
        { key: "players", text: qsTr("Players"), icon: "players", page: "PlayersPage.qml" },
        { key: "plan", text: qsTr("Plan"), icon: "plan", page: "PlanPage.qml" },
        { key: "money", text: qsTr("Money"), icon: "money", page: "MoneyPage.qml" },
        { key: "stock", text: qsTr("Stock"), icon: "stock", page: "StockPage.qml" },
        { key: "team", text: qsTr("Team"), icon: "team", page: "TeamPage.qml" },
        { key: "questions", text: qsTr("Questions"), icon: "question", page: "QuestionsPage.qml" },
        { key: "exchange", text: qsTr("Exchange"), icon: "exchange", page: "ExchangePage.qml" },
        { key: "settings", text: qsTr("Settings"), icon: "settings", page: "SettingsPage.qml" }
    ]

    // The same with what waits in a place; the pages are not made anew when that changes.
    readonly property int openQuestions: AppDevice.open ? QuestionsModel.count : 0
    readonly property var shownPlaces: places.map(
        one => one.key === "questions" ? Object.assign({ waiting: openQuestions }, one) : one)

    // How high the steps are that the shown page keeps at its foot.
    property var shownPage: null
    readonly property real foot: shownPage?.footHeight ?? 0

    function go(key) {
        place = key;
        const loader = pages.itemAt(places.findIndex(one => one.key === key));
        loader.show();
        shownPage = loader.item;
    }

    function playersBegin() {
        go("players");
        const at = startPage.indexOf(":");
        const page = pages.itemAt(places.findIndex(one => one.key === "players")) as Loader;
        (page.item as PlayersPage).begin(startPage.slice(0, at), startPage.slice(at + 1));
    }

    width: 1280
    height: 800
    minimumWidth: 320
    minimumHeight: 480
    visible: true
    title: qsTr("Weavelog")
    color: Theme.colour.ground
    Component.onCompleted: {
        if (!AppDevice.open) return;
        go(place);
        if (startPage.startsWith("inspect:")) InspectionModel.showFirst(startPage.slice(8));
        else if (startPage.startsWith("bed:")) BedModel.showFirst(startPage.slice(4));
        else if (/^(card|record|cards|past-jobs):/.test(startPage)) playersBegin();
        else if (startPage.startsWith("take-card:")) {
            TakeCardModel.ask();
            if (startPage.length > 10) TakeCardModel.takePicture(Qt.resolvedUrl("file:" + startPage.slice(10)));
        }
        else if (startPage === "camera:") CameraModel.on = true;
        else if (startPage === "benches:" || startPage === "forecast:") DrawModel.view = startPage.slice(0, -1);
        else if (startPage === "schedule:") DrawModel.view = "day";
        else if (startPage === "check:" || startPage === "stencils:") CheckModel.showFirst(startPage === "stencils:");
        else if (startPage.length > 0 && !MoneyPlace.open(startPage) && !TeamModel.open(startPage)) DeskModel.open(startPage);
    }

    Item {
        anchors.fill: parent
        LayoutMirroring.enabled: Theme.rightToLeft
        LayoutMirroring.childrenInherit: true

        PlaceRail {
            id: rail
            anchors.left: parent.left
            width: visible ? implicitWidth : 0
            height: parent.height
            visible: !window.narrow && AppDevice.open
            places: window.shownPlaces
            current: window.place
            onPicked: key => window.go(key)
        }
        Item {
            anchors.left: rail.right
            anchors.right: parent.right
            anchors.top: parent.top
            anchors.bottom: bar.top
            // A page with steps at its foot makes room above them, so that they do not move under the finger.
            anchors.bottomMargin: window.foot > 0 ? 0 : ToastRoom.height

            Repeater {
                id: pages
                model: window.places.map(one => one.key)

                Loader {
                    id: loader
                    required property string modelData
                    required property int index

                    // The page is made the first time that its place is entered.
                    function show() {
                        if (status === Loader.Null) source = window.places[loader.index].page;
                        item.forceActiveFocus(Qt.OtherFocusReason);
                    }

                    anchors.fill: parent
                    visible: window.place === loader.modelData
                }
            }
        }
        Loader {
            anchors.fill: parent
            active: !AppDevice.open
            source: "FaultPage.qml"
        }
        Loader {
            // The next steps of a page stay free.
            anchors.bottom: bar.top
            anchors.bottomMargin: window.foot
            anchors.left: rail.right
            anchors.right: parent.right
            active: AppDevice.open
            source: "DoingsBar.qml"
        }
        Loader {
            // By its file: Qt 6.4 makes no bound component here.
            Component.onCompleted: if (AppDevice.open) setSource("ScanDoings.qml", { place: Qt.binding(() => window.place) })
            onLoaded: (item as ScanDoings).playerAsked.connect(book => {
                PlayersPlace.card.show(book);
                window.go("players");
            })
        }
        Loader {
            id: inspection
            active: false
            source: "InspectionSheet.qml"
            onLoaded: (item as InspectionSheet).open()

            Connections {
                target: AppDevice.open ? InspectionModel : null
                function onAsked() {
                    if (inspection.item) (inspection.item as InspectionSheet).open();
                    else inspection.active = true;
                }
            }
        }
        Loader {
            id: bed
            active: false
            source: "StringBedSheet.qml"
            onLoaded: (item as StringBedSheet).open()

            Connections {
                target: AppDevice.open ? BedModel : null
                function onAsked() {
                    if (bed.item) (bed.item as StringBedSheet).open();
                    else bed.active = true;
                }
            }
        }
        Loader {
            id: check
            active: false
            source: "CheckSheet.qml"
            onLoaded: (item as CheckSheet).open()
        }
        Loader {
            id: stencils
            active: false
            source: "StencilSheet.qml"
            onLoaded: (item as StencilSheet).open()
        }
        Loader {
            id: eventSheet
            property bool changes: false
            active: false
            source: "EventSheet.qml"
            onLoaded: (item as EventSheet).begin(changes)

            Connections {
                target: AppDevice.open ? EventModel : null
                function onAsked(change) {
                    eventSheet.changes = change;
                    if (eventSheet.item) (eventSheet.item as EventSheet).begin(change);
                    else eventSheet.active = true;
                }
            }
        }
        Connections {
            target: AppDevice.open ? CheckModel : null
            function onCheckAsked() {
                if (check.item) (check.item as CheckSheet).open();
                else check.active = true;
            }
            function onStencilsAsked() {
                if (stencils.item) (stencils.item as StencilSheet).open();
                else stencils.active = true;
            }
        }
        PlaceBar {
            id: bar
            anchors.bottom: parent.bottom
            width: parent.width
            height: visible ? implicitHeight : 0
            visible: window.narrow && AppDevice.open
            places: window.shownPlaces
            current: window.place
            onPicked: key => window.go(key)
        }
    }
    // Another page asks for a player's account.
    Connections {
        target: AppDevice.open ? MoneyPlace : null
        function onAsked() { window.go("money"); }
    }
    // The end of an arrival names what needs an answer.
    Connections {
        target: AppDevice.open ? ArrivalSteps : null
        function onQuestionsAsked() { window.go("questions"); }
    }
    Repeater {
        model: window.places.length

        Item {
            id: key
            required property int index
            Shortcut {
                sequence: "Ctrl+" + "1234567890,".charAt(key.index)
                enabled: AppDevice.open
                onActivated: window.go(window.places[key.index].key)
            }
        }
    }
}
