import QtQuick
import QtQuick.Layouts
import Weavelog.Theme

// A racket that goes before others; from the court, before all.
Rectangle {
    id: mark

    // 0 none, 1 rush, 2 from the court.
    property int rush: 0
    readonly property string word: rush === 2 ? qsTr("On court") : qsTr("Rush")

    visible: rush > 0
    implicitWidth: row.implicitWidth + 2 * Theme.tight
    implicitHeight: row.implicitHeight + 4
    radius: 3
    color: Theme.colour.rush
    Accessible.role: Accessible.StaticText
    Accessible.name: word

    RowLayout {
        id: row
        anchors.centerIn: parent
        spacing: 3
        Icon { name: "rush"; size: Theme.type.caption; colour: Theme.colour.onRush }
        Words {
            meaning: Words.Strong
            font.pixelSize: Theme.type.caption
            text: mark.word
            color: Theme.colour.onRush
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
    }
}
