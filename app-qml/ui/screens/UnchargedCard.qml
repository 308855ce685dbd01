pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Rackets of a player that nobody charged yet, each with its price; what the list has no price for is said before anything is charged.
Card {
    id: card

    required property AccountModel account
    // Those that a person left out.
    property var leftOut: []
    readonly property var chargeable: Array.from(account.uncharged).filter(one => one.unpriced.length === 0).map(one => one.job)
    readonly property var taken: chargeable.filter(job => !leftOut.includes(job))
    readonly property var missing: {
        const names = [];
        for (const one of Array.from(account.uncharged))
            for (const name of one.unpriced) if (!names.includes(name)) names.push(name);
        return names;
    }
    signal pricesAsked()

    function flip(job) { leftOut = leftOut.includes(job) ? leftOut.filter(one => one !== job) : leftOut.concat([job]); }

    title: qsTr("Not charged yet")

    Repeater {
        model: card.account.uncharged

        CheckChip {
            id: job
            required property var modelData
            readonly property bool priced: job.modelData.unpriced.length === 0
            objectName: "uncharged" + job.modelData.tag
            Layout.fillWidth: true
            enabled: job.priced
            checked: job.priced && !card.leftOut.includes(job.modelData.job)
            text: job.priced ? Listing.dotted([MoneyWords.jobTitle(job.modelData.tag, job.modelData.racket), job.modelData.sum])
                             : Listing.dotted([MoneyWords.jobTitle(job.modelData.tag, job.modelData.racket), qsTr("a price is missing")])
            detail: Listing.commas(Array.from(job.modelData.lines).map(
                line => Listing.said([MoneyWords.service(line.service), line.note, line.amount]).join(" ")))
            onToggled: card.flip(job.modelData.job)
        }
    }
    Notice {
        objectName: "unpriced"
        Layout.fillWidth: true
        visible: card.missing.length > 0
        kind: Notice.Attention
        title: qsTr("The price list has no price for:")
        text: card.missing.map(name => MoneyWords.service(name)).join("\n")
        actionText: qsTr("Price list")
        onActed: card.pricesAsked()
    }
    ActionButton {
        objectName: "charge"
        Layout.fillWidth: true
        visible: card.chargeable.length > 0
        enabled: card.taken.length > 0
        iconName: "check"
        text: card.taken.length > 0 ? qsTr("Charge %n racket(s): %1", "", card.taken.length).arg(card.account.sumOf(card.taken))
                                    : qsTr("Choose a racket")
        onClicked: card.account.charge(card.taken, qsTr("Charged: %1").arg(card.account.sumOf(card.taken)))
    }
}
