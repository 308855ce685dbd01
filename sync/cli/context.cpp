#include "sync/cli/context.h"

#include <algorithm>
#include <fstream>
#include <iostream>

#include "core/base/text.h"
#include "core/model/queries.h"
#include "core/model/tables.h"
#include "core/people/consent.h"

namespace weavelog::cli {
namespace {

// The same keys as the app's, so that one folder goes on at the same place whichever program opens it.
constexpr std::string_view kHostKey = "app.host";
constexpr std::string_view kEventKey = "app.event";

std::string key_of_event_at(const PublicKey& host) {
  return "cli.event at " + to_hex(host);
}

}  // namespace

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
  if (as_json) std::cout << json::serialize(json::object{{"error", fault_json(fault)}}) << '\n' << std::flush;
}

Outcome<> Context::open() {
  StationOptions options;
  options.folder = settings_.folder;
  options.one_thread = true;  // a command does one thing after another; opening takes a third less
  options.device_name = settings_.device;
  options.registry = &model_registry();
  options.projections = {std::make_shared<ModelTables>()};
  auto opened = Station::open(std::move(options));
  if (!opened) return fail(opened.error());
  station_ = std::move(*opened);
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
  if (settings_.json) {
    std::cout << json::serialize(document) << '\n' << std::flush;
  } else {
    std::cout << text << (text.empty() || text.back() == '\n' ? "" : "\n") << std::flush;
  }
}

Outcome<> Context::deliver(const std::string& content, const std::string& file) const {
  if (file.empty()) {
    std::cout << content << (content.empty() || content.back() == '\n' ? "" : "\n") << std::flush;
    return {};
  }
  std::ofstream out(file, std::ios::binary | std::ios::trunc);
  out << content;
  out.close();
  if (!out)
    return fail(FaultCode::io, "the file can't be written", file, "choose a folder that you may write to");
  return {};
}

}  // namespace weavelog::cli
