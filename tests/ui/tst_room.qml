import QtQuick
import QtTest
import Weavelog.Parts
import Weavelog.Screens
import Weavelog.Theme
import Weavelog.View
import Weavelog.Tests

// The room's pages with rackets in them, by finger and by keyboard.
AppCase {
    id: test
    name: "Room"
    when: windowShown

    function look(window) {
        lookAt(window.contentItem);
        compare(Walker.unreachable(window.contentItem).join("\n"), "");
        for (const item of Walker.interactive(window.contentItem)) {
            if (Walker.nameOf(item).includes("racket")) continue; // the strips scroll sideways
            const left = item.mapToItem(window.contentItem, 0, 0).x;
            verify(left + item.width <= window.width + 1 || item.objectName === "card" || item.objectName === "advance",
                   item + " " + Walker.nameOf(item));
        }
    }

    function test_pages_with_rackets_data() {
        const out = [];
        for (const place of ["room", "bench", "money", "stock", "team", "questions", "exchange", "settings"])
            for (const size of [[1280, 800], [412, 915]])
                for (const mirrored of [false, true])
                    out.push({ tag: place + " " + size[0] + (mirrored ? " mirrored" : ""), place: place,
                               width: size[0], height: size[1], mirrored: mirrored });
        return out;
    }
    function test_pages_with_rackets(data) {
        verify(Jobs.receive("Okafor", 41));
        verify(Jobs.disagree());
        Theme.rightToLeft = data.mirrored;
        look(openApp(data.place, data.width, data.height));
    }
    function cleanup() { Theme.rightToLeft = false; }

    function test_a_card_moves_its_racket_on_and_undo_takes_it_back() {
        verify(Jobs.receive("Aalto", 7));
        const window = openApp("room");
        verify(find(window, "board").height > 300);
        let button = null;
        tryVerify(() => (button = Walker.interactive(window.contentItem).find(item => Walker.nameOf(item).startsWith("Tag 7, Aalto: "))) !== undefined);
        button.forceActiveFocus(Qt.TabFocusReason);
        wait(550); // taps that follow each other at once are one
        keyClick(Qt.Key_Return);
        compare(Jobs.stage(), StageMark.Inspected);
        mouseClick(find(window, "undo"));
        compare(Jobs.stage(), StageMark.Received);
    }
    function test_aside_needs_a_reason() {
        verify(Jobs.rush("Bakonyi", 8)); // first in its column
        const window = openApp("room");
        let card = null;
        tryVerify(() => (card = Walker.interactive(window.contentItem).find(item => Walker.nameOf(item) === "Tag 8, Bakonyi")) !== undefined);
        card.clicked();
        const over = window.contentItem;
        const take = find(window, "takeOther");
        verify(!take.enabled);
        const picker = find(window, "other");
        picker.picked(StageMark.Aside);
        verify(!take.enabled);
        const reason = find(window, "reason");
        reason.takeFocus();
        for (const key of [Qt.Key_N, Qt.Key_O]) keyClick(key);
        verify(take.enabled);
        take.clicked();
        compare(Jobs.stage(), StageMark.Aside);
    }
    function test_all_jobs_are_listed() {
        verify(Jobs.receive("Cervenka", 9));
        const window = openApp("room");
        const view = find(window, "view");
        view.chosen("jobs");
        const rows = find(window, "rows");
        compare(rows.count, JobsModel.count);
        verify(Walker.interactive(rows).some(row => Walker.nameOf(row) === "Cervenka"));
    }
    function test_the_bench_steps_by_one_tap_each() {
        verify(Jobs.receive("Dunajec", 10));
        const window = openApp("bench");
        // The racket may not be the next one of this room: it is chosen, as a person would.
        if (BenchModel.player !== "Dunajec") {
            mouseClick(find(window, "another"));
            let row = null;
            tryVerify(() => (row = Walker.interactive(window.contentItem).find(item => Walker.nameOf(item) === "Dunajec")) !== undefined);
            row.clicked();
        }
        compare(BenchModel.player, "Dunajec");
        compare(Walker.nameOf(find(window, "figures")), "Mains 24.5 kg, crosses 23.5 kg");
        mouseClick(find(window, "bench4"));
        compare(Jobs.stage(), StageMark.CutOut);
        verify(!find(window, "bench4").enabled);
        mouseClick(find(window, "bench5"));
        mouseClick(find(window, "bench6"));
        compare(Jobs.stage(), StageMark.Strung);
    }
    function test_a_question_is_closed_with_an_answer() {
        verify(Jobs.receive("Eriksdal", 11));
        verify(Jobs.disagree());
        const window = openApp("questions");
        const before = QuestionsModel.count;
        const card = cardOf(window, "Eriksdal");
        const close = Walker.find(card, "close");
        verify(!close.enabled);
        const answers = Walker.interactive(card).filter(item => item.objectName.startsWith("answer"));
        compare(answers.length, 2);
        answers.find(item => Walker.nameOf(item).startsWith("23")).clicked();
        verify(close.enabled);
        close.clicked();
        tryCompare(QuestionsModel, "count", before - 1);
        compare(Jobs.mains(), "23 kg");
        verify(Walker.find(window.contentItem, "closed"));
    }
    function hasCard(window, player) {
        for (const item of Walker.interactive(window.contentItem))
            for (let up = item; up; up = up.parent) if (up.player === player) return up;
        return null;
    }
    function cardOf(window, player) {
        let card = null;
        tryVerify(() => (card = hasCard(window, player)) !== null);
        return card;
    }
    function yIn(window, item) { return item.mapToItem(window.contentItem, 0, 0).y; }
    function test_a_question_answered_elsewhere_says_so_and_stays_where_it_is_data() { return sizes(); }
    function test_a_question_answered_elsewhere_says_so_and_stays_where_it_is(data) {
        const family = "Falkenrud" + data.tag;
        verify(Jobs.receive(family, data.tag === "phone" ? 13 : 12));
        verify(Jobs.disagree());
        const window = openApp("questions", data.width, data.height);
        const card = cardOf(window, family), close = Walker.find(card, "close");
        const mine = Walker.interactive(card).find(item => Walker.nameOf(item).startsWith("26"));
        mine.clicked();
        tryVerify(() => close.enabled);
        waitForRendering(window.contentItem, 300);
        const before = [close, mine, Walker.find(card, "anew")].map(item => yIn(window, item)), height = card.height;
        verify(Jobs.answeredElsewhere(23));
        tryVerify(() => card.isClosed);
        waitForRendering(window.contentItem, 300);
        compare([close, mine, Walker.find(card, "anew")].map(item => yIn(window, item)), before);
        compare(card.height, height);
        verify(Walker.find(card, "asks").text.includes("23"));
        verify(Walker.find(card, "asks").text.includes("Bench tablet"));
        verify(!mine.enabled);
        look(window);
        const after = Jobs.entries();
        close.clicked(); // read
        compare(Jobs.entries(), after);
        compare(Jobs.mains(), "23 kg");
        tryVerify(() => hasCard(window, family) === null);
    }
    function test_another_answer_has_its_place_before_it_is_chosen_data() { return sizes(); }
    function test_another_answer_has_its_place_before_it_is_chosen(data) {
        const family = "Gundersby" + data.tag;
        verify(Jobs.receive(family, data.tag === "phone" ? 15 : 14));
        verify(Jobs.disagree());
        const window = openApp("questions", data.width, data.height);
        const card = cardOf(window, family), close = Walker.find(card, "close"), other = Walker.find(card, "other");
        waitForRendering(window.contentItem, 300);
        const at = yIn(window, close) - yIn(window, card), height = card.height;
        Walker.find(card, "anew").clicked();
        for (const typed of ["2", "240", "24x", "24"]) {
            other.field.forceActiveFocus();
            other.field.text = "";
            for (const letter of typed) keyClick(letter);
            wait(50);
            compare(yIn(window, close) - yIn(window, card), at);
            compare(card.height, height);
        }
        verify(close.enabled);
        // Whoever just writes it has chosen it.
        Walker.interactive(card).find(item => Walker.nameOf(item).startsWith("26")).clicked();
        other.field.forceActiveFocus();
        keyClick(Qt.Key_End);
        keyClick(Qt.Key_Period);
        keyClick("5");
        compare(card.chosen, card.anew);
        close.clicked();
        compare(Jobs.mains(), "24.5 kg");
    }
    function test_a_wrong_pairing_code_says_which_word() {
        const window = openApp("exchange");
        const code = find(window, "code");
        code.text = "lusab-babad-gutih";
        find(window, "address").text = "desk.local";
        find(window, "pair").clicked();
        verify(code.error.length > 0);
        code.text = "weavelog:pair?v=1";
        verify(!Walker.find(window.contentItem, "address"));
        find(window, "pair").clicked();
        verify(code.error.length > 0);
        compare(ExchangeModel.state, ExchangeModel.Alone);
    }
    function test_the_network_is_asked_only_while_the_exchange_is_seen() {
        const window = openApp("exchange");
        verify(NearbyModel.looking);
        window.go("room");
        verify(!NearbyModel.looking);
        window.go("exchange");
        verify(NearbyModel.looking);
        window.go("room");
    }
    function test_an_address_that_was_picked_waits_for_its_code() {
        const window = openApp("exchange");
        find(window, "near").addressPicked("192.0.2.7:26110");
        compare(find(window, "address").text, "192.0.2.7:26110");
        verify(find(window, "code").field.activeFocus);
        verify(!find(window, "pair").enabled);
    }
}
