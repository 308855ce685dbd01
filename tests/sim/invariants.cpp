#include "tests/sim/invariants.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "tests/sim/branches.h"
#include "tests/sim/forgetting.h"
#include "tests/sim/reference.h"
#include "tests/sim/screen_tables.h"

namespace weavelog::sim {
namespace {

class Check {
 public:
  explicit Check(Room& room) : room_(room) {
    for (const auto& device : room.devices)
      if (device->making.duty == Duty::hostile) hostile_ = device->key();
  }

  void everything() {
    for (std::size_t place = 0; place < room_.devices.size(); ++place) {
      Device& device = room_.device(place);
      if (device.making.duty == Duty::hostile) continue;
      tables_are_true(device);
      state_is_true(device);
      entries_are_kept(device, place);
      stays_forgotten(device, place);
      if (device.making.duty == Duty::server) check_enrolled(room_, place);
      room_.counts.quarantined += device.ledger().quarantine().size();
    }
    for (const Visit& visit : room_.paired)
      if (!room_.revoked.contains(visit) && room_.device(visit.guest).making.duty != Duty::hostile)
        both_hold_the_same(visit);
  }

 private:
  void tables_are_true(Device& device) {
    const VerifyReport report = device.ledger().verify();
    if (!report.faults.empty()) throw Violation("verify", device.name + ": " + report.faults.front());
    const TablesDigest before = tables_digest(device.ledger());
    // Where the entries are the same, so is what screens show, in whatever order they came.
    for (const BookInfo& book : device.ledger().books()) {
      const auto rows = before.books.find(book.id);
      const Digest digest = rows == before.books.end() ? Digest{} : rows->second;
      const auto [found, fresh] = tables_.try_emplace({book.id, book.heads, device.making.program}, digest, &device);
      if (!fresh && found->second.first != digest)
        throw Violation("tables differ", device.name + " and " + found->second.second->name + " hold the same entries of book " + book.id.hex() +
                                             " and show different things" +
                                             difference(table_rows(device.ledger(), book.id), table_rows(found->second.second->ledger(), book.id)));
    }
    const auto rows = room_.trace.kept() ? table_rows(device.ledger()) : std::set<std::string>();
    if (const auto rebuilt = device.ledger().rebuild(); !rebuilt)
      throw Violation("rebuild", device.name + ": " + rebuilt.error().message());
    if (tables_digest(device.ledger()) != before)
      throw Violation("projection", device.name + ": the tables were not what its entries give" +
                                        (rows.empty() ? "" : difference(rows, table_rows(device.ledger()))));
    room_.trace.bytes(before.all);
  }

  void state_is_true(Device& device) {
    for (const BookInfo& book : device.ledger().books()) {
      // Two devices with the same heads hold the same entries: worked out once.
      const auto key = std::pair(book.id, book.heads);
      auto found = answers_.find(key);
      if (found == answers_.end())
        found = answers_.emplace(key, answers_of(entries_of(device.ledger(), book.id))).first;
      compare_with(device.ledger(), book.id, found->second, device.name);
      room_.trace.bytes(book.heads);
    }
  }

  void entries_are_kept(Device& device, std::size_t place) {
    const std::vector<HeldEntry> entries = all_entries(device.ledger()), aside = all_aside(device.ledger());
    const Branches branches(room_, device, entries, aside);
    std::map<EntryKey, Digest> held;
    for (const HeldEntry& entry : entries) {
      held.emplace(entry.key, entry.body);
      if (entry.author_key == hostile_ || room_.promises.by_person(entry.key, entry.body)) continue;
      // What a device says again is weighed where it said it, and once elsewhere.
      if (!seen_.insert({entry.key, entry.body}).second && !entry.written_here) continue;
      const auto decoded = decode_entry(entry.bytes, entry.key.author);
      if (!decoded || (!room_.promises.attempted(entry.key.book, decoded->writes) && !branches.said_again(entry, decoded->writes)))
        throw Violation("nobody's entry", device.name + " holds entry " + std::to_string(entry.key.seq) + " of " + entry.key.author.hex() +
                                              " in book " + entry.key.book.hex() + ", which nobody made" +
                                              (room_.promises.forked(entry.key.book) ? " (or which replaces more than it may)" : ""));
    }
    const std::set<std::string> forgotten = entities_of(device.forgot);
    for (const Promise& promise : room_.promises.all()) {
      if (!promise.holders.contains(place)) continue;
      const auto found = held.find(promise.key);
      if (found != held.end() && found->second == promise.body) continue;
      // Let go whole, or not at all; what it wrote itself it never lets go.
      if (device.not_to_stay.contains(promise.key.book) && !device.ledger().book(promise.key.book) && !room_.promises.wrote_in(promise.key.book, place))
        continue;
      // Another entry has its number, or that of one before it: kept and shown, not applied.
      if (room_.promises.forked(promise.key.book, promise.key.author) && promise.key.seq >= branches.parted_at(promise.key.book, promise.key.author) &&
          branches.put_aside(promise.key, promise.body))
        continue;
      // What was put aside goes with a forgotten book if it speaks of what that held.
      if (room_.promises.forked(promise.key.book, promise.key.author) && !forgotten.empty() && speaks_of(promise, forgotten)) continue;
      throw Violation("lost", device.name + " has promised entry " + std::to_string(promise.key.seq) +
                                  " of " + promise.key.author.hex() + " in book " + promise.key.book.hex() +
                                  " and does not hold it" + why_aside(device, promise.key));
    }
    branches.check_words_stand();
    branches.check_shown();
  }

  [[nodiscard]] std::set<std::string> entities_of(const std::set<BookId>& books) const {
    std::set<std::string> out;
    if (!books.empty())
      for (const Promise& promise : room_.promises.all())
        if (books.contains(promise.key.book))
          for (const Write& write : promise.writes) out.emplace(as_text(write.entity.bytes));
    return out;
  }

  static bool speaks_of(const Promise& promise, const std::set<std::string>& entities) {
    Entry entry;
    entry.seq = promise.key.seq;
    entry.writes = promise.writes;
    const Bytes body = encode_entry(entry, promise.key.author);
    return std::any_of(entities.begin(), entities.end(), [&](const std::string& id) { return as_text(body).find(id) != std::string_view::npos; });
  }

  static std::string why_aside(Device& device, const EntryKey& key) {
    for (const Quarantined& aside : device.ledger().quarantine())
      if (aside.book == key.book && aside.author == key.author && aside.seq == key.seq) return "; put aside: " + aside.reason;
    return {};
  }

  void stays_forgotten(Device& device, std::size_t place) {
    heed_forgetting(room_, place);
    check_stays_forgotten(device);
    for (const BookId& book : device.forgot) compare_with(device.ledger(), book, {}, device.name);
    check_bytes_gone(device);
  }

  void both_forgot_the_same(const Device& guest, const Device& server) {
    if (may_miss_forgetting(guest, server)) return;
    for (const auto& [knows, other] : {std::pair(&guest, &server), std::pair(&server, &guest)})
      for (const BookId& book : knows->forgot)
        if (!other->forgot.contains(book))
          throw Violation("not forgotten", other->name + " never heard from " + knows->name + " that book " +
                                               book.hex() + " is forgotten");
  }

  void both_hold_the_same(const Visit& visit) {
    Device& guest = room_.device(visit.guest);
    Device& server = room_.device(visit.server);
    both_forgot_the_same(guest, server);
    const BookId event = server.event;
    std::set<BookId> books;
    const auto number = guest.station().peers().number_of(server.key());
    if (!number) throw Violation("database", number.error().message());
    const auto apart = guest.station().peers().apart(*number);
    for (const BookInfo& book : server.ledger().books()) books.insert(book.id);
    for (const BookId& book : guest.station().peers().scope(*number))
      if (guest.ledger().book(book)) books.insert(book);
    for (const BookId& id : books) {
      const auto ours = guest.ledger().book(id), theirs = server.ledger().book(id);
      if ((ours && !guest.may_leave(id, ours->kind, event)) ||
          (theirs && !server.may_leave(id, theirs->kind, event)))
        continue;
      if (ours && theirs && ours->heads == theirs->heads) continue;
      // Not ticked by anybody there: the guest gives nothing of its own of it, and has all that the server says.
      if (const auto kept = apart.find(id); theirs && kept != apart.end() && digest_of_heads(kept->second) == theirs->heads && has_all(guest, id, kept->second))
        continue;
      if (ours && theirs && same_but_for_forks(guest, server, *ours, *theirs)) continue;
      if (guest.forgot.contains(id) != server.forgot.contains(id)) continue;  // excused above
      if (let_go_since_parted(room_, guest, id)) continue;
      throw Violation("converge",
                      guest.name + " and " + server.name + " hold different entries of book " + id.hex() + books_apart(guest, server));
    }
  }

  [[nodiscard]] bool has_all(Device& guest, const BookId& book, const Heads& heads) const {
    return std::all_of(heads.begin(), heads.end(), [&](const Head& head) {
      return guest.ledger().entry(book, head.author, head.seq) || room_.promises.forked(book, head.author);
    });
  }

  /// Where an author's number was given twice everybody keeps the branch that came first: that chain may differ, all others are the same. And
  /// the hostile device may say different things to different servers, in chains of its own, after which nothing is promised of a book.
  bool same_but_for_forks(Device& guest, Device& server, const BookInfo& ours, const BookInfo& theirs) const {
    const auto others = [&](Device& device) {
      Heads heads = device.ledger().heads(ours.id);
      std::erase_if(heads, [&](const Head& head) { return room_.promises.forked(ours.id, head.author); });
      return heads;
    };
    if (ours.kind != theirs.kind) return hostile_ != PublicKey{};
    const Heads here = others(guest), there = others(server);
    if (here == there) return true;
    if (guest.making.program == Program::older || server.making.program == Program::older) return room_.promises.forked(ours.id);
    const auto lies_in = [&](Device& device, const Heads& heads) {
      const auto liars = room_.hostile_authors(device);
      return std::any_of(heads.begin(), heads.end(), [&](const Head& head) { return liars.contains(head.author); });
    };
    return lies_in(guest, here) || lies_in(server, there);
  }

  Room& room_;
  PublicKey hostile_{};
  std::map<std::pair<BookId, Digest>, std::map<Place, Answers>> answers_;
  std::map<std::tuple<BookId, Digest, Program>, std::pair<Digest, const Device*>> tables_;
  std::set<std::pair<EntryKey, Digest>> seen_;
};

}  // namespace

std::string books_apart(Device& guest, Device& server) {
  std::string out;
  for (const BookInfo& book : server.ledger().books()) {
    const auto ours = guest.ledger().book(book.id);
    if (!ours || ours->heads == book.heads) continue;
    out += (out.empty() ? ": " : "; ") + book.id.hex();
    const Heads here = guest.ledger().heads(book.id), there = server.ledger().heads(book.id);
    for (const auto& [one, other, name] : {std::tuple(&here, &there, &guest.name), std::tuple(&there, &here, &server.name)})
      for (const Head& head : *one)
        if (std::find(other->begin(), other->end(), head) == other->end())
          out += ", " + *name + " " + head.author.hex().substr(0, 6) + " to " + std::to_string(head.seq);
  }
  for (const auto& [one, other, name] : {std::tuple(&guest, &server, &guest.name), std::tuple(&server, &guest, &server.name)}) {
    for (const BookInfo& book : one->ledger().books())
      if (!other->ledger().book(book.id)) out += "; " + *name + " alone " + book.id.hex();
    const auto number = one->station().peers().number_of(other->key());
    if (!number) continue;
    for (const auto& [book, heads] : one->station().peers().apart(*number)) {
      out += "; " + *name + " keeps apart " + book.hex();
      for (const Head& head : heads) out += ", " + head.author.hex().substr(0, 6) + " to " + std::to_string(head.seq);
      out += ", has";
      for (const Head& head : one->ledger().heads(book)) out += ", " + head.author.hex().substr(0, 6) + " to " + std::to_string(head.seq);
    }
  }
  return out;
}

bool let_go_since_parted(const Room& room, Device& device, const BookId& book) {
  return device.not_to_stay.contains(book) && !device.ledger().book(book) && room.promises.forked(book);
}

void check_enrolled(Room& room, std::size_t server) {
  Device& host = room.device(server);
  for (const Visit& visit : room.paired) {
    if (visit.server != server || room.unsure.contains(visit)) continue;
    if (const auto known = host.station().devices().member(room.device(visit.guest).key()); !known && known.error().code == FaultCode::untrusted)
      throw Violation("enrolment lost", host.name + " enrolled " + room.device(visit.guest).name + " and does not know it any more");
  }
}

void check_everything(Room& room) {
  Check(room).everything();
}

}  // namespace weavelog::sim
