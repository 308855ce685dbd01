#pragma once
// A paired tablet that talks as it should and reads hardly anything: a few bytes at a time, through the smallest window that the system gives.

#include <atomic>
#include <filesystem>
#include <memory>
#include <string>
#include <thread>

#include "sync/exchange/session.h"
#include "sync/exchange/station.h"
#include "tests/faults/raw_client.h"

namespace weavelog::testing {

class SlowReader {
 public:
  /// Pairs and takes the first entries at full speed. Throws std::runtime_error if that does not succeed.
  SlowReader(const std::filesystem::path& folder, const std::string& name, const std::string& code);
  ~SlowReader();

  /// From here on on a thread of its own: `bytes` each time, a pause after it; nothing of it is looked at, so no ping is answered.
  void read_slowly(std::size_t bytes, std::chrono::milliseconds pause);
  /// Bytes, since it became slow.
  [[nodiscard]] std::size_t read() const { return read_; }
  /// The server has ended the connection.
  [[nodiscard]] bool let_go() const { return let_go_; }
  /// Reads as fast as it can from now on; true if both come to agree within the time.
  bool hurries(std::chrono::milliseconds time);
  [[nodiscard]] Ledger& ledger() { return station_->ledger(); }

 private:
  /// Handles what was taken.
  void work();
  void send(Session::Frames frames);

  std::unique_ptr<Station> station_;
  RawClient client_;
  std::unique_ptr<Session> session_;
  std::atomic<bool> enough_{false}, let_go_{false};
  std::atomic<std::size_t> read_{0};
  std::thread thread_;
};

}  // namespace weavelog::testing
