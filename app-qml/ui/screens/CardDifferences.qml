pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme

// Fields in which a player card and this device differ, with when each was said.
Card {
    id: card

    // [{field, of, ours, oursAt, card, cardAt}]
    property var differences: []

    Repeater {
        model: card.differences

        Column {
            id: line
            required property var modelData

            function said(value, at) {
                const text = value.length > 0 ? value : qsTr("nothing");
                return at.length > 0 ? text + " (" + at + ")" : text;
            }

            Layout.fillWidth: true
            spacing: 2
            Words {
                width: line.width
                meaning: Words.Strong
                text: line.modelData.of.length > 0 ? qsTr("%1, %2").arg(line.modelData.field).arg(line.modelData.of) : line.modelData.field
            }
            Words {
                width: line.width
                text: qsTr("Here: %1").arg(line.said(line.modelData.ours, line.modelData.oursAt))
            }
            Words {
                width: line.width
                text: qsTr("Card: %1").arg(line.said(line.modelData.card, line.modelData.cardAt))
            }
        }
    }
}
