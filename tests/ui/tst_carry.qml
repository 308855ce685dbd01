import QtQuick
import QtTest
import Weavelog.Screens
import Weavelog.Theme
import Weavelog.View
import Weavelog.Tests

// What travels in a file, and this tablet as host: on the Exchange page, from the first tap to the account.
AppCase {
    id: test
    name: "Carry"
    when: windowShown

    property var window

    function make(width, height) { window = openApp("exchange", width, height); }
    function find(name) { return findAnywhere(window, name); }
    function look() { lookAt(allOf(window)); }
    function type(name, text) {
        find(name).text = text;
        find(name).edited(text);
    }
    function cleanup() {
        Theme.rightToLeft = false;
        HostModel.stop();
    }

    function sizes() {
        return [{ tag: "tablet", width: 1280, height: 800 }, { tag: "phone", width: 412, height: 915 },
                { tag: "phone mirrored", width: 412, height: 915, mirrored: true }];
    }
    function test_players_are_handed_over_and_brought_in_data() { return sizes(); }
    function test_players_are_handed_over_and_brought_in(data) {
        Room.addEvent();
        Room.addPastPlayer("Carrymoor" + data.tag.length, 1);
        Theme.rightToLeft = data.mirrored ?? false;
        make(data.width, data.height);
        look();
        find("carryPlayers").clicked();
        find("receiver");
        type("findPlayer", "carrymoor" + data.tag.length);
        tryCompare(BundleModel.choice, "count", 1);
        tryVerify(() => find("chooseFrom").itemAtIndex(0)?.name.startsWith("Carrymoor" + data.tag.length) ?? false);
        const row = find("chooseFrom").itemAtIndex(0);
        row.toggle();
        row.toggled();
        compare(BundleModel.choice.chosen, 1);
        verify(row.checked);
        tryVerify(() => !BundleModel.sizing && BundleModel.players === 1);
        verify(!find("write").enabled);
        type("words", "aaaaaaaaaaa");
        verify(BundleModel.strengthWords.length > 0);
        type("words", "ferry window ladder salt");
        type("wordsAgain", "ferry window ladder");
        verify(!find("write").enabled);
        type("wordsAgain", "ferry window ladder salt");
        tryVerify(() => find("write").enabled);
        look();
        BundleModel.write(Room.stick());
        tryCompare(BundleModel, "state", BundleModel.Arrived);
        tryVerify(() => find("arrived").visible);
        look();
        const file = BundleModel.file;
        find("done").clicked();
        tryCompare(BundleModel, "state", BundleModel.Choosing);
        tryVerify(() => find("made0") !== null);

        find("carry").bringIn("file://" + file);
        tryCompare(IntakeModel, "state", IntakeModel.Locked);
        look();
        find("intakeWords").text = "not this one";
        find("unlock").clicked();
        tryVerify(() => IntakeModel.wrongWords);
        find("intakeWords").text = "ferry window ladder salt";
        find("unlock").clicked();
        tryCompare(IntakeModel, "state", IntakeModel.Seen);
        look();
        find("take").clicked();
        tryCompare(IntakeModel, "state", IntakeModel.Taken);
        verify(IntakeModel.complete);
        tryVerify(() => find("intakeDone").visible);
        look();
        find("intakeClose").clicked();
        tryCompare(IntakeModel, "state", IntakeModel.Empty);
    }
    function test_a_stick_that_is_not_there_leaves_it_waiting_and_it_can_be_thrown_away() {
        Room.addEvent();
        make(412, 915);
        find("carryBackup").clicked();
        find("receiver");
        find("makeUp").clicked();
        tryVerify(() => find("madeWords").visible);
        tryVerify(() => find("write").enabled);
        look();
        BundleModel.write(Room.stick() + "/nowhere");
        tryCompare(BundleModel, "state", BundleModel.Waiting);
        tryVerify(() => find("trouble").visible);
        look();
        find("close").clicked();
        tryVerify(() => find("waits").visible);
        find("waits").acted();
        find("giveUp").clicked();
        tryCompare(BundleModel, "state", BundleModel.Choosing);
    }
    function test_others_may_exchange_with_this_tablet_data() { return sizes(); }
    function test_others_may_exchange_with_this_tablet(data) {
        Room.addEvent();
        Theme.rightToLeft = data.mirrored ?? false;
        make(data.width, data.height);
        HostModel.share = HostModel.Players;
        find("hosting");
        verify(!find("hostStart").enabled);
        look();
        HostModel.share = HostModel.Event;
        verify(find("hostStart").enabled);
        HostModel.start("127.0.0.1");
        tryVerify(() => HostModel.on);
        find("hostInvite").clicked();
        tryVerify(() => find("hostCode").visible);
        compare(HostModel.inviteWords.split("-").length, 5);
        look();
        find("hostStop").clicked();
        verify(!HostModel.on);
        tryVerify(() => find("hostStart").visible);
    }
}
