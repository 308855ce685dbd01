#pragma once
// What a player book holds: person, rackets, setups, drop-offs, jobs, stage marks, consents; each with its
// field table.

#include <array>

#include "core/model/field.h"

namespace weavelog {

struct Person {
  std::string family_name;
  std::string given_name;
  std::string native_name;  ///< the whole name in the player's own script
  std::string country;      ///< three letters, ISO 3166-1 alpha-3 or as the entry list has it
  std::optional<std::int64_t> birth_year;
  Hand hand = Hand::unsaid;
  std::string tour_number;  ///< the number that the player's tour gave, as text
  std::string language;     ///< BCP 47, "fr"
  Unit tension_unit = Unit::none;
  std::string contact;
  ConsentChoice consent = ConsentChoice::unsaid;
  std::string note;
  bool operator==(const Person&) const = default;
};

struct Racket {
  std::string label;  ///< what tells it from its sisters: "2", "red dot"
  std::string maker;
  std::string model;
  std::string serial;
  std::optional<Quantity> head_size;
  std::optional<std::int64_t> mains_count;
  std::optional<std::int64_t> crosses_count;
  std::optional<Quantity> tension_low;  ///< the range printed on the frame
  std::optional<Quantity> tension_high;
  std::optional<std::int64_t> pieces_needed;  ///< 1 or 2, if the maker asks for it
  std::string note;
  bool operator==(const Racket&) const = default;
};

/// What is agreed about one string bed. A setup proposes it, a job fixes it.
struct Agreed {
  std::string mains_string;
  std::optional<Quantity> mains_gauge;
  Supply mains_supply = Supply::unsaid;
  StringOwner mains_owner = StringOwner::unsaid;
  std::optional<Quantity> mains_tension;
  std::optional<Quantity> mains_prestretch;
  std::string crosses_string;
  std::optional<Quantity> crosses_gauge;
  Supply crosses_supply = Supply::unsaid;
  StringOwner crosses_owner = StringOwner::unsaid;
  std::optional<Quantity> crosses_tension;
  std::optional<Quantity> crosses_prestretch;
  std::optional<std::int64_t> pieces;  ///< 1 or 2 lengths of string
  std::optional<std::int64_t> knots;   ///< 2 or 4
  std::optional<Quantity> knot_pretension;  ///< per cent more on the last string before a knot: what the knot gives way
  std::string racket_stencil;          ///< the mark on the strings for the racket's maker
  std::string racket_ink;
  std::string string_stencil;  ///< the mark for the string's maker
  std::string string_ink;
  std::string dampener;
  std::string overgrip;
  std::string note;  ///< to the stringer
  bool operator==(const Agreed&) const = default;
};

/// A named wish of the player: "day", "night".
struct Setup : Agreed {
  std::string name;
  bool operator==(const Setup&) const = default;
};

struct DropOff {
  BookId event;
  std::string event_name;  ///< so that history reads well where the event's book is not
  std::string place;
  std::optional<std::int64_t> at;
  std::string brought_by;
  std::string collected_by;  ///< who may collect
  std::optional<std::int64_t> ready_by;
  Rush rush = Rush::none;
  std::string note;
  std::optional<std::int64_t> bags;  ///< that came with the rackets, 0 to 9
  std::string confirmed_text;  ///< exactly what stood on the turned screen
  Bytes confirmed_digest;      ///< BLAKE2b-256 of it
  std::string confirmed_language;
  std::optional<std::int64_t> confirmed_at;
  Bytes confirmed_device;  ///< AuthorId
  bool operator==(const DropOff&) const = default;
};

/// One racket strung once.
struct Job : Agreed {
  EntityId drop_off;
  EntityId racket;
  EntityId setup;  ///< that it came from; may be none
  BookId event;
  std::optional<std::int64_t> at;  ///< when it was taken in
  std::optional<std::int64_t> ready_by;
  Rush rush = Rush::none;
  std::optional<std::int64_t> order;  ///< in the drop-off, from 1
  std::optional<std::int64_t> tag_number;
  std::string time_agreed_by;  ///< who agreed to ready_by, where it is another one than was confirmed at the drop-off
  bool operator==(const Job&) const = default;
};

/// One step of one job. Put once, never changed; the job's stage follows from its marks.
struct StageMark {
  EntityId job;
  Stage stage = Stage::none;
  std::optional<std::int64_t> at;
  std::string by;
  std::string reason;
  Bytes after;  ///< ids (16 bytes each) of the newest marks that its maker saw: tells apart who went on from
                ///< what
  EntityId machine{};  ///< of the event, on which it was put; of on_machine only
  bool operator==(const StageMark&) const = default;
};

/// A consent as it was given. Put once; Person::consent holds what is valid now.
struct ConsentGiven {
  ConsentChoice choice = ConsentChoice::unsaid;
  std::optional<std::int64_t> at;
  std::string text;
  Bytes digest;
  std::string language;
  Bytes device;
  BookId event;  ///< at which room it was given; what "this room" means
  bool operator==(const ConsentGiven&) const = default;
};

/// A player card that was taken in: where values of this book came from. Put once; its id follows from the card, so that two devices
/// that take one card in write the same.
struct CardTaken {
  std::optional<std::int64_t> made_at;  ///< by the clock of who made the card
  std::string device;                   ///< that made it, as it calls itself
  Bytes key;                            ///< with which it signed
  Bytes digest;                         ///< BLAKE2b-256 of the card
  bool operator==(const CardTaken&) const = default;
};

inline constexpr auto kPersonFields = std::to_array<Field<Person>>({
    {1, "family_name", &Person::family_name},
    {2, "given_name", &Person::given_name},
    {3, "native_name", &Person::native_name},
    {4, "country", &Person::country},
    {5, "birth_year", &Person::birth_year},
    {6, "hand", &Person::hand},
    {7, "tour_number", &Person::tour_number},
    {8, "language", &Person::language},
    {9, "tension_unit", &Person::tension_unit},
    {10, "contact", &Person::contact},
    {11, "consent", &Person::consent, true},
    {12, "note", &Person::note},
});
template <>
struct Described<Person> {
  static constexpr EntityKind kind = kPerson;
  static constexpr std::uint32_t base = 100;
  static constexpr std::span<const Field<Person>> table = kPersonFields;
};

inline constexpr auto kRacketFields = std::to_array<Field<Racket>>({
    {1, "label", &Racket::label},
    {2, "maker", &Racket::maker},
    {3, "model", &Racket::model},
    {4, "serial", &Racket::serial},
    {5, "head_size", &Racket::head_size},
    {6, "mains_count", &Racket::mains_count},
    {7, "crosses_count", &Racket::crosses_count},
    {8, "tension_low", &Racket::tension_low},
    {9, "tension_high", &Racket::tension_high},
    {10, "pieces_needed", &Racket::pieces_needed},
    {11, "note", &Racket::note},
});
template <>
struct Described<Racket> {
  static constexpr EntityKind kind = kRacket;
  static constexpr std::uint32_t base = 200;
  static constexpr std::span<const Field<Racket>> table = kRacketFields;
};

inline constexpr auto kAgreedFields = std::to_array<Field<Agreed>>({
    {1, "mains_string", &Agreed::mains_string, true},
    {2, "mains_gauge", &Agreed::mains_gauge, true},
    {3, "mains_supply", &Agreed::mains_supply},
    {4, "mains_owner", &Agreed::mains_owner},
    {5, "mains_tension", &Agreed::mains_tension, true},
    {6, "mains_prestretch", &Agreed::mains_prestretch, true},
    {11, "crosses_string", &Agreed::crosses_string, true},
    {12, "crosses_gauge", &Agreed::crosses_gauge, true},
    {13, "crosses_supply", &Agreed::crosses_supply},
    {14, "crosses_owner", &Agreed::crosses_owner},
    {15, "crosses_tension", &Agreed::crosses_tension, true},
    {16, "crosses_prestretch", &Agreed::crosses_prestretch, true},
    {21, "pieces", &Agreed::pieces, true},
    {22, "knots", &Agreed::knots, true},
    {23, "knot_pretension", &Agreed::knot_pretension, true},
    {31, "racket_stencil", &Agreed::racket_stencil, true},
    {32, "racket_ink", &Agreed::racket_ink, true},
    {33, "string_stencil", &Agreed::string_stencil, true},
    {34, "string_ink", &Agreed::string_ink, true},
    {41, "dampener", &Agreed::dampener},
    {42, "overgrip", &Agreed::overgrip},
    {43, "note", &Agreed::note},
});
/// Has no kind of its own: setups and jobs hold these fields under tags of theirs.
template <>
struct Described<Agreed> {
  static constexpr std::uint32_t base = 0;
  static constexpr std::span<const Field<Agreed>> table = kAgreedFields;
};

inline constexpr auto kSetupFields = std::to_array<Field<Setup>>({
    {1, "name", &Setup::name},
});
template <>
struct Described<Setup> {
  using Part = Agreed;
  static constexpr EntityKind kind = kSetup;
  static constexpr std::uint32_t base = 300;
  static constexpr std::uint32_t part_base = 320;
  static constexpr std::span<const Field<Setup>> table = kSetupFields;
};

inline constexpr auto kDropOffFields = std::to_array<Field<DropOff>>({
    {1, "event", &DropOff::event},
    {2, "event_name", &DropOff::event_name},
    {3, "place", &DropOff::place},
    {4, "at", &DropOff::at},
    {5, "brought_by", &DropOff::brought_by},
    {6, "collected_by", &DropOff::collected_by},
    {7, "ready_by", &DropOff::ready_by},
    {8, "rush", &DropOff::rush},
    {9, "note", &DropOff::note},
    {10, "bags", &DropOff::bags},
    {21, "confirmed_text", &DropOff::confirmed_text},
    {22, "confirmed_digest", &DropOff::confirmed_digest},
    {23, "confirmed_language", &DropOff::confirmed_language},
    {24, "confirmed_at", &DropOff::confirmed_at},
    {25, "confirmed_device", &DropOff::confirmed_device},
});
template <>
struct Described<DropOff> {
  static constexpr EntityKind kind = kDropOff;
  static constexpr std::uint32_t base = 400;
  static constexpr std::span<const Field<DropOff>> table = kDropOffFields;
};

inline constexpr auto kJobFields = std::to_array<Field<Job>>({
    {1, "drop_off", &Job::drop_off},
    {2, "racket", &Job::racket},
    {3, "setup", &Job::setup},
    {4, "event", &Job::event},
    {5, "at", &Job::at},
    {6, "ready_by", &Job::ready_by},
    {7, "rush", &Job::rush},
    {8, "order", &Job::order},
    {9, "tag_number", &Job::tag_number},
    {10, "time_agreed_by", &Job::time_agreed_by},
});
template <>
struct Described<Job> {
  using Part = Agreed;
  static constexpr EntityKind kind = kJob;
  static constexpr std::uint32_t base = 500;
  static constexpr std::uint32_t part_base = 520;
  static constexpr std::span<const Field<Job>> table = kJobFields;
};

inline constexpr auto kStageMarkFields = std::to_array<Field<StageMark>>({
    {1, "job", &StageMark::job},
    {2, "stage", &StageMark::stage},
    {3, "at", &StageMark::at},
    {4, "by", &StageMark::by},
    {5, "reason", &StageMark::reason},
    {6, "after", &StageMark::after},
    {7, "machine", &StageMark::machine},
});
template <>
struct Described<StageMark> {
  static constexpr EntityKind kind = kStageMark;
  static constexpr std::uint32_t base = 600;
  static constexpr std::span<const Field<StageMark>> table = kStageMarkFields;
};

inline constexpr auto kConsentGivenFields = std::to_array<Field<ConsentGiven>>({
    {1, "choice", &ConsentGiven::choice},
    {2, "at", &ConsentGiven::at},
    {3, "text", &ConsentGiven::text},
    {4, "digest", &ConsentGiven::digest},
    {5, "language", &ConsentGiven::language},
    {6, "device", &ConsentGiven::device},
    {7, "event", &ConsentGiven::event},
});
template <>
struct Described<ConsentGiven> {
  static constexpr EntityKind kind = kConsentGiven;
  static constexpr std::uint32_t base = 700;
  static constexpr std::span<const Field<ConsentGiven>> table = kConsentGivenFields;
};

inline constexpr auto kCardTakenFields = std::to_array<Field<CardTaken>>({
    {1, "made_at", &CardTaken::made_at},
    {2, "device", &CardTaken::device},
    {3, "key", &CardTaken::key},
    {4, "digest", &CardTaken::digest},
});
template <>
struct Described<CardTaken> {
  static constexpr EntityKind kind = kCardTaken;
  static constexpr std::uint32_t base = 1900;
  static constexpr std::span<const Field<CardTaken>> table = kCardTakenFields;
};

}  // namespace weavelog
