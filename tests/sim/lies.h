#pragma once
// What a hostile device with a valid key makes of the frames that its session wants to send.

#include <optional>
#include <vector>

#include "core/log/author.h"
#include "sync/wire/messages.h"
#include "tests/sim/random.h"

namespace weavelog::sim {

/// The number of a frame's message; 0 for a frame that is too short for one.
[[nodiscard]] inline std::size_t message_of(const Bytes& frame) { return frame.size() < 2 ? 0 : frame[1] & 0x7f; }

class Liar {
 public:
  Liar(const DeviceKey& key, std::uint64_t salt) : key_(key), random_(salt), disobeys_(random_.chance(500)) {}

  /// The frame itself, mostly; or one with other numbers, books, heads or entries, an older one again,
  /// rubbish, or nothing.
  [[nodiscard]] Bytes altered(Bytes frame);
  /// True for what it does not want to hear: that books are forgotten. It goes on offering them.
  [[nodiscard]] bool ignores(const Bytes& frame) const;

 private:
  [[nodiscard]] Message bent(Message message);
  void bend(Entries& entries);
  /// Entries under the liar's own key, properly signed, that break the rules of a log, or speak of somebody else's things as of another kind.
  [[nodiscard]] Batch forged(const Batch& like);
  struct Met {
    BatchBook book;
    Write write;
  };
  /// Something that somebody said in the batch.
  [[nodiscard]] std::optional<Met> met_in(const Batch& batch);

  const DeviceKey& key_;
  Random random_;
  bool disobeys_;
  std::vector<Bytes> sent_;
};

}  // namespace weavelog::sim
