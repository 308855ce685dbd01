import QtQuick
import QtTest
import Weavelog.Parts
import Weavelog.Theme
import Weavelog.Tests

AppCase {
    id: test
    name: "Parts"
    when: windowShown
    width: 900
    height: 900
    visible: true

    Component { id: actionButton; ActionButton { text: "Confirm" } }
    Component { id: stepper; FigureStepper { width: 400; label: "Mains"; unit: "kg"; least: "5"; most: "45"; value: "24.5"; onEdited: figure => value = figure } }
    Component { id: textEntry; TextEntry { width: 400; label: "Bag tag"; hint: "On the bag" } }
    Component { id: searchEntry; SearchEntry { width: 400; name: "Find a player" } }
    Component { id: choiceBar; ChoiceBar { width: 500; label: "Unit"; value: "kg"; options: [{ value: "kg", text: "kg" }, { value: "lb", text: "lb" }, { value: "N", text: "N" }]; onChosen: answer => value = answer } }
    Component { id: toggleRow; ToggleRow { width: 400; text: "Stencil"; detail: "Painted after stringing" } }
    Component { id: pickList; PickList { width: 400; label: "Bench"; options: Array.from({ length: 12 }, (none, i) => ({ value: i, text: "Bench " + (i + 1) })); onPicked: answer => value = answer } }
    Component { id: stageMark; StageMark {} }
    Component { id: notice; Notice { width: 600; title: "Two answers"; text: "Look at both"; actionText: "Look" } }
    Component { id: toast; UndoToast { width: 500; stays: 150 } }
    Component { id: oldNew; OldNew { width: 600; label: "Mains"; oldValue: "24.5 kg"; newValue: "23.5 kg" } }
    Component { id: giant; GiantFigure { width: 880; mains: "24.5"; mainsUnit: "kg"; crosses: "52"; crossesUnit: "lb" } }
    Component { id: digits; Digits { value: "24.5"; unit: "kg"; size: 168 } }
    Component { id: codeSquare; CodeSquare { width: 290; height: 290 } }
    Component { id: sheet; Sheet { title: "Note"; ActionButton { objectName: "inside"; text: "Inside" } } }
    Component { id: placeBar; PlaceBar { width: 412; places: [
        { key: "desk", text: "Desk", icon: "desk" }, { key: "room", text: "Room", icon: "room" }, { key: "bench", text: "Bench", icon: "bench" },
        { key: "players", text: "Players", icon: "players" }, { key: "questions", text: "Questions", icon: "question", waiting: 2 },
        { key: "exchange", text: "Exchange", icon: "exchange" }] } }
    Component { id: listRow; ListRow { width: 400; text: "Mirela"; detail: "3 rackets"; endText: "14:30" } }
    Component { id: sideBySide; SideBySide { width: 600; Repeater { model: 4; FigureStepper { width: parent.columnWidth; label: "Mains" } } } }
    SignalSpy { id: spy }

    function make(component, values) {
        const made = createTemporaryObject(component, test, values ?? {});
        verify(made);
        return made;
    }
    function watch(target, signalName) {
        spy.signalName = "";
        spy.clear();
        spy.target = target;
        spy.signalName = signalName;
    }

    function test_action_by_tap_space_and_enter() {
        const button = make(actionButton);
        watch(button, "clicked");
        mouseClick(button);
        button.forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Space);
        keyClick(Qt.Key_Return);
        keyClick(Qt.Key_Enter);
        compare(spy.count, 4);
    }
    function test_action_switched_off_does_nothing() {
        const button = make(actionButton, { enabled: false });
        watch(button, "clicked");
        mouseClick(button);
        button.forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Space);
        keyClick(Qt.Key_Return);
        compare(spy.count, 0);
    }
    function test_focus_ring_only_for_the_keyboard() {
        const button = make(actionButton);
        const ring = Array.from(button.children).find(child => child.shown !== undefined);
        mouseClick(button);
        verify(button.activeFocus && !ring.visible);
        const other = make(actionButton, { y: 100 });
        other.forceActiveFocus();
        keyClick(Qt.Key_Backtab);
        verify(button.activeFocus && ring.visible);
    }
    function test_action_name_and_role() {
        const button = make(actionButton);
        compare(Walker.nameOf(button), "Confirm");
        compare(Walker.roleOf(button), Accessible.Button);
    }

    function test_stepper_halves_by_buttons_and_keys() {
        const made = make(stepper);
        mouseClick(findChild(made, "plus"));
        compare(made.value, "25");
        mouseClick(findChild(made, "minus"));
        mouseClick(findChild(made, "minus"));
        compare(made.value, "24");
        const field = findChild(made, "field");
        field.forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Up);
        compare(made.value, "24.5");
        compare(field.text, "24.5");
        keyClick(Qt.Key_Down);
        compare(made.value, "24");
    }
    function test_stepper_takes_a_typed_figure() {
        const made = make(stepper);
        watch(made, "edited");
        const field = findChild(made, "field");
        mouseClick(field);
        field.selectAll();
        for (const key of ["2", "3", ",", "5"]) keyClick(key);
        compare(made.value, "23.5");
        keyClick(Qt.Key_Return);
        compare(field.text, "23.5");
        verify(spy.count >= 1);
    }
    function test_stepper_keeps_the_value_while_what_is_typed_cannot_be() {
        const made = make(stepper);
        const field = findChild(made, "field");
        mouseClick(field);
        field.selectAll();
        for (const key of ["2", "4", "5"]) keyClick(key);
        compare(made.value, "24.5");
        verify(made.rangeError.includes("45 kg"));
        compare(field.text, "245");
        field.selectAll();
        for (const key of ["k", "g"]) keyClick(key);
        compare(made.value, "24.5");
        verify(made.rangeError.length > 0);
    }
    function test_stepper_may_be_empty() {
        const made = make(stepper, { value: "" });
        compare(made.rangeError, "");
        mouseClick(findChild(made, "plus"));
        compare(made.value, "5");
    }
    function test_stepper_stops_at_its_ends() {
        const made = make(stepper, { value: "45" });
        verify(!findChild(made, "plus").enabled);
        verify(findChild(made, "minus").enabled);
        made.value = "5";
        verify(!findChild(made, "minus").enabled);
        compare(findChild(made, "field").text, "5");
    }
    function test_stepper_is_named_with_its_unit() {
        const made = make(stepper);
        compare(Walker.nameOf(findChild(made, "field")), "Mains, kg");
        compare(Walker.nameOf(findChild(made, "plus")), "More: Mains");
    }

    function test_text_entry_tells_error_and_name() {
        const made = make(textEntry);
        compare(Walker.nameOf(made.field), "Bag tag");
        compare(made.field.Accessible.description, "On the bag");
        made.error = "Taken";
        compare(made.field.Accessible.description, "Taken");
        watch(made, "accepted");
        made.takeFocus();
        keyClick("a");
        compare(made.text, "a");
        keyClick(Qt.Key_Return);
        compare(spy.count, 1);
    }

    function test_search_finds_and_empties() {
        const made = make(searchEntry);
        watch(made, "edited");
        mouseClick(made);
        keyClick("a");
        keyClick("b");
        compare(made.text, "ab");
        compare(spy.count, 2);
        keyClick(Qt.Key_Escape);
        compare(made.text, "");
        compare(spy.count, 3);
        keyClick(Qt.Key_Escape);
        compare(spy.count, 3);
    }

    function test_choice_by_tap_and_arrows() {
        const made = make(choiceBar);
        watch(made, "chosen");
        const choices = Walker.interactive(made);
        compare(choices.length, 3);
        mouseClick(choices[1]);
        compare(made.value, "lb");
        choices[1].forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Right);
        compare(made.value, "N");
        keyClick(Qt.Key_Right);
        compare(made.value, "N");
        keyClick(Qt.Key_Left);
        compare(made.value, "lb");
        compare(spy.count, 3);
        compare(Walker.roleOf(choices[0]), Accessible.RadioButton);
    }
    function test_choice_is_mirrored_with_its_arrows() {
        const made = make(choiceBar, { "LayoutMirroring.enabled": true, "LayoutMirroring.childrenInherit": true });
        made.LayoutMirroring.enabled = true;
        made.LayoutMirroring.childrenInherit = true;
        waitForRendering(made);
        const choices = Walker.interactive(made);
        verify(choices[0].x > choices[2].x);
        choices[0].forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Left);
        compare(made.value, "lb");
    }
    function test_choice_stacks_where_it_does_not_fit() {
        const made = make(choiceBar, { width: 200, options: [{ value: 1, text: "Reel of the room" }, { value: 2, text: "Set of the player" }], value: 1 });
        verify(made.stacked);
        made.width = 800;
        verify(!made.stacked);
    }
    function test_choices_are_equally_wide_after_their_words_have_changed() {
        const words = list => list.map(text => ({ value: text.slice(0, 2), text: text }));
        const made = make(choiceBar, { width: 380, label: "", options: words(["English", "Français", "Español", "Deutsch"]), value: "De" });
        waitForRendering(test, 50);
        for (const brief of [true, false, true]) {
            made.options = words(brief ? ["EN", "FR", "ES", "De"] : ["English", "Français", "Español", "Deutsch"]);
            for (const width of [380, 300, 380]) {
                made.width = width;
                wait(20);
                const choices = Walker.interactive(made);
                compare(choices.length, 4);
                for (const one of choices) {
                    verify(Math.abs(one.width - choices[0].width) <= 1, width + ": " + one.text + " " + one.width);
                    verify(one.x >= 0 && one.x + one.width <= width);
                }
            }
        }
    }
    function test_choice_with_nothing_chosen_is_reached_by_tab() {
        const made = make(choiceBar, { value: undefined });
        const choices = Walker.interactive(made);
        verify(choices[0].activeFocusOnTab && !choices[1].activeFocusOnTab);
    }

    function test_toggle_by_tap_anywhere_and_keys() {
        const made = make(toggleRow);
        watch(made, "toggled");
        mouseClick(made, 10, made.height / 2);
        verify(made.checked);
        made.forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Space);
        verify(!made.checked);
        keyClick(Qt.Key_Return);
        verify(made.checked);
        compare(spy.count, 3);
    }

    function test_pick_opens_finds_and_picks() {
        const made = make(pickList);
        watch(made, "picked");
        mouseClick(findChild(made, "opener"));
        tryCompare(made, "isOpen", true);
        const overlay = test.Window.window.contentItem.parent ?? test.Window.window.contentItem;
        const rows = Walker.interactive(overlay).filter(item => item.text === "Bench 3");
        compare(rows.length, 1);
        mouseClick(rows[0]);
        tryCompare(made, "isOpen", false);
        compare(made.value, 2);
        compare(spy.count, 1);
        compare(Walker.nameOf(findChild(made, "opener")), "Bench: Bench 3");
    }

    function test_stage_is_told_by_word_and_drawing() {
        const words = {};
        const drawings = {};
        for (let stage = StageMark.Received; stage <= StageMark.Aside; ++stage) {
            const made = make(stageMark, { stage: stage });
            words[Walker.nameOf(made)] = true;
            drawings[made.iconName] = true;
        }
        compare(Object.keys(words).length, 11);
        compare(Object.keys(drawings).length, 11);
        verify(Walker.nameOf(make(stageMark, { stage: StageMark.OnMachine, rush: true })).includes("rush"));
    }

    function test_notice_acts_once_per_tap() {
        const made = make(notice);
        watch(made, "acted");
        mouseClick(Walker.interactive(made)[0]);
        compare(spy.count, 1);
        compare(Walker.nameOf(made), "Two answers. Look at both");
    }

    function test_toast_undoes_or_leaves() {
        const made = make(toast);
        verify(!made.visible);
        watch(made, "undone");
        made.show("Racket handed over");
        verify(made.visible);
        mouseClick(findChild(made, "undo"));
        compare(spy.count, 1);
        verify(!made.visible);
        mouseMove(test, 899, 899);
        made.show("Another");
        tryCompare(made, "visible", false, 2000);
        compare(spy.count, 1);
    }
    function test_toast_waits_while_its_undo_has_the_focus() {
        const made = make(toast);
        made.show("Racket handed over");
        findChild(made, "undo").forceActiveFocus(Qt.TabFocusReason);
        wait(400);
        verify(made.visible);
    }

    function test_old_and_new_are_said() {
        const made = make(oldNew);
        compare(Walker.nameOf(made), "Mains: was 24.5 kg, now 23.5 kg");
        made.newValue = "24.5 kg";
        verify(!made.changed);
        compare(Walker.nameOf(made), "Mains: 24.5 kg, as before");
    }

    function test_giant_figure_says_both_with_units() {
        compare(Walker.nameOf(make(giant)), "Mains 24.5 kg, crosses 52 lb");
    }
    function test_digits_shrink_to_their_width() {
        const made = make(digits);
        compare(made.shrink, 1);
        made.width = 200;
        verify(made.shrink < 0.6);
    }

    function test_code_has_whole_pixels_and_a_quiet_zone() {
        const rows = Array.from({ length: 21 }, (none, y) => Array.from({ length: 21 }, (x, i) => (i + y) % 2 === 0));
        const made = make(codeSquare, { rows: rows });
        compare(made.cell, 10);
        waitForRendering(made);
        wait(50);
        const picture = grabImage(made);
        const origin = (290 - 210) / 2;
        verify(Qt.colorEqual(picture.pixel(origin + 5, origin + 5), "black"));
        verify(Qt.colorEqual(picture.pixel(origin + 15, origin + 5), "white"));
        verify(Qt.colorEqual(picture.pixel(5, 5), "white"));
    }

    function test_sheet_closes_by_escape_and_beside_without_changes() {
        const made = make(sheet);
        made.open();
        tryCompare(made, "opened", true);
        keyClick(Qt.Key_Escape);
        tryCompare(made, "opened", false);
        made.open();
        tryCompare(made, "opened", true);
        mouseClick(test, 5, 5);
        tryCompare(made, "opened", false);
    }
    function test_sheet_with_changes_survives_a_tap_beside_and_asks() {
        const made = make(sheet, { hasChanges: true });
        watch(made, "discarded");
        made.open();
        tryCompare(made, "opened", true);
        mouseClick(test, 5, 5);
        wait(50);
        verify(made.opened);
        keyClick(Qt.Key_Escape);
        tryCompare(made, "asking", true);
        verify(made.opened);
        waitForRendering(made.contentItem);
        mouseClick(Walker.find(made.contentItem, "keep"));
        verify(made.opened && !made.asking);
        mouseClick(Walker.find(made.contentItem, "close"));
        tryCompare(made, "asking", true);
        waitForRendering(made.contentItem);
        mouseClick(Walker.find(made.contentItem, "discard"));
        tryCompare(made, "opened", false);
        compare(spy.count, 1);
    }

    function test_bar_keeps_the_others_behind_more() {
        const made = make(placeBar, { current: "desk" });
        watch(made, "picked");
        compare(Walker.interactive(made).length, 5);
        mouseClick(Walker.find(made, "room"));
        compare(spy.signalArguments[0][0], "room");
        compare(Walker.nameOf(Walker.find(made, "more")), "More, 2 waiting");
        mouseClick(Walker.find(made, "more"));
        wait(50);
        const overlay = test.Window.window.contentItem.parent ?? test.Window.window.contentItem;
        const row = Walker.interactive(overlay).find(item => item.text === "Exchange");
        mouseClick(row);
        compare(spy.signalArguments[1][0], "exchange");
    }

    function test_side_by_side_follows_its_width() {
        const made = make(sideBySide);
        compare(made.columns, 2);
        compare(made.children[1].y, 0);
        made.width = 400;
        compare(made.columns, 1);
        tryVerify(() => made.children[1].y > 0 && made.children[1].x === 0);
        made.width = 600;
        tryVerify(() => made.children[1].y === 0 && made.children[1].x > 250);
    }

    function test_row_says_its_detail() {
        const made = make(listRow);
        compare(Walker.nameOf(made), "Mirela");
        compare(made.Accessible.description, "3 rackets, 14:30");
        watch(made, "clicked");
        made.forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Return);
        compare(spy.count, 1);
    }
}
