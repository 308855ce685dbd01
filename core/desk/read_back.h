#pragma once
// The read-back: what the player confirms, in the player's language, with every value as it was spoken; and
// the confirmation.

#include <optional>
#include <string>
#include <vector>

#include "core/desk/cautions.h"
#include "core/desk/phrases.h"
#include "core/model/player.h"

namespace weavelog {

/// A field on which two answers stood, and the one that the player gives now.
struct SettledField {
  std::string_view name;  ///< in the registry
  std::vector<Value> answers;
  Value value;
  bool operator==(const SettledField&) const = default;
};

struct ReadBackLine {
  std::string racket_label;  ///< may be empty
  Agreed agreed;
  std::optional<Agreed> last_time;  ///< what is compared with; nothing for a first time
  std::vector<Caution> cautions{};  ///< what the player is to be warned of
  std::vector<SettledField> settled{};
};

struct ReadBackRequest {
  Language language;
  std::vector<ReadBackLine> lines;
  std::optional<Moment> ready_by;
  Rush rush = Rush::none;
};

/// One block of lines per different wish (rackets with the same one stand together) with what was settled and what is to be warned
/// of, then ready-by or that no time is promised, then what concerns the player and no racket, then the request to confirm. Lines end in
/// '\n' but for the last. The same request gives the same bytes on every device with the same version.
[[nodiscard]] std::string read_back(const ReadBackRequest& request);
/// "Changed: mains tension, 25 kg → 24 kg.", one for each.
[[nodiscard]] std::vector<std::string> change_lines(const Language& language,
                                                    const std::vector<Change>& changes);

/// What was confirmed, by whose device, when.
struct Confirmation {
  std::string text;  ///< exactly what stood on the screen
  Language language;
  UnixMs at = 0;
  AuthorId device;
};
/// Writes it into a drop-off, with the BLAKE2b-256 digest of the text.
void confirm(DropOff& drop_off, const Confirmation& confirmation);
/// True if a drop-off holds a confirmation whose digest is that of its text.
[[nodiscard]] bool is_confirmed(const DropOff& drop_off);

}  // namespace weavelog
