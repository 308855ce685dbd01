import QtQuick
import QtQuick.Layouts
import Weavelog.Theme

// Says what was just done and offers to take it back for a while; while the keyboard is on its button it stays.
Rectangle {
    id: toast

    property string text
    property int stays: 8000
    property bool shown: false
    signal undone()

    function show(what) {
        text = what;
        shown = true;
        timer.restart();
    }
    function hide() {
        shown = false;
        timer.stop();
    }

    implicitWidth: Math.min(560, row.implicitWidth + 2 * Theme.room)
    implicitHeight: row.implicitHeight + 2 * Theme.tight
    radius: Theme.radius
    color: Theme.colour.toast
    visible: shown
    Accessible.role: Accessible.AlertMessage
    Accessible.name: text

    Timer {
        id: timer
        interval: toast.stays
        onTriggered: undo.visualFocus ? restart() : toast.hide()
    }
    RowLayout {
        id: row
        anchors.fill: parent
        anchors.leftMargin: Theme.room
        anchors.rightMargin: Theme.tight
        spacing: Theme.gap

        Words {
            Layout.fillWidth: true
            text: toast.text
            color: Theme.colour.onToast
            Accessible.ignored: true
        }
        TouchButton {
            id: undo
            objectName: "undo"
            text: qsTr("Undo")
            leftPadding: Theme.gap
            rightPadding: Theme.gap
            onClicked: {
                toast.hide();
                toast.undone();
            }
            background: Rectangle {
                radius: Theme.radius
                color: undo.down ? Theme.colour.chosenGround : "transparent"
                border.width: 2
                border.color: Theme.colour.onToast
            }
            contentItem: RowLayout {
                spacing: Theme.tight
                Icon { name: "undo"; size: 20; colour: undo.down ? Theme.colour.onChosen : Theme.colour.onToast }
                Words {
                    meaning: Words.Strong
                    text: undo.text
                    color: undo.down ? Theme.colour.onChosen : Theme.colour.onToast
                    wrapMode: Text.NoWrap
                    Accessible.ignored: true
                }
            }
        }
    }
}
