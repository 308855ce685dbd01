import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic as Basic
import Weavelog.Theme

// One of several answers of which one holds, each a whole sentence that is never cut. Its owner says which one is `on`.
Basic.RadioButton {
    id: answer

    property bool on: false

    implicitWidth: 320
    implicitHeight: Math.max(Theme.mainTouch, implicitContentHeight + topPadding + bottomPadding)
    leftPadding: Theme.gap
    rightPadding: Theme.gap
    topPadding: Theme.gap
    bottomPadding: Theme.gap
    checked: on
    autoExclusive: false
    indicator: null
    focusPolicy: Qt.StrongFocus
    activeFocusOnTab: true
    font.pixelSize: Theme.type.body
    Accessible.name: text
    Keys.onReturnPressed: clicked()
    Keys.onEnterPressed: clicked()

    background: Rectangle {
        radius: Theme.radius
        color: answer.on || answer.down ? Theme.colour.chosenGround : Theme.colour.raised
        border.width: 2
        border.color: answer.on ? Theme.colour.action : Theme.colour.controlLine
    }
    contentItem: RowLayout {
        spacing: Theme.gap

        Rectangle {
            implicitWidth: 26
            implicitHeight: 26
            radius: 13
            color: "transparent"
            border.width: 2
            border.color: answer.on ? Theme.colour.action : Theme.colour.controlLine
            Rectangle {
                anchors.centerIn: parent
                visible: answer.on
                width: 14
                height: 14
                radius: 7
                color: Theme.colour.action
            }
        }
        Words {
            Layout.fillWidth: true
            meaning: Words.Strong
            font.pixelSize: answer.font.pixelSize
            text: answer.text
            color: answer.on || answer.down ? Theme.colour.onChosen : Theme.colour.ink
            Accessible.ignored: true
        }
    }
    FocusRing { shown: answer.visualFocus }
}
