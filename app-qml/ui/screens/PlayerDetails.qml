pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// A player's card: open questions, what is agreed now, rackets, jobs.
ColumnLayout {
    id: details

    required property PlayerCard card

    spacing: Theme.room

    Repeater {
        model: details.card.questions

        Notice {
            id: question
            required property var modelData
            Layout.fillWidth: true
            kind: Notice.Attention
            title: question.modelData.subject.length > 0
                ? qsTr("Open question: %1, %2").arg(question.modelData.field).arg(question.modelData.subject)
                : qsTr("Open question: %1").arg(question.modelData.field)
            text: question.modelData.answers.map(
                answer => qsTr("%1 (%2, %3)").arg(answer.value).arg(answer.device).arg(answer.day)).join("\n")
        }
    }
    RacketSheet {
        id: racketSheet
        card: details.card
    }
    SideBySide {
        id: cards
        Layout.fillWidth: true
        least: 420
        spacing: Theme.room

        Repeater {
            model: details.card.agreed
            AgreedCard { width: cards.columnWidth }
        }
        Card {
            width: parent.columnWidth
            title: qsTr("Rackets")
            spacing: 0

            Repeater {
                model: details.card.rackets

                ListRow {
                    id: racket
                    required property var modelData
                    Layout.fillWidth: true
                    text: racket.modelData.label.length > 0 ? qsTr("Racket %1").arg(racket.modelData.label) : qsTr("Racket without a mark")
                    detail: racket.modelData.model
                    endText: racket.modelData.stage >= 0 ? qsTr("in the room") : ""
                    onClicked: racketSheet.begin(racket.modelData)
                }
            }
            Words {
                Layout.fillWidth: true
                visible: details.card.rackets.length === 0
                quiet: true
                text: qsTr("None yet")
            }
        }
        Card {
            width: parent.columnWidth
            visible: details.card.jobs.length > 0
            title: qsTr("Last jobs")
            spacing: Theme.tight

            Column {
                id: jobs
                Layout.fillWidth: true
                spacing: Theme.tight
                Repeater {
                    model: details.card.jobs
                    JobLine { width: jobs.width }
                }
            }
            ActionButton {
                objectName: "olderJobs"
                Layout.fillWidth: true
                visible: details.card.jobs.length < details.card.jobCount
                kind: ActionButton.Quiet
                text: qsTr("Older ones")
                onClicked: details.card.showMoreJobs()
            }
        }
        Card {
            width: parent.columnWidth
            visible: details.card.holders.length > 0
            title: qsTr("Who has this book")
            detail: qsTr("Devices that exchanged it with this tablet, and what was made of it for others. If the player withdraws, each device is told when it is met, and takes nothing of it any more.")
            spacing: Theme.tight

            Notice {
                objectName: "heldBeyond"
                Layout.fillWidth: true
                visible: details.card.heldBeyond
                kind: Notice.Attention
                title: qsTr("The player agreed to one room only")
                text: qsTr("Devices of other rooms that have this from before keep it, and get nothing new. If the player wants it gone there, let them withdraw, and take them in anew.")
            }
            Repeater {
                model: details.card.holders
                IconLine {
                    id: holder
                    required property var modelData
                    Layout.fillWidth: true
                    iconName: holder.modelData.as === "card" ? "tag" : holder.modelData.as.length > 0 ? "out" : "exchange"
                    text: {
                        switch (holder.modelData.as) {
                        case "card": return qsTr("A player card was given, last %1").arg(holder.modelData.day);
                        case "backup": return qsTr("A backup holds it, last %1").arg(holder.modelData.day);
                        case "bundle": return qsTr("It is in a bundle for %1, last %2").arg(holder.modelData.device).arg(holder.modelData.day);
                        default: return (holder.modelData.given ? qsTr("%1 has it from here, last %2") : qsTr("It came from %1, last %2"))
                            .arg(holder.modelData.device).arg(holder.modelData.day);
                        }
                    }
                }
            }
        }
    }
}
