import QtQuick
import QtTest
import Weavelog.Parts
import Weavelog.Screens
import Weavelog.Theme
import Weavelog.View
import Weavelog.Tests

// Player cards and past jobs by finger.
AppCase {
    id: test
    name: "Cards"
    when: windowShown

    function make(width, height) { return openApp("players", width, height); }
    function find(window, name) { return findAnywhere(window, name); }
    function press(window, name) {
        const button = find(window, name);
        verify(button.enabled, name);
        button.clicked();
        waitForRendering(window.contentItem);
    }
    function look(window) { lookAt(allOf(window)); }
    function sizes() {
        return [{ tag: "tablet", width: 1280, height: 800 }, { tag: "phone", width: 412, height: 915 },
                { tag: "phone mirrored", width: 412, height: 915, mirrored: true }];
    }
    function initTestCase() {
        Room.addEvent();
        Room.addPastPlayer("Cardwell", 2);
    }
    function cleanup() {
        Theme.rightToLeft = false;
        PlayersPlace.list.typed = "";
        PlayersPlace.card.show("");
    }
    function showFirst(typed) {
        PlayersPlace.list.typed = typed;
        const book = PlayersPlace.list.firstBook();
        verify(book.length > 0);
        PlayersPlace.card.show(book);
        return book;
    }

    function test_a_card_is_given_data() { return sizes(); }
    function test_a_card_is_given(data) {
        Theme.rightToLeft = data.mirrored ?? false;
        const window = make(data.width, data.height);
        showFirst("cardwell");
        press(window, "giveCard");
        const code = find(window, "cardCode");
        verify(code.rows.length >= 21);
        // Whole dots a module, and as large as there is room.
        verify(code.cell >= 2, "a module of " + code.cell);
        verify(code.width <= find(window, "cardHolds").width);
        look(window);
        press(window, "copyCardText");
        compare(find(window, "cardResult").title, "The text is copied");
        verify(GiveCardModel.text.startsWith("WEAVELOG:CARD:"));
        press(window, "cardOnPaper");
        tryCompare(PrintModel, "paper", "card");
        compare(PrintModel.pages, 1);
    }

    function test_a_card_comes_in_as_text_and_asks_about_a_stranger_data() { return sizes(); }
    function test_a_card_comes_in_as_text_and_asks_about_a_stranger(data) {
        Theme.rightToLeft = data.mirrored ?? false;
        const window = make(data.width, data.height);
        press(window, "takeACard");
        const family = "Strange" + data.tag.replace(" ", "");
        const text = Room.strangersCard(family);
        const field = find(window, "cardText").field;
        field.text = text;
        look(window);
        press(window, "readCardText");
        compare(TakeCardModel.state, TakeCardModel.Read);
        verify(find(window, "signedBy").text.includes("Away tablet"));
        verify(find(window, "strangerNotice").visible);
        verify(!find(window, "storeCard").enabled);
        look(window);
        const vouched = find(window, "vouched");
        vouched.checked = true;
        vouched.toggled();
        press(window, "storeCard");
        compare(TakeCardModel.state, TakeCardModel.Stored);
        press(window, "showPlayer");
        compare(PlayersPlace.card.name, family + " Mira");
    }

    function test_a_scanner_types_a_card_into_whatever_has_the_keyboard() {
        const window = make();
        const find_ = find(window, "findPlayer");
        find_.forceActiveFocus();
        const text = Room.strangersCard("Scanned");
        for (const letter of text) keyClick(letter);
        keyClick(Qt.Key_Return);
        tryCompare(TakeCardModel, "state", TakeCardModel.Read);
        compare(TakeCardModel.name, "Scanned Mira");
        compare(PlayersPlace.list.typed, "");  // its first letters are taken out again
    }

    function test_wrong_cards_say_what_to_do() {
        const window = make();
        press(window, "takeACard");
        const text = Room.strangersCard("Wrong");
        for (const [given, said] of [["WL:AS59RB:137:9", "This is no player card"], [text.slice(0, 200), "The card is damaged"],
                                     [Room.forgedCard("Wrong"), "The card is forged"]]) {
            TakeCardModel.take(given);
            const fault = find(window, "cardFault");
            verify(fault.visible);
            compare(fault.title, said);
            verify(fault.text.length > 0);
            verify(find(window, "cardByPicture").visible);  // and one goes on from here
            look(window);
        }
    }

    function test_cards_for_several_are_ticked_data() { return sizes(); }
    function test_cards_for_several_are_ticked(data) {
        Theme.rightToLeft = data.mirrored ?? false;
        const window = make(data.width, data.height);
        press(window, "severalCards");
        verify(!find(window, "cardsOnPaper").enabled);
        const row = find(window, "pick Cardwell Ilse");
        row.checked = true;
        row.toggled();
        compare(CardPicksModel.ticked, 1);
        look(window);
        press(window, "cardsOnPaper");
        compare(PrintModel.pages, 1);
    }

    function test_past_jobs_come_in_and_go_again_data() { return sizes(); }
    function test_past_jobs_come_in_and_go_again(data) {
        Theme.rightToLeft = data.mirrored ?? false;
        const window = make(data.width, data.height);
        press(window, "pastJobs");
        look(window);
        const known = PlayersPlace.list.known;
        const name = data.tag.replace(" ", "");
        PastJobsModel.choose(Room.table("old.csv", "Player,Main,day,Tension\n" + name + " Ada,left,03/04/2021,24\n" + name + " Bea,left,05/06/2021,52\n"
                                                   + name + " Cleo,left,05/06/2021,tight\n"));
        tryVerify(() => !PastJobsModel.busy && PastJobsModel.columns.length === 4);
        look(window);
        verify(find(window, "pastUnit").visible);
        verify(find(window, "pastDays").visible);
        verify(find(window, "pastFaults").text.includes("tight"));
        verify(!find(window, "bringPastIn").enabled);
        find(window, "meaning1").picked("hand");
        tryVerify(() => !PastJobsModel.busy);
        find(window, "pastUnit").chosen("lb");
        tryVerify(() => !PastJobsModel.busy);
        find(window, "pastDays").chosen(2);
        tryVerify(() => PastJobsModel.ready);
        look(window);
        press(window, "bringPastIn");
        tryCompare(PastJobsModel, "result", PastJobsModel.BroughtIn);
        tryVerify(() => !PastJobsModel.busy);
        tryVerify(() => PlayersPlace.list.known === known + PastJobsModel.knownPlayers);
        look(window);
        press(window, "takePastBack0");
        look(window);
        press(window, "takeBackNow");
        tryCompare(PastJobsModel, "result", PastJobsModel.TakenBack);
        tryCompare(PlayersPlace.list, "known", known);
    }
}
