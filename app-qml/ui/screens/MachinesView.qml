pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The machines of the room: what each needs, and what is done to it, by one tap.
ScrollColumn {
    id: view

    readonly property var kinds: ["", qsTr("Constant-pull"), qsTr("Lockout"), qsTr("Drop-weight")]
    signal addAsked()
    signal careAsked(var machine)

    spacing: Theme.room

    ActionButton {
        objectName: "addMachine"
        Layout.fillWidth: view.width < Theme.phoneWidth
        kind: ActionButton.Secondary
        iconName: "plus"
        text: qsTr("New machine")
        onClicked: view.addAsked()
    }
    EmptyState {
        Layout.fillWidth: true
        visible: MachinesModel.machines.length === 0
        iconName: "bench"
        title: qsTr("No machine is listed")
        text: qsTr("List the machines; then rackets are counted for each, and you see when clamps are due.")
    }
    SideBySide {
        id: cards
        Layout.fillWidth: true
        least: 340
        spacing: Theme.room

        Repeater {
            model: MachinesModel.machines

            Card {
                id: card
                required property var modelData
                objectName: "machine"
                width: cards.columnWidth
                title: modelData.name
                detail: Listing.dotted([view.kinds[modelData.kind] ?? "", modelData.maker,
                                        modelData.most.length > 0 ? qsTr("to %1").arg(modelData.most) : "",
                                        modelData.prestretch.length > 0 ? qsTr("pre-stretch %1 %").arg(modelData.prestretch) : "",
                                        modelData.whose])

                Notice {
                    Layout.fillWidth: true
                    visible: card.modelData.broken
                    kind: Notice.Danger
                    title: qsTr("Out of order")
                    text: Listing.commas([card.modelData.reason, card.modelData.by])
                }
                Notice {
                    Layout.fillWidth: true
                    visible: card.modelData.due && !card.modelData.broken
                    kind: Notice.Attention
                    title: qsTr("Clean the clamps")
                    text: qsTr("Dirty clamps slip and leave marks. Follow the maker’s instructions.")
                }
                Words {
                    Layout.fillWidth: true
                    text: Listing.dotted([qsTr("%n racket(s) since its clamps were cleaned", "", card.modelData.strung), card.modelData.cleaned])
                }
                Words {
                    Layout.fillWidth: true
                    visible: card.modelData.asked !== undefined
                    text: card.modelData.asked === undefined ? ""
                        : qsTr("Calibration: %1 set, %2 read (%3 %)").arg(card.modelData.asked).arg(card.modelData.read).arg(card.modelData.off ?? "0")
                }
                ActionButton {
                    objectName: "clean"
                    Layout.fillWidth: true
                    iconName: "check"
                    text: qsTr("Clamps cleaned")
                    onClicked: MachinesModel.clean(card.modelData.id, qsTr("%1: clamps cleaned").arg(card.modelData.name))
                }
                ActionButton {
                    objectName: "more"
                    Layout.fillWidth: true
                    kind: ActionButton.Secondary
                    text: card.modelData.broken ? qsTr("Back in order") : qsTr("Calibration, or out of order")
                    onClicked: {
                        if (card.modelData.broken)
                            MachinesModel.mend(card.modelData.id, qsTr("%1 is back in order").arg(card.modelData.name));
                        else
                            view.careAsked(card.modelData);
                    }
                }
            }
        }
    }
}
