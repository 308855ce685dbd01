import QtQuick
import QtTest
import Weavelog.Parts
import Weavelog.Screens
import Weavelog.View
import Weavelog.Tests

// The draw played on by finger, and the home benches.
AppCase {
    id: test
    name: "Plan"
    when: windowShown

    property url file

    Component { id: main; Main {} }

    function make(width, height) {
        const window = createTemporaryObject(main, null, { width: width ?? 1280, height: height ?? 800, startPlace: "plan" });
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
    function gone(window, name) { tryVerify(() => Walker.find(window.contentItem, name) === null, 5000, name); }
    function look(window) {
        compare(Walker.nameless(window.contentItem).join("\n"), "");
        compare(Walker.tooSmall(window.contentItem, 48).join("\n"), "");
    }
    function initTestCase() {
        Room.addEvent();
        for (const name of ["Merrin", "Odalys", "Corvin"]) verify(TeamModel.setMember(name, 3, "en fr", "", ""));
        let table = "line,player,seed,rating\n";
        for (let i = 1; i <= 16; ++i) table += i + "," + (i === 2 ? "bye" : "Player " + i) + "," + (i === 1 ? 1 : "") + "," + (i === 2 ? "" : 1900 - 7 * i) + "\n";
        file = Room.table("draw.csv", table);
    }
    function sizes() { return [{ tag: "tablet", width: 1280, height: 800 }, { tag: "phone", width: 412, height: 915 }]; }

    function test_1_a_draw_is_brought_in_and_played_on_by_taps_data() { return sizes(); }
    function test_1_a_draw_is_brought_in_and_played_on_by_taps(data) {
        const window = make(data.width, data.height);
        find(window, "bringDraw").clicked();
        const name = find(window, "drawName").field;
        tryCompare(name, "activeFocus", true);
        for (const letter of data.tag) keyClick(letter);
        verify(!find(window, "keepDraw").enabled);
        look(window);
        name.text = "";
        keyClick(Qt.Key_Escape);
        gone(window, "keepDraw");
        // The file dialog is the system's own: what it gives goes in here.
        verify(DrawModel.bringIn(test.file, data.tag, 0, "in"));
        verify(!DrawModel.bringIn(test.file, data.tag, 0, "twice"));
        tryVerify(() => DrawModel.rounds.length === 4);
        const card = find(window, "match1-2");
        tryVerify(() => card.width > 48);
        look(window);
        mouseClick(card);
        find(window, "wins1").clicked();
        gone(window, "wins1");
        compare(DrawModel.rounds[0].matches[1].other.won, true);
        compare(DrawModel.rounds[1].matches[0].other.name, "Player 4");
        compare(DrawModel.rounds[0].matches[0].one.won, true); // by the bye
        mouseClick(find(window, "match1-2"));
        find(window, "takeResultBack").clicked();
        gone(window, "takeResultBack");
        compare(DrawModel.rounds[1].matches[0].other.known, false);
        find(window, "round3").clicked();
        look(window);
    }
    function test_2_benches_are_planned_moved_and_pinned_data() { return sizes(); }
    function test_2_benches_are_planned_moved_and_pinned(data) {
        const window = make(data.width, data.height);
        find(window, "planView").chosen("benches");
        tryVerify(() => BenchesModel.watched && BenchesModel.fault === "");
        find(window, "apartFrom").chosen(2);
        tryCompare(BenchesModel, "apartFrom", 2);
        find(window, "planBenches").clicked();
        tryVerify(() => !BenchesModel.busy, 20000);
        tryCompare(BenchesModel, "planned", true);
        verify(BenchesModel.proof.length > 0);
        compare(BenchesModel.benches.reduce((sum, one) => sum + one.people.length, 0), 15);
        tryVerify(() => Walker.find(window.contentItem, "person0") !== null);
        look(window);
        const from = BenchesModel.benches.findIndex(one => one.people.some(person => person.person === 0));
        find(window, "person0").clicked();
        verify(find(window, "why").text.length > 0);
        const to = (from + 1) % 3;
        verify(BenchesModel.waysOf(0)[to].cost.length > 0);
        find(window, "way" + to).clicked();
        tryVerify(() => BenchesModel.benches[to].people.some(person => person.person === 0 && person.pinned));
        gone(window, "why");
        find(window, "person0").clicked();
        find(window, "unpin").clicked();
        tryVerify(() => BenchesModel.benches[to].people.some(person => person.person === 0 && !person.pinned));
        gone(window, "unpin");
        find(window, "planView").chosen("draw");
        tryVerify(() => DrawModel.rounds[0].matches[0].one.bench.length > 0); // the home bench stands in the draw
    }
}
