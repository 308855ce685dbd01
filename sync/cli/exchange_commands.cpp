#include <chrono>
#include <csignal>
#include <ctime>
#include <functional>
#include <iostream>
#include <map>

#include "core/base/iso_time.h"
#include "core/base/text.h"
#include "sync/cli/commands.h"
#include "sync/cli/host_talk.h"
#include "sync/cli/render.h"
#include "sync/net/exchange_guest.h"

namespace weavelog::cli {
namespace {

/// Remembers the host as the one to work for, as soon as it has proved who it is.
Outcome<> go_on_with(Context& context, const GuestStatus& status) {
  const auto& session = status.session;
  if (!context.station().devices().host(session.peer.key)) return {};
  // A colleague's tablet that is only met is no room to work for: what is written here goes on to the room that it was for.
  if (!session.event && context.host()) return {};
  return context.use_host(session.peer.key, context.ledger().book(session.event) ? session.event : BookId{});
}

/// One exchange from beginning to agreement.
Outcome<GuestStatus> exchange_once(Context& context, ExchangeGuestOptions options, int seconds) {
  options.keep_trying = false;
  go_by_consent(context, options);
  const Address address = options.address;
  ExchangeGuest guest(context.station(), std::move(options), {});
  (void)guest.wait(std::chrono::seconds(seconds), over);
  // Pictures that were taken here are handed over too, as far as there is time.
  (void)guest.wait(std::chrono::seconds(seconds), [](const GuestStatus& now) { return !agreed(now) || now.session.contents_unsettled == 0U; });
  const GuestStatus status = guest.status();
  if (auto kept = go_on_with(context, status); !kept) return fail(kept.error());
  if (!agreed(status)) return fail(why_not(status, address, seconds));
  return status;
}

// ----------------------------------------------------------------------------------------------------------
// pair

struct PairArguments {
  std::string code;
  std::string at;
  int seconds = 30;
};

Outcome<ExchangeGuestOptions> to_pair(const PairArguments& arguments) {
  if (arguments.code.starts_with("weavelog:")) {
    auto code = PairingCode::parse(arguments.code);
    if (!code) return fail(code.error());
    if (!arguments.at.empty()) {
      const auto address = Address::parse(arguments.at);
      if (!address) return fail(address.error());
      code->address = *address;
    }
    return ExchangeGuest::to_pair(*code);
  }
  const auto secret = parse_spoken_code(arguments.code);
  if (!secret) return fail(secret.error());
  if (arguments.at.empty())
    return fail(FaultCode::bad_input, "the words do not say where the event server is", "pair",
                "add --at ADDRESS, as the server shows it");
  const auto address = Address::parse(arguments.at);
  if (!address) return fail(address.error());
  ExchangeGuestOptions options;
  options.address = *address;
  options.secret = *secret;
  return options;
}

Outcome<Ending> pair(Context& context, const PairArguments& arguments) {
  auto options = to_pair(arguments);
  if (!options) return fail(options.error());
  const auto status = exchange_once(context, std::move(*options), arguments.seconds);
  if (!status) return fail(status.error());
  context.answer(exchange_json(status->session), "paired as " + std::string(name_of(status->session.role)) +
                                                     " with " + exchange_text(status->session));
  return Ending::done;
}

// ---------------------------------------------------------------------------------------------------------
// hosts

struct HostsArguments {
  std::string use;
};

Outcome<Ending> hosts(Context& context, const HostsArguments& arguments) {
  if (!arguments.use.empty()) {
    const auto host = choose_host(context, arguments.use);
    if (!host) return fail(host.error());
    if (auto used = context.use_host(host->key, {}); !used) return fail(used.error());
  }
  const auto in_use = context.host();
  json::array list;
  std::string text;
  for (const KnownHost& host : context.station().devices().hosts()) {
    const bool used = in_use && in_use->key == host.key;
    list.push_back(json::object{{"key", to_hex(host.key)},
                                {"name", host.name},
                                {"address", host.address.text()},
                                {"role", name_of(host.role)},
                                {"since", iso_utc(host.since)},
                                {"in_use", used}});
    text += std::string(used ? "* " : "  ") + host.name + "  " + host.address.text() + "  " +
            name_of(host.role) + "  " + to_hex(host.key) + "\n";
  }
  context.answer(list, text.empty() ? "no host yet; use `pair`" : text);
  return Ending::done;
}

// ------------------------------------------------------------------------------------------------------
// exchange

struct ExchangeArguments {
  std::string host;
  int seconds = 60;
  bool stay = false;
};

/// A line each time that something moved.
void tell_exchange(Context& context, const GuestStatus& status) {
  json::object line = exchange_json(status.session);
  line["connected"] = status.connected;
  if (status.fault) line["fault"] = fault_json(*status.fault);
  context.answer(line, status.connected
                           ? exchange_text(status.session)
                           : "not connected" + (status.fault ? ": " + status.fault->message() : ""));
}

Outcome<Ending> stay(Context& context, const KnownHost& host) {
  // Blocked before the network's threads begin, so that they inherit it and the wait below gets the signals.
  sigset_t signals;
  sigemptyset(&signals);
  sigaddset(&signals, SIGINT);
  sigaddset(&signals, SIGTERM);
  pthread_sigmask(SIG_BLOCK, &signals, nullptr);

  ExchangeGuestOptions options = ExchangeGuest::to_return(host);
  go_by_consent(context, options);
  ExchangeGuest guest(context.station(), std::move(options), {});
  const auto shown = [](const GuestStatus& status) {
    return std::tuple(status.connected, status.session.state, status.session.entries_sent,
                      status.session.entries_received, status.session.agreed ? status.session.agreed->at : 0);
  };
  std::optional<decltype(shown(guest.status()))> before;
  bool known = false;
  const timespec pause{0, 50'000'000};
  for (;;) {
    const GuestStatus status = guest.status();
    if (agreed(status) && !known) {
      if (auto kept = go_on_with(context, status); !kept) return fail(kept.error());
      known = true;
    }
    if (!before || *before != shown(status)) tell_exchange(context, status);
    before = shown(status);
    if (sigtimedwait(&signals, nullptr, &pause) > 0) return Ending::done;
  }
}

Outcome<Ending> exchange(Context& context, const ExchangeArguments& arguments) {
  const auto host = choose_host(context, arguments.host);
  if (!host) return fail(host.error());
  if (arguments.stay) return stay(context, *host);
  const auto status = exchange_once(context, ExchangeGuest::to_return(*host), arguments.seconds);
  if (!status) return fail(status.error());
  context.answer(exchange_json(status->session), exchange_text(status->session));
  return Ending::done;
}

// --------------------------------------------------------------------------------------------------------
// invite

struct InviteArguments {
  std::string role;
  int minutes = 15;
  int seconds = 30;
};

Outcome<Ending> invite(Context& context, const InviteArguments& arguments) {
  const auto role = parse_role(arguments.role);
  if (!role) return fail(role.error());
  const auto host = choose_host(context, {});
  if (!host) return fail(host.error());
  ExchangeGuestOptions options = ExchangeGuest::to_return(*host);
  options.keep_trying = false;
  go_by_consent(context, options);
  ExchangeGuest guest(context.station(), std::move(options), {});
  const auto time = std::chrono::seconds(arguments.seconds);
  (void)guest.wait(time, over);
  if (!agreed(guest.status())) return fail(why_not(guest.status(), host->address, arguments.seconds));
  guest.wish_invitation(*role, UnixMs{arguments.minutes} * 60'000);
  (void)guest.wait(time, [](const GuestStatus& status) {
    return status.session.invitation || status.fault || status.session.fault;
  });
  const GuestStatus status = guest.status();
  if (!status.session.invitation) return fail(why_not(status, host->address, arguments.seconds));
  const Invitation& invitation = *status.session.invitation;
  const std::string code = PairingCode{host->address, host->fingerprint, invitation.secret}.text();
  const std::string words = spoken_code(invitation.secret);
  context.answer(json::object{{"role", name_of(invitation.role)},
                              {"code", code},
                              {"words", words},
                              {"address", host->address.text()},
                              {"expires", iso_utc(invitation.expires)}},
                 "words    " + words + "\naddress  " + host->address.text() + "\n" "code     " + code +
                     "\ngood until " + ToldTimes(context)(invitation.expires));
  return Ending::done;
}

}  // namespace

void add_exchange_commands(CLI::App& app, Work& chosen) {
  add_command<PairArguments>(
      app, chosen, "pair",
      "Pair this device with an event server, by its code or its five words, and exchange", pair,
      [](CLI::App& command, PairArguments& arguments) {
        command
            .add_option("CODE-OR-WORDS", arguments.code,
                        "What the server shows: weavelog:pair?... or five words")
            ->required();
        command.add_option("--at", arguments.at, "ADDRESS[:PORT] of the server; needed with words");
        command.add_option("--seconds", arguments.seconds, "How long to try")
            ->check(CLI::Range(1, 3600))
            ->capture_default_str();
        command.footer(
            "--json: one object: host, role, event, sent, received, quarantined, forgotten, not_kept (players' books that came and may not stay here),\n"
            "not_begun (books that are not taken there), forks, clock_ahead_ms, wrong_clocks, agreed, words, books, at.");
      });
  add_command<HostsArguments>(
      app, chosen, "hosts", "List the event servers that this device was paired with", hosts,
      [](CLI::App& command, HostsArguments& arguments) {
        command.add_option("--use", arguments.use,
                           "Work for this one from now on: NAME or the beginning of its key");
        command.footer("--json: an array of {key, name, address, role, since, in_use}.");
      });
  add_command<ExchangeArguments>(
      app, chosen, "exchange", "Bring this device and an event server up to date", exchange,
      [](CLI::App& command, ExchangeArguments& arguments) {
        command.add_option("--host", arguments.host, "NAME or beginning of the key; default: the one in use");
        command.add_option("--seconds", arguments.seconds, "How long to try")
            ->check(CLI::Range(1, 3600))
            ->capture_default_str();
        command.add_flag("--stay", arguments.stay, "Stay connected, live, until SIGTERM or Ctrl-C");
        command.footer(
            "--json: one object as for `pair`; with --stay a line of it each time something moved, with "
            "connected and fault.");
      });
  add_command<InviteArguments>(
      app, chosen, "invite", "As head of the room: get a code with which another device can pair", invite,
      [](CLI::App& command, InviteArguments& arguments) {
        command.add_option("ROLE", arguments.role, "head, desk, stringer or reader")->required();
        command.add_option("--minutes", arguments.minutes, "How long the code is good")
            ->check(CLI::Range(1, 7 * 24 * 60))
            ->capture_default_str();
        command.add_option("--seconds", arguments.seconds, "How long to try")
            ->check(CLI::Range(1, 3600))
            ->capture_default_str();
        command.footer("--json: one object: role, code, words, address, expires.");
      });
}

}  // namespace weavelog::cli
