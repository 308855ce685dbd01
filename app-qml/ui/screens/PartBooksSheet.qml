import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// Books that were linked are parted: what each holds stays with it.
Sheet {
    id: sheet

    required property PersonLinks links

    function begin() { open(); }

    title: qsTr("Not the same person")

    Words {
        Layout.fillWidth: true
        text: qsTr("This book is parted from the others. Each is as it was before they were linked; what was answered since for both stays in both.")
    }
    SaidBy { Layout.fillWidth: true }
    ActionButton {
        objectName: "partThem"
        Layout.fillWidth: true
        kind: ActionButton.Danger
        enabled: Settings.stringer.length > 0
        text: qsTr("Part the books")
        onClicked: if (sheet.links.part(Settings.stringer, "")) sheet.close()
    }
}
