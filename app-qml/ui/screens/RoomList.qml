pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic as Basic
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// One stage at a time, for a narrow screen: the stages with their counts in a row, and the rackets of the chosen one.
ColumnLayout {
    id: list

    signal opened(string book, string job, string name)
    signal advanced(string book, string job, int stage, string tag, string name)
    property int at: 0
    readonly property var always: [1, 4, 5, 6, 9]

    spacing: Theme.gap

    ListView {
        id: chooser
        Layout.fillWidth: true
        implicitHeight: Theme.mainTouch
        orientation: ListView.Horizontal
        clip: true
        cacheBuffer: 4000
        boundsBehavior: Flickable.StopAtBounds
        model: RoomModel.columns
        currentIndex: list.at

        delegate: TouchButton {
            id: chip
            required property int index
            required property var modelData
            readonly property bool on: list.at === chip.index
            readonly property bool shown: chip.on || chip.modelData.count > 0 || list.always.includes(chip.modelData.stage)

            visible: shown
            width: shown ? implicitWidth : 0
            height: chooser.height
            leftPadding: Theme.gap
            rightPadding: Theme.gap
            ringInside: true
            text: qsTr("%1: %n racket(s)", "", chip.modelData.count).arg(StageWords.title(chip.modelData.stage))
            Accessible.role: Accessible.PageTab
            Accessible.selected: chip.on
            onClicked: list.at = chip.index
            onActiveFocusChanged: if (activeFocus) chooser.positionViewAtIndex(chip.index, ListView.Contain)
            background: Rectangle {
                radius: Theme.radius
                color: chip.on ? Theme.colour.action : chip.down ? Theme.colour.chosenGround : "transparent"
            }
            contentItem: RowLayout {
                spacing: Theme.tight
                Icon {
                    name: StageWords.iconName(chip.modelData.stage)
                    size: 20
                    colour: chip.on ? Theme.colour.onAction : Theme.colour.ink
                }
                Words {
                    meaning: Words.Strong
                    text: StageWords.title(chip.modelData.stage) + "  " + chip.modelData.count
                    color: chip.on ? Theme.colour.onAction : Theme.colour.ink
                    wrapMode: Text.NoWrap
                    Accessible.ignored: true
                }
            }
        }
    }
    Words {
        Layout.fillWidth: true
        visible: cards.count === 0
        quiet: true
        text: qsTr("No racket is at this stage.")
    }
    ListView {
        id: cards
        Layout.fillWidth: true
        Layout.fillHeight: true
        clip: true
        spacing: Theme.tight
        boundsBehavior: Flickable.StopAtBounds
        Basic.ScrollBar.vertical: Basic.ScrollBar {}
        model: RoomModel.columns[list.at]

        delegate: JobCard {
            id: card
            required property string book
            required property string job
            width: ListView.view.width
            onOpened: list.opened(card.book, card.job, card.player)
            onAdvanced: list.advanced(card.book, card.job, card.nextStage, card.tag, card.player)
        }
    }
}
