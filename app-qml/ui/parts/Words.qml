import QtQuick
import Weavelog.Theme

// Every text that is no part of a control: its size and weight come from what it is.
Text {
    id: words

    enum Meaning { Caption, Body, Strong, Title, Heading, Figure }
    property int meaning: Words.Body
    property bool quiet: false

    font.pixelSize: {
        switch (meaning) {
        case Words.Caption: return Theme.type.caption;
        case Words.Title: return Theme.type.title;
        case Words.Heading: return Theme.type.heading;
        case Words.Figure: return Theme.type.figure;
        default: return Theme.type.body;
        }
    }
    font.weight: meaning === Words.Body || meaning === Words.Caption ? Font.Normal : Font.DemiBold
    color: quiet ? Theme.colour.quietInk : Theme.colour.ink
    wrapMode: Text.Wrap
    textFormat: Text.PlainText
    horizontalAlignment: Text.AlignLeft
    Accessible.role: meaning === Words.Heading ? Accessible.Heading : Accessible.StaticText
    Accessible.name: text
}
