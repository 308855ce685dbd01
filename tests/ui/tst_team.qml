import QtQuick
import QtTest
import Weavelog.Parts
import Weavelog.Screens
import Weavelog.Theme
import Weavelog.View
import Weavelog.Tests

// People, machines and numbers by finger.
AppCase {
    id: test
    name: "Team"
    when: windowShown

    Component { id: main; Main {} }

    function make(width, height) {
        const window = createTemporaryObject(main, null, { width: width ?? 1280, height: height ?? 800, startPlace: "team" });
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

    function test_a_machine_is_listed_taken_out_of_order_and_cleaned_data() {
        return [{ tag: "tablet", width: 1280, height: 800 }, { tag: "phone", width: 412, height: 915 }];
    }
    function test_a_machine_is_listed_taken_out_of_order_and_cleaned(data) {
        verify(Jobs.receive("Okafor", 41));
        const window = make(data.width, data.height);
        const page = find(window, "teamView");
        page.chosen("machines");
        const before = MachinesModel.machines.length;
        tap(window, "addMachine");
        type(window, "machineName", "bench " + data.tag);
        find(window, "keepMachine").clicked();
        tryVerify(() => MachinesModel.machines.length === before + 1);
        look(window);
        verify(MachinesModel.clean(MachinesModel.machines[before].id, ""));
        page.chosen("numbers");
        tryVerify(() => NumbersModel.watched);
        verify(NumbersModel.sums.jobs > 0);
        look(window);
        page.chosen("people");
        verify(!NumbersModel.watched);
    }
    function test_somebody_is_added_with_a_shift() {
        verify(Jobs.receive("Okafor", 42));
        const window = make();
        tap(window, "addMember");
        type(window, "memberName", "Mara");
        find(window, "keepMember").clicked();
        tryVerify(() => TeamModel.members.some(one => one.name === "Mara"));
        tap(window, "addShift");
        const who = find(window, "shiftMember");
        who.picked(TeamModel.members.find(one => one.name === "Mara").id);
        const until = find(window, "shiftUntil");
        until.text = "21:00";
        find(window, "shiftFrom").text = "7:00";
        find(window, "shiftDay").picked(1);
        find(window, "keepShift").clicked();
        tryVerify(() => TeamModel.warnings.length > 0);
        find(window, "shiftWarning");
        look(window);
    }
}
