// Datagrams that anybody on the network may send to those who look for servers, and to servers.

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

}  // namespace weavelog::fuzz
