import QtQuick
import QtTest
import Weavelog.Screens
import Weavelog.Tests

// A test of the screens, with what all of them do: any warning while it runs, of QML or of Qt, fails it.
TestCase {
    id: appCase

    property Component app: Component { Main {} }

    function init() { failOnWarning(/.*/); }

    // The app in a window of its own, at a place of its, drawn and active.
    function openApp(place, width, height) {
        const window = createTemporaryObject(app, null, { width: width ?? 1280, height: height ?? 800, startPlace: place });
        verify(window);
        window.requestActivate();
        tryCompare(window, "active", true);
        waitForRendering(window.contentItem);
        return window;
    }
    function sizes() { return [{ tag: "tablet", width: 1280, height: 800 }, { tag: "phone", width: 412, height: 915 }]; }
    function find(window, name) {
        let found = null;
        tryVerify(() => (found = Walker.find(window.contentItem, name)) !== null, 5000, name);
        return found;
    }
    function gone(window, name) { tryVerify(() => Walker.find(window.contentItem, name) === null, 5000, name); }
    // With what lies over the page: sheets, the confirmation.
    function allOf(window) { return window.contentItem.parent ?? window.contentItem; }
    function findAnywhere(window, name) {
        let found = null;
        tryVerify(() => (found = Walker.find(allOf(window), name) ?? Walker.find(window.contentItem, name)) !== null, 5000, name);
        return found;
    }
    // Whoever can't see, or has a broad finger or only keys, gets to all of it.
    function lookAt(root) {
        compare(Walker.nameless(root).join("\n"), "");
        compare(Walker.tooSmall(root, 48).join("\n"), "");
    }
    function look(window) { lookAt(window.contentItem); }
    // Into sight, as a finger scrolls.
    function bring(target) {
        wait(60);
        for (let up = target.parent; up; up = up.parent) {
            if (up.contentY !== undefined && up.contentItem !== undefined && up.contentHeight > up.height) {
                const y = target.mapToItem(up.contentItem, 0, 0).y;
                if (y + target.height > up.contentY + up.height || y < up.contentY)
                    up.contentY = Math.max(0, Math.min(y - up.height / 2, up.contentHeight - up.height));
            }
        }
        wait(60); // what the last answer moved has come to rest
    }
    function typeInto(entry, text) {
        entry.field.forceActiveFocus();
        entry.field.text = "";
        for (const letter of text) keyClick(letter);
    }
}
