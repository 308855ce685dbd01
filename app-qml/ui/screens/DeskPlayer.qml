import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The player who stands at the desk.
FocusScope {
    readonly property real footHeight: strip.height

    PageFrame {
        anchors.top: parent.top
        anchors.bottom: strip.top
        anchors.bottomMargin: ToastRoom.height
        width: parent.width
        title: DeskModel.card.name
        detail: DeskModel.card.detail

        AccountButton {
            objectName: "account"
            book: DeskModel.card.book
        }
        PlayerDetails {
            Layout.fillWidth: true
            card: DeskModel.card
        }
        Item { Layout.fillHeight: true }
    }
    ActionStrip {
        id: strip
        anchors.bottom: parent.bottom
        width: parent.width

        IconAction {
            objectName: "back"
            Layout.preferredWidth: Theme.mainTouch
            Layout.preferredHeight: Theme.mainTouch
            iconName: "back"
            text: qsTr("Back")
            framed: true
            onClicked: DeskModel.back()
        }
        ActionButton {
            objectName: "askEverything"
            Layout.fillWidth: true
            Layout.preferredWidth: 2
            kind: DeskModel.card.hasLastTime ? ActionButton.Secondary : ActionButton.Primary
            text: DeskModel.card.hasLastTime ? qsTr("Ask everything") : qsTr("Take rackets in")
            onClicked: DeskModel.askEverything()
        }
        ActionButton {
            objectName: "sameAsLastTime"
            focus: true
            Layout.fillWidth: true
            Layout.preferredWidth: 3
            visible: DeskModel.card.hasLastTime
            iconName: "check"
            text: qsTr("Same as last time")
            onClicked: DeskModel.sameAsLastTime()
        }
    }
}
