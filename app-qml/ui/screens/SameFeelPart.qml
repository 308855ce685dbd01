pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The tension that keeps the feel when something about the racket changes.
ColumnLayout {
    id: part

    property int what: BedModel.String
    property int of: BedModel.Both
    property string value
    readonly property var proposal: BedModel.proposal
    readonly property bool steps: what === BedModel.Mains || what === BedModel.Crosses

    function begin() {
        what = BedModel.String;
        of = BedModel.Both;
        value = "";
        BedModel.forgetProposal();
    }
    function change(kind) {
        what = kind;
        value = kind === BedModel.Gauge ? BedModel.gauge : kind === BedModel.String ? "" : "0";
        BedModel.forgetProposal();
    }
    function ask(next) {
        value = next;
        BedModel.propose(what, of, value);
    }

    spacing: Theme.gap

    Words {
        Layout.fillWidth: true
        meaning: Words.Title
        text: qsTr("Same feel with …")
    }
    ChoiceBar {
        objectName: "what"
        Layout.fillWidth: true
        label: qsTr("What changes")
        value: part.what
        options: [{ value: BedModel.String, text: qsTr("String") }, { value: BedModel.Gauge, text: qsTr("Gauge") },
                  { value: BedModel.PreStretch, text: qsTr("Pre-stretch") }, { value: BedModel.Mains, text: qsTr("Mains ±") },
                  { value: BedModel.Crosses, text: qsTr("Crosses ±") }]
        onChosen: value => part.change(value)
    }
    ChoiceBar {
        objectName: "of"
        Layout.fillWidth: true
        visible: !part.steps
        label: qsTr("Where")
        value: part.of
        options: [{ value: BedModel.Both, text: qsTr("Both") }, { value: BedModel.OfMains, text: qsTr("Mains") },
                  { value: BedModel.OfCrosses, text: qsTr("Crosses") }]
        onChosen: value => {
            part.of = value;
            if (part.value.length > 0) part.ask(part.value);
        }
    }
    PickList {
        objectName: "otherString"
        Layout.fillWidth: true
        visible: part.what === BedModel.String && BedModel.choices.length > 0
        label: qsTr("Another string of the stock")
        value: part.value
        options: BedModel.choices
        onPicked: value => part.ask(value)
    }
    Words {
        Layout.fillWidth: true
        visible: part.what === BedModel.String && BedModel.choices.length === 0
        quiet: true
        text: qsTr("There is no string in the stock to choose from.")
    }
    FigureStepper {
        objectName: "feelFigure"
        Layout.fillWidth: true
        visible: part.what !== BedModel.String
        label: part.what === BedModel.Gauge ? qsTr("Gauge") : part.what === BedModel.PreStretch ? qsTr("Pre-stretch")
             : part.what === BedModel.Mains ? qsTr("Mains pulled by so much more or less") : qsTr("Crosses pulled by so much more or less")
        unit: part.what === BedModel.Gauge ? "mm" : part.what === BedModel.PreStretch ? "%" : BedModel.unit
        value: part.value
        step: part.what === BedModel.Gauge ? "0.05" : part.what === BedModel.PreStretch ? "5" : BedModel.kiloStep
        least: part.what === BedModel.Gauge ? "0.9" : part.what === BedModel.PreStretch ? "0" : "-20"
        most: part.what === BedModel.Gauge ? "1.6" : "20"
        onEdited: value => part.ask(value)
    }
    Notice {
        objectName: "proposalFault"
        Layout.fillWidth: true
        visible: (part.proposal.fault ?? "").length > 0
        kind: Notice.Attention
        text: part.proposal.fault ?? ""
    }
    Notice {
        objectName: "proposal"
        Layout.fillWidth: true
        visible: (part.proposal.set ?? "").length > 0
        kind: Notice.Agreed
        title: part.proposal.set ?? ""
        text: (part.proposal.lines ?? []).concat([part.proposal.data ?? ""]).join("\n")
    }
    Notice {
        objectName: "proposalCaution"
        Layout.fillWidth: true
        visible: (part.proposal.caution ?? "").length > 0
        kind: Notice.Danger
        text: part.proposal.caution ?? ""
    }
}
