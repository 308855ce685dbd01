#include "core/base/parallel.h"

#include <algorithm>
#include <atomic>
#include <exception>
#include <mutex>
#include <system_error>
#include <thread>
#include <utility>
#include <vector>

namespace weavelog {

namespace {

/// Asked once: the machine's answer is read from files.
std::size_t cores() {
  static const std::size_t count = std::thread::hardware_concurrency();
  return count;
}

}  // namespace

void in_parallel(std::size_t count, const std::function<void(std::size_t)>& work) {
  std::atomic<std::size_t> next{0};
  std::mutex mutex;
  std::exception_ptr thrown;
  const auto take_part = [&] {
    try {
      for (std::size_t i = next++; i < count; i = next++) work(i);
    } catch (...) {
      next = count;
      const std::lock_guard guard(mutex);
      if (!thrown) thrown = std::current_exception();
    }
  };
  std::vector<std::thread> others;
  const std::size_t most = std::min(cores(), count / kWorthAThread);
  try {
    while (others.size() + 1 < most) others.emplace_back(take_part);
  } catch (const std::system_error&) {
    // No thread to be had: those that there are do it.
  }
  take_part();
  for (std::thread& other : others) other.join();
  if (thrown) std::rethrow_exception(thrown);
}

WorkAhead::WorkAhead(std::size_t count, std::function<void(std::size_t)> work) : count_(count), work_(std::move(work)) {
  if (count < kWorthAThread || cores() < 2) return;
  try {
    other_ = std::async(std::launch::async, [this] {
      try {
        for (std::size_t i = 0; i < count_; ++i) {
          work_(i);
          done_.store(i + 1, std::memory_order_release);
          done_.notify_one();
        }
      } catch (...) {
        failed_ = true;
        done_.store(count_, std::memory_order_release);
        done_.notify_one();
        throw;
      }
    });
  } catch (const std::system_error&) {
    // No thread to be had: the caller does it.
  }
}

WorkAhead::~WorkAhead() {
  if (other_.valid()) other_.wait();
}

void WorkAhead::wait_for(std::size_t i) {
  if (!other_.valid()) {
    for (std::size_t next = done_; next <= i; ++next) {
      work_(next);
      done_ = next + 1;
    }
    return;
  }
  for (std::size_t done = done_.load(std::memory_order_acquire); done <= i; done = done_.load(std::memory_order_acquire)) done_.wait(done);
  if (failed_) other_.get();
}

}  // namespace weavelog
