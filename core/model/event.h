#pragma once
// What an event book holds: the event, its team, its entry list, its prices; each with its field table.

#include <array>

#include "core/model/field.h"

namespace weavelog {

struct EventInfo {
  std::string name;
  std::string place;
  std::string first_day;  ///< ISO 8601 date, "2031-05-26"
  std::string last_day;
  std::string time_zone;  ///< IANA name
  std::string currency;   ///< ISO 4217 code
  std::optional<std::int64_t> keep_days;  ///< so many days after the last one servers let players' books go; none: they keep them
  bool operator==(const EventInfo&) const = default;
};

struct TeamMember {
  std::string name;
  TeamRole role = TeamRole::unsaid;
  std::string languages;  ///< BCP 47, separated by spaces
  std::string skills;
  Bytes device;  ///< AuthorId of the member's tablet
  bool operator==(const TeamMember&) const = default;
};

/// One line of an entry list.
struct EntryListItem {
  std::string family_name;
  std::string given_name;
  std::string native_name;
  std::string country;
  std::optional<std::int64_t> birth_year;
  std::optional<std::int64_t> seed;
  EntryVia via = EntryVia::unsaid;
  std::string draw;  ///< "women singles", ...
  Hand hand = Hand::unsaid;
  std::string tour_number;
  BookId player;  ///< once linked to a player's book
  bool operator==(const EntryListItem&) const = default;
};

/// What a service costs, in the event's currency.
struct Price {
  std::string service;                       ///< "labour", "rush", ...
  std::optional<std::int64_t> amount_minor;  ///< in minor units of the currency (cents)
  std::string currency;                      ///< ISO 4217 code
  bool operator==(const Price&) const = default;
};

inline constexpr auto kEventFields = std::to_array<Field<EventInfo>>({
    {1, "name", &EventInfo::name},
    {2, "place", &EventInfo::place},
    {3, "first_day", &EventInfo::first_day},
    {4, "last_day", &EventInfo::last_day},
    {5, "time_zone", &EventInfo::time_zone},
    {6, "currency", &EventInfo::currency},
    {7, "keep_days", &EventInfo::keep_days},
});
template <>
struct Described<EventInfo> {
  static constexpr EntityKind kind = kEvent;
  static constexpr std::uint32_t base = 2000;
  static constexpr std::span<const Field<EventInfo>> table = kEventFields;
};

inline constexpr auto kTeamMemberFields = std::to_array<Field<TeamMember>>({
    {1, "name", &TeamMember::name},
    {2, "role", &TeamMember::role},
    {3, "languages", &TeamMember::languages},
    {4, "skills", &TeamMember::skills},
    {5, "device", &TeamMember::device},
});
template <>
struct Described<TeamMember> {
  static constexpr EntityKind kind = kTeamMember;
  static constexpr std::uint32_t base = 2100;
  static constexpr std::span<const Field<TeamMember>> table = kTeamMemberFields;
};

inline constexpr auto kEntryListItemFields = std::to_array<Field<EntryListItem>>({
    {1, "family_name", &EntryListItem::family_name},
    {2, "given_name", &EntryListItem::given_name},
    {3, "native_name", &EntryListItem::native_name},
    {4, "country", &EntryListItem::country},
    {5, "birth_year", &EntryListItem::birth_year},
    {6, "seed", &EntryListItem::seed},
    {7, "via", &EntryListItem::via},
    {8, "draw", &EntryListItem::draw},
    {9, "hand", &EntryListItem::hand},
    {10, "tour_number", &EntryListItem::tour_number},
    {11, "player", &EntryListItem::player},
});
template <>
struct Described<EntryListItem> {
  static constexpr EntityKind kind = kEntryListItem;
  static constexpr std::uint32_t base = 2200;
  static constexpr std::span<const Field<EntryListItem>> table = kEntryListItemFields;
};

inline constexpr auto kPriceFields = std::to_array<Field<Price>>({
    {1, "service", &Price::service},
    {2, "amount_minor", &Price::amount_minor},
    {3, "currency", &Price::currency},
});
template <>
struct Described<Price> {
  static constexpr EntityKind kind = kPrice;
  static constexpr std::uint32_t base = 2300;
  static constexpr std::span<const Field<Price>> table = kPriceFields;
};

}  // namespace weavelog
