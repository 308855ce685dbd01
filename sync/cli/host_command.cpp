// host: this device plays the host for others in the local network, without an event server.

#include <csignal>
#include <map>

#include "core/base/iso_time.h"
#include "core/desk/photo.h"
#include "core/model/queries.h"
#include "core/people/consent.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/net/tablet_host.h"

namespace weavelog::cli {
namespace {

struct HostArguments {
  std::string listen = "0.0.0.0:26110", reach, event;
  std::vector<std::string> players, invite;
  int minutes = 15, seconds = 0;
  bool nothing = false, unlisted = false;
};

Outcome<> invite(const Context& context, TabletHost& host, Role role, int minutes) {
  const auto invited = host.invite(role, UnixMs{minutes} * 60'000);
  if (!invited) return fail(invited.error());
  const std::string words = spoken_code(invited->invitation.secret);
  context.answer(json::object{{"invitation", name_of(role)},
                              {"code", invited->code.text()},
                              {"words", words},
                              {"expires", iso_utc(invited->invitation.expires)}},
                 "to pair a device as " + std::string(name_of(role)) + ", once, within " + std::to_string(minutes) + " minutes: " + words + " at " +
                     invited->code.address.text() + "\n" + invited->code.text());
  return {};
}

Outcome<Ending> host(Context& context, const HostArguments& arguments) {
  const auto listen = Address::parse(arguments.listen, true);
  if (!listen) return fail(listen.error());
  TabletHostOptions options;
  options.address = listen->host;
  options.port = listen->port;
  options.reach = arguments.reach.empty() && listen->host != "0.0.0.0" && listen->host != "::" ? listen->host : arguments.reach;
  options.listed = !arguments.unlisted;
  std::vector<BookId> players;
  for (const std::string& player : arguments.players) {
    const auto book = choose_player(context, player);
    if (!book) return fail(book.error());
    if (!may_cross(context.ledger(), *book, kPlayerBook, context.room()))
      return fail(FaultCode::refused, "the player did not agree that this book goes to others", player, "ask the player and record the answer first");
    players.push_back(*book);
  }
  if (!arguments.event.empty()) {
    const auto event = context.event(arguments.event == "." ? "" : arguments.event);
    if (!event) return fail(event.error());
    options.event = *event;
    for (const EventRow& row : all_events(context.ledger()))
      if (row.book == *event) options.event_name = row.name;
    if (auto used = context.use_event(*event); !used) return fail(used.error());
  }
  if (!options.event && players.empty() && !arguments.nothing)
    return fail(FaultCode::bad_input, "nothing was chosen to share", "host", "give --event, --player, or --nothing to get only what others bring");
  std::vector<Role> roles;
  for (const auto& name : arguments.invite) {
    const auto role = parse_role(name);
    if (!role) return fail(role.error());
    roles.push_back(*role);
  }
  options.may_leave = context.workplace().may_leave();
  options.may_stay = [&context](const BookId& book, BookKind kind, const BookId& room, bool settled) {
    return may_stay(context.ledger(), book, kind, room, settled);
  };
  options.leaves_by = [&context] { return LeaveRule{context.room(), crossing_mark(context.ledger(), context.room())}; };
  options.names_content = [&context](const BookId& book, const Digest& content) { return names_photo(context.ledger(), book, content); };
  options.shares = [&context, players, event = options.event] {
    std::vector<BookId> out = players;
    if (!event) return out;
    out.push_back(event);
    const auto theirs = players_at(context.ledger(), event);
    out.insert(out.end(), theirs.begin(), theirs.end());
    return out;
  };
  // Blocked before the network's threads begin, so that they inherit it and the wait below gets the signals.
  sigset_t signals;
  sigemptyset(&signals);
  sigaddset(&signals, SIGINT);
  sigaddset(&signals, SIGTERM);
  pthread_sigmask(SIG_BLOCK, &signals, nullptr);
  auto host = TabletHost::start(context.station(), std::move(options));
  if (!host) return fail(host.error());
  context.answer(json::object{{"listening", (*host)->address().text()},
                              {"port", (*host)->address().port},
                              {"fingerprint", to_hex((*host)->fingerprint())}},
                 "others reach this device at " + (*host)->address().text() + "; end with Ctrl-C");
  for (const Role role : roles)
    if (auto invited = invite(context, **host, role, arguments.minutes); !invited) return fail(invited.error());

  std::map<std::string, SessionState> before;
  const timespec pause{0, 100'000'000};
  for (int tenths = 0; arguments.seconds == 0 || tenths < 10 * arguments.seconds; ++tenths) {
    std::map<std::string, SessionState> now;
    for (const Connected& one : (*host)->connected())
      if (one.state == SessionState::exchanging || one.state == SessionState::agreed) now[one.device] = one.state;
    for (const auto& [device, state] : now)
      if (const auto known = before.find(device); known == before.end() || known->second != state)
        context.answer(json::object{{"device", device}, {"agreed", state == SessionState::agreed}},
                       device + (state == SessionState::agreed ? ": both agree" : " is here"));
    for (const auto& [device, state] : before)
      if (!now.contains(device)) context.answer(json::object{{"device", device}, {"gone", true}}, device + " has gone");
    before = std::move(now);
    if (sigtimedwait(&signals, nullptr, &pause) > 0) break;
  }
  return Ending::done;
}

}  // namespace

void add_host_command(CLI::App& app, Work& chosen) {
  add_command<HostArguments>(
      app, chosen, "host", "Let others in the local network exchange with this device, without an event server", host,
      [](CLI::App& command, HostArguments& arguments) {
        command.add_option("--event", arguments.event, "They get that event and its players, and work at it with this device; . for the one in use");
        command.add_option("--player", arguments.players, "They get this player; may be given several times");
        command.add_flag("--nothing", arguments.nothing, "They get nothing but what they bring themselves");
        command.add_option("--invite", arguments.invite, "Show a code for a head, desk, stringer or reader; may be given several times");
        command.add_option("--minutes", arguments.minutes, "How long the codes are good")->check(CLI::Range(1, 7 * 24 * 60))->capture_default_str();
        command.add_option("--listen", arguments.listen, "ADDRESS:PORT; where the port is taken, a free one")->capture_default_str();
        command.add_option("--reach", arguments.reach, "ADDRESS under which others reach this device, for the codes");
        command.add_flag("--unlisted", arguments.unlisted, "Do not answer who asks who is near");
        command.add_option("--seconds", arguments.seconds, "End after so many; 0: at Ctrl-C")->check(CLI::Range(0, 86'400));
        command.footer(
            "Consent decides at both ends. Whoever was invited once comes again without a code; `revoke` shuts out.\n"
            "--json: a line each: {listening, port, fingerprint}; {invitation, code, words, expires}; {device, agreed} or {device, gone}.");
      });
}

}  // namespace weavelog::cli
