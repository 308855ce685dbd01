#pragma once
// Work that is the same in whatever order it is done, on as many cores as there are.

#include <cstddef>
#include <functional>

namespace weavelog {

/// Fewer pieces than this are not worth a thread: meant for pieces of some twenty microseconds, a signature
/// for example.
inline constexpr std::size_t kWorthAThread = 8;

/// Calls work(0) to work(count - 1), each once, and returns when all are done; the calling thread takes its
/// part. `work` must not depend on the order, and may be called from several threads at a time. What it
/// throws is thrown here, the first if there are several.
void in_parallel(std::size_t count, const std::function<void(std::size_t)>& work);

}  // namespace weavelog
