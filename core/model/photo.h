#pragma once
// A picture of a racket, or of what was found on it: what is known of it. Its bytes lie outside the log, in the device's folder
// (sync/exchange/content_files.h), under their hash. Part of the player's book.

#include <array>

#include "core/model/field.h"
#include "core/model/fields.h"

namespace weavelog {

/// Put once, never changed.
struct Photo {
  EntityId job;
  EntityId racket;
  EntityId finding;  ///< of frame.h; none: of the racket as it came
  Bytes content;     ///< BLAKE2b-256 of the bytes
  std::string media_type;  ///< "image/jpeg", "image/png"
  std::optional<std::int64_t> size;  ///< in bytes
  std::optional<std::int64_t> at;
  std::string by;
  std::string note;
  bool operator==(const Photo&) const = default;
};

inline constexpr auto kPhotoFields = std::to_array<Field<Photo>>({
    {1, "job", &Photo::job},
    {2, "racket", &Photo::racket},
    {3, "finding", &Photo::finding},
    {4, "content", &Photo::content},
    {5, "media_type", &Photo::media_type},
    {6, "size", &Photo::size},
    {7, "at", &Photo::at},
    {8, "by", &Photo::by},
    {9, "note", &Photo::note},
});
template <>
struct Described<Photo> {
  static constexpr EntityKind kind = kPhoto;
  static constexpr std::uint32_t base = 1200;
  static constexpr std::span<const Field<Photo>> table = kPhotoFields;
};

}  // namespace weavelog
