import QtQuick
import QtQuick.Layouts
import Weavelog.Theme

// What changes: its name, the old value, the new one.
Item {
    id: line

    property string label
    property string oldValue
    property string newValue
    readonly property bool changed: oldValue !== newValue

    implicitWidth: 320
    implicitHeight: Math.max(40, grid.implicitHeight + Theme.tight)
    Accessible.role: Accessible.StaticText
    Accessible.name: changed ? qsTr("%1: was %2, now %3").arg(label).arg(oldValue).arg(newValue)
                             : qsTr("%1: %2, as before").arg(label).arg(newValue)

    GridLayout {
        id: grid
        width: parent.width
        anchors.verticalCenter: parent.verticalCenter
        columns: line.width < 420 ? 1 : 2
        rowSpacing: 0
        columnSpacing: Theme.gap

        Words {
            Layout.fillWidth: true
            Layout.preferredWidth: 2
            quiet: true
            text: line.label
            Accessible.ignored: true
        }
        RowLayout {
            Layout.fillWidth: true
            Layout.preferredWidth: 3
            spacing: Theme.gap

            Words {
                visible: line.changed
                quiet: true
                font.strikeout: true
                text: line.oldValue
                Accessible.ignored: true
            }
            Icon {
                visible: line.changed
                name: "arrow"
                size: 20
                colour: Theme.colour.attention
            }
            Rectangle {
                Layout.fillWidth: false
                Layout.maximumWidth: line.width
                implicitWidth: fresh.implicitWidth + (line.changed ? 2 * Theme.tight : 0)
                implicitHeight: fresh.implicitHeight + 4
                radius: 3
                color: line.changed ? Theme.colour.attentionGround : "transparent"
                Words {
                    id: fresh
                    anchors.centerIn: parent
                    meaning: line.changed ? Words.Strong : Words.Body
                    text: line.newValue
                    Accessible.ignored: true
                }
            }
            Item { Layout.fillWidth: true }
        }
    }
}
