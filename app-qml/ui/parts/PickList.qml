pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Theme

// One of many, picked in a sheet of its own; above eight there is a field to find in it. The value is its owner's:
// picked() asks for another.
ColumnLayout {
    id: pick

    property string label
    // [{value, text, detail}]
    property var options: []
    property var value
    property string placeholder: qsTr("Choose")
    property string hint
    property string error
    readonly property var current: options.find(option => option.value === value)
    readonly property bool isOpen: sheet.opened
    signal picked(var value)

    spacing: Theme.tight

    // A positioner: its height follows a wrapped text at once.
    Column {
        id: head
        Layout.fillWidth: true
        visible: pick.label.length > 0
        Words {
            width: head.width
            meaning: Words.Strong
            font.pixelSize: Theme.type.caption
            text: pick.label
            Accessible.ignored: true
        }
    }
    TouchButton {
        id: opener
        objectName: "opener"
        Layout.fillWidth: true
        Layout.preferredHeight: Math.max(Theme.mainTouch, implicitContentHeight + 2 * Theme.tight)
        text: pick.current ? pick.current.text : pick.placeholder
        leftPadding: Theme.gap
        rightPadding: Theme.gap
        Accessible.role: Accessible.ComboBox
        Accessible.name: pick.label.length > 0 ? pick.label + ": " + text : text
        Accessible.description: pick.error.length > 0 ? pick.error : pick.hint
        Keys.onDownPressed: clicked()
        onClicked: {
            find.text = "";
            sheet.offered = pick.options;
            sheet.open();
        }
        background: FieldGround {
            focused: opener.down
            wrong: pick.error.length > 0
        }
        contentItem: RowLayout {
            Words {
                Layout.fillWidth: true
                text: opener.text
                maximumLineCount: 2
                elide: Text.ElideRight
                color: !opener.enabled ? Theme.colour.disabledInk
                     : pick.current ? Theme.colour.ink : Theme.colour.quietInk
                Accessible.ignored: true
            }
            Icon {
                name: "down"
                colour: opener.enabled ? Theme.colour.action : Theme.colour.disabledInk
            }
        }
    }
    FieldNote {
        Layout.fillWidth: true
        hint: pick.hint
        error: pick.error
    }
    Sheet {
        id: sheet
        // While it is open they stay as they were: none moves under a finger.
        property var offered: pick.options
        onClosed: offered = Qt.binding(() => pick.options)
        title: pick.label.length > 0 ? pick.label : pick.placeholder

        SearchEntry {
            id: find
            Layout.fillWidth: true
            visible: sheet.offered.length > 8
            name: qsTr("Find in the list")
        }
        Repeater {
            model: sheet.offered.filter(
                option => option.text.toLocaleLowerCase().includes(find.text.toLocaleLowerCase()))

            ListRow {
                id: option
                required property var modelData
                Layout.fillWidth: true
                text: option.modelData.text
                detail: option.modelData.detail ?? ""
                opens: false
                chosen: option.modelData.value === pick.value
                onClicked: {
                    sheet.close();
                    if (option.modelData.value !== pick.value) pick.picked(option.modelData.value);
                }
                Icon {
                    visible: option.chosen
                    name: "check"
                    colour: Theme.colour.action
                }
            }
        }
    }
}
