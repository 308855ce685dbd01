#include "core/store/aside.h"

#include <algorithm>
#include <array>

#include "core/store/ledger_impl.h"

namespace weavelog {
namespace {

constexpr std::int64_t kMostBytes = 16 * 1024 * 1024;
/// Of that, for what nobody proved to be whose it says: noise, with which anybody could take the room of what honest devices have to put aside.
constexpr std::int64_t kMostUnproved = 2 * 1024 * 1024;
/// What a row counts beside its body: else empty ones would cost nothing.
constexpr std::int64_t kRow = 256;

constexpr std::array kUnprovedReasons{kUnproved, kBranchUnproved, kBranchBeyond, kOtherKind};

void bind_unproved(SQLite::Statement& to, int first) {
  for (std::size_t i = 0; i < kUnprovedReasons.size(); ++i) to.bind(first + static_cast<int>(i), kUnprovedReasons[i]);
}

}  // namespace

bool proves_author(std::string_view reason) { return std::find(kUnprovedReasons.begin(), kUnprovedReasons.end(), reason) == kUnprovedReasons.end(); }

Aside::Aside(Connection& db, const Batch& batch, const std::vector<AuthorId>& authors, const WallClock& clock)
    : db_(db), batch_(batch), authors_(authors), clock_(clock) {
  auto& some = db_.statement("SELECT EXISTS(SELECT 1 FROM quarantine)");
  empty_ = !some.executeStep() || some.getColumn(0).getInt() == 0;
}

bool Aside::holds(std::size_t i, bool proved) {
  if (empty_) return false;
  auto& query = db_.statement("SELECT 1 FROM quarantine WHERE book=? AND author=? AND seq=? AND body=? AND NOT (? AND reason IN (?, ?, ?, ?))");
  bind_entry(query, 1, i);
  query.bind(5, proved ? 1 : 0);
  bind_unproved(query, 6);
  return query.executeStep();
}

bool Aside::put(std::size_t i, const std::string& reason, bool comes_again) {
  const bool proved = proves_author(reason);
  const auto& entry = batch_.entries[i];
  const std::int64_t counts = static_cast<std::int64_t>(entry.body.size()) + kRow;
  measure();
  if (proved && !empty_) {  // it may lie there since somebody else said it
    auto& proves = db_.statement("UPDATE quarantine SET reason=? WHERE book=? AND author=? AND seq=? AND body=? AND reason IN (?, ?, ?, ?)");
    proves.bind(1, reason);
    bind_entry(proves, 2, i);
    bind_unproved(proves, 6);
    if (proves.exec() > 0) {
      unproved_ -= counts;
      return true;
    }
  }
  if (!proved && unproved_ > kMostUnproved) return true;
  if (*held_ > kMostBytes) {
    if (comes_again) return false;
    if (holds(i, false)) return true;
    throw Abort{{FaultCode::refused, "too much was put aside from faulty devices; the last: " + reason,
                 "device " + batch_.authors[entry.author].device, "look at the quarantine and end the exchange with that device"}};
  }
  auto& add = db_.statement("INSERT OR IGNORE INTO quarantine(book, author, seq, body, reason, at) VALUES(?,?,?,?,?,?)");
  bind_entry(add, 1, i);
  add.bind(5, reason);
  add.bind(6, clock_.now());
  if (add.exec() == 0) return true;
  *held_ += counts;
  if (!proved) unproved_ += counts;
  return true;
}

void Aside::take_out(std::size_t i) {
  if (empty_) return;
  auto& remove = db_.statement("DELETE FROM quarantine WHERE book=? AND author=? AND seq=? AND body=?");
  bind_entry(remove, 1, i);
  remove.exec();
}

void Aside::measure() {
  if (held_) return;
  auto& size = db_.statement("SELECT coalesce(sum(length(body)+?1), 0), coalesce(sum((length(body)+?1)*(reason IN (?2, ?3, ?4, ?5))), 0) FROM quarantine");
  size.bind(1, kRow);
  bind_unproved(size, 2);
  size.executeStep();
  held_ = size.getColumn(0).getInt64();
  unproved_ = size.getColumn(1).getInt64();
}

void Aside::bind_entry(SQLite::Statement& to, int first, std::size_t i) const {
  const auto& entry = batch_.entries[i];
  bind_blob(to, first, batch_.books[entry.book].id.bytes);
  bind_blob(to, first + 1, authors_[entry.author].bytes);
  to.bind(first + 2, static_cast<std::int64_t>(entry.seq));
  bind_blob(to, first + 3, entry.body);
}

}  // namespace weavelog
