import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// How long the event server keeps players' books: shown to everybody, set by whoever may change the event.
Card {
    id: card

    title: qsTr("Players' books on the event server")
    detail: DevicesModel.keepDays < 0 ? qsTr("It keeps them. Tablets keep their own in any case.")
                                      : qsTr("It lets them go after %1. Tablets keep their own in any case.").arg(DevicesModel.keptUntil)

    ChoiceBar {
        objectName: "keepDays"
        Layout.fillWidth: true
        visible: DevicesModel.setsRule
        label: qsTr("Days after the last one")
        value: DevicesModel.keepDays
        options: {
            const usual = [7, 30, 90];
            if (DevicesModel.keepDays >= 0 && !usual.includes(DevicesModel.keepDays)) usual.unshift(DevicesModel.keepDays);
            return [{ value: -1, text: qsTr("Keep them") }].concat(usual.map(days => ({ value: days, text: qsTr("%n day(s)", "", days) })));
        }
        onChosen: value => DevicesModel.setKeepDays(value, qsTr("Rule for players' books set"))
    }
    Words {
        Layout.fillWidth: true
        visible: DevicesModel.keepDays >= 0
        quiet: true
        text: qsTr("Bring this tablet up to date before then: afterwards the server exchanges nothing any more.")
    }
}
