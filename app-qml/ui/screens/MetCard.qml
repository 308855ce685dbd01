import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// A colleague's tablet that plays the host without an event: whose books go there is ticked, player by player.
Card {
    id: card

    objectName: "met"
    title: qsTr("Give players to %1").arg(MetModel.host)
    detail: MetModel.onlyGets ? qsTr("It lets this tablet only get players, not bring any.")
                              : qsTr("There is no event there: only whom you tick goes across, and what is newer of them whenever the two meet again.")

    PlayerPick {
        Layout.fillWidth: true
        visible: !MetModel.onlyGets
        choice: MetModel.choice
    }
    ActionButton {
        objectName: "giveToMet"
        Layout.fillWidth: true
        visible: !MetModel.onlyGets
        enabled: MetModel.choice.chosen > 0
        text: MetModel.choice.chosen > 0 ? qsTr("Give %n player(s)", "", MetModel.choice.chosen) : qsTr("Give")
        onClicked: MetModel.give()
    }
    Words {
        objectName: "givenToMet"
        Layout.fillWidth: true
        visible: MetModel.given.length > 0
        quiet: true
        text: qsTr("Both exchange: %1").arg(MetModel.given)
    }
}
