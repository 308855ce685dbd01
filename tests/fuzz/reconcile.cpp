// Set reconciliation: any bytes to either side, and a whole run of two sides over the sets that the input makes.

#include <set>

#include "sync/exchange/reconcile.h"
#include "tests/fuzz/target_list.h"

namespace weavelog::fuzz {
namespace {

ReconcileItem item(std::uint8_t number) {
  // A digest, as the items' ids are: their sums are what the fingerprint compares.
  return {static_cast<std::uint64_t>(number / 3), digest_of(ByteView(&number, 1))};
}

std::vector<ReconcileItem> items(ByteView numbers) {
  std::vector<ReconcileItem> out;
  for (const std::uint8_t number : numbers) out.push_back(item(number));
  return out;
}

}  // namespace

void run_reconcile(ByteView input) {
  Input in(input);
  const std::size_t limit = in.pick(2) == 0 ? 0 : 4096;
  const auto ours = items(in.run(in.pick(200))), theirs = items(in.run(in.pick(200)));
  Reconciler initiator(ours, limit), responder(theirs, limit);
  Bytes message = initiator.initiate();
  const std::size_t spoiled = in.pick(4);  // in which round the message is replaced by what is left of the input; 0: none
  std::set<Digest> have, need;
  for (std::size_t round = 1; round < 100; ++round) {
    if (round == spoiled) {
      const ByteView rest = in.rest();
      message.assign(rest.begin(), rest.end());
    }
    auto answer = responder.receive(message);
    if (!answer) return;
    auto step = initiator.receive(answer->reply);
    if (!step) return;
    have.insert(step->have.begin(), step->have.end());
    need.insert(step->need.begin(), step->need.end());
    if (!step->reply.empty()) {
      message = std::move(step->reply);
      continue;
    }
    if (spoiled != 0 && spoiled <= round) return;
    std::set<Digest> left, right;
    for (const auto& one : ours) left.insert(one.id);
    for (const auto& one : theirs) right.insert(one.id);
    for (const Digest& id : left) must_hold(have.contains(id) == !right.contains(id), "what the other lacks was not found");
    for (const Digest& id : right) must_hold(need.contains(id) == !left.contains(id), "what we lack was not found");
    return;
  }
  must_hold(false, "reconciling does not end");
}

std::vector<Bytes> seeds_reconcile() {
  std::vector<Bytes> out(2);
  for (std::size_t i = 0; i < 255; ++i) {
    out[0].push_back(static_cast<std::uint8_t>(i * 37));
    out[1].push_back(static_cast<std::uint8_t>(i));
  }
  return out;
}

}  // namespace weavelog::fuzz
