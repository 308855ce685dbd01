import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic as Basic
import Weavelog.Parts
import Weavelog.Theme

// One answer to an open question, with who said it, where and when; one of several is chosen.
Basic.RadioButton {
    id: row

    property string detail
    property list<Item> more  // below the detail; nothing usually

    implicitHeight: Math.max(Theme.mainTouch, implicitContentHeight + topPadding + bottomPadding)
    topPadding: Theme.tight
    bottomPadding: Theme.tight
    leftPadding: Theme.gap
    rightPadding: Theme.gap
    autoExclusive: false
    focusPolicy: Qt.StrongFocus
    activeFocusOnTab: true
    indicator: null
    Accessible.name: text
    Accessible.description: detail
    Keys.onReturnPressed: clicked()
    Keys.onEnterPressed: clicked()

    background: Rectangle {
        radius: Theme.radius
        color: row.checked || row.down ? Theme.colour.chosenGround : Theme.colour.raised
        border.width: 2
        border.color: row.checked ? Theme.colour.action : Theme.colour.controlLine
    }
    contentItem: RowLayout {
        spacing: Theme.gap

        Rectangle {
            implicitWidth: 28
            implicitHeight: 28
            radius: 14
            color: row.checked ? Theme.colour.action : Theme.colour.field
            border.width: 2
            border.color: row.checked ? Theme.colour.action : Theme.colour.controlLine
            Icon {
                anchors.centerIn: parent
                visible: row.checked
                name: "check"
                size: 20
                stroke: 3
                colour: Theme.colour.onAction
            }
        }
        ColumnLayout {
            Layout.fillWidth: true
            spacing: 0
            Words {
                Layout.fillWidth: true
                meaning: Words.Title
                text: row.text
                color: row.checked ? Theme.colour.onChosen : Theme.colour.ink
                Accessible.ignored: true
            }
            Words {
                Layout.fillWidth: true
                visible: row.detail.length > 0
                text: row.detail
                color: row.checked ? Theme.colour.onChosen : Theme.colour.quietInk
                Accessible.ignored: true
            }
            Column {
                Layout.fillWidth: true
                Component.onCompleted: {
                    for (let i = 0; i < row.more.length; ++i) row.more[i].parent = this;
                }
            }
        }
    }
    FocusRing { shown: row.visualFocus }
}
