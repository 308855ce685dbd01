#pragma once
// One thread that does things one after another: where a host's or guest's handlers run, never its I/O
// thread.

#include <functional>
#include <memory>
#include <thread>

namespace weavelog {

class Worker {
 public:
  Worker();
  /// As stop(); also right when the last owner lets go on the worker's own thread.
  ~Worker();
  Worker(const Worker&) = delete;
  Worker& operator=(const Worker&) = delete;

  /// Any thread. False, and the task is dropped, once stop() was called. An exception out of a task is
  /// logged.
  bool post(std::function<void()> task);
  /// Runs what was posted before, then ends the thread and waits for it (not if called on that very thread).
  void stop();
  [[nodiscard]] bool on_this_thread() const { return std::this_thread::get_id() == id_; }

 private:
  struct State;
  std::shared_ptr<State> state_;
  std::thread thread_;
  std::thread::id id_;
};

}  // namespace weavelog
