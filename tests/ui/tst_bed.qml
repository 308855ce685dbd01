import QtQuick
import QtTest
import Weavelog.Parts
import Weavelog.Screens
import Weavelog.Theme
import Weavelog.View
import Weavelog.Tests

// The string bed of a racket, opened from its sheet in the room.
AppCase {
    id: test
    name: "Bed"
    when: windowShown

    function make(width, height) { return openApp("room", width, height); }
    function open(window, tag, family) {
        let card = null;
        tryVerify(() => (card = Walker.interactive(window.contentItem).find(item => Walker.nameOf(item) === "Tag " + tag + ", " + family)) !== undefined);
        card.clicked();
        find(window, "stringBed").clicked();
        tryVerify(() => BedModel.ready && !BedModel.busy, 20000);
    }

    function test_the_bed_is_shown_data() {
        return [{ tag: "wide", width: 1280, height: 800, number: 21 }, { tag: "narrow", width: 412, height: 915, number: 22 }];
    }
    function test_the_bed_is_shown(data) {
        verify(Jobs.rush("Aalto", data.number)); // first in its column
        const window = make(data.width, data.height);
        open(window, data.number, "Aalto");
        compare(BedModel.fault, "");
        verify(find(window, "bedPicture").visible);
        verify(find(window, "bedPicture").Accessible.name.includes(BedModel.map.spoken));
        verify(BedModel.map.legend.length >= 3);
        verify(find(window, "mapNote").text.includes("nine times of ten"));
        find(window, "bedDrawn").chosen(false);
        verify(Walker.find(window.contentItem, "mapNote") === null);
        verify(find(window, "bedData").text.length > 0);
        verify(find(window, "bedAssumed").visible);
        compare(Walker.nameless(window.contentItem).join("\n"), "");
        compare(Walker.tooSmall(window.contentItem, 48).join("\n"), "");
        compare(Walker.unreachable(window.contentItem).join("\n"), "");
    }
    function test_a_kilo_more_on_the_mains_and_a_tone() {
        verify(Jobs.receive("Bakonyi", 23));
        const window = make(1280, 800);
        open(window, 23, "Bakonyi");
        find(window, "what").picked(BedModel.Mains);
        compare(Walker.find(window.contentItem, "proposal"), null);
        find(window, "feelFigure").edited("1");
        tryVerify(() => BedModel.proposal.set !== undefined && !BedModel.busy, 20000);
        verify(find(window, "proposal").title.includes("25.5"));
        find(window, "what").picked(BedModel.Gauge);
        compare(Walker.find(window.contentItem, "proposal"), null);
        find(window, "what").picked(BedModel.Pattern);
        verify(find(window, "mainsCount").value === "16");
        find(window, "mainsCount").edited("18");
        tryVerify(() => BedModel.proposal.set !== undefined && !BedModel.busy, 20000);
        verify(find(window, "otherRacket").visible);
        verify(Walker.find(window.contentItem, "of") === null);
        find(window, "tone").edited("100");
        tryVerify(() => BedModel.heard.fault !== undefined, 20000);
        verify(find(window, "toneFault").visible);
    }
    function test_a_tone_of_one_racket_is_not_kept_for_the_next_one() {
        verify(Jobs.receive("Eberling", 26));
        const window = make(1280, 800);
        open(window, 26, "Eberling");
        find(window, "tone").edited("480");
        tryVerify(() => BedModel.heard.lines !== undefined, 20000);
        verify(find(window, "keepTone").visible);
        verify(Jobs.receive("Fabricius", 27));
        BedModel.show(Jobs.book(), Jobs.job()); // as a scan does it
        tryVerify(() => BedModel.title.includes("Fabricius") && BedModel.ready && !BedModel.busy, 20000);
        compare(find(window, "tone").value, "");
        compare(Walker.find(window.contentItem, "keepTone"), null);
    }
    // Machines without a sound device take this way in earnest; elsewhere the real microphone listens.
    function test_listening_says_what_it_hears_or_why_it_cannot() {
        verify(Jobs.receive("Cserne", 24));
        const window = make(412, 915);
        open(window, 24, "Cserne");
        find(window, "listen").clicked();
        if (ToneModel.state === ToneModel.Unknown) {
            verify(ToneModel.deaf);
            verify(find(window, "toneUnknown").text.includes("WAV"));
        } else {
            verify(find(window, "level").visible);
            find(window, "listen").clicked();
        }
        verify(find(window, "hearFile").visible);
        compare(Walker.nameless(window.contentItem).join("\n"), "");
        compare(Walker.tooSmall(window.contentItem, 48).join("\n"), "");
    }
    function test_a_recording_tells_the_tone_and_is_kept() {
        verify(Jobs.receive("Drobny", 25));
        const window = make(1280, 800);
        open(window, 25, "Drobny");
        verify(BedModel.toneNow > 300);
        ToneModel.hearFile(Jobs.taps(BedModel.toneNow * 0.98), BedModel.toneNow);
        tryVerify(() => ToneModel.state === ToneModel.Known && !BedModel.busy && BedModel.heard.lines !== undefined, 20000);
        verify(find(window, "toneKnown").visible);
        compare(find(window, "tone").value, ToneModel.hertz);
        verify(find(window, "heard").text.includes("N/mm"));
        find(window, "keepTone").clicked();
        compare(ToneModel.state, ToneModel.Idle);
        tryVerify(() => !BedModel.busy && BedModel.data.includes("1 reading"), 20000);
        verify(Walker.find(window.contentItem, "keepTone") === null);
    }
}
