#pragma once

#include "sync/net/exchange_host.h"
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
    host = must(ExchangeHost::start(*station, std::move(options)));
  }
  [[nodiscard]] PairingCode invite(Role role) {
    const auto invitation = must(station->devices().invite(role));
    return {{"127.0.0.1", host->port()}, host->fingerprint(), invitation.secret};
  }
};

}  // namespace weavelog::testing
