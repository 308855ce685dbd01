#pragma once
// Cautions where the hand is, each once per case. They defer to the maker's instructions, local rules and
// licensed practice.

#include <set>
#include <string>
#include <vector>

#include "core/desk/phrases.h"
#include "core/model/player.h"

namespace weavelog {

enum class Caution : std::uint8_t { cut_out, under_tension, cracked_frame, tension_over_range, arm_pain };

/// "cut_out"; stable, also the phrase key's last part.
[[nodiscard]] std::string_view name_of(Caution caution);
[[nodiscard]] std::string caution_text(const Language& language, Caution caution);

/// What is to be said before a step: cutting out, tension on the machine, a tension above the printed range.
/// `frame_doubt`: somebody reported a crack or another doubt about the frame.
[[nodiscard]] std::vector<Caution> cautions_for(Stage next, const Agreed& agreed, const Racket* racket,
                                                bool frame_doubt);

/// Shows each caution once per case: a case is a job, or what the caller names.
class CautionsShown {
 public:
  /// True the first time.
  bool first_time(const std::string& of_case, Caution caution) {
    return shown_.emplace(of_case, caution).second;
  }
  [[nodiscard]] bool was_shown(const std::string& of_case, Caution caution) const {
    return shown_.contains({of_case, caution});
  }

 private:
  std::set<std::pair<std::string, Caution>> shown_;
};

}  // namespace weavelog
