import QtQuick
import QtTest
import Weavelog.Parts
import Weavelog.Screens
import Weavelog.Theme
import Weavelog.View
import Weavelog.Tests

AppCase {
    id: test
    name: "Desk"
    when: windowShown

    property var window
    property int taps: 0

    function initTestCase() {
        Room.addEvent();
        Room.addPastPlayer("Wendelmoor", 3);
        Room.addPastPlayer("Aldermoor", 4);
    }
    function make(width, height) { window = openApp("desk", width, height); }
    function cleanup() {
        Room.clearDrafts();
        Theme.rightToLeft = false;
    }
    function item(name) {
        // A sheet or the confirmation lies in the window's overlay, beside its content.
        const found = Walker.find(window.contentItem.parent ?? window.contentItem, name) ?? Walker.find(window.contentItem, name);
        verify(found, name + " is not on the screen");
        return found;
    }
    // As a finger does it: scrolled into sight first, which costs no tap.
    function tap(name) {
        tryVerify(() => Walker.find(window.contentItem, name) !== null, 2000, name);
        tapItem(item(name));
    }
    function tapItem(target) {
        wait(60);
        for (let up = target.parent; up; up = up.parent) {
            if (up.contentY !== undefined && up.contentItem !== undefined && up.contentHeight > up.height) {
                const y = target.mapToItem(up.contentItem, 0, 0).y;
                if (y + target.height > up.contentY + up.height || y < up.contentY)
                    up.contentY = Math.max(0, Math.min(y - up.height / 2, up.contentHeight - up.height));
            }
        }
        wait(60);  // what the last answer moved has come to rest
        mouseClick(target);
        ++taps;
    }
    function find(name) {
        const field = item("find");
        field.forceActiveFocus();
        for (const letter of name) keyClick(letter);
        tryCompare(DeskModel.finder, "count", 1);
        keyClick(Qt.Key_Return);
        tryCompare(DeskModel, "page", DeskModel.Player);
        taps = 0;
    }


    function test_three_rackets_mains_one_kilo_less_in_five_taps_data() { return sizes(); }
    function test_three_rackets_mains_one_kilo_less_in_five_taps(data) {
        // Before the first time of these three rackets: they come back at each size.
        Room.addPastPlayer(data.tag === "tablet" ? "Tanholt" : "Pellholt", 3);
        make(data.width, data.height);
        find(data.tag === "tablet" ? "tanh" : "pellh");
        const book = DeskModel.card.book;
        const before = Room.jobsOf(book);
        tap("sameAsLastTime");
        tap("mains-1");
        tap("readBack");
        tryCompare(DeskModel, "page", DeskModel.Confirm);
        const shown = item("readBackText").text;
        verify(shown.includes("24"));
        tap("yes");
        tryCompare(DeskModel, "page", DeskModel.Stored);
        compare(taps, 4);
        compare(Room.jobsOf(book), before + 3);
        compare(Room.confirmedText(book), shown);
        compare(DeskModel.draft.tags.length, 3);
        tap("undo");
        compare(Room.jobsOf(book), before);
    }
    function test_four_last_time_three_today_is_five_taps() {
        make(1280, 800);
        find("alder");
        const book = DeskModel.card.book;
        tap("sameAsLastTime");
        tap("racket3");
        tap("mains-1");
        tap("readBack");
        tap("yes");
        tryCompare(DeskModel, "page", DeskModel.Stored);
        compare(taps, 5);
        compare(Room.jobsOf(book), 7);
        tap("undo");
    }
    function test_setups_spread_over_rackets_are_named_as_the_player_says_data() { return sizes(); }
    function test_setups_spread_over_rackets_are_named_as_the_player_says(data) {
        Room.addPastPlayer(data.tag === "tablet" ? "Quillholt" : "Zornholt", 3);
        make(data.width, data.height);
        find(data.tag === "tablet" ? "quillh" : "zornh");
        tap("sameAsLastTime");
        tap("spreadEach");
        tap("name0-0");
        compare(DeskModel.draft.groups[0].key, "=day");
        compare(item("name0-0").kind, ActionButton.Primary);
        tap("otherName1");
        const entry = item("ownName1"), field = entry.field;
        tryCompare(field, "activeFocus", true);
        for (const letter of "slow clay") keyClick(letter);
        compare(DeskModel.draft.groups[1].key, "slow clay");
        keyClick(Qt.Key_Return);
        tryCompare(entry, "visible", false);
        compare(item("otherName1").text, "slow clay");
        tap("otherName1");
        tryCompare(field, "activeFocus", true);
        compare(field.text, "slow clay");
        for (let i = 0; i < 9; ++i) keyClick(Qt.Key_Backspace);
        compare(DeskModel.draft.groups[1].key, "=usual");  // as it was before
    }
    function test_the_pull_before_a_knot_is_one_tap_and_is_read_back() {
        make(1280, 800);
        find("wendel");
        tap("sameAsLastTime");
        DeskModel.draft.askAll();
        tap("nextPart");
        tap("nextPart");
        tap("knot_pretension10");
        compare(DeskModel.draft.wish["knot_pretension"], "10");
        tap("nextPart");
        tap("readBack");
        tryCompare(DeskModel, "page", DeskModel.Confirm);
        // Whoever answered in an earlier test is not asked again.
        tryVerify(() => ["consentLater", "readBackText"].some(name => Walker.find(window.contentItem, name) !== null));
        if (Walker.find(window.contentItem, "consentLater") !== null) tap("consentLater");
        tryVerify(() => Walker.find(window.contentItem, "readBackText") !== null);
        verify(item("readBackText").text.includes("10\u00a0%"), item("readBackText").text);
    }
    function test_the_same_without_a_finger() {
        make(1280, 800);
        find("wendel");
        const same = item("sameAsLastTime");
        same.forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Return);
        tryCompare(DeskModel, "page", DeskModel.DropOff);
        item("mains-1").forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Space);
        item("readBack").forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Return);
        tryCompare(DeskModel, "page", DeskModel.Confirm);
        keyClick(Qt.Key_Escape);
        compare(DeskModel.page, DeskModel.Confirm);
        keyClick(Qt.Key_Tab);
        tryVerify(() => item("yes").activeFocus);
        keyClick(Qt.Key_Return);
        tryCompare(DeskModel, "page", DeskModel.Stored);
        compare(DeskModel.draft.tags.length, 3);
        tap("undo");
    }
    function test_no_leads_back_and_keeps_the_answers() {
        make(1280, 800);
        find("wendel");
        tap("sameAsLastTime");
        tap("crosses1");
        tap("readBack");
        tryCompare(DeskModel, "page", DeskModel.Confirm);
        tap("no");
        compare(DeskModel.page, DeskModel.DropOff);
        compare(DeskModel.draft.wish.crosses_tension, "25");
    }
    function test_the_confirmation_is_turned_light_and_in_the_language_of_the_player() {
        make(1280, 800);
        Settings.appearance = "dark";
        find("wendel");
        tap("sameAsLastTime");
        tap("readBack");
        tryCompare(DeskModel, "page", DeskModel.Confirm);
        verify(!Theme.dark);
        compare(DeskModel.draft.language, "fr");
        const french = item("readBackText").text;
        tryVerify(() => item("turned").settled);
        const german = Walker.interactive(item("readBackLanguage"))[3];
        tapItem(german);
        tryVerify(() => item("readBackText").text !== french);
        compare(item("readBackText").text, DeskModel.draft.readBack);
        compare(item("yes").text, "Ja, das stimmt");
        tap("turn");
        tap("no");
        Settings.appearance = "light";
    }
    function test_an_unfinished_drop_off_is_offered() {
        make(1280, 800);
        find("wendel");
        tap("sameAsLastTime");
        tap("mains-1");
        tap("back");
        tap("back");
        tryCompare(DeskModel, "page", DeskModel.Find);
        tap("goOn");
        compare(DeskModel.page, DeskModel.DropOff);
        compare(DeskModel.draft.wish.mains_tension, "24");
        tap("back");
        tap("back");
        // Two quick taps at one place throw nothing away: what does it stands elsewhere, and the question says whose it is.
        const row = item("throwAway").parent.parent.parent;
        tap("throwAway");
        compare(Walker.interactive(row).map(item => item.text).join(", "), "Throw away, Keep it");
        verify(Walker.nameOf(row).includes(DeskModel.draft.unfinished[0].player), Walker.nameOf(row));
        mouseClick(findChild(row, "keepIt"));
        compare(DeskModel.draft.unfinished.length, 1);
        verify(row.asking); // too quick to be an answer
        wait(550);
        tap("keepIt");
        verify(!row.asking);
        tap("throwAway");
        tap("throwAwayYes");
        compare(DeskModel.draft.unfinished.length, 0);
    }
    function test_first_time_asks_all_and_says_what_is_missing() {
        make(412, 915);
        DeskModel.finder.typed = "Quillon";
        tap("newPlayerBelow");
        tryCompare(DeskModel, "page", DeskModel.DropOff);
        compare(item("familyName").text, "Quillon");
        tap("readBack");
        compare(DeskModel.page, DeskModel.DropOff);
        // It leads to the part that holds what is missing.
        tryVerify(() => Walker.find(window.contentItem, "mainsName") !== null);
        DeskModel.draft.set("mains_string", "Tarnbrook Silk");
        tap("sameForCrosses");
        tap("nextPart");
        DeskModel.draft.set("mains_tension", "55");
        DeskModel.draft.set("crosses_tension", "24");
        verify(DeskModel.draft.findings.mains_tension.refused);
        tapItem(Walker.interactive(item("mainsUnit"))[1]);
        tryCompare(DeskModel.draft.units, "mains_tension", "lb");
        tap("nextPart");
        tap("readBack");
        compare(DeskModel.draft.stillNeeded.join(), "");
        compare(DeskModel.draft.findings.mains_tension, undefined);
        tryCompare(DeskModel, "page", DeskModel.Confirm);
        tap("consentLater");
        tap("yes");
        tryCompare(DeskModel, "page", DeskModel.Stored);
        compare(Room.consentOf(DeskModel.card.book), 0);
    }
    function readBackNew(name) {
        DeskModel.finder.typed = name;
        DeskModel.addPlayer();
        DeskModel.draft.set("mains_string", "Tarnbrook Silk");
        DeskModel.draft.set("crosses_string", "Tarnbrook Silk");
        DeskModel.draft.set("mains_tension", "25");
        DeskModel.draft.set("crosses_tension", "24");
        DeskModel.draft.language = "de";
        DeskModel.readBack();
        tryCompare(DeskModel, "page", DeskModel.Confirm);
        tryVerify(() => item("consentQuestion").visible);
    }
    function test_a_new_player_says_on_the_turned_screen_where_the_setups_may_go_data() { return sizes(); }
    function test_a_new_player_says_on_the_turned_screen_where_the_setups_may_go(data) {
        make(data.width, data.height);
        readBackNew("Quentmoor " + data.tag);
        compare(item("turned").rotation, 180);
        compare(Walker.find(window.contentItem, "readBackText"), null);
        // In the words of the language that the player reads, all of them.
        verify(item("consent2").text.includes("Turnieren"));
        const german = item("consentAbout").text;
        tryVerify(() => item("turned").settled);
        tapItem(Walker.interactive(item("readBackLanguage"))[1]);
        tryVerify(() => item("consentAbout").text !== german);
        verify(item("consent2").text.includes("tournois"));
        taps = 0;
        tap("consent1");
        tryVerify(() => Walker.find(window.contentItem, "readBackText") !== null);
        compare(item("consentSaid").text, DeskModel.draft.consentWords.choices[0].text);
        // It can be thought over before the yes.
        tap("consentOpen");
        tap("consent2");
        compare(item("consentSaid").text, DeskModel.draft.consentWords.choices[1].text);
        tap("yes");
        tryCompare(DeskModel, "page", DeskModel.Stored);
        compare(taps, 4);
        compare(Room.consentOf(DeskModel.card.book), 2);
    }
    function test_the_consent_without_a_finger() {
        make(1280, 800);
        readBackNew("Quistmoor");
        tryVerify(() => item("consentLater").activeFocus);
        item("consent3").forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Return);
        tryVerify(() => item("no").activeFocus);
        keyClick(Qt.Key_Tab);
        tryVerify(() => item("yes").activeFocus);
        keyClick(Qt.Key_Return);
        tryCompare(DeskModel, "page", DeskModel.Stored);
        compare(Room.consentOf(DeskModel.card.book), 3);
    }
    function test_cautions_stand_on_the_page_and_before_the_player() {
        make(412, 915);
        find("wendel");
        tap("sameAsLastTime");
        compare(Walker.find(window.contentItem, "caution"), null);
        DeskModel.draft.set("note", "Elbow hurts");
        tryVerify(() => Walker.find(window.contentItem, "caution") !== null);
        const said = item("caution").text;
        verify(said.includes("physician"));
        tap("readBack");
        tryCompare(DeskModel, "page", DeskModel.Confirm);
        verify(!item("readBackText").text.includes(said));  // to the player in their own language
        verify(item("readBackText").text.includes("médecin"));
    }

    function pages() {
        const out = [];
        for (const size of sizes())
            for (const page of ["find", "player:wendel", "drop-off:wendel", "first:wendel", "new:Quill", "confirm:wendel", "consent:wendel"])
                for (const mirrored of [false, true])
                    out.push(Object.assign({}, size, { tag: size.tag + " " + page + (mirrored ? " mirrored" : ""),
                                                       page: page, mirrored: mirrored }));
        return out;
    }
    function test_every_page_can_be_touched_read_and_reached_data() { return pages(); }
    function test_every_page_can_be_touched_read_and_reached(data) {
        Theme.rightToLeft = data.mirrored;
        make(data.width, data.height);
        DeskModel.open(data.page);
        waitForRendering(window.contentItem, 300);
        for (let part = 0; part < (DeskModel.draft.asWhole && DeskModel.page === DeskModel.DropOff ? 4 : 1); ++part) {
            if (part > 0) tap("nextPart");
            const root = DeskModel.page === DeskModel.Confirm ? item("turned") : window.contentItem;
            compare(Walker.tooSmall(root, 48).join("\n"), "");
            compare(Walker.nameless(root).join("\n"), "");
            compare(Walker.unreachable(root).join("\n"), "");
            compare(Walker.cutOff(root).join("\n"), "");
        }
    }
    function test_players_place() {
        make(1280, 800);
        window.go("players");
        tryVerify(() => Walker.find(window.contentItem, "findPlayer") !== null);
        PlayersPlace.list.typed = "wendel";
        mouseClick(item("playerList"), 100, 30);
        tryVerify(() => PlayersPlace.card.name.startsWith("Wendelmoor"));
        compare(PlayersPlace.card.jobs.length, 3);
        tap("editPlayer");
        tryVerify(() => Walker.find(window.contentItem, "keepFields") !== null);
        tryVerify(() => Walker.tooSmall(window.contentItem, 48).length === 0, 2000, Walker.tooSmall(window.contentItem, 48).join("\n"));
        const contact = item("contact");
        contact.takeFocus();
        keyClick("7");
        tap("keepFields");
        compare(PlayersPlace.card.person.contact, "7");
        tap("consent");
        tryVerify(() => Walker.find(window.contentItem, "noteConsent") !== null);
        compare(item("turned").rotation, 180);
        verify(!item("noteConsent").enabled);
        tryVerify(() => item("turned").settled);
        tap("turn");
        compare(item("turned").rotation, 0);
        tap("consent4");
        tap("noteConsent");
        tryVerify(() => PlayersPlace.card.person.consent === 4);
        tap("consent");
        tap("leaveConsent");
        tryVerify(() => Walker.find(window.contentItem, "leaveConsent") === null);
        compare(PlayersPlace.card.person.consent, 4);
    }

    function test_two_books_are_linked_and_parted_data() { return [{ tag: "tablet", width: 1280, height: 800 }, { tag: "phone", width: 412, height: 915 }]; }
    function test_two_books_are_linked_and_parted(data) {
        const one = "Linkmoor" + data.tag, other = "Linkmoore" + data.tag;
        Room.addPastPlayer(one, 2);
        Room.addPastPlayer(other, 1);
        PlayersPlace.card.show("");
        make(data.width, data.height);
        Settings.stringer = "Ines";
        window.go("players");
        tryVerify(() => Walker.find(window.contentItem, "findPlayer") !== null);
        PlayersPlace.list.typed = one.toLowerCase() + " ";
        tryVerify(() => PlayersPlace.list.count >= 1);
        mouseClick(item("playerList"), 100, 30);
        tryVerify(() => PlayersPlace.card.name.startsWith(one));
        compare(PlayersPlace.card.jobs.length, 2);
        compare(PlayersPlace.links.books.length, 0);
        tap("linkBook");
        PlayersPlace.links.finder.typed = other.toLowerCase();
        tryVerify(() => PlayersPlace.links.finder.count === 1);
        item("otherList").chosen(0, PlayersPlace.links.finder.data(PlayersPlace.links.finder.index(0, 0), 256), other);
        tryVerify(() => Walker.find(window.contentItem, "samePerson") !== null);
        compare(item("otherName").text, other);
        compare(Walker.nameless(window.contentItem).join("\n"), "");
        tryVerify(() => Walker.tooSmall(window.contentItem, 48).length === 0, 2000, Walker.tooSmall(window.contentItem, 48).join("\n"));
        tap("samePerson");
        tryVerify(() => PlayersPlace.links.books.length === 1);
        compare(PlayersPlace.card.jobs.length, 3); // the history of both, in order
        tap("addName");
        item("otherFamily").text = "Ostrel" + data.tag;
        tap("keepName");
        tryVerify(() => PlayersPlace.links.names.length === 1);
        PlayersPlace.list.typed = "ostrel" + data.tag;
        tryVerify(() => PlayersPlace.list.count === 1);
        tap("partBook");
        tryVerify(() => Walker.find(window.contentItem, "partThem") !== null);
        tap("partThem");
        tryVerify(() => PlayersPlace.links.books.length === 0);
        compare(PlayersPlace.card.jobs.length, 2);
    }
}
