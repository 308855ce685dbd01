pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// One kind of string in stock: what is left of it, and when it is gone. The first of its owners tells whose these are.
Column {
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
    required property int owner
    required property bool first
    signal opened(var row)

    readonly property string leftWords: StockWords.amount(remains, reel)
    readonly property string goneWords: gone === StockModel.Never ? ""
        : gone === StockModel.AtTime ? qsTr("gone by %1 at today's pace", "time of day").arg(goneWhen)
                                     : qsTr("gone by %1 at today's pace", "day").arg(goneWhen)

    Words {
        width: row.width
        visible: row.first
        topPadding: Theme.gap
        bottomPadding: Theme.tight
        meaning: Words.Title
        text: [qsTr("Of the room"), qsTr("Of the stringers"), qsTr("Of the players")][row.owner] ?? ""
        Accessible.role: Accessible.Heading
    }
    ListRow {
        width: row.width
        text: Listing.said([row.name, row.gauge]).join(" ")
        detail: Listing.dotted([row.whose, row.low ? qsTr("low") : "", row.goneWords,
                                row.used.length > 0 ? qsTr("used today: %1").arg(StockWords.amount(row.used, row.reel)) : "", row.note])
        iconName: row.low ? "warning" : "stock"
        Accessible.description: Listing.commas([row.leftWords, detail])
        onClicked: row.opened({ item: row.item, name: text, reel: row.reel, left: row.leftWords, lowMark: row.lowMark })

        Words {
            meaning: Words.Title
            text: row.leftWords
            wrapMode: Text.NoWrap
            color: row.low ? Theme.colour.attention : Theme.colour.ink
            Accessible.ignored: true
        }
    }
}
