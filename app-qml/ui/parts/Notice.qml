import QtQuick
import QtQuick.Layouts
import Weavelog.Theme

// Something to know, to look at, or to beware of, with at most one thing to do about it.
Rectangle {
    id: notice

    enum Kind { Info, Attention, Danger, Agreed }
    property int kind: Notice.Info
    property string title
    property string text
    property string actionText
    signal acted()

    readonly property color inkColour: [
        Theme.colour.onChosen, Theme.colour.attention, Theme.colour.danger, Theme.colour.agreed][kind]

    implicitWidth: 320
    implicitHeight: flow.implicitHeight + 2 * Theme.gap
    radius: Theme.radius
    color: [Theme.colour.chosenGround, Theme.colour.attentionGround, Theme.colour.dangerGround,
            Theme.colour.agreedGround][kind]
    Accessible.role: Accessible.AlertMessage
    Accessible.name: title.length > 0 ? title + ". " + text : text

    Rectangle {
        anchors.left: parent.left
        width: 6
        height: parent.height
        radius: 3
        color: notice.inkColour
    }
    GridLayout {
        id: flow
        x: Theme.room
        y: Theme.gap
        width: parent.width - Theme.room - Theme.gap
        columns: notice.width < 520 ? 2 : 3
        columnSpacing: Theme.gap
        rowSpacing: Theme.tight

        Icon {
            Layout.alignment: Qt.AlignTop
            name: ["info", "question", "warning", "ready"][notice.kind]
            colour: notice.inkColour
            size: 28
        }
        // Not a layout: within another one it does not hear that a title has become a line higher.
        Column {
            spacing: 2
            Layout.fillWidth: true
            Layout.preferredWidth: 1

            Words {
                width: parent.width
                visible: notice.title.length > 0
                meaning: Words.Strong
                text: notice.title
                color: notice.inkColour
                Accessible.ignored: true
            }
            Words {
                width: parent.width
                visible: notice.text.length > 0
                text: notice.text
                Accessible.ignored: true
            }
        }
        ActionButton {
            Layout.column: flow.columns === 2 ? 1 : 2
            Layout.row: flow.columns === 2 ? 1 : 0
            visible: notice.actionText.length > 0
            kind: ActionButton.Secondary
            text: notice.actionText
            onClicked: notice.acted()
        }
    }
}
