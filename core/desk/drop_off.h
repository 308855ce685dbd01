#pragma once
// One hand-over of rackets by a player: everything it brings into being, in one action.

#include <optional>
#include <string>
#include <vector>

#include "core/desk/consent.h"
#include "core/desk/last_time.h"
#include "core/desk/player_record.h"
#include "core/desk/read_back.h"

namespace weavelog {

/// One racket handed over.
struct DropOffLine {
  EntityId racket;             ///< a known one, or none and
  std::optional<Racket> made;  ///< the new one
  Agreed agreed;
  EntityId setup;       ///< that the wish came from; none: kept under a name of its own if `keep_as` is given
  std::string keep_as;  ///< name under which a new setup is kept; lines with the same name and wish share one
  std::optional<Agreed> last_time;  ///< what it was compared with on the screen
  std::vector<SettledField> settled{};  ///< open questions that the player answers with this hand-over: close_question() stores them
  std::optional<std::int64_t> tag_number;
};

/// Bags of one hand-over, at most.
inline constexpr std::int64_t kMostBags = 9;

struct DropOffRequest {
  EntityId id;  ///< of the drop-off, for who wants to know later whether it was stored; none: a new one
  std::optional<Person> new_person;  ///< for a player whose book begins here
  DropOff drop_off;  ///< event, place, at, who, ready-by, rush, note; its confirmation is filled in
  std::vector<DropOffLine> lines;
  /// The player's answer, where the consent was asked for on the same screen; stored with all the rest.
  std::optional<ConsentSaid> consent;
  /// Where the day is told; IANA name.
  std::string time_zone = "UTC";
  Language language;
  AuthorId device;
};

/// The line that "same as last time" makes: the proposal, beside what was strung.
[[nodiscard]] DropOffLine line_from(const LastTime& last);

/// What a line goes by: the setup that its wish came from, and setup and job of last time.
[[nodiscard]] std::vector<EntityId> goes_by(const PlayerRecord& record, const DropOffLine& line);
/// The open questions on what a line goes by. Whoever takes one of the answers without asking decides for the player.
[[nodiscard]] std::vector<OpenQuestion> questions_on(const PlayerRecord& record, const DropOffLine& line);

/// The text for the turned screen; what the player has to be warned of is part of it.
[[nodiscard]] std::string read_back_of(const PlayerRecord& record, const DropOffRequest& request);

/// Person (if new), rackets, setups, the drop-off with its confirmation, a job and its first stage mark for
/// each line, and the consent if it was said. `confirmed_text` is what stood on the screen when the player
/// confirmed, nothing if it was not confirmed. Faults: bad_input (no racket, one racket twice, a setup that
/// check_setup refuses, a ready-by that check_promise() refuses, more bags than kMostBags, a text that is not what these answers read back as, a consent in other words than its
/// choice's), not_found (a racket or setup that the book does not have), conflict (the racket is in the room
/// already).
[[nodiscard]] Outcome<Draft> drop_off(const PlayerRecord& record, const DropOffRequest& request,
                                      const std::optional<std::string>& confirmed_text,
                                      const std::string& by);

/// The consent that was said at a drop-off, for the other books of the person that are held here, one draft each: `stored` has it with the
/// drop-off. Empty if none was asked for. Faults: those of load_person() and give_consent().
[[nodiscard]] Outcome<std::vector<Draft>> consent_beside(const Ledger& ledger, const BookId& stored, const DropOffRequest& request);

/// True if the job's hand-over was confirmed and nothing guarded in the job was changed after that, or is
/// open: otherwise it has to be read back again.
[[nodiscard]] bool still_confirmed(const PlayerRecord& record, const EntityId& job);
/// A later confirmation of the same hand-over, of a text that was read back anew. Faults: not_found,
/// bad_input (no text).
[[nodiscard]] Outcome<Draft> confirm_again(const PlayerRecord& record, const EntityId& drop_off,
                                           const Confirmation& confirmation);

}  // namespace weavelog
