import QtQuick
import QtTest
import Weavelog.Screens
import Weavelog.Theme
import Weavelog.View
import Weavelog.Tests

AppCase {
    id: test
    name: "Shell"
    when: windowShown

    function make(width, height) { return openApp("desk", width, height); }
    function test_every_place_by_its_key_data() {
        return ["desk", "room", "bench", "players", "plan", "money", "stock", "team", "questions", "exchange", "settings"].map(
            (key, i) => ({ tag: key, key: i < 9 ? Qt.Key_1 + i : i === 9 ? Qt.Key_0 : Qt.Key_Comma }));
    }
    function test_every_place_by_its_key(data) {
        const window = make(1280, 800);
        keyClick(data.key, Qt.ControlModifier);
        compare(window.place, data.tag);
        compare(Walker.nameless(window.contentItem).join("\n"), "");
        compare(Walker.tooSmall(window.contentItem, 48).join("\n"), "");
        compare(Walker.unreachable(window.contentItem).join("\n"), "");
    }
    function test_rail_on_a_tablet_and_bar_on_a_phone() {
        const window = make(1280, 800);
        verify(!window.narrow);
        compare(Walker.find(window.contentItem, "more"), null);
        window.width = 412;
        window.height = 915;
        tryCompare(window, "narrow", true);
        verify(Walker.find(window.contentItem, "more"));
    }
    function test_a_place_is_entered_by_tap() {
        const window = make(1280, 800);
        mouseClick(Walker.find(window.contentItem, "bench"));
        compare(window.place, "bench");
    }
    function test_settings_are_taken_over() {
        const window = make(1280, 800);
        window.go("settings");
        waitForRendering(window.contentItem);
        const unit = Walker.find(window.contentItem, "unit");
        const pounds = Walker.interactive(unit)[1];
        pounds.forceActiveFocus(Qt.TabFocusReason); // which brings it into sight
        wait(300);
        mouseClick(pounds);
        compare(Settings.tensionUnit, "lb");
        pounds.forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Left);
        compare(Settings.tensionUnit, "kg");
    }
}
