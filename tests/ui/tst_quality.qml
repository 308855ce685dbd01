import QtQuick
import QtTest
import Weavelog.Parts
import Weavelog.Screens
import Weavelog.View
import Weavelog.Tests

// How even the room's work is: the chart walked by keys and taps, the rules, and what is said at the bench.
AppCase {
    id: test
    name: "Quality"
    when: windowShown

    function make(width, height, place) { return openApp(place, width, height); }
    function initTestCase() { Room.addEvent(); }

    function test_1_without_readings_it_says_so_data() { return sizes(); }
    function test_1_without_readings_it_says_so(data) {
        const window = make(data.width, data.height, "team");
        find(window, "teamView").chosen("evenness");
        tryVerify(() => QualityModel.watched && QualityModel.ready && !QualityModel.busy);
        find(window, "nothingRead");
        compare(Walker.find(window.contentItem, "qualityChart"), null);
        look(window);
        find(window, "teamView").chosen("people");
        tryCompare(QualityModel, "watched", false);
    }
    function test_2_rackets_stand_on_a_chart_that_is_walked_and_marked() {
        verify(Jobs.machine("Window", 30));
        for (let i = 0; i < 26; ++i) {
            verify(Jobs.receive("Player " + i, 100 + i));
            verify(Jobs.stringAndRead("Corvid 98", 30 + [0.3, -0.5, 0.1, 0.6, -0.2, -0.4][i % 6] - (i > 23 ? 4 : 0)));
        }
        const window = make(1280, 800, "team");
        find(window, "teamView").chosen("evenness");
        tryVerify(() => QualityModel.ready && !QualityModel.busy && QualityModel.points.length === 26, 10000);
        const chart = find(window, "qualityChart");
        verify(QualityModel.alarms.length > 0);
        verify(find(window, "capability").text.length > 0);
        look(window);
        chart.forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Right);
        compare(find(window, "chosenRacket").text, QualityModel.points[25].text);
        keyClick(Qt.Key_Left);
        compare(find(window, "chosenRacket").text, QualityModel.points[24].text);
        mouseClick(chart, chart.scale + chart.ends + chart.perPoint, chart.height / 2);
        compare(find(window, "chosenRacket").text, QualityModel.points[1].text);
    }
    function test_3_the_rules_are_kept_data() { return sizes(); }
    function test_3_the_rules_are_kept(data) {
        const window = make(data.width, data.height, "team");
        find(window, "teamView").chosen("evenness");
        tryVerify(() => QualityModel.ready && !QualityModel.busy);
        find(window, "qualityRules").clicked();
        const tolerance = find(window, "ruleTolerance");
        const wanted = data.tag === "tablet" ? "3" : "4.5";
        tolerance.text = wanted;
        look(window);
        find(window, "keepQualityRules").clicked();
        gone(window, "keepQualityRules");
        tryCompare(QualityModel, "tolerance", Number(wanted));
        look(window);
    }
    function test_4_the_check_says_that_a_racket_is_off_data() { return sizes(); }
    function test_4_the_check_says_that_a_racket_is_off(data) {
        verify(Jobs.receive("Offside " + data.tag, 200 + data.width % 7));
        verify(Jobs.stringAndRead("Corvid 98", 25));
        verify(Jobs.bringTo(6));
        const window = make(data.width, data.height, "room");
        CheckModel.show(Jobs.book(), Jobs.job());
        tryVerify(() => QualityModel.verdicts["check"] !== undefined, 10000);
        const notice = find(window, "offNotice");
        verify(notice.verdict.off);
        verify(notice.text.includes("below"));
        look(window);
        keyClick(Qt.Key_Escape);
        tryVerify(() => QualityModel.verdicts["check"] === undefined);
    }
    function test_5_the_bench_says_whether_its_racket_is_off_data() { return sizes(); }
    function test_5_the_bench_says_whether_its_racket_is_off(data) {
        verify(Jobs.receive("Even " + data.tag, 300 + data.width % 7));
        verify(Jobs.stringAndRead("Corvid 98", 30));
        const window = make(data.width, data.height, "bench");
        BenchModel.choose(Jobs.book(), Jobs.job());
        tryVerify(() => QualityModel.verdicts["bench"] !== undefined && QualityModel.verdicts["bench"].told, 10000);
        verify(!QualityModel.verdicts["bench"].off);
        verify(BenchModel.work.measure(BenchWork.BedStiffness, "36.5", 13, "", ""));
        tryVerify(() => QualityModel.verdicts["bench"].off, 10000);
        const notice = find(window, "offNotice");
        verify(notice.text.includes("above"));
        look(window);
    }
}
