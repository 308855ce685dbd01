import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Mains and crosses, each in its own unit.
Card {
    id: card

    required property DropOffDraft draft

    title: qsTr("Tension")

    SideBySide {
        Layout.fillWidth: true
        least: 300
        spacing: Theme.room

        TensionPart {
            objectName: "mains"
            width: parent.columnWidth
            draft: card.draft
            part: "mains"
            label: qsTr("Mains")
        }
        TensionPart {
            objectName: "crosses"
            width: parent.columnWidth
            draft: card.draft
            part: "crosses"
            label: qsTr("Crosses")
        }
    }
    // Several rackets for one match: the player takes up the next tension as the day goes.
    Column {
        id: spread
        readonly property string by: Array.from(card.draft.steps("mains"))[2] ?? "0.5"
        readonly property string shown: "+" + Figures.shown(by, Settings.language)
        Layout.fillWidth: true
        visible: card.draft.pickedCount > 1 && card.draft.scope < 0 && (card.draft.wish["mains_tension"] ?? "").length
                 + (card.draft.wish["crosses_tension"] ?? "").length + card.draft.differing.length > 0
        spacing: Theme.tight

        Words {
            width: spread.width
            meaning: Words.Strong
            font.pixelSize: Theme.type.caption
            text: qsTr("Spread over the rackets, from the first one")
        }
        SideBySide {
            id: ways
            width: spread.width
            least: 150
            most: 3
            spacing: Theme.tight
            ActionButton {
                objectName: "spreadEach"
                width: ways.columnWidth
                kind: ActionButton.Secondary
                text: qsTr("Each %1").arg(spread.shown)
                Accessible.name: qsTr("Each racket %1 above the one before").arg(spread.shown)
                onClicked: card.draft.spread(1, spread.by)
            }
            ActionButton {
                objectName: "spreadTwo"
                width: ways.columnWidth
                visible: card.draft.pickedCount > 2
                kind: ActionButton.Secondary
                text: qsTr("Two and two %1").arg(spread.shown)
                Accessible.name: qsTr("Two rackets alike, the next two %1 above them").arg(spread.shown)
                onClicked: card.draft.spread(2, spread.by)
            }
            ActionButton {
                objectName: "spreadNone"
                width: ways.columnWidth
                visible: Array.from(card.draft.differing).some(field => field.endsWith("_tension"))
                kind: ActionButton.Quiet
                text: qsTr("All as the first")
                onClicked: card.draft.spread(99, "0")
            }
        }
        Words {
            width: spread.width
            visible: Array.from(card.draft.differing).some(field => field.endsWith("_tension"))
            text: Array.from(card.draft.rackets).filter(racket => racket.picked).map(
                (racket, i) => qsTr("Racket %1: %2 / %3").arg(racket.label.length > 0 ? racket.label : i + 1).arg(racket.mains).arg(racket.crosses)).join("  ·  ")
        }
    }
}
