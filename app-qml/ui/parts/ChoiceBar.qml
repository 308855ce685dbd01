pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Theme

// Two to five answers of which one holds, side by side, or below each other where they do not fit. One stop of the
// tab key; the arrows choose.
FocusScope {
    id: bar

    property string label
    // [{value, text}]
    property var options: []
    property var value
    signal chosen(var value)

    readonly property int at: options.findIndex(option => option.value === value)
    readonly property bool stacked: {
        let widest = 0;
        for (let i = 0; i < repeater.count; ++i) widest = Math.max(widest, repeater.itemAt(i)?.implicitWidth ?? 0);
        return widest * options.length > width;
    }

    function choose(next) {
        if (next === value) return;
        value = next;
        chosen(next);
    }
    function move(by) {
        const next = Math.min(Math.max(at + by, 0), options.length - 1);
        choose(options[next].value);
        repeater.itemAt(next).forceActiveFocus(Qt.TabFocusReason);
    }

    implicitWidth: 320
    implicitHeight: column.implicitHeight
    Accessible.role: Accessible.Grouping
    Accessible.name: label

    ColumnLayout {
        id: column
        width: parent.width
        spacing: Theme.tight

        Words {
            Layout.fillWidth: true
            visible: bar.label.length > 0
            meaning: Words.Strong
            font.pixelSize: Theme.type.caption
            text: bar.label
        }
        GridLayout {
            Layout.fillWidth: true
            columns: bar.stacked ? 1 : Math.max(1, bar.options.length)
            rowSpacing: -2
            columnSpacing: -2

            Repeater {
                id: repeater
                model: bar.options

                TouchButton {
                    id: choice
                    required property var modelData
                    required property int index

                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    Layout.preferredHeight: Math.max(Theme.mainTouch, implicitContentHeight + 2 * Theme.tight)
                    text: choice.modelData.text
                    checked: bar.value === choice.modelData.value
                    activeFocusOnTab: checked || (bar.at < 0 && choice.index === 0)
                    leftPadding: Theme.gap
                    rightPadding: Theme.gap
                    z: visualFocus ? 2 : checked ? 1 : 0
                    Accessible.role: Accessible.RadioButton
                    Accessible.checkable: true
                    Accessible.checked: checked
                    onClicked: bar.choose(choice.modelData.value)
                    Keys.onRightPressed: bar.move(bar.LayoutMirroring.enabled ? -1 : 1)
                    Keys.onLeftPressed: bar.move(bar.LayoutMirroring.enabled ? 1 : -1)
                    Keys.onDownPressed: bar.move(1)
                    Keys.onUpPressed: bar.move(-1)

                    background: Rectangle {
                        radius: Theme.radius
                        color: !choice.enabled ? Theme.colour.disabledGround
                             : choice.checked ? Theme.colour.action
                             : choice.down ? Theme.colour.chosenGround : Theme.colour.raised
                        border.width: 2
                        border.color: choice.enabled
                            ? (choice.checked ? Theme.colour.action : Theme.colour.controlLine) : Theme.colour.disabledInk
                    }
                    contentItem: RowLayout {
                        spacing: Theme.tight

                        Item { Layout.fillWidth: true }
                        Icon {
                            visible: choice.checked
                            name: "check"
                            size: 20
                            stroke: 2.6
                            colour: choice.enabled ? Theme.colour.onAction : Theme.colour.disabledInk
                        }
                        Text {
                            text: choice.text
                            font.pixelSize: Theme.type.body
                            font.weight: Font.DemiBold
                            color: !choice.enabled ? Theme.colour.disabledInk
                                 : choice.checked ? Theme.colour.onAction : Theme.colour.ink
                            Accessible.ignored: true
                        }
                        Item { Layout.fillWidth: true }
                    }
                }
            }
        }
    }
}
