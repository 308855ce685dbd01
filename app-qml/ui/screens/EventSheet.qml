pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// An event that is made on this tablet, for working alone; or what is said of the one on the screen.
Sheet {
    id: sheet

    property bool changes: false
    property bool tried: false
    property var before: ({})
    readonly property var form: ({ name: name.text, place: place.text, firstDay: first.day, lastDay: last.day, timeZone: zone.text,
                                   currency: currency.text, who: who.text })
    readonly property var wrong: EventModel.wrong(form, changes)
    // From the top.
    readonly property var fields: [{ key: "name", entry: name }, { key: "firstDay", entry: first }, { key: "lastDay", entry: last },
                                   { key: "currency", entry: currency }, { key: "timeZone", entry: zone }]

    function begin(change) {
        changes = change;
        tried = false;
        fill(change ? EventModel.held() : EventModel.fresh());
        takesLeft.checked = true;
        open();
        if (!change) name.takeFocus();
    }
    function fill(said) {
        name.text = said.name;
        place.text = said.place;
        first.day = said.firstDay;
        last.day = said.lastDay;
        zone.text = said.timeZone;
        currency.text = said.currency;
        who.text = said.who ?? "";
        before = form;
    }
    function keep() {
        tried = true;
        const toMend = fields.find(one => wrong[one.key]);
        if (toMend) return toMend.entry.takeFocus();
        if (!changes && who.text.trim().length > 0) Settings.stringer = who.text;
        if (!(changes ? EventModel.change(form, qsTr("Event changed")) : EventModel.make(form, takesLeft.checked))) return;
        before = form;
        close();
    }

    title: changes ? qsTr("Name and days of the event") : qsTr("Make an event")
    hasChanges: Object.keys(form).some(key => form[key] !== before[key])
    onDiscarded: fill(before)

    Words {
        Layout.fillWidth: true
        visible: !sheet.changes
        quiet: true
        text: qsTr("It is kept on this tablet and needs no network. Rackets get their numbers, and room, bench and money are there at once.")
    }
    TextEntry {
        id: name
        objectName: "eventName"
        Layout.fillWidth: true
        label: qsTr("Name of the event")
        placeholder: qsTr("Stringing at …")
        // Nobody is told off for what is not written yet.
        error: sheet.tried ? sheet.wrong.name ?? "" : ""
        field.maximumLength: 80
    }
    SideBySide {
        id: days
        Layout.fillWidth: true
        least: 260

        DayStepper {
            id: first
            objectName: "firstDay"
            width: days.columnWidth
            label: qsTr("First day")
            error: sheet.wrong.firstDay ?? ""
        }
        DayStepper {
            id: last
            objectName: "lastDay"
            width: days.columnWidth
            label: qsTr("Last day")
            error: sheet.wrong.lastDay ?? ""
        }
    }
    ToggleRow {
        id: takesLeft
        objectName: "takesLeft"
        Layout.fillWidth: true
        visible: !sheet.changes && EventModel.left > 0
        text: qsTr("%n racket(s) taken in before belong to it", "", EventModel.left)
        detail: EventModel.leftNames
        checked: true
    }
    SideBySide {
        id: whereWho
        Layout.fillWidth: true
        least: 260

        TextEntry {
            id: place
            objectName: "eventPlace"
            width: whereWho.columnWidth
            label: qsTr("Place, if wanted")
            field.maximumLength: 80
        }
        TextEntry {
            id: who
            objectName: "eventWho"
            width: whereWho.columnWidth
            visible: !sheet.changes
            label: qsTr("Your name")
            hint: qsTr("Promises count with whoever is on the team, from 8 to 20 o'clock until shifts are planned.")
            field.maximumLength: 60
        }
    }
    SideBySide {
        id: places
        Layout.fillWidth: true
        least: 260

        TextEntry {
            id: currency
            objectName: "eventCurrency"
            width: places.columnWidth
            visible: !sheet.changes
            label: qsTr("Currency, such as EUR")
            error: sheet.wrong.currency ?? ""
            field.maximumLength: 3
        }
        TextEntry {
            id: zone
            objectName: "eventZone"
            width: places.columnWidth
            label: qsTr("Time zone")
            error: sheet.wrong.timeZone ?? ""
            inputMethodHints: Qt.ImhNoPredictiveText
        }
    }
    foot: ActionButton {
        objectName: "keepEvent"
        Layout.fillWidth: true
        text: sheet.changes ? qsTr("Keep") : qsTr("Make the event")
        onClicked: sheet.keep()
    }
}
