import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme

// Every part in every state, to look at and to walk by the tests.
PageFrame {
    id: gallery

    property bool rightToLeft: false

    title: "Every part in every state"
    widest: 1240
    LayoutMirroring.enabled: rightToLeft
    LayoutMirroring.childrenInherit: true

    Card {
        Layout.fillWidth: true
        title: "How it is shown"

        ToggleRow {
            objectName: "dark"
            Layout.fillWidth: true
            text: "Dark"
            checked: Theme.dark
            onToggled: Theme.dark = checked
        }
        ToggleRow {
            objectName: "rightToLeft"
            Layout.fillWidth: true
            text: "Right to left"
            checked: gallery.rightToLeft
            onToggled: gallery.rightToLeft = checked
        }
        ChoiceBar {
            objectName: "textScale"
            Layout.fillWidth: true
            label: "Size of text"
            value: Theme.textScale
            options: [{ value: 0.85, text: "85 %" }, { value: 1, text: "100 %" }, { value: 1.25, text: "125 %" },
                      { value: 1.6, text: "160 %" }]
            onChosen: value => Theme.textScale = value
        }
    }
    GridLayout {
        Layout.fillWidth: true
        columns: gallery.width < 1000 ? 1 : 2
        columnSpacing: Theme.room
        rowSpacing: Theme.room

        GalleryActions { Layout.fillWidth: true; Layout.alignment: Qt.AlignTop; Layout.preferredWidth: 1 }
        GalleryEntries { Layout.fillWidth: true; Layout.alignment: Qt.AlignTop; Layout.preferredWidth: 1 }
        GalleryChoices { Layout.fillWidth: true; Layout.alignment: Qt.AlignTop; Layout.preferredWidth: 1 }
        GalleryMarks { Layout.fillWidth: true; Layout.alignment: Qt.AlignTop; Layout.preferredWidth: 1 }
        GalleryRows { Layout.fillWidth: true; Layout.alignment: Qt.AlignTop; Layout.preferredWidth: 1 }
        GalleryNotices { Layout.fillWidth: true; Layout.alignment: Qt.AlignTop; Layout.preferredWidth: 1 }
    }
    GalleryFigures { Layout.fillWidth: true }
    GalleryPlaces { Layout.fillWidth: true }
    GalleryColours { Layout.fillWidth: true }
}
