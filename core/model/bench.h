#pragma once
// What was done with a racket on the bench and behind it: the work, what was measured, the check. Part of the player's book, so that it
// follows the racket to the next event.

#include <array>

#include "core/model/field.h"
#include "core/model/fields.h"

namespace weavelog {

/// The work on one job, from cutting out to strung; done again after a failed check, there is one more. Its identifier follows from
/// the job and that count, so that two devices write into one.
struct BenchRecord {
  EntityId job;
  EntityId machine;          ///< of the event; may be none
  std::string machine_name;  ///< so that history reads well where the event's book is not
  std::string by;
  std::optional<std::int64_t> started_at;
  std::optional<std::int64_t> finished_at;
  std::string steps_done;  ///< names of steps (core/desk/work_list.h), one a line
  std::string note;
  bool operator==(const BenchRecord&) const = default;
};

/// One look at a strung racket. Put once, never changed.
struct CheckResult {
  EntityId job;
  std::string items;  ///< one a line: "+" in order, "-" not, then the step's name
  std::optional<bool> passed;
  std::string by;
  std::optional<std::int64_t> at;
  std::string reason;            ///< why it is done again
  Stage back_to = Stage::none;  ///< where the racket went for that
  bool operator==(const CheckResult&) const = default;
};

/// Something measured, as the instrument said it. Put once, never changed. Of a job in the player's book; of a machine alone in the event's.
struct Reading {
  EntityId job;
  EntityId machine;
  std::string machine_name;
  ReadingKind what = ReadingKind::unsaid;
  std::optional<Quantity> value;
  std::optional<Quantity> set_to;  ///< what a tension head was set to when it was measured
  std::optional<std::int64_t> at;
  std::string by;
  std::string note;  ///< which instrument
  bool operator==(const Reading&) const = default;
};

inline constexpr auto kBenchRecordFields = std::to_array<Field<BenchRecord>>({
    {1, "job", &BenchRecord::job},
    {2, "machine", &BenchRecord::machine},
    {3, "machine_name", &BenchRecord::machine_name},
    {4, "by", &BenchRecord::by},
    {5, "started_at", &BenchRecord::started_at},
    {6, "finished_at", &BenchRecord::finished_at},
    {7, "steps_done", &BenchRecord::steps_done},
    {8, "note", &BenchRecord::note},
});
template <>
struct Described<BenchRecord> {
  static constexpr EntityKind kind = kBenchRecord;
  static constexpr std::uint32_t base = 900;
  static constexpr std::span<const Field<BenchRecord>> table = kBenchRecordFields;
};

inline constexpr auto kCheckResultFields = std::to_array<Field<CheckResult>>({
    {1, "job", &CheckResult::job},
    {2, "items", &CheckResult::items},
    {3, "passed", &CheckResult::passed},
    {4, "by", &CheckResult::by},
    {5, "at", &CheckResult::at},
    {6, "reason", &CheckResult::reason},
    {7, "back_to", &CheckResult::back_to},
});
template <>
struct Described<CheckResult> {
  static constexpr EntityKind kind = kCheckResult;
  static constexpr std::uint32_t base = 1000;
  static constexpr std::span<const Field<CheckResult>> table = kCheckResultFields;
};

inline constexpr auto kReadingFields = std::to_array<Field<Reading>>({
    {1, "job", &Reading::job},
    {2, "machine", &Reading::machine},
    {3, "machine_name", &Reading::machine_name},
    {4, "what", &Reading::what},
    {5, "value", &Reading::value},
    {6, "set_to", &Reading::set_to},
    {7, "at", &Reading::at},
    {8, "by", &Reading::by},
    {9, "note", &Reading::note},
});
template <>
struct Described<Reading> {
  static constexpr EntityKind kind = kReading;
  static constexpr std::uint32_t base = 1100;
  static constexpr std::span<const Field<Reading>> table = kReadingFields;
};

}  // namespace weavelog
