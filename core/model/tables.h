#pragma once
// The typed tables behind the screens: players (with full-text search over names), jobs, events, entry lists.
// A projection of the ledger; queries.h asks them.

#include <memory>

#include "core/store/ledger.h"

namespace weavelog {

/// Tables named model_*. Holds no state: the same object may serve several ledgers.
class ModelTables final : public Projection {
 public:
  [[nodiscard]] std::string_view name() const override { return "model"; }
  [[nodiscard]] int version() const override { return 10; }
  void create(Connection& db) override;
  void apply(Connection& db, std::span<const EntityChange> changes) override;
  void forget(Connection& db, const BookId& book) override;
  [[nodiscard]] Digest digest(Connection& db) const override;
};

/// "No time said" in the tables, so that an order by time puts it last and an index can serve it.
inline constexpr std::int64_t kNoTime = 0x7fff'ffff'ffff'ffff;

/// The folded words (core/base/text.h) under which a name is found, separated by spaces.
[[nodiscard]] std::string search_words(std::string_view family, std::string_view given,
                                       std::string_view native);

}  // namespace weavelog
