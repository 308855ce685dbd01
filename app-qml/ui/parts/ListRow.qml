import QtQuick
import QtQuick.Layouts
import Weavelog.Theme

// One of many: a name, what is worth knowing about it, and what stands at its end.
TouchButton {
    id: row

    property string detail
    property string iconName
    property string endText
    property bool chosen: false
    property bool opens: true
    property bool flat: false // no line below it
    property int mostLines: 2 // of its text
    default property alias endContent: end.data

    implicitWidth: 320
    implicitHeight: Math.max(64, implicitContentHeight + topPadding + bottomPadding)
    leftPadding: Theme.gap
    rightPadding: Theme.gap
    topPadding: Theme.tight
    bottomPadding: Theme.tight
    ringInside: true
    Accessible.role: Accessible.ListItem
    Accessible.description: detail.length > 0 && endText.length > 0 ? detail + ", " + endText : detail + endText
    Accessible.selected: chosen

    background: Rectangle {
        radius: Theme.radius
        color: row.chosen || row.down ? Theme.colour.chosenGround : "transparent"

        Rectangle {
            visible: row.chosen
            anchors.left: parent.left
            width: 5
            height: parent.height
            color: Theme.colour.action
        }
        Rectangle {
            visible: !row.chosen && !row.flat
            anchors.bottom: parent.bottom
            width: parent.width
            height: 1
            color: Theme.colour.line
        }
    }
    contentItem: RowLayout {
        spacing: Theme.gap

        Icon {
            visible: row.iconName.length > 0
            name: row.iconName
            colour: row.enabled ? Theme.colour.action : Theme.colour.disabledInk
        }
        ColumnLayout {
            spacing: 0
            Layout.fillWidth: true

            Words {
                Layout.fillWidth: true
                meaning: Words.Strong
                text: row.text
                maximumLineCount: row.mostLines
                elide: Text.ElideRight
                color: !row.enabled ? Theme.colour.disabledInk : row.chosen ? Theme.colour.onChosen : Theme.colour.ink
                Accessible.ignored: true
            }
            Words {
                Layout.fillWidth: true
                visible: row.detail.length > 0
                meaning: Words.Caption
                text: row.detail
                maximumLineCount: 2
                elide: Text.ElideRight
                color: !row.enabled ? Theme.colour.disabledInk : row.chosen ? Theme.colour.onChosen : Theme.colour.quietInk
                Accessible.ignored: true
            }
        }
        Words {
            visible: row.endText.length > 0
            text: row.endText
            wrapMode: Text.NoWrap
            color: !row.enabled ? Theme.colour.disabledInk : row.chosen ? Theme.colour.onChosen : Theme.colour.ink
            Accessible.ignored: true
        }
        RowLayout {
            id: end
            Layout.fillWidth: false
            visible: children.length > 0
        }
        Icon {
            visible: row.opens
            name: "chevron"
            size: 20
            colour: row.enabled ? Theme.colour.quietInk : Theme.colour.disabledInk
        }
    }
}
