pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// The racket on the bench: the agreed figures to be read from two metres, what differs from last time, and the steps.
FocusScope {
    id: bench

    readonly property bool narrow: width < Theme.phoneWidth
    readonly property real footHeight: bar.height
    readonly property bool gone: top.gone
    readonly property var onCourt: BenchModel.onCourt
    readonly property var doubts: BenchModel.machine.doubts
    readonly property var openFields: BenchModel.openFields

    function step(stage) {
        let what = StageWords.title(stage);
        const machine = stage === StageMark.OnMachine ? BenchModel.machine.name : "";
        if (machine.length > 0) what += ", " + machine;
        BenchModel.step(BenchModel.tag.length > 0 ? qsTr("Tag %1: %2").arg(BenchModel.tag).arg(what)
                                                  : BenchModel.player + ": " + what);
    }

    // Whether the racket is off, and what its machine has to be set to.
    readonly property string looked: visible && BenchModel.hasJob ? BenchModel.job : ""
    readonly property string corrected: {
        if (QualityModel.machines.length === 0 || !BenchModel.hasJob) return "";
        const mains = QualityModel.correction(BenchModel.machine.chosen, BenchModel.mains, BenchModel.mainsUnit);
        const crosses = QualityModel.correction(BenchModel.machine.chosen, BenchModel.crosses, BenchModel.crossesUnit);
        return mains === crosses || crosses.length === 0 ? mains : mains.length === 0 ? crosses : mains + "\n" + crosses;
    }
    onLookedChanged: QualityModel.look("bench", looked)
    // Another racket is read from its beginning.
    readonly property string lying: BenchModel.job
    onLyingChanged: {
        page.flickable.cancelFlick();
        page.flickable.contentY = 0;
    }
    // What is looked at stays.
    Binding {
        target: BenchModel
        property: "onScreen"
        value: bench.visible
    }

    BenchTop {
        id: top
        anchors.top: parent.top
        anchors.left: parent.left
        anchors.right: parent.right
        height: visible ? implicitHeight : 0
        visible: BenchModel.hasJob || gone
        z: 1
        narrow: bench.narrow
        margin: page.margin
        figuresInSight: figures.y + figures.height * 0.6 > page.flickable.contentY
    }
    PageFrame {
        id: page
        anchors.top: top.bottom
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: bar.top
        anchors.bottomMargin: ToastRoom.height
        focus: true
        widest: 1100
        title: BenchModel.hasJob || bench.gone ? "" : qsTr("Bench")

        EmptyState {
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.alignment: Qt.AlignCenter
            visible: !BenchModel.hasJob && !bench.gone && AppDevice.event.length > 0
            iconName: "bench"
            title: qsTr("Nothing waits for a bench")
            text: qsTr("The racket to be strung next lies here with its setup in large figures, as soon as the desk has taken one in.")
        }
        NoEvent {
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.alignment: Qt.AlignCenter
            visible: !BenchModel.hasJob && AppDevice.event.length === 0
            iconName: "bench"
            brings: qsTr("Pair with an event server under Exchange; its rackets come here by themselves.")
        }
        Notice {
            objectName: "onCourt"
            Layout.fillWidth: true
            visible: bench.onCourt.player !== undefined
            kind: Notice.Danger
            title: qsTr("On-court rush: %1").arg(bench.onCourt.player ?? "")
            text: bench.onCourt.begun ? qsTr("It goes before the racket on this bench. A racket already on the machine is finished first.")
                                           : qsTr("It goes before the racket on this bench.")
            actionText: qsTr("Take it up")
            onActed: BenchModel.choose(bench.onCourt.book, bench.onCourt.job)
        }
        BenchHead {
            Layout.fillWidth: true
            visible: BenchModel.hasJob && bench.narrow
            withPromise: false
        }
        GiantFigure {
            id: figures
            objectName: "figures"
            Layout.fillWidth: true
            visible: BenchModel.hasJob
            mains: BenchModel.mains
            mainsUnit: BenchModel.mainsUnit
            crosses: BenchModel.crosses
            crossesUnit: BenchModel.crossesUnit
            withStrings: true
            mainsString: BenchModel.mainsString
            mainsGauge: BenchModel.mainsGauge
            crossesString: BenchModel.crossesString
            crossesGauge: BenchModel.crossesGauge
        }
        BenchTime {
            Layout.fillWidth: true
        }
        MachineChips {
            Layout.fillWidth: true
            choice: BenchModel.machine
            racket: BenchModel.tag.length > 0 ? qsTr("Tag %1").arg(BenchModel.tag) : BenchModel.player
        }
        Notice {
            objectName: "corrected"
            Layout.fillWidth: true
            visible: bench.corrected.length > 0
            title: qsTr("Machine %1 does not pull what is set").arg(BenchModel.machine.name)
            text: bench.corrected
        }
        Notice {
            objectName: "openFields"
            Layout.fillWidth: true
            visible: bench.openFields.length > 0
            kind: Notice.Attention
            title: qsTr("Two answers: %1").arg(Listing.commas(bench.openFields))
            text: qsTr("Ask the desk which one the player wants before you string it; they are under Questions.")
        }
        Repeater {
            model: BenchModel.cautions
            Notice {
                required property string modelData
                Layout.fillWidth: true
                kind: Notice.Danger
                text: modelData
            }
        }
        FrameNotes {
            Layout.fillWidth: true
            book: BenchModel.book
            job: BenchModel.job
        }
        Notice {
            Layout.fillWidth: true
            visible: BenchModel.note.length > 0
            title: qsTr("Note to the stringer")
            text: BenchModel.note
        }
        Repeater {
            model: BenchModel.reasons
            Notice {
                required property string modelData
                Layout.fillWidth: true
                kind: Notice.Attention
                title: qsTr("Written beside this racket")
                text: modelData
            }
        }
        SideBySide {
            id: cards
            Layout.fillWidth: true
            visible: BenchModel.hasJob
            least: 420

            SetupCard { width: cards.columnWidth }
            StepsCard {
                objectName: "steps"
                width: cards.columnWidth
                visible: !bench.gone
            }
            StringUseCard { objectName: "string"; width: cards.columnWidth }
            ReadingsCard {
                objectName: "readings"
                width: cards.columnWidth
                visible: !bench.gone
                onAsked: reading.show()
            }
            PhotosCard {
                objectName: "photos"
                width: cards.columnWidth
                book: BenchModel.book
                job: BenchModel.job
            }
        }
    }
    Rectangle {
        id: bar
        anchors.bottom: parent.bottom
        anchors.left: parent.left
        anchors.right: parent.right
        height: visible ? steps.implicitHeight + 2 * Theme.gap : 0
        visible: BenchModel.hasJob || BenchModel.waiting > 0
        color: Theme.colour.raised

        ColumnLayout {
            id: steps
            x: page.margin
            y: Theme.gap
            width: parent.width - 2 * page.margin
            spacing: Theme.tight

            // On a phone the chips with their warning may lie below: it stands where the finger goes.
            Words {
                objectName: "doubtAtStep"
                Layout.fillWidth: true
                visible: bench.narrow && BenchModel.nextStage === StageMark.OnMachine && bench.doubts.length > 0
                meaning: Words.Strong
                font.pixelSize: Theme.type.caption
                color: Theme.colour.attention
                text: BenchModel.machine.name + ": " + bench.doubts.join(". ")
            }
            RowLayout {
                visible: BenchModel.hasJob
                spacing: Theme.tight
                Repeater {
                    // The way of a racket over the bench: cut out, on the machine, strung.
                    model: [4, 5, 6]
                    ActionButton {
                        id: step
                        required property int modelData
                        readonly property bool done: BenchModel.stage >= modelData
                        objectName: "bench" + modelData
                        Layout.fillWidth: true
                        Layout.preferredWidth: 1
                        implicitHeight: Theme.mainTouch + Theme.gap
                        enabled: BenchModel.nextStage === modelData
                        kind: enabled ? ActionButton.Primary : ActionButton.Secondary
                        iconName: done ? (bench.narrow && text.length > 10 ? "" : "check") : bench.narrow ? "" : StageWords.iconName(modelData)
                        text: StageWords.title(modelData)
                        font.pixelSize: bench.narrow ? Theme.type.body : Theme.type.title
                        Accessible.description: done ? qsTr("Done") : ""
                        onClicked: bench.step(modelData)
                    }
                }
            }
            SideBySide {
                id: ways
                Layout.fillWidth: true
                least: 180
                spacing: Theme.tight

                ActionButton {
                    objectName: "inspect"
                    width: ways.columnWidth
                    visible: BenchModel.hasJob
                    kind: ActionButton.Quiet
                    iconName: "search"
                    text: qsTr("Inspect the frame")
                    onClicked: InspectionModel.show(BenchModel.book, BenchModel.job)
                }
                ActionButton {
                    objectName: "another"
                    width: ways.columnWidth
                    visible: BenchModel.waiting > 0
                    kind: ActionButton.Quiet
                    text: qsTr("Choose another racket (%1)").arg(BenchModel.waiting)
                    onClicked: queue.open()
                }
            }
        }
    }
    ReadingSheet { id: reading }
    Sheet {
        id: queue
        objectName: "queue"
        title: qsTr("Rackets that wait")

        Repeater {
            model: BenchModel.queue
            ListRow {
                id: row
                required property string player
                required property string tag
                required property string racket
                required property string tension
                required property string readyBy
                required property int due
                required property int rush
                required property string book
                required property string job

                Layout.fillWidth: true
                text: row.player
                detail: Listing.dotted([row.tag.length > 0 ? qsTr("Tag %1").arg(row.tag) : "",
                                        row.racket.length > 0 ? qsTr("Racket %1").arg(row.racket) : "", row.tension])
                endText: row.readyBy.length === 0 ? "" : row.due === 3 ? qsTr("Late: %1").arg(row.readyBy)
                                                                       : qsTr("By %1").arg(row.readyBy)
                opens: false
                onClicked: {
                    queue.close();
                    BenchModel.choose(row.book, row.job);
                }
                RushMark { rush: row.rush }
            }
        }
    }
}
