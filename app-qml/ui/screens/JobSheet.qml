pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.View

// Everything that can be done with one racket on the board, and what was done with it.
Sheet {
    id: sheet

    property string book
    property string job
    property var ways: ({})
    // How it stands by now. What is written here is an answer to how it stood.
    property var now: ({})
    readonly property bool movedOn: ways.seen !== undefined && now.seen !== ways.seen
    readonly property string movedOnTo: now.stage === undefined ? qsTr("it is not here any more")
        : Listing.commas([StageWords.title(now.stage), now.marks?.[0]?.by ?? "", now.marks?.[0]?.at ?? ""])
    property int other: 0
    // What waits for an answer goes on by it: by the one about its frame, or by what is written down here.
    readonly property bool waits: sheet.ways.stage === StageMark.Waiting && !sheet.ways.clash
    readonly property bool answers: waits && sheet.ways.awaits
    readonly property bool answerGiven: waits && !answers && answer.text.trim().length > 0
    readonly property bool reasonGiven: reason.text.trim().length > 0

    function show(bookId, jobId, name) {
        book = bookId;
        job = jobId;
        title = ScanModel.jobOf(bookId, jobId).text ?? name;  // with its tag
        look();
        open();
    }
    function look() {
        lookAgain();
        other = ways.clash ? ways.stage : 0;
        reason.text = "";
        answer.text = "";
        RoomModel.lookAt(book, job);
    }
    function lookAgain() {
        now = RoomModel.stepsOf(book, job);
        ways = now;
    }
    // A second scan of its tag: the usual step is one press away.
    function offerStep() { firstStep.itemAt(0)?.forceActiveFocus(Qt.TabFocusReason); }
    function take(stage, why) {
        if (why.length === 0 && (stage === 7 || stage === 8)) {
            close();
            if (stage === 7) CheckModel.show(book, job);
            else CheckModel.showStencils(book, job);
            return;
        }
        if (RoomModel.take(book, job, stage, why, title + ": " + StageWords.title(stage), ways.seen ?? "")) close();
        else now = RoomModel.stepsOf(book, job);
    }

    onClosed: RoomModel.lookAt("", "")
    hasChanges: reasonGiven || answerGiven
    onDiscarded: {
        reason.text = "";
        answer.text = "";
    }

    Notice {
        Layout.fillWidth: true
        visible: sheet.ways.clash ?? false
        kind: Notice.Attention
        title: qsTr("Two people moved this racket on while apart")
        text: qsTr("Look where it is, choose its stage below and say why.")
    }
    RowLayout {
        spacing: Theme.gap
        StageMark { stage: sheet.ways.stage ?? 0 }
        Words {
            Layout.fillWidth: true
            quiet: true
            text: sheet.ways.marks?.length > 0
                ? Listing.commas([sheet.ways.marks[0].by, sheet.ways.marks[0].at]) : ""
        }
    }
    JobBrief {
        objectName: "brief"
        Layout.fillWidth: true
        brief: sheet.ways.brief ?? ({})
    }
    // What goes back with the racket, where it is handed over; before that, what came with it.
    Notice {
        objectName: "handOver"
        Layout.fillWidth: true
        visible: sheet.ways.stage === StageMark.Ready && (sheet.ways.bags > 0 || (sheet.ways.collectedBy ?? "").length > 0)
        title: sheet.ways.bags > 0 ? qsTr("Hand over %n bag(s) with the rackets", "", sheet.ways.bags) : ""
        text: (sheet.ways.collectedBy ?? "").length > 0 ? qsTr("May be collected by %1").arg(sheet.ways.collectedBy) : ""
    }
    Words {
        objectName: "bagsCame"
        Layout.fillWidth: true
        visible: sheet.ways.bags > 0 && sheet.ways.stage !== StageMark.Ready
        quiet: true
        text: qsTr("Came with %n bag(s)", "", sheet.ways.bags ?? 0)
    }
    MachineChips {
        Layout.fillWidth: true
        choice: RoomModel.machine
        racket: sheet.title
    }
    ActionButton {
        objectName: "answer"
        Layout.fillWidth: true
        visible: sheet.answers
        iconName: "question"
        text: qsTr("Take the player’s answer")
        onClicked: InspectionModel.show(sheet.book, sheet.job)
    }
    FontMetrics {
        id: metrics
        font.pixelSize: Theme.type.body
        font.weight: Font.DemiBold
    }
    Notice {
        objectName: "asked"
        Layout.fillWidth: true
        // What is told here when it moves on elsewhere finds its room.
        Layout.minimumHeight: 2 * Theme.gap + Theme.tight + (sheet.narrow ? 6 : 3) * Math.ceil(metrics.lineSpacing)
        visible: sheet.waits && !sheet.answers
        kind: Notice.Attention
        title: sheet.movedOn ? qsTr("It moved on elsewhere meanwhile: %1").arg(sheet.movedOnTo) : qsTr("It waits for its player’s answer")
        text: (sheet.movedOn ? sheet.now : sheet.ways).marks?.[0]?.reason ?? ""
    }
    TextEntry {
        id: answer
        objectName: "answerText"
        Layout.fillWidth: true
        visible: sheet.waits && !sheet.answers
        label: qsTr("What the player answered")
        hint: qsTr("It stays beside this racket, for whoever strings it.")
    }
    ActionButton {
        objectName: "answered"
        Layout.fillWidth: true
        visible: sheet.waits && !sheet.answers
        enabled: sheet.answerGiven || sheet.movedOn
        iconName: sheet.movedOn ? "turn" : StageWords.iconName(StageMark.Inspected)
        text: sheet.movedOn ? qsTr("Look again; nothing was written") : sheet.answerGiven ? StageWords.title(StageMark.Inspected) : qsTr("Write the answer first")
        onClicked: sheet.movedOn ? sheet.look() : sheet.take(StageMark.Inspected, answer.text)
    }
    SideBySide {
        id: steps
        Layout.fillWidth: true
        visible: !sheet.waits
        least: 220
        Repeater {
            id: firstStep
            model: sheet.ways.steps ?? []
            ActionButton {
                required property int modelData
                required property int index
                width: steps.columnWidth
                objectName: "step" + modelData
                kind: index === 0 ? ActionButton.Primary : ActionButton.Secondary
                iconName: StageWords.iconName(modelData)
                text: StageWords.title(modelData)
                onClicked: sheet.take(modelData, "")
            }
        }
    }
    ActionButton {
        objectName: "inspect"
        Layout.fillWidth: true
        visible: !sheet.answers
        kind: ActionButton.Secondary
        iconName: "search"
        text: qsTr("Inspect the frame")
        onClicked: InspectionModel.show(sheet.book, sheet.job)
    }
    ActionButton {
        objectName: "stringBed"
        Layout.fillWidth: true
        kind: ActionButton.Secondary
        iconName: "bench"
        text: qsTr("String bed")
        onClicked: BedModel.show(sheet.book, sheet.job)
    }
    ActionButton {
        objectName: "compare"
        Layout.fillWidth: true
        // From strung to ready: before it is checked, bagged or handed over.
        visible: sheet.ways.stage >= StageMark.Strung && sheet.ways.stage <= StageMark.Ready
        kind: ActionButton.Secondary
        iconName: "tag"
        text: qsTr("Compare the tags on racket and bag")
        onClicked: ScanModel.comparing = true
    }
    ActionButton {
        objectName: "newTime"
        Layout.fillWidth: true
        visible: sheet.ways.stage > 0 && sheet.ways.stage < StageMark.Ready
        kind: ActionButton.Secondary
        iconName: "clock"
        text: qsTr("New time")
        onClicked: newTime.show(sheet.book, sheet.job, sheet.title)
    }
    AccountButton {
        objectName: "account"
        Layout.fillWidth: true
        book: sheet.book
        onClicked: sheet.close()
    }
    ActionButton {
        objectName: "print"
        Layout.fillWidth: true
        kind: ActionButton.Secondary
        iconName: "tag"
        text: qsTr("Print")
        onClicked: papers.showJob(sheet.book, sheet.job)
    }
    PhotosCard {
        objectName: "photos"
        Layout.fillWidth: true
        Layout.topMargin: Theme.gap
        book: sheet.opened ? sheet.book : ""
        job: sheet.opened ? sheet.job : ""
    }
    Words {
        Layout.fillWidth: true
        Layout.topMargin: Theme.gap
        meaning: Words.Title
        text: qsTr("With a reason")
    }
    PickList {
        objectName: "other"
        Layout.fillWidth: true
        label: qsTr("Another stage")
        placeholder: qsTr("Put aside, a step back, ...")
        value: sheet.other
        options: (sheet.ways.others ?? []).map(stage => ({ value: stage, text: StageWords.title(stage) })).reverse()
        onPicked: value => sheet.other = value
    }
    TextEntry {
        id: reason
        objectName: "reason"
        Layout.fillWidth: true
        label: qsTr("Reason")
        hint: qsTr("Everybody who looks at this racket later reads it.")
    }
    ActionButton {
        objectName: "takeOther"
        Layout.fillWidth: true
        kind: ActionButton.Secondary
        enabled: sheet.other > 0 && sheet.reasonGiven || sheet.movedOn
        text: sheet.movedOn ? qsTr("It moved on meanwhile: %1. Look again").arg(sheet.movedOnTo) : sheet.other > 0 ? qsTr("Set to: %1").arg(StageWords.title(sheet.other)) : qsTr("Choose a stage first")
        onClicked: sheet.movedOn ? sheet.lookAgain() : sheet.take(sheet.other, reason.text)
    }
    Words {
        Layout.fillWidth: true
        Layout.topMargin: Theme.gap
        meaning: Words.Title
        text: qsTr("What was done")
    }
    Repeater {
        model: sheet.ways.marks ?? []
        RowLayout {
            id: done
            required property var modelData
            spacing: Theme.gap
            StageMark { Layout.alignment: Qt.AlignTop; stage: done.modelData.stage }
            Words {
                Layout.fillWidth: true
                text: Listing.commas([done.modelData.machine.length > 0 ? qsTr("machine %1").arg(done.modelData.machine) : "", done.modelData.by,
                                      done.modelData.at, done.modelData.reason])
            }
        }
    }
    Connections {
        target: RoomModel
        function onBoardChanged() {
            if (!sheet.opened) return;
            sheet.now = RoomModel.stepsOf(sheet.book, sheet.job);
            if (!sheet.hasChanges) sheet.ways = sheet.now;
        }
    }
    PrintSheet { id: papers }
    NewTimeSheet { id: newTime }
}
