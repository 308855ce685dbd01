#pragma once
// Pictures of rackets and of what was found on them. The bytes lie outside the log; here is what is known of them.

#include <optional>
#include <string_view>
#include <vector>

#include "core/base/digest.h"
#include "core/desk/player_record.h"

namespace weavelog {

/// "image/jpeg" or "image/png" by how the bytes begin (ITU-T T.81, B.2.1: SOI; PNG, third edition, 5.2); nothing for anything else.
[[nodiscard]] std::optional<std::string_view> picture_type(ByteView bytes);

struct PhotoTaken {
  EntityId finding;  ///< that it shows; none: the racket
  Digest content{};
  std::string_view media_type;
  std::uint64_t size = 0;
  std::string note;
  std::string by;
  UnixMs at = 0;
};
/// What is known of a picture of a job's racket. Faults: not_found (job, finding); bad_input (no picture, a finding of another racket, the same
/// picture of the same thing again).
[[nodiscard]] Outcome<Draft> put_photo(const PlayerRecord& record, const EntityId& job, const PhotoTaken& taken);

/// Pictures of a racket, newest first.
[[nodiscard]] std::vector<const Loaded<Photo>*> photos_of(const PlayerRecord& record, const EntityId& racket);
/// True if a photo of the book names that content.
[[nodiscard]] bool names_photo(const Ledger& ledger, const BookId& book, const Digest& content);
/// The hash that a photo names; nothing if it is none.
[[nodiscard]] std::optional<Digest> content_of(const Photo& photo);

}  // namespace weavelog
