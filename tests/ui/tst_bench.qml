import QtQuick
import QtTest
import Weavelog.Parts
import Weavelog.Screens
import Weavelog.Theme
import Weavelog.View
import Weavelog.Tests

// The work at the bench, the check and the stencils, by finger and by keyboard.
AppCase {
    id: test
    name: "Bench"
    when: windowShown

    function look(window) {
        lookAt(window.contentItem);
        compare(Walker.unreachable(window.contentItem).join("\n"), "");
    }
    function prepare(name, tag, stage) {
        verify(Jobs.receive(name, tag));
        if (stage > 0) verify(Jobs.bringTo(stage));
    }
    // Two that pull, one that does not; the event stays from test to test.
    function needMachines() {
        if (MachinesModel.machines.length > 0) return;
        verify(Jobs.machine("by the window", 40) && Jobs.machine("old one", 20) && Jobs.machine("broken", 40));
        verify(MachinesModel.breakDown(MachinesModel.machines[2].id, "a clamp slips", ""));
    }
    function cleanup() { CheckModel.startAgain(); }

    function test_steps_are_ticked_and_stay_ticked_data() { return sizes(); }
    function test_steps_are_ticked_and_stay_ticked(data) {
        prepare("Arvidsen", 21, 0);
        const window = openApp("bench", data.width, data.height);
        BenchModel.choose(Jobs.book(), Jobs.job());
        const first = find(window, "tick0");
        verify(!first.checked);
        first.forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Return);
        compare(BenchModel.work.stepsDone, 1);
        verify(first.checked);
        compare(find(window, "tick0"), first); // the row stays, and so does the focus
        verify(first.activeFocus);
        keyClick(Qt.Key_Return);
        compare(BenchModel.work.stepsDone, 0);
        look(window);
    }
    function test_which_machine_is_one_tap_data() { return sizes(); }
    function test_which_machine_is_one_tap(data) {
        needMachines();
        prepare("Ibsgaard", data.tag === "phone" ? 31 : 30, 4);
        const window = openApp("bench", data.width, data.height);
        BenchModel.choose(Jobs.book(), Jobs.job());
        verify(!find(window, "machine2").enabled);
        look(window);
        const old = find(window, "machine1");
        old.forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Return);
        verify(old.checked);
        compare(BenchModel.machine.doubts.length, 1); // 24.5 kg is above 20
        keyClick(Qt.Key_Return);
        verify(old.checked); // one of them holds
        find(window, "machine0").clicked();
        find(window, "machine0").toggled();
        compare(BenchModel.machine.name, "by the window");
        find(window, "bench5").clicked();
        compare(Jobs.stage(), StageMark.OnMachine);
        compare(Jobs.machineNow(), "by the window");
        look(window);
    }
    function test_the_board_asks_where_the_usual_machine_is_not_for_a_setup() {
        needMachines();
        prepare("Jorgsen", 32, 4);
        BenchModel.choose(Jobs.book(), Jobs.job());
        verify(BenchModel.machine.choose(MachinesModel.machines[1].id, ""));
        verify(BenchModel.step(""));
        verify(BenchModel.step(""));
        prepare("Kvernberg", 33, 4);
        const window = openApp("room");
        let button = null;
        tryVerify(() => (button = Walker.interactive(window.contentItem).find(item => Walker.nameOf(item).startsWith("Tag 33, Kvernberg: "))) !== undefined);
        wait(550); // taps that follow each other at once are one
        button.clicked();
        compare(Jobs.stage(), StageMark.CutOut);
        find(window, "machine0").toggled();
        look(window);
        find(window, "step5").clicked();
        compare(Jobs.stage(), StageMark.OnMachine);
        compare(Jobs.machineNow(), "by the window");
    }
    function test_photos_are_shown_small_and_large_and_the_rest_can_be_fetched_data() { return sizes(); }
    function test_photos_are_shown_small_and_large_and_the_rest_can_be_fetched(data) {
        prepare("Ljungwall", data.tag === "phone" ? 52 : 51, 0);
        const window = openApp("bench", data.width, data.height);
        BenchModel.choose(Jobs.book(), Jobs.job());
        verify(Jobs.photograph(true));
        verify(Jobs.photograph(false));
        const tile = find(window, "photo0");
        verify(tile.width >= 96 && tile.height >= 96);
        const fetch = find(window, "fetch1");
        look(window);
        tile.forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Return);
        tryVerify(() => Walker.find(window.contentItem, "largePicture") !== null);
        const picture = Walker.find(window.contentItem, "largePicture");
        tryVerify(() => picture.height > 150);
        compare(picture.fault, "");
        look(window);
        keyClick(Qt.Key_Escape);
        gone(window, "largePicture");
        // No event server: the reason stands below, and the way stays.
        fetch.clicked();
        verify(fetch.visible);
    }
    function test_the_time_is_shown_while_the_racket_is_on_the_machine() {
        prepare("Brunold", 22, 5);
        const window = openApp("bench");
        BenchModel.choose(Jobs.book(), Jobs.job());
        verify(/^\d+:\d\d$/.test(find(window, "time").text));
        mouseClick(find(window, "bench6"));
        compare(Jobs.stage(), StageMark.Strung);
    }
    function test_a_reading_is_entered_data() { return sizes(); }
    function test_a_reading_is_entered(data) {
        prepare("Castellane", 23, 0);
        const window = openApp("bench", data.width, data.height);
        BenchModel.choose(Jobs.book(), Jobs.job());
        find(window, "measure").clicked();
        const keep = find(window, "keepReading");
        verify(!keep.enabled);
        look(window);
        find(window, "what").chosen(BenchWork.Tone);
        find(window, "reading").edited("522");
        verify(keep.enabled);
        keep.clicked();
        compare(BenchModel.work.readings.length, 1);
        verify(BenchModel.work.readings[0].value.startsWith("522"));
        gone(window, "keepReading");
    }
    function test_the_check_is_gone_through_before_a_racket_is_checked_data() { return sizes(); }
    function test_the_check_is_gone_through_before_a_racket_is_checked(data) {
        prepare("Dorofei", 24, 6);
        const window = openApp("room", data.width, data.height);
        if (data.tag === "phone") find(window, "stages").at = 5;
        let button = null;
        tryVerify(() => (button = Walker.interactive(window.contentItem).find(item => Walker.nameOf(item).startsWith("Tag 24, Dorofei: "))) !== undefined);
        wait(550);
        button.clicked();
        const store = find(window, "storeCheck");
        verify(!store.enabled);
        compare(Jobs.stage(), StageMark.Strung);
        look(window);
        mouseClick(Walker.find(find(window, "item0"), "right"));
        compare(CheckModel.unseen, CheckModel.items.length - 1);
        find(window, "rest").clicked();
        verify(store.enabled);
        store.clicked();
        compare(Jobs.stage(), StageMark.Checked);
        gone(window, "storeCheck");
    }
    function test_a_redo_needs_its_reason() {
        prepare("Eskildsen", 25, 6);
        const window = openApp("room");
        CheckModel.show(Jobs.book(), Jobs.job());
        const store = find(window, "storeCheck");
        Walker.find(find(window, "item3"), "wrong").clicked();
        find(window, "rest").clicked();
        verify(!store.enabled);
        const reason = find(window, "redoReason");
        reason.takeFocus();
        for (const key of [Qt.Key_N, Qt.Key_O]) keyClick(key);
        verify(store.enabled);
        look(window);
        store.clicked();
        compare(Jobs.stage(), StageMark.CutOut);
        compare(CheckModel.redos, 1);
    }
    function test_what_was_found_is_not_thrown_away_by_a_tap() {
        prepare("Farkas", 26, 6);
        const window = openApp("room");
        CheckModel.show(Jobs.book(), Jobs.job());
        Walker.find(find(window, "item0"), "wrong").clicked();
        keyClick(Qt.Key_Escape);
        find(window, "discard").clicked();
        gone(window, "storeCheck");
        verify(!CheckModel.begun);
        compare(Jobs.stage(), StageMark.Strung);
    }
    function test_the_stencils_are_shown_before_they_are_on_data() { return sizes(); }
    function test_the_stencils_are_shown_before_they_are_on(data) {
        prepare("Gunnulf", 27, 7);
        const window = openApp("room", data.width, data.height);
        CheckModel.showStencils(Jobs.book(), Jobs.job());
        const done = find(window, "stencilled");
        verify(find(window, "inkCaution").text.length > 0);
        look(window);
        done.clicked();
        compare(Jobs.stage(), StageMark.Stencilled);
        gone(window, "stencilled");
    }
}
