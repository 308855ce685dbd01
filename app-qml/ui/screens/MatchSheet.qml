pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// A match: who won it and how, where and when it is played, who withdraws.
Sheet {
    id: sheet

    property int round: 1
    property int number: 1
    property int end: DrawModel.Played
    property bool placing: false
    property int taken: 0  // the line on which somebody is put
    readonly property var match: DrawModel.rounds[round - 1]?.matches[number - 1] ?? null
    readonly property var sides: match ? [match.one, match.other] : []
    readonly property bool playable: match !== null && !match.decided && sides.every(one => one.known && !one.out) && !sides.some(one => one.won)

    function begin(inRound, ofMatch) {
        round = inRound;
        number = ofMatch;
        end = DrawModel.Played;
        taken = 0;
        score.text = "";
        name.text = "";
        partner.text = "";
        placing = false;
        court.text = match?.court ?? "";
        time.text = match?.notBefore ?? "";
        follows.text = match?.follows ?? "";
        open();
    }

    title: qsTr("%1, match %2").arg(DrawModel.rounds[round - 1]?.title ?? "").arg(number)

    Words {
        Layout.fillWidth: true
        visible: sheet.match !== null && !sheet.playable && !sheet.match.decided
        text: sheet.sides.some(one => one.won) ? qsTr("Decided without a match.") : qsTr("It is not known yet who meets here.")
    }
    ChoiceBar {
        objectName: "matchEnd"
        Layout.fillWidth: true
        visible: sheet.playable
        label: qsTr("How it ended")
        value: sheet.end
        options: [{ value: DrawModel.Played, text: qsTr("Played") }, { value: DrawModel.Retired, text: qsTr("Retired") },
                  { value: DrawModel.Walkover, text: qsTr("Walkover") }]
        onChosen: value => sheet.end = value
    }
    TextEntry {
        id: score
        objectName: "matchScore"
        Layout.fillWidth: true
        visible: sheet.playable
        label: qsTr("Score, if wanted")
        field.maximumLength: 40
    }
    Repeater {
        model: 2
        ActionButton {
            id: winner
            required property int index
            readonly property var side: sheet.sides[winner.index] ?? null
            objectName: "wins" + winner.index
            Layout.fillWidth: true
            visible: sheet.playable
            text: qsTr("%1 won").arg(winner.side?.name ?? "")
            onClicked: if (DrawModel.won(sheet.round, winner.side.line, sheet.end, score.text, qsTr("Result noted"))) sheet.close()
        }
    }
    Words {
        Layout.fillWidth: true
        visible: sheet.match?.decided ?? false
        text: {
            const side = sheet.sides.find(one => one.won);
            if (!side) return "";
            const how = sheet.match.end === DrawModel.Walkover ? qsTr("by a walkover") : sheet.match.end === DrawModel.Retired ? qsTr("the other retired") : "";
            return Listing.commas([qsTr("Won by %1").arg(side.name), how, sheet.match.score]);
        }
    }
    ActionButton {
        objectName: "takeResultBack"
        Layout.fillWidth: true
        visible: sheet.match?.decided ?? false
        kind: ActionButton.Secondary
        iconName: "undo"
        text: qsTr("Take the result back")
        onClicked: if (DrawModel.takeBack(sheet.round, sheet.number, qsTr("Result taken back"))) sheet.close()
    }
    Words {
        Layout.fillWidth: true
        visible: text.length > 0
        text: Listing.commas([sheet.match?.court ?? "", sheet.match?.when.length > 0 ? qsTr("not before %1").arg(sheet.match.when) : "",
                              sheet.match?.follows.length > 0 ? qsTr("after match %1").arg(sheet.match.follows) : ""])
    }
    ActionButton {
        objectName: "placeMatch"
        Layout.fillWidth: true
        visible: !sheet.placing && sheet.match !== null && !sheet.match.decided
        kind: ActionButton.Quiet
        text: qsTr("Court and time")
        onClicked: sheet.placing = true
    }
    ColumnLayout {
        Layout.fillWidth: true
        visible: sheet.placing
        spacing: Theme.tight
        TextEntry { id: court; objectName: "matchCourt"; Layout.fillWidth: true; label: qsTr("Court"); field.maximumLength: 40 }
        TextEntry {
            id: time
            objectName: "matchTime"
            Layout.fillWidth: true
            label: qsTr("Not before")
            hint: qsTr("A time such as 14:05, or a day with it: 2031-05-26T14:05")
        }
        TextEntry {
            id: follows
            objectName: "matchFollows"
            Layout.fillWidth: true
            label: qsTr("Follows the match")
            hint: qsTr("Round and match of this draw, such as 2/7; empty where it has a time of its own")
            field.maximumLength: 8
        }
        ActionButton {
            objectName: "keepPlace"
            Layout.fillWidth: true
            text: qsTr("Keep")
            onClicked: if (DrawModel.setPlay(sheet.round, sheet.number, court.text, time.text, follows.text, qsTr("Court and time kept"))) sheet.close()
        }
    }
    Repeater {
        model: 2
        ActionButton {
            id: leave
            required property int index
            readonly property var side: sheet.sides[leave.index] ?? null
            objectName: "withdraws" + leave.index
            Layout.fillWidth: true
            visible: (leave.side?.known ?? false) && !leave.side.out && !leave.side.lost && !(sheet.match?.decided ?? false)
            kind: ActionButton.Quiet
            text: qsTr("%1 withdraws").arg(leave.side?.name ?? "")
            onClicked: if (DrawModel.withdraw(leave.side.line, qsTr("Withdrawal noted"))) sheet.close()
        }
    }
    Repeater {
        model: 2
        ActionButton {
            id: free
            required property int index
            readonly property var side: sheet.sides[free.index] ?? null
            objectName: "fills" + free.index
            Layout.fillWidth: true
            visible: sheet.round === 1 && sheet.taken === 0 && free.side !== null && free.side.line > 0 && !free.side.bye
                     && (!free.side.known || free.side.out)
            kind: ActionButton.Secondary
            iconName: "plus"
            text: free.side?.out ? qsTr("Somebody in the place of %1").arg(free.side.name) : qsTr("Say who plays here")
            onClicked: {
                sheet.taken = free.side.line;
                name.takeFocus();
            }
        }
    }
    ColumnLayout {
        Layout.fillWidth: true
        visible: sheet.taken > 0
        spacing: Theme.tight
        TextEntry { id: name; objectName: "placeName"; Layout.fillWidth: true; label: qsTr("Player"); field.maximumLength: 80 }
        TextEntry { id: partner; Layout.fillWidth: true; label: qsTr("Partner, in doubles"); field.maximumLength: 80 }
        ActionButton {
            objectName: "putOn"
            Layout.fillWidth: true
            enabled: name.text.trim().length > 0
            text: qsTr("Put on line %1").arg(sheet.taken)
            onClicked: if (DrawModel.putOn(sheet.taken, name.text, partner.text, qsTr("Put into the draw"))) sheet.close()
        }
    }
}
