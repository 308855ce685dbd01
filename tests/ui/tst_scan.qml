import QtQuick
import QtTest
import Weavelog.Parts
import Weavelog.Screens
import Weavelog.Theme
import Weavelog.View
import Weavelog.Tests

// A scanner that types, on every place of the app.
AppCase {
    id: test
    name: "Scan"
    when: windowShown

    property var window

    function make(place, width, height) {
        Settings.stringer = "Ines";
        Settings.scanSteps = false;
        window = openApp(place, width, height);
    }
    function item(name) { return find(window, name); }
    function scan(text) {
        for (const key of text) keyClick(key);
        keyClick(Qt.Key_Return);
    }
    function cleanup() {
        CameraModel.on = false;
        ScanModel.comparing = false;
        Theme.rightToLeft = false;
    }

    function test_a_scan_opens_the_racket_data() {
        return ["desk", "room", "players", "questions", "exchange", "settings"].map((place, at) => ({ tag: place, place: place, number: 100 + at }));
    }
    function test_a_scan_opens_the_racket(data) {
        verify(Jobs.receive("Halvard", data.number));
        make(data.place);
        scan(Jobs.code(data.number));
        tryVerify(() => Walker.find(window.contentItem, "step2") !== null);
        verify(item("inspect"));
        // A second scan puts the next step under the finger, and Enter takes it.
        scan(Jobs.code(data.number));
        verify(item("step2").activeFocus);
        compare(Jobs.stage(), StageMark.Received);
        keyClick(Qt.Key_Return);
        compare(Jobs.stage(), StageMark.Inspected);
    }
    function test_the_camera_reads_a_tag_like_a_scanner() {
        verify(Jobs.receive("Kjersti", 171));
        make("room");
        CameraModel.on = true;
        tryVerify(() => Walker.find(window.contentItem, "sight")?.item?.width > 200);
        CameraModel.read(Jobs.code(171));
        tryVerify(() => Walker.find(window.contentItem, "step2") !== null);
        compare(CameraModel.on, false);
        gone(window, "sight");
    }
    function test_the_camera_compares_two_tags_before_it_goes_off() {
        verify(Jobs.receive("Liv", 172));
        make("room");
        ScanModel.comparing = true;
        CameraModel.on = true;
        CameraModel.read(Jobs.code(172));
        compare(CameraModel.on, true);
        compare(ScanModel.compared, ScanModel.First);
        CameraModel.read(Jobs.code(172));
        compare(ScanModel.compared, ScanModel.Same);
        compare(CameraModel.on, false);
    }
    function test_a_code_in_a_text_field_is_taken_out_again() {
        verify(Jobs.receive("Isolde", 72));
        make("desk");
        const field = item("find");
        field.forceActiveFocus();
        for (const key of "Iso") keyClick(key);
        compare(field.text, "Iso");
        scan(Jobs.code(72));
        compare(field.text, "Iso");
        compare(DeskModel.finder.typed, "Iso");
        item("step2");
        DeskModel.finder.typed = "";
    }
    function test_a_number_that_is_typed_on_the_desk_finds_the_racket() {
        verify(Jobs.receive("Jorunn", 73));
        make("desk");
        item("find").forceActiveFocus();
        for (const key of "73") keyClick(key);
        verify(Walker.nameOf(item("tagged0")).includes("Jorunn"));
        keyClick(Qt.Key_Return);
        item("step2");
        DeskModel.finder.typed = "";
    }
    function test_the_bench_takes_a_racket_up_and_offers_its_step() {
        verify(Jobs.receive("Kestrel", 74));
        verify(Jobs.receive("Lysander", 75));
        make("bench");
        scan(Jobs.code(75));
        compare(BenchModel.player, "Lysander");
        scan(Jobs.code(74));
        compare(BenchModel.player, "Kestrel");
        scan(Jobs.code(75));
        scan(Jobs.code(75));
        const offered = item("offered");
        tryVerify(() => offered.activeFocus);
        compare(Jobs.stage(), StageMark.Received);
        keyClick(Qt.Key_Return);
        compare(Jobs.stage(), StageMark.CutOut);
        gone(window, "offered");
    }
    function test_with_the_setting_on_the_second_scan_takes_the_step() {
        verify(Jobs.receive("Mirabel", 76));
        make("bench");
        Settings.scanSteps = true;
        scan(Jobs.code(76));
        compare(Jobs.stage(), StageMark.Received);
        for (const stage of [StageMark.CutOut, StageMark.OnMachine, StageMark.Strung]) {
            scan(Jobs.code(76));
            compare(Jobs.stage(), stage);
        }
        window.go("room");
        scan(Jobs.code(76));
        item("step7");
        compare(Jobs.stage(), StageMark.Strung);
        // A strung racket is checked item by item first: the scan opens the list, and takes nothing by itself.
        scan(Jobs.code(76));
        item("storeCheck");
        compare(Jobs.stage(), StageMark.Strung);
    }
    function test_a_reason_that_was_begun_is_not_lost_to_another_scan() {
        verify(Jobs.receive("Nerissa", 77));
        verify(Jobs.receive("Oswin", 78));
        make("room");
        scan(Jobs.code(77));
        const reason = item("reason");
        reason.takeFocus();
        for (const key of "no") keyClick(key);
        scan(Jobs.code(78));
        item("discard");
        compare(reason.text, "no");
    }
    function test_a_tag_of_another_event_says_so() {
        verify(Jobs.receive("Perdita", 79));
        make("room");
        scan("WL:AS59RB:137:9");
        const fault = item("fault");
        compare(fault.title, "This tag is of another event");
        verify(!Walker.find(window.contentItem, "step2"));
    }
    function test_two_tags_of_two_players_are_an_alarm_data() {
        return [{ tag: "tablet", width: 1280, height: 800, number: 80 }, { tag: "phone", width: 412, height: 915, number: 90 }];
    }
    function test_two_tags_of_two_players_are_an_alarm(data) {
        verify(Jobs.receive("Quillon", data.number));
        verify(Jobs.receive("Rosalba", data.number + 1));
        make("room", data.width, data.height);
        item("compareTags").clicked();
        item("typedTag");
        scan(Jobs.code(data.number));
        verify(!Walker.find(window.contentItem, "alarm"));
        scan(Jobs.code(data.number + 1));
        const alarm = item("alarm");
        verify(alarm.text.includes("Quillon") && alarm.text.includes("Rosalba"));
        verify(!Walker.find(window.contentItem, "comparedStep"));
        compare(item("typedTag").text, "");
        compare(Walker.nameless(window.contentItem).join("\n"), "");
        compare(Walker.tooSmall(window.contentItem, 48).join("\n"), "");
        item("compareAgain").clicked();
        gone(window, "alarm");
        scan(Jobs.code(data.number + 1));
        scan(Jobs.code(data.number + 1));
        item("same");
        item("comparedStep").clicked();
        compare(Jobs.stage(), StageMark.Inspected);
        gone(window, "typedTag");
    }
}
