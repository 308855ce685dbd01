#pragma once

#include <QFile>
#include <QImage>
#include <QObject>
#include <QTemporaryDir>
#include <QUrl>

#include "app-qml/view/app_device.h"
#include "app-qml/view/photos_model.h"
#include "core/bed/wav.h"
#include "core/desk/bench.h"
#include "core/desk/inspection.h"
#include "core/desk/machines.h"
#include "core/desk/photo.h"
#include "core/desk/prices.h"
#include "core/desk/tag_code.h"
#include "core/model/event.h"
#include "tests/core/bed/made_sound.h"
#include "tests/ui/away_tablet.h"

// What a test of the room's screens finds on the device: an event with rackets, and answers that do not
// agree.
class Jobs : public QObject {
  Q_OBJECT

 public:
  void useDevice(AppDevice& device) { device_ = &device; }

  // One racket of a new player of that name, received today; true if it is written.
  Q_INVOKABLE bool receive(const QString& family, int tag) { return take(family, tag, weavelog::Rush::none, 60 * 60'000); }
  // The same as a rush from the court.
  Q_INVOKABLE bool rush(const QString& family, int tag) { return take(family, tag, weavelog::Rush::on_court, 40 * 60'000); }
  // The newest racket's mains tension is 26 kg here and 23 kg for a tablet that was elsewhere.
  Q_INVOKABLE bool disagree() {
    const AwayTablet other(device_->ledger(), book_);
    if (!other.there || !say(*other.there, 23) || !say(device_->ledger(), 26)) return false;
    const bool there = other.meet();
    device_->work().refresh();
    return there;
  }
  // A tablet that heard of both answers closes the newest racket's question.
  Q_INVOKABLE bool answeredElsewhere(int kilograms) {
    const bool there = AwayTablet(device_->ledger(), book_).close(kilograms);
    device_->work().refresh();
    return there;
  }
  // Corvin took the player's answer about the newest racket's newest finding: it is strung all the same.
  Q_INVOKABLE bool frameAnsweredElsewhere() {
    const AwayTablet other(device_->ledger(), book_);
    const auto record = other.there ? weavelog::load_player(*other.there, book_) : weavelog::fail(weavelog::FaultCode::not_found, "");
    if (!record || record->findings.empty()) return false;
    const weavelog::FrameAnswer said{weavelog::FrameRemedy::string_anyway, record->person.now.family_name, "Corvin", device_->ledger().wall().now()};
    const bool there = other.write(weavelog::answer_finding(*record, record->findings.back().id(), said)) && other.meet();
    device_->work().refresh();
    return there;
  }
  // Somebody else's tablet moves the newest racket on, and the two meet.
  Q_INVOKABLE bool takenElsewhere(const QString& by, int stage, const QString& reason = {}) {
    const AwayTablet other(device_->ledger(), book_);
    const auto record = other.there ? weavelog::load_player(*other.there, book_) : weavelog::fail(weavelog::FaultCode::not_found, "");
    if (!record) return false;
    const weavelog::StageStep step{static_cast<weavelog::Stage>(stage), by.toStdString(), reason.toStdString(), device_->ledger().wall().now()};
    const bool there = other.write(weavelog::take_step(*record, std::span(&job_, 1), step)) && other.meet();
    device_->work().refresh();
    return there;
  }
  // A recording of three taps on a bed of that tone.
  Q_INVOKABLE QUrl taps(double hertz) {
    weavelog::made::Tap tap;
    tap.hz = hertz;
    const weavelog::Recording recording{weavelog::made::sounds_of(tap, 5, 3, true), tap.rate};
    const auto bytes = weavelog::wav_of(recording);
    QFile out(sounds_.filePath("taps.wav"));
    if (!out.open(QIODevice::WriteOnly)) return {};
    out.write(reinterpret_cast<const char*>(bytes.data()), static_cast<qint64>(bytes.size()));
    return QUrl::fromLocalFile(out.fileName());
  }
  // A picture of the newest racket, on this tablet or on another one only.
  Q_INVOKABLE bool photograph(bool here) {
    QImage image(640, 480, QImage::Format_RGB32);
    image.fill(here ? Qt::darkCyan : Qt::darkRed);
    const QTemporaryDir folder;
    const QString path = folder.filePath("racket.png");
    if (!image.save(path)) return false;
    if (here) {
      PhotosModel photos(*device_);
      photos.setBook(book());
      photos.setJob(job());
      return photos.add(QUrl::fromLocalFile(path), "kept");
    }
    weavelog::PhotoTaken taken;
    taken.content = weavelog::digest_of(weavelog::as_bytes(path.toStdString()));
    taken.media_type = "image/jpeg";
    taken.size = 5000;
    taken.note = "seen elsewhere";
    taken.at = device_->ledger().wall().now() - 60'000;
    const auto record = weavelog::load_player(device_->ledger(), book_);
    if (!record) return false;
    const auto draft = weavelog::put_photo(*record, job_, taken);
    return draft && device_->work().commit(*draft, "");
  }
  // What a scanner types from a tag of today's event.
  Q_INVOKABLE QString code(int tag) const {
    const auto code = weavelog::tag_code(device_->work().event(), tag);
    return code ? QString::fromStdString(*code) : QString();
  }
  Q_INVOKABLE QString book() const { return QString::fromStdString(book_.hex()); }
  Q_INVOKABLE QString job() const { return QString::fromStdString(job_.hex()); }
  // What the answer, or who lets it go on, says of the newest racket's newest finding.
  Q_INVOKABLE QString answered() const {
    const auto record = weavelog::load_player(device_->ledger(), book_);
    if (!record || record->findings.empty()) return {};
    const auto& now = record->findings.back().now;
    return QString::fromStdString(std::string(weavelog::name_of_choice(now.answer)) + ", " + now.answered_by + ", " + now.answer_taken_by +
                                  (now.override_by.empty() ? "" : "; " + now.override_by + ": " + now.override_reason));
  }
  // The newest racket goes so far, whatever lies between.
  Q_INVOKABLE bool bringTo(int stage) {
    const auto record = weavelog::load_player(device_->ledger(), book_);
    const weavelog::StageStep step{static_cast<weavelog::Stage>(stage), "Bo", "as the test needs it", device_->ledger().wall().now()};
    if (!record) return false;
    const auto draft = weavelog::take_step(*record, std::span(&job_, 1), step);
    const bool written = draft && device_->ledger().append(*draft).has_value();
    device_->work().refresh();
    return written;
  }
  // The event charges in euro: labour 20, an overgrip 3.50, stencils for nothing.
  Q_INVOKABLE bool priceList() {
    needEvent();
    auto& ledger = device_->ledger();
    const auto write = [&](const weavelog::Outcome<weavelog::Draft>& draft) {
      return draft && (draft->empty() || ledger.append(*draft).has_value());
    };
    const auto event = [&] { return *weavelog::load_event(ledger, device_->work().event()); };
    const bool written = write(weavelog::set_currency(ledger, event(), "EUR")) && write(weavelog::set_price(event(), "labour", 2000)) &&
                         write(weavelog::set_price(event(), "overgrip", 350)) && write(weavelog::set_price(event(), "stencil", 0));
    device_->work().refresh();
    return written;
  }
  // A machine of the room that pulls so many kilograms.
  Q_INVOKABLE bool machine(const QString& name, int most) {
    needEvent();
    auto& ledger = device_->ledger();
    const auto event = device_->work().event();
    weavelog::Machine wanted;
    wanted.name = name.toStdString();
    wanted.kind = weavelog::MachineKind::constant_pull;
    wanted.max_tension = weavelog::Quantity{{most, 0}, weavelog::Unit::kilogram_force};
    const auto draft = weavelog::add_machine(event, weavelog::load_machines(ledger, event), wanted, ledger.wall().now());
    const bool written = draft && ledger.append(*draft).has_value();
    device_->work().refresh();
    return written;
  }
  // The newest racket is of that model, was put on the first machine by Bo, and its bed reads so many kg/cm.
  Q_INVOKABLE bool stringAndRead(const QString& model, double kilograms) {
    auto& ledger = device_->ledger();
    auto record = weavelog::load_player(ledger, book_);
    const auto machines = weavelog::load_machines(ledger, device_->work().event());
    if (!record || record->rackets.empty() || machines.empty()) return false;
    weavelog::Draft edit(book_, weavelog::kPlayerBook, weavelog::kActEdit);
    auto racket = record->rackets.front().now;
    racket.model = model.toStdString();
    weavelog::put_changes(edit, record->rackets.front().seen, racket);
    weavelog::StageStep mount{weavelog::Stage::on_machine, "Bo", "as the test needs it", ledger.wall().now()};
    mount.machine = machines.front().id();
    const auto mounted = weavelog::take_step(*record, std::span(&job_, 1), mount);
    weavelog::Reading reading;
    reading.what = weavelog::ReadingKind::bed_stiffness;
    reading.value = weavelog::Quantity{weavelog::Decimal::rounded(kilograms, 2), weavelog::Unit::kilogram_force_per_centimetre};
    reading.at = ledger.wall().now();
    const auto read = weavelog::put_reading(*record, job_, reading);
    const bool written = ledger.append(edit) && mounted && ledger.append(*mounted) && read && ledger.append(*read);
    device_->work().refresh();
    return written;
  }
  // On which machine the newest racket is, by name.
  Q_INVOKABLE QString machineNow() const {
    const auto record = weavelog::load_player(device_->ledger(), book_);
    return record ? QString::fromStdString(weavelog::machine_of(*record, job_).name) : QString();
  }
  // The stage of the newest racket, as its number.
  Q_INVOKABLE int stage() const {
    const auto record = weavelog::load_player(device_->ledger(), book_);
    return record ? static_cast<int>(record->stage_of(job_).stage) : -1;
  }
  // How many entries the newest racket's book has.
  Q_INVOKABLE int entries() const {
    int count = 0;
    for (const auto& head : device_->ledger().heads(book_)) count += static_cast<int>(head.seq);
    return count;
  }
  Q_INVOKABLE QString mains() const {
    const auto state = device_->ledger().entity(book_, job_);
    const auto job = weavelog::from_state<weavelog::Job>(*state);
    return QString::fromStdString(weavelog::text_of(*job.mains_tension));
  }

 private:
  bool take(const QString& family, int tag, weavelog::Rush rush, weavelog::UnixMs within) {
    needEvent();
    auto& ledger = device_->ledger();
    const auto now = ledger.wall().now();
    weavelog::Draft draft(ledger.create_book_id(), weavelog::kPlayerBook, weavelog::kActDropOff);
    weavelog::Person person;
    person.family_name = family.toStdString();
    (void)weavelog::put_new(draft, person, now);
    weavelog::Racket racket;
    racket.label = "1";
    weavelog::Job job;
    job.racket = weavelog::put_new(draft, racket, now).id;
    job.event = device_->work().event();
    job.at = now;
    job.ready_by = now + within;
    job.tag_number = tag;
    job.rush = rush;
    job.mains_string = "Tarnbrook Silk";
    job.racket_stencil = "open ring";
    job.racket_ink = "red";
    job.mains_tension = weavelog::Quantity{{245, 1}, weavelog::Unit::kilogram_force};
    job.crosses_tension = weavelog::Quantity{{235, 1}, weavelog::Unit::kilogram_force};
    const auto made = weavelog::put_new(draft, job, now);
    weavelog::StageMark mark;
    mark.job = made.id;
    mark.stage = weavelog::Stage::received;
    mark.at = now;
    (void)weavelog::put_new(draft, mark, now);
    const bool written = ledger.append(draft).has_value();
    book_ = draft.book();
    job_ = made.id;
    device_->work().refresh();
    return written;
  }
  void needEvent() {
    if (device_->work().event()) return;
    auto& ledger = device_->ledger();
    weavelog::Draft draft(ledger.create_book_id(), weavelog::kEventBook, weavelog::kActNewEvent);
    weavelog::EventInfo info;
    info.name = "Harbour Open";
    info.first_day = "2031-05-26";
    (void)weavelog::put_new(draft, info, ledger.wall().now());
    (void)ledger.append(draft);
    device_->chooseEvent(draft.book());
  }
  bool say(weavelog::Ledger& ledger, std::int64_t kilograms) const {
    const auto state = ledger.entity(book_, job_);
    if (!state) return false;
    weavelog::Draft draft(book_, weavelog::kPlayerBook, weavelog::kActEdit);
    draft.put(*state, weavelog::tag_of<weavelog::Job>(&weavelog::Agreed::mains_tension),
              weavelog::Quantity{{kilograms, 0}, weavelog::Unit::kilogram_force});
    return ledger.append(draft).has_value();
  }

  QTemporaryDir sounds_;
  AppDevice* device_ = nullptr;
  weavelog::BookId book_;
  weavelog::EntityId job_;
};
