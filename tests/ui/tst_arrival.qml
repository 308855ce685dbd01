import QtQuick
import QtTest
import Weavelog.Parts
import Weavelog.Screens
import Weavelog.Theme
import Weavelog.View
import Weavelog.Tests

// Arriving at an event by finger, from the code to the account, against a real server.
AppCase {
    id: test
    name: "Arrival"
    when: windowShown

    Component { id: main; Main {} }

    readonly property string list: "family_name,given_name,country,birth_year\nWendelmoor,Ilse,NED,2002\nVantreel,Jo,BEL,1998\n"
                                   + "Tarrengold,Mei,SGP,2003\nOkonjo,Ada,NGR,2001\n"

    function make(width, height, place) {
        const window = createTemporaryObject(main, null, { width: width ?? 1280, height: height ?? 800, startPlace: place ?? "exchange" });
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
    function look(window) {
        wait(50);
        compare(Walker.nameless(window.contentItem).join("\n"), "");
        compare(Walker.tooSmall(window.contentItem, 48).join("\n"), "");
    }
    function cleanup() { ArrivalServer.stop(); ArrivalSteps.finish(); }

    function test_from_the_code_to_the_account_data() {
        return [{ tag: "tablet", width: 1280, height: 800, name: "Wendelmoor" }, { tag: "phone", width: 412, height: 915, name: "Nakagura" }];
    }
    function test_from_the_code_to_the_account(data) {
        verify(ArrivalServer.addKnown(data.name, "Ilse", "NED", 2002, 12, 3));
        verify(ArrivalServer.addKnown(data.name + "sen", "Jo", "BEL", 1999, 3, 0));
        verify(ArrivalServer.addKnown(data.name + "ova", "Mei", "SGP", 2003, 40, 4));
        const code = ArrivalServer.start(list.replace("Wendelmoor", data.name).replace("Vantreel", data.name + "sen").replace("Tarrengold", data.name + "ova"));
        verify(code.length > 0);
        const window = make(data.width, data.height);
        find(window, "arrive").clicked();
        find(window, "leaveArrival");
        look(window);
        find(window, "code").text = code;
        find(window, "pair").clicked();
        tryCompare(ArrivalSteps, "step", ArrivalSteps.People, 10000);
        tryCompare(ArrivalModel, "known", 2, 5000);
        tryCompare(ArrivalModel, "likely", 1, 5000); // the birth year is another one
        tryVerify(() => Walker.find(window.contentItem, "filter") !== null);
        look(window);
        verify(find(window, "notAgreed").visible);
        find(window, "filter").chosen(ArrivalModel.OnlyLikely);
        tryVerify(() => Walker.find(window.contentItem, "candidate0") !== null);
        find(window, "candidate0").clicked();
        compare(ArrivalModel.ticked, 1);
        find(window, "filter").chosen(ArrivalModel.All);
        find(window, "tickKnown").clicked();
        compare(ArrivalModel.ticked, 2);
        look(window);
        find(window, "send").clicked();
        tryCompare(ArrivalSteps, "step", ArrivalSteps.Account, 10000);
        tryCompare(ArrivalSteps, "playersWent", 2, 5000);
        tryVerify(() => ArrivalServer.words().length > 0 && find(window, "sameWords").title === ArrivalServer.words(), 5000);
        tryVerify(() => find(window, "playersWent").amount === "2");
        look(window);
        find(window, "finishArrival").clicked();
        verify(!ArrivalSteps.goingOn);
        find(window, "arrive");
    }
    function test_a_new_player_who_may_be_known_is_taken_with_one_tap() {
        verify(ArrivalServer.addKnown("Quillfeather", "Sam", "USA", 1990, 5, 0));
        const window = make(412, 915, "desk");
        DeskModel.finder.typed = "Quilfeather";
        DeskModel.addPlayer();
        DeskModel.draft.setPerson("given_name", "Sam");
        tryVerify(() => Walker.find(window.contentItem, "alike0") !== null, 5000);
        look(window);
        find(window, "alike0").clicked();
        compare(DeskModel.page, DeskModel.Player);
        verify(DeskModel.card.name.startsWith("Quillfeather"));
        DeskModel.next();
    }
}
