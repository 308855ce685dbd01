pragma ComponentBehavior: Bound
import QtQuick
import Weavelog.Parts
import Weavelog.Theme

// What is told of two people, row by row: the one of the list at the left and the one who is known here at the right where there is room for
// both, else the second alone, because the first stands above. Where they differ it is in a colour that asks for a look.
Column {
    id: facts

    property var list: ({})    // as factsShown() gives it; without it only `here` is shown
    property var here: ({})
    property bool wide: false
    property color ink: Theme.colour.ink
    property color quietInk: Theme.colour.quietInk
    property color otherInk: Theme.colour.attention  // where they differ

    readonly property var labelled: [
        { key: "name", text: qsTr("Name") }, { key: "born", text: qsTr("Born") }, { key: "country", text: qsTr("Country") },
        { key: "rackets", text: qsTr("Rackets") }, { key: "setup", text: qsTr("Last setup") }, { key: "seen", text: qsTr("Last seen") }
    ]
    readonly property var rows: Array.from(labelled).filter(one => said(list, one.key).length > 0 || said(here, one.key).length > 0)

    function said(of, key) { return of[key] ?? ""; }
    function shown(text) { return text.length > 0 ? text : "–"; }

    spacing: 2
    topPadding: Theme.tight

    FontMetrics {
        id: metrics
        font.pixelSize: Theme.type.caption
    }

    Row {
        visible: facts.wide
        spacing: Theme.gap
        Item { width: facts.labels; height: 1 }
        Words {
            width: facts.half
            meaning: Words.Caption
            color: facts.quietInk
            text: qsTr("On the entry list")
        }
        Words {
            width: facts.half
            meaning: Words.Caption
            color: facts.quietInk
            text: qsTr("Known here")
        }
    }
    // How wide the longest label is.
    readonly property real labels: Math.ceil(Math.max(0, ...rows.map(one => metrics.advanceWidth(one.text)))) + 1
    readonly property real half: (width - labels - 2 * Theme.gap) / 2

    Repeater {
        model: facts.rows

        Row {
            id: line
            required property var modelData
            readonly property string one: facts.said(facts.list, modelData.key)
            readonly property string other: facts.said(facts.here, modelData.key)
            spacing: Theme.gap

            Words {
                width: facts.labels
                topPadding: 2
                meaning: Words.Caption
                color: facts.quietInk
                text: line.modelData.text
            }
            Words {
                objectName: "left " + line.modelData.key
                visible: facts.wide
                width: facts.half
                color: facts.ink
                text: facts.shown(line.one)
            }
            Words {
                objectName: "right " + line.modelData.key
                width: facts.wide ? facts.half : facts.width - facts.labels - Theme.gap
                meaning: differs ? Words.Strong : Words.Body
                color: differs ? facts.otherInk : facts.ink
                text: facts.shown(line.other)
                readonly property bool differs: line.one.length > 0 && line.other.length > 0 && line.one !== line.other
            }
        }
    }
}
