#include "sync/net/worker.h"

#include <spdlog/spdlog.h>

#include <condition_variable>
#include <deque>
#include <exception>
#include <mutex>

namespace weavelog {

/// Shared with the thread, so that the thread may outlive its owner for the moment that it needs to end.
struct Worker::State {
  std::mutex mutex;
  std::mutex join_mutex;
  std::condition_variable wake;
  std::deque<std::function<void()>> tasks;
  bool stopping = false;

  void run() {
    for (;;) {
      std::function<void()> task;
      {
        std::unique_lock lock(mutex);
        wake.wait(lock, [this] { return stopping || !tasks.empty(); });
        if (tasks.empty()) return;
        task = std::move(tasks.front());
        tasks.pop_front();
      }
      try {
        task();
      } catch (const std::exception& error) {
        spdlog::error("a task failed: {}", error.what());
      }
    }
  }
};

Worker::Worker()
    : state_(std::make_shared<State>()), thread_([state = state_] { state->run(); }), id_(thread_.get_id()) {}

Worker::~Worker() {
  stop();
  if (thread_.joinable()) thread_.detach();
}

bool Worker::post(std::function<void()> task) {
  {
    const std::lock_guard lock(state_->mutex);
    if (state_->stopping) return false;
    state_->tasks.push_back(std::move(task));
  }
  state_->wake.notify_one();
  return true;
}

void Worker::stop() {
  {
    const std::lock_guard lock(state_->mutex);
    state_->stopping = true;
  }
  state_->wake.notify_all();
  if (on_this_thread()) return;
  const std::lock_guard lock(state_->join_mutex);
  if (thread_.joinable()) thread_.join();
}

}  // namespace weavelog
