#pragma once
// Draws, matches, home benches and the told day of an event. Part of the event's book. Ids of lines and matches follow from their draw (core/desk/draws.h), so
// that two tablets that note the same one while apart note one and the same thing.

#include <array>

#include "core/model/field.h"
#include "core/model/fields.h"

namespace weavelog {

struct DrawSheet {
  std::string name;  ///< "Women's singles"
  DrawKind kind = DrawKind::unsaid;
  std::optional<std::int64_t> lines;
  EntityId feeds;  ///< of qualifying: the main draw
  std::optional<std::int64_t> at;
  std::optional<bool> off;  ///< taken away
  std::optional<std::int64_t> sections;  ///< of qualifying: so many come through
  bool operator==(const DrawSheet&) const = default;
};

struct DrawPlace {
  EntityId draw;
  std::optional<std::int64_t> line;  ///< from 1, from the top
  std::string player;                ///< as the draw has it; empty: nobody yet, or a bye
  BookId book;                       ///< of the player, if known here
  std::string second;                ///< of a pair
  BookId second_book;
  std::optional<bool> bye;
  std::optional<std::int64_t> seed;
  std::optional<std::int64_t> rating;
  EntryVia via = EntryVia::unsaid;
  std::optional<std::int64_t> withdrawn;  ///< when
  std::optional<std::int64_t> section;    ///< of the qualifying from which somebody comes to this line, from 1
  bool operator==(const DrawPlace&) const = default;
};

/// One match of a draw: who won it, and when and where it is played.
struct MatchRecord {
  EntityId draw;
  std::optional<std::int64_t> round;   ///< from 1
  std::optional<std::int64_t> match;   ///< in the round, from 1, from the top
  std::optional<std::int64_t> winner;  ///< line, from 1; 0 after it was taken back
  EndOfMatch end = EndOfMatch::unsaid;
  std::string score;
  std::optional<std::int64_t> ended;
  std::string court;
  std::optional<std::int64_t> not_before;
  EntityId after;  ///< the match that it follows on its court
  std::string by;  ///< who noted it
  bool operator==(const MatchRecord&) const = default;
};

/// Where a player's rackets are strung as long as the event lasts.
struct BenchPlace {
  std::string player;
  BookId book;
  EntityId stringer;  ///< team member
  EntityId machine;
  std::optional<bool> pinned;  ///< by the head: no plan moves it
  std::optional<std::int64_t> at;
  std::string by;
  bool operator==(const BenchPlace&) const = default;
};

struct BenchAsk {
  std::string player;
  BookId book;
  std::optional<bool> never;  ///< with this one; otherwise: only
  EntityId stringer;
  EntityId machine;
  std::string note;
  std::optional<bool> off;
  bool operator==(const BenchAsk&) const = default;
};

/// Where and when a racket is strung, as it was told in the room. One of each job; its id follows from the job.
struct DayPlace {
  EntityId job;
  BookId player;
  EntityId stringer;  ///< team member
  EntityId machine;
  std::optional<std::int64_t> begin;
  std::optional<std::int64_t> ready;  ///< strung by then; checked and stencilled it is ready later
  std::optional<std::int64_t> at;     ///< when it was told
  std::string by;
  bool operator==(const DayPlace&) const = default;
};

/// By what this room plans: one of them, with an id that follows from the book.
struct PlanRules {
  std::optional<std::int64_t> hard_places;  ///< no two on one bench who may meet when so many or fewer are left
  std::string chances;                      ///< "rating", "seed", "even"
  std::optional<std::int64_t> margin_min;   ///< a racket is ready so long before its match
  std::string round_weights;                ///< what a meeting on one bench costs, from the final backwards: "16 8 4 2 1"
  bool operator==(const PlanRules&) const = default;
};

inline constexpr auto kDrawSheetFields = std::to_array<Field<DrawSheet>>({
    {1, "name", &DrawSheet::name},
    {2, "kind", &DrawSheet::kind},
    {3, "lines", &DrawSheet::lines},
    {4, "feeds", &DrawSheet::feeds},
    {5, "at", &DrawSheet::at},
    {6, "off", &DrawSheet::off},
    {7, "sections", &DrawSheet::sections},
});
template <>
struct Described<DrawSheet> {
  static constexpr EntityKind kind = kDraw;
  static constexpr std::uint32_t base = 3300;
  static constexpr std::span<const Field<DrawSheet>> table = kDrawSheetFields;
};

inline constexpr auto kDrawPlaceFields = std::to_array<Field<DrawPlace>>({
    {1, "draw", &DrawPlace::draw},
    {2, "line", &DrawPlace::line},
    {3, "player", &DrawPlace::player},
    {4, "book", &DrawPlace::book},
    {5, "second", &DrawPlace::second},
    {6, "second_book", &DrawPlace::second_book},
    {7, "bye", &DrawPlace::bye},
    {8, "seed", &DrawPlace::seed},
    {9, "rating", &DrawPlace::rating},
    {10, "via", &DrawPlace::via},
    {11, "withdrawn", &DrawPlace::withdrawn},
    {12, "section", &DrawPlace::section},
});
template <>
struct Described<DrawPlace> {
  static constexpr EntityKind kind = kDrawLine;
  static constexpr std::uint32_t base = 3400;
  static constexpr std::span<const Field<DrawPlace>> table = kDrawPlaceFields;
};

inline constexpr auto kMatchRecordFields = std::to_array<Field<MatchRecord>>({
    {1, "draw", &MatchRecord::draw},
    {2, "round", &MatchRecord::round},
    {3, "match", &MatchRecord::match},
    {4, "winner", &MatchRecord::winner, true},
    {5, "end", &MatchRecord::end},
    {6, "score", &MatchRecord::score},
    {7, "ended", &MatchRecord::ended},
    {8, "court", &MatchRecord::court},
    {9, "not_before", &MatchRecord::not_before},
    {10, "after", &MatchRecord::after},
    {11, "by", &MatchRecord::by},
});
template <>
struct Described<MatchRecord> {
  static constexpr EntityKind kind = kMatch;
  static constexpr std::uint32_t base = 3500;
  static constexpr std::span<const Field<MatchRecord>> table = kMatchRecordFields;
};

inline constexpr auto kBenchPlaceFields = std::to_array<Field<BenchPlace>>({
    {1, "player", &BenchPlace::player},
    {2, "book", &BenchPlace::book},
    {3, "stringer", &BenchPlace::stringer},
    {4, "machine", &BenchPlace::machine},
    {5, "pinned", &BenchPlace::pinned},
    {6, "at", &BenchPlace::at},
    {7, "by", &BenchPlace::by},
});
template <>
struct Described<BenchPlace> {
  static constexpr EntityKind kind = kHomeBench;
  static constexpr std::uint32_t base = 3600;
  static constexpr std::span<const Field<BenchPlace>> table = kBenchPlaceFields;
};

inline constexpr auto kBenchAskFields = std::to_array<Field<BenchAsk>>({
    {1, "player", &BenchAsk::player},
    {2, "book", &BenchAsk::book},
    {3, "never", &BenchAsk::never},
    {4, "stringer", &BenchAsk::stringer},
    {5, "machine", &BenchAsk::machine},
    {6, "note", &BenchAsk::note},
    {7, "off", &BenchAsk::off},
});
template <>
struct Described<BenchAsk> {
  static constexpr EntityKind kind = kBenchWish;
  static constexpr std::uint32_t base = 3700;
  static constexpr std::span<const Field<BenchAsk>> table = kBenchAskFields;
};

inline constexpr auto kDayPlaceFields = std::to_array<Field<DayPlace>>({
    {1, "job", &DayPlace::job},
    {2, "player", &DayPlace::player},
    {3, "stringer", &DayPlace::stringer},
    {4, "machine", &DayPlace::machine},
    {5, "begin", &DayPlace::begin},
    {6, "ready", &DayPlace::ready},
    {7, "at", &DayPlace::at},
    {8, "by", &DayPlace::by},
});
template <>
struct Described<DayPlace> {
  static constexpr EntityKind kind = kDayPlace;
  static constexpr std::uint32_t base = 3900;
  static constexpr std::span<const Field<DayPlace>> table = kDayPlaceFields;
};

inline constexpr auto kPlanRulesFields = std::to_array<Field<PlanRules>>({
    {1, "hard_places", &PlanRules::hard_places},
    {2, "chances", &PlanRules::chances},
    {3, "margin_min", &PlanRules::margin_min},
    {4, "round_weights", &PlanRules::round_weights},
});
template <>
struct Described<PlanRules> {
  static constexpr EntityKind kind = kPlanRules;
  static constexpr std::uint32_t base = 3800;
  static constexpr std::span<const Field<PlanRules>> table = kPlanRulesFields;
};

}  // namespace weavelog
