#include "core/base/parallel.h"

#include <algorithm>
#include <atomic>
#include <exception>
#include <mutex>
#include <system_error>
#include <thread>
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

}  // namespace weavelog
