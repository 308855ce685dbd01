import QtQuick
import QtTest
import Weavelog.Parts
import Weavelog.Screens
import Weavelog.Theme
import Weavelog.View
import Weavelog.Tests

// The page of a drop-off under a finger: nothing beyond its edges, nothing that moves away, nothing taken unsaid.
AppCase {
    id: test
    name: "DropOff"
    when: windowShown

    property var window

    Component { id: main; Main {} }

    function initTestCase() {
        Room.addEvent();
        Room.addPastPlayer("Wendelmoor", 3);
    }
    function cleanup() {
        Room.clearDrafts();
        Settings.language = "en";
    }
    function make(width, height) {
        window = createTemporaryObject(main, null, { width: width, height: height });
        verify(window);
        window.requestActivate();
        tryCompare(window, "active", true);
        waitForRendering(window.contentItem);
    }
    function item(name) {
        let found = null;
        tryVerify(() => (found = Walker.find(window.contentItem.parent ?? window.contentItem, name)
                                 ?? Walker.find(window.contentItem, name)) !== null, 5000, name);
        return found;
    }
    // As a finger does it: scrolled into sight first.
    function bring(target) {
        wait(60);
        for (let up = target.parent; up; up = up.parent) {
            if (up.contentY !== undefined && up.contentItem !== undefined && up.contentHeight > up.height) {
                const y = target.mapToItem(up.contentItem, 0, 0).y;
                if (y + target.height > up.contentY + up.height || y < up.contentY)
                    up.contentY = Math.max(0, Math.min(y - up.height / 2, up.contentHeight - up.height));
            }
        }
        wait(60);
    }
    function tap(name) {
        const target = item(name);
        bring(target);
        mouseClick(target);
    }
    function sizes() {
        return [{ tag: "tablet", width: 1280, height: 800 }, { tag: "phone", width: 412, height: 915 }];
    }
    function yOf(target) { return target.mapToItem(null, 0, 0).y; }

    function test_nothing_lies_beyond_the_edges_of_a_phone_data() {
        const out = [];
        for (const width of [412, 360])
            for (const language of ["en", "de", "fr", "es"])
                for (const page of ["drop-off:wendel", "first:wendel", "new:Quill"])
                    out.push({ tag: width + " " + language + " " + page, width: width, language: language, page: page });
        return out;
    }
    function test_nothing_lies_beyond_the_edges_of_a_phone(data) {
        Settings.language = data.language;
        make(data.width, 915);
        DeskModel.open(data.page);
        tryCompare(DeskModel, "page", DeskModel.DropOff);
        compare(item("readBack").text, { en: "Read back", de: "Rücklesen", fr: "Relire", es: "Leer de vuelta" }[data.language]);
        for (let part = 0; part < (DeskModel.draft.asWhole ? 4 : 1); ++part) {
            if (part > 0) tap("nextPart");
            DeskModel.draft.adjust("mains", "-1"); // what is changed is on the page too
            waitForRendering(window.contentItem, 300);
            compare(Walker.beyondSides(window.contentItem).join("\n"), "");
        }
        item("storeUnconfirmed");
    }

    function test_the_time_stays_under_the_finger_when_the_answer_comes_data() { return sizes(); }
    function test_the_time_stays_under_the_finger_when_the_answer_comes(data) {
        if (TeamModel.members.length === 0) {
            verify(TeamModel.setMember("Merrin", 3, "en fr", "", ""));
            verify(TeamModel.addShift(TeamModel.members[0].id, 0, "0:00", "23:59", ""));
            verify(TeamModel.addShift(TeamModel.members[0].id, 1, "0:00", "23:59", ""));
        }
        make(data.width, data.height);
        DeskModel.open("drop-off:wendel");
        const later = item("later");
        bring(later);
        const at = yOf(later);
        mouseClick(later);
        verify(DeskModel.draft.readyBy.length > 0);
        for (const wish of [1, 6, 12]) {
            DeskModel.draft.readyIn(10 * wish);
            tryVerify(() => PromiseModel.answered && PromiseModel.fault.length === 0, 20000);
            wait(100);
            verify(Math.abs(yOf(later) - at) < 1); // half a pixel is no finger
        }
        compare(PromiseModel.fault, "");
        mouseClick(later);
        verify(DeskModel.draft.readyBy.length > 0);
        verify(yOf(item("promise")) > at + later.height);
    }

    // Two people said something else about the same setup: whose answer holds is asked where the field is.
    function test_an_open_question_is_asked_on_the_page_and_closed_by_the_yes_data() { return sizes(); }
    function test_an_open_question_is_asked_on_the_page_and_closed_by_the_yes(data) {
        const family = data.tag === "tablet" ? "Fragholt" : "Quesholt";
        Room.addPastPlayer(family, 2);
        make(data.width, data.height);
        DeskModel.open("drop-off:" + family);
        tryCompare(DeskModel, "page", DeskModel.DropOff);
        const book = DeskModel.card.book;
        verify(Room.disagree(book));
        tryVerify(() => Walker.find(window.contentItem, "asked0") !== null);
        tryVerify(() => Walker.beyondSides(window.contentItem).length === 0, 2000, "beyond the sides"); // once it is laid out
        compare(Walker.nameless(window.contentItem).join("\n"), "");
        compare(Walker.tooSmall(window.contentItem, 48).join("\n"), "");
        verify(!item("mainsFigure").enabled);
        compare(Walker.find(window.contentItem, "mains-1"), null);
        tap("readBack");
        compare(DeskModel.page, DeskModel.DropOff);
        // In sight, wherever the page was.
        const asked = item("asked0");
        verify(yOf(asked) >= 0 && yOf(asked) < data.height / 2);
        tap("anew");
        const other = item("other").field;
        other.forceActiveFocus();
        keyClick("2");
        keyClick("5");
        tryCompare(DeskModel.draft.wish, "mains_tension", "25");
        verify(other.activeFocus);
        compare(other.text, "25");
        const wanted = DeskModel.draft.questions[0].answers.findIndex(answer => answer.text.startsWith("26"));
        tap("answer" + wanted);
        compare(DeskModel.draft.wish["mains_tension"], "26");
        tap("mains-1");
        tap("readBack");
        tryCompare(DeskModel, "page", DeskModel.Confirm);
        verify(item("readBackText").text.includes("26"));
        tap("yes");
        tryCompare(DeskModel, "page", DeskModel.Stored);
        compare(Room.questionsOf(book), 0);
        verify(Room.confirmedText(book).includes("25"));
    }

    function type(field, text) {
        bring(field);
        mouseClick(field);
        tryCompare(field, "activeFocus", true);
        field.selectAll();
        for (const letter of text) keyClick(letter);
    }
    function test_what_is_typed_and_is_no_figure_stops_at_its_field_data() { return sizes(); }
    function test_what_is_typed_and_is_no_figure_stops_at_its_field(data) {
        make(data.width, data.height);
        DeskModel.open("drop-off:wendel");
        const field = Walker.find(item("mainsFigure"), "field");
        type(field, "22k5");
        compare(field.text, "22k5");
        // Not its good beginning.
        compare(DeskModel.draft.wish["mains_tension"], "25");
        item("readBack").forceActiveFocus();
        tap("readBack");
        compare(DeskModel.page, DeskModel.DropOff);
        tryCompare(field, "activeFocus", true);
        verify(yOf(field) > 0 && yOf(field) + field.height < window.height);
        verify(Walker.find(window.contentItem, "mainsFigure").rangeError.length > 0);
        type(field, "22.5");
        compare(DeskModel.draft.wish["mains_tension"], "22.5");
        tap("readBack");
        tryCompare(DeskModel, "page", DeskModel.Confirm);
    }
    function test_a_gauge_that_cannot_be_leads_back_to_its_page_data() { return sizes(); }
    function test_a_gauge_that_cannot_be_leads_back_to_its_page(data) {
        make(data.width, data.height);
        DeskModel.open("first:wendel");
        tap("nextPart");
        const field = Walker.find(item("crossesGauge"), "field");
        type(field, "9");
        tap("nextPart");
        tap("nextPart");
        compare(Walker.find(window.contentItem, "crossesGauge"), null);
        tap("readBack");
        compare(DeskModel.page, DeskModel.DropOff);
        tryCompare(field, "activeFocus", true);
        compare(field.text, "9");
        tryVerify(() => yOf(field) > 0 && yOf(field) + field.height < window.height);
    }
    function test_a_quick_step_wins_over_what_was_typed_wrongly() {
        make(1280, 800);
        DeskModel.open("drop-off:wendel");
        const field = Walker.find(item("mainsFigure"), "field");
        type(field, "2x");
        tap("mains-1");
        compare(field.text, "24");
        tap("readBack");
        tryCompare(DeskModel, "page", DeskModel.Confirm);
    }
    function test_the_first_step_of_a_tension_is_a_usual_one() {
        make(412, 915);
        DeskModel.open("new:Quillig");
        DeskModel.draft.addRacket();
        tap("nextPart");
        bring(item("mainsGauge"));
        mouseClick(Walker.find(item("mainsGauge"), "plus"));
        compare(DeskModel.draft.wish["mains_gauge"], "1.25");
        tap("nextPart");
        bring(item("mainsFigure"));
        mouseClick(Walker.find(item("mainsFigure"), "plus"));
        compare(DeskModel.draft.wish["mains_tension"], "23");
        mouseClick(Walker.find(item("mainsFigure"), "plus"));
        compare(DeskModel.draft.wish["mains_tension"], "23.5");
    }

    function test_however_many_are_unfinished_the_search_stays_in_sight_data() { return sizes(); }
    function test_however_many_are_unfinished_the_search_stays_in_sight(data) {
        for (const name of ["Anholt", "Bornholt", "Cornholt", "Dornholt", "Eichholt", "Farnholt"]) {
            DeskModel.finder.typed = name;
            DeskModel.addPlayer();
            DeskModel.draft.set("mains_string", "Tarnbrook Silk");
            DeskModel.back();
        }
        DeskModel.finder.typed = "";
        compare(DeskModel.draft.unfinished.length, 6);
        make(data.width, data.height);
        for (const name of ["find", data.tag === "phone" ? "newPlayerBelow" : "newPlayer", "unfinished", "found"]) {
            const shown = item(name);
            verify(yOf(shown) > 0 && yOf(shown) + Math.min(shown.height, 64) < data.height - 80, name);
        }
        verify(item("found").height > data.height / 3);
        verify(item("unfinished").text.includes("6"));
        compare(Walker.find(window.contentItem, "goOn"), null);
        tap("unfinished");
        const go = item("goOn");
        tryVerify(() => go.width > 48);
        go.clicked();
        tryCompare(DeskModel, "page", DeskModel.DropOff);
        tryVerify(() => Walker.find(window.contentItem.parent, "goOn") === null);
    }

    function test_the_second_of_two_quick_taps_does_not_turn_the_language() {
        make(412, 915);
        DeskModel.open("drop-off:wendel");
        const language = DeskModel.draft.language;
        const button = item("readBack");
        mouseClick(button);
        tryCompare(DeskModel, "page", DeskModel.Confirm);
        const turned = item("turned");
        for (const bar of [Walker.interactive(item("readBackLanguage"))[3], item("turn")]) mouseClick(bar);
        compare(DeskModel.draft.language, language);
        compare(turned.rotation, 180);
        tryVerify(() => turned.settled);
        mouseClick(Walker.interactive(item("readBackLanguage"))[3]);
        tryCompare(DeskModel.draft, "language", "de");
        verify(item("readBackText").text.includes("Es ist keine Zeit zugesagt."));
    }

    function test_what_is_searched_for_is_named_in_full_data() {
        return ["en", "de", "fr", "es"].map(language => ({ tag: language }));
    }
    function test_what_is_searched_for_is_named_in_full(data) {
        Settings.language = data.tag;
        make(360, 740);
        compare(Walker.cutOff(item("find")).join("\n"), "");
        compare(Walker.beyondSides(item("find")).join("\n"), "");
    }
}
