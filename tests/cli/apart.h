#pragma once
// Two desks of one event that work without each other until they exchange.

#include "tests/cli/event_server.h"

namespace weavelog::testing {

struct Apart {
  EventServer server{"Harbour Open", {"head", "desk"}, {"--time-zone", "Europe/Lisbon"}};
  CliDevice one{"Desk 1"}, other{"Desk 2"};

  Apart() {
    (void)one.ask({"pair", server.codes[0]});
    (void)other.ask({"pair", server.codes[1]});
  }
  void meet() const {
    for (const CliDevice* device : {&one, &other, &one}) (void)device->ask({"exchange"});
  }
};

}  // namespace weavelog::testing
