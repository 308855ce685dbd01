#pragma once
// The machines of a room and what was done to them. Part of the event's book.

#include <array>

#include "core/model/field.h"
#include "core/model/fields.h"

namespace weavelog {

struct Machine {
  std::string name;  ///< as the room calls it: "1", "by the window"
  MachineKind kind = MachineKind::unsaid;
  std::string maker;
  std::string model;
  std::string whose;                      ///< the stringer's name, where it is from a private bag; "": the event's
  std::optional<Quantity> max_tension;    ///< as the maker says
  std::string prestretch;                 ///< what can be set, per cent, separated by spaces: "0 10 15 20"
  std::optional<std::int64_t> clean_every;  ///< clamps are due after so many rackets; unsaid: every evening
  std::string note;
  bool operator==(const Machine&) const = default;
};

/// Something was done to a machine, or happened to it. Put once, never changed; what holds now follows from all of them.
struct MachineCare {
  EntityId machine;
  CareKind what = CareKind::unsaid;
  std::optional<std::int64_t> at;
  std::string by;
  std::optional<Quantity> asked;  ///< of a calibration: the tension that was set
  std::optional<Quantity> read;   ///< and what the gauge showed
  std::string note;               ///< the reason, where it goes out of order
  bool operator==(const MachineCare&) const = default;
};

inline constexpr auto kMachineFields = std::to_array<Field<Machine>>({
    {1, "name", &Machine::name},
    {2, "kind", &Machine::kind},
    {3, "maker", &Machine::maker},
    {4, "model", &Machine::model},
    {5, "whose", &Machine::whose},
    {6, "max_tension", &Machine::max_tension},
    {7, "prestretch", &Machine::prestretch},
    {8, "clean_every", &Machine::clean_every},
    {9, "note", &Machine::note},
});
template <>
struct Described<Machine> {
  static constexpr EntityKind kind = kMachine;
  static constexpr std::uint32_t base = 2400;
  static constexpr std::span<const Field<Machine>> table = kMachineFields;
};

inline constexpr auto kMachineCareFields = std::to_array<Field<MachineCare>>({
    {1, "machine", &MachineCare::machine},
    {2, "what", &MachineCare::what},
    {3, "at", &MachineCare::at},
    {4, "by", &MachineCare::by},
    {5, "asked", &MachineCare::asked},
    {6, "read", &MachineCare::read},
    {7, "note", &MachineCare::note},
});
template <>
struct Described<MachineCare> {
  static constexpr EntityKind kind = kMachineCare;
  static constexpr std::uint32_t base = 2500;
  static constexpr std::span<const Field<MachineCare>> table = kMachineCareFields;
};

}  // namespace weavelog
