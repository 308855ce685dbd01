#include "core/base/freed_memory.h"

#include <cstdlib>
#ifdef __GLIBC__
#include <malloc.h>
#endif

namespace weavelog {

void keep_freed_memory() {
#ifdef __GLIBC__
  // Setting either ends glibc's own adjusting of both.
  mallopt(M_TRIM_THRESHOLD, 16 * 1024 * 1024);
  mallopt(M_MMAP_THRESHOLD, 1024 * 1024);
#endif
}

}  // namespace weavelog
