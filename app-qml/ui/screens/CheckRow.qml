import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// One item of the check: in order, or not. The words take the tap that says "in order".
Rectangle {
    id: row

    property string text
    property int found: CheckModel.Unseen
    signal said(int found)

    implicitHeight: Math.max(Theme.mainTouch, line.implicitHeight + 2 * Theme.tight)
    radius: Theme.radius
    color: found === CheckModel.Right ? Theme.colour.agreedGround
         : found === CheckModel.Wrong ? Theme.colour.dangerGround : "transparent"
    border.width: 1
    border.color: Theme.colour.line

    RowLayout {
        id: line
        anchors.verticalCenter: parent.verticalCenter
        x: Theme.gap
        width: parent.width - Theme.gap - Theme.tight
        spacing: Theme.tight

        Words {
            Layout.fillWidth: true
            meaning: row.found === CheckModel.Unseen ? Words.Body : Words.Strong
            text: row.text
        }
        IconAction {
            objectName: "right"
            Layout.preferredWidth: 60
            Layout.preferredHeight: Theme.touch
            framed: true
            iconName: row.found === CheckModel.Right ? "ready" : "check"
            text: qsTr("In order: %1").arg(row.text)
            Accessible.description: row.found === CheckModel.Right ? qsTr("Said") : ""
            onClicked: row.said(CheckModel.Right)
        }
        IconAction {
            objectName: "wrong"
            Layout.preferredWidth: 60
            Layout.preferredHeight: Theme.touch
            framed: true
            iconName: row.found === CheckModel.Wrong ? "stopped" : "close"
            text: qsTr("Not in order: %1").arg(row.text)
            Accessible.description: row.found === CheckModel.Wrong ? qsTr("Said") : ""
            onClicked: row.said(CheckModel.Wrong)
        }
    }
}
