import QtQuick
import QtQuick.Layouts
import Weavelog.Theme

// The tension as the trade tells it, mains / crosses, each with its unit, readable at two metres.
FocusScope {
    id: giant

    property string mains
    property string mainsUnit
    property string crosses
    property string crossesUnit
    readonly property bool stacked: width < 640

    implicitWidth: 900
    implicitHeight: grid.implicitHeight
    Accessible.role: Accessible.StaticText
    Accessible.name: qsTr("Mains %1 %2, crosses %3 %4").arg(mains).arg(mainsUnit).arg(crosses).arg(crossesUnit)

    GridLayout {
        id: grid
        width: parent.width
        columns: giant.stacked ? 1 : 3
        columnSpacing: Theme.room
        rowSpacing: 0

        ColumnLayout {
            spacing: 0
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Words {
                meaning: Words.Title
                quiet: true
                text: qsTr("Mains")
                Accessible.ignored: true
            }
            Digits {
                Layout.fillWidth: true
                value: giant.mains
                unit: giant.mainsUnit
                size: giant.stacked ? Theme.type.giant * 0.7 : Theme.type.giant
                Accessible.ignored: true
            }
        }
        Rectangle {
            Layout.fillHeight: !giant.stacked
            Layout.fillWidth: giant.stacked
            Layout.topMargin: giant.stacked ? Theme.tight : Theme.room
            Layout.bottomMargin: Theme.tight
            implicitWidth: 3
            implicitHeight: 3
            color: Theme.colour.ink
        }
        ColumnLayout {
            spacing: 0
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Words {
                meaning: Words.Title
                quiet: true
                text: qsTr("Crosses")
                Accessible.ignored: true
            }
            Digits {
                Layout.fillWidth: true
                value: giant.crosses
                unit: giant.crossesUnit
                size: giant.stacked ? Theme.type.giant * 0.7 : Theme.type.giant
                Accessible.ignored: true
            }
        }
    }
}
