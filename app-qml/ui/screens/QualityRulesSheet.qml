import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// By what the room judges its work.
Sheet {
    id: sheet

    function begin() {
        tolerance.text = QualityModel.ruledTolerance;
        days.text = QualityModel.ruledDays;
        open();
    }

    title: qsTr("The room’s rules")
    hasChanges: tolerance.text !== QualityModel.ruledTolerance || days.text !== QualityModel.ruledDays

    TextEntry {
        id: tolerance
        objectName: "ruleTolerance"
        Layout.fillWidth: true
        label: qsTr("Tolerance of a string bed, per cent either way")
        hint: qsTr("Empty: 4 %, two pounds of fifty. Half of it is left to the machine.")
        inputMethodHints: Qt.ImhFormattedNumbersOnly
    }
    TextEntry {
        id: days
        objectName: "ruleDays"
        Layout.fillWidth: true
        label: qsTr("Machines are held against the gauge every so many days")
        hint: qsTr("Empty: every day.")
        inputMethodHints: Qt.ImhDigitsOnly
    }
    ActionButton {
        objectName: "keepQualityRules"
        Layout.fillWidth: true
        enabled: sheet.hasChanges
        text: qsTr("Keep the rules")
        onClicked: if (QualityModel.setRules(tolerance.text, days.text, qsTr("Rules kept"))) sheet.close()
    }
}
