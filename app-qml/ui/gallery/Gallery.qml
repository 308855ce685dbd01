import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme

// Every part in every state, to look at and to walk by the tests.
PageFrame {
    id: gallery

    title: "Every part in every state"
    widest: 1240
    LayoutMirroring.enabled: Theme.rightToLeft
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
            checked: Theme.rightToLeft
            onToggled: Theme.rightToLeft = checked
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

        ColumnLayout {
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop
            spacing: Theme.room
            GalleryActions { Layout.fillWidth: true }
            GalleryChoices { Layout.fillWidth: true }
            GalleryNotices { Layout.fillWidth: true }
        }
        ColumnLayout {
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop
            spacing: Theme.room
            GalleryEntries { Layout.fillWidth: true }
            GalleryMarks { Layout.fillWidth: true }
            GalleryRows { Layout.fillWidth: true }
        }
    }
    GalleryFigures { Layout.fillWidth: true }
    GalleryPlaces { Layout.fillWidth: true }
    GalleryColours { Layout.fillWidth: true }
}
