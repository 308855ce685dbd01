#pragma once

#include <QString>

#include "core/desk/keep_rule.h"
#include "core/people/consent.h"
#include "sync/net/exchange_host.h"
#include "sync/trust/rights.h"
#include "tests/support/rooms.h"
#include "tests/support/temporary_folder.h"

namespace weavelog::testing {

/// An event server in this process, over TLS on loopback.
struct EventServer {
  TemporaryFolder folder;
  std::unique_ptr<Station> station;
  std::unique_ptr<ExchangeHost> host;
  ServerCertificate certificate;
  BookId event;

  EventServer() {
    StationOptions options;
    options.folder = folder / "server";
    options.device_name = "Harbour server";
    options.registry = &model_registry();
    options.projections = {std::make_shared<ModelTables>()};
    station = must(Station::open(std::move(options)));
    certificate = must(load_or_create_certificate(station->folder() / "server.pem"));
    event = station->ledger().create_book_id();
    Draft draft(event, kEventBook, kActNewEvent);
    EventInfo info;
    info.name = "Harbour";
    info.first_day = "2031-05-26";
    info.last_day = "2099-06-08";
    (void)put_new(draft, info, station->ledger().wall().now());
    (void)must(station->ledger().append(draft));
    start(0);
  }
  void start(std::uint16_t port) {
    ExchangeHostOptions options;
    options.address = "127.0.0.1";
    options.port = port;
    options.certificate = certificate;
    options.event = event;
    options.may_leave = [this](const BookId& book, BookKind kind) { return may_cross(station->ledger(), book, kind, event); };
    options.may_stay = [this](const BookId& book, BookKind kind, const BookId& room, bool settled) { return may_stay(station->ledger(), book, kind, room, settled); };
    options.leaves_by = [this] { return LeaveRule{event, crossing_mark(station->ledger(), event)}; };
    options.over = [this] { return event_is_over(station->ledger(), event, station->ledger().wall().now()); };
    options.rights = rights_in(event);
    host = must(ExchangeHost::start(*station, std::move(options)));
  }
  [[nodiscard]] PairingCode invite(Role role) {
    const auto invitation = must(station->devices().invite(role));
    return {{"127.0.0.1", host->port()}, host->fingerprint(), invitation.secret};
  }
  /// As a person types it.
  [[nodiscard]] QString codeFor(Role role) { return QString::fromStdString(invite(role).text()); }
};

}  // namespace weavelog::testing
