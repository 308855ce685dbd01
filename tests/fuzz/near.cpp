// Datagrams that anybody on the network may send to those who look for servers, and to servers; and records that anybody may publish.

#include "sync/net/dns_sd.h"
#include "sync/net/nearby_datagram.h"
#include "tests/fuzz/target_list.h"

namespace weavelog::fuzz {

void run_near(ByteView input) {
  if (const auto nonce = read_nearby_query(input)) {
    const Bytes again = nearby_query(*nonce);
    must_hold(std::equal(again.begin(), again.end(), input.begin(), input.end()), "a query of two forms");
  }
  if (const auto answer = read_nearby_answer(input)) {
    must_hold(input.size() <= kNearbyBytes, "an answer larger than the question");
    must_hold(answer->offer.name.size() <= kNearbyName && answer->offer.event.size() <= kNearbyName, "a name that is too long");
    const auto again = read_nearby_answer(nearby_answer(answer->nonce, answer->offer));
    must_hold(again && again->nonce == answer->nonce && again->offer == answer->offer, "an answer does not survive being given again");
  }
}

std::vector<Bytes> seeds_near() {
  NearbyOffer offer;
  offer.port = 26110;
  offer.name = "Harbour desk";
  offer.event = "Hafenmeisterschaft für alle";
  NearbyOffer nameless = offer;
  nameless.event.clear();
  return {nearby_query({1, 2, 3}), nearby_answer({1, 2, 3}, offer), nearby_answer({}, nameless)};
}

/// Strings of a record, each behind its length as in DNS.
void run_record(ByteView input) {
  std::vector<std::string> text;
  while (!input.empty()) {
    const std::size_t length = std::min<std::size_t>(input[0], input.size() - 1);
    text.emplace_back(as_text(input.subspan(1, length)));
    input = input.subspan(1 + length);
  }
  const auto offer = read_dns_sd_text(text, "desk", 26110);
  if (!offer) return;
  must_hold(offer->name.size() <= kNearbyName && offer->event.size() <= kNearbyName, "a name that is too long");
  must_hold(read_dns_sd_text(dns_sd_text(*offer), "another", 26110) == offer, "a record does not survive being given again");
  must_hold(dns_sd_instance(offer->name).size() <= 63, "an instance name that is too long");
}

std::vector<Bytes> seeds_record() {
  NearbyOffer offer;
  offer.port = 26110;
  offer.name = "Harbour desk";
  offer.event = "Hafenmeisterschaft für alle";
  Bytes out;
  for (const std::string& one : dns_sd_text(offer)) {
    out.push_back(static_cast<std::uint8_t>(one.size()));
    out.insert(out.end(), one.begin(), one.end());
  }
  return {out};
}

}  // namespace weavelog::fuzz
