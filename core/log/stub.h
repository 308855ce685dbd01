#pragma once
// Stub: all that stays of a forgotten book. It says that the book was forgotten, by whom, and when, and
// travels so that every device erases the book and refuses its return. It holds no hash of content: short
// values can be guessed from one.

#include "core/base/clock.h"
#include "core/log/author.h"
#include "core/log/registry.h"

namespace weavelog {

struct Stub {
  BookId book;
  BookKind kind{};
  UnixMs at = 0;       ///< by the wall clock of who ordered it; shown, never trusted
  PublicKey key{};     ///< who ordered it
  std::string device;  ///< its name, for people
  Signature signature{};
  bool operator==(const Stub&) const = default;
};

/// What the signature covers (DEVELOPERS.md, formats).
[[nodiscard]] Bytes stub_message(const Stub& stub);
[[nodiscard]] Stub sign_stub(const DeviceKey& key, std::string device, const BookId& book, BookKind kind,
                             UnixMs at);
/// Did who it names sign it, as it stands? Whether that device may order it is another question (sync/trust).
[[nodiscard]] bool proves_itself(const Stub& stub);

}  // namespace weavelog
