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

    readonly property string list: "family_name,given_name,country,birth_year\nWendelmoor,Ilse,NED,2002\nVantreel,Jo,BEL,1998\n"
                                   + "Tarrengold,Mei,SGP,2003\nOkonjo,Ada,NGR,2001\n"

    function make(width, height, place) { return openApp(place ?? "exchange", width, height); }
    function look(window) {
        wait(50);
        lookAt(window.contentItem);
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
        // The line of the list and who it may be: the same rows beside each other, or one below the other.
        const candidate = find(window, "candidate0");
        const here = Walker.find(candidate, "right born");
        compare(here.text, "1999");
        if (data.width > 1000) {
            const there = Walker.find(candidate, "left born");
            compare(there.text, "1998");
            compare(there.mapToItem(candidate, 0, 0).y, here.mapToItem(candidate, 0, 0).y);
            verify(there.mapToItem(candidate, there.width, 0).x <= here.mapToItem(candidate, 0, 0).x);
            compare(Walker.find(window.contentItem, "listFacts"), null);
        } else {
            compare(Walker.find(candidate, "left born"), null);
            const list = find(window, "listFacts");
            compare(Walker.find(list, "right born").text, "1998");
            verify(list.mapToItem(window.contentItem, 0, list.height).y <= candidate.mapToItem(window.contentItem, 0, 0).y);
        }
        candidate.clicked();
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
    function test_a_head_sees_one_code_at_a_time_and_whose_it_is() {
        const window = make(412, 915);
        verify(ExchangeModel.pair(ArrivalServer.start(list, ExchangeModel.Head), "").length === 0);
        tryCompare(ExchangeModel, "state", ExchangeModel.Agreed, 10000);
        ArrivalSteps.finish();
        tryVerify(() => Walker.find(window.contentItem, "leaveArrival") === null || (find(window, "leaveArrival").clicked(), false));
        find(window, "letInWhere");
        find(window, "invite").clicked();
        tryVerify(() => Walker.find(window.contentItem, "codeOf") !== null);
        compare(find(window, "codeOf").text, "Code of the event server Lakeside server");
        compare(Walker.find(window.contentItem, "hosting"), null);
        look(window);
        HostModel.start("127.0.0.1");
        find(window, "alsoHere");
        find(window, "letInWhere").chosen(1);
        tryVerify(() => Walker.find(window.contentItem, "hosting") !== null);
        compare(Walker.find(window.contentItem, "codeOf"), null);
        find(window, "hostInvite").clicked();
        tryVerify(() => Walker.find(window.contentItem, "codeOf") !== null);
        compare(find(window, "codeOf").text, "Code of this tablet");
        look(window);
        HostModel.stop();
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
