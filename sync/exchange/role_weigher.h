#pragma once
// Weighs what somebody brings by the role in which the room knows them: their own words, and those under keys that nobody here knows, since anybody
// can make one up. What they carry of devices that are known was weighed where it was said.
//
// Roles weigh what is new. What somebody may no longer say, or never might, is taken all the same where others like it of theirs are here already:
// those came by whoever may bring them, and a chain with a hole would hold up all that follows.

#include <optional>
#include <set>
#include <tuple>

#include "sync/trust/device_list.h"
#include "sync/trust/rights.h"

namespace weavelog {

/// Of the bringer's own words: `if_new`: what is here already, and what follows others like it that are, passes, as it does under keys that nobody
/// knows. `all`: an event server, where the bringer is enrolled, takes none.
enum class OwnWords : std::uint8_t { all, if_new };

/// For one session, or one bundle.
class RoleWeigher {
 public:
  RoleWeigher(const Ledger& ledger, const DeviceList& devices) : ledger_(ledger), devices_(devices) {}

  /// The author of the first entry that the bringer may not bring in this role; none: all of it may come. Entries that point beside the batch's own
  /// lists are passed over: the ledger says what is wrong with them.
  [[nodiscard]] std::optional<AuthorCard> beyond(const PublicKey& bringer, Role role, const RoomRights& rights, OwnWords own, const Batch& batch);
  /// True if the key is neither this device's, nor enrolled here (revoked ones are known too), nor that of a server that it was paired with.
  [[nodiscard]] bool nobody_knows(const PublicKey& key);

 private:
  const Ledger& ledger_;
  const DeviceList& devices_;
  std::set<PublicKey> known_;
  std::set<std::tuple<Role, BookId, AuthorId>> said_such_;  ///< what their chains hold here is beyond that role, too
};

}  // namespace weavelog
