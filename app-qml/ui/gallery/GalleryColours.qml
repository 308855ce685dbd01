import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme

Card {
    title: "Colours"

    Flow {
        Layout.fillWidth: true
        spacing: Theme.gap

        Repeater {
            model: ["ground", "surface", "raised", "field", "ink", "quietInk", "line", "controlLine", "focus", "action",
                    "onAction", "chosenGround", "onChosen", "agreed", "agreedGround", "attention", "attentionGround",
                    "danger", "dangerGround", "dangerAction", "rush", "disabledGround", "disabledInk", "toast"]

            ColumnLayout {
                id: swatch
                required property string modelData
                spacing: 2

                Rectangle {
                    implicitWidth: 150
                    implicitHeight: 44
                    radius: Theme.radius
                    color: Theme.colour[swatch.modelData]
                    border.width: 1
                    border.color: Theme.colour.controlLine
                }
                Words {
                    Layout.preferredWidth: 150
                    meaning: Words.Caption
                    text: swatch.modelData
                    elide: Text.ElideRight
                    wrapMode: Text.NoWrap
                }
            }
        }
    }
}
