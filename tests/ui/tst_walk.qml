import QtQuick
import QtTest
import Weavelog.Gallery
import Weavelog.Theme
import Weavelog.Tests

// Walks every part in every state, at both sizes, in both directions, at the smallest and largest text.
AppCase {
    id: test
    name: "Walk"
    when: windowShown
    width: 1280
    height: 900
    visible: true

    Component { id: gallery; Gallery {} }

    function widths() {
        const out = [];
        for (const width of [1280, 412])
            for (const scale of [0.85, 1, 1.6])
                for (const mirrored of [false, true])
                    out.push({ tag: width + " px, " + scale + (mirrored ? ", mirrored" : ""),
                               width: width, scale: scale, mirrored: mirrored });
        return out;
    }
    function make(data) {
        Theme.textScale = data.scale;
        Theme.rightToLeft = data.mirrored;
        const made = createTemporaryObject(gallery, test, { width: data.width, height: 900 });
        waitForRendering(made);
        return made;
    }
    function cleanup() {
        Theme.textScale = 1;
        Theme.rightToLeft = false;
    }

    function test_every_target_has_room_for_a_finger_data() { return widths(); }
    function test_every_target_has_room_for_a_finger(data) {
        const made = make(data);
        verify(Walker.interactive(made).length > 60);
        compare(Walker.tooSmall(made, 48).join("\n"), "");
    }
    function test_every_target_has_a_name_and_a_role() {
        const made = make({ width: 1280, scale: 1, mirrored: false });
        compare(Walker.nameless(made).join("\n"), "");
    }
    function test_every_target_is_reached_by_the_keyboard() {
        const made = make({ width: 1280, scale: 1, mirrored: false });
        compare(Walker.unreachable(made).join("\n"), "");
    }
    function test_nothing_leaves_the_page_at_the_side_data() { return widths(); }
    function test_nothing_leaves_the_page_at_the_side(data) {
        const made = make(data);
        for (const item of Walker.interactive(made)) {
            const left = item.mapToItem(made, 0, 0).x;
            verify(left >= 0 && left + item.width <= made.width, item + " " + Walker.nameOf(item));
        }
    }
    function test_no_text_is_cut_off_at_either_width_data() {
        return [{ tag: "tablet", width: 1280, scale: 1 }, { tag: "phone", width: 412, scale: 1 }];
    }
    function test_no_text_is_cut_off_at_either_width(data) {
        const made = make({ width: data.width, scale: data.scale, mirrored: false });
        const cut = Walker.cutOff(made).filter(text => !text.includes("A name that is far too long"));
        compare(cut.join("\n"), "");
    }
}
