import QtQuick
import Weavelog.Parts

// The languages that the desk speaks. Each is named in itself, so that whoever cannot read the present one finds it.
ChoiceBar {
    options: [
        { value: "en", text: "English" },
        { value: "fr", text: "Français" },
        { value: "es", text: "Español" },
        { value: "de", text: "Deutsch" }
    ]
}
