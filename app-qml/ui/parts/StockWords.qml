pragma Singleton
import QtQuick
import Weavelog.View

// Amounts of string in words.
QtObject {
    // "12.5" metres of a reel or "3" sets.
    function amount(figure, reel) {
        return reel ? Figures.grouped(figure, Settings.language) + "\u00a0m" : qsTr("%n set(s)", "", Number(figure));
    }
}
