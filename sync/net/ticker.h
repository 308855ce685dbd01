#pragma once
// A thread that calls at a steady pace, and never again once it is gone.

#include <chrono>
#include <condition_variable>
#include <functional>
#include <mutex>
#include <thread>

namespace weavelog {

class Ticker {
 public:
  Ticker(std::chrono::milliseconds pace, std::function<void()> call)
      : thread_([this, pace, call = std::move(call)] {
          std::unique_lock lock(mutex_);
          while (!wake_.wait_for(lock, pace, [this] { return stopped_; })) call();
        }) {}
  ~Ticker() {
    {
      const std::lock_guard guard(mutex_);
      stopped_ = true;
    }
    wake_.notify_all();
    thread_.join();
  }
  Ticker(const Ticker&) = delete;
  Ticker& operator=(const Ticker&) = delete;

 private:
  std::mutex mutex_;
  std::condition_variable wake_;
  bool stopped_ = false;
  std::thread thread_;
};

}  // namespace weavelog
