#pragma once
// The neutral operation files of the workload: reading them, and the digest of the state that they lead to.
//
//   A number time_ms device writes            an action: one transaction of the lines that follow
//   S record field value                      sets a field of a record
//   E job stage time_ms staff value           appends a stage event to a job
//
// Fields are separated by one tab; a value is typed: "s:" text, "n:" number, "b:" 0 or 1. A line that begins
// with # is a header. All writes of an action belong to one player and that player's jobs; a job's field
// "player" comes first.

#include <cstdint>
#include <filesystem>
#include <fstream>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace weavelog::bench {

struct Operation {
  bool event = false;
  std::string_view record;
  std::string_view name;   ///< field, or stage of an event
  std::string_view value;  ///< with its type: "s:..."
  std::int64_t time = 0;   ///< of an event
  std::string_view staff;  ///< of an event
};

struct Action {
  std::int64_t time = 0;
  int device = 0;  ///< the digits of its name
  std::vector<Operation> writes;
};

/// Reads a file action by action, some of them at a time. Throws std::runtime_error, naming the line, on a
/// bad one.
class OperationFile {
 public:
  explicit OperationFile(const std::filesystem::path& file);
  /// The next actions, at most `most`; empty at the end. Valid until the next call.
  [[nodiscard]] std::span<const Action> next(std::size_t most = 1000);

 private:
  [[noreturn]] void bad(const char* what) const;
  Operation operation(std::string_view line) const;

  std::string name_;
  std::ifstream in_;
  std::size_t line_ = 0;
  std::string pending_;  ///< the line of the action that comes next
  std::vector<std::string> lines_;
  std::vector<Action> actions_;
};

/// The digest over all fields and events of a state, in any order: "COUNT:" and two 32-bit sums of FNV-1a
/// hashes.
class StateDigest {
 public:
  void field(std::string_view record, std::string_view name, std::string_view typed);
  void event(std::string_view job, std::string_view stage, std::int64_t time, std::string_view staff,
             std::string_view typed);
  [[nodiscard]] std::string text() const;

 private:
  void line(std::string_view bytes);
  std::uint64_t count_ = 0;
  std::uint32_t first_ = 0;
  std::uint32_t second_ = 0;
};

struct Contended {
  std::string record, field;
  std::string of_a, of_b;  ///< typed
};

/// What SIZE.meta.json says.
struct WorkloadFacts {
  std::string size;
  std::size_t players = 0, jobs = 0, actions = 0, writes = 0;
  std::string digest, after_delta, after_second;
  std::vector<Contended> contended;

  /// (record TAB field) of the contended fields, which the digests after the deltas leave out.
  [[nodiscard]] std::set<std::string> left_out() const;
};
[[nodiscard]] WorkloadFacts read_facts(const std::filesystem::path& folder, const std::string& size);

}  // namespace weavelog::bench
