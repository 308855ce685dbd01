import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme

Card {
    title: "Figures"

    GiantFigure { Layout.fillWidth: true; mains: "24.5"; mainsUnit: "kg"; crosses: "23.5"; crossesUnit: "kg" }
    GiantFigure { Layout.fillWidth: true; Layout.topMargin: Theme.room; mains: "55"; mainsUnit: "lb"; crosses: ""; crossesUnit: "lb" }
    Flow {
        Layout.fillWidth: true
        spacing: Theme.page
        Digits { value: "1.25"; unit: "mm" }
        Digits { value: "640"; unit: "cm²" }
        Digits { value: ""; unit: "%" }
        Digits { value: "17"; size: Theme.type.heading }
    }
    Words { Layout.fillWidth: true; meaning: Words.Heading; text: "Heading" }
    Words { Layout.fillWidth: true; meaning: Words.Title; text: "Title" }
    Words { Layout.fillWidth: true; text: "Body text, as long as it needs to be, and it wraps where the line ends." }
    Words { Layout.fillWidth: true; quiet: true; meaning: Words.Caption; text: "Caption: said quietly" }
}
