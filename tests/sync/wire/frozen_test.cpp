// Frames of every version are read for ever (fixtures/frozen/README.md).

#include <catch2/catch.hpp>
#include <fstream>
#include <map>
#include <sstream>
#include <variant>

#include "sync/wire/messages.h"

using namespace weavelog;

namespace {

/// How many messages each version knew. The newest is to have a frame of each: who adds a message freezes it.
const std::map<std::string, std::size_t> kMessages{{"0", 20}, {"1", 23}, {"2", 23}, {"3", 28}, {"4", 28}, {"5", std::variant_size_v<Message>}};

}  // namespace

TEST_CASE("frozen: a frame of each message of every version is read and encoded to the same bytes") {
  const std::string version = GENERATE("0", "1", "2", "3", "4", "5");
  std::ifstream in(WEAVELOG_FIXTURES "/frozen/" + version + "/frames.txt");
  REQUIRE(in);
  std::size_t messages = 0;
  for (std::string line; std::getline(in, line);) {
    if (line.starts_with('#')) continue;
    std::istringstream words(line);
    std::string name, hex;
    words >> name >> hex;
    INFO(name);
    Bytes frame(hex.size() / 2);
    REQUIRE(from_hex(hex, frame));
    const auto message = decode_frame(frame);
    if (!message) FAIL(message.error().message());
    CHECK(message->index() == messages);
    // Compressed ones depend on the version of the compressor; what they say does not.
    if ((frame[1] & 0x80) == 0) CHECK(encode_frame(*message) == frame);
    CHECK(*decode_frame(encode_frame(*message)) == *message);
    ++messages;
  }
  CHECK(messages == kMessages.at(version));
}
