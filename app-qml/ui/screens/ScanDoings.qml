pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Weavelog.Parts
import Weavelog.View

// What a scan does, whatever page is shown: the racket of the tag comes up, a second scan goes for its next step.
Item {
    id: doings

    required property string place
    // Somebody whose card was taken in is to be shown.
    signal playerAsked(string book)
    // The job of the newest scan: only a second scan in a row goes for a step.
    property string last

    function found(book, job) {
        const it = Object.assign({}, ScanModel.jobOf(book, job));
        if (it.job === undefined) return;
        const second = last === job;
        last = job;
        several.close();
        if (place === "bench" && !sheet.opened) {
            if (second && BenchModel.job === job) return again(it, BenchModel.nextStage);
            // From taken in to on the machine, but for what waits for an answer: that is the bench's.
            if (it.stage >= StageMark.Received && it.stage <= StageMark.OnMachine && it.stage !== StageMark.Waiting)
                return BenchModel.choose(book, job);
        }
        if (!sheet.opened) return sheet.show(book, job, it.text);
        if (sheet.job === job) {
            if (Settings.scanSteps && it.nextStage > 0 && !sheet.hasChanges) sheet.take(it.nextStage, "");
            else sheet.offerStep();
        } else if (sheet.hasChanges) {
            sheet.leave();
        } else {
            sheet.show(book, job, it.text);
        }
    }
    // On the bench: the racket lies there already.
    function again(it, next) {
        if (next === 0) return sheet.show(it.book, it.job, it.text);
        offer.about = it;
        offer.next = next;
        if (Settings.scanSteps) offer.take();
        else offer.open();
    }

    // What was asked for before these were made.
    Component.onCompleted: {
        if (TakeCardModel.wanted) card.open();
        if (CameraModel.on && !CameraModel.photos) camera.open();
    }

    Connections {
        target: ScanModel
        function onFound(book, job) { doings.found(book, job); }
        function onSeveralFound() { several.open(); }
        function onCardScanned(code) { TakeCardModel.take(code); }
        function onCompareChanged() {
            if (ScanModel.comparing && !guard.opened) guard.open();
        }
    }
    Connections {
        target: CameraModel
        function onOnChanged() { CameraModel.on && !CameraModel.photos ? camera.open() : camera.close(); }
        function onRead(code) {
            if (!ScanModel.comparing) CameraModel.on = false;
            ScanModel.take(code);
            // Two tags that are compared come one after the other before the same camera.
            if (ScanModel.compared === ScanModel.Same || ScanModel.compared === ScanModel.Different) CameraModel.on = false;
        }
    }
    Connections {
        target: TakeCardModel
        function onAsked() { card.open(); }
    }
    TakeCardSheet {
        id: card
        objectName: "takeCard"
        onShowAsked: book => doings.playerAsked(book)
    }
    CameraSheet {
        id: camera
        objectName: "camera"
    }
    JobSheet {
        id: sheet
        objectName: "scanned"
    }
    Sheet {
        id: offer
        objectName: "offer"

        property var about: ({})
        property int next: 0

        // The bench may have gone on meanwhile.
        function take() {
            if (BenchModel.job === about.job && BenchModel.nextStage === next) BenchModel.step(about.text + ": " + StageWords.title(next));
            close();
        }

        title: about.text ?? ""
        onOpened: step.forceActiveFocus(Qt.TabFocusReason)

        Words {
            Layout.fillWidth: true
            text: qsTr("Scanned again. The next step:")
        }
        ActionButton {
            id: step
            objectName: "offered"
            Layout.fillWidth: true
            iconName: StageWords.iconName(offer.next)
            text: StageWords.title(offer.next)
            onClicked: offer.take()
        }
    }
    Sheet {
        id: several
        objectName: "several"
        title: qsTr("This number was given out twice")

        Words {
            Layout.fillWidth: true
            text: qsTr("Look at the racket, and choose whose it is.")
        }
        Repeater {
            model: ScanModel.several
            ListRow {
                required property var modelData
                Layout.fillWidth: true
                text: modelData.text
                detail: modelData.detail
                endText: StageWords.title(modelData.stage)
                onClicked: ScanModel.found(modelData.book, modelData.job)
            }
        }
    }
    TagGuardSheet { id: guard }
}
