// What stands in the records; the daemon itself is in tests/faults/dns_sd_test.cpp.

#include "sync/net/dns_sd.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdlib>

using namespace weavelog;

namespace {

NearbyOffer offer() {
  NearbyOffer out;
  out.key.fill(0x1f);
  out.fingerprint.fill(0xa2);
  out.port = 26110;
  out.name = "Pult Größe";
  out.event = "Harbour Open";
  return out;
}

}  // namespace

TEST_CASE("an offer comes back out of its record, whatever its instance is called and in whichever order the strings stand") {
  auto text = dns_sd_text(offer());
  CHECK(read_dns_sd_text(text, "Pult #2", 26110) == offer());
  std::reverse(text.begin(), text.end());
  text.emplace_back("later=of a newer version");
  CHECK(read_dns_sd_text(text, "Pult #2", 26110) == offer());
  // RFC 6763: a string has at most 255 bytes, a record should stay within some hundred; a key has at most nine characters.
  std::size_t all = 0;
  for (const std::string& one : dns_sd_text(offer())) {
    CHECK(one.size() <= 255);
    CHECK(one.find('=') <= 9);
    all += one.size() + 1;
  }
  CHECK(all < 400);
}

TEST_CASE("a record that is not ours, of another version, or not fit to be shown is nobody") {
  const auto good = dns_sd_text(offer());
  const auto with = [&](std::size_t at, const std::string& one) {
    auto text = good;
    text[at] = one;
    return read_dns_sd_text(text, "x", 26110);
  };
  CHECK_FALSE(read_dns_sd_text({}, "x", 26110));
  CHECK_FALSE(with(0, "txtvers=2"));
  CHECK_FALSE(with(1, "key=12"));
  CHECK_FALSE(with(1, "key=" + std::string(64, 'g')));
  CHECK_FALSE(with(2, "cert="));
  CHECK_FALSE(with(3, "name=\x1b[2J"));
  CHECK_FALSE(with(4, "event=\xff"));
  CHECK_FALSE(with(4, "event=" + std::string(97, 'e')));
  CHECK_FALSE(read_dns_sd_text(good, "x", 0));
}

TEST_CASE("an instance name has at most 63 bytes and no broken character") {
  CHECK(dns_sd_instance("Desk") == "Desk");
  std::string umlauts;
  for (int i = 0; i < 60; ++i) umlauts += "ü";
  const std::string cut = dns_sd_instance(umlauts);
  CHECK(cut.size() <= 63);
  CHECK(cut.size() >= 60);
  auto named = offer();
  named.name = umlauts;
  CHECK(read_dns_sd_text(dns_sd_text(named), cut, 26110));
}

TEST_CASE("without a daemon nothing is published, nothing found, and both end at once") {
  ::setenv("DBUS_SYSTEM_BUS_ADDRESS", "unix:path=/nowhere/bus", 1);
  DnsSdPublisher publisher(offer());
  publisher.set_event("Lakeside Cup");
  DnsSdBrowser browser;
  CHECK_FALSE(publisher.published());
  CHECK(browser.found().empty());
}
