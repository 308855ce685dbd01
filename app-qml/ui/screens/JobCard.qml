import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme

// One racket on the board: whose it is, its tag, its promise, and its usual next step in one tap. A tap on the rest of
// the card, or holding it, opens everything else.
Rectangle {
    id: card

    required property string player
    required property string racket
    required property string tag
    required property string tension
    required property string readyBy
    required property int due
    required property int rush
    required property int stage
    required property string stageBy
    required property int nextStage
    required property bool clash
    // Its step is one that only a person can say: what the player answered, or where it is.
    readonly property bool asks: clash || stage === StageMark.Waiting
    signal opened()
    signal advanced()

    readonly property color dueColour: due === 3 ? Theme.colour.danger
                                     : due === 2 ? Theme.colour.attention : Theme.colour.quietInk
    readonly property string dueWords: readyBy.length === 0 ? ""
        : due === 3 ? qsTr("Late: %1").arg(readyBy) : qsTr("By %1").arg(readyBy)

    implicitHeight: column.implicitHeight
    radius: Theme.radius
    color: Theme.colour.surface
    border.width: clash || rush > 0 ? 2 : 1
    border.color: clash ? Theme.colour.attention : rush > 0 ? Theme.colour.rush : Theme.colour.line

    ColumnLayout {
        id: column
        width: parent.width
        spacing: 0

        TouchButton {
            id: face
            objectName: "card"
            Layout.fillWidth: true
            padding: Theme.gap
            ringInside: true
            text: card.tag.length > 0 ? qsTr("Tag %1, %2").arg(card.tag).arg(card.player) : card.player
            Accessible.description: Listing.commas([card.dueWords, card.rush === 2 ? qsTr("On-court rush") : card.rush === 1 ? qsTr("Rush") : "",
                card.clash ? qsTr("Two people moved it on") : "", card.tension])
            onClicked: card.opened()
            onPressAndHold: card.opened()
            background: Rectangle {
                radius: Theme.radius
                color: face.down ? Theme.colour.chosenGround : "transparent"
            }
            contentItem: ColumnLayout {
                spacing: 3

                RowLayout {
                    spacing: Theme.tight
                    Words {
                        visible: card.tag.length > 0
                        meaning: Words.Title
                        text: card.tag
                        wrapMode: Text.NoWrap
                        Accessible.ignored: true
                    }
                    RushMark { rush: card.rush }
                    Item { Layout.fillWidth: true; visible: card.rush === 0 }
                    Icon {
                        visible: card.due > 1 && card.rush === 0
                        name: "warning"
                        size: 18
                        colour: card.dueColour
                    }
                    Words {
                        Layout.fillWidth: card.rush > 0
                        horizontalAlignment: Text.AlignRight
                        elide: Text.ElideRight
                        meaning: card.due > 1 ? Words.Strong : Words.Caption
                        font.pixelSize: Theme.type.caption
                        color: card.dueColour
                        text: card.dueWords
                        wrapMode: Text.NoWrap
                        Accessible.ignored: true
                    }
                }
                Words {
                    Layout.fillWidth: true
                    meaning: Words.Strong
                    text: card.player
                    wrapMode: Text.NoWrap
                    elide: Text.ElideRight
                    Accessible.ignored: true
                }
                Words {
                    Layout.fillWidth: true
                    visible: text.length > 0
                    meaning: Words.Caption
                    quiet: true
                    text: Listing.dotted([card.racket.length > 0 ? qsTr("Racket %1").arg(card.racket) : "", card.tension,
                           card.stageBy])
                    wrapMode: Text.NoWrap
                    elide: Text.ElideRight
                    Accessible.ignored: true
                }
                Words {
                    Layout.fillWidth: true
                    visible: card.clash
                    meaning: Words.Strong
                    font.pixelSize: Theme.type.caption
                    color: Theme.colour.attention
                    text: qsTr("Two people moved it on")
                    Accessible.ignored: true
                }
            }
        }
        ActionButton {
            objectName: "advance"
            Layout.fillWidth: true
            Layout.margins: Theme.tight
            Layout.topMargin: 0
            visible: card.nextStage > 0 || card.asks
            kind: ActionButton.Secondary
            iconName: card.asks ? "question" : "arrow"
            text: card.clash ? qsTr("Look where it is") : card.asks ? qsTr("The player’s answer") : StageWords.title(card.nextStage)
            Accessible.name: qsTr("%1: %2").arg(face.text).arg(text)
            onClicked: card.asks ? card.opened() : card.advanced()
        }
    }
}
