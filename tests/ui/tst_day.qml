import QtQuick
import QtTest
import Weavelog.Parts
import Weavelog.Screens
import Weavelog.Theme
import Weavelog.View
import Weavelog.Tests

// Whole ways of rackets through one window, from the desk to what is paid, by what people tap, type and scan; then the room's own sums
// against a count of what was tapped.
AppCase {
    id: test
    name: "Day"
    when: windowShown

    readonly property int labour: 20  // as in Jobs.priceList()
    property var window
    property int taken: 0
    property int redone: 0
    property int paid: 0

    // Before there is an event: what they had strung was elsewhere, and is charged there.
    function initTestCase() {
        for (const name of ["Quarnstrom", "Rydelius", "Sundqvist", "Tjernlund"]) Room.addPastPlayer(name, 2);
        verify(Jobs.priceList());
    }
    function make(width, height) {
        Settings.stringer = "Ines";
        Settings.scanSteps = false;
        window = openApp("desk", width, height);
    }
    function item(name) { return find(window, name); }
    function tap(name) {
        const button = item(name);
        tryVerify(() => button.enabled, 5000, name);
        button.clicked(); // wherever the page has been scrolled to
    }
    function go(place) {
        window.go(place);
        tryCompare(window, "place", place);
        waitForRendering(window.contentItem);
    }
    function scan(tag) {
        for (const key of Jobs.code(tag)) keyClick(key);
        keyClick(Qt.Key_Return);
    }
    // Two scans in a row offer the next step; Enter takes it.
    function scanOn(tag, stage) {
        scan(tag);
        tryVerify(() => Walker.find(window.contentItem, "step" + stage) !== null, 5000, "step" + stage);
        scan(tag);
        tryVerify(() => item("step" + stage).activeFocus, 5000, "the offered step " + stage);
        keyClick(Qt.Key_Return);
        keyClick(Qt.Key_Escape);
        gone(window, "step" + stage);
    }
    // One scan, and the step by a tap.
    function scanThen(tag, stage) {
        scan(tag);
        tap("step" + stage);
        gone(window, "step" + stage);
    }
    function stageOf(tag) { return ScanModel.withNumber(String(tag))[0].stage; }

    // The player comes back, the same as last time, one kilo less on the mains; read back and confirmed.
    function dropOff(name) {
        go("desk");
        DeskModel.next();
        const field = item("find");
        field.forceActiveFocus();
        DeskModel.finder.typed = name;
        tryVerify(() => DeskModel.finder.count === 1);
        DeskModel.choose(0);
        tap("sameAsLastTime");
        tap("mains-1");
        tap("readBack");
        tryCompare(DeskModel, "page", DeskModel.Confirm);
        tap("yes");
        tryCompare(DeskModel, "page", DeskModel.Stored);
        const tags = Array.from(DeskModel.draft.tags).map(one => Number(one.tag));
        verify(tags.every(tag => tag > 0));
        taken += tags.length;
        DeskModel.next();
        return tags;
    }
    function string(tag) {
        go("bench");
        const row = ScanModel.withNumber(String(tag))[0];
        BenchModel.choose(row.book, row.job);
        tryCompare(BenchModel, "tag", String(tag));
        tap("tick0");
        tap("bench4");
        tap("bench5");
        tap("bench6");
        compare(stageOf(tag), StageMark.Strung);
    }
    function check(tag, wrong) {
        go("room");
        const row = ScanModel.withNumber(String(tag))[0];
        CheckModel.show(row.book, row.job);
        item("storeCheck");
        if (wrong) {
            Walker.find(item("item2"), "wrong").clicked();
            const reason = item("redoReason");
            reason.takeFocus();
            for (const key of [Qt.Key_A, Qt.Key_B]) keyClick(key);
        }
        tap("rest");
        tap("storeCheck");
        gone(window, "storeCheck");
        compare(stageOf(tag), wrong ? StageMark.CutOut : StageMark.Checked);
    }
    function charge(name, rackets) {
        go("money");
        const row = ScanModel.withNumber(name)[0];
        MoneyPlace.view = "accounts";
        MoneyPlace.go(row.book);
        tap("charge");
        const due = Number(MoneyPlace.account.due[0].digits);
        compare(due, labour * rackets);
        tap("pay1");
        compare(Number(MoneyPlace.account.due[0].digits), 0);
        paid += due;
    }

    function test_ways_through_the_room_data() {
        return [{ tag: "tablet", width: 1280, height: 800, players: ["Quarnstrom", "Rydelius"] },
                { tag: "phone", width: 412, height: 915, players: ["Sundqvist", "Tjernlund"] }];
    }
    function test_ways_through_the_room(data) {
        make(data.width, data.height);
        const before = { taken: taken };
        const all = data.players.map(name => dropOff(name));
        for (const [at, tags] of all.entries()) {
            for (const tag of tags) {
                compare(stageOf(tag), StageMark.Received);
                go("room");
                scanOn(tag, StageMark.Inspected);
                string(tag);
                if (at === 0 && tag === tags[0]) {
                    check(tag, true);
                    ++redone;
                    // The old string is out; it goes on the machine again.
                    go("bench");
                    const row = ScanModel.withNumber(String(tag))[0];
                    BenchModel.choose(row.book, row.job);
                    tap("bench5");
                    tap("bench6");
                }
                check(tag, false);
                go("room");
                scanThen(tag, StageMark.Ready);
            }
            // Picked up: the bag's tag is compared with each racket's, then it goes out.
            for (const tag of tags) {
                go("room");
                ScanModel.comparing = true;
                scan(tag);
                scan(tag);
                tryCompare(ScanModel, "compared", ScanModel.Same);
                tap("comparedStep");
                compare(stageOf(tag), StageMark.Collected);
            }
            charge(String(tags[0]), tags.length);
        }
        // The room's own sums are those of the taps.
        go("team");
        verify(TeamModel.open("numbers:"));
        NumbersModel.watched = true;
        const sums = NumbersModel.sums;
        compare(taken - before.taken, 4);
        compare(sums.jobs, taken);
        compare(sums.strung, taken);
        compare(sums.collected, taken);
        compare(sums.redone, redone);
        compare(sums.inRoom, 0);
        go("money");
        MoneyPlace.view = "day";
        compare(parseFloat(MoneyPlace.day.totals[0].paid), paid);
    }
}
