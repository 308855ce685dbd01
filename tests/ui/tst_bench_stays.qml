import QtQuick
import QtTest
import Weavelog.Parts
import Weavelog.Screens
import Weavelog.Theme
import Weavelog.View
import Weavelog.Tests

// What lies under the finger stays there: the racket on the bench, the cards of the board, the toast beside what is tapped.
AppCase {
    id: test
    name: "BenchStays"
    when: windowShown

    function button(window, name) {
        let found = null;
        tryVerify(() => (found = Walker.interactive(window.contentItem).find(item => Walker.nameOf(item) === name)) !== undefined, 5000, name);
        return found;
    }
    function look(window) {
        lookAt(window.contentItem);
        compare(Walker.unreachable(window.contentItem).join("\n"), "");
    }
    // Where an item lies in its window, from edge to edge.
    function placeOf(window, item) {
        const at = item.mapToItem(window.contentItem, 0, 0);
        return Qt.rect(at.x, at.y, item.width, item.height);
    }
    function apart(one, other) {
        return one.right <= other.left || other.right <= one.left || one.bottom <= other.top || other.bottom <= one.top;
    }
    function cleanup() { Theme.rightToLeft = false; }

    function test_another_tablet_takes_the_racket_that_is_looked_at_data() { return sizes(); }
    function test_another_tablet_takes_the_racket_that_is_looked_at(data) {
        verify(Jobs.receive("Okafor", data.tag === "phone" ? 34 : 33));
        const job = Jobs.job();
        const window = openApp("bench", data.width, data.height);
        BenchModel.choose(Jobs.book(), job);
        verify(Jobs.takenElsewhere("Corvin", StageMark.CutOut));
        tryVerify(() => BenchModel.away.how === BenchModel.Taken);
        compare(BenchModel.job, job);
        compare(find(window, "away").title, "Tag %1 was taken on by Corvin at another bench".arg(BenchModel.tag));
        for (const step of [4, 5, 6]) verify(!find(window, "bench" + step).enabled);
        mouseClick(find(window, "bench4"));
        compare(Jobs.stage(), StageMark.CutOut);
        look(window);
        verify(Jobs.receive("Palliser", 35)); // somebody waits
        mouseClick(button(window, "Next racket"));
        verify(BenchModel.job !== job);
        verify(BenchModel.hasJob);
        verify(Walker.find(window.contentItem, "away") === null);
    }
    function test_strings_stand_with_the_figures_and_the_name_stays_in_sight_data() { return sizes(); }
    function test_strings_stand_with_the_figures_and_the_name_stays_in_sight(data) {
        verify(Jobs.receive("Quistgaard", data.tag === "phone" ? 37 : 36));
        const window = openApp("bench", data.width, data.height);
        BenchModel.choose(Jobs.book(), Jobs.job());
        const foot = placeOf(window, find(window, "bench4")).top;
        const string = find(window, "mainsString");
        compare(string.name, "Tarnbrook Silk");
        verify(placeOf(window, string).bottom < foot);
        // Both at one look; on a phone the crosses' stands just below.
        if (data.tag === "tablet") verify(placeOf(window, find(window, "crossesString")).bottom < foot);
        const name = find(window, "nameInSight"), tag = find(window, "tagInSight");
        const before = placeOf(window, name).top;
        let flick = find(window, "steps");
        while (flick && flick.contentY === undefined) flick = flick.parent;
        verify(flick.contentHeight > flick.height);
        flick.contentY = flick.contentHeight - flick.height;
        compare(placeOf(window, name).top, before);
        verify(name.visible && name.text === "Quistgaard" && tag.text === BenchModel.tag);
        verify(Walker.find(window.contentItem, "tensionInSight") !== null || window.narrow);
        look(window);
        // The next racket is read from its beginning.
        verify(Jobs.receive("Rosenlund", data.tag === "phone" ? 39 : 38));
        verify(flick.contentY > 0);
        BenchModel.choose(Jobs.book(), Jobs.job());
        compare(flick.contentY, 0);
        compare(name.text, "Rosenlund");
    }
    function test_a_finger_that_taps_twice_moves_one_racket_data() { return sizes(); }
    function test_a_finger_that_taps_twice_moves_one_racket(data) {
        const first = data.tag === "phone" ? 53 : 51;
        verify(Jobs.rush("Sorley", first) && Jobs.rush("Tarkan", first + 1)); // first in their column
        const window = openApp("room", data.width, data.height);
        wait(600);
        const inspected = RoomModel.columns[1].count;
        const card = button(window, "Tag %1, Sorley: Inspected".arg(first));
        const at = placeOf(window, card);
        for (const tap of [1, 2]) mouseClick(window.contentItem, at.x + at.width / 2, at.y + at.height / 2);
        compare(RoomModel.columns[1].count, inspected + 1);
        wait(600);
        button(window, "Tag %1, Tarkan: Inspected".arg(first + 1)).clicked();
        compare(RoomModel.columns[1].count, inspected + 2);
    }
    function test_what_waits_for_an_answer_goes_on_by_it() {
        verify(Jobs.receive("Ulfsson", 55));
        verify(Jobs.bringTo(StageMark.Waiting));
        const window = openApp("room");
        wait(600);
        button(window, "Tag 55, Ulfsson: The player’s answer").clicked();
        compare(Jobs.stage(), StageMark.Waiting);
        const brief = find(window, "brief");
        compare(brief.said[0].value, "Tarnbrook Silk, 24.5\u00a0kg");
        compare(find(window, "asked").text, "as the test needs it");
        const go = find(window, "answered");
        verify(!go.enabled);
        verify(Walker.find(window.contentItem, "step" + StageMark.Inspected) === null);
        find(window, "answerText").takeFocus();
        for (const key of [Qt.Key_N, Qt.Key_O]) keyClick(key);
        verify(go.enabled);
        look(window);
        go.clicked();
        compare(Jobs.stage(), StageMark.Inspected);
    }
    // On a phone the column of those that wait is chosen first, and the sheet is the same.
    function test_what_another_bench_answered_is_not_answered_once_more_data() { return sizes().slice(0, 1); }
    function test_what_another_bench_answered_is_not_answered_once_more(data) {
        const family = "Vestergaard " + data.tag, tag = data.tag === "phone" ? 63 : 62;
        verify(Jobs.receive(family, tag));
        verify(Jobs.bringTo(StageMark.Waiting));
        const window = openApp("room", data.width, data.height);
        wait(600);
        button(window, "Tag %1, %2: The player’s answer".arg(tag).arg(family)).clicked();
        const answer = find(window, "answerText"), go = find(window, "answered");
        answer.takeFocus();
        for (const key of [Qt.Key_N, Qt.Key_O]) keyClick(key);
        verify(go.enabled);
        waitForRendering(window.contentItem, 300);
        const at = placeOf(window, go);
        verify(Jobs.takenElsewhere("Corvin", StageMark.Inspected, "the silk one"));
        const asked = find(window, "asked");
        tryVerify(() => asked.title.includes("Corvin"));
        compare(asked.text, "the silk one");
        compare(answer.text, "no");
        waitForRendering(window.contentItem, 300);
        compare(placeOf(window, go).top, at.top);
        const entries = Jobs.entries();
        go.clicked(); // looks again
        compare(Jobs.entries(), entries);
        compare(Jobs.stage(), StageMark.Inspected);
        verify(find(window, "step" + StageMark.CutOut).enabled);
        look(window);
    }
    function test_a_step_taken_back_here_is_not_told_as_taken_elsewhere() {
        verify(Jobs.receive("Wahlgren", 64));
        verify(Jobs.takenElsewhere("Corvin", StageMark.CutOut));
        const window = openApp("bench");
        BenchModel.choose(Jobs.book(), Jobs.job());
        find(window, "bench5").clicked();
        compare(Jobs.stage(), StageMark.OnMachine);
        find(window, "undo").clicked();
        compare(Jobs.stage(), StageMark.CutOut);
        compare(Walker.find(window.contentItem, "away"), null);
        verify(find(window, "bench5").enabled);
    }
    function test_the_check_shows_what_it_compares_with_data() { return sizes(); }
    function test_the_check_shows_what_it_compares_with(data) {
        verify(Jobs.receive("Valdano", data.tag === "phone" ? 57 : 56) && Jobs.bringTo(StageMark.Strung));
        const window = openApp("room", data.width, data.height);
        CheckModel.show(Jobs.book(), Jobs.job());
        const said = find(window, "brief").said;
        compare(said.map(line => line.label).join(", "), "Mains, Crosses, Stencil, Promised");
        compare(said[2].value, "open ring, red");
        look(window);
    }
    function test_the_toast_covers_nothing_that_is_tapped_data() { return sizes(); }
    function test_the_toast_covers_nothing_that_is_tapped(data) {
        verify(Jobs.receive("Wibeck", data.tag === "phone" ? 59 : 58) && Jobs.receive("Ystrom", data.tag === "phone" ? 61 : 60));
        const window = openApp("bench", data.width, data.height);
        BenchModel.choose(Jobs.book(), Jobs.job());
        const step = placeOf(window, find(window, "bench5"));
        find(window, "bench4").clicked();
        const toast = find(window, "toast");
        tryVerify(() => toast.visible);
        wait(50);
        const over = placeOf(window, toast);
        compare(placeOf(window, find(window, "bench5")).top, step.top); // nothing moves under the finger
        for (const name of ["bench4", "bench5", "bench6", "another", "inspect"]) verify(apart(placeOf(window, find(window, name)), over), name);
        let flick = find(window, "steps");
        while (flick && flick.contentY === undefined) flick = flick.parent;
        verify(placeOf(window, flick).bottom <= over.top + 1);
        find(window, "undo").clicked();
        tryVerify(() => !toast.visible);
        tryCompare(ToastRoom, "height", 0);
    }
}
