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

    function tap(window, name) { mouseClick(find(window, name)); wait(1); }

    // In the order of their names: first there is none.
    function test_1_every_place_offers_to_make_one_data() {
        return ["room", "bench", "plan", "money", "stock", "team"].map(place => ({ tag: place }));
    }
    function test_1_every_place_offers_to_make_one(data) {
        for (const size of [[1280, 800], [412, 915]]) {
            const window = openApp(data.tag, size[0], size[1]);
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
        const window = openApp("desk", data.width, data.height);
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
        typeInto(find(window, "eventName"), "Stringing at the lake");
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
        typeInto(find(window, "eventWho"), "Mara");
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
        const window = openApp("settings", data.width, data.height);
        const name = AppDevice.eventName;
        find(window, "changeEvent").clicked();
        compare(find(window, "eventName").text, name);
        compare(Walker.find(window.contentItem, "eventWho"), null);
        typeInto(find(window, "eventName"), "Lakeside " + data.tag);
        look(window);
        find(window, "keepEvent").clicked();
        tryCompare(AppDevice, "eventName", "Lakeside " + data.tag);
        const before = EventModel.events.length;
        find(window, "newEvent").clicked();
        typeInto(find(window, "eventName"), "Hillside " + data.tag);
        find(window, "keepEvent").clicked();
        tryCompare(AppDevice, "eventName", "Hillside " + data.tag);
        tryVerify(() => Walker.find(window.contentItem, "keepEvent") === null);
        compare(EventModel.events.length, before + 1);
        compare(Walker.find(window.contentItem, "fault"), null);
        const shown = find(window, "events");
        Walker.find(shown, "opener").clicked();
        tryVerify(() => shown.isOpen);
        let row = null;
        tryVerify(() => (row = Walker.interactive(allOf(window)).find(item => Walker.nameOf(item) === "Lakeside " + data.tag)) !== undefined);
        mouseClick(row);
        tryCompare(AppDevice, "eventName", "Lakeside " + data.tag);
        tryVerify(() => !shown.isOpen);
        look(window);
    }
    // What comes from other tablets moves nothing under a finger.
    function test_4_an_event_that_comes_leaves_the_page_where_it_is_data() { return sizes(); }
    function test_4_an_event_that_comes_leaves_the_page_where_it_is(data) {
        const window = openApp("settings", data.width, data.height);
        const places = ["events", "changeEvent", "newEvent", "language"].map(name => find(window, name));
        wait(50);
        const before = places.map(item => item.mapToItem(places[3].parent, 0, 0).y + places[3].parent.mapToItem(null, 0, 0).y);
        const events = EventModel.events.length;
        verify(Room.eventComes("Seaside " + data.tag));
        tryVerify(() => EventModel.events.length === events + 1);
        waitForRendering(window.contentItem, 300);
        wait(50);
        compare(places.map(item => item.mapToItem(places[3].parent, 0, 0).y + places[3].parent.mapToItem(null, 0, 0).y), before);
    }
    function test_5_an_event_without_days_is_renamed_data() { return sizes(); }
    function test_5_an_event_without_days_is_renamed(data) {
        verify(Room.eventComes("Riverside " + data.tag));
        EventModel.show(EventModel.events.find(one => one.name === "Riverside " + data.tag).id);
        const window = openApp("settings", data.width, data.height);
        find(window, "changeEvent").clicked();
        compare(find(window, "firstDay").day, "");
        compare(find(window, "firstDay").error, "");
        typeInto(find(window, "eventName"), "Brookside " + data.tag);
        look(window);
        find(window, "keepEvent").clicked();
        tryCompare(AppDevice, "eventName", "Brookside " + data.tag);
        gone(window, "keepEvent");
    }
}
