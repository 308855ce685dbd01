import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// What the person at this device prefers; nothing of it leaves the device.
PageFrame {
    title: qsTr("Settings")
    detail: qsTr("They hold for this device only; what an event is called holds for all who work at it.")
    widest: 760

    Card {
        Layout.fillWidth: true
        title: qsTr("Who works here")

        TextEntry {
            objectName: "stringer"
            Layout.fillWidth: true
            label: qsTr("Your name")
            hint: qsTr("It stands beside everything that you do with a racket.")
            text: Settings.stringer
            onEdited: text => Settings.stringer = text
        }
        TextEntry {
            objectName: "deviceName"
            Layout.fillWidth: true
            label: qsTr("Name of this tablet")
            hint: qsTr("Others read it beside your answers; a new one holds from the next start.")
            text: Settings.deviceName
            onEdited: text => Settings.deviceName = text
        }
    }
    EventsCard {
        Layout.fillWidth: true
        visible: AppDevice.open
    }
    Card {
        Layout.fillWidth: true
        title: qsTr("Language and unit")

        // A language is named in itself, so that whoever cannot read the present one finds it.
        ChoiceBar {
            objectName: "language"
            Layout.fillWidth: true
            label: qsTr("Language")
            value: Settings.language
            options: [
                { value: "en", text: "English" },
                { value: "fr", text: "Français" },
                { value: "es", text: "Español" },
                { value: "de", text: "Deutsch" }
            ]
            onChosen: value => Settings.language = value
        }
        ChoiceBar {
            objectName: "unit"
            Layout.fillWidth: true
            label: qsTr("Tension is asked in")
            value: Settings.tensionUnit
            options: [
                { value: "kg", text: "kg" },
                { value: "lb", text: "lb" },
                { value: "N", text: "N" }
            ]
            onChosen: value => Settings.tensionUnit = value
        }
    }
    Card {
        Layout.fillWidth: true
        title: qsTr("Scanner")

        ToggleRow {
            objectName: "scanSteps"
            Layout.fillWidth: true
            text: qsTr("The second scan takes the next step")
            detail: qsTr("Off: it is offered, and one tap takes it. Each step can be taken back.")
            checked: Settings.scanSteps
            onToggled: Settings.scanSteps = checked
        }
    }
    Card {
        Layout.fillWidth: true
        title: qsTr("Look")

        ChoiceBar {
            objectName: "appearance"
            Layout.fillWidth: true
            label: qsTr("Light or dark")
            value: Settings.appearance
            options: [
                { value: "system", text: qsTr("As the device") },
                { value: "light", text: qsTr("Light") },
                { value: "dark", text: qsTr("Dark") }
            ]
            onChosen: value => Settings.appearance = value
        }
        ChoiceBar {
            objectName: "textScale"
            Layout.fillWidth: true
            label: qsTr("Size of text")
            value: Settings.textScale
            options: [
                { value: 0.85, text: qsTr("Small") },
                { value: 1, text: qsTr("Normal") },
                { value: 1.25, text: qsTr("Large") },
                { value: 1.6, text: qsTr("Largest") }
            ]
            onChosen: value => Settings.textScale = value
        }
        Digits {
            Layout.fillWidth: true
            value: "24.5"
            unit: Settings.tensionUnit
            size: Theme.type.figure
        }
    }
    Card {
        Layout.fillWidth: true
        title: qsTr("About")

        Words {
            Layout.fillWidth: true
            text: qsTr("Weavelog %1").arg(Qt.application.version)
        }
        Words {
            Layout.fillWidth: true
            quiet: true
            text: qsTr("What it says about frames, strings and tension is no more than a reminder: the maker's instructions, local rules and licensed practice come first.")
        }
        Words {
            Layout.fillWidth: true
            visible: AppDevice.open
            text: qsTr("Everything is kept in this folder:")
        }
        TextEntry {
            objectName: "folder"
            Layout.fillWidth: true
            visible: AppDevice.open
            readOnly: true
            text: AppDevice.folder
            placeholder: qsTr("Folder")
        }
    }
    Item { Layout.fillHeight: true }
}
