#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <set>

#include "tests/fuzz/every_message.h"
#include "tests/fuzz/target_list.h"

using namespace weavelog;
using namespace weavelog::fuzz;

namespace {

namespace fs = std::filesystem;

Bytes read(const fs::path& file) {
  std::ifstream in(file, std::ios::binary);
  return Bytes(std::istreambuf_iterator<char>(in), {});
}

/// A stream of bytes that is the same everywhere.
Bytes noise(std::uint32_t start, std::size_t size) {
  Bytes out;
  for (std::uint32_t x = start * 2654435761U + 1; out.size() < size; x = x * 1664525U + 1013904223U)
    out.push_back(static_cast<std::uint8_t>(x >> 24));
  return out;
}

}  // namespace

TEST_CASE("every seed of every fuzz target keeps its promises, also cut short and with a byte changed") {
  for (const Target& target : targets()) {
    const auto seeds = target.seeds();
    INFO(target.name);
    REQUIRE_FALSE(seeds.empty());
    for (const Bytes& seed : seeds) {
      CHECK_NOTHROW(target.run(seed));
      CHECK_NOTHROW(target.run(ByteView(seed).first(seed.size() / 2)));
      Bytes changed = seed;
      if (!changed.empty()) changed[changed.size() / 3] ^= 0x15;
      CHECK_NOTHROW(target.run(changed));
    }
  }
}

TEST_CASE("there is a seed of every message that there is") {
  std::set<std::size_t> frames, messages;
  for (const Bytes& seed : seeds_frame()) {
    const auto message = decode_frame(seed);
    REQUIRE(message);
    frames.insert(message->index());
  }
  for (const Bytes& seed : seeds_message()) messages.insert(seed.at(0) & 0x7fU);
  CHECK(every_message().size() == std::variant_size_v<Message>);
  CHECK(frames.size() == std::variant_size_v<Message>);
  CHECK(messages.size() == std::variant_size_v<Message>);
}

TEST_CASE("the seeds get past what would stop a fuzzer: proofs, codes, signed orders, checksums") {
  const auto before = reached();
  for (const Target& target : targets()) {
    if (!std::set<std::string>{"greeting", "session", "tag", "languages", "device"}.contains(target.name)) continue;
    for (const Bytes& seed : target.seeds()) target.run(seed);
  }
  for (const char* place :
       {"greeting: a guest is kept out", "greeting: a guest is paired", "greeting: a member is let in", "greeting: a host is turned down",
        "greeting: a host is paired with", "greeting: a host is come back to", "session: a book is forgotten", "session: a picture comes",
        "session: a picture comes while somebody meddles", "session: let in though the handshake is meddled with", "tag: one is read",
        "languages: another than the first", "device: a changed log is read"}) {
    const auto earlier = before.find(place), now = reached().find(place);
    INFO(place);
    REQUIRE(now != reached().end());
    CHECK(now->second > (earlier == before.end() ? 0 : earlier->second));
  }
}

TEST_CASE("noise breaks no promise of any fuzz target") {
  for (const Target& target : targets()) {
    INFO(target.name);
    for (std::uint32_t i = 0; i < 20; ++i) CHECK_NOTHROW(target.run(noise(i, 10 + 13 * i)));
  }
}

TEST_CASE("every input that once broke something is taken now") {
  std::map<std::string, const Target*> known;
  for (const Target& target : targets()) known[target.name] = &target;
  std::size_t inputs = 0;
  for (const auto& folder : fs::directory_iterator(WEAVELOG_FUZZ_FOUND)) {
    if (!folder.is_directory()) continue;
    const auto target = known.find(folder.path().filename().string());
    INFO(folder.path());
    REQUIRE(target != known.end());
    for (const auto& file : fs::directory_iterator(folder)) {
      INFO(file.path());
      CHECK_NOTHROW(target->second->run(read(file.path())));
      ++inputs;
    }
  }
  CHECK(inputs > 0);
}
