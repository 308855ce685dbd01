pragma ComponentBehavior: Bound
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
        readonly property var groups: card.draft.groups
        readonly property bool apart: Array.from(card.draft.differing).some(field => field.endsWith("_tension"))
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
                visible: spread.apart
                kind: ActionButton.Quiet
                text: qsTr("All as the first")
                onClicked: card.draft.spread(99, "0")
            }
        }
        // Each of them is a setup of the player's, and has a name by one tap.
        Repeater {
            model: spread.apart ? spread.groups.length : 0
            Column {
                id: group
                required property int index
                readonly property var held: spread.groups[group.index] ?? { rackets: "", mains: "", crosses: "", key: "", name: "" }
                // Named by the player, not as every room has it.
                readonly property bool own: held.key.length > 0 && !held.key.startsWith("=")
                property bool naming: false
                width: spread.width
                spacing: Theme.tight
                topPadding: Theme.tight
                Words {
                    width: group.width
                    text: qsTr("Racket %1: %2 / %3").arg(group.held.rackets).arg(group.held.mains).arg(group.held.crosses)
                          + (group.held.name.length > 0 ? "  ·  " + group.held.name : "")
                }
                SideBySide {
                    id: names
                    width: group.width
                    least: 96
                    most: 4
                    spacing: Theme.tight
                    Repeater {
                        model: [{ key: "=day", text: qsTr("day") }, { key: "=night", text: qsTr("night") }, { key: "=new_balls", text: qsTr("new balls") }]
                        ActionButton {
                            required property var modelData
                            required property int index
                            readonly property bool on: group.held.key === modelData.key
                            objectName: "name" + group.index + "-" + index
                            width: names.columnWidth
                            leftPadding: Theme.tight
                            rightPadding: Theme.tight
                            kind: on ? ActionButton.Primary : ActionButton.Secondary
                            iconName: on ? "check" : ""
                            text: modelData.text
                            Accessible.name: on ? qsTr("Racket %1 is kept as: %2").arg(group.held.rackets).arg(text)
                                                : qsTr("Keep racket %1 as: %2").arg(group.held.rackets).arg(text)
                            onClicked: card.draft.nameGroup(group.index, on ? "" : modelData.key)
                        }
                    }
                    ActionButton {
                        objectName: "otherName" + group.index
                        width: names.columnWidth
                        leftPadding: Theme.tight
                        rightPadding: Theme.tight
                        kind: group.own ? ActionButton.Primary : ActionButton.Secondary
                        iconName: group.own ? "check" : ""
                        text: group.own ? group.held.name : qsTr("other …")
                        Accessible.name: group.own ? qsTr("Racket %1 is kept as: %2").arg(group.held.rackets).arg(group.held.name)
                                                   : qsTr("Another name for racket %1").arg(group.held.rackets)
                        onClicked: {
                            group.naming = !group.naming;
                            if (!group.naming) return;
                            ownName.text = group.own ? group.held.name : "";
                            ownName.takeFocus();
                        }
                    }
                }
                TextEntry {
                    id: ownName
                    objectName: "ownName" + group.index
                    width: group.width
                    visible: group.naming
                    label: qsTr("Name of the setup, as the player says it")
                    hint: qsTr("Empty: as it was before")
                    field.maximumLength: 40
                    onAccepted: group.naming = false
                    onEdited: text => card.draft.nameGroup(group.index, text)
                }
            }
        }
    }
}
