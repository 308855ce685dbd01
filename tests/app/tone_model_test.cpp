#include "app-qml/view/tone_model.h"

#include <QFile>
#include <QSignalSpy>

#include <cstring>
#include <limits>

#include "app-qml/view/bed_model.h"
#include "app-qml/view/microphone.h"
#include "core/bed/wav.h"
#include "core/desk/bench.h"
#include "tests/app/room_jobs.h"
#include "tests/core/bed/made_sound.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

// Stands for the microphone: what a test plays is heard.
struct PlayedSound : SoundRecorder {
  Start answer = Start::listening;
  bool on = false;
  int stopped = 0;
  Start start() override {
    on = answer == Start::listening;
    return answer;
  }
  void stop() override {
    on = false;
    ++stopped;
  }
  // In pieces, as a device delivers them.
  void play(const std::vector<float>& samples, double rate) {
    constexpr std::size_t piece = 1024;
    for (std::size_t from = 0; from < samples.size() && on; from += piece)
      emit heard({samples.begin() + static_cast<std::ptrdiff_t>(from),
                  samples.begin() + static_cast<std::ptrdiff_t>(std::min(samples.size(), from + piece))},
                 rate);
  }
};

struct ToneRoom : RoomOfJobs {
  PlayedSound* sound = nullptr;
  std::unique_ptr<ToneModel> tone;

  ToneRoom() {
    auto made = std::make_unique<PlayedSound>();
    sound = made.get();
    tone = std::make_unique<ToneModel>(device->work(), std::move(made));
  }
  bool settle() const {
    return waitUntil([&] { return tone->state() == ToneModel::Known || tone->state() == ToneModel::Unknown; });
  }
  QUrl wav(const char* name, const std::vector<float>& samples, double rate) const {
    Recording recording;
    recording.samples = samples;
    recording.rate = rate;
    return file(name, wav_of(recording));
  }
};

std::vector<float> taps(double hz, double level_db = 20) {
  made::Tap tap;
  tap.hz = hz;
  tap.level_db = level_db;
  return made::sounds_of(tap, 5, 3, true);
}

}  // namespace

TEST_CASE("three taps are heard, their level told, and the tone given with its band and how sure it is") {
  ToneRoom room;
  QSignalSpy found(room.tone.get(), &ToneModel::found);
  room.tone->listen(590);
  CHECK(room.tone->state() == ToneModel::Listening);
  CHECK(room.sound->on);
  CHECK(room.tone->level() == ToneModel::Silent);
  CHECK(room.tone->secondsLeft() == 6);
  room.sound->play(taps(603.7), 22'050);
  CHECK(room.tone->state() == ToneModel::Listening);
  CHECK(room.tone->level() == ToneModel::Fine);
  CHECK(room.tone->loudness() > 0.3);
  CHECK(room.tone->secondsLeft() == 4);
  room.tone->enough();
  CHECK_FALSE(room.sound->on);
  REQUIRE(room.settle());
  REQUIRE(room.tone->state() == ToneModel::Known);
  CHECK(found.count() == 1);
  CHECK(room.tone->hertz().toDouble() == Approx(603.7).epsilon(0.005));
  CHECK(room.tone->doubt() > 0);
  CHECK(room.tone->title().contains(room.tone->hertz()));
  CHECK(room.tone->text().contains("nine times of ten"));
  CHECK(room.tone->text().contains("sure"));
  room.tone->forget();
  CHECK(room.tone->state() == ToneModel::Idle);
  CHECK(room.tone->hertz().isEmpty());
}

TEST_CASE("it stops by itself after some seconds and never keeps more") {
  ToneRoom room;
  room.tone->listen(0);
  std::vector<float> long_sound = taps(560);
  while (long_sound.size() < 60'000) long_sound.insert(long_sound.end(), long_sound.begin(), long_sound.begin() + 22'050 / 2);
  while (room.sound->on) room.sound->play(long_sound, 22'050);
  CHECK(room.sound->stopped == 1);
  REQUIRE(room.settle());
}

TEST_CASE("what is silent, clipped, too short or no tone is said plainly, with no number") {
  ToneRoom room;
  const auto heard = [&](const std::vector<float>& samples, double rate) {
    room.tone->listen(0);
    room.sound->play(samples, rate);
    room.tone->enough();
    REQUIRE(room.settle());
    CHECK(room.tone->state() == ToneModel::Unknown);
    CHECK(room.tone->hertz().isEmpty());
    CHECK(room.tone->title() == "The tone is not known");
    return room.tone->text();
  };
  CHECK(heard(std::vector<float>(30'000, 0.0F), 22'050).contains("Nothing was heard"));
  std::vector<float> loud = taps(600);
  for (float& one : loud) one = std::clamp(4 * one, -1.0F, 1.0F);
  const QString clipped = heard(loud, 22'050);
  CHECK(clipped.contains("too loud"));
  CHECK(heard({0.1F, 0.2F, 0.1F}, 22'050).contains("too short"));
  CHECK(heard({}, 22'050).size() > 10);
  // A voice or a hum dies away as no bed does.
  std::vector<float> hum(66'000);
  for (std::size_t i = 0; i < hum.size(); ++i)
    hum[i] = static_cast<float>(0.4 * std::sin(2 * std::numbers::pi * 610 * static_cast<double>(i) / 22'050));
  CHECK(heard(hum, 22'050).size() > 10);
  CHECK(heard(taps(600, -25), 22'050).size() > 10);
  std::vector<float> broken = taps(600);
  broken[1000] = std::numeric_limits<float>::quiet_NaN();
  CHECK(heard(broken, 22'050).contains("no number"));
  // The level says so while it is going on.
  room.tone->listen(0);
  room.sound->play(loud, 22'050);
  CHECK(room.tone->level() == ToneModel::Clipped);
  room.tone->listen(0);
  room.sound->play(std::vector<float>(5'000, 0.0F), 22'050);
  CHECK(room.tone->level() == ToneModel::Silent);
  CHECK(room.tone->loudness() == 0);
}

TEST_CASE("without a microphone, with one that is held, taken away or dumb, it says so and offers the recording") {
  ToneRoom room;
  room.sound->answer = SoundRecorder::Start::noDevice;
  room.tone->listen(600);
  CHECK(room.tone->state() == ToneModel::Unknown);
  CHECK(room.tone->deaf());
  CHECK(room.tone->text().contains("no microphone"));
  CHECK(room.tone->text().contains("WAV"));
  room.sound->answer = SoundRecorder::Start::refused;
  room.tone->listen(600);
  CHECK(room.tone->text().contains("can’t be used"));
  room.sound->answer = SoundRecorder::Start::listening;
  room.tone->listen(600);
  CHECK_FALSE(room.tone->deaf());
  emit room.sound->broke();
  CHECK(room.tone->state() == ToneModel::Unknown);
  CHECK_FALSE(room.sound->on);
  CHECK(room.tone->text().contains("taken away"));
  room.tone->listen(600);
  REQUIRE(room.settle());
  CHECK(room.tone->text().contains("delivers nothing"));
  // The real one on whatever this machine has: it starts or says why, and stops.
  Microphone microphone;
  (void)microphone.start();
  microphone.stop();
}

TEST_CASE("a recording is heard in place of the microphone; what is none is a named fault") {
  ToneRoom room;
  room.tone->hearFile(room.wav("taps.wav", taps(571.2), 22'050), 580);
  CHECK(room.tone->state() == ToneModel::Finding);
  REQUIRE(room.settle());
  REQUIRE(room.tone->state() == ToneModel::Known);
  CHECK(room.tone->hertz().toDouble() == Approx(571.2).epsilon(0.005));
  room.tone->hearFile(QUrl::fromLocalFile(QString::fromStdString((room.folder / "none.wav").string())), 0);
  REQUIRE(room.settle());
  CHECK(room.tone->text().contains("can't be read"));
  room.tone->hearFile(QUrl::fromLocalFile(QString::fromStdString((room.folder / "").string())), 0);
  REQUIRE(room.settle());
  CHECK(room.tone->text().contains("can't be read"));
  room.tone->hearFile(room.file("bad.wav", Bytes(40, 7)), 0);
  REQUIRE(room.settle());
  CHECK(room.tone->state() == ToneModel::Unknown);
  CHECK(room.tone->text().contains("bad.wav"));
  // What was asked before is not answered any more.
  room.tone->hearFile(room.wav("taps.wav", taps(571.2), 22'050), 580);
  room.tone->forget();
  QSignalSpy found(room.tone.get(), &ToneModel::found);
  room.tone->hearFile(room.wav("other.wav", taps(640), 22'050), 0);
  REQUIRE(room.settle());
  CHECK(room.tone->hertz().toDouble() == Approx(640).epsilon(0.005));
  CHECK(found.count() == 1);
}

TEST_CASE("every form in which devices deliver samples is read, the first channel of several, and none beyond the last whole frame") {
  const auto bytes = [](auto value) { return QByteArray(reinterpret_cast<const char*>(&value), sizeof value); };
  QAudioFormat format;
  format.setSampleRate(48'000);
  format.setChannelCount(2);
  format.setSampleFormat(QAudioFormat::Int16);
  CHECK(firstChannel(bytes(qint16{16'384}) + bytes(qint16{5}) + bytes(qint16{-32'768}) + bytes(qint16{7}) + "x", format) ==
        std::vector<float>{0.5F, -1.0F});
  format.setSampleFormat(QAudioFormat::Float);
  CHECK(firstChannel(bytes(0.25F) + bytes(9.0F), format) == std::vector<float>{0.25F});
  format.setSampleFormat(QAudioFormat::Int32);
  CHECK(firstChannel(bytes(qint32{1 << 30}) + bytes(qint32{0}), format) == std::vector<float>{0.5F});
  format.setSampleFormat(QAudioFormat::UInt8);
  CHECK(firstChannel(bytes(quint8{192}) + bytes(quint8{0}), format) == std::vector<float>{0.5F});
  CHECK(firstChannel("abc", QAudioFormat()).empty());
}

TEST_CASE("a tone that was heard is kept as a reading of that racket and counts from then on") {
  ToneRoom room;
  const auto made = room.receive(room.addPlayer(named("Varga", "Ilka")), day_wish(), 12, room.clock.now() + 3 * kHour);
  BedModel bed(room.device->work());
  bed.show(hex(made.book), hex(made.job));
  bed.setWatched(true);
  REQUIRE(waitUntil([&] { return bed.ready() && !bed.busy(); }));
  const double wanted = bed.toneNow() * 0.97;
  room.tone->hearFile(room.wav("taps.wav", taps(wanted), 22'050), bed.toneNow());
  REQUIRE(room.settle());
  REQUIRE(room.tone->state() == ToneModel::Known);
  bed.hear(room.tone->hertz(), room.tone->doubt());
  REQUIRE(waitUntil([&] { return !bed.busy(); }));
  CHECK(bed.heard()["lines"].toStringList().size() == 3);
  CHECK_FALSE(bed.keepTone("loud", "", "kept"));
  CHECK(bed.keepTone(room.tone->hertz(), "listened to", "kept"));
  const auto record = must(load_player(room.ledger(), made.book));
  const auto readings = readings_of(record, made.job);
  REQUIRE(readings.size() == 1);
  CHECK(readings[0]->now.what == ReadingKind::tone);
  CHECK(readings[0]->now.value->unit == Unit::hertz);
  CHECK(readings[0]->now.value->amount.to_double() == Approx(wanted).epsilon(0.005));
  CHECK(readings[0]->now.note == "listened to");
  REQUIRE(waitUntil([&] { return !bed.busy() && bed.data().contains("1 reading"); }));
}
