import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme

// By when: a time of day, moved by quarters of an hour.
RowLayout {
    id: stepper

    property string time
    property string day
    signal moved(int minutes)

    spacing: Theme.tight

    IconAction {
        objectName: "sooner"
        Layout.preferredWidth: 64
        Layout.preferredHeight: 64
        framed: true
        iconName: "minus"
        text: qsTr("A quarter of an hour sooner")
        autoRepeat: true
        enabled: stepper.time.length > 0
        onClicked: stepper.moved(-15)
    }
    ColumnLayout {
        Layout.fillWidth: true
        spacing: 0
        Words {
            Layout.fillWidth: true
            horizontalAlignment: Text.AlignHCenter
            meaning: Words.Heading
            text: stepper.time.length > 0 ? stepper.time : qsTr("No time")
        }
        Words {
            Layout.fillWidth: true
            visible: stepper.day.length > 0
            horizontalAlignment: Text.AlignHCenter
            meaning: Words.Caption
            quiet: true
            text: stepper.day
        }
    }
    IconAction {
        objectName: "later"
        Layout.preferredWidth: 64
        Layout.preferredHeight: 64
        framed: true
        iconName: "plus"
        text: qsTr("A quarter of an hour later")
        autoRepeat: true
        onClicked: stepper.moved(15)
    }
}
