#include "core/desk/photo.h"

#include <algorithm>
#include <array>

namespace weavelog {
namespace {

constexpr std::array<std::uint8_t, 3> kJpeg{0xff, 0xd8, 0xff};
constexpr std::array<std::uint8_t, 8> kPng{0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

template <std::size_t N>
bool begins(ByteView bytes, const std::array<std::uint8_t, N>& sign) {
  return bytes.size() >= N && std::equal(sign.begin(), sign.end(), bytes.begin());
}

}  // namespace

std::optional<std::string_view> picture_type(ByteView bytes) {
  if (begins(bytes, kJpeg)) return "image/jpeg";
  if (begins(bytes, kPng)) return "image/png";
  return std::nullopt;
}

Outcome<Draft> put_photo(const PlayerRecord& record, const EntityId& id, const PhotoTaken& taken) {
  const auto* job = record.job(id);
  if (!job) return fail(FaultCode::not_found, "no such job", id.hex(), "look at the board again");
  if (taken.size == 0 || taken.media_type.empty() || !std::in_range<std::int64_t>(taken.size))
    return fail(FaultCode::bad_input, "there is no picture", "photo", "choose a JPEG or PNG file");
  if (taken.finding) {
    const auto* finding = record.finding(taken.finding);
    if (!finding) return fail(FaultCode::not_found, "no such finding", taken.finding.hex(), "look at the racket again");
    if (finding->now.racket != job->now.racket)
      return fail(FaultCode::bad_input, "this was found on another racket", taken.finding.hex(), "choose one of this racket");
  }
  Photo photo;
  photo.job = id;
  photo.racket = job->now.racket;
  photo.finding = taken.finding;
  photo.content = Bytes(taken.content.begin(), taken.content.end());
  photo.media_type = taken.media_type;
  photo.size = static_cast<std::int64_t>(taken.size);
  photo.at = taken.at;
  photo.by = taken.by;
  photo.note = taken.note;
  for (const auto& held : record.photos)
    if (held.now.job == photo.job && held.now.finding == photo.finding && held.now.content == photo.content)
      return fail(FaultCode::bad_input, "the racket has this picture already", "photo", "nothing needs to be done");
  Draft draft(record.book, kPlayerBook, kActPhoto);
  (void)put_new(draft, photo, taken.at);
  return draft;
}

std::vector<const Loaded<Photo>*> photos_of(const PlayerRecord& record, const EntityId& racket) {
  std::vector<const Loaded<Photo>*> own;
  for (const auto& held : record.photos)
    if (held.now.racket == racket) own.push_back(&held);
  std::stable_sort(own.begin(), own.end(), [](const auto* a, const auto* b) { return a->now.at.value_or(0) > b->now.at.value_or(0); });
  return own;
}

bool names_photo(const Ledger& ledger, const BookId& book, const Digest& content) {
  const auto photos = ledger.entities(book, kPhoto);
  return std::any_of(photos.begin(), photos.end(), [&](const EntityState& state) { return content_of(Loaded<Photo>(state).now) == content; });
}

std::optional<Digest> content_of(const Photo& photo) {
  Digest digest{};
  if (photo.content.size() != digest.size()) return std::nullopt;
  std::copy(photo.content.begin(), photo.content.end(), digest.begin());
  return digest;
}

}  // namespace weavelog
