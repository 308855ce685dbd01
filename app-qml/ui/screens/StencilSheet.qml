pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The marks that a racket gets, before they are put on.
Sheet {
    id: sheet

    title: qsTr("Stencils: %1").arg(CheckModel.player)

    RowLayout {
        Layout.fillWidth: true
        spacing: Theme.gap
        Words {
            visible: CheckModel.tag.length > 0
            meaning: Words.Figure
            text: CheckModel.tag
            wrapMode: Text.NoWrap
            Accessible.name: qsTr("Tag %1").arg(text)
        }
        Words {
            Layout.fillWidth: true
            text: CheckModel.racket.length > 0 ? qsTr("Racket %1").arg(CheckModel.racket) : ""
        }
        StageMark { stage: CheckModel.stage }
    }
    Notice {
        Layout.fillWidth: true
        visible: CheckModel.stencils.length === 0
        text: qsTr("The player asked for no stencil.")
    }
    SideBySide {
        id: beds
        Layout.fillWidth: true
        least: 220
        Repeater {
            model: CheckModel.stencils
            StencilBed {
                id: bed
                required property var modelData
                width: beds.columnWidth
                title: bed.modelData.ofString ? qsTr("Mark of the string") : qsTr("Mark of the racket")
                mark: bed.modelData.mark
                ink: bed.modelData.ink
            }
        }
    }
    Notice {
        objectName: "inkCaution"
        Layout.fillWidth: true
        visible: CheckModel.caution.length > 0 && CheckModel.stencils.length > 0
        kind: Notice.Danger
        text: CheckModel.caution
    }
    ActionButton {
        objectName: "stencilled"
        Layout.fillWidth: true
        iconName: "ink"
        text: CheckModel.stencils.length > 0 ? qsTr("The stencils are on") : StageWords.title(8)
        enabled: CheckModel.stage === 6 || CheckModel.stage === 7
        onClicked: if (CheckModel.stencilled(CheckModel.tag.length > 0
                       ? qsTr("Tag %1: %2").arg(CheckModel.tag).arg(StageWords.title(8)) : StageWords.title(8))) sheet.close()
    }
}
