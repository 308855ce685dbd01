pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// One open question: what it is about, every answer with who, where and when, and another one if the player says so.
Card {
    id: card

    required property int index
    required property int kind
    required property string player
    required property string field
    required property string subject
    required property int entry
    required property var units
    required property var answers
    required property string tag
    // How it was closed elsewhere while it was answered here; nothing while it is open.
    required property var closed
    required property bool anotherCame
    property int chosen: -1
    readonly property bool isClosed: closed.at !== undefined
    readonly property string other: form.other
    readonly property string unit: form.unit
    readonly property int anew: answers.length
    readonly property bool holder: kind === QuestionsModel.Holder
    readonly property bool amount: kind === QuestionsModel.Amount
    readonly property bool books: kind === QuestionsModel.Books
    readonly property bool place: holder || kind === QuestionsModel.Place
    readonly property string wrong: chosen === anew && other.length > 0
        ? QuestionsModel.wrongWith(index, other, unit) : ""
    signal settled(string text)

    function answerText(answer) { return holder ? answer.by : place ? StageWords.title(answer.stage) : answer.text; }
    function whoSaid(answer) {
        return Listing.commas([holder ? StageWords.title(answer.stage) : answer.by ?? "", answer.device,
                               answer.event ?? "", answer.at]);
    }
    function close() {
        const asked = index;
        if (chosen === anew) {
            const said = unit.length > 0 ? other + " " + unit : other;
            if (QuestionsModel.closeOtherwise(asked, other, unit)) settled(said);
            return;
        }
        const text = answerText(answers[chosen]);
        const name = player;
        if (place) {
            QuestionsModel.close(asked, chosen, (holder ? qsTr("Asked who has it: %1") : qsTr("Looked where it is: %1")).arg(text),
                                 name + ": " + text);
        } else if (QuestionsModel.close(asked, chosen, "", "")) {
            settled(text);
        }
    }
    onAnotherCameChanged: if (anotherCame) chosen = -1

    title: player
    detail: place ? (field.length > 0 ? qsTr("Tag %1: two people moved it on while apart").arg(field)
                                      : qsTr("Two people moved this racket on while apart"))
                  : amount ? Listing.commas([MoneyWords.service(subject), tag.length > 0 ? qsTr("Tag %1").arg(tag) : "",
                                             qsTr("charged by two tablets while apart")])
                  : books ? Listing.commas([field, subject, qsTr("two linked books of this player differ")])
                  : subject.length > 0 ? field + ", " + subject : field

    Words {
        objectName: "asks"
        Layout.fillWidth: true
        // What is told here later finds its room.
        Layout.minimumHeight: (card.width < 560 ? 3 : 2) * Math.ceil(metrics.lineSpacing)
        verticalAlignment: Text.AlignVCenter
        meaning: card.isClosed || card.anotherCame ? Words.Strong : Words.Body
        color: card.isClosed || card.anotherCame ? Theme.colour.attention : Theme.colour.ink
        text: card.isClosed ? (card.answerText(card.closed).length > 0
                               ? qsTr("It was answered elsewhere meanwhile: %1 (%2). Nothing was written here.").arg(card.answerText(card.closed)).arg(card.whoSaid(card.closed))
                               : qsTr("It was closed elsewhere meanwhile. Nothing was written here."))
            : card.anotherCame ? qsTr("Another answer came in meanwhile. Look at all of them and choose again.")
            : card.holder ? qsTr("Who has the racket now?") : card.place ? qsTr("Where is the racket now?")
            : card.amount ? qsTr("What does it cost?") : card.books ? qsTr("Which of them is right?") : qsTr("What does the player want?")
    }
    FontMetrics {
        id: metrics
        font.pixelSize: Theme.type.body
        font.weight: Font.DemiBold
    }
    AnswersForm {
        id: form
        enabled: !card.isClosed
        Layout.fillWidth: true
        spacing: card.spacing
        answers: Array.from(card.answers).map(answer => ({ text: card.answerText(answer), detail: card.whoSaid(answer) }))
        entry: card.entry
        units: card.units
        field: card.field
        chosen: card.isClosed ? answers.findIndex(answer => answer.text === card.answerText(card.closed)) : card.chosen
        wrong: card.wrong
        onPicked: answer => {
            card.chosen = answer;
            QuestionsModel.begin(card.index);
        }
    }
    ActionButton {
        objectName: "close"
        Layout.fillWidth: true
        enabled: card.isClosed || card.chosen >= 0 && (card.chosen < card.anew || (card.other.length > 0 && card.wrong.length === 0))
        text: card.isClosed ? qsTr("I see") : card.chosen < 0 ? qsTr("Choose an answer")
            : card.chosen < card.anew ? qsTr("Close with: %1").arg(card.answerText(card.answers[card.chosen]))
            : card.other.length > 0 ? qsTr("Close with: %1").arg((card.other + " " + card.unit).trim())
            : qsTr("Say the answer")
        onClicked: card.isClosed ? QuestionsModel.leave(card.index) : card.close()
    }
}
