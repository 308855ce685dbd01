#include "tests/bench/room.h"

#include <stdlib.h>

#include "core/model/fields.h"
#include "core/model/tables.h"
#include "core/people/consent.h"
#include "core/store/database.h"
#include "sync/trust/certificate.h"
#include "sync/trust/key_file.h"

namespace weavelog::bench {
namespace {

LedgerOptions ledger_options(const std::string& name) {
  LedgerOptions options;
  options.registry = &model_registry();
  options.device_name = name;
  options.projections = {std::make_shared<ModelTables>()};
  return options;
}

/// What may leave goes by consent, as in the real programs.
template <class Options>
void go_by_consent(Options& options, const Ledger& ledger) {
  options.may_leave = [&ledger](const BookId& book, BookKind kind) { return may_cross(ledger, book, kind); };
  options.leaves_by = [] { return LeaveRule{}; };
}

}  // namespace

std::unique_ptr<Station> open_station(const std::filesystem::path& folder, const std::string& name) {
  StationOptions options;
  options.folder = folder;
  options.device_name = name;
  options.registry = &model_registry();
  options.projections = {std::make_shared<ModelTables>()};
  return must(Station::open(std::move(options)));
}

void write_large(const std::filesystem::path& folder, const std::string& name, std::size_t players,
                 std::size_t jobs_per_player) {
  demo::DemoOptions wanted;
  wanted.players = players;
  wanted.jobs_per_player = jobs_per_player;
  wanted.now = WallClock::system().now();
  const demo::DemoScenario scenario = demo::make_demo(wanted);
  std::filesystem::create_directories(folder);
  ManualClock clock(scenario.past.front().opens);
  LedgerOptions options = ledger_options(name);
  options.file = ":memory:";
  options.clock = &clock;
  options.key = must(load_or_create_key(folder / "device.key"));
  const auto ledger = must(Ledger::open(std::move(options)));
  (void)must(demo::fill_large(scenario, {*ledger, clock}));
  ledger->read(
      [&](Connection& db) { db.raw().backup((folder / "ledger.db").c_str(), SQLite::Database::Save); });
}

Room::Room(const std::filesystem::path& folder, const std::string& name) : desk_(open_station(folder, name)) {
  ExchangeHostOptions options;
  options.address = "127.0.0.1";
  options.port = 0;
  options.certificate = must(load_or_create_certificate(folder / "server.pem"));
  go_by_consent(options, desk_->ledger());
  host_ = must(ExchangeHost::start(*desk_, std::move(options)));
  relay_ = std::make_unique<Relay>(host_->port());
}

PairingCode Room::code() {
  return {{"127.0.0.1", relay_->port()},
          host_->fingerprint(),
          must(desk_->devices().invite(Role::stringer)).secret};
}

ExchangeGuestOptions Room::to_return(Station& guest) {
  KnownHost host = guest.devices().hosts().at(0);
  host.address = {"127.0.0.1", relay_->port()};
  ExchangeGuestOptions options = ExchangeGuest::to_return(host);
  go_by_consent(options, guest.ledger());
  return options;
}

bool has_agreed(const GuestStatus& status) {
  return status.session.state == SessionState::agreed;
}

double exchange(Station& guest, ExchangeGuestOptions options) {
  const auto begin = std::chrono::steady_clock::now();
  double seconds = 0;
  ExchangeGuest connection(guest, std::move(options), {});
  const bool ended = connection.wait(std::chrono::minutes(5), [](const GuestStatus& status) {
    return has_agreed(status) || status.fault.has_value();
  });
  seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
  const GuestStatus status = connection.status();
  if (!ended || !has_agreed(status))
    throw std::runtime_error(status.fault ? status.fault->message() : "the two never agreed");
  return seconds;
}

Quantity change_tension(Ledger& ledger, const BookId& book, std::int64_t halves) {
  const auto states = ledger.entities(book, kSetup);
  Setup wanted = from_state<Setup>(states.at(0));
  const Quantity said{Decimal{200 + halves % 100 * 5, 1}, Unit::kilogram_force};
  wanted.mains_tension = said;
  Draft draft(book, kPlayerBook, kActEdit);
  put_changes(draft, states.at(0), wanted);
  (void)must(ledger.append(draft));
  return said;
}

std::optional<Quantity> tension_of(const Ledger& ledger, const BookId& book) {
  const auto states = ledger.entities(book, kSetup);
  return states.empty() ? std::nullopt : from_state<Setup>(states.front()).mains_tension;
}

std::vector<BookId> player_books(const Ledger& ledger) {
  std::vector<BookId> out;
  for (const BookInfo& book : ledger.books(kPlayerBook)) out.push_back(book.id);
  return out;
}

Scratch::Scratch(const std::filesystem::path& below) {
  std::string pattern = (below / "weavelog-bench-XXXXXX").string();
  if (::mkdtemp(pattern.data()) == nullptr)
    throw std::runtime_error("no folder can be made in " + below.string());
  path_ = pattern;
}

Scratch::~Scratch() {
  std::error_code ignored;
  std::filesystem::remove_all(path_, ignored);
}

}  // namespace weavelog::bench
