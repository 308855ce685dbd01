#pragma once
// One table per struct says which member is which field. Loading, putting, comparing, exporting and the
// registry all work from that table, so no field list is written twice.

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include "core/log/draft.h"
#include "core/model/choices.h"
#include "core/model/fields.h"

namespace weavelog {

/// The types that members of structs have, those of choices included. A new one is added at the end of the list.
template <class... T>
struct Types {};
using MemberTypes =
    Types<std::string, std::optional<Quantity>, std::optional<std::int64_t>, std::optional<bool>, Bytes, EntityId, BookId, Unit, Hand, ConsentChoice, Supply, StringOwner,
          Rush, EntryVia, TeamRole, Stage, FrameFault, FramePart, FrameRemedy, WorkList, ReadingKind, PaidBy, StockWhy, MachineKind, CareKind, DrawKind, EndOfMatch,
          StringMaterial, LinkSaid, NameWhy>;

template <class S, class T>
struct MemberSlot {
  T S::*pointer = nullptr;
};

/// Which member a field is. Every source that reads a model has one of these for each of its structs, so it has to be quick to compile, which a
/// std::variant of so many pointers is not.
template <class S, class All = MemberTypes>
struct Member;
template <class S, class... T>
struct Member<S, Types<T...>> : MemberSlot<S, T>... {
  template <class M>
  constexpr Member(M S::*pointer) : MemberSlot<S, M>{pointer}, kind(place_of<M>()) {}  // NOLINT: rows of tables are written with the pointer itself

  std::uint8_t kind;  ///< place in MemberTypes

  template <class M>
  static constexpr std::uint8_t place_of() {
    std::uint8_t out = 0;
    (void)((std::is_same_v<M, T> || (++out, false)) || ...);
    return out;
  }
};

/// One row of a struct's table. Empty text, bytes and ids, choice 0 and an empty optional all mean "no
/// value".
template <class S>
struct Field {
  std::uint32_t number;   ///< added to the kind's base gives the tag
  std::string_view name;  ///< as in the registry
  Member<S> member;
  bool guarded = false;
};

/// Specialised beside each struct: `kind`, `base`, `table`; and `part`, `part_base` where it contains fields
/// of another struct (its base class) under numbers of its own.
template <class S>
struct Described;

// --- between a member and a Value

[[nodiscard]] inline Value to_value(const std::string& member) {
  return member.empty() ? Value{} : Value{member};
}
[[nodiscard]] inline Value to_value(const Bytes& member) {
  return member.empty() ? Value{} : Value{member};
}
template <class T>
[[nodiscard]] Value to_value(const std::optional<T>& member) {
  return member ? Value{*member} : Value{};
}
template <class Tag>
[[nodiscard]] Value to_value(const Id<Tag>& member) {
  return member ? Value{member} : Value{};
}
template <class Enum>
requires std::is_enum_v<Enum>
[[nodiscard]] Value to_value(Enum member) {
  return member == Enum{} ? Value{} : Value{static_cast<std::int64_t>(member)};
}

template <class T>
void from_value(const Value& value, T& member) {
  if (const T* held = std::get_if<T>(&value)) member = *held;
}
template <class T>
void from_value(const Value& value, std::optional<T>& member) {
  if (const T* held = std::get_if<T>(&value)) member = *held;
}
/// A choice that does not fit the number's width is left unsaid rather than cut down to another meaning.
template <class Enum>
requires std::is_enum_v<Enum>
void from_value(const Value& value, Enum& member) {
  const auto* held = std::get_if<std::int64_t>(&value);
  if (held && std::in_range<std::underlying_type_t<Enum>>(*held)) member = static_cast<Enum>(*held);
}

// --- over all fields of a struct

/// Which kinds of member a struct's own table has, one bit each. Most have few, and a visitor is compiled for these only.
template <class S>
inline constexpr std::uint64_t kKindsOfMember = [] {
  std::uint64_t out = 0;
  for (const Field<S>& field : Described<S>::table) out |= std::uint64_t{1} << field.member.kind;
  return out;
}();

template <class S, class T, class Visit>
constexpr void visit_if(const Field<S>& field, Visit& visit) {
  constexpr auto kind = Member<S>::template place_of<T>();
  if constexpr ((kKindsOfMember<S> >> kind & 1) != 0)
    if (field.member.kind == kind) visit(static_cast<const MemberSlot<S, T>&>(field.member).pointer);
}

/// Calls visit(member pointer).
template <class S, class Visit>
constexpr void visit_member(const Field<S>& field, Visit&& visit) {
  [&]<class... T>(Types<T...>) { (visit_if<S, T>(field, visit), ...); }(MemberTypes{});
}

template <class S, class Visit>
constexpr void visit_table(std::uint32_t base, Visit& visit) {
  for (const Field<S>& field : Described<S>::table)
    visit_member(field, [&](auto member) { visit(FieldTag{base + field.number}, field.name, field.guarded, member); });
}

/// Calls visit(tag, name, guarded, member pointer) for every field, those of a contained part included.
template <class S, class Visit>
constexpr void for_each_field(Visit&& visit) {
  visit_table<S>(Described<S>::base, visit);
  if constexpr (requires { typename Described<S>::Part; }) visit_table<typename Described<S>::Part>(Described<S>::part_base, visit);
}

/// The tag of a member: `tag_of<Job>(&Job::ready_by)`, `tag_of<Setup>(&Agreed::mains_tension)`.
template <class S, class MemberPointer>
[[nodiscard]] constexpr FieldTag tag_of(MemberPointer wanted) {
  FieldTag found{};
  for_each_field<S>([&](FieldTag tag, std::string_view, bool, auto member) {
    if constexpr (std::is_same_v<decltype(member), MemberPointer>)
      if (member == wanted) found = tag;
  });
  return found;
}

/// One field in which two values differ.
struct Change {
  FieldTag tag{};
  std::string_view name;
  bool guarded = false;
  Value before;
  Value after;
  bool operator==(const Change&) const = default;
};

/// What is done field by field. Its bodies, which run over every kind of member, are compiled once for each struct, in
/// field_work.cpp: a new struct gets a line there.
template <class S>
struct FieldWork {
  static void load(S& out, const EntityState& state);
  static void put_changes(Draft& draft, const EntityState& seen, const S& wanted);
  static std::vector<Change> compare(const S& before, const S& after);
};

/// The current (latest) values of an entity. Values of another type than the field's are passed over.
template <class S>
[[nodiscard]] S from_state(const EntityState& state) {
  S out;
  FieldWork<S>::load(out, state);
  return out;
}

/// A struct together with the state that it was loaded from: what its reader saw, and what a Draft replaces.
template <class S>
struct Loaded {
  EntityState seen;
  S now;

  Loaded() = default;
  explicit Loaded(EntityState state) : seen(std::move(state)), now(from_state<S>(seen)) {}
  [[nodiscard]] const EntityId& id() const { return seen.id; }
};

/// Puts the fields in which `wanted` differs from what was seen; fields emptied are cleared.
template <class S>
void put_changes(Draft& draft, const EntityState& seen, const S& wanted) {
  FieldWork<S>::put_changes(draft, seen, wanted);
}

/// A new entity of the struct's kind with its fields; returns the state (without cells) under which it was
/// put.
template <class S>
EntityState put_new(Draft& draft, const S& wanted, UnixMs now) {
  EntityState fresh = new_entity(draft.book(), Described<S>::kind, now);
  put_changes(draft, fresh, wanted);
  return fresh;
}

template <class S>
[[nodiscard]] std::vector<Change> compare(const S& before, const S& after) {
  return FieldWork<S>::compare(before, after);
}

}  // namespace weavelog
