#pragma once

#include <QFile>
#include <QObject>
#include <QTemporaryDir>
#include <QUrl>

#include "app-qml/view/app_models.h"
#include "core/base/local_time.h"
#include "core/desk/stages.h"
#include "core/model/event.h"
#include "sync/carry/player_card.h"
#include "tests/ui/away_tablet.h"

// What a test of the screens finds on the device: an event, and players with a past.
class Room : public QObject {
  Q_OBJECT

 public:
  void useDevice(AppDevice& device, AppModels& models) {
    device_ = &device;
    models_ = &models;
  }

  // The event of today, where there is none yet.
  Q_INVOKABLE void addEvent() {
    auto& ledger = device_->ledger();
    if (!weavelog::all_events(ledger).empty()) return;
    weavelog::Draft draft(ledger.create_book_id(), weavelog::kEventBook, weavelog::kActNewEvent);
    weavelog::EventInfo info;
    info.name = "Harbour Open";
    info.first_day = "2031-05-26";
    (void)weavelog::put_new(draft, info, ledger.wall().now());
    (void)ledger.append(draft);
    device_->chooseEvent(draft.book());
  }
  // Its last day is so many days from now.
  // An event that another tablet made comes to this one; its days are not said.
  Q_INVOKABLE bool eventComes(const QString& name) {
    const AwayTablet made(device_->ledger(), {}, "Away tablet");
    if (!made.there) return false;
    weavelog::Draft draft(made.there->create_book_id(), weavelog::kEventBook, weavelog::kActNewEvent);
    weavelog::EventInfo info;
    info.name = name.toStdString();
    (void)weavelog::put_new(draft, info, made.there->wall().now());
    const bool came = made.there->append(draft) && device_->ledger().ingest(made.there->missing(draft.book(), {}, 1 << 20), 0);
    device_->work().refresh();
    return came;
  }
  Q_INVOKABLE void endEvent(int days) {
    auto& ledger = device_->ledger();
    for (const auto& state : ledger.entities(device_->work().event(), weavelog::kEvent)) {
      weavelog::Draft draft(state.book, weavelog::kEventBook, weavelog::kActEdit);
      auto info = weavelog::from_state<weavelog::EventInfo>(state);
      info.last_day = weavelog::date_text(ledger.wall().now() / 86'400'000 + days);
      weavelog::put_changes(draft, state, info);
      if (!draft.empty()) (void)ledger.append(draft);
    }
    device_->work().refresh();
  }
  // A table on the disk, as a file dialog would give it.
  Q_INVOKABLE QUrl table(const QString& name, const QString& text) {
    const QString path = folder_.filePath(name);
    QFile file(path);
    if (file.open(QIODevice::WriteOnly)) file.write(text.toUtf8());
    return QUrl::fromLocalFile(path);
  }
  // A stick, as a folder dialog would give it.
  Q_INVOKABLE QUrl stick() const { return QUrl::fromLocalFile(folder_.path()); }
  // The card of a player of another tablet, which nobody here knows.
  Q_INVOKABLE QString strangersCard(const QString& family) const {
    const auto made = made_elsewhere(family);
    return made ? QString::fromStdString(made->text) : QString();
  }
  // The same, signed by this device in that one's name.
  Q_INVOKABLE QString forgedCard(const QString& family) const {
    const auto made = made_elsewhere(family);
    return made ? QString::fromStdString(weavelog::sign_card(weavelog::card_body(made->card), device_->ledger().key())) : QString();
  }
  // Somebody who had so many rackets strung, 25 / 24 kg, and took them away. Ends at the beginning of the
  // desk.
  Q_INVOKABLE void addPastPlayer(const QString& family, int rackets) {
    auto& desk = models_->desk;
    auto& draft = *desk.draft();
    desk.finder()->setTyped(family);
    desk.addPlayer();
    draft.setPerson("given_name", "Ilse");
    draft.setPerson("language", "fr");
    draft.set("mains_string", "Tarnbrook Silk");
    draft.set("crosses_string", "Velmora Round");
    draft.set("mains_tension", "25");
    draft.set("crosses_tension", "24");
    draft.set("mains_gauge", "1.25");
    draft.set("pieces", 2);
    draft.set("knots", 4);
    for (int i = 1; i < rackets; ++i) draft.addRacket();
    const auto book = draft.book();
    desk.readBack();
    desk.confirm(draft.readBack());
    auto record = weavelog::load_player(device_->ledger(), book);
    std::vector<weavelog::EntityId> jobs;
    for (const auto& job : record->jobs) jobs.push_back(job.id());
    const weavelog::StageStep away{weavelog::Stage::collected, "Ines", "handed over",
                                   device_->ledger().wall().now()};
    const auto taken = weavelog::take_step(*record, jobs, away);
    if (taken) (void)device_->ledger().append(*taken);
    device_->work().refresh();
    desk.next();
  }
  // Another tablet and this one each change the mains tension of the player's setup while apart: 26 and 24 kg.
  Q_INVOKABLE bool disagree(const QString& book) { return disagreeOn(book, QStringLiteral("mains_tension")); }
  // The same on another field of the setup, by its name.
  Q_INVOKABLE bool disagreeOn(const QString& book, const QString& field) {
    const auto id = weavelog::BookId::from_hex(book.toStdString()).value_or(weavelog::BookId{});
    auto& here = device_->ledger();
    const AwayTablet other(here, id, "Away tablet");
    if (!other.there) return false;
    // What it says already is no change: so a number is taken back first.
    for (const auto& [ledger, emptied] : {std::pair{other.there.get(), true}, {other.there.get(), false}, {&here, true}, {&here, false}}) {
      const auto record = weavelog::load_player(*ledger, id);
      if (!record || record->setups.empty()) return false;
      const auto& held = record->setups.front();
      weavelog::Setup setup = held.now;
      const bool first = ledger == &here;
      weavelog::for_each_field<weavelog::Agreed>([&](weavelog::FieldTag, std::string_view name, bool, auto member) {
        if (name != field.toStdString()) return;
        auto& target = setup.*member;
        using Type = std::remove_reference_t<decltype(target)>;
        if constexpr (std::is_same_v<Type, std::optional<std::int64_t>>) {
          if (emptied) return target.reset();
        } else if (emptied) {
          return;
        }
        if constexpr (std::is_same_v<Type, std::string>) target = first ? "ring" : "bar";
        else if constexpr (std::is_same_v<Type, std::optional<std::int64_t>>) target = name == "knots" ? (first ? 2 : 4) : (first ? 1 : 2);
        else if constexpr (std::is_same_v<Type, std::optional<weavelog::Quantity>>) target = name == "mains_tension" ? weavelog::Quantity{{first ? 24 : 26, 0}, weavelog::Unit::kilogram_force} : weavelog::Quantity{{first ? 5 : 10, 0}, weavelog::fixed_unit(name)};
      });
      weavelog::Draft draft(id, weavelog::kPlayerBook, weavelog::kActEdit);
      weavelog::put_changes(draft, held.seen, setup);
      if (!draft.empty() && !ledger->append(draft)) return false;
    }
    const bool met = other.meet();
    device_->work().refresh();
    return met && here.open_questions(id).size() == 1;
  }
  // A tablet that heard of both closes that question.
  Q_INVOKABLE bool answeredElsewhere(const QString& book, int kilograms) {
    const auto id = weavelog::BookId::from_hex(book.toStdString()).value_or(weavelog::BookId{});
    const bool there = AwayTablet(device_->ledger(), id, "Away tablet").close(kilograms);
    device_->work().refresh();
    return there;
  }
  Q_INVOKABLE int questionsOf(const QString& book) const {
    return static_cast<int>(device_->ledger().open_questions(weavelog::BookId::from_hex(book.toStdString()).value_or(weavelog::BookId{})).size());
  }
  Q_INVOKABLE int jobsOf(const QString& book) const {
    const auto id = weavelog::BookId::from_hex(book.toStdString());
    const auto record = weavelog::load_player(device_->ledger(), id.value_or(weavelog::BookId{}));
    return record ? static_cast<int>(record->jobs.size()) : 0;
  }
  // What the newest drop-off keeps as confirmed.
  Q_INVOKABLE QString confirmedText(const QString& book) const {
    const auto id = weavelog::BookId::from_hex(book.toStdString());
    const auto record = weavelog::load_player(device_->ledger(), id.value_or(weavelog::BookId{}));
    return record ? QString::fromStdString(record->drop_offs.back().now.confirmed_text) : QString();
  }
  // The number of what the player allows; 0: never answered.
  Q_INVOKABLE int consentOf(const QString& book) const {
    const auto id = weavelog::BookId::from_hex(book.toStdString());
    const auto record = weavelog::load_player(device_->ledger(), id.value_or(weavelog::BookId{}));
    return record ? static_cast<int>(record->person.now.consent) : 0;
  }
  Q_INVOKABLE void clearDrafts() {
    auto& draft = *models_->desk.draft();
    models_->desk.next();
    const auto left = draft.unfinished();
    for (const auto& one : left) draft.discard(one.toMap()["id"].toString());
  }

 private:
  [[nodiscard]] weavelog::Outcome<weavelog::MadeCard> made_elsewhere(const QString& family) const {
    const AwayTablet other(device_->ledger(), {}, "Away tablet");
    if (!other.there) return weavelog::fail(weavelog::FaultCode::io, "no other tablet could be made");
    const auto now = other.there->wall().now();
    weavelog::Draft draft(other.there->create_book_id(), weavelog::kPlayerBook, weavelog::kActNewPlayer);
    weavelog::Person person;
    person.family_name = family.toStdString();
    person.given_name = "Mira";
    (void)weavelog::put_new(draft, person, now);
    weavelog::Setup setup;
    setup.name = "day";
    setup.mains_string = "Tarnbrook Silk";
    setup.mains_tension = weavelog::Quantity{{25, 0}, weavelog::Unit::kilogram_force};
    (void)weavelog::put_new(draft, setup, now);
    if (const auto stored = other.there->append(draft); !stored) return weavelog::fail(stored.error());
    return weavelog::make_card(*other.there, draft.book());
  }

  QTemporaryDir folder_;
  AppDevice* device_ = nullptr;
  AppModels* models_ = nullptr;
};
