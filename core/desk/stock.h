#pragma once
// What string is there, what a job takes of it, and what was counted.

#include <span>
#include <string>
#include <vector>

#include "core/base/language.h"
#include "core/desk/event_book.h"
#include "core/desk/player_record.h"
#include "core/model/stock_tables.h"

namespace weavelog {

/// A new item, with what is there of it (mm or pieces, received by `by`) in the same action. Faults: bad_input (no name; reel or set not said; a
/// player's string without the player, or the other way round; no such amount).
[[nodiscard]] Outcome<Draft> add_stock_item(const BookId& event, const StockItem& item, UnixMs at, std::int64_t there = 0,
                                            const std::string& by = {});

struct StockChange {
  EntityId item;
  StockWhy why = StockWhy::unsaid;
  std::int64_t amount = 0;  ///< mm or pieces: how much came, went, or was counted; never negative
  std::string note;
  std::string by;
  UnixMs at = 0;
};
/// Faults: bad_input (no reason, an amount that can't be; `used` is use_for_job's).
[[nodiscard]] Outcome<Draft> move_stock(const BookId& event, const StockChange& change);

/// "62.5" metres of a reel as millimetres, "3" sets as pieces. Faults: bad_input.
[[nodiscard]] Outcome<std::int64_t> stock_amount_from(std::string_view text, Supply supply);
/// Millimetres as metres with one decimal, "62.5 m": nobody reads a reel to the millimetre.
[[nodiscard]] std::string metres_words(const Language& language, std::int64_t mm);

struct StockUse {
  EntityId item;
  std::string part;  ///< "mains", "crosses", "bed"
  std::int64_t amount = 0;  ///< mm or pieces
};
/// Takes what a job used. Made from job and part, so that two tablets that note it while apart note it once. Faults: bad_input (nothing
/// used, an amount that can't be, one part twice).
[[nodiscard]] Outcome<Draft> use_for_job(const BookId& event, const EntityId& job, std::span<const StockUse> uses, const std::string& by,
                                         UnixMs at);

/// What a job will probably take: for each part of the bed the item of that string, gauge and owner of which enough is left, the
/// fullest first. Parts for which there is none are left out.
[[nodiscard]] std::vector<StockUse> suggest_uses(const PlayerRecord& record, const EntityId& job, std::span<const StockLevel> levels);

/// An estimate of the string that a frame takes, in mm: the lengths in an ellipse of its head size, the turns round the frame, and the
/// ends that the tension head and the knots need. A head of 632 cm² and 16 x 19 where the racket does not say.
struct BedLength {
  std::int64_t mains = 0, crosses = 0;
  [[nodiscard]] std::int64_t bed() const { return mains + crosses; }
};
[[nodiscard]] BedLength estimated_length(const Racket* racket);

}  // namespace weavelog
