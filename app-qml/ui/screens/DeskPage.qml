pragma ComponentBehavior: Bound
import QtQuick
import Weavelog.View

// Where rackets come in: one player at a time, from the name to the tags.
FocusScope {
    id: desk

    readonly property var sources: ({
        [DeskModel.Find]: "DeskFind.qml",
        [DeskModel.Player]: "DeskPlayer.qml",
        [DeskModel.DropOff]: "DropOffPage.qml",
        [DeskModel.Stored]: "StoredPage.qml"
    })

    readonly property var shown: pages.item
    readonly property real footHeight: shown?.footHeight ?? 0

    function showPage() {
        const source = sources[DeskModel.page];
        if (source) pages.source = source;
        confirmScreen.visible = DeskModel.page === DeskModel.Confirm;
    }

    Component.onCompleted: showPage()

    Connections {
        target: DeskModel
        function onPageChanged() { desk.showPage(); }
    }
    Loader {
        id: pages
        anchors.fill: parent
        focus: true
        onLoaded: (pages.item as Item).forceActiveFocus(Qt.OtherFocusReason)
    }
    ConfirmScreen {
        id: confirmScreen
    }
}
