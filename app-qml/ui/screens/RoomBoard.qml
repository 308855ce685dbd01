pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic as Basic
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The stages side by side, each a column that scrolls. A stage that not every room uses shows once a racket is there.
ListView {
    id: board

    signal opened(string book, string job, string name)
    signal advanced(string book, string job, int stage, string tag, string name)
    readonly property var always: [1, 4, 5, 6, 9]

    orientation: ListView.Horizontal
    clip: true
    boundsBehavior: Flickable.StopAtBounds
    // All columns are made: the keyboard walks from one to the next.
    cacheBuffer: 4000
    Basic.ScrollBar.horizontal: Basic.ScrollBar {}
    model: RoomModel.columns

    delegate: Item {
        id: column
        required property var modelData
        readonly property bool shown: modelData.count > 0 || board.always.includes(modelData.stage)

        width: shown ? 288 : 0
        height: board.height - 14
        visible: shown

        Rectangle {
            anchors.fill: parent
            anchors.rightMargin: Theme.gap
            radius: Theme.radius + 2
            color: Theme.colour.raised

            RowLayout {
                id: head
                x: Theme.gap
                width: parent.width - 2 * Theme.gap
                height: 52
                spacing: Theme.tight

                Icon { name: StageWords.iconName(column.modelData.stage); size: 22 }
                Words {
                    Layout.fillWidth: true
                    meaning: Words.Strong
                    text: StageWords.title(column.modelData.stage)
                    wrapMode: Text.NoWrap
                    elide: Text.ElideRight
                    Accessible.name: qsTr("%1: %n racket(s)", "", column.modelData.count).arg(text)
                    Accessible.role: Accessible.Heading
                }
                Words {
                    meaning: Words.Strong
                    text: column.modelData.count
                    wrapMode: Text.NoWrap
                    Accessible.ignored: true
                }
            }
            ListView {
                anchors.top: head.bottom
                anchors.bottom: parent.bottom
                anchors.left: parent.left
                anchors.right: parent.right
                anchors.leftMargin: Theme.tight
                anchors.rightMargin: Theme.tight
                anchors.bottomMargin: Theme.tight
                clip: true
                spacing: Theme.tight
                boundsBehavior: Flickable.StopAtBounds
                Basic.ScrollBar.vertical: Basic.ScrollBar {}
                model: column.modelData

                delegate: JobCard {
                    id: card
                    required property string book
                    required property string job
                    width: ListView.view.width
                    onOpened: board.opened(card.book, card.job, card.player)
                    onAdvanced: board.advanced(card.book, card.job, card.nextStage, card.tag, card.player)
                }
            }
        }
    }
}
