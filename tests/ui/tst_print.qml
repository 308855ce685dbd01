import QtQuick
import QtTest
import Weavelog.Screens
import Weavelog.Theme
import Weavelog.View
import Weavelog.Tests

// The sheet with a paper before it is printed, from each place that opens it.
AppCase {
    id: test
    name: "Print"
    when: windowShown

    property var window

    function make(place, width, height) { window = openApp(place, width, height); }
    function find(name) { return findAnywhere(window, name); }
    function look() { lookAt(allOf(window)); }
    function cleanup() { Theme.rightToLeft = false; }

    function test_the_rooms_papers_are_looked_at_before_they_are_printed_data() {
        return [{ tag: "tablet", width: 1280, height: 800 }, { tag: "phone", width: 412, height: 915 },
                { tag: "phone mirrored", width: 412, height: 915, mirrored: true }];
    }
    function test_the_rooms_papers_are_looked_at_before_they_are_printed(data) {
        verify(Jobs.receive("Okafor", 41));
        Theme.rightToLeft = data.mirrored ?? false;
        make("room", data.width, data.height);
        find("printLists").clicked();
        tryCompare(PrintModel, "paper", "work-list");
        tryVerify(() => !PrintModel.looking);
        look();
        for (const paper of ["pick-up-list", "labels", "tags", "bag-tags"]) {
            find("paper").picked(paper);
            compare(PrintModel.paper, paper);
            verify(PrintModel.pages > 0, paper);
            waitForRendering(window.contentItem);
            look();
        }
        find("size").chosen("62x29");
        compare(PrintModel.pageSize(0), Qt.size(62, 29));
        tryVerify(() => find("pictures").height < 200);
        find("size").chosen("62x100");
        tryVerify(() => find("pictures").height > 300);
        find("close").clicked();
        tryCompare(PrintModel, "pages", 0);
    }
    function test_labels_begin_where_the_sheet_has_the_first_free_one() {
        verify(Jobs.receive("Okafor", 42));
        make("room", 1280, 800);
        find("printLists").clicked();
        find("paper").picked("labels");
        const start = find("start");
        verify(start.visible);
        start.edited("5");
        compare(PrintModel.start, 5);
    }
    function test_a_job_has_its_tag_at_hand() {
        verify(Jobs.receive("Printova", 43));
        make("room", 1280, 800);
        const card = Walker.interactive(window.contentItem).find(item => Walker.nameOf(item) === "Tag 43, Printova");
        verify(card);
        card.clicked();
        find("print").clicked();
        tryCompare(PrintModel, "paper", "tags");
        compare(PrintModel.pages, 1);
        verify(PrintModel.pageText(0).includes("Printova"));
        look();
    }
    function test_the_desk_prints_the_tags_of_a_drop_off_by_one_tap() {
        Room.addEvent();
        Room.addPastPlayer("Tagholm", 2);
        make("desk", 1280, 800);
        DeskModel.open("confirm:Tagholm");
        DeskModel.confirm(DeskModel.draft.readBack);
        tryCompare(DeskModel, "page", DeskModel.Stored);
        find("printTags").clicked();
        tryCompare(PrintModel, "paper", "tags");
        verify(PrintModel.pages > 0);
        verify(PrintModel.pageText(0).includes("Tagholm"));
        Room.clearDrafts();
    }
}
