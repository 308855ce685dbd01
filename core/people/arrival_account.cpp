#include "core/people/arrival_account.h"

#include <algorithm>
#include <boost/json.hpp>

#include "core/store/database.h"

namespace weavelog {
namespace {

namespace json = boost::json;

constexpr UnixMs kDay = 24 * 60 * 60 * 1000;
// Lists of lists, so that what names a forgotten book is erased line by line (Ledger::remember). A line: book, jobs, newest job.
constexpr std::string_view kBefore = "arrival before";
constexpr std::string_view kSent = "arrival sent";
constexpr std::string_view kMet = "arrival met";

json::array line_of(const BookId& book, const BookSum& sum) {
  json::array line{json::string(book.hex()), static_cast<std::int64_t>(sum.jobs)};
  if (sum.last_at) line.push_back(*sum.last_at);
  return line;
}

std::optional<std::pair<BookId, BookSum>> read_line(const json::value& value) {
  const auto* line = value.if_array();
  if (line == nullptr || line->size() < 2) return std::nullopt;
  const auto* hex = (*line)[0].if_string();
  const auto* jobs = (*line)[1].if_int64();
  const auto book = hex ? BookId::from_hex(std::string_view(hex->data(), hex->size())) : std::nullopt;
  if (!book || jobs == nullptr || *jobs < 0) return std::nullopt;
  BookSum sum{static_cast<std::size_t>(*jobs), {}};
  if (line->size() > 2)
    if (const auto* at = (*line)[2].if_int64()) sum.last_at = *at;
  return std::pair(*book, sum);
}

std::optional<json::array> kept(const Ledger& ledger, std::string_view key) {
  const auto bytes = ledger.remembered(key);
  if (!bytes || bytes->empty()) return std::nullopt;
  boost::system::error_code error;
  json::value read = json::parse(std::string_view(reinterpret_cast<const char*>(bytes->data()), bytes->size()), error);
  if (error || !read.is_array()) return std::nullopt;
  return std::move(read.get_array());
}

Outcome<> keep(Ledger& ledger, std::string_view key, const json::array& list) {
  return ledger.remember(key, as_bytes(json::serialize(list)));
}

Outcome<> begin_with(Ledger& ledger, const json::array& before) {
  if (auto gone = keep(ledger, kSent, {}); !gone) return gone;
  if (auto gone = ledger.remember(kMet, {}); !gone) return gone;
  return keep(ledger, kBefore, before);
}

std::optional<UnixMs> newest(const std::optional<UnixMs>& a, const std::optional<UnixMs>& b) {
  if (!a || !b) return a ? a : b;
  return std::max(*a, *b);
}

std::optional<std::int64_t> days_newer(const std::optional<UnixMs>& gained, const std::optional<UnixMs>& had) {
  if (!gained || !had || *gained <= *had) return std::nullopt;
  return (*gained - *had) / kDay;
}

}  // namespace

BookSums book_sums(const Ledger& ledger) {
  BookSums out;
  ledger.read([&](Connection& db) {
    SQLite::Statement& query = db.statement(
        "SELECT p.book, j.jobs, j.last FROM model_player p LEFT JOIN (SELECT player, COUNT(*) jobs, MAX(at) last FROM model_job GROUP BY player) j "
        "ON j.player=p.n WHERE p.person IS NOT NULL");
    while (query.executeStep()) {
      const auto book = BookId::from_bytes(blob_of(query, 0));
      if (!book) continue;
      BookSum sum;
      if (!query.getColumn(1).isNull()) sum.jobs = static_cast<std::size_t>(query.getColumn(1).getInt64());
      if (const auto at = query.getColumn(2).getInt64(); at > 0) sum.last_at = at;  // 0: nobody said when, or there is none
      out.emplace(*book, sum);
    }
  });
  return out;
}

Outcome<> begin_arrival(Ledger& ledger, UnixMs now) {
  json::array before{json::array{now}};
  for (const auto& [book, sum] : book_sums(ledger)) before.push_back(line_of(book, sum));
  return begin_with(ledger, before);
}

std::optional<Arrival> arrival_going_on(const Ledger& ledger) {
  const auto before = kept(ledger, kBefore);
  if (!before || before->empty()) return std::nullopt;
  const auto* head = before->front().if_array();
  if (head == nullptr || head->size() != 1 || !head->front().is_int64()) return std::nullopt;
  Arrival out;
  out.began = head->front().get_int64();
  if (const auto met = ledger.remembered(kMet); met && met->size() == sizeof(PublicKey)) {
    out.met.emplace();
    std::copy(met->begin(), met->end(), out.met->begin());
  }
  for (const json::value& line : *before)
    if (const auto read = read_line(line)) out.before.insert(*read);
  if (const auto sent = kept(ledger, kSent))
    for (const json::value& line : *sent)
      if (auto read = read_line(line)) out.sent.push_back(std::move(*read));
  return out;
}

Outcome<> note_met(Ledger& ledger, const PublicKey& host) {
  const auto met = ledger.remembered(kMet);
  return met && !met->empty() ? Outcome<>() : ledger.remember(kMet, host);
}

Outcome<> note_sent(Ledger& ledger, const std::vector<BookId>& books) {
  const auto arrival = arrival_going_on(ledger);
  if (!arrival) return {};
  json::array list;
  for (const auto& [book, sum] : arrival->sent) list.push_back(line_of(book, sum));
  const BookSums now = book_sums(ledger);
  for (const BookId& book : books) {
    const auto held = now.find(book);
    const bool before = std::any_of(arrival->sent.begin(), arrival->sent.end(), [&](const auto& one) { return one.first == book; });
    if (held != now.end() && !before) list.push_back(line_of(book, held->second));
  }
  return keep(ledger, kSent, list);
}

Outcome<> end_arrival(Ledger& ledger) {
  return begin_with(ledger, {});
}

Gain gain_there(const std::vector<BookId>& person, const BookSums& now, const std::function<bool(const BookId&)>& holds) {
  Gain out;
  out.first = true;
  std::optional<UnixMs> had;
  for (const BookId& book : person) {
    const auto held = now.find(book);
    if (held == now.end()) continue;
    if (holds(book)) {
      out.first = false;
      had = newest(had, held->second.last_at);
    } else {
      ++out.books;
      out.jobs += held->second.jobs;
      out.last_at = newest(out.last_at, held->second.last_at);
    }
  }
  out.newer_days = days_newer(out.last_at, had);
  return out;
}

Gain gain_here(const std::vector<BookId>& person, const BookSums& now, const Arrival& arrival) {
  Gain out;
  out.first = true;
  std::optional<UnixMs> had;
  for (const BookId& book : person) {
    const auto held = now.find(book);
    if (held == now.end()) continue;
    const auto before = arrival.before.find(book);
    if (before == arrival.before.end()) {
      ++out.books;
      out.jobs += held->second.jobs;
      out.last_at = newest(out.last_at, held->second.last_at);
      continue;
    }
    out.first = false;
    had = newest(had, before->second.last_at);
    if (held->second.jobs <= before->second.jobs) continue;
    out.jobs += held->second.jobs - before->second.jobs;
    out.last_at = newest(out.last_at, held->second.last_at);
  }
  out.newer_days = days_newer(out.last_at, had);
  return out;
}

Moved came_in(const BookSums& now, const Arrival& arrival) {
  Moved out;
  for (const auto& [book, sum] : now) {
    const auto before = arrival.before.find(book);
    if (before == arrival.before.end()) {
      ++out.players;
      out.jobs += sum.jobs;
    } else if (sum.jobs > before->second.jobs) {
      out.jobs += sum.jobs - before->second.jobs;
    }
  }
  return out;
}

Moved went_out(const Arrival& arrival) {
  Moved out{arrival.sent.size(), 0};
  for (const auto& [book, sum] : arrival.sent) out.jobs += sum.jobs;
  return out;
}

}  // namespace weavelog
