#pragma once
// Player card: one player on one QR code, small enough for a phone or a bag tag, signed by the device that made it: who the player is,
// the setups that hold now, the rackets in short. With it a stringer who never met the player or any server starts from "same as last
// time". Here: making one and reading one; what to do with it is card_intake.h. The bytes stand in DEVELOPERS.md. This part of sync
// knows tennis: a card has a meaning where a batch has none.

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/base/digest.h"
#include "core/model/player.h"
#include "core/store/ledger.h"

namespace weavelog {

/// The text of a card fits a QR code of version 25 at error level M, in alphanumeric mode (ISO/IEC 18004, table 7: 1451 characters).
inline constexpr std::size_t kMaxCardText = 1451;
inline constexpr std::uint8_t kCardFormat = 1;

/// One thing on a card: the person, a setup or a racket, under the id that it has in the player's book.
struct CardItem {
  EntityKind kind{};
  EntityId id;
  UnixMs changed = 0;  ///< when its newest value was written, by its writer's clock
  std::vector<std::pair<FieldTag, Value>> values;  ///< ordered by tag
  std::vector<FieldTag> open;  ///< fields in which several answers stand where the card was made: none of them is on it
  bool operator==(const CardItem&) const = default;
};

struct PlayerCard {
  PublicKey key{};     ///< who signed it
  std::string device;  ///< as it calls itself
  UnixMs made = 0;     ///< by its clock
  BookId book;
  std::vector<CardItem> items;  ///< the person, then setups and rackets, each newest first
  std::uint64_t setups_left_out = 0, rackets_left_out = 0;  ///< for which there was no room
  Digest digest{};  ///< names the card

  [[nodiscard]] Person person() const;
  [[nodiscard]] std::vector<Setup> setups() const;
  [[nodiscard]] std::vector<Racket> rackets() const;
};

/// The values of an item as the struct of its kind.
template <class S>
[[nodiscard]] S from_item(const CardItem& item) {
  EntityState state;
  for (const auto& [tag, value] : item.values) state.cells.push_back({tag, {{Dot{}, Stamp{}, value}}});
  return from_state<S>(state);
}
/// Fields that a card may hold; nothing else of one is believed.
[[nodiscard]] bool on_cards(EntityKind kind, FieldTag tag);

/// When the values of a book were said: as they were written or, where they came from a card, no later than that was made.
class SaidTimes {
 public:
  SaidTimes(const Ledger& ledger, const BookId& book) : ledger_(ledger), book_(book) {}
  [[nodiscard]] UnixMs of(const CellValue& value);

 private:
  const Ledger& ledger_;
  BookId book_;
  std::map<std::pair<AuthorId, std::uint64_t>, std::optional<UnixMs>> cards_;  ///< by entry
};

struct MadeCard {
  std::string text;  ///< of upper-case letters, digits and a few signs
  PlayerCard card;
};
/// Setups go on newest first; of a player without any, what was strung last. Faults: not_found, refused (the player withdrew or agreed
/// to one room only), bad_input (the names alone do not fit).
[[nodiscard]] Outcome<MadeCard> make_card(const Ledger& ledger, const BookId& player);

/// Begins as the text of a card does.
[[nodiscard]] bool looks_like_card(std::string_view text);
/// What every card begins with.
inline constexpr std::string_view kCardPrefix = "WEAVELOG:CARD:";

/// Faults: bad_input (this is no player card), malformed (damaged on the way), newer, untrusted (whole, but not signed by the key that
/// it names: forged).
[[nodiscard]] Outcome<PlayerCard> read_card(std::string_view text);

/// The text of a card that says this, signed with the key, which takes the place of the card's own. For make_card, and for the fuzzer,
/// which says what no program would. Longer than kMaxCardText if it holds too much.
[[nodiscard]] std::string write_card(const PlayerCard& card, const DeviceKey& key);
/// What of it stands before the signature.
[[nodiscard]] Bytes card_body(const PlayerCard& card);
/// The text of a card with these bytes before the signature.
[[nodiscard]] std::string sign_card(ByteView body, const DeviceKey& key);

}  // namespace weavelog
