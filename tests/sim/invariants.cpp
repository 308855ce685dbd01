#include "tests/sim/invariants.h"

#include <algorithm>
#include <map>

#include "core/store/database.h"
#include "tests/sim/forgetting.h"
#include "tests/sim/reference.h"

namespace weavelog::sim {
namespace {

/// An entry as it stands in a ledger.
struct HeldEntry {
  EntryKey key;
  PublicKey author_key{};
  Digest body{};
  Bytes bytes;
  auto operator<=>(const HeldEntry&) const = default;
};

std::vector<HeldEntry> all_entries(const Ledger& ledger) {
  std::vector<HeldEntry> out;
  ledger.read([&](Connection& db) {
    auto& query = db.statement(
        "SELECT b.id, a.id, e.seq, e.body, a.key FROM entry e JOIN author a ON a.n=e.author JOIN book b ON "
        "b.n=e.book");
    while (query.executeStep()) {
      HeldEntry held;
      held.key.book = BookId::from_bytes(blob_of(query, 0)).value();
      held.key.author = AuthorId::from_bytes(blob_of(query, 1)).value();
      held.key.seq = static_cast<std::uint64_t>(query.getColumn(2).getInt64());
      const ByteView body = blob_of(query, 3), key = blob_of(query, 4);
      held.body = digest_of(body);
      held.bytes.assign(body.begin(), body.end());
      std::copy(key.begin(), key.end(), held.author_key.begin());
      out.push_back(std::move(held));
    }
  });
  return out;
}

/// What to ask for all of them. Every ledger has the same tables.
std::vector<std::string> queries_of(Connection& db) {
  std::vector<std::string> queries{
      "SELECT b.id, q.entity, q.tag FROM question q JOIN book b ON b.n=q.book",
      "SELECT p.book, w.words FROM model_name w JOIN model_player p ON p.n=w.rowid",
  };
  auto& tables = db.statement(
      "SELECT name FROM sqlite_master WHERE type='table' AND name LIKE 'model_%' AND name NOT LIKE "
      "'model_name%' ORDER BY name");
  std::vector<std::string> names;
  while (tables.executeStep()) names.push_back(tables.getColumn(0).getString());
  for (const std::string& name : names) {
    std::string columns;
    SQLite::Statement info(db.raw(), "SELECT name FROM pragma_table_info('" + name + "')");
    while (info.executeStep()) {
      const std::string column = info.getColumn(0).getString();
      if (column == "n") continue;
      if (!columns.empty()) columns += ", ";
      columns += column == "player" && name != "model_entry"
                     ? "(SELECT p.book FROM model_player p WHERE p.n=t.player)"
                     : column;
    }
    queries.push_back("SELECT '" + name + "', " + columns + " FROM " + name + " t");
  }
  return queries;
}

/// What the tables of layers two and three say, whatever the numbers of their rows.
Digest tables_digest(const Ledger& ledger) {
  std::vector<std::string> rows;
  ledger.read([&](Connection& db) {
    static const std::vector<std::string> queries = queries_of(db);
    for (const std::string& sql : queries) {
      SQLite::Statement query(db.raw(), sql);
      while (query.executeStep()) {
        std::string row;
        for (int i = 0; i < query.getColumnCount(); ++i) {
          const SQLite::Column column = query.getColumn(i);
          row += std::to_string(column.getType()) + ":" +
                 std::string(static_cast<const char*>(column.getBlob()),
                             static_cast<std::size_t>(column.getBytes())) +
                 "|";
        }
        rows.push_back(std::move(row));
      }
    }
  });
  std::sort(rows.begin(), rows.end());
  Digester digester;
  for (const std::string& row : rows) digester.add(as_bytes(row));
  return digester.finish();
}

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
    const Digest before = tables_digest(device.ledger());
    if (const auto rebuilt = device.ledger().rebuild(); !rebuilt)
      throw Violation("rebuild", device.name + ": " + rebuilt.error().message());
    if (tables_digest(device.ledger()) != before)
      throw Violation("projection", device.name + ": the tables were not what its entries give");
    room_.trace.bytes(before);
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
    std::map<EntryKey, Digest> held;
    for (const HeldEntry& entry : all_entries(device.ledger())) {
      held.emplace(entry.key, entry.body);
      if (entry.author_key == hostile_ || !seen_.insert({entry.key, entry.body}).second) continue;
      if (room_.promises.by_person(entry.key, entry.body)) continue;
      const auto decoded = decode_entry(entry.bytes, entry.key.author);
      if (!decoded || (!room_.promises.attempted(entry.key.book, decoded->writes) &&
                       !(room_.promises.forked(entry.key.book) &&
                         room_.promises.said_before(entry.key.book, decoded->writes))))
        throw Violation("nobody's entry",
                        device.name + " holds an entry of " + entry.key.author.hex() + " that nobody made");
    }
    // Where a chain was refused, what follows in it is left out too.
    std::map<std::pair<BookId, AuthorId>, std::uint64_t> refused_from;
    for (const Quarantined& aside : device.ledger().quarantine()) {
      const auto [found, fresh] = refused_from.try_emplace({aside.book, aside.author}, aside.seq);
      if (!fresh) found->second = std::min(found->second, aside.seq);
    }
    for (const Promise& promise : room_.promises.all()) {
      if (!promise.holders.contains(place)) continue;
      const auto found = held.find(promise.key);
      if (found != held.end() && found->second == promise.body) continue;
      // Let go whole, or not at all; what it wrote itself it never lets go.
      if (device.not_to_stay.contains(promise.key.book) && !device.ledger().book(promise.key.book) && !room_.promises.wrote_in(promise.key.book, place))
        continue;
      const auto refused = refused_from.find({promise.key.book, promise.key.author});
      if (refused != refused_from.end() && refused->second <= promise.key.seq &&
          (room_.promises.forked(promise.key.book) || hostile_ != PublicKey{}))
        continue;  // kept and shown, not applied
      throw Violation("lost", device.name + " has promised entry " + std::to_string(promise.key.seq) +
                                  " of " + promise.key.author.hex() + " in book " + promise.key.book.hex() +
                                  " and does not hold it" + why_aside(device, promise.key));
    }
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
    for (const BookInfo& book : server.ledger().books()) books.insert(book.id);
    for (const BookId& book : guest.station().peers().scope(*number))
      if (guest.ledger().book(book)) books.insert(book);
    for (const BookId& id : books) {
      const auto ours = guest.ledger().book(id), theirs = server.ledger().book(id);
      if ((ours && !guest.may_leave(id, ours->kind, event)) ||
          (theirs && !server.may_leave(id, theirs->kind, event)))
        continue;
      if (ours && theirs && ours->heads == theirs->heads) continue;
      if (room_.promises.forked(id) || hostile_ != PublicKey{}) continue;
      if (guest.forgot.contains(id) != server.forgot.contains(id)) continue;  // excused above
      throw Violation("converge",
                      guest.name + " and " + server.name + " hold different entries of book " + id.hex());
    }
  }

  Room& room_;
  PublicKey hostile_{};
  std::map<std::pair<BookId, Digest>, std::map<Place, Answers>> answers_;
  std::set<std::pair<EntryKey, Digest>> seen_;
};

}  // namespace

void check_everything(Room& room) {
  Check(room).everything();
}

}  // namespace weavelog::sim
