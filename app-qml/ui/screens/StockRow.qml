pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// One kind of string in stock: what is left of it, and when it is gone.
ListRow {
    id: row

    required property string item
    required property string name
    required property string gauge
    required property string whose
    required property string remains
    required property string used
    required property string lowMark
    required property string goneWhen
    required property string note
    required property bool reel
    required property bool low
    required property int gone
    signal opened(var row)

    readonly property string leftWords: StockWords.amount(remains, reel)
    readonly property string goneWords: gone === StockModel.Never ? ""
        : gone === StockModel.AtTime ? qsTr("gone by %1 at today's pace", "time of day").arg(goneWhen)
                                     : qsTr("gone by %1 at today's pace", "day").arg(goneWhen)

    text: Listing.said([name, gauge]).join(" ")
    detail: Listing.dotted([whose, low ? qsTr("low") : "", goneWords,
                            used.length > 0 ? qsTr("used today: %1").arg(StockWords.amount(used, reel)) : "", note])
    iconName: low ? "warning" : "stock"
    Accessible.description: Listing.commas([leftWords, detail])
    onClicked: opened({ item: item, name: text, reel: reel, left: leftWords, lowMark: lowMark })

    Words {
        meaning: Words.Title
        text: row.leftWords
        wrapMode: Text.NoWrap
        color: row.low ? Theme.colour.attention : Theme.colour.ink
        Accessible.ignored: true
    }
}
