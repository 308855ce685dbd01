#include "tests/sim/reference.h"

#include "core/store/database.h"
#include "tests/sim/trace.h"

namespace weavelog::sim {

std::vector<BookEntry> entries_of(const Ledger& ledger, const BookId& book) {
  std::vector<BookEntry> out;
  ledger.read([&](Connection& db) {
    auto& query = db.statement(
        "SELECT a.id, e.body FROM entry e JOIN author a ON a.n=e.author JOIN book b ON b.n=e.book WHERE "
        "b.id=? ORDER BY e.position");
    bind_blob(query, 1, book.bytes);
    while (query.executeStep()) {
      const auto author = AuthorId::from_bytes(blob_of(query, 0));
      const ByteView body = blob_of(query, 1);
      auto entry = author ? decode_entry(body, *author)
                          : Outcome<Entry>(fail(FaultCode::damaged, "an author without an id"));
      if (!entry)
        throw Violation("unreadable", "an entry in the ledger can't be read: " + entry.error().message());
      out.push_back({*author, std::move(*entry), digest_of(body)});
    }
  });
  return out;
}

std::map<Place, Answers> answers_of(const std::vector<BookEntry>& entries) {
  std::set<std::pair<Place, Dot>> replaced;
  for (const BookEntry& held : entries)
    for (const Write& write : held.entry.writes)
      for (const Dot& dot : write.replaces) replaced.insert({{write.entity, write.tag}, dot});
  std::map<Place, Answers> out;
  for (const BookEntry& held : entries)
    for (std::uint32_t i = 0; i < held.entry.writes.size(); ++i) {
      const Write& write = held.entry.writes[i];
      const Place place{write.entity, write.tag};
      const Dot dot{held.author, held.entry.seq, i};
      if (!replaced.contains({place, dot})) out[place].emplace(dot, write.value);
    }
  return out;
}

namespace {

bool differ(const Answers& answers) {
  for (const auto& [dot, value] : answers)
    if (value != answers.begin()->second) return true;
  return false;
}

std::string short_name(const AuthorId& author, std::uint64_t seq) { return author.hex().substr(0, 6) + "/" + std::to_string(seq); }

/// What the entries say of a place, in the order in which they stand.
std::string told_of(const Ledger& ledger, const BookId& book, const Place& place) {
  std::string out;
  for (const BookEntry& held : entries_of(ledger, book))
    for (const Write& write : held.entry.writes) {
      if (Place{write.entity, write.tag} != place) continue;
      out += (out.empty() ? ": " : "; ") + short_name(held.author, held.entry.seq);
      for (const Dot& dot : write.replaces) out += (&dot == &write.replaces.front() ? " for " : ", ") + short_name(dot.author, dot.seq);
    }
  return out;
}

[[noreturn]] void wrong(const std::string& device, const BookId& book, const Place& place,
                        const std::string& what) {
  throw Violation("state", device + ", book " + book.hex() + ", entity " + place.first.hex() + ", field " +
                               std::to_string(static_cast<std::uint32_t>(place.second)) + ": " + what);
}

}  // namespace

void compare_with(const Ledger& ledger, const BookId& book, const std::map<Place, Answers>& answers,
                  const std::string& device) {
  std::size_t cells = 0;
  for (const EntityState& state : ledger.entities(book)) {
    for (const Cell& cell : state.cells) {
      ++cells;
      const Place place{state.id, cell.tag};
      const auto found = answers.find(place);
      if (found == answers.end())
        wrong(device, book, place, "stands there although every answer was replaced");
      Answers held;
      for (const CellValue& value : cell.values)
        if (!held.emplace(value.dot, value.value).second)
          wrong(device, book, place, "holds one answer twice");
      if (held != found->second)
        wrong(device, book, place,
              "holds " + std::to_string(held.size()) + " answers, its entries give " +
                  std::to_string(found->second.size()) +
                  (held.size() == found->second.size() ? " others" : "") + told_of(ledger, book, place));
    }
  }
  if (cells != answers.size())
    throw Violation("state", device + ", book " + book.hex() + ": fields are missing");
  // Open questions: exactly the guarded fields with different answers, each with all of them.
  std::size_t expected = 0;
  for (const auto& [place, held] : answers)
    if (ledger.registry().guarded(place.second) && differ(held)) ++expected;
  const auto questions = ledger.open_questions(book);
  for (const OpenQuestion& question : questions) {
    const auto found = answers.find({question.entity, question.cell.tag});
    if (found == answers.end() || !differ(found->second) ||
        question.cell.values.size() != found->second.size())
      wrong(device, book, {question.entity, question.cell.tag},
            "is asked although it is not open, or without an answer");
  }
  if (questions.size() != expected)
    throw Violation("question", device + ", book " + book.hex() + ": an open question is not asked");
}

}  // namespace weavelog::sim
