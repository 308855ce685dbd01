#pragma once
// How a bundle is sealed: a head that says who can open it, then authenticated chunks, of which the last is marked, so that a file
// that was cut short is told apart from one that ends. Knows nothing of what is in the chunks. The bytes stand in DEVELOPERS.md.

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <variant>

#include "core/base/digest.h"
#include "core/base/id.h"
#include "core/log/author.h"

namespace weavelog {

using BundleId = Id<struct BundleTag>;

/// The newest format that this program knows. A bundle for others is written in format 1, which every program reads; a backup in
/// format 2, so that programs that know no backups do not take one for a bundle and hand on what nobody agreed to.
inline constexpr std::uint8_t kBundleFormat = 2;
inline constexpr std::uint8_t kPlainBundleFormat = 1;
inline constexpr std::uint8_t kBackupFormat = 2;
/// Of a chunk, before it is sealed.
inline constexpr std::size_t kMaxChunkBytes = 1024 * 1024 + 256;

/// What turning a passphrase into a key costs, with Argon2id (RFC 9106) as libsodium has it, in one lane. The usual one has the passes
/// and the memory that RFC 9106, section 4, recommends second, for machines with little memory.
struct PassphraseCost {
  std::uint32_t passes = 3;
  std::uint32_t memory_kib = 64 * 1024;
  bool operator==(const PassphraseCost&) const = default;
};
/// A file that asks for more is refused before anything is spent on it.
inline constexpr PassphraseCost kLargestPassphraseCost{8, 256 * 1024};
inline constexpr std::size_t kShortestPassphrase = 8;  ///< characters, NIST SP 800-63B, section 5.1.1.2

/// What every bundle begins with.
inline constexpr std::string_view kBundleMagic = "weavelog bundle\n";

/// Who is to open it: the device with that key, or whoever knows the words.
struct ForPassphrase {
  std::string words;
  PassphraseCost cost;
};
using SealFor = std::variant<PublicKey, ForPassphrase>;

/// All chance: it stands in the clear, and does not tell when the bundle was made.
[[nodiscard]] BundleId make_bundle_id();
/// Five words to be read aloud, 80 random bits.
[[nodiscard]] std::string make_passphrase();

/// What an opener has. Spaces at the ends of a passphrase do not count, nor which form of one letter a
/// keyboard gives (both sides take normal form C).
struct OpenWith {
  const DeviceKey* device = nullptr;
  std::optional<std::string> passphrase;
};

/// Gives up to so many bytes; 0 at the end. Faults: io.
using ByteSource = std::function<Outcome<std::size_t>(std::span<std::uint8_t>)>;
/// Takes bytes. Faults: io, no_space.
using ByteSink = std::function<Outcome<>(ByteView)>;
/// Reads from memory, which must outlive it.
[[nodiscard]] ByteSource source_of(ByteView bytes);
[[nodiscard]] ByteSink sink_of(Bytes& out);

/// The part of a bundle before its chunks, which everybody may read.
struct BundleHead {
  std::uint8_t format = 0;
  BundleId id;
  bool for_device = false;  ///< else for a passphrase
  PassphraseCost cost;      ///< of the passphrase
  Bytes bytes;              ///< as it stands in the file
  Digest digest{};          ///< of these bytes: every chunk is bound to it

  /// Faults: malformed (no bundle, cut short, damaged), newer (what is needed), those of the source.
  [[nodiscard]] static Outcome<BundleHead> read(const ByteSource& source);
  /// True if it is for the device with that key. Says nothing to who does not know the key.
  [[nodiscard]] bool is_for(const PublicKey& device) const;

 private:
  friend class ChunkSealer;
  friend class ChunkOpener;
  [[nodiscard]] static Outcome<BundleHead> parse(ByteView bytes);
  std::array<std::uint8_t, 8> hint_{};
  std::array<std::uint8_t, 16> salt_{};
  std::array<std::uint8_t, 24> nonce_{};
  Bytes key_;
  std::array<std::uint8_t, 24> stream_{};
};

class ChunkSealer {
 public:
  /// `format` is also the oldest that may read it. Faults: bad_input (a key that is none, a passphrase that is too short), no_space
  /// (memory for the passphrase).
  [[nodiscard]] static Outcome<ChunkSealer> create(const SealFor& receiver, const BundleId& id, std::uint8_t format = kPlainBundleFormat);
  ~ChunkSealer();
  ChunkSealer(ChunkSealer&&) noexcept;
  ChunkSealer& operator=(ChunkSealer&&) = delete;

  [[nodiscard]] const BundleHead& head() const;
  /// The next chunk as it stands in the file. Throws std::length_error on one of more than kMaxChunkBytes.
  [[nodiscard]] Bytes seal(ByteView plain, bool last);

 private:
  struct State;
  explicit ChunkSealer(std::unique_ptr<State> state);
  std::unique_ptr<State> state_;
};

/// Why no more chunks come.
enum class ChunkEnd : std::uint8_t {
  whole,      ///< the one that is marked as last has come, and nothing after it
  cut_short,  ///< the bytes end before it
  altered,    ///< a chunk is not as it was sealed, or bytes follow after the last one
};

class ChunkOpener {
 public:
  /// Faults: untrusted (another device's, wrong passphrase), bad_input (a passphrase is needed), refused (asks for more work than
  /// is given), no_space.
  [[nodiscard]] static Outcome<ChunkOpener> create(const BundleHead& head, const OpenWith& with);
  ~ChunkOpener();
  ChunkOpener(ChunkOpener&&) noexcept;
  ChunkOpener& operator=(ChunkOpener&&) = delete;

  struct Next {
    std::optional<Bytes> plain;
    bool last = false;
    ChunkEnd end = ChunkEnd::whole;  ///< if there is no `plain`
  };
  /// Faults: those of the source.
  [[nodiscard]] Outcome<Next> next(const ByteSource& source);

 private:
  struct State;
  explicit ChunkOpener(std::unique_ptr<State> state);
  std::unique_ptr<State> state_;
};

}  // namespace weavelog
