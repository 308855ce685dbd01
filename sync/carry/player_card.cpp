#include "sync/carry/player_card.h"

#include <algorithm>
#include <set>

#include "core/base/text.h"
#include "core/desk/last_time.h"
#include "core/desk/player_record.h"
#include "core/log/archive.h"
#include "core/log/value_codec.h"
#include "core/people/consent.h"
#include "core/store/database.h"
#include "sync/carry/base45.h"

namespace weavelog {
namespace {

constexpr std::size_t kLongestText = 4296;  ///< what the largest QR code holds (ISO/IEC 18004, version 40, level L)
constexpr std::size_t kCardCheck = 4;
constexpr std::size_t kDeviceName = 24;  ///< characters
constexpr std::size_t kMaxItems = 64, kMaxValues = 64;
constexpr std::size_t kRacketsFirst = 4;  ///< that go on before the second setup

Bytes card_message(ByteView body) {
  const ByteView words = as_bytes("weavelog card 1");
  Bytes out(words.begin(), words.end());
  out.insert(out.end(), body.begin(), body.end());
  return out;
}

std::array<std::uint8_t, kCardCheck> card_check(ByteView bytes) {
  const Digest digest = digest_of({as_bytes("weavelog card check 1"), bytes});
  std::array<std::uint8_t, kCardCheck> out;
  std::copy_n(digest.begin(), out.size(), out.begin());
  return out;
}

/// Ids that were made after one another begin, and often end but for a few bits, alike: only what differs from the one before is spelt.
void save_id(OutArchive& ar, const EntityId& id, std::array<std::uint8_t, 16>& before) {
  std::uint16_t differs = 0;
  for (std::size_t i = 0; i < before.size(); ++i)
    if (id.bytes[i] != before[i]) differs = static_cast<std::uint16_t>(differs | 1U << i);
  ar.byte(static_cast<std::uint8_t>(differs));
  ar.byte(static_cast<std::uint8_t>(differs >> 8));
  for (std::size_t i = 0; i < before.size(); ++i)
    if ((differs >> i & 1U) != 0) ar.byte(id.bytes[i]);
  before = id.bytes;
}

EntityId load_id(InArchive& ar, std::array<std::uint8_t, 16>& before) {
  const unsigned low = ar.byte(), differs = low | static_cast<unsigned>(ar.byte()) << 8;
  for (std::size_t i = 0; i < before.size(); ++i)
    if ((differs >> i & 1U) != 0) before[i] = ar.byte();
  EntityId id;
  id.bytes = before;
  return id;
}

std::uint32_t base_of(EntityKind kind) { return static_cast<std::uint32_t>(kind) * 100; }

void save_tag(OutArchive& ar, EntityKind kind, FieldTag tag) {
  ar.zigzag(static_cast<std::int64_t>(tag) - static_cast<std::int64_t>(base_of(kind)));
}

FieldTag load_tag(InArchive& ar, EntityKind kind) {
  const std::int64_t step = ar.zigzag();
  if (step < -1'000'000 || step > 1'000'000) throw ArchiveError("a field number out of range");
  const std::int64_t tag = step + base_of(kind);
  if (tag < 1) throw ArchiveError("a field number out of range");
  return static_cast<FieldTag>(tag);
}

UnixMs in_range(std::int64_t moment) {
  constexpr std::int64_t kFar = std::int64_t{1} << 50;
  if (moment < -kFar || moment > kFar) throw ArchiveError("a time out of range");
  return moment;
}

/// The values that a struct of the item's kind can hold: one of another type, an empty text are none.
template <class S>
void keep_sound(CardItem& item) {
  const S sound = from_item<S>(item);
  item.values.clear();
  for_each_field<S>([&](FieldTag tag, std::string_view, bool, auto member) {
    Value value = to_value(sound.*member);
    if (!is_cleared(value)) item.values.emplace_back(tag, std::move(value));
  });
  std::sort(item.values.begin(), item.values.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
}

void keep_sound_values(CardItem& item) {
  for (auto& [tag, value] : item.values)
    if (auto* text = std::get_if<std::string>(&value)) {
      auto clean = clean_text(*text);
      if (!clean) throw ArchiveError("a text that is none");
      *text = std::move(*clean);
    }
  if (item.kind == kPerson) keep_sound<Person>(item);
  if (item.kind == kRacket) keep_sound<Racket>(item);
  if (item.kind == kSetup) keep_sound<Setup>(item);
}

/// Without format and oldest reader.
PlayerCard load_body(ByteView body, bool may_say_more) {
  InArchive ar(body);
  PlayerCard card;
  ar(card.key);
  card.made = in_range(ar.zigzag());
  ar(card.device);
  ar(card.book);
  card.setups_left_out = ar.varint();
  card.rackets_left_out = ar.varint();
  auto before = card.book.bytes;
  for (std::size_t items = ar.count(6, kMaxItems); items > 0; --items) {
    CardItem item;
    item.kind = static_cast<EntityKind>(ar.varint_as<std::uint16_t>());
    item.id = load_id(ar, before);
    item.changed = in_range(card.made - in_range(ar.zigzag()));
    for (std::size_t open = ar.count(1, kMaxValues); open > 0; --open) {
      const FieldTag tag = load_tag(ar, item.kind);
      if (on_cards(item.kind, tag)) item.open.push_back(tag);
    }
    for (std::size_t values = ar.count(2, kMaxValues); values > 0; --values) {
      const FieldTag tag = load_tag(ar, item.kind);
      Value value = load_value(ar);
      // What no card of this version says is passed over: consent, jobs and marks are nothing that a card could decide.
      if (on_cards(item.kind, tag) && !is_cleared(value)) item.values.emplace_back(tag, std::move(value));
    }
    std::sort(item.values.begin(), item.values.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    for (std::size_t i = 1; i < item.values.size(); ++i)
      if (item.values[i].first == item.values[i - 1].first) throw ArchiveError("a field that stands there twice");
    for (const CardItem& other : card.items) {
      if (other.id == item.id) throw ArchiveError("a thing that stands there twice");
      if (other.kind == kPerson && item.kind == kPerson) throw ArchiveError("two people");
    }
    keep_sound_values(item);
    if (item.kind == kPerson || item.kind == kSetup || item.kind == kRacket) card.items.push_back(std::move(item));
  }
  if (!may_say_more) ar.expect_end();
  return card;
}

// ------------------------------------------------------------------------------------------------ what goes on one

CardItem item_of(const EntityState& state, SaidTimes& times) {
  CardItem item;
  item.kind = state.kind;
  item.id = state.id;
  for (const Cell& cell : state.cells) {
    if (!on_cards(state.kind, cell.tag)) continue;
    const CellValue& latest = cell.latest();
    item.changed = std::max(item.changed, times.of(latest));
    if (cell.split() && model_registry().guarded(cell.tag)) {
      item.open.push_back(cell.tag);
    } else if (!is_cleared(latest.value)) {
      item.values.emplace_back(cell.tag, latest.value);
    }
  }
  return item;
}

/// A setup that stands for a job: under an id of its own that follows from the job's, so that all cards of it name the same.
EntityId setup_for(const EntityId& job) {
  const Digest digest = digest_of({as_bytes("weavelog card setup 1"), job.bytes});
  EntityId out = job;  // its time, and the version of its form
  std::copy_n(digest.begin(), 7, out.bytes.begin() + 9);
  return out;
}

/// What was strung last, as a setup without a name.
std::optional<CardItem> last_strung(const PlayerRecord& record, SaidTimes& times) {
  const auto last = same_as_last_time(record, {});
  if (!last || !last->job) return std::nullopt;
  const auto* job = record.job(last->job);
  if (job == nullptr) return std::nullopt;
  EntityState as_setup;
  as_setup.kind = kSetup;
  as_setup.id = setup_for(job->id());
  const std::uint32_t from = Described<Job>::part_base, to = Described<Setup>::part_base;
  for (const Cell& cell : job->seen.cells) {
    const auto tag = static_cast<std::uint32_t>(cell.tag);
    if (tag > from) as_setup.cells.push_back({FieldTag{tag - from + to}, cell.values});
  }
  return item_of(as_setup, times);
}

template <class S>
std::vector<CardItem> newest_first(const std::vector<Loaded<S>>& list, SaidTimes& times) {
  std::vector<CardItem> out;
  for (const auto& held : list) out.push_back(item_of(held.seen, times));
  std::reverse(out.begin(), out.end());
  std::stable_sort(out.begin(), out.end(), [](const CardItem& a, const CardItem& b) { return a.changed > b.changed; });
  return out;
}

/// The card with as many of both as fit.
std::string fill(PlayerCard& card, const CardItem& person, const std::vector<CardItem>& setups, const std::vector<CardItem>& rackets,
                 const DeviceKey& key) {
  const auto with = [&](std::size_t so_many_setups, std::size_t so_many_rackets) {
    card.items.assign(1, person);
    card.items.insert(card.items.end(), setups.begin(), setups.begin() + static_cast<std::ptrdiff_t>(so_many_setups));
    card.items.insert(card.items.end(), rackets.begin(), rackets.begin() + static_cast<std::ptrdiff_t>(so_many_rackets));
    card.setups_left_out = setups.size() - so_many_setups;
    card.rackets_left_out = rackets.size() - so_many_rackets;
    return write_card(card, key);
  };
  std::size_t on_setups = 0, on_rackets = 0;
  std::string text = with(0, 0);
  const auto grow = [&](std::size_t& count, std::size_t to) {
    for (to = std::min({to, kMaxItems / 2 - 1}); count < to; ++count) {
      ++count;
      std::string more = with(on_setups, on_rackets);
      --count;
      if (more.size() > kMaxCardText) return;
      text = std::move(more);
    }
  };
  grow(on_setups, std::min<std::size_t>(1, setups.size()));
  grow(on_rackets, std::min(kRacketsFirst, rackets.size()));
  grow(on_setups, setups.size());
  grow(on_rackets, rackets.size());
  (void)with(on_setups, on_rackets);
  return text;
}

}  // namespace

UnixMs SaidTimes::of(const CellValue& value) {
  const UnixMs written = value.stamp.wall_ms();
  const auto [found, fresh] = cards_.try_emplace({value.dot.author, value.dot.seq}, std::nullopt);
  if (fresh)
    if (const auto entry = ledger_.entry(book_, value.dot.author, value.dot.seq); entry && entry->action == kActTakeCard)
      for (const Write& write : entry->writes)
        if (write.kind == kCardTaken && write.tag == tag_of<CardTaken>(&CardTaken::made_at))
          if (const auto* made = std::get_if<std::int64_t>(&write.value)) found->second = *made;
  return found->second ? std::min(*found->second, written) : written;
}

bool on_cards(EntityKind kind, FieldTag tag) {
  static const std::set<FieldTag> person{tag_of<Person>(&Person::family_name), tag_of<Person>(&Person::given_name),
                                         tag_of<Person>(&Person::native_name), tag_of<Person>(&Person::country),
                                         tag_of<Person>(&Person::language),    tag_of<Person>(&Person::tension_unit)};
  static const std::set<FieldTag> racket{tag_of<Racket>(&Racket::label), tag_of<Racket>(&Racket::maker), tag_of<Racket>(&Racket::model),
                                         tag_of<Racket>(&Racket::mains_count), tag_of<Racket>(&Racket::crosses_count)};
  static const std::set<FieldTag> setup = [] {
    std::set<FieldTag> out;
    for_each_field<Setup>([&](FieldTag one, std::string_view, bool, auto) { out.insert(one); });
    return out;
  }();
  if (kind == kPerson) return person.contains(tag);
  if (kind == kRacket) return racket.contains(tag);
  return kind == kSetup && setup.contains(tag);
}

Person PlayerCard::person() const {
  for (const CardItem& item : items)
    if (item.kind == kPerson) return from_item<Person>(item);
  return {};
}

std::vector<Setup> PlayerCard::setups() const {
  std::vector<Setup> out;
  for (const CardItem& item : items)
    if (item.kind == kSetup) out.push_back(from_item<Setup>(item));
  return out;
}

std::vector<Racket> PlayerCard::rackets() const {
  std::vector<Racket> out;
  for (const CardItem& item : items)
    if (item.kind == kRacket) out.push_back(from_item<Racket>(item));
  return out;
}

Bytes card_body(const PlayerCard& card) {
  Bytes out;
  OutArchive ar(out);
  ar.byte(kCardFormat);
  ar.byte(kCardFormat);
  ar.raw(card.key);
  ar.zigzag(card.made);
  ar(card.device);
  ar.raw(card.book.bytes);
  ar.varint(card.setups_left_out);
  ar.varint(card.rackets_left_out);
  ar.varint(card.items.size());
  auto before = card.book.bytes;
  for (const CardItem& item : card.items) {
    ar.varint(static_cast<std::uint64_t>(item.kind));
    save_id(ar, item.id, before);
    ar.zigzag(card.made - item.changed);
    ar.varint(item.open.size());
    for (const FieldTag tag : item.open) save_tag(ar, item.kind, tag);
    ar.varint(item.values.size());
    for (const auto& [tag, value] : item.values) {
      save_tag(ar, item.kind, tag);
      save_value(ar, value);
    }
  }
  return out;
}

std::string sign_card(ByteView body, const DeviceKey& key) {
  Bytes payload(body.begin(), body.end());
  const Signature signature = key.sign(card_message(body));
  payload.insert(payload.end(), signature.begin(), signature.end());
  const auto check = card_check(payload);
  payload.insert(payload.end(), check.begin(), check.end());
  return std::string(kCardPrefix) + to_base45(payload);
}

std::string write_card(const PlayerCard& card, const DeviceKey& key) {
  PlayerCard signed_one = card;
  signed_one.key = key.public_key();
  return sign_card(card_body(signed_one), key);
}

Outcome<MadeCard> make_card(const Ledger& ledger, const BookId& player) {
  try {
    if (ledger.is_forgotten(player))
      return fail(FaultCode::refused, "the player withdrew and was forgotten", "player card", "");
    const auto record = load_player(ledger, player);
    if (!record) return fail(record.error());
    if (!may_cross(ledger, player, kPlayerBook))
      return fail(FaultCode::refused, "the player did not agree that this goes to others", "player card",
                  "ask the player and record the answer first: whoever sees a card can read it");
    if (!record->person.id()) return fail(FaultCode::not_found, "the book names no player", "player card", "");
    PlayerCard card;
    card.key = ledger.key().public_key();
    card.device = shortened(ledger.self().device, kDeviceName);
    card.made = in_range(ledger.wall().now());
    card.book = player;
    SaidTimes times(ledger, player);
    std::vector<CardItem> setups = newest_first(record->setups, times);
    if (setups.empty())
      if (auto last = last_strung(*record, times)) setups.push_back(std::move(*last));
    std::string text = fill(card, item_of(record->person.seen, times), setups, newest_first(record->rackets, times), ledger.key());
    if (text.size() > kMaxCardText)
      return fail(FaultCode::bad_input, "the player's names are too long for a card", "player card", "shorten them in the player's book");
    auto read = read_card(text);
    if (!read) return fail(read.error());
    return MadeCard{std::move(text), std::move(*read)};
  } catch (const SQLite::Exception& error) {
    return fail(fault_of(error, "the ledger"));
  } catch (const ArchiveError& error) {
    return fail(FaultCode::clock, error.what(), "player card", "set this device's clock");
  }
}

bool looks_like_card(std::string_view text) { return text.starts_with(kCardPrefix); }

Outcome<PlayerCard> read_card(std::string_view text) {
  const std::string where = "player card";
  // Spaces belong to the alphabet; only what a scanner or a mail adds is cut off.
  while (!text.empty() && (text.back() == '\n' || text.back() == '\r')) text.remove_suffix(1);
  if (!text.starts_with(kCardPrefix)) return fail(FaultCode::bad_input, "this is not a player card", where, "scan a code that says WEAVELOG:CARD");
  const auto damaged = [&](const std::string& what) { return fail(FaultCode::malformed, "the card is damaged: " + what, where, "scan it again"); };
  if (text.size() > kLongestText) return damaged("it is longer than any code");
  const auto payload = from_base45(text.substr(kCardPrefix.size()));
  if (!payload) return damaged("a letter is wrong or missing");
  Signature signature;
  if (payload->size() < 2 + signature.size() + kCardCheck) return damaged("it ends early");
  const ByteView checked = ByteView(*payload).first(payload->size() - kCardCheck);
  const auto check = card_check(checked);
  if (!std::equal(check.begin(), check.end(), payload->end() - kCardCheck)) return damaged("its check does not fit");
  const ByteView body = checked.first(checked.size() - signature.size());
  std::copy(checked.end() - static_cast<std::ptrdiff_t>(signature.size()), checked.end(), signature.begin());
  const std::uint8_t format = body[0], oldest = body[1];
  if (oldest > kCardFormat)
    return fail(FaultCode::newer,
                "a card of format " + std::to_string(format) + ", which programs from format " + std::to_string(oldest) + " on can read", where,
                "update Weavelog on this device");
  try {
    PublicKey key{};
    if (body.size() < 2 + key.size()) return damaged("it ends early");
    std::copy_n(body.begin() + 2, key.size(), key.begin());
    if (!verify(key, card_message(body), signature))
      return fail(FaultCode::untrusted, "the card is forged: the device that it names did not sign it", where,
                  "do not use it; ask the player, and tell the head of the room");
    PlayerCard card = load_body(body.subspan(2), format > kCardFormat);
    card.digest = digest_of({as_bytes("weavelog card 1"), *payload});
    return card;
  } catch (const ArchiveError& error) {
    return fail(FaultCode::malformed, std::string("signed, but not in the form of a card: ") + error.what(), where,
                "the program that made it is faulty; ask the player");
  }
}

}  // namespace weavelog
