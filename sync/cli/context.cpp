#include "sync/cli/context.h"

#include <algorithm>
#include <cerrno>
#include <iostream>
#include <system_error>

#include "core/base/text.h"
#include "core/model/queries.h"
#include "core/model/tables.h"
#include "core/people/consent.h"
#include "sync/carry/carried_file.h"

namespace weavelog::cli {
namespace {

// The same keys as the app's, so that one folder goes on at the same place whichever program opens it.
constexpr std::string_view kHostKey = "app.host";
constexpr std::string_view kEventKey = "app.event";

std::string key_of_event_at(const PublicKey& host) {
  return "cli.event at " + to_hex(host);
}

/// The first trouble with standard output, as errno has it.
int output_error = 0;

std::string ended(std::string text) {
  if (text.empty() || text.back() != '\n') text += '\n';
  return text;
}

}  // namespace

void put_out(std::string_view text) {
  errno = 0;
  std::cout << text << std::flush;
  if (!std::cout && output_error == 0) output_error = errno != 0 ? errno : EIO;
}

std::optional<Fault> output_fault() {
  if (output_error == 0 || output_error == EPIPE) return std::nullopt;
  return Fault{output_error == ENOSPC || output_error == EDQUOT ? FaultCode::no_space : FaultCode::io,
               "not all of the answer could be written: " + std::system_category().message(output_error), "standard output",
               "make room there, or send it elsewhere; what the command was to change is changed, so look before you do it again"};
}

Ending ending_of(const Fault& fault) {
  return fault.code == FaultCode::not_found ? Ending::not_found : Ending::fault;
}

json::object fault_json(const Fault& fault) {
  return {{"code", name_of(fault.code)},
          {"what", fault.what},
          {"where", fault.where},
          {"what_to_do", fault.what_to_do}};
}

void complain(const Fault& fault, bool as_json) {
  // One line, whatever was quoted in it.
  std::string line = fault.message();
  std::replace(line.begin(), line.end(), '\n', ' ');
  std::cerr << "weavelog-cli: " << line << '\n' << std::flush;
  if (as_json) put_out(json::serialize(json::object{{"error", fault_json(fault)}}) + "\n");
}

Outcome<> Context::open() {
  StationOptions options;
  options.folder = settings_.folder;
  options.one_thread = true;  // a command does one thing after another; opening takes a third less
  options.device_name = settings_.device;
  options.usual_name = settings_.usual_name;
  options.registry = &model_registry();
  options.projections = {std::make_shared<ModelTables>()};
  auto opened = Station::open(std::move(options));
  if (!opened) return fail(opened.error());
  station_ = std::move(*opened);
  // Beside the answer, which scripts read: whoever did not mean it sees it at once.
  if (const auto& former = station_->former_name())
    std::cerr << "weavelog-cli: this device was called \"" << *former << "\" and is \"" << ledger().self().device << "\" from now on\n"
              << std::flush;
  workplace_ = std::make_unique<Workplace>(*station_, [this](const BookId& book, BookKind kind) {
    return may_cross(ledger(), book, kind, room());
  });
  if (const auto kept = host()) workplace_->set_host(kept->key);
  return {};
}

std::optional<KnownHost> Context::host() {
  const auto kept = ledger().remembered(kHostKey);
  PublicKey key{};
  if (!kept || kept->size() != key.size()) {
    // A pairing that was cut off after the host had proved itself: the newest host is the one.
    const auto hosts = station_->devices().hosts();
    return hosts.empty() ? std::nullopt : std::optional(hosts.front());
  }
  std::copy(kept->begin(), kept->end(), key.begin());
  return station_->devices().host(key);
}

Outcome<> Context::use_host(const PublicKey& host, const BookId& event) {
  if (auto kept = ledger().remember(kHostKey, host); !kept) return kept;
  workplace_->set_host(host);
  if (event) {
    if (auto kept = ledger().remember(key_of_event_at(host), event.view()); !kept) return kept;
    return use_event(event);
  }
  // Back at a host of before: its event is the one to go on with.
  const auto known = ledger().remembered(key_of_event_at(host));
  const auto before = known ? BookId::from_bytes(*known) : std::nullopt;
  return before ? use_event(*before) : Outcome<>{};
}

Outcome<> Context::use_event(const BookId& event) {
  return ledger().remember(kEventKey, event.view());
}

BookId Context::room() { return remembered_event().value_or(BookId{}); }

std::optional<BookId> Context::remembered_event() {
  const auto kept = ledger().remembered(kEventKey);
  return kept ? BookId::from_bytes(*kept) : std::nullopt;
}

Outcome<BookId> Context::event(const std::string& wanted) {
  const auto events = all_events(ledger());
  std::vector<EventRow> meant;
  if (wanted.empty()) {
    const auto kept = remembered_event();
    for (const EventRow& row : events)
      if (kept && row.book == *kept) return row.book;
    meant = events;
  } else {
    const std::string key = search_key(wanted);
    for (const EventRow& row : events)
      if (search_key(row.name) == key || (wanted.size() >= 6 && row.book.hex().starts_with(wanted)))
        meant.push_back(row);
  }
  const std::string where = wanted.empty() ? "event" : "event \"" + wanted + "\"";
  if (meant.empty())
    return fail(FaultCode::not_found, "this device holds no such event", where,
                "pair with the event's server, or make the event with `new-event`");
  if (meant.size() > 1)
    return fail(FaultCode::bad_input, std::to_string(meant.size()) + " events are meant", where,
                "give the beginning of the book's number, as `events` lists it");
  return meant.front().book;
}

std::string Context::zone_of(const BookId& event) {
  const auto record = load_event(ledger(), event);
  return record && !record->event.now.time_zone.empty() ? record->event.now.time_zone : "UTC";
}

Language Context::language() const {
  return Language::from(settings_.language).value_or(Language());
}

Language Context::language_for(const Person& person) const {
  if (!settings_.language.empty()) return language();
  return Language::from(person.language).value_or(Language());
}

void Context::answer(const json::value& document, const std::string& text) const {
  put_out(ended(settings_.json ? json::serialize(document) : text));
}

Outcome<> Context::deliver(const std::string& content, const std::string& file) const {
  if (file.empty()) {
    put_out(ended(content));
    return {};
  }
  return write_open_file(file, as_bytes(content));
}

}  // namespace weavelog::cli
