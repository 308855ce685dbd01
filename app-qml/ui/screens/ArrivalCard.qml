pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The entry list of the event beside what this tablet knows. Whom one ticks, goes across.
Card {
    id: card

    property bool all: false

    title: qsTr("Entry list")
    detail: qsTr("%1 known here, %2 to be looked at, of %3. Ticked players' histories go to the event server; it learns of nobody else.")
        .arg(ArrivalModel.known).arg(ArrivalModel.likely).arg(ArrivalModel.count)

    SideBySide {
        Layout.fillWidth: true
        ActionButton {
            objectName: "tickKnown"
            width: parent.columnWidth
            kind: ActionButton.Secondary
            enabled: ArrivalModel.known > 0
            text: qsTr("Tick all known players")
            onClicked: ArrivalModel.tickAllKnown()
        }
        ActionButton {
            objectName: "send"
            width: parent.columnWidth
            enabled: ArrivalModel.ticked > 0
            text: ArrivalModel.ticked > 0 ? qsTr("Send %n player(s)", "", ArrivalModel.ticked) : qsTr("Nobody is ticked")
            onClicked: ArrivalModel.send()
        }
    }
    ToggleRow {
        Layout.fillWidth: true
        text: qsTr("Show those who are new, too")
        checked: card.all
        onToggled: card.all = checked
    }
    Repeater {
        model: ArrivalModel

        ArrivalRow {
            Layout.fillWidth: true
            visible: card.all || band !== ArrivalModel.New
        }
    }
}
