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

    function initTestCase() {
        Room.addEvent();
        Room.addPastPlayer("Wendelmoor", 3);
    }
    function cleanup() {
        Room.clearDrafts();
        Settings.language = "en";
    }
    function make(width, height) { window = openApp("desk", width, height); }
    function item(name) { return findAnywhere(window, name); }
    function tap(name) {
        const target = item(name);
        bring(target);
        mouseClick(target);
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

    function test_a_question_answered_elsewhere_says_so_where_it_was_asked_data() { return sizes(); }
    function test_a_question_answered_elsewhere_says_so_where_it_was_asked(data) {
        const family = data.tag === "tablet" ? "Tverholt" : "Ulverholt";
        Room.addPastPlayer(family, 2);
        make(data.width, data.height);
        DeskModel.open("drop-off:" + family);
        tryCompare(DeskModel, "page", DeskModel.DropOff);
        const book = DeskModel.card.book;
        verify(Room.disagree(book));
        item("asked0");
        const mine = DeskModel.draft.questions[0].answers.findIndex(answer => answer.text.startsWith("24"));
        tap("answer" + mine);
        compare(DeskModel.draft.wish["mains_tension"], "24");
        waitForRendering(window.contentItem, 300);
        const card = item("asked0"), height = card.height, at = yOf(item("anew")) - yOf(card);
        verify(Room.answeredElsewhere(book, 26));
        tryVerify(() => card.closed);
        waitForRendering(window.contentItem, 300);
        compare(card.height, height);
        compare(yOf(item("anew")) - yOf(card), at);
        compare(DeskModel.draft.wish["mains_tension"], "26");
        const said = item("askedFirst").text;
        verify(said.includes("26") && said.includes("24") && said.includes("Away tablet"), said);
        verify(!item("answer" + mine).enabled);
        compare(Walker.nameless(window.contentItem).join("\n"), "");
        compare(Walker.cutOff(card).join("\n"), "");
        tap("readBack");
        tryCompare(DeskModel, "page", DeskModel.Confirm);
        verify(item("readBackText").text.includes("26"));
        tap("yes");
        tryCompare(DeskModel, "page", DeskModel.Stored);
        compare(Room.questionsOf(book), 0);
    }

    // Every field that may be in question says so where it is, and takes nothing.
    function test_what_is_in_question_takes_nothing_on_any_page_data() {
        return [{ tag: "pieces", part: 2, name: "pieces" }, { tag: "mains_prestretch", part: 2, name: "mains_prestretch10" },
                { tag: "knots", part: 2, name: "knots" }, { tag: "racket_stencil", part: 3, name: "racket_stencil" },
                { tag: "string_ink", part: 3, name: "string_ink" }];
    }
    function test_what_is_in_question_takes_nothing_on_any_page(data) {
        const family = "Vinterholt" + data.tag.replace("_", "").slice(0, 6);
        Room.addPastPlayer(family, 1);
        make(412, 915);
        DeskModel.open("first:" + family);
        tryCompare(DeskModel, "page", DeskModel.DropOff);
        for (let part = 0; part < data.part; ++part) tap("nextPart");
        verify(item(data.name).enabled);
        verify(Room.disagreeOn(DeskModel.card.book, data.tag));
        tryVerify(() => Array.from(DeskModel.draft.openFields).includes(data.tag));
        verify(!item(data.name).enabled);
        item("asked0");
        verify(Walker.texts(window.contentItem).includes("Choose one of the answers above first"));
        tap("answer0");
        verify(item(data.name).enabled);
        verify(!Walker.texts(window.contentItem).includes("Choose one of the answers above first"));
    }

    function test_where_rackets_differ_it_is_shown_and_only_what_is_touched_changes_data() { return sizes(); }
    function test_where_rackets_differ_it_is_shown_and_only_what_is_touched_changes(data) {
        make(data.width, data.height);
        DeskModel.open("first:wendel");
        const draft = DeskModel.draft;
        draft.scope = 1;
        draft.set("mains_tension", "23.5");
        draft.set("mains_gauge", "1.3");
        draft.set("mains_supply", 2);
        draft.scope = -1;
        function each(field) {
            const out = [];
            for (let racket = 0; racket < 3; ++racket) {
                draft.scope = racket;
                out.push(draft.wish[field]);
            }
            draft.scope = -1;
            return out.join(" ");
        }
        const gauges = each("mains_gauge");
        tap("nextPart");
        compare(item("mainsSupply").at, -1); // none of them is the answer
        const gauge = item("mainsGauge"), below = item("mainsSupply");
        compare(gauge.hint.startsWith("The rackets differ: "), true);
        bring(gauge);
        const at = yOf(below);
        type(Walker.find(gauge, "field"), "1");
        keyClick(Qt.Key_Backspace);
        compare(each("mains_gauge"), gauges);
        type(Walker.find(gauge, "field"), "x");
        keyClick(Qt.Key_Backspace);
        compare(each("mains_gauge"), gauges);
        compare(yOf(below), at);
        tap("nextPart");
        const figure = item("mainsFigure");
        compare(figure.hint.startsWith("The rackets differ: "), true);
        bring(figure);
        mouseClick(Walker.find(figure, "plus"));
        compare(each("mains_tension"), "25.5 24 25.5");
        type(Walker.find(figure, "field"), "22");
        compare(each("mains_tension"), "22 22 22");
        compare(figure.hint, "");
        compare(each("mains_gauge"), gauges);
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
