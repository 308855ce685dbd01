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
    readonly property bool racket: what === BedModel.HeadSize || what === BedModel.Pattern
    property int mains: 0
    property int crosses: 0

    readonly property var figure: what === BedModel.Gauge ? { unit: "mm", step: "0.05", least: "0.9", most: "1.6" }
        : what === BedModel.PreStretch ? { unit: "%", step: "5", least: "0", most: "20" }
        : what === BedModel.HeadSize && BedModel.headUnit === "in²" ? { unit: BedModel.headUnit, step: "1", least: "60", most: "137" }
        : what === BedModel.HeadSize ? { unit: BedModel.headUnit, step: "5", least: "390", most: "885" }
        : { unit: BedModel.unit, step: BedModel.kiloStep, least: "-20", most: "20" }

    function begin() {
        what = BedModel.String;
        of = BedModel.Both;
        value = "";
        BedModel.forgetProposal();
    }
    function change(kind) {
        what = kind;
        value = kind === BedModel.Gauge ? BedModel.gauge : kind === BedModel.HeadSize ? BedModel.headSize
              : kind === BedModel.String || kind === BedModel.Pattern ? "" : "0";
        mains = BedModel.mainsCount;
        crosses = BedModel.crossesCount;
        BedModel.forgetProposal();
    }
    function ask(next) {
        value = next;
        BedModel.propose(what, of, value);
    }

    function weave(nextMains, nextCrosses) {
        mains = nextMains;
        crosses = nextCrosses;
        ask(mains + "x" + crosses);
    }

    spacing: Theme.gap

    Words {
        Layout.fillWidth: true
        meaning: Words.Title
        text: qsTr("Same feel with …")
    }
    PickList {
        objectName: "what"
        Layout.fillWidth: true
        label: qsTr("What changes")
        value: part.what
        options: [{ value: BedModel.String, text: qsTr("String") }, { value: BedModel.Gauge, text: qsTr("Gauge") },
                  { value: BedModel.PreStretch, text: qsTr("Pre-stretch") },
                  { value: BedModel.Mains, text: qsTr("Mains ±"), detail: qsTr("The crosses make up for it") },
                  { value: BedModel.Crosses, text: qsTr("Crosses ±"), detail: qsTr("The mains make up for it") },
                  { value: BedModel.HeadSize, text: qsTr("Head size"), detail: qsTr("Another racket with the same strings") },
                  { value: BedModel.Pattern, text: qsTr("Pattern"), detail: qsTr("Another racket with the same strings") }]
        onPicked: value => part.change(value)
    }
    ChoiceBar {
        objectName: "of"
        Layout.fillWidth: true
        visible: !part.steps && !part.racket
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
        visible: part.what !== BedModel.String && part.what !== BedModel.Pattern
        label: part.what === BedModel.Gauge ? qsTr("Gauge") : part.what === BedModel.PreStretch ? qsTr("Pre-stretch")
             : part.what === BedModel.HeadSize ? qsTr("Head size of the other racket")
             : part.what === BedModel.Mains ? qsTr("Mains pulled by so much more or less") : qsTr("Crosses pulled by so much more or less")
        unit: part.figure.unit
        value: part.value
        step: part.figure.step
        least: part.figure.least
        most: part.figure.most
        onEdited: value => part.ask(value)
    }
    SideBySide {
        id: counts
        objectName: "pattern"
        Layout.fillWidth: true
        visible: part.what === BedModel.Pattern
        least: 300

        FigureStepper {
            objectName: "mainsCount"
            width: counts.columnWidth
            label: qsTr("Mains of the other racket")
            value: String(part.mains)
            step: "1"
            least: "8"
            most: "30"
            onEdited: value => part.weave(Math.round(Number(value)), part.crosses)
        }
        FigureStepper {
            objectName: "crossesCount"
            width: counts.columnWidth
            label: qsTr("Crosses of the other racket")
            value: String(part.crosses)
            step: "1"
            least: "8"
            most: "30"
            onEdited: value => part.weave(part.mains, Math.round(Number(value)))
        }
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
    Words {
        objectName: "otherRacket"
        Layout.fillWidth: true
        visible: part.proposal.other === true
        text: qsTr("For another racket: keep to the tensions printed on its own frame.")
    }
    Notice {
        objectName: "proposalCaution"
        Layout.fillWidth: true
        visible: (part.proposal.caution ?? "").length > 0
        kind: Notice.Danger
        text: part.proposal.caution ?? ""
    }
}
