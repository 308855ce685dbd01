import QtQuick
import Weavelog.Parts

// The languages that the desk speaks. Each is named in itself, so that whoever cannot read the present one finds it.
ChoiceBar {
    // By their codes, where four names have no room beside each other.
    property bool brief: false

    options: [
        { value: "en", text: brief ? "EN" : "English" },
        { value: "fr", text: brief ? "FR" : "Français" },
        { value: "es", text: brief ? "ES" : "Español" },
        { value: "de", text: brief ? "DE" : "Deutsch" }
    ]
}
