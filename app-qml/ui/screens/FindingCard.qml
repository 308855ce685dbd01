pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme

// One open finding in words, with its number on the drawing, what is proposed, what the player said, and what can be done.
Rectangle {
    id: card

    required property var finding
    signal asked()
    signal goneOn()
    signal mended()

    readonly property int hold: finding.hold
    readonly property string state_: [
        "", qsTr("The player has not answered yet"), qsTr("Two different answers were taken: ask again"),
        qsTr("The player said not to string it")][hold] ?? ""

    implicitHeight: column.implicitHeight + 2 * Theme.gap
    radius: Theme.radius
    color: Theme.colour.raised
    border.width: hold > 0 ? 2 : 1
    border.color: hold > 0 ? Theme.colour.danger : Theme.colour.line
    Accessible.role: Accessible.ListItem
    Accessible.name: Listing.commas([String(finding.number), finding.text, state_])

    ColumnLayout {
        id: column
        x: Theme.gap
        y: Theme.gap
        width: parent.width - 2 * Theme.gap
        spacing: Theme.tight

        RowLayout {
            spacing: Theme.gap
            Rectangle {
                Layout.alignment: Qt.AlignTop
                implicitWidth: Math.max(28, number.implicitWidth + 10)
                implicitHeight: 28
                radius: 14
                color: card.hold > 0 ? Theme.colour.dangerAction : card.finding.earlier ? Theme.colour.raised : Theme.colour.action
                border.width: card.finding.earlier ? 2 : 0
                border.color: Theme.colour.ink
                Words {
                    id: number
                    anchors.centerIn: parent
                    meaning: Words.Strong
                    text: card.finding.number
                    color: card.hold > 0 ? Theme.colour.onDangerAction : card.finding.earlier ? Theme.colour.ink : Theme.colour.onAction
                    wrapMode: Text.NoWrap
                    Accessible.ignored: true
                }
            }
            Column {
                id: said
                Layout.fillWidth: true
                spacing: 2
                Words {
                    width: said.width
                    meaning: Words.Strong
                    text: card.finding.text
                }
                Words {
                    width: said.width
                    meaning: Words.Caption
                    quiet: true
                    text: card.finding.earlier ? qsTr("Found earlier: %1").arg(card.finding.detail) : card.finding.detail
                }
                Words {
                    width: said.width
                    visible: card.finding.proposal.length > 0
                    text: qsTr("Proposed: %1").arg(card.finding.proposal)
                }
                Words {
                    width: said.width
                    visible: card.finding.answer.length > 0
                    meaning: Words.Strong
                    text: qsTr("Answer: %1").arg(card.finding.answer)
                }
                Words {
                    width: said.width
                    visible: card.finding.answered.length > 0
                    meaning: Words.Caption
                    quiet: true
                    text: card.finding.answered
                }
                Words {
                    width: said.width
                    visible: card.finding.overridden.length > 0
                    text: card.finding.overridden
                }
                Words {
                    width: said.width
                    visible: card.state_.length > 0
                    meaning: Words.Strong
                    color: Theme.colour.danger
                    text: card.state_
                }
            }
        }
        SideBySide {
            id: ways
            Layout.fillWidth: true
            least: 200
            most: 3
            spacing: Theme.tight

            ActionButton {
                objectName: "ask" + card.finding.number
                width: ways.columnWidth
                visible: card.finding.asks
                kind: card.hold > 0 ? ActionButton.Primary : ActionButton.Secondary
                iconName: "turn"
                text: card.finding.answer.length > 0 ? qsTr("Ask again") : qsTr("Ask the player")
                Accessible.name: text + ": " + card.finding.text
                onClicked: card.asked()
            }
            ActionButton {
                objectName: "goOn" + card.finding.number
                width: ways.columnWidth
                visible: card.hold > 0
                kind: ActionButton.Secondary
                text: card.hold === 3 ? qsTr("Go on against it ...") : qsTr("Go on without it ...")
                Accessible.name: text + ": " + card.finding.text
                onClicked: card.goneOn()
            }
            ActionButton {
                objectName: "mend" + card.finding.number
                width: ways.columnWidth
                kind: ActionButton.Quiet
                iconName: "check"
                text: qsTr("It is put right")
                Accessible.name: text + ": " + card.finding.text
                onClicked: card.mended()
            }
        }
    }
}
