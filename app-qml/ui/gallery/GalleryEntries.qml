import QtQuick
import QtQuick.Layouts
import Weavelog.Parts

Card {
    title: "Entries"

    SearchEntry { Layout.fillWidth: true; name: "Find a player" }
    SearchEntry { Layout.fillWidth: true; name: "Find a racket"; text: "Łukasz" }
    TextEntry { Layout.fillWidth: true; label: "Stencil mark"; hint: "As it is painted on the strings"; placeholder: "None" }
    TextEntry { Layout.fillWidth: true; label: "Bag tag"; text: "A-17"; error: "This tag is on another racket" }
    TextEntry { Layout.fillWidth: true; label: "Name"; text: "محمد العربي"; enabled: false }
    SideBySide {
        Layout.fillWidth: true
        FigureStepper { width: parent.columnWidth; label: "Mains"; unit: "kg"; value: "24.5"; least: "5"; most: "45"; onEdited: figure => value = figure }
        FigureStepper { width: parent.columnWidth; label: "Crosses"; unit: "lb"; value: "52"; step: "1"; least: "10"; most: "100"; enabled: false; onEdited: figure => value = figure }
        FigureStepper { width: parent.columnWidth; label: "Pre-stretch"; unit: "%"; value: ""; step: "1"; most: "20"; hint: "Nothing is no pre-stretch"; onEdited: figure => value = figure }
        FigureStepper { width: parent.columnWidth; label: "Tension"; unit: "kg"; value: "55"; least: "5"; most: "45"; error: "55 kg is beyond any frame; were pounds meant?"; onEdited: figure => value = figure }
    }
}
