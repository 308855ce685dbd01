import QtQuick
import QtQuick.Layouts
import Weavelog.Parts

// A code that lets one more tablet in: whose it is, the code to scan, the same in five words, where and until when.
ColumnLayout {
    id: code

    property string whose
    property var rows: []
    property string words
    property string address
    property string until

    readonly property real side: Math.min(340, width)

    Words {
        objectName: "codeOf"
        Layout.fillWidth: true
        meaning: Words.Strong
        text: code.whose
        horizontalAlignment: Text.AlignHCenter
    }
    CodeSquare {
        Layout.alignment: Qt.AlignHCenter
        Layout.preferredWidth: code.side
        Layout.preferredHeight: code.side
        rows: code.rows
    }
    Words {
        Layout.fillWidth: true
        meaning: Words.Title
        text: code.words
        horizontalAlignment: Text.AlignHCenter
    }
    Words {
        Layout.fillWidth: true
        quiet: true
        text: qsTr("At %1, until %2").arg(code.address).arg(code.until)
        horizontalAlignment: Text.AlignHCenter
    }
}
