import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic as Basic
import Weavelog.Theme

// A page of the app: its heading, and its content in one column that scrolls and follows the keyboard.
FocusScope {
    id: page

    property string title
    property string detail
    property int widest: 1000
    default property alias content: body.data
    property alias flickable: flick
    readonly property bool narrow: width < Theme.phoneWidth
    readonly property int margin: narrow ? Theme.gap + 4 : Theme.page

    ScrollColumn {
        id: flick
        anchors.fill: parent
        margin: page.margin
        widest: page.widest
        spacing: Theme.room
        Basic.ScrollBar.vertical: Basic.ScrollBar {}

        ColumnLayout {
            Layout.fillHeight: false
            visible: page.title.length > 0
            spacing: 2
            Words {
                Layout.fillWidth: true
                meaning: Words.Heading
                text: page.title
            }
            Words {
                Layout.fillWidth: true
                visible: page.detail.length > 0
                quiet: true
                text: page.detail
            }
        }
        ColumnLayout {
            id: body
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.maximumHeight: Infinity
            spacing: Theme.room
        }
    }
}
