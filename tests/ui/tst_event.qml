import QtQuick
import QtTest
import Weavelog.Screens
import Weavelog.View
import Weavelog.Tests

// A tablet without a server: from the empty room to the racket on the bench.
AppCase {
    id: test
    name: "Event"
    when: windowShown

    Component { id: main; Main {} }

    function make(place, width, height) {
        const window = createTemporaryObject(main, null, { width: width ?? 1280, height: height ?? 800, startPlace: place });
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
    function tap(window, name) { mouseClick(find(window, name)); wait(1); }
    function type(window, name, text) {
        const field = find(window, name).field;
        field.forceActiveFocus();
        field.text = "";
        for (const letter of text) keyClick(letter);
    }
    function look(window) {
        compare(Walker.nameless(window.contentItem).join("\n"), "");
        compare(Walker.tooSmall(window.contentItem, 48).join("\n"), "");
    }

    // In the order of their names: first there is none.
    function test_1_every_place_offers_to_make_one_data() {
        return ["room", "bench", "plan", "money", "stock", "team"].map(place => ({ tag: place }));
    }
    function test_1_every_place_offers_to_make_one(data) {
        for (const size of [[1280, 800], [412, 915]]) {
            const window = make(data.tag, size[0], size[1]);
            tap(window, "emptyAction");
            find(window, "eventName");
            look(window);
            const button = find(window, "keepEvent");
            verify(button.mapToItem(window.contentItem, 0, 0).x >= 0);
            tap(window, "close");
            tryVerify(() => Walker.find(window.contentItem, "keepEvent") === null);
        }
    }
    function test_2_a_racket_taken_in_before_comes_into_the_event_that_is_made_then_data() {
        return [{ tag: "phone", width: 412, height: 915 }];
    }
    function test_2_a_racket_taken_in_before_comes_into_the_event_that_is_made_then(data) {
        const window = make("desk", data.width, data.height);
        find(window, "makeEvent");
        DeskModel.finder.typed = "Tarn";
        DeskModel.addPlayer();
        DeskModel.draft.setPerson("given_name", "Ilse");
        for (const said of [["mains_string", "Tarnbrook Silk"], ["crosses_string", "Velmora Round"], ["mains_tension", "25"], ["crosses_tension", "24"]])
            DeskModel.draft.set(said[0], said[1]);
        DeskModel.readBack();
        DeskModel.confirm(DeskModel.draft.readBack);
        compare(DeskModel.page, DeskModel.Stored);
        const notice = find(window, "noNumbers");
        look(window);
        notice.acted();
        find(window, "eventName");
        compare(find(window, "takesLeft").checked, true);
        compare(find(window, "takesLeft").detail, "Tarn Ilse");
        find(window, "keepEvent").clicked();
        verify(find(window, "eventName").error.length > 0); // nothing was said
        compare(AppDevice.event, "");
        type(window, "eventName", "Stringing at the lake");
        compare(find(window, "eventName").error, "");
        const last = find(window, "lastDay"), right = last.day;
        Walker.find(last, "dayBefore").clicked();
        verify(last.day < right);
        last.day = "2001-01-01";
        verify(last.error.length > 0);
        find(window, "keepEvent").clicked();
        compare(AppDevice.event, "");
        last.day = right;
        compare(last.error, "");
        type(window, "eventWho", "Mara");
        look(window);
        find(window, "keepEvent").clicked();
        tryCompare(AppDevice, "eventName", "Stringing at the lake");
        tryVerify(() => Walker.find(window.contentItem, "keepEvent") === null);
        compare(Walker.find(window.contentItem, "noNumbers"), null);
        compare(DeskModel.draft.tags[0].tag, "1");
        compare(Settings.stringer, "Mara");
        DeskModel.next();
        compare(Walker.find(window.contentItem, "makeEvent"), null);
        window.go("room");
        tryCompare(RoomModel, "open", 1);
        window.go("bench");
        tryVerify(() => BenchModel.tag === "1");
        compare(Walker.find(window.contentItem, "emptyAction"), null);
        look(window);
    }
    function test_3_settings_show_it_change_it_and_make_another_data() {
        return [{ tag: "tablet", width: 1280, height: 800 }, { tag: "phone", width: 412, height: 915 }];
    }
    function test_3_settings_show_it_change_it_and_make_another(data) {
        const window = make("settings", data.width, data.height);
        const name = AppDevice.eventName;
        find(window, "changeEvent").clicked();
        compare(find(window, "eventName").text, name);
        compare(Walker.find(window.contentItem, "eventWho"), null);
        type(window, "eventName", "Lakeside " + data.tag);
        look(window);
        find(window, "keepEvent").clicked();
        tryCompare(AppDevice, "eventName", "Lakeside " + data.tag);
        const before = EventModel.events.length;
        find(window, "newEvent").clicked();
        type(window, "eventName", "Hillside " + data.tag);
        find(window, "keepEvent").clicked();
        tryCompare(AppDevice, "eventName", "Hillside " + data.tag);
        tryVerify(() => Walker.find(window.contentItem, "keepEvent") === null);
        compare(EventModel.events.length, before + 1);
        compare(Walker.find(window.contentItem, "fault"), null);
        const other = EventModel.events.findIndex(one => one.name === "Lakeside " + data.tag);
        find(window, "event" + other).clicked();
        tryCompare(AppDevice, "eventName", "Lakeside " + data.tag);
        look(window);
    }
}
