import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme

// One step of several: its number or that it is done, what it is, and in a line what came of it.
RowLayout {
    id: head

    enum Standing { Done, Now, Later }
    property int number
    property int standing: ArrivalStepHead.Later
    property string title
    property string summary

    spacing: Theme.gap
    Accessible.role: Accessible.ListItem
    Accessible.name: title
    Accessible.description: [qsTr("done"), qsTr("now"), qsTr("later")][standing] + (summary.length > 0 ? ", " + summary : "")

    Rectangle {
        Layout.alignment: Qt.AlignTop
        implicitWidth: 40
        implicitHeight: 40
        radius: 20
        color: head.standing === ArrivalStepHead.Now ? Theme.colour.action : Theme.colour.raised
        border.width: 2
        border.color: head.standing === ArrivalStepHead.Later ? Theme.colour.controlLine
                    : head.standing === ArrivalStepHead.Done ? Theme.colour.agreed : Theme.colour.action

        Icon {
            anchors.centerIn: parent
            visible: head.standing === ArrivalStepHead.Done
            name: "check"
            size: 24
            stroke: 3
            colour: Theme.colour.agreed
        }
        Words {
            anchors.centerIn: parent
            visible: head.standing !== ArrivalStepHead.Done
            meaning: Words.Strong
            text: head.number
            color: head.standing === ArrivalStepHead.Now ? Theme.colour.onAction : Theme.colour.quietInk
            Accessible.ignored: true
        }
    }
    // Not a layout: it hears at once that a line has wrapped.
    Column {
        id: words
        Layout.fillWidth: true
        Layout.preferredWidth: 1
        Layout.alignment: Qt.AlignVCenter

        Words {
            width: words.width
            meaning: head.standing === ArrivalStepHead.Now ? Words.Title : Words.Strong
            quiet: head.standing === ArrivalStepHead.Later
            text: head.title
            Accessible.ignored: true
        }
        Words {
            width: words.width
            visible: head.summary.length > 0
            quiet: true
            text: head.summary
            Accessible.ignored: true
        }
    }
}
