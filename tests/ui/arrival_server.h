#pragma once

#include <QObject>
#include <QTemporaryDir>

#include <memory>

#include "app-qml/view/app_device.h"
#include "core/desk/event_book.h"
#include "core/model/fields.h"
#include "core/model/player.h"
#include "core/model/tables.h"
#include "core/people/entry_list.h"
#include "sync/net/exchange_host.h"
#include "sync/trust/proquint.h"

// A real event server for the tests of the screens, and players whom the tablet knows before it arrives there.
class ArrivalServer : public QObject {
  Q_OBJECT

 public:
  void useDevice(AppDevice& device) { device_ = &device; }

  // A server of an event with this entry list. Gives the pairing code for that role (by its number); "" if something went wrong.
  Q_INVOKABLE QString start(const QString& table, int role = 2) {
    weavelog::StationOptions options;
    options.folder = folder_.filePath(QString::number(++count_)).toStdString();
    options.device_name = "Lakeside server";
    options.registry = &weavelog::model_registry();
    options.projections = {std::make_shared<weavelog::ModelTables>()};
    host_.reset();
    auto station = weavelog::Station::open(std::move(options));
    if (!station) return {};
    station_ = std::move(*station);
    auto& ledger = station_->ledger();
    const auto event = ledger.create_book_id();
    weavelog::EventInfo info;
    info.name = "Lakeside Cup";
    info.first_day = "2031-06-02";
    const auto made = weavelog::new_event(event, info, ledger.wall().now());
    if (!made || !ledger.append(*made)) return {};
    const auto list = weavelog::read_entry_list(table.toStdString());
    const auto record = weavelog::load_event(ledger, event);
    if (!list || !record) return {};
    for (const auto& draft : weavelog::import_entries(*record, list->rows, ledger.wall().now()).drafts)
      if (!ledger.append(draft)) return {};
    weavelog::ExchangeHostOptions host;
    host.address = "127.0.0.1";
    host.port = 0;
    host.event = event;
    auto certificate = weavelog::load_or_create_certificate(station_->folder() / "server.pem");
    if (!certificate) return {};
    host.certificate = std::move(*certificate);
    auto started = weavelog::ExchangeHost::start(*station_, std::move(host));
    if (!started) return {};
    host_ = std::move(*started);
    const auto invitation = station_->devices().invite(static_cast<weavelog::Role>(role));
    if (!invitation) return {};
    return QString::fromStdString(weavelog::PairingCode{{"127.0.0.1", host_->port()}, host_->fingerprint(), invitation->secret}.text());
  }
  Q_INVOKABLE void stop() {
    device_->leaveHost();
    host_.reset();
  }
  // The words that the server remembers of its agreement with the tablet.
  Q_INVOKABLE QString words() const {
    const auto number = station_->peers().number_of(device_->ledger().self().key);
    const auto agreement = number ? station_->peers().agreement(*number) : std::nullopt;
    return agreement ? QString::fromStdString(weavelog::agreement_words(agreement->digest)) : QString();
  }
  // Somebody whom the tablet knows, who was strung for so many days ago.
  Q_INVOKABLE bool addKnown(const QString& family, const QString& given, const QString& country, int year, int days, int consent) {
    auto& ledger = device_->ledger();
    weavelog::Draft draft(ledger.create_book_id(), weavelog::kPlayerBook, weavelog::kActNewPlayer);
    weavelog::Person person;
    person.family_name = family.toStdString();
    person.given_name = given.toStdString();
    person.country = country.toStdString();
    person.birth_year = year;
    person.consent = static_cast<weavelog::ConsentChoice>(consent);
    const auto now = ledger.wall().now();
    (void)weavelog::put_new(draft, person, now);
    weavelog::Job job;
    job.at = now - days * std::int64_t{86'400'000};
    job.mains_string = "Tarnbrook Silk";
    job.crosses_string = "Velmora Round";
    job.mains_tension = weavelog::Quantity{{25, 0}, weavelog::Unit::kilogram_force};
    job.crosses_tension = weavelog::Quantity{{24, 0}, weavelog::Unit::kilogram_force};
    (void)weavelog::put_new(draft, job, now);
    return ledger.append(draft).has_value();
  }

 private:
  QTemporaryDir folder_;
  int count_ = 0;
  AppDevice* device_ = nullptr;
  std::unique_ptr<weavelog::Station> station_;
  std::unique_ptr<weavelog::ExchangeHost> host_;  // before what it serves
};
