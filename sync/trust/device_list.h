#pragma once
// Whom this device knows: as host the enrolled devices and the open invitations, as guest the hosts it was
// paired with. Tables of their own (trust_*) in the ledger's file; every change is on disk when the call
// returns.

#include <atomic>
#include <deque>
#include <map>
#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <vector>

#include "core/base/clock.h"
#include "core/log/author.h"
#include "core/store/ledger.h"
#include "sync/trust/pairing.h"
#include "sync/trust/role.h"

namespace SQLite {
class Database;
}

namespace weavelog {

/// A device that this host enrolled.
struct EnrolledDevice {
  PublicKey key{};
  std::string name;  ///< as it calls itself; shown, never trusted
  Role role = Role::reader;
  UnixMs since = 0;
  std::optional<UnixMs> revoked;
  /// Entries of its own that came after it was revoked, by way of other devices (DEVELOPERS.md says why they are taken).
  std::uint64_t late_entries = 0;
};

/// Handed out once; afterwards only the sealed key of it is in the file.
struct Invitation {
  PairingSecret secret{};
  Role role = Role::reader;
  UnixMs expires = 0;
};

struct OpenInvitation {
  InvitationNumber number{};
  Role role = Role::reader;
  UnixMs expires = 0;
  int wrong_tries = 0;
  std::optional<PublicKey> asked_by;  ///< see DeviceList::invite
};

/// What a guest that proved itself is told.
struct Admission {
  Role role = Role::reader;
  Digest host_proof{};
};

/// A host that this device was paired with as guest.
struct KnownHost {
  PublicKey key{};
  std::string name;
  Address address;
  Fingerprint fingerprint{};
  Role role = Role::reader;  ///< ours, there
  UnixMs since = 0;
};

/// Thread-safe as the ledger is.
class DeviceList {
 public:
  static constexpr UnixMs kInvitationLife = 15 * 60 * 1000;
  static constexpr int kTriesPerInvitation = 5;
  /// Wrong tries from one address; further ones are refused unread. Not of all together, which would let anybody shut everybody out: a secret has 80
  /// bits, and each code closes after its own tries.
  static constexpr int kTriesPerMinute = 30;
  static constexpr int kOpenInvitations = 64;

  /// `ledger` must outlive the list. `key` is the device's: open invitations are sealed with a key derived
  /// from it, so that the database file alone does not reveal them. Faults: those of Ledger::transact.
  [[nodiscard]] static Outcome<std::unique_ptr<DeviceList>> open(Ledger& ledger, const DeviceKey& key);
  ~DeviceList();
  DeviceList(const DeviceList&) = delete;
  DeviceList& operator=(const DeviceList&) = delete;

  // --- as host
  /// Faults: bad_input (life not positive or over a week), refused (too many are open), those of
  /// Ledger::transact.
  /// `asked_by`: the head's device that wanted it; none: this device itself. The code goes when that device is revoked or is no head any more.
  [[nodiscard]] Outcome<Invitation> invite(Role role, UnixMs life = kInvitationLife, const std::optional<PublicKey>& asked_by = {});
  /// Neither used nor expired nor tried out, oldest first.
  [[nodiscard]] std::vector<OpenInvitation> open_invitations() const;
  [[nodiscard]] Outcome<> withdraw(const InvitationNumber& number);
  /// Checks a guest's proof, uses the invitation up and enrols the guest's key, all in one transaction. The
  /// same guest may come again with a used invitation until it expires: its first answer may have been lost
  /// on the way. A device that was revoked and is invited again is a member again. Faults: untrusted (wrong
  /// code or proof), expired, refused (used up, tried out, too many wrong tries from `remote` this minute).
  [[nodiscard]] Outcome<Admission> admit(const InvitationNumber& number, const Digest& handshake,
                                         const Digest& proof, const PublicKey& guest,
                                         std::string_view guest_name, const std::string& remote = {});
  /// Is this key enrolled? The caller has checked that the peer holds it. Faults: untrusted (unknown),
  /// refused (revoked).
  [[nodiscard]] Outcome<EnrolledDevice> member(const PublicKey& key) const;
  /// All that ever were, oldest first.
  [[nodiscard]] std::vector<EnrolledDevice> devices() const;
  /// With it go the open codes that it asked for. Faults: not_found, those of Ledger::transact.
  [[nodiscard]] Outcome<> revoke(const PublicKey& key);
  /// Faults: not_found, bad_input (an empty name), those of Ledger::transact. The name holds until the device pairs anew.
  [[nodiscard]] Outcome<> rename(const PublicKey& key, std::string_view name);
  /// Holds at once, for a session that goes on too. Faults: not_found, refused (the last head would be none), those of Ledger::transact.
  [[nodiscard]] Outcome<> set_role(const PublicKey& key, Role role);
  /// Rises whenever a device was revoked or got another role, so that live sessions know when to look whether theirs is. Any thread.
  [[nodiscard]] std::uint64_t revocations() const { return revocations_; }
  /// For core/store/backup.h: who was revoked in the database that is replaced stays revoked in the restored one.
  static void carry_revocations(SQLite::Database& restored);
  /// For the same, where nothing can be carried over: any of the backup's open codes may have been used or withdrawn since, so none is good.
  static void withdraw_open(SQLite::Database& restored);
  /// Entries of these keys were taken in; those of revoked devices are counted.
  [[nodiscard]] Outcome<> count_late(const std::vector<std::pair<AuthorCard, std::size_t>>& applied_by);
  /// May the holder of this key order that a player be forgotten? This device itself, a host that it was paired with, and every
  /// device enrolled here that may write and was not revoked.
  [[nodiscard]] bool may_order_forgetting(const PublicKey& key) const;

  // --- as guest
  /// Adds the host, or brings its name, address, fingerprint and role up to date.
  [[nodiscard]] Outcome<> remember_host(const KnownHost& host);
  /// Newest first.
  [[nodiscard]] std::vector<KnownHost> hosts() const;
  [[nodiscard]] std::optional<KnownHost> host(const PublicKey& key) const;
  [[nodiscard]] Outcome<> forget_host(const PublicKey& key);

 private:
  DeviceList(Ledger& ledger, const DeviceKey& key);
  [[nodiscard]] bool too_many_tries(const std::string& remote, UnixMs now);
  void note_wrong_try(const std::string& remote, UnixMs now);

  Ledger& ledger_;
  std::array<std::uint8_t, 32> sealing_key_{};
  std::atomic<std::uint64_t> revocations_{0};
  std::mutex tries_mutex_;
  std::map<std::string, std::deque<UnixMs>> wrong_tries_;  ///< of the last minute, by where they came from
};

}  // namespace weavelog
