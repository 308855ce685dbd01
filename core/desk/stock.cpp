#include "core/desk/stock.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

#include "core/base/localised.h"
#include "core/base/text.h"
#include "core/desk/made_from.h"

namespace weavelog {
namespace {

// Common practice, no source: an outline a quarter longer than wide, 15 mm round the frame from hole to hole, and half a metre at each
// end of a length for the tension head and the knot.
constexpr double kLongerThanWide = 1.25;
constexpr double kTurnMm = 15;
constexpr double kEndsMm = 1000;
constexpr double kUsualHeadCm2 = 632;
constexpr double kCm2PerIn2 = 6.4516;  // exact: NIST SP 811 (2008), App. B.8

double head_cm2(const Racket* racket) {
  if (racket == nullptr || !racket->head_size) return kUsualHeadCm2;
  const double amount = racket->head_size->amount.to_double();
  const double area = racket->head_size->unit == Unit::square_inch ? amount * kCm2PerIn2 : amount;
  return area >= 300 && area <= 1200 ? area : kUsualHeadCm2;
}

/// Chords of an ellipse at even distances, outermost ones half a distance from the edge.
double chords(double along, std::int64_t count) {
  double sum = 0;
  for (std::int64_t i = 0; i < count; ++i) {
    const double x = (static_cast<double>(i) + 0.5) / static_cast<double>(count) * 2 - 1;
    sum += 2 * along * std::sqrt(1 - x * x);
  }
  return sum + kTurnMm * static_cast<double>(count) + kEndsMm;
}

std::int64_t in_range(std::optional<std::int64_t> count, std::int64_t usual) { return count && *count >= 8 && *count <= 30 ? *count : usual; }

Outcome<> check_amount(std::int64_t amount, bool zero_too) {
  if (amount < 0 || (amount == 0 && !zero_too) || amount > kMostStock)
    return fail(FaultCode::bad_input, "there is no such amount of string", "amount", "give it in metres of a reel, or in sets");
  return {};
}

}  // namespace

Outcome<Draft> add_stock_item(const BookId& event, const StockItem& item, UnixMs at, std::int64_t there, const std::string& by) {
  if (is_blank(item.name)) return fail(FaultCode::bad_input, "the string has no name", "name", "give it the name that jobs use");
  if (item.supply != Supply::reel && item.supply != Supply::set)
    return fail(FaultCode::bad_input, "it was not said whether it is a reel or sets", "supply", "choose one");
  if ((item.owner == StringOwner::player) != static_cast<bool>(item.player))
    return fail(FaultCode::bad_input, "a player's own string needs the player, and only that", "player", "say whose it is");
  if (item.low_mark)
    if (auto checked = check_amount(*item.low_mark, true); !checked) return fail(checked.error());
  if (auto checked = check_amount(there, true); !checked) return fail(checked.error());
  Draft draft(event, kEventBook, kActStock);
  const auto made = put_new(draft, item, at);
  if (there > 0) {
    StockMove move;
    move.item = made.id;
    move.why = StockWhy::received;
    move.change = there;
    move.at = at;
    move.by = by;
    (void)put_new(draft, move, at);
  }
  return draft;
}

Outcome<Draft> move_stock(const BookId& event, const StockChange& change) {
  const bool comes = change.why == StockWhy::received || change.why == StockWhy::returned;
  const bool counted = change.why == StockWhy::counted;
  if (!comes && !counted && change.why != StockWhy::spoilt && change.why != StockWhy::taken_away)
    return fail(FaultCode::bad_input, "it was not said why the stock changes", "reason", "choose one");
  if (auto checked = check_amount(change.amount, counted); !checked) return fail(checked.error());
  StockMove move;
  move.item = change.item;
  move.why = change.why;
  if (counted)
    move.count = change.amount;
  else
    move.change = comes ? change.amount : -change.amount;
  move.at = change.at;
  move.by = change.by;
  move.note = change.note;
  Draft draft(event, kEventBook, kActStock);
  (void)put_new(draft, move, change.at);
  return draft;
}

Outcome<std::int64_t> stock_amount_from(std::string_view text, Supply supply) {
  const auto amount = Decimal::parse(text);
  const Decimal exact = amount ? amount->trimmed() : Decimal{};
  const std::uint8_t decimals = supply == Supply::reel ? 3 : 0;
  if (!amount || exact.scale > decimals || exact.mantissa < 0 || exact.mantissa > kMostStock)
    return fail(FaultCode::bad_input, "\"" + shortened(text, 40) + "\" is no amount of string", "amount",
                supply == Supply::reel ? "give metres, such as 62.5" : "give a whole number of sets");
  std::int64_t out = exact.mantissa;
  for (std::uint8_t i = exact.scale; i < decimals; ++i) out *= 10;
  return out;
}

std::string metres_words(const Language& language, std::int64_t mm) {
  return localised(language, Quantity{Decimal::rounded(static_cast<double>(mm) / 1000, 1), Unit::metre});
}

Outcome<Draft> use_for_job(const BookId& event, const EntityId& job, std::span<const StockUse> uses, const std::string& by, UnixMs at) {
  if (uses.empty()) return fail(FaultCode::bad_input, "no string was said", "job " + job.hex(), "say which reel or set it came from");
  Draft draft(event, kEventBook, kActStockUse);
  std::set<std::string> parts;
  for (const StockUse& use : uses) {
    if (auto checked = check_amount(use.amount, false); !checked) return fail(checked.error());
    if (!parts.insert(use.part).second)
      return fail(FaultCode::bad_input, "one part of the bed is said twice", use.part, "say mains and crosses, or the whole bed");
    EntityState fresh;
    fresh.book = event;
    fresh.kind = kStockMove;
    fresh.id = made_from(job, "weavelog stock use 1", use.part);
    StockMove move;
    move.item = use.item;
    move.why = StockWhy::used;
    move.change = -use.amount;
    move.job = job;
    move.at = at;
    move.by = by;
    move.note = use.part;
    put_changes(draft, fresh, move);
  }
  return draft;
}

BedLength estimated_length(const Racket* racket) {
  // Of an ellipse with half axes a (across) and b (along): area = pi a b.
  const double across = std::sqrt(head_cm2(racket) * 100 / (std::numbers::pi * kLongerThanWide));
  const double along = across * kLongerThanWide;
  const double mains = chords(along, in_range(racket ? racket->mains_count : std::nullopt, 16));
  const double crosses = chords(across, in_range(racket ? racket->crosses_count : std::nullopt, 19));
  return {std::lround(mains), std::lround(crosses)};
}

std::vector<StockUse> suggest_uses(const PlayerRecord& record, const EntityId& job_id, std::span<const StockLevel> levels) {
  const Loaded<Job>* job = record.job(job_id);
  if (!job) return {};
  const Loaded<Racket>* racket = record.racket(job->now.racket);
  const BedLength length = estimated_length(racket ? &racket->now : nullptr);
  const auto best = [&](const std::string& name, const std::optional<Quantity>& gauge, StringOwner owner, std::int64_t mm,
                        double sets) -> std::optional<std::pair<EntityId, std::int64_t>> {
    const StockLevel* found = nullptr;
    for (const StockLevel& level : levels) {
      const StockItem& item = level.item.now;
      const bool same = search_key(item.name) == search_key(name) && (!gauge || !item.gauge || *gauge == *item.gauge);
      const bool whose = owner == StringOwner::player ? item.player == record.book : !item.player;
      const std::int64_t needed = item.supply == Supply::reel ? mm : static_cast<std::int64_t>(std::ceil(sets));
      if (same && whose && level.left >= needed && (!found || level.left > found->left)) found = &level;
    }
    if (!found) return std::nullopt;
    return std::pair(found->item.id(), found->item.now.supply == Supply::reel ? mm : static_cast<std::int64_t>(std::ceil(sets)));
  };
  const Job& now = job->now;
  std::vector<StockUse> out;
  const auto add = [&](const std::string& part, const std::optional<std::pair<EntityId, std::int64_t>>& found) {
    if (found) out.push_back({found->first, part, found->second});
  };
  if (now.mains_string == now.crosses_string && now.mains_gauge == now.crosses_gauge && now.mains_owner == now.crosses_owner) {
    add("bed", best(now.mains_string, now.mains_gauge, now.mains_owner, length.bed(), 1));
  } else {
    // A set that is opened for a half is gone, unless somebody notes the rest.
    add("mains", best(now.mains_string, now.mains_gauge, now.mains_owner, length.mains, 0.5));
    add("crosses", best(now.crosses_string, now.crosses_gauge, now.crosses_owner, length.crosses, 0.5));
  }
  return out;
}

}  // namespace weavelog
