// libFuzzer's way in, for the target that the build names.

#include <cstdint>
#include <cstring>

#include "tests/fuzz/target.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static void (*const run)(weavelog::ByteView) = [] {
    for (const auto& target : weavelog::fuzz::targets())
      if (std::strcmp(target.name, WEAVELOG_FUZZ_TARGET) == 0) return target.run;
    throw std::logic_error("no target of that name");
  }();
  run({data, size});
  return 0;
}
