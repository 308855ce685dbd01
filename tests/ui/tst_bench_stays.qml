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

    Component { id: main; Main {} }

    function make(place, width, height) {
        const window = createTemporaryObject(main, null, { width: width ?? 1280, height: height ?? 800, startPlace: place });
        verify(window);
        window.requestActivate();
        tryCompare(window, "active", true);
        waitForRendering(window.contentItem);
        return window;
    }
    function find(window, name) {
        let found = null;
        tryVerify(() => (found = Walker.find(window.contentItem, name)) !== null, 5000, name);
        return found;
    }
    function button(window, name) {
        let found = null;
        tryVerify(() => (found = Walker.interactive(window.contentItem).find(item => Walker.nameOf(item) === name)) !== undefined, 5000, name);
        return found;
    }
    function look(window) {
        compare(Walker.nameless(window.contentItem).join("\n"), "");
        compare(Walker.tooSmall(window.contentItem, 48).join("\n"), "");
        compare(Walker.unreachable(window.contentItem).join("\n"), "");
    }
    function sizes() { return [{ tag: "tablet", width: 1280, height: 800 }, { tag: "phone", width: 412, height: 915 }]; }
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
        const window = make("bench", data.width, data.height);
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
        const window = make("bench", data.width, data.height);
        BenchModel.choose(Jobs.book(), Jobs.job());
        const foot = placeOf(window, find(window, "bench4")).top;
        const string = find(window, "mainsString");
        compare(string.name, "Tarnbrook Silk");
        verify(placeOf(window, string).bottom < foot);
        // On a phone the line of what was just done may stand where the second one is.
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
        const window = make("room", data.width, data.height);
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
        const window = make("room");
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
    function test_the_check_shows_what_it_compares_with_data() { return sizes(); }
    function test_the_check_shows_what_it_compares_with(data) {
        verify(Jobs.receive("Valdano", data.tag === "phone" ? 57 : 56) && Jobs.bringTo(StageMark.Strung));
        const window = make("room", data.width, data.height);
        CheckModel.show(Jobs.book(), Jobs.job());
        const said = find(window, "brief").said;
        compare(said.map(line => line.label).join(", "), "Mains, Crosses, Stencil, Promised");
        compare(said[2].value, "open ring, red");
        look(window);
    }
    function test_the_toast_covers_nothing_that_is_tapped_data() { return sizes(); }
    function test_the_toast_covers_nothing_that_is_tapped(data) {
        verify(Jobs.receive("Wibeck", data.tag === "phone" ? 59 : 58) && Jobs.receive("Ystrom", data.tag === "phone" ? 61 : 60));
        const window = make("bench", data.width, data.height);
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
