#pragma once
// Cautions where the hand is, each once per case. They defer to the maker's instructions, local rules and
// licensed practice.

#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/desk/phrases.h"
#include "core/desk/player_record.h"

namespace weavelog {

enum class Caution : std::uint8_t { cut_out, under_tension, cracked_frame, tension_over_range, arm_pain, stencil_ink };

/// "cut_out"; stable, also the phrase key's last part.
[[nodiscard]] std::string_view name_of(Caution caution);
/// To whoever strings.
[[nodiscard]] std::string caution_text(const Language& language, Caution caution);
/// The same to the player, on the turned screen; for a caution that is only the stringer's, as above.
[[nodiscard]] std::string caution_for_player(const Language& language, Caution caution);

/// What is to be said before a step: cutting out, tension on the machine, a tension above the printed range, ink; and where the note to the
/// stringer speaks of pain, when work begins.
/// `frame_doubt`: somebody reported a crack or another doubt about the frame.
[[nodiscard]] std::vector<Caution> cautions_for(Stage next, const Agreed& agreed, const Racket* racket,
                                                bool frame_doubt);

/// Somebody found a crack that was not put right; or doubted the frame and nobody has strung it since: the
/// racket's newest job waits for an answer, or
/// was put aside after it waited. What makes a racket wait is most often its frame. The reason that was
/// written, perhaps ""; nothing where there is no doubt.
[[nodiscard]] std::optional<std::string> doubt_about(const PlayerRecord& record, const EntityId& racket);
/// True where a note speaks of pain, an injury or the elbow, in one of the four languages. A list of words of
/// ours, common practice, no source: it may miss, and a caution too many does no harm.
[[nodiscard]] bool speaks_of_pain(std::string_view note);
/// What is to be said while a racket is handed over: a doubt about its frame, a tension above the printed
/// range, and pain that the wish's note or the player's speaks of. `racket` (may be null) is what is known of
/// it; `known` is none for a new one.
[[nodiscard]] std::vector<Caution> cautions_at_desk(const PlayerRecord& record, const EntityId& known,
                                                    const Racket* racket, const Agreed& agreed);

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
