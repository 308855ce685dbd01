import QtQuick
import QtTest
import Weavelog.Parts
import Weavelog.Screens
import Weavelog.Theme
import Weavelog.View
import Weavelog.Tests

// The money's and the stock's pages, by finger, with the taps counted that a desk makes a hundred times a day.
AppCase {
    id: test
    name: "Money"
    when: windowShown

    function look(window) {
        lookAt(window.contentItem);
        compare(Walker.unreachable(window.contentItem).join("\n"), "");
        for (const item of Walker.interactive(window.contentItem)) {
            const left = item.mapToItem(window.contentItem, 0, 0).x;
            verify(left >= 0 && left + item.width <= window.width + 1, item + " " + Walker.nameOf(item));
        }
    }
    property int taps: 0
    property bool received: false
    function tap(window, name) {
        const item = find(window, name);
        tryVerify(() => item.enabled, 5000, name);
        item.clicked(); // wherever the page has been scrolled to
        ++taps;
    }
    function type(entry, text) {
        entry.takeFocus();
        entry.text = text;
        entry.edited(text);
    }
    function cleanup() {
        Theme.rightToLeft = false;
        MoneyPlace.account.show("");
        MoneyPlace.view = "accounts";
    }

    function test_every_view_has_room_for_a_finger_data() {
        const out = [];
        for (const view of ["accounts", "day", "prices"])
            for (const size of [[1280, 800], [412, 915]])
                for (const mirrored of [false, true])
                    out.push({ tag: view + " " + size[0] + (mirrored ? " mirrored" : ""), view: view, width: size[0], height: size[1],
                               mirrored: mirrored });
        return out;
    }
    function test_every_view_has_room_for_a_finger(data) {
        if (!received) verify(Jobs.receive("Okafor", 41));  // the board stays short enough for the other tests
        received = true;
        verify(Jobs.priceList());
        Theme.rightToLeft = data.mirrored;
        const window = openApp("money", data.width, data.height);
        MoneyPlace.go(Jobs.book());
        MoneyPlace.view = data.view;
        waitForRendering(window.contentItem);
        look(window);
    }
    function test_from_a_scan_in_the_room_to_paid_in_four_taps() {
        verify(Jobs.receive("Aalto", 7));
        verify(Jobs.priceList());
        const window = openApp("room");
        taps = 0;
        for (const key of Jobs.code(7)) keyClick(key);
        keyClick(Qt.Key_Return);
        ++taps;
        tap(window, "account");
        tryCompare(window, "place", "money");
        tap(window, "charge");
        compare(MoneyPlace.account.due[0].digits, "20.00");
        tap(window, "pay1");
        compare(MoneyPlace.account.due[0].digits, "0.00");
        compare(taps, 4);
        // Nothing due: nothing to tap by mistake.
        verify(!find(window, "pay1").enabled);
        mouseClick(find(window, "undo"));
        compare(MoneyPlace.account.due[0].digits, "20.00");
    }
    function test_a_wrong_amount_says_so_below_its_field() {
        verify(Jobs.receive("Bakonyi", 8));
        verify(Jobs.priceList());
        const window = openApp("money");
        MoneyPlace.go(Jobs.book());
        const amount = find(window, "payAmount");
        type(amount, "1.234");
        verify(amount.error.length > 0);
        verify(!find(window, "pay2").enabled);
        type(amount, "5");
        compare(amount.error, "");
        tap(window, "pay2");
        compare(MoneyPlace.account.due[0].sign, -1);
    }
    function test_a_discount_and_a_reversal_need_their_reason() {
        verify(Jobs.receive("Cervenka", 9));
        verify(Jobs.priceList());
        const window = openApp("money");
        MoneyPlace.go(Jobs.book());
        tap(window, "charge");
        tap(window, "discount9");
        verify(!find(window, "off100").enabled);
        type(find(window, "discountReason"), "waited");
        find(window, "off100").clicked();
        compare(MoneyPlace.account.due[0].digits, "18.00");
        const line = Walker.interactive(window.contentItem).find(item => item.objectName === "line" && item.enabled && !item.endText.startsWith("0.00"));
        line.clicked();
        verify(!find(window, "reverse").enabled);
        type(find(window, "reverseReason"), "wrong racket");
        find(window, "reverse").clicked();
        verify(MoneyPlace.account.due[0].digits !== "18.00");
    }
    function test_something_sold_is_charged_without_typing() {
        verify(Jobs.receive("Dunajec", 10));
        verify(Jobs.priceList());
        const window = openApp("money");
        MoneyPlace.go(Jobs.book());
        find(window, "sell").clicked();
        find(window, "ware").clicked();
        find(window, "sellNow").clicked();
        compare(MoneyPlace.account.due[0].digits, "3.50");
    }
    function test_a_day_is_closed_with_its_count() {
        verify(Jobs.receive("Eriksdal", 11));
        verify(Jobs.priceList());
        const window = openApp("money");
        MoneyPlace.view = "day";
        const before = MoneyPlace.day.closes.length;
        verify(!find(window, "closeDay").enabled);
        find(window, "counted").text = "x";
        verify(find(window, "counted").error.length > 0);
        find(window, "counted").text = "1000";
        verify(find(window, "difference").text.length > 0);
        find(window, "closeDay").clicked();
        compare(MoneyPlace.day.closes.length, before + 1);
        compare(find(window, "counted").text, "");
    }
    function test_a_price_is_given_and_taken_off() {
        verify(Jobs.priceList());
        const window = openApp("money");
        MoneyPlace.view = "prices";
        find(window, "price rush").clicked();
        find(window, "priceAmount").text = "8.50";
        find(window, "keepPrice").clicked();
        tryVerify(() => find(window, "price rush").endText.startsWith("8.50"));
        find(window, "price rush").clicked();
        find(window, "dropPrice").clicked();
        tryVerify(() => find(window, "price rush").endText === "no price");
    }
    function test_a_reel_comes_and_is_taken_out() {
        verify(Jobs.receive("Falkenrath", 12));
        const window = openApp("stock");
        find(window, "newItem").clicked();
        verify(!find(window, "keepItem").enabled);
        find(window, "itemName").text = "Tarnbrook Silk";
        find(window, "itemAmount").text = "x";
        verify(!find(window, "keepItem").enabled);
        find(window, "itemAmount").text = "200";
        find(window, "keepItem").clicked();
        tryCompare(StockModel, "count", 1);
        waitForRendering(window.contentItem);
        look(window);
        const row = Walker.interactive(window.contentItem).find(item => Walker.nameOf(item) === "Tarnbrook Silk");
        row.clicked();
        find(window, "stockWhy").chosen(6);
        find(window, "stockAmount").text = "12.5";
        find(window, "keepStock").clicked();
        tryVerify(() => row.parent.remains === "187.5");
        window.width = 412;
        window.height = 915;
        waitForRendering(window.contentItem);
        look(window);
    }
}
