import QtQuick
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Over every page: what was just done, with an offer to take it back; what could not be done, and what to do. And the
// things that go on while the app is open, whatever page is shown.
Item {
    id: doings

    implicitHeight: column.implicitHeight + 2 * Theme.gap

    Connections {
        target: Work
        function onDone(text) {
            fault.title = "";
            toast.show(text);
        }
        function onFailed(what, whatToDo) {
            toast.hide();
            fault.title = what;
            fault.text = whatToDo;
        }
    }
    Binding {
        target: ToastRoom
        property: "height"
        value: toast.visible || fault.visible ? doings.implicitHeight : 0
    }
    // A promise becomes late without anybody doing anything.
    Timer {
        interval: 30000
        repeat: true
        running: true
        onTriggered: Work.refresh()
    }
    // The strip is its own ground: under software rendering drawings of the page that are clipped away shine through otherwise.
    Rectangle {
        anchors.fill: parent
        visible: ToastRoom.height > 0
        color: Theme.colour.ground
    }
    Column {
        id: column
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Theme.gap
        width: Math.min(640, parent.width - 2 * Theme.gap)
        spacing: Theme.tight

        Notice {
            id: fault
            objectName: "fault"
            width: parent.width
            visible: title.length > 0
            kind: Notice.Danger
            border.width: 1
            border.color: Theme.colour.danger
            actionText: qsTr("I see")
            onActed: title = ""
        }
        UndoToast {
            id: toast
            objectName: "toast"
            anchors.horizontalCenter: parent.horizontalCenter
            width: Math.min(implicitWidth, parent.width)
            onUndone: Work.undo()
        }
    }
    // Goes back to the event server of last time in the background.
    readonly property int exchange: ExchangeModel.state
}
