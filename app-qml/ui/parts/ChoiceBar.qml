pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic as Basic
import Weavelog.Theme

// Two to five answers of which one holds, side by side, or below each other where they do not fit. One stop of the
// tab key; the arrows choose. The value is its owner's: the bar asks with chosen() and never writes it itself.
FocusScope {
    id: bar

    property string label
    // [{value, text}]
    property var options: []
    property var value
    signal chosen(var value)

    readonly property int at: options.findIndex(option => option.value === value)
    readonly property real widest: {
        let most = 0;
        for (let i = 0; i < repeater.count; ++i) most = Math.max(most, repeater.itemAt(i)?.implicitWidth ?? 0);
        return most;
    }
    readonly property real tallest: {
        let most = Theme.mainTouch;
        for (let i = 0; i < repeater.count; ++i) most = Math.max(most, repeater.itemAt(i)?.implicitHeight ?? 0);
        return most;
    }
    readonly property bool stacked: widest * options.length > width

    function choose(next) {
        if (next !== value) chosen(next);
    }
    function move(by) {
        const next = Math.min(Math.max(at + by, 0), options.length - 1);
        repeater.itemAt(next).forceActiveFocus(Qt.TabFocusReason);
        choose(options[next].value);
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
        // Placed by hand: a GridLayout whose number of columns changes gives the first one all the width at times.
        Item {
            id: grid
            Layout.fillWidth: true
            implicitHeight: rows * (bar.tallest - overlap) + overlap

            readonly property int overlap: 2  // borders lie on each other
            // Four or five go two and two; a fifth takes a row.
            readonly property bool paired: bar.stacked && bar.options.length >= 4 && bar.widest * 2 <= width
            readonly property int columns: !bar.stacked ? Math.max(1, bar.options.length) : paired ? 2 : 1
            readonly property int rows: Math.ceil(bar.options.length / columns)
            function edge(column) { return Math.round(column * (width - overlap) / columns); }

            Repeater {
                id: repeater
                model: bar.options

                // A RadioButton although it looks like none: Qt 6.4 tells screen readers the role of the control and
                // not one that is set on it.
                Basic.RadioButton {
                    id: choice
                    required property var modelData
                    required property int index

                    readonly property int column: index % grid.columns
                    readonly property bool alone: column === 0 && index === bar.options.length - 1
                    readonly property real from: grid.edge(column)
                    x: bar.LayoutMirroring.enabled ? grid.width - from - width : from
                    y: Math.floor(index / grid.columns) * (bar.tallest - grid.overlap)
                    width: (alone ? grid.width - grid.overlap : grid.edge(column + 1) - from) + grid.overlap
                    height: bar.tallest
                    implicitWidth: implicitContentWidth + leftPadding + rightPadding
                    implicitHeight: Math.max(Theme.mainTouch, implicitContentHeight + 2 * Theme.tight)
                    text: choice.modelData.text
                    font.weight: Font.DemiBold
                    readonly property bool on: bar.value === choice.modelData.value
                    // The focused one keeps its stop until the focus has moved on.
                    activeFocusOnTab: on || activeFocus || (bar.at < 0 && choice.index === 0)
                    leftPadding: Theme.gap
                    rightPadding: Theme.gap
                    z: visualFocus ? 2 : on ? 1 : 0
                    checked: on
                    indicator: null
                    focusPolicy: Qt.StrongFocus
                    font.pixelSize: Theme.type.body
                    Accessible.name: text
                    onClicked: bar.choose(choice.modelData.value)
                    Keys.onReturnPressed: bar.choose(choice.modelData.value)
                    Keys.onEnterPressed: bar.choose(choice.modelData.value)
                    Keys.onRightPressed: bar.move(bar.LayoutMirroring.enabled ? -1 : 1)
                    Keys.onLeftPressed: bar.move(bar.LayoutMirroring.enabled ? 1 : -1)
                    Keys.onDownPressed: bar.move(1)
                    Keys.onUpPressed: bar.move(-1)

                    background: Rectangle {
                        radius: Theme.radius
                        color: !choice.enabled ? Theme.colour.disabledGround
                             : choice.on ? Theme.colour.action
                             : choice.down ? Theme.colour.chosenGround : Theme.colour.raised
                        border.width: 2
                        border.color: choice.enabled
                            ? (choice.on ? Theme.colour.action : Theme.colour.controlLine) : Theme.colour.disabledInk
                    }
                    FocusRing { shown: choice.visualFocus }

                    contentItem: ButtonWords {
                        text: choice.text
                        iconName: choice.on ? "check" : ""
                        font: choice.font
                        colour: !choice.enabled ? Theme.colour.disabledInk
                              : choice.on ? Theme.colour.onAction : Theme.colour.ink
                    }
                }
            }
        }
    }
}
