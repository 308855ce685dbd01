import QtQuick
import QtQuick.Layouts
import QtTest
import Weavelog.Parts
import Weavelog.Screens
import Weavelog.Tests

// Lines whose words break at one width and not at another keep their heights: nothing runs over its neighbour.
AppCase {
    id: test
    name: "Lines"
    when: windowShown
    width: 420
    height: 900
    visible: true

    readonly property var jobs: Array.from({ length: 6 }, (none, i) => ({
        tension: i % 2 ? "23,5 kg / 22,5 kg" : "27,5 kg", day: "Mo., 30. Nov.", racket: String(i + 1),
        strings: "Ostrel Cord / Quenby Soft", event: "Kelpstrand Open" }))

    Component {
        id: jobCard
        Card {
            width: 380
            title: "Letzte Bespannungen"
            Column {
                id: jobs
                objectName: "lines"
                Layout.fillWidth: true
                Repeater {
                    model: test.jobs
                    JobLine { width: jobs.width }
                }
            }
        }
    }
    Component {
        id: sums
        Card {
            width: 340
            title: "La caisse"
            SumRow {
                objectName: "sum"
                Layout.fillWidth: true
                text: "Espèces encaissées ce jour, d’après les lignes"
                amount: "1 240,00 EUR"
            }
            Words { objectName: "below"; Layout.fillWidth: true; text: "Espèces comptées" }
        }
    }

    function inside(item) {
        for (const child of Array.from(item.children)) {
            if (child.height === undefined || !child.visible) continue; // such as a Repeater
            verify(child.y >= 0 && child.y + child.height <= item.height + 0.5, String(child));
            if (child.children.length > 0) inside(child);
        }
    }
    function test_old_jobs_follow_the_width() {
        const card = createTemporaryObject(jobCard, test);
        const lines = findChild(card, "lines");
        for (const width of [380, 200, 380, 340]) {
            card.width = width;
            wait(60); // laid out anew
            let under = -1;
            for (const line of Array.from(lines.children).filter(one => one.modelData !== undefined)) {
                inside(line);
                verify(line.y >= under, "lines run into each other at " + width);
                under = line.y + line.height;
            }
            verify(under > 0);
        }
    }
    function test_an_amount_stands_beside_its_words_not_over_them() {
        const card = createTemporaryObject(sums, test);
        const row = findChild(card, "sum");
        const words = row.children[0], amount = row.children[1];
        for (const width of [340, 600, 240, 340]) {
            card.width = width;
            wait(60); // laid out anew
            verify(words.x + words.width <= amount.x);
            verify(words.height <= row.height);
            verify(row.y + row.height <= findChild(card, "below").y);
        }
        verify(words.lineCount > 1);
    }
}
