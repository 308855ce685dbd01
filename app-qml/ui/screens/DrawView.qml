pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The draw as a picture that a finger moves through: rounds from left to right, who won goes on.
Item {
    id: view

    property int margin: Theme.gap
    readonly property var rounds: DrawModel.rounds
    readonly property int cardWidth: Math.min(270, width - 2 * margin - 24)
    readonly property int cardHeight: 2 * Theme.touch + 4
    readonly property int slot: cardHeight + Theme.gap
    readonly property int stride: cardWidth + 48

    readonly property bool group: DrawModel.standing.length > 0  // everybody meets everybody: nothing leads anywhere

    function centre(round, match) { return (match + 0.5) * slot * (group ? 1 : Math.pow(2, round)); }
    // Rounds are brought into sight where they begin.
    function showRound(round) {
        const first = rounds[round].matches.findIndex(one => !one.decided && one.one.known && one.other.known);
        flick.contentX = Math.max(0, Math.min(round * stride, flick.contentWidth - flick.width));
        flick.contentY = Math.max(0, Math.min(centre(round, Math.max(0, first)) - slot, flick.contentHeight - flick.height));
    }

    EmptyState {
        anchors.centerIn: parent
        width: Math.min(parent.width - 2 * view.margin, 460)
        visible: DrawModel.draws.length === 0
        iconName: "plan"
        title: qsTr("There is no draw yet")
        text: qsTr("Bring it in from a table with a line for each place: line, player, and if they are known seed and rating.")
    }
    ColumnLayout {
        id: top
        x: view.margin
        width: view.width - 2 * view.margin
        spacing: Theme.gap

        SideBySide {
            id: ways
            Layout.fillWidth: true
            least: 180
            most: 3
            spacing: Theme.tight
            ActionButton {
                objectName: "whichDraw"
                width: ways.columnWidth
                visible: DrawModel.draws.length > 0
                kind: ActionButton.Secondary
                text: Array.from(DrawModel.draws).find(one => one.id === DrawModel.draw)?.name ?? ""
                Accessible.name: qsTr("Draw: %1").arg(text)
                onClicked: which.open()
            }
            ActionButton {
                objectName: "bringDraw"
                width: ways.columnWidth
                kind: ActionButton.Secondary
                iconName: "in"
                text: qsTr("Bring a draw in")
                onClicked: bring.begin()
            }
        }
        Notice {
            objectName: "drawTroubles"
            Layout.fillWidth: true
            visible: DrawModel.troubles.length > 0
            kind: Notice.Attention
            title: qsTr("Something in this draw does not fit together")
            text: Array.from(DrawModel.troubles).join("\n")
        }
        Words {
            objectName: "standing"
            Layout.fillWidth: true
            visible: view.group
            text: qsTr("Standing: %1").arg(Array.from(DrawModel.standing).join(", "))
        }
        Flow {
            Layout.fillWidth: true
            visible: view.rounds.length > 1
            spacing: Theme.tight
            Repeater {
                model: view.rounds.length
                ActionButton {
                    required property int index
                    objectName: "round" + index
                    kind: ActionButton.Quiet
                    leftPadding: Theme.gap
                    rightPadding: Theme.gap
                    text: view.rounds[index]?.short ?? ""
                    Accessible.name: qsTr("Show: %1").arg(view.rounds[index]?.title ?? "")
                    onClicked: view.showRound(index)
                }
            }
        }
    }
    Flickable {
        id: flick
        objectName: "drawFlick"
        anchors.top: top.bottom
        anchors.topMargin: Theme.gap
        anchors.bottom: parent.bottom
        width: parent.width
        visible: view.rounds.length > 0
        clip: true
        contentWidth: 2 * view.margin + view.rounds.length * view.stride - 48
        contentHeight: titles.height + (view.rounds[0]?.matches.length ?? 0) * view.slot + view.margin

        Row {
            id: titles
            x: view.margin
            spacing: 48
            bottomPadding: Theme.tight
            Repeater {
                model: view.rounds.length
                Words {
                    required property int index
                    width: view.cardWidth
                    meaning: Words.Strong
                    text: view.rounds[index]?.title ?? ""
                }
            }
        }
        Repeater {
            model: view.rounds.length
            Item {
                id: round
                required property int index
                readonly property var matches: view.rounds[round.index]?.matches ?? []
                x: view.margin + round.index * view.stride
                y: titles.height

                Repeater {
                    model: round.matches.length
                    Item {
                        id: place
                        required property int index
                        readonly property var match: round.matches[place.index] ?? null
                        readonly property real middle: view.centre(round.index, place.index)
                        // The lines from the two matches that lead here.
                        Rectangle {
                            visible: round.index > 0 && !view.group
                            x: -24
                            y: view.centre(round.index - 1, 2 * place.index)
                            width: 2
                            height: view.centre(round.index - 1, 2 * place.index + 1) - y
                            color: Theme.colour.controlLine
                        }
                        Rectangle {
                            visible: round.index > 0 && !view.group
                            x: -24
                            y: place.middle
                            width: 24
                            height: 2
                            color: Theme.colour.controlLine
                        }
                        Rectangle {
                            visible: round.index < view.rounds.length - 1 && !view.group
                            x: view.cardWidth
                            y: place.middle
                            width: 24
                            height: 2
                            color: Theme.colour.controlLine
                        }
                        MatchCard {
                            objectName: "match" + (round.index + 1) + "-" + (place.index + 1)
                            y: place.middle - view.cardHeight / 2
                            width: view.cardWidth
                            height: view.cardHeight
                            match: place.match
                            // Of a large draw only what is in sight, and a screen round it, is drawn.
                            visible: place.match !== null
                                     && y + view.cardHeight > flick.contentY - flick.height && y < flick.contentY + 2 * flick.height
                                     && round.x + view.cardWidth > flick.contentX - flick.width && round.x < flick.contentX + 2 * flick.width
                            onClicked: sheet.begin(place.match.round, place.match.match)
                        }
                    }
                }
            }
        }
    }
    Sheet {
        id: which
        title: qsTr("Which draw")
        Repeater {
            model: DrawModel.draws
            ListRow {
                required property var modelData
                Layout.fillWidth: true
                text: modelData.name
                detail: modelData.detail
                chosen: DrawModel.draw === modelData.id
                onClicked: {
                    DrawModel.draw = modelData.id;
                    which.close();
                }
            }
        }
        ActionButton {
            objectName: "takeDrawAway"
            Layout.fillWidth: true
            kind: ActionButton.Quiet
            text: qsTr("Take this draw away")
            onClicked: if (DrawModel.takeAway(qsTr("Draw taken away"))) which.close()
        }
    }
    MatchSheet { id: sheet }
    BringDrawSheet { id: bring }
}
