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

    function make(width, height) { return openApp("plan", width, height); }
    function initTestCase() {
        Room.addEvent();
        for (const name of ["Merrin", "Odalys", "Corvin"]) verify(TeamModel.setMember(name, 3, "en fr", "", ""));
        let table = "line,player,seed,rating\n";
        for (let i = 1; i <= 16; ++i) table += i + "," + (i === 2 ? "bye" : "Player " + i) + "," + (i === 1 ? 1 : "") + "," + (i === 2 ? "" : 1900 - 7 * i) + "\n";
        file = Room.table("draw.csv", table);
    }

    function test_1_a_draw_is_brought_in_and_played_on_by_taps_data() { return sizes(); }
    function test_1_a_draw_is_brought_in_and_played_on_by_taps(data) {
        const window = make(data.width, data.height);
        find(window, "planView").chosen("draw");
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
        verify(DrawModel.bringIn(test.file, data.tag, 0, false, "in"));
        verify(!DrawModel.bringIn(test.file, data.tag, 0, false, "twice"));
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
    function test_3_a_player_is_carried_to_another_bench_and_wishes_are_kept_data() { return sizes(); }
    function test_3_a_player_is_carried_to_another_bench_and_wishes_are_kept(data) {
        const window = make(data.width, data.height);
        find(window, "planView").chosen("benches");
        tryVerify(() => BenchesModel.planned);
        const from = BenchesModel.benches.findIndex(one => one.people.some(person => person.person === 3));
        const ways = BenchesModel.waysOf(3);
        const to = ways.findIndex(one => one.allowed && !one.here);
        const grip = find(window, "grip3");
        tryVerify(() => grip.height > 40);
        const row = find(window, "person3");
        row.forceActiveFocus(Qt.TabFocusReason); // brings it into view
        waitForRendering(window.contentItem);
        mousePress(grip, 20, 20);
        const target = find(window, "target" + to);
        tryVerify(() => target.visible && target.width > 100 && target.mapToItem(null, 0, target.height).y <= data.height - 8);
        const at = target.mapToItem(grip, target.width / 2, target.height / 2);
        mouseMove(grip, at.x - 10, at.y);
        mouseMove(grip, at.x, at.y);
        mouseRelease(grip, at.x, at.y);
        tryVerify(() => BenchesModel.benches[to].people.some(person => person.person === 3 && person.pinned));
        verify(from !== to);
        find(window, "person3").clicked();
        find(window, "addWish").clicked();
        find(window, "wishKind").chosen(true);
        find(window, "wishWith" + from).clicked();
        tryVerify(() => BenchesModel.wishesOf(3).length === 1);
        gone(window, "wishKind");
        find(window, "person3").clicked();
        look(window);
        find(window, "wish" + BenchesModel.wishesOf(3)[0].wish).clicked();
        tryVerify(() => BenchesModel.wishesOf(3).length === 0);
        gone(window, "why");
        find(window, "planRules").clicked();
        look(window);
        find(window, "planChances").chosen("even");
        find(window, "planWeights").text = "8 4 2";
        find(window, "keepRules").clicked();
        tryCompare(BenchesModel, "chances", "even");
        compare(BenchesModel.weights, "8 4 2");
        gone(window, "keepRules");
        verify(BenchesModel.setRules("", "", "back"));
    }
    function test_4_a_withdrawal_and_a_rush_are_seen_on_the_day_data() { return sizes(); }
    function test_4_a_withdrawal_and_a_rush_are_seen_on_the_day(data) {
        const window = make(data.width, data.height);
        const tag = data.tag === "tablet" ? 700 : 750;
        for (let i = 1; i <= 3; ++i) verify(Jobs.receive("Dayplan " + (tag + i), tag + i));
        find(window, "planView").chosen("day");
        tryVerify(() => DayModel.ready && !DayModel.busy && DayModel.rackets >= 3, 10000);
        compare(DayModel.fault, "");
        const chip = find(window, "dayJob" + (tag + 1));
        tryVerify(() => chip.height > 48);
        look(window);
        find(window, "tellDay").clicked();
        tryVerify(() => DayModel.told && DayModel.toTell === 0 && !DayModel.busy, 10000);
        gone(window, "tellDay");
        // Somebody looks elsewhere; meanwhile a rush comes from the court and a player withdraws.
        find(window, "planView").chosen("draw");
        tryCompare(DayModel, "watched", false);
        verify(DrawModel.withdraw(data.tag === "tablet" ? 9 : 10, "out"));
        verify(Jobs.rush("Courtside " + tag, tag + 9));
        find(window, "planView").chosen("day");
        tryVerify(() => DayModel.news.length >= 2 && !DayModel.busy, 10000);
        verify(DayModel.news.some(one => one.includes("withdrew")));
        verify(DayModel.news.some(one => one.includes("Courtside")));
        const rush = find(window, "dayJob" + (tag + 9));
        rush.clicked();
        look(window);
        keyClick(Qt.Key_Escape);
        find(window, "dayNews").acted();
        tryCompare(DayModel, "news", []);
        look(window);
        find(window, "tellDay").clicked();
        tryVerify(() => DayModel.toTell === 0 && !DayModel.busy, 10000);
    }
    function test_5_what_is_to_come_is_shown_with_its_bands_data() { return sizes(); }
    function test_5_what_is_to_come_is_shown_with_its_bands(data) {
        Room.endEvent(3);
        const window = make(data.width, data.height);
        find(window, "planView").chosen("forecast");
        tryVerify(() => !ForecastModel.busy, 10000);
        tryVerify(() => ForecastModel.fault === "" && ForecastModel.days.length > 0, 10000);
        find(window, "forecastDay0").clicked();
        look(window);
    }
    function test_6_a_draw_is_typed_in_data() { return sizes(); }
    function test_6_a_draw_is_typed_in(data) {
        const window = make(data.width, data.height);
        find(window, "planView").chosen("draw");
        find(window, "bringDraw").clicked();
        find(window, "drawName").text = "Typed " + data.tag;
        find(window, "drawFrom").chosen(true);
        find(window, "drawSize").chosen(4);
        tryVerify(() => Walker.find(window.contentItem, "line4") !== null && Walker.find(window.contentItem, "line5") === null);
        for (const [line, text] of [[1, "Ilse Osmer"], [3, "Bela Tarn / Mira Quill"], [4, "Jo Vantreel"]]) {
            const entry = find(window, "line" + line);
            entry.text = text;
            entry.edited(text);
        }
        const seed = find(window, "seed1");
        seed.text = "1";
        seed.edited("1");
        find(window, "bye2").toggled();
        look(window);
        find(window, "keepDraw").clicked();
        tryVerify(() => DrawModel.draws.some(one => one.name === "Typed " + data.tag));
        gone(window, "keepDraw");
        compare(DrawModel.rounds[0].matches[0].one.mark, "1");
        compare(DrawModel.rounds[0].matches[1].one.name, "Bela Tarn / Mira Quill");
        compare(DrawModel.rounds[1].matches[0].one.name, "Ilse Osmer"); // by the bye
    }
    function test_7_a_group_is_typed_in_and_played_data() { return sizes(); }
    function test_7_a_group_is_typed_in_and_played(data) {
        const window = make(data.width, data.height);
        find(window, "planView").chosen("draw");
        find(window, "bringDraw").clicked();
        find(window, "drawName").text = "Group " + data.tag;
        find(window, "drawKind").chosen("group");
        find(window, "drawFrom").chosen(true);
        tryVerify(() => Walker.find(window.contentItem, "line4") !== null && Walker.find(window.contentItem, "line5") === null);
        for (let i = 1; i <= 4; ++i) find(window, "line" + i).edited("Ilse Group" + i);
        tryVerify(() => Walker.tooSmall(window.contentItem, 48).length === 0);
        look(window);
        find(window, "keepDraw").clicked();
        tryVerify(() => DrawModel.standing.length === 4);
        gone(window, "keepDraw");
        compare(DrawModel.rounds.length, 3);
        tryVerify(() => Walker.find(window.contentItem, "match1-1") !== null);
        mouseClick(find(window, "match1-1"));
        find(window, "wins1").clicked();
        gone(window, "wins1");
        const name = DrawModel.rounds[0].matches[0].other.name;
        verify(DrawModel.standing[0].startsWith(name));
        look(window);
        // What follows another match, and where.
        mouseClick(find(window, "match1-2"));
        find(window, "placeMatch").clicked();
        find(window, "matchCourt").text = "Court 3";
        find(window, "matchFollows").text = "1/1";
        find(window, "keepPlace").clicked();
        gone(window, "keepPlace");
        compare(DrawModel.rounds[0].matches[1].follows, "1/1");
        compare(DrawModel.rounds[0].matches[1].court, "Court 3");
    }

    function test_8_a_racket_is_promised_for_another_time_data() { return sizes(); }
    function test_8_a_racket_is_promised_for_another_time(data) {
        const family = "Zeller" + data.tag;
        verify(Jobs.rush(family, data.width === 412 ? 88 : 89));  // on top of the board
        const window = openApp("room", data.width, data.height);
        let card = null;
        tryVerify(() => (card = Walker.interactive(window.contentItem).find(item => Walker.nameOf(item).includes(family))) !== undefined);
        card.clicked();
        find(window, "newTime").clicked();
        const keep = find(window, "keepTime");
        const before = NewTimeModel.before;
        verify(before.length > 0);
        verify(!keep.enabled);
        tryVerify(() => NewTimeModel.answered || NewTimeModel.fault.length > 0, 20000);
        look(window);
        find(window, "later").clicked();
        find(window, "later").clicked();
        verify(NewTimeModel.differs);
        verify(!keep.enabled); // nobody agreed yet
        find(window, "withPlayer").clicked();
        compare(find(window, "agreedBy").text, NewTimeModel.player);
        tryVerify(() => keep.enabled);
        keep.clicked();
        gone(window, "keepTime");
        find(window, "newTime").clicked();
        tryVerify(() => NewTimeModel.before.length > 0 && NewTimeModel.before !== before);
    }
}
