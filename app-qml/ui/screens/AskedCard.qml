pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// What two people answered differently on what a drop-off goes by: the player chooses one before anything is read back.
Card {
    id: card

    required property DropOffDraft draft
    required property int index
    readonly property var held: draft.questions[index] ?? { field: "", subject: "", rackets: "", part: -1, entry: 0, units: [], answers: [], chosen: -1, other: "", unit: "", key: "", closed: {}, unlike: "" }
    // Answered elsewhere meanwhile. What stood there stays, so that nothing moves.
    readonly property bool closed: held.closed.at !== undefined
    property var stood: held
    // Another answer is being typed.
    property bool anew: false
    property string wrong

    onHeldChanged: if (held.closed.at === undefined) stood = held
    // Another question may come to stand here, where rackets are picked.
    readonly property string key: held.key
    onKeyChanged: {
        anew = false;
        wrong = "";
        form.fill(held.other, held.unit);
    }

    objectName: "asked" + index
    function said(answer) { return Listing.commas([answer.device, answer.event, answer.at]); }

    title: qsTr("What does the player want? %1").arg(held.field)
    detail: Listing.commas([held.subject, qsTr("Rackets: %1").arg(held.rackets)])

    IconLine {
        objectName: "askedFirst"
        Layout.fillWidth: true
        // The longest of its texts finds its room.
        Layout.minimumHeight: (card.width < 560 ? 4 : 2) * Math.ceil(metrics.lineSpacing)
        iconName: card.held.chosen < 0 && !card.closed ? "question" : "check"
        colour: card.closed || card.held.chosen < 0 ? Theme.colour.attention : Theme.colour.agreed
        text: card.closed ? (card.held.unlike.length > 0
                ? qsTr("It was answered elsewhere meanwhile: %1 (%2). That holds, not %3, which was chosen here.").arg(card.held.closed.text).arg(card.said(card.held.closed)).arg(card.held.unlike)
                : qsTr("It was answered elsewhere meanwhile: %1 (%2). That holds.").arg(card.held.closed.text).arg(card.said(card.held.closed)))
            : card.held.chosen < 0 ? qsTr("Different answers stand here. Ask which one holds; nothing is read back before.")
                                   : qsTr("The yes to the read-back closes this question for everybody.")
    }
    FontMetrics {
        id: metrics
        font.pixelSize: Theme.type.body
    }
    AnswersForm {
        id: form
        enabled: !card.closed
        Layout.fillWidth: true
        spacing: card.spacing
        answers: Array.from(card.stood.answers).map(answer => ({ text: answer.text, detail: card.said(answer) }))
        entry: card.stood.entry
        units: card.stood.units
        field: card.held.field
        chosen: card.closed ? answers.findIndex(answer => answer.text === card.held.closed.text)
                            : card.anew ? form.anew : card.held.chosen
        wrong: card.wrong
        onPicked: answer => {
            card.anew = answer === form.anew;
            card.wrong = card.anew ? card.draft.settleOtherwise(card.index, other, unit) : "";
            if (!card.anew) card.draft.settle(card.index, answer);
        }
        onSaid: (text, unit) => card.wrong = card.draft.settleOtherwise(card.index, text, unit)
    }
}
