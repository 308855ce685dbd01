import QtQuick
import QtTest
import Weavelog.Screens
import Weavelog.Theme
import Weavelog.View
import Weavelog.Tests

// How long a drop-off takes at the desk, counted in taps and typed characters, from looking for the player to what is stored.
AppCase {
    id: test
    name: "Taps"
    when: windowShown

    // How fast a hand is that knows the desk: own assumption, measured nowhere.
    readonly property real secondsPerTap: 1.2
    readonly property real secondsPerCharacter: 0.3
    property var window
    property int taps: 0
    property int characters: 0

    function initTestCase() {
        Room.addEvent();
    }
    function cleanup() {
        Room.clearDrafts();
    }
    function make(size) {
        window = openApp("desk", size.width, size.height);
        taps = 0;
        characters = 0;
    }
    function item(name) {
        return Walker.find(window.contentItem.parent ?? window.contentItem, name) ?? Walker.find(window.contentItem, name);
    }
    // As a finger does it: scrolled into sight first, which costs no tap.
    function tap(name, within) {
        let target = null;
        tryVerify(() => (target = within ? Walker.find(item(name) ?? window.contentItem, within) : item(name)) !== null, 2000, name);
        bring(target);
        mouseClick(target);
        ++taps;
        return target;
    }
    function type(text) {
        for (const letter of text) keyClick(letter);
        characters += text.length;
    }
    function told(what) {
        const seconds = taps * secondsPerTap + characters * secondsPerCharacter;
        console.info(what + ": " + taps + " taps, " + characters + " characters, " + seconds.toFixed(1) + " s at "
                     + secondsPerTap + " s a tap and " + secondsPerCharacter + " s a character (own assumption)");
        return seconds;
    }

    function test_a_first_time_player_with_four_rackets_takes_less_than_ninety_seconds_data() { return sizes(); }
    function test_a_first_time_player_with_four_rackets_takes_less_than_ninety_seconds(data) {
        make(data);
        const name = data.tag === "phone" ? "quillfeather" : "thistlewood";
        // The search has the focus.
        tryVerify(() => item("find").activeFocus || item("find").field.activeFocus);
        type(name);
        compare(DeskModel.finder.count, 0); // not found
        tap(data.tag === "phone" ? "newPlayerBelow" : "newPlayer");
        tryCompare(DeskModel, "page", DeskModel.DropOff);
        tap("givenName");
        type("ilse");
        for (let i = 0; i < 3; ++i) tap("addRacket");
        tap("nextPart");
        tap("mainsName");
        type("tarnbrook silk");
        tap("sameForCrosses");
        tap("nextPart");
        tap("mainsFigure", "field");
        type("25");
        tap("crossesFigure", "field");
        type("24");
        tap("readBack");
        tryCompare(DeskModel, "page", DeskModel.Confirm);
        tap("consent2");
        tap("yes");
        tryCompare(DeskModel, "page", DeskModel.Stored);
        const seconds = told("First time, four rackets, " + data.tag);
        compare(DeskModel.draft.tags.length, 4);
        compare(Room.jobsOf(DeskModel.card.book), 4);
        verify(Room.confirmedText(DeskModel.card.book).includes("25"));
        compare(Room.consentOf(DeskModel.card.book), 2);
        verify(seconds < 90, seconds);
    }
    function test_as_last_time_one_kilo_less_on_all_takes_five_taps_data() { return sizes(); }
    function test_as_last_time_one_kilo_less_on_all_takes_five_taps(data) {
        const name = data.tag === "phone" ? "Oberholt" : "Underholt";
        Room.addPastPlayer(name, 3);
        make(data);
        type(name.slice(0, 5).toLowerCase());
        tryCompare(DeskModel.finder, "count", 1);
        keyClick(Qt.Key_Return);
        tryCompare(DeskModel, "page", DeskModel.Player);
        const book = DeskModel.card.book;
        taps = 0;
        characters = 0;
        tap("sameAsLastTime");
        tap("mains-1");
        tap("crosses-1");
        tap("readBack");
        tryCompare(DeskModel, "page", DeskModel.Confirm);
        tap("yes");
        tryCompare(DeskModel, "page", DeskModel.Stored);
        told("As last time, three rackets, one kilo less, " + data.tag);
        verify(taps <= 5, taps);
        compare(DeskModel.draft.tags.length, 3);
        compare(Room.jobsOf(book), 6);
        for (const said of ["24", "23"]) verify(Room.confirmedText(book).includes(said));
    }
}
