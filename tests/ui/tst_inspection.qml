import QtQuick
import QtTest
import Weavelog.Parts
import Weavelog.Screens
import Weavelog.Theme
import Weavelog.View
import Weavelog.Tests

// A frame under inspection, by finger, by keyboard and for a screen reader.
AppCase {
    id: test
    name: "Inspection"
    when: windowShown

    property var window

    function make(width, height) { window = openApp("room", width, height); }
    function find(name) { return findAnywhere(window, name); }
    function begin(family, tag, width, height) {
        Settings.stringer = "Ines";
        verify(Jobs.receive(family, tag));
        make(width, height);
        InspectionModel.show(Jobs.book(), Jobs.job());
        find("drawing");
        wait(50);
    }
    function cleanup() { Theme.rightToLeft = false; }

    function test_every_target_data() {
        const out = [];
        for (const size of [[1280, 800], [412, 915]])
            for (const mirrored of [false, true])
                out.push({ tag: size[0] + (mirrored ? " mirrored" : ""), width: size[0], height: size[1], mirrored: mirrored });
        return out;
    }
    function test_every_target(data) {
        Theme.rightToLeft = data.mirrored;
        begin("Abelard", 61, data.width, data.height);
        InspectionModel.place = 5;
        InspectionModel.fault = 1;
        InspectionModel.proposal = 4;
        find("noteFinding").clicked();
        find("ask1");
        wait(50);
        const sheet = allOf(window);
        compare(Walker.nameless(sheet).join("\n"), "");
        compare(Walker.tooSmall(sheet, 48).join("\n"), "");
        compare(Walker.unreachable(sheet).join("\n"), "");
        for (const item of Walker.interactive(find("drawing").parent.parent.parent)) {
            const left = item.mapToItem(window.contentItem, 0, 0).x;
            verify(left >= 0 && left + item.width <= window.width + 1, item + " " + Walker.nameOf(item));
        }
    }
    function test_a_finding_from_the_tap_to_the_answer() {
        begin("Brandolf", 62);
        const drawing = find("drawing");
        const button = find("noteFinding");
        verify(!button.enabled);
        // Straight to the right of the head's middle: 3 o'clock.
        mouseClick(drawing, 186 * drawing.unit, 112 * drawing.unit);
        compare(InspectionModel.minutes, 180);
        verify(!button.enabled);
        find("fault3").clicked();
        find("proposal2").clicked();
        verify(button.enabled);
        button.clicked();
        compare(Jobs.stage(), StageMark.Waiting);
        find("ask1").clicked();
        const yes = find("answerYes");
        verify(find("turned").rotation === 180);
        verify(find("frameQuestion").text.includes("3 o’clock"));
        verify(!yes.enabled);
        find("remedy1").clicked();
        verify(yes.enabled);
        find("saidBy").text = "";
        verify(!yes.enabled);
        find("saidBy").text = "the coach";
        yes.clicked();
        compare(Jobs.answered(), "string_anyway, the coach, Ines");
        compare(Jobs.stage(), StageMark.Inspected);
    }
    function test_an_answer_taken_elsewhere_takes_the_place_of_the_question_data() { return sizes(); }
    function test_an_answer_taken_elsewhere_takes_the_place_of_the_question(data) {
        begin("Eskildsen " + data.tag, data.tag === "phone" ? 66 : 65, data.width, data.height);
        InspectionModel.place = 5;
        InspectionModel.fault = 1;
        InspectionModel.proposal = 4;
        find("noteFinding").clicked();
        find("ask1").clicked();
        find("remedy1").clicked();
        const yes = find("answerYes");
        verify(yes.enabled);
        verify(Jobs.frameAnsweredElsewhere());
        const said = find("meanwhile");
        verify(said.text.includes("Corvin"), said.text);
        verify(!yes.enabled);
        waitForRendering(yes);  // before that it does not stand where it is shown
        mouseClick(yes);
        compare(Walker.find(allOf(window), "meanwhile"), said);
        compare(Walker.find(allOf(window), "frameQuestion"), null);
        lookAt(allOf(window));
        find("answerLater").clicked();
        compare(Jobs.answered(), "string_anyway, Eskildsen " + data.tag + ", Corvin");
        // Who asks again has read it.
        tryVerify(() => Walker.find(allOf(window), "answerYes") === null);
        find("ask1").clicked();
        find("remedy4").clicked();
        find("answerYes").clicked();
        compare(Jobs.answered(), "do_not_string, Eskildsen " + data.tag + ", Ines");
    }
    function test_who_answers_for_it_is_told_that_nothing_is_to_be_answered() {
        begin("Fredriksen", 67);
        InspectionModel.place = 5;
        InspectionModel.fault = 1;
        InspectionModel.proposal = 4;
        find("noteFinding").clicked();
        find("goOn1").clicked();
        find("goOnWhy").text = "no time";
        const yes = find("goOnYes");
        verify(yes.enabled);
        verify(Jobs.frameAnsweredElsewhere());
        tryVerify(() => !yes.enabled);
        verify(find("goOnNotice").text.includes("Corvin"));
        compare(Jobs.answered(), "string_anyway, Fredriksen, Corvin");
    }
    function test_a_sound_frame_is_one_tap() {
        begin("Corvin", 63);
        find("sound").clicked();
        compare(Jobs.stage(), StageMark.Inspected);
        tryVerify(() => Walker.find(allOf(window), "drawing") === null);
    }
    function test_the_keyboard_alone_notes_a_finding() {
        begin("Dorval", 64);
        const drawing = find("drawing");
        drawing.forceActiveFocus(Qt.TabFocusReason);
        for (let i = 0; i < 3; ++i) keyClick(Qt.Key_Right);
        compare(InspectionModel.minutes, 60);
        keyClick(Qt.Key_Down);
        compare(InspectionModel.minutes, 90);
        for (const name of ["fault2", "proposal0", "noteFinding"]) {
            find(name).forceActiveFocus(Qt.TabFocusReason);
            keyClick(Qt.Key_Return);
        }
        compare(Jobs.stage(), StageMark.Inspected);
        verify(Walker.nameOf(find("finding1")).includes("half past 1"));
    }
    function test_going_on_without_the_answer_asks_for_name_and_reason() {
        begin("Ebbersten", 65);
        InspectionModel.place = 24;
        InspectionModel.fault = 2;
        InspectionModel.proposal = 1;
        find("noteFinding").clicked();
        find("goOn1").clicked();
        const yes = find("goOnYes");
        verify(!yes.enabled);
        find("goOnWhy").text = "on court in ten minutes";
        verify(yes.enabled);
        yes.clicked();
        compare(Jobs.answered(), "unsaid, , ; Ines: on court in ten minutes");
    }
    function test_the_board_opens_it() {
        Settings.stringer = "Ines";
        verify(Jobs.receive("Fennimor", 66));
        make();
        let card = null;
        tryVerify(() => (card = Walker.interactive(window.contentItem).find(item => Walker.nameOf(item) === "Tag 66, Fennimor")) !== undefined);
        card.clicked();
        find("inspect").clicked();
        find("drawing");
        compare(InspectionModel.tag, "66");
    }
    function test_who_has_no_name_yet_gives_it_here() {
        begin("Hartwin", 68);
        Settings.stringer = "";
        const name = find("inspector");
        name.takeFocus();
        for (const key of "Bo") keyClick(key);
        keyClick(Qt.Key_Return);
        compare(Settings.stringer, "Bo");
    }
    function test_a_begun_finding_is_not_thrown_away_by_escape() {
        begin("Gundolf", 67);
        InspectionModel.fault = 2;
        keyClick(Qt.Key_Escape);
        find("discard");
        compare(InspectionModel.fault, 2);
    }
}
