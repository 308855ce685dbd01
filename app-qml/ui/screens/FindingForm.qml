pragma ComponentBehavior: Bound
import QtQuick
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// What is noted next: where, what, and what is proposed to the player.
// A positioner: within the sheet's column a layout does not hear that a text has become a line higher.
Column {
    id: form

    readonly property var missingWords: ({
        [InspectionModel.Place]: qsTr("Tap where it is"),
        [InspectionModel.Fault]: qsTr("Choose what it is"),
        [InspectionModel.Note]: qsTr("Write what it is"),
        [InspectionModel.Proposal]: qsTr("Choose what you propose")
    })

    spacing: Theme.gap

    PickList {
        objectName: "place"
        width: form.width
        label: qsTr("Where")
        placeholder: qsTr("Tap the drawing, or choose here")
        value: InspectionModel.place
        options: InspectionModel.places
        onPicked: value => InspectionModel.place = value
    }
    Words {
        width: form.width
        meaning: Words.Strong
        font.pixelSize: Theme.type.caption
        text: qsTr("What")
    }
    SideBySide {
        width: form.width
        least: 150
        most: 3
        spacing: Theme.tight
        Repeater {
            model: InspectionModel.faults
            AnswerChoice {
                required property var modelData
                objectName: "fault" + modelData.value
                width: parent?.columnWidth ?? 0
                topPadding: Theme.tight
                bottomPadding: Theme.tight
                text: modelData.value === 7 ? qsTr("Something else") : modelData.text
                on: InspectionModel.fault === modelData.value
                onClicked: InspectionModel.fault = modelData.value
            }
        }
    }
    TextEntry {
        objectName: "note"
        width: form.width
        label: InspectionModel.fault === 7 ? qsTr("What it is") : qsTr("Note")
        text: InspectionModel.note
        onEdited: text => InspectionModel.note = text
    }
    Words {
        width: form.width
        meaning: Words.Strong
        font.pixelSize: Theme.type.caption
        text: qsTr("What is proposed to the player")
    }
    SideBySide {
        width: form.width
        least: 210
        spacing: Theme.tight
        Repeater {
            model: Array.of({ value: 0, text: qsTr("Nothing, only noted") }).concat(Array.from(InspectionModel.remedies))
            AnswerChoice {
                required property var modelData
                objectName: "proposal" + modelData.value
                width: parent?.columnWidth ?? 0
                topPadding: Theme.tight
                bottomPadding: Theme.tight
                text: modelData.text
                on: InspectionModel.proposal === modelData.value
                onClicked: InspectionModel.proposal = modelData.value
            }
        }
    }
    ActionButton {
        objectName: "noteFinding"
        width: form.width
        enabled: InspectionModel.missing === InspectionModel.Nothing
        iconName: enabled ? "note" : ""
        text: enabled ? qsTr("Note: %1").arg(InspectionModel.summary) : form.missingWords[InspectionModel.missing] ?? ""
        onClicked: InspectionModel.noteFinding(qsTr("Noted: %1").arg(InspectionModel.summary))
    }
}
