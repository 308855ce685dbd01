import QtQuick
import QtQuick.Layouts
import Weavelog.Parts

Card {
    title: "Rows"
    detail: "One of many in a list"
    spacing: 0

    ListRow { Layout.fillWidth: true; text: "Mirela Østby-Çelik"; detail: "3 rackets, last strung 12 May"; iconName: "players" }
    ListRow {
        Layout.fillWidth: true
        text: "渡辺 みどり"
        detail: "1 racket"
        chosen: true
        StageMark { stage: StageMark.Ready }
    }
    ListRow { Layout.fillWidth: true; text: "Θάλεια Παππά"; detail: "2 rackets"; endText: "14:30" }
    ListRow { Layout.fillWidth: true; text: "A name that is far too long to stand on one line of a small telephone and is cut after the second"; detail: "no racket here" }
    ListRow { Layout.fillWidth: true; text: "Switched off"; detail: "Not on this device"; enabled: false; iconName: "players" }
    EmptyState {
        Layout.fillWidth: true
        Layout.topMargin: 24
        Layout.bottomMargin: 12
        iconName: "tag"
        title: "Nothing here yet"
        text: "What comes here appears by itself."
        actionText: "Bring something in"
    }
}
