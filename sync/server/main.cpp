// weavelog-server: the event server. Holds the event's books on disk and brings the tablets of a room together.

#include <spdlog/sinks/stdout_color_sinks.h>
#include <spdlog/spdlog.h>
#include <sys/resource.h>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <csignal>
#include <iostream>
#include <map>
#include <mutex>
#include <qrcodegen/qrcodegen.hpp>

#include "core/base/freed_memory.h"
#include "core/base/iso_time.h"
#include "core/desk/event_book.h"
#include "core/desk/keep_rule.h"
#include "core/desk/photo.h"
#include "core/model/fields.h"
#include "core/model/tables.h"
#include "core/model/queries.h"
#include "core/people/consent.h"
#include "sync/net/exchange_host.h"
#include "sync/net/nearby.h"
#include "sync/net/ticker.h"
#include "sync/server/board.h"
#include "sync/trust/proquint.h"
#include "sync/trust/rights.h"

using namespace weavelog;

namespace {

constexpr const char* kUsualName = "Event server";

struct Arguments {
  std::string folder;
  std::string name;  ///< none: the one that the folder keeps
  std::string listen = "0.0.0.0:26110";
  std::string reach;
  std::string board;  ///< none: no board
  std::string board_show = "tag";
  EventInfo event;
  std::vector<std::string> invite;
  int minutes = 15;
  bool json = false;
  bool quiet = false;
  bool unlisted = false;
};

/// Two rows of modules in one line of text.
std::string drawn(const qrcodegen::QrCode& code) {
  constexpr int kQuiet = 2;
  std::string out;
  for (int y = -kQuiet; y < code.getSize() + kQuiet; y += 2) {
    for (int x = -kQuiet; x < code.getSize() + kQuiet; ++x) {
      const bool upper = code.getModule(x, y);
      const bool lower = code.getModule(x, y + 1);
      out += upper ? (lower ? " " : "▄") : (lower ? "▀" : "█");
    }
    out += '\n';
  }
  return out;
}

int complain(const Fault& fault) {
  std::cerr << "weavelog-server: " << fault.message() << '\n';
  return 1;
}

/// The folder's event book; made at the first start.
Outcome<BookId> event_book(Station& station, const Arguments& arguments) {
  const auto books = station.ledger().books(kEventBook);
  if (!books.empty()) return books.front().id;
  EventInfo event = arguments.event;
  if (event.name.empty()) event.name = station.ledger().self().device;
  const auto draft = new_event(station.ledger().create_book_id(), event, station.ledger().wall().now());
  if (!draft) return fail(draft.error());
  if (auto made = station.ledger().append(*draft); !made) return fail(made.error());
  return draft->book();
}

Outcome<> invite(Station& station, const ExchangeHost& host, const Address& reach, Role role, const Arguments& arguments) {
  const auto invitation = station.devices().invite(role, UnixMs{arguments.minutes} * 60'000);
  if (!invitation) return fail(invitation.error());
  const PairingCode code{{reach.host, host.port()}, host.fingerprint(), invitation->secret};
  if (arguments.json) {
    std::cout << R"({"invitation":")" << name_of(role) << R"(","code":")" << code.text() << R"(","words":")"
              << spoken_code(invitation->secret) << R"(","expires":)" << invitation->expires << "}\n"
              << std::flush;
    return {};
  }
  std::cout << "\nTo pair a tablet as " << name_of(role) << " (once, within " << arguments.minutes << " minutes):\n"
            << "  words    " << spoken_code(invitation->secret) << "\n  address  " << code.address.text() << "\n  code     " << code.text()
            << "\n\n"
            << drawn(qrcodegen::QrCode::encodeText(code.text().c_str(), qrcodegen::QrCode::Ecc::MEDIUM)) << std::flush;
  return {};
}

std::string event_name(const Ledger& ledger, const BookId& event) {
  for (const EventRow& row : all_events(ledger))
    if (row.book == event) return row.name;
  return {};
}

/// Tells tablets that ask who is near. A head may rename the event on a tablet, so its name is looked after.
struct Presence {
  std::unique_ptr<NearbyHost> host;
  std::unique_ptr<Ticker> looks;

  Presence(const Ledger& ledger, const ExchangeHost& exchange, const std::string& address, const std::string& name, const BookId& event) {
    NearbyHostOptions options;
    options.address = address;
    options.offer = {ledger.self().key, exchange.fingerprint(), exchange.port(), name, event_name(ledger, event)};
    auto started = NearbyHost::start(std::move(options));
    if (!started) {
      spdlog::warn("tablets can't see that this server is near: {}", started.error().message());
      return;
    }
    host = std::move(*started);
    looks = std::make_unique<Ticker>(std::chrono::seconds(5), [this, &ledger, event, seen = ledger.position()]() mutable {
      try {
        if (ledger.position() == seen) return;
        seen = ledger.position();
        host->set_event(event_name(ledger, event));
      } catch (const std::exception& error) {
        spdlog::warn("the event's name can't be read: {}", error.what());
      }
    });
  }
};

/// Lets players' books go once the event's rule says so and has said so for an hour; looks now and every minute.
class Retention {
 public:
  Retention(Ledger& ledger, const BookId& event) : ledger_(ledger), event_(event), looks_(std::chrono::minutes(1), [this] { look(); }) { look(); }

 private:
  void look() {
    const std::lock_guard guard(mutex_);
    try {
      const bool over = event_is_over(ledger_, event_, ledger_.wall().now()).has_value();
      if (over && !warned_)
        spdlog::warn("it is {}, so the event is over by its rule: players' books are let go in an hour; set the clock if that is wrong",
                     iso_utc(ledger_.wall().now()));
      warned_ = over;
      if (!letting_go_.due(over, LettingGo::Steady::now())) return;
      const auto gone = let_books_go(ledger_, event_, ledger_.wall().now());
      if (!gone)
        spdlog::warn("players' books can't be let go: {}", gone.error().message());
      else if (*gone > 0)
        spdlog::info("the event is over: {} players' books were let go, as its rule says", *gone);
    } catch (const std::exception& error) {
      spdlog::warn("players' books can't be let go: {}", error.what());
    }
  }

  Ledger& ledger_;
  BookId event_;
  std::mutex mutex_;
  LettingGo letting_go_;
  bool warned_ = false;
  Ticker looks_;  // last: it looks at the others
};

/// A crowd needs more descriptors than many systems give at first; what they allow at most may be taken.
void allow_a_crowd() {
  rlimit limit{};
  if (::getrlimit(RLIMIT_NOFILE, &limit) != 0) return;
  limit.rlim_cur = std::min<rlim_t>(limit.rlim_max, std::max<rlim_t>(limit.rlim_cur, 4096));
  ::setrlimit(RLIMIT_NOFILE, &limit);
}

Outcome<> serve(const Arguments& arguments) {
  const auto listen = Address::parse(arguments.listen, true);
  if (!listen) return fail(listen.error());
  const auto reach = arguments.reach.empty() ? listen : Address::parse(arguments.reach);
  if (!reach) return fail(reach.error());
  std::optional<Address> board_at;
  if (!arguments.board.empty()) {
    const auto parsed = board_address(arguments.board, listen->host);
    if (!parsed) return fail(parsed.error());
    board_at = *parsed;
  }
  std::vector<Role> roles;
  for (const auto& name : arguments.invite) {
    const auto role = parse_role(name);
    if (!role) return fail(role.error());
    roles.push_back(*role);
  }

  StationOptions options;
  options.folder = arguments.folder;
  options.device_name = arguments.name;
  options.usual_name = kUsualName;
  options.registry = &model_registry();
  options.projections = {std::make_shared<ModelTables>()};
  auto station = Station::open(std::move(options));
  if (!station) return fail(station.error());
  const std::string name = (*station)->ledger().self().device;
  if (const auto& former = (*station)->former_name())
    spdlog::warn("this server was called \"{}\" and is \"{}\" from now on", *former, name);
  const auto certificate = load_or_create_certificate((*station)->folder() / "server.pem");
  if (!certificate) return fail(certificate.error());
  const auto event = event_book(**station, arguments);
  if (!event) return fail(event.error());

  ExchangeHostOptions host_options;
  host_options.address = listen->host;
  host_options.port = listen->port;
  host_options.certificate = *certificate;
  host_options.event = *event;
  host_options.may_leave = [&ledger = (*station)->ledger(), room = *event](const BookId& book, BookKind kind) {
    return may_cross(ledger, book, kind, room);
  };
  host_options.leaves_by = [&ledger = (*station)->ledger(), room = *event] { return LeaveRule{room, crossing_mark(ledger, room)}; };
  host_options.may_stay = [&ledger = (*station)->ledger()](const BookId& book, BookKind kind, const BookId& room, bool settled) {
    return may_stay(ledger, book, kind, room, settled);
  };
  host_options.rights = rights_in(*event);
  host_options.over = [&ledger = (*station)->ledger(), room = *event] { return event_is_over(ledger, room, ledger.wall().now()); };
  host_options.names_content = [&ledger = (*station)->ledger()](const BookId& book, const Digest& content) { return names_photo(ledger, book, content); };
  // Once for each book of a session: the status comes with every step.
  struct LeftOut {
    std::uint64_t not_kept = 0, not_begun = 0;
  };
  host_options.on_status = [said = std::map<PublicKey, LeftOut>()](const SessionStatus& status) mutable {
    const auto known = said.find(status.peer.key);
    const LeftOut before = known == said.end() ? LeftOut{} : known->second;
    if (status.not_kept > before.not_kept)
      spdlog::warn("{} gave {} books whose players did not agree to be kept here; they were let go", status.peer.device, status.not_kept);
    if (status.not_begun > before.not_begun)
      spdlog::warn("{} brought {} books of other events, which only a head's device may begin here; they were left out", status.peer.device,
                   status.not_begun);
    // Of whom there is nothing to say nothing is kept: anybody can connect.
    if (status.not_kept + status.not_begun == 0)
      said.erase(status.peer.key);
    else
      said.insert_or_assign(status.peer.key, LeftOut{status.not_kept, status.not_begun});
    if (status.state == SessionState::agreed)
      spdlog::info("{} and this server agree on {} books", status.peer.device, status.agreed ? status.agreed->books : 0);
  };
  auto host = ExchangeHost::start(**station, std::move(host_options));
  if (!host) return fail(host.error());

  Retention retention((*station)->ledger(), *event);

  std::unique_ptr<BoardHost> board;
  if (board_at) {
    const BoardShow show = arguments.board_show == "initials" ? BoardShow::initials : BoardShow::tag;
    auto started = start_board((*station)->ledger(), *event, show, *board_at);
    if (!started) return fail(started.error());
    board = std::move(*started);
  }

  std::optional<Presence> presence;
  if (!arguments.unlisted) presence.emplace((*station)->ledger(), **host, listen->host, name, *event);

  if (arguments.json) {
    std::cout << R"({"listening":")" << listen->host << R"(","port":)" << (*host)->port() << R"(,"fingerprint":")"
              << to_hex((*host)->fingerprint()) << "\"}\n"
              << std::flush;
  } else {
    std::cout << name << " listens on " << Address{listen->host, (*host)->port()}.text() << "; data in "
              << (*station)->folder().string() << "; end with Ctrl-C\ncertificate "
              << fingerprint_words((*host)->fingerprint()) << '\n'
              << std::flush;
  }
  if (board) {
    const Address shown{arguments.reach.empty() ? board_at->host : reach->host, board->port()};
    if (arguments.json)
      std::cout << R"({"board":"http://)" << shown.text() << R"(/","port":)" << board->port() << "}\n" << std::flush;
    else
      std::cout << "board for the lounge: http://" << shown.text() << "/\n" << std::flush;
  }
  // Somebody has to be able to begin: the first start invites a head.
  if (roles.empty() && (*station)->devices().devices().empty()) roles.push_back(Role::head);
  for (const Role role : roles)
    if (auto invited = invite(**station, **host, *reach, role, arguments); !invited) return invited;

  // The signals were blocked before any thread began, so that this wait gets them.
  sigset_t signals;
  sigemptyset(&signals);
  sigaddset(&signals, SIGINT);
  sigaddset(&signals, SIGTERM);
  int got = 0;
  sigwait(&signals, &got);
  spdlog::info("stopping");
  presence.reset();
  board.reset();
  host->reset();
  return {};
}

}  // namespace

int main(int argc, char** argv) {
  keep_freed_memory();
  Arguments arguments;
  CLI::App app{"The event server of a stringing room: holds the event's books and brings its tablets together.", "weavelog-server"};
  app.option_defaults()->always_capture_default();
  app.add_option("--data", arguments.folder, "Folder for the database and keys; made if it is missing")->required();
  app.add_option("--name", arguments.name, "Name that tablets show for this server from now on; the folder keeps it (at first: " + std::string(kUsualName) + ")");
  app.add_option("--listen", arguments.listen, "ADDRESS:PORT to listen on; port 0 takes a free one");
  app.add_option("--reach", arguments.reach, "ADDRESS under which tablets reach this machine, for the codes (default: that of --listen)");
  app.add_option("--event", arguments.event.name, "Name of the event, used at the first start (default: the server's name)");
  app.add_option("--place", arguments.event.place, "Where the event is, used at the first start");
  app.add_option("--first-day", arguments.event.first_day, "YYYY-MM-DD, used at the first start");
  app.add_option("--last-day", arguments.event.last_day, "YYYY-MM-DD, used at the first start");
  app.add_option("--time-zone", arguments.event.time_zone, "IANA name, used at the first start");
  app.add_option("--currency", arguments.event.currency, "ISO 4217 code, used at the first start");
  app.add_option("--keep-days", arguments.event.keep_days,
                 "Let players' books go so many days after the last day, used at the first start (default: keep them; needs --last-day)")
      ->check(CLI::Range(std::int64_t{0}, kMostKeepDays));
  app.add_option("--invite", arguments.invite, "Show a pairing code for a head, desk, stringer or reader; may be given several times");
  app.add_option("--minutes", arguments.minutes, "How long the codes are good")->check(CLI::Range(1, 7 * 24 * 60));
  app.add_option("--board", arguments.board,
                 "PORT or ADDRESS:PORT of a web page for the lounge that shows which rackets are ready; none unless given");
  app.add_option("--board-show", arguments.board_show, "By what people find their rackets on the board: tag or initials")
      ->check(CLI::IsMember({"tag", "initials"}));
  app.add_flag("--unlisted", arguments.unlisted,
               "Do not answer tablets that ask who is near (on UDP, at the port of --listen); they need the address then");
  app.add_flag("--json", arguments.json, "Say everything as lines of JSON");
  app.add_flag("--quiet", arguments.quiet, "Log warnings only");
  app.footer("Example: weavelog-server --data /var/lib/weavelog --name \"Harbour desk\" --event \"Harbour Open\" --invite desk\n"
             "Health:  GET https://ADDRESS:PORT/health");
  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    if (error.get_exit_code() == 0) return app.exit(error);
    std::cerr << "weavelog-server: " << error.what() << "; see weavelog-server --help\n";
    return 2;
  }
  sigset_t signals;
  sigemptyset(&signals);
  sigaddset(&signals, SIGINT);
  sigaddset(&signals, SIGTERM);
  pthread_sigmask(SIG_BLOCK, &signals, nullptr);
  std::signal(SIGPIPE, SIG_IGN);
  allow_a_crowd();
  // The log goes to standard error, so that what is said on standard output can be read by scripts.
  spdlog::set_default_logger(spdlog::stderr_color_mt("weavelog-server"));
  spdlog::set_level(arguments.quiet ? spdlog::level::warn : spdlog::level::info);
  const auto served = serve(arguments);
  return served ? 0 : complain(served.error());
}
