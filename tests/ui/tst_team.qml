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

    function make(width, height) { return openApp("team", width, height); }
    function tap(window, name) { mouseClick(find(window, name)); wait(1); }

    function test_the_list_of_the_bench_is_changed_data() {
        return [{ tag: "tablet", width: 1280, height: 800 }, { tag: "phone", width: 412, height: 915 }];
    }
    function test_the_list_of_the_bench_is_changed(data) {
        verify(Jobs.receive("Nakagura", 42));
        const window = make(data.width, data.height);
        find(window, "teamView").chosen("lists");
        const before = ListsModel.steps.length;
        verify(ListsModel.usual);
        find(window, "addStep").clicked();
        find(window, "keepStep").clicked();
        verify(find(window, "stepWords").error.length > 0); // nothing was said
        typeInto(find(window, "stepWords"), "wipe");
        compare(find(window, "stepWords").error, "");
        find(window, "keepStep").clicked();
        compare(ListsModel.steps.length, before + 1);
        tryVerify(() => Walker.find(window.contentItem, "keepStep") === null);
        tryVerify(() => find(window, "step" + before).width > 48); // laid out
        look(window);
        const up = find(window, "up" + before);
        up.clicked();
        compare(ListsModel.steps[before - 1].text, "wipe");
        find(window, "remove0").clicked();
        compare(ListsModel.steps.length, before);
        find(window, "undo").clicked();
        compare(ListsModel.steps.length, before + 1);
        find(window, "usualList").clicked();
        verify(ListsModel.usual);
        compare(ListsModel.steps.length, before);
        find(window, "whichList").chosen(2);
        verify(ListsModel.steps.length !== before);
        tryVerify(() => find(window, "step0").width > 48);
        look(window);
        ListsModel.list = 1;
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
        typeInto(find(window, "machineName"), "bench " + data.tag);
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
        typeInto(find(window, "memberName"), "Mara");
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
