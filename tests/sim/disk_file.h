#pragma once
// One file of a simulated disk: its bytes, what was written since the last sync, its locks and its shared
// memory.

#include <algorithm>
#include <array>
#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

#include "core/base/bytes.h"
#include "tests/sim/random.h"

namespace weavelog::sim {

struct DiskFile {
  Bytes bytes;

  // What undoes everything since the last sync, in the order of writing.
  struct Undo {
    std::size_t offset = 0;
    std::size_t written = 0;  ///< bytes
    Bytes before;             ///< what stood there; shorter than `written` where the file ended
  };
  std::vector<Undo> undo;
  std::size_t synced_size = 0;
  /// What is truly on the disk, once a sync has failed: the system takes what it could not write then for written, shows it to every program, and no
  /// later sync brings it there, unless it is written anew (as Linux does).
  std::optional<Bytes> durable;

  // SQLite's file locks (sqlite3_file's levels), counted over all handles.
  int shared = 0;
  const void* reserved = nullptr;
  const void* pending = nullptr;
  const void* exclusive = nullptr;

  // Shared memory of the write-ahead log; goes when its last user does.
  std::vector<std::unique_ptr<std::array<std::uint8_t, 32768>>> memory;
  std::array<int, 8> memory_shared{};
  std::array<const void*, 8> memory_exclusive{};
  int memory_users = 0;

  void write(std::size_t offset, ByteView data) {
    Undo& step = undo.emplace_back();
    step.offset = offset;
    step.written = data.size();
    if (offset < bytes.size()) {
      const std::size_t kept = std::min(data.size(), bytes.size() - offset);
      step.before.assign(bytes.begin() + static_cast<std::ptrdiff_t>(offset),
                         bytes.begin() + static_cast<std::ptrdiff_t>(offset + kept));
    }
    if (const std::size_t end = offset + data.size(); bytes.size() < end) {
      if (bytes.capacity() < end) bytes.reserve(std::max<std::size_t>(2 * end, 256 * 1024));
      if (offset == bytes.size()) {  // as a log grows
        bytes.insert(bytes.end(), data.begin(), data.end());
        return;
      }
      bytes.resize(end);
    }
    std::copy(data.begin(), data.end(), bytes.begin() + static_cast<std::ptrdiff_t>(offset));
  }

  void truncate(std::size_t size) {
    if (size >= bytes.size()) {
      if (size > bytes.size()) write(bytes.size(), Bytes(size - bytes.size()));
      return;
    }
    Undo& step = undo.emplace_back();
    step.offset = size;
    step.before.assign(bytes.begin() + static_cast<std::ptrdiff_t>(size), bytes.end());
    bytes.resize(size);
  }

  void sync() {
    if (durable) {
      durable->resize(bytes.size());
      for (const Undo& step : undo) {
        const std::size_t end = std::min(step.offset + std::max(step.written, step.before.size()), bytes.size());
        for (std::size_t i = step.offset; i < end; ++i) (*durable)[i] = bytes[i];
      }
    }
    undo.clear();
    synced_size = bytes.size();
  }

  void sync_failed() {
    if (!durable) durable = synced();
    undo.clear();
    synced_size = bytes.size();
  }

  /// The bytes as of the last sync.
  [[nodiscard]] Bytes synced() const {
    Bytes out = bytes;
    for (auto step = undo.rbegin(); step != undo.rend(); ++step) {
      if (out.size() < step->offset + step->before.size()) out.resize(step->offset + step->before.size());
      std::copy(step->before.begin(), step->before.end(),
                out.begin() + static_cast<std::ptrdiff_t>(step->offset));
    }
    out.resize(synced_size);
    return out;
  }

  /// Leaves what a power cut leaves; returns how many bytes of the newest state are lost.
  std::uint64_t cut_power(Random& random, std::size_t sector);
  /// Nobody holds it open any more.
  void forget_users() {
    shared = memory_users = 0;
    reserved = pending = exclusive = nullptr;
    memory.clear();
    memory_shared = {};
    memory_exclusive = {};
  }
};

inline std::uint64_t DiskFile::cut_power(Random& random, std::size_t sector) {
  if (undo.empty() && !durable) return 0;
  Bytes before = durable ? std::move(*durable) : synced();
  durable.reset();
  const std::size_t synced_bytes = before.size();
  const Bytes after = std::move(bytes);
  std::vector<bool> touched(std::max(synced_bytes, after.size()) / sector + 1);
  for (const Undo& step : undo) {
    const std::size_t end = step.offset + std::max(step.written, step.before.size());
    for (std::size_t at = step.offset / sector; at * sector < end && at < touched.size(); ++at)
      touched[at] = true;
  }
  // What the disk had got round to: nothing, everything, what came first, or any sectors at all.
  const std::uint64_t manner = random.below(5);
  const std::uint64_t kept_of_thousand = random.below(1001);
  const std::size_t first_lost = static_cast<std::size_t>(random.below(touched.size() + 1));
  // A length is kept or not by itself; what then was never written reads as anything.
  const bool keeps_size = manner == 1 || (manner != 0 && random.chance(500));
  bytes = std::move(before);
  if (keeps_size) bytes.resize(after.size());
  for (std::size_t i = synced_bytes; i < bytes.size(); ++i)
    bytes[i] = static_cast<std::uint8_t>(random.chance(500) ? 0 : random.next());
  for (std::size_t at = 0; at < touched.size(); ++at) {
    if (!touched[at]) continue;
    std::size_t kept = 0;
    if (manner == 1 || (manner == 2 && at < first_lost) || (manner == 3 && random.chance(kept_of_thousand)))
      kept = sector;
    if (manner == 4) kept = static_cast<std::size_t>(random.below(sector + 1));  // torn
    const std::size_t begin = at * sector;
    const std::size_t end = std::min({begin + kept, after.size(), bytes.size()});
    for (std::size_t i = begin; i < end; ++i) bytes[i] = after[i];
  }
  std::uint64_t lost = after.size() > bytes.size() ? after.size() - bytes.size() : 0;
  for (std::size_t at = 0; at < touched.size(); ++at)
    if (touched[at])
      for (std::size_t i = at * sector; i < std::min({(at + 1) * sector, bytes.size(), after.size()}); ++i)
        lost += bytes[i] != after[i] ? 1 : 0;
  sync();
  return lost;
}

}  // namespace weavelog::sim
