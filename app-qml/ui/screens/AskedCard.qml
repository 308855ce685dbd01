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
    readonly property var held: draft.questions[index] ?? { field: "", subject: "", rackets: "", part: -1, entry: 0, units: [], answers: [], chosen: -1, other: "", unit: "" }
    // Another answer is being typed.
    property bool anew: false
    property string wrong

    objectName: "asked" + index
    title: qsTr("What does the player want? %1").arg(held.field)
    detail: Listing.commas([held.subject, qsTr("Rackets: %1").arg(held.rackets)])

    IconLine {
        objectName: "askedFirst"
        Layout.fillWidth: true
        iconName: card.held.chosen < 0 ? "question" : "check"
        colour: card.held.chosen < 0 ? Theme.colour.attention : Theme.colour.agreed
        text: card.held.chosen < 0 ? qsTr("Different answers stand here. Ask which one holds; nothing is read back before.")
                                   : qsTr("The yes to the read-back closes this question for everybody.")
    }
    AnswersForm {
        Layout.fillWidth: true
        spacing: card.spacing
        answers: Array.from(card.held.answers).map(answer => ({ text: answer.text, detail: Listing.commas([answer.device, answer.event, answer.at]) }))
        entry: card.held.entry
        units: card.held.units
        field: card.held.field
        other: card.held.other
        unit: card.held.unit.length > 0 ? card.held.unit : units.length > 0 ? units[0] : ""
        chosen: card.anew ? anewAt : card.held.chosen
        readonly property int anewAt: card.held.answers.length
        wrong: card.wrong
        onPicked: answer => {
            card.anew = answer === anewAt;
            card.wrong = card.anew ? card.draft.settleOtherwise(card.index, other, unit) : "";
            if (!card.anew) card.draft.settle(card.index, answer);
        }
        onSaid: (text, unit) => card.wrong = card.draft.settleOtherwise(card.index, text, unit)
    }
}
