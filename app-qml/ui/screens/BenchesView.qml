pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Whose rackets go to whom for the whole event: a column for each stringer, with the rackets that are to be expected.
ScrollColumn {
    id: view

    readonly property var benches: BenchesModel.benches

    spacing: Theme.room

    Notice {
        objectName: "benchesFault"
        Layout.fillWidth: true
        visible: BenchesModel.fault.length > 0
        kind: Notice.Info
        title: qsTr("There can be no plan yet")
        text: BenchesModel.fault
    }
    Notice {
        Layout.fillWidth: true
        visible: BenchesModel.planned === false && BenchesModel.without.length > 0 && BenchesModel.fault.length === 0
        kind: Notice.Info
        title: qsTr("%n player(s) without a bench", "", BenchesModel.without.length)
        text: qsTr("A plan gives everybody one stringer and one machine for the event, and keeps apart who may soon meet.")
    }
    ActionButton {
        objectName: "planRules"
        visible: BenchesModel.fault.length === 0
        kind: ActionButton.Quiet
        text: qsTr("What the plan goes by")
        onClicked: rules.begin()
    }
    ChoiceBar {
        objectName: "apartFrom"
        Layout.fillWidth: true
        Layout.maximumWidth: 640
        visible: BenchesModel.fault.length === 0
        label: qsTr("Nobody shares a bench with somebody they can meet from here on")
        value: BenchesModel.apartFrom
        options: [{ value: 8, text: qsTr("Quarter-finals") }, { value: 4, text: qsTr("Semi-finals") }, { value: 2, text: qsTr("Final") },
                  { value: 0, text: qsTr("No rule") }]
        onChosen: value => BenchesModel.keepApartFrom(value, qsTr("The next plan goes by it"))
    }
    ActionButton {
        objectName: "planBenches"
        Layout.fillWidth: true
        Layout.maximumWidth: 420
        visible: BenchesModel.fault.length === 0
        enabled: !BenchesModel.busy
        text: BenchesModel.busy ? qsTr("Planning …") : BenchesModel.planned ? qsTr("Plan anew") : qsTr("Plan the benches")
        onClicked: BenchesModel.plan(qsTr("Benches planned"))
    }
    Words {
        objectName: "benchesProof"
        Layout.fillWidth: true
        visible: text.length > 0
        text: BenchesModel.proof
    }
    SideBySide {
        id: columns
        Layout.fillWidth: true
        visible: BenchesModel.planned
        least: 300
        most: 4
        spacing: Theme.gap

        Repeater {
            model: view.benches.length
            Card {
                id: column
                required property int index
                readonly property var bench: view.benches[column.index] ?? { name: "", machine: "", rackets: "", share: 0, people: [] }
                width: columns.columnWidth
                title: column.bench.name
                detail: Listing.commas([column.bench.machine, qsTr("%1 rackets to come").arg(column.bench.rackets)])
                spacing: 0

                Rectangle {
                    Layout.fillWidth: true
                    Layout.bottomMargin: Theme.tight
                    implicitHeight: 8
                    radius: 4
                    color: Theme.colour.ground
                    Accessible.ignored: true
                    Rectangle {
                        width: parent.width * column.bench.share
                        height: parent.height
                        radius: 4
                        color: Theme.colour.action
                    }
                }
                BenchPeople {
                    Layout.fillWidth: true
                    people: column.bench.people
                    meetings: column.bench.meetings ?? []
                    onOpened: person => sheet.begin(person)
                    onTaken: (person, at) => carrying.begin(person, at)
                    onMoved: at => carrying.follow(at)
                    onLetGo: carrying.end()
                }
                Words {
                    Layout.fillWidth: true
                    visible: column.bench.people.length === 0
                    quiet: true
                    text: qsTr("Nobody yet")
                }
            }
        }
    }
    Sheet {
        id: sheet
        property var who: ({ person: -1, name: "", pinned: false })
        property var ways: []
        property var wishes: []

        function begin(person) {
            who = person;
            ways = BenchesModel.waysOf(person.person);
            wishes = BenchesModel.wishesOf(person.person);
            open();
        }

        title: sheet.who.name
        Words {
            objectName: "why"
            Layout.fillWidth: true
            text: sheet.opened ? BenchesModel.why(sheet.who.person) : ""
        }
        Words {
            Layout.fillWidth: true
            meaning: Words.Strong
            text: qsTr("Move to, and what it costs the plan")
        }
        Repeater {
            model: sheet.ways
            ListRow {
                required property var modelData
                objectName: "way" + modelData.bench
                Layout.fillWidth: true
                enabled: modelData.allowed && !modelData.here
                opens: false
                text: modelData.name
                detail: modelData.here ? qsTr("here") : modelData.allowed ? "" : qsTr("a wish forbids it")
                endText: modelData.here || !modelData.allowed ? "" : modelData.cost
                onClicked: if (BenchesModel.move(sheet.who.person, modelData.bench, qsTr("Moved, and pinned there"))) sheet.close()
            }
        }
        Words {
            Layout.fillWidth: true
            meaning: Words.Strong
            text: qsTr("Wishes")
        }
        Repeater {
            model: sheet.wishes
            ListRow {
                required property var modelData
                objectName: "wish" + modelData.wish
                Layout.fillWidth: true
                opens: false
                text: modelData.text
                endText: qsTr("drop")
                onClicked: if (BenchesModel.dropWish(modelData.wish, qsTr("The wish is dropped"))) sheet.close()
            }
        }
        ActionButton {
            objectName: "addWish"
            Layout.fillWidth: true
            kind: ActionButton.Secondary
            iconName: "plus"
            text: qsTr("Add a wish")
            onClicked: {
                sheet.close();
                wishing.begin(sheet.who);
            }
        }
        ActionButton {
            objectName: "unpin"
            Layout.fillWidth: true
            visible: sheet.who.pinned
            kind: ActionButton.Secondary
            text: qsTr("Take the pin out")
            onClicked: if (BenchesModel.unpin(sheet.who.person, qsTr("The next plan may move them"))) sheet.close()
        }
    }
    Sheet {
        id: wishing
        property var who: ({ person: -1, name: "" })
        property bool never: false

        function begin(person) {
            who = person;
            never = false;
            open();
        }

        title: wishing.who.name
        ChoiceBar {
            objectName: "wishKind"
            Layout.fillWidth: true
            value: wishing.never
            options: [{ value: false, text: qsTr("Only with") }, { value: true, text: qsTr("Never with") }]
            Accessible.name: qsTr("What is wished for")
            onChosen: value => wishing.never = value
        }
        Repeater {
            model: view.benches.length
            ListRow {
                required property int index
                objectName: "wishWith" + index
                Layout.fillWidth: true
                opens: false
                text: view.benches[index]?.name ?? ""
                detail: view.benches[index]?.machine ?? ""
                onClicked: if (BenchesModel.addWish(wishing.who.person, wishing.never, index, qsTr("The next plan goes by it"))) wishing.close()
            }
        }
    }
    Sheet {
        id: rules
        property string chances

        function begin() {
            chances = BenchesModel.chances;
            weights.text = BenchesModel.weights;
            open();
        }

        title: qsTr("What the plan goes by")
        ChoiceBar {
            objectName: "planChances"
            Layout.fillWidth: true
            label: qsTr("Who wins a match")
            value: rules.chances
            options: [{ value: "", text: qsTr("As known best") }, { value: "rating", text: qsTr("Rating") }, { value: "seed", text: qsTr("Seed") },
                      { value: "even", text: qsTr("Even odds") }]
            onChosen: value => rules.chances = value
        }
        TextEntry {
            id: weights
            objectName: "planWeights"
            Layout.fillWidth: true
            label: qsTr("What a meeting on one bench costs, the final’s first")
            placeholder: "16 8 4 2 1"
            hint: qsTr("The last number stands for all rounds before. Empty: as is usual.")
            field.maximumLength: 60
        }
        ActionButton {
            objectName: "keepRules"
            Layout.fillWidth: true
            text: qsTr("Keep")
            onClicked: if (BenchesModel.setRules(rules.chances, weights.text, qsTr("The next plan goes by it"))) rules.close()
        }
    }
    BenchTray {
        id: carrying
    }
}
