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
    // What goes in at that tension: its name, and "1.25 mm"; nothing stands there without withStrings.
    property bool withStrings: false
    property string mainsString
    property string mainsGauge
    property string crossesString
    property string crossesGauge
    readonly property bool stacked: width < 640

    implicitWidth: 900
    implicitHeight: grid.implicitHeight
    Accessible.role: Accessible.StaticText
    Accessible.name: qsTr("Mains %1 %2, crosses %3 %4").arg(mains).arg(mainsUnit).arg(crosses).arg(crossesUnit)

    // A positioner: its height follows a wrapped name at once.
    component StringUnder: Column {
        id: under
        property string part
        property string name
        property string gauge
        property real size: Theme.type.title
        Words {
            width: under.width
            meaning: Words.Title
            font.pixelSize: under.size
            quiet: under.name.length === 0
            text: under.name.length === 0 && under.gauge.length === 0 ? qsTr("String not said")
                : Listing.dotted([under.name.length > 0 ? under.name : qsTr("String not said"), under.gauge])
            Accessible.name: under.part + ": " + text
        }
    }
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
            StringUnder {
                objectName: "mainsString"
                Layout.fillWidth: true
                visible: giant.withStrings
                part: qsTr("Mains")
                name: giant.mainsString
                gauge: giant.mainsGauge
                size: giant.stacked ? Theme.type.title : Theme.type.heading * 0.86
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
            StringUnder {
                objectName: "crossesString"
                Layout.fillWidth: true
                visible: giant.withStrings
                part: qsTr("Crosses")
                name: giant.crossesString
                gauge: giant.crossesGauge
                size: giant.stacked ? Theme.type.title : Theme.type.heading * 0.86
            }
        }
    }
}
