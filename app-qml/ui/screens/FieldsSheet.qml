pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// A sheet for fields of text of one thing; nothing is written before Keep.
Sheet {
    id: sheet

    required property PlayerCard card
    // [{field, text}]
    property var fields: []
    // What stood there at the beginning, and what is typed now, by field.
    property var before: ({})
    property var now: ({})
    default property alias more: rest.data
    signal kept()

    function beginWith(values) {
        before = values;
        now = Object.assign({}, values);
        open();
    }
    function put(field, value) { now = Object.assign({}, now, { [field]: value }); }

    hasChanges: Object.keys(now).some(field => now[field] !== before[field])

    Repeater {
        model: sheet.opened ? sheet.fields : []

        TextEntry {
            id: entry
            required property var modelData
            objectName: entry.modelData.field
            Layout.fillWidth: true
            label: entry.modelData.text
            onEdited: text => sheet.put(entry.modelData.field, text)
            Component.onCompleted: text = sheet.before[entry.modelData.field] ?? ""
        }
    }
    ColumnLayout {
        id: rest
        Layout.fillWidth: true
    }
    ActionButton {
        objectName: "keepFields"
        Layout.fillWidth: true
        enabled: sheet.hasChanges
        text: qsTr("Keep")
        onClicked: sheet.kept()
    }
}
