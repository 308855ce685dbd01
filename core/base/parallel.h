#pragma once
// Work that is the same in whatever order it is done, on as many cores as there are.

#include <atomic>
#include <cstddef>
#include <functional>
#include <future>

namespace weavelog {

/// Fewer pieces than this are not worth a thread: meant for pieces of some twenty microseconds, a signature
/// for example.
inline constexpr std::size_t kWorthAThread = 8;

/// Calls work(0) to work(count - 1), each once, and returns when all are done; the calling thread takes its
/// part. `work` must not depend on the order, and may be called from several threads at a time. What it
/// throws is thrown here, the first if there are several.
void in_parallel(std::size_t count, const std::function<void(std::size_t)>& work);

/// Calls work(0) to work(count - 1) in this order, on another thread if they are worth one, while the caller goes on and
/// asks for each with wait_for() before it uses what came of it. The destructor returns when nothing runs any more, which is
/// when all that the other thread took on is done; what `work` refers to must live as long.
class WorkAhead {
 public:
  WorkAhead(std::size_t count, std::function<void(std::size_t)> work);
  ~WorkAhead();
  WorkAhead(const WorkAhead&) = delete;
  WorkAhead& operator=(const WorkAhead&) = delete;
  /// Returns when work(i) is done. Throws here what it threw.
  void wait_for(std::size_t i);

 private:
  const std::size_t count_;
  const std::function<void(std::size_t)> work_;
  std::atomic<std::size_t> done_{0};
  std::atomic<bool> failed_{false};
  std::future<void> other_;  ///< none: the caller does it
};

}  // namespace weavelog
