import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// A day: typed, or moved by one; in words below.
ColumnLayout {
    id: stepper

    property string label
    property alias day: entry.text
    property string error

    function takeFocus() { entry.takeFocus(); }

    spacing: Theme.tight

    RowLayout {
        Layout.fillWidth: true
        spacing: Theme.tight

        TextEntry {
            id: entry
            objectName: "day"
            Layout.fillWidth: true
            label: stepper.label
            inputMethodHints: Qt.ImhDate
        }
        IconAction {
            objectName: "dayBefore"
            Layout.alignment: Qt.AlignBottom
            Layout.preferredWidth: entry.field.height
            Layout.preferredHeight: entry.field.height
            framed: true
            iconName: "minus"
            text: qsTr("%1: a day earlier").arg(stepper.label)
            autoRepeat: true
            onClicked: entry.text = EventModel.moved(entry.text, -1)
        }
        IconAction {
            objectName: "dayAfter"
            Layout.alignment: Qt.AlignBottom
            Layout.preferredWidth: entry.field.height
            Layout.preferredHeight: entry.field.height
            framed: true
            iconName: "plus"
            text: qsTr("%1: a day later").arg(stepper.label)
            autoRepeat: true
            onClicked: entry.text = EventModel.moved(entry.text, 1)
        }
    }
    FieldNote {
        Layout.fillWidth: true
        hint: EventModel.dayWords(entry.text)
        error: stepper.error
    }
}
