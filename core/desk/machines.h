#pragma once
// The machines of a room: whether they can be used, when their clamps are due, what their last calibration showed.

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/base/language.h"
#include "core/model/machine.h"
#include "core/model/player.h"
#include "core/store/ledger.h"

namespace weavelog {

/// Faults: bad_input (no name or kind; a tension that is no force or not above zero; pre-stretch that is no list of 0 to 20 per cent;
/// a count below 1; the name is another machine's already).
[[nodiscard]] Outcome<Draft> add_machine(const BookId& event, std::span<const Loaded<Machine>> held, const Machine& machine, UnixMs at);
/// Changes what is said of a machine. Faults: as above.
[[nodiscard]] Outcome<Draft> change_machine(const BookId& event, std::span<const Loaded<Machine>> held, const Loaded<Machine>& machine,
                                            const Machine& wanted);

/// Faults: bad_input (nothing said; nobody named; a calibration without both tensions, or with one that is no force or not above zero;
/// out of order without a reason).
[[nodiscard]] Outcome<Draft> note_care(const BookId& event, const MachineCare& care, UnixMs now);

/// What holds of one machine now.
struct MachineNow {
  Loaded<Machine> machine;
  std::optional<MachineCare> out_of_order;  ///< since when, by whom, why; nothing if it can be used
  std::optional<std::int64_t> cleaned_at;
  std::optional<MachineCare> calibration;  ///< the last one
  std::int64_t strung = 0;                 ///< rackets on it since its clamps were cleaned
  bool cleaning_due = false;

  /// How far the gauge was from what was set, per mille of it, of the last calibration.
  [[nodiscard]] std::optional<std::int64_t> off_per_mille() const;
};

/// Moments at which a racket came on a machine.
struct MachineUse {
  EntityId machine;
  std::int64_t at = 0;
};

/// Every machine, in order of making. `evening`: the moment of the day from which clamps are due that are cleaned every evening and
/// were not since that day began (`morning`). Two tablets' notes fold by the times that they tell.
[[nodiscard]] std::vector<MachineNow> machines_now(std::vector<Loaded<Machine>> machines, std::span<const MachineCare> cares,
                                                   std::span<const MachineUse> uses, UnixMs morning, UnixMs evening, UnixMs now);
/// Of an event, as of now: morning is its midnight, evening 18 o'clock there.
[[nodiscard]] std::vector<MachineNow> event_machines(const Ledger& ledger, const BookId& event, const std::string& zone, UnixMs now);

/// Nothing goes on a machine that is out of order. Faults: refused, with what was noted about it.
[[nodiscard]] Outcome<> require_in_order(const MachineNow& machine);

/// What speaks against a machine for what is agreed, in words; empty: nothing. Whoever strings may know better, so it is no refusal: a
/// tension above what its maker allows, a pre-stretch that it has no preset for (where presets are known).
[[nodiscard]] std::vector<std::string> machine_doubts(const Language& language, const Machine& machine, const Agreed& agreed);
/// The machine that somebody puts a racket on if nothing else is said: the one used last, one of their own, the only one; none if it is
/// not in order.
[[nodiscard]] EntityId usual_machine(const Ledger& ledger, const BookId& event, std::span<const MachineNow> machines, const std::string& by);

/// The same out of the event's book.
[[nodiscard]] std::vector<Loaded<Machine>> load_machines(const Ledger& ledger, const BookId& event);
/// Every racket of the event that was put on a machine of which it was said which.
[[nodiscard]] std::vector<MachineUse> machine_uses(const Ledger& ledger, const BookId& event);
[[nodiscard]] std::vector<MachineCare> load_cares(const Ledger& ledger, const BookId& event);

/// The pre-stretches that can be set, per cent, ascending. Faults: bad_input (no list of numbers from 0 to 20).
[[nodiscard]] Outcome<std::vector<std::int64_t>> prestretches_from(const std::string& text);

}  // namespace weavelog
