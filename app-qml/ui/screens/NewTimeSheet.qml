import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Another time for rackets that were promised, agreed with the player or who speaks for them.
Sheet {
    id: sheet

    readonly property bool named: who.text.trim().length > 0

    // With the racket's tag and its player as its words.
    function show(book, job, racket) {
        if (!NewTimeModel.show(book, job)) return;
        title = racket.length > 0 ? qsTr("New time: %1").arg(racket) : qsTr("New time");
        who.text = "";
        open();
    }
    function keep() {
        if (NewTimeModel.agree(who.text, qsTr("Ready by %1, agreed with %2").arg(NewTimeModel.time).arg(who.text.trim()))) {
            who.text = "";
            close();
        }
    }

    hasChanges: named
    onDiscarded: who.text = ""

    Binding { target: NewTimeModel; property: "watched"; value: sheet.opened }

    Words {
        objectName: "promisedBefore"
        Layout.fillWidth: true
        text: NewTimeModel.before.length > 0 ? qsTr("Promised for %1").arg(NewTimeModel.before) : qsTr("No time was said so far")
    }
    Words {
        Layout.fillWidth: true
        visible: NewTimeModel.inWork
        meaning: Words.Caption
        quiet: true
        text: qsTr("On the machine or strung already: ask at the bench what is left to do.")
    }
    TimeStepper {
        Layout.fillWidth: true
        time: NewTimeModel.time
        day: NewTimeModel.day
        onMoved: minutes => NewTimeModel.move(minutes)
    }
    PromiseNotice {
        Layout.fillWidth: true
        promise: NewTimeModel
    }
    ToggleRow {
        objectName: "onlyThis"
        Layout.fillWidth: true
        visible: NewTimeModel.together > 1 || NewTimeModel.onlyThis
        text: qsTr("Only this racket")
        detail: qsTr("%n rackets were promised together.", "", NewTimeModel.together)
        checked: NewTimeModel.onlyThis
        onToggled: NewTimeModel.onlyThis = checked
    }
    TextEntry {
        id: who
        objectName: "agreedBy"
        Layout.fillWidth: true
        label: qsTr("Agreed with")
        hint: qsTr("The player, or who speaks for them. Nothing is promised behind anybody’s back.")
        onAccepted: if (keepTime.enabled) sheet.keep()
    }
    ActionButton {
        objectName: "withPlayer"
        visible: !sheet.named && NewTimeModel.player.length > 0
        kind: ActionButton.Quiet
        text: qsTr("With %1").arg(NewTimeModel.player)
        onClicked: who.text = NewTimeModel.player
    }
    ActionButton {
        id: keepTime
        objectName: "keepTime"
        Layout.fillWidth: true
        enabled: NewTimeModel.differs && sheet.named
        text: NewTimeModel.differs ? qsTr("Promise %1").arg(NewTimeModel.time) : qsTr("Choose another time")
        onClicked: sheet.keep()
    }
}
