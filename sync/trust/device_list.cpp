#include "sync/trust/device_list.h"

#include <sodium.h>

#include <algorithm>

#include "core/base/text.h"
#include "core/log/device_name.h"
#include "core/store/database.h"

namespace weavelog {
namespace {

constexpr UnixMs kMinute = 60 * 1000;
constexpr UnixMs kLongestLife = 7LL * 24 * 60 * kMinute;
constexpr int kExpiredKept = 64;  ///< invitations

constexpr const char* kTables =
    "CREATE TABLE IF NOT EXISTS trust_device(key BLOB PRIMARY KEY, name TEXT NOT NULL, role INTEGER NOT NULL,"
    " since INTEGER NOT NULL, revoked INTEGER) WITHOUT ROWID;"
    "CREATE TABLE IF NOT EXISTS trust_invitation(number BLOB PRIMARY KEY, sealed BLOB NOT NULL, role INTEGER "
    "NOT NULL,"
    " made INTEGER NOT NULL, expires INTEGER NOT NULL, wrong_tries INTEGER NOT NULL DEFAULT 0, used_by BLOB)"
    " WITHOUT ROWID;"
    "CREATE TABLE IF NOT EXISTS trust_late(key BLOB PRIMARY KEY, entries INTEGER NOT NULL) WITHOUT ROWID;"
    "CREATE TABLE IF NOT EXISTS trust_host(key BLOB PRIMARY KEY, name TEXT NOT NULL, address TEXT NOT NULL,"
    " port INTEGER NOT NULL, fingerprint BLOB NOT NULL, role INTEGER NOT NULL, since INTEGER NOT NULL) "
    "WITHOUT ROWID;";

using SealingKey = std::array<std::uint8_t, 32>;

/// Nonce, then the sealed pairing key.
Bytes seal(const PairingKey& key, const SealingKey& with) {
  Bytes out(crypto_secretbox_NONCEBYTES + crypto_secretbox_MACBYTES + key.size());
  randombytes_buf(out.data(), crypto_secretbox_NONCEBYTES);
  crypto_secretbox_easy(out.data() + crypto_secretbox_NONCEBYTES, key.data(), key.size(), out.data(),
                        with.data());
  return out;
}

std::optional<PairingKey> unseal(ByteView sealed, const SealingKey& with) {
  PairingKey out{};
  if (sealed.size() != crypto_secretbox_NONCEBYTES + crypto_secretbox_MACBYTES + out.size())
    return std::nullopt;
  const ByteView box = sealed.subspan(crypto_secretbox_NONCEBYTES);
  if (crypto_secretbox_open_easy(out.data(), box.data(), box.size(), sealed.data(), with.data()) != 0) {
    return std::nullopt;
  }
  return out;
}

/// A column of fixed size; a damaged row gives zeros, which match nobody.
template <class Array>
Array array_in(SQLite::Statement& row, int column) {
  Array out{};
  const auto bytes = blob_of(row, column);
  if (bytes.size() == out.size()) std::copy(bytes.begin(), bytes.end(), out.begin());
  return out;
}

std::int64_t integer_in(SQLite::Statement& row, int column) {
  return row.getColumn(column).getInt64();
}

/// An unknown number (a damaged or newer file) may do the least.
Role role_in(SQLite::Statement& row, int column) {
  return role_from(static_cast<std::uint64_t>(integer_in(row, column))).value_or(Role::reader);
}

EnrolledDevice device_in(SQLite::Statement& row) {
  EnrolledDevice out;
  out.key = array_in<PublicKey>(row, 0);
  out.name = row.getColumn(1).getString();
  out.role = role_in(row, 2);
  out.since = integer_in(row, 3);
  if (!row.getColumn(4).isNull()) out.revoked = integer_in(row, 4);
  return out;
}

KnownHost host_in(SQLite::Statement& row) {
  KnownHost out;
  out.key = array_in<PublicKey>(row, 0);
  out.name = row.getColumn(1).getString();
  out.address.host = row.getColumn(2).getString();
  out.address.port = static_cast<std::uint16_t>(integer_in(row, 3));
  out.fingerprint = array_in<Fingerprint>(row, 4);
  out.role = role_in(row, 5);
  out.since = integer_in(row, 6);
  return out;
}

std::optional<EnrolledDevice> find_device(Connection& db, const PublicKey& key) {
  auto& row = db.statement("SELECT key, name, role, since, revoked FROM trust_device WHERE key = ?");
  bind_blob(row, 1, key);
  if (!row.executeStep()) return std::nullopt;
  return device_in(row);
}

/// The column came later than the table.
void add_asked_by(SQLite::Database& db) {
  if (db.execAndGet("SELECT count(*) FROM pragma_table_info('trust_invitation', 'main') WHERE name='asked_by'").getInt() == 0)
    db.exec("ALTER TABLE main.trust_invitation ADD COLUMN asked_by BLOB");
}

/// Open codes that the device asked for, such as a head's that was lost.
void withdraw_asked_by(Connection& db, const PublicKey& key) {
  auto& row = db.statement("DELETE FROM trust_invitation WHERE asked_by = ? AND used_by IS NULL");
  bind_blob(row, 1, key);
  row.exec();
}

Fault revoked_fault(const EnrolledDevice& device) {
  return {FaultCode::refused, "this device was revoked", device.name,
          "ask the head of the room for a new code"};
}

void enrol(Connection& db, const PublicKey& key, const std::string& name, Role role, UnixMs now) {
  auto& row = db.statement(
      "INSERT INTO trust_device(key, name, role, since, revoked) VALUES(?1, ?2, ?3, ?4, NULL)"
      " ON CONFLICT(key) DO UPDATE SET name = ?2, role = ?3, revoked = NULL,"
      " since = CASE WHEN revoked IS NULL THEN since ELSE ?4 END");
  bind_blob(row, 1, key);
  row.bind(2, name);
  row.bind(3, static_cast<int>(role));
  row.bind(4, now);
  row.exec();
}

/// The newest that expired stay without their secret: whoever comes late with one hears that it has expired, and it neither
/// counts as a wrong try nor is good again when the clock goes back.
void empty_expired(Connection& db, UnixMs now) {
  auto& empty = db.statement("UPDATE trust_invitation SET sealed = zeroblob(0) WHERE expires <= ? AND length(sealed) > 0");
  empty.bind(1, now);
  empty.exec();
  auto& old = db.statement(
      "DELETE FROM trust_invitation WHERE length(sealed) = 0 AND number NOT IN (SELECT number FROM trust_invitation"
      " WHERE length(sealed) = 0 ORDER BY made DESC, number LIMIT ?)");
  old.bind(1, kExpiredKept);
  old.exec();
}

struct Attempt {
  const InvitationNumber& number;
  const Digest& handshake;
  const Digest& proof;
  const PublicKey& guest;
  std::string guest_name;
  UnixMs now;
};

bool is_last_head(Connection& db, const PublicKey& key) {
  const auto device = find_device(db, key);
  if (!device || device->role != Role::head || device->revoked) return false;
  auto& others = db.statement("SELECT 1 FROM trust_device WHERE role=? AND revoked IS NULL AND key<>?");
  others.bind(1, static_cast<int>(Role::head));
  bind_blob(others, 2, key);
  return !others.executeStep();
}

/// Runs inside the write transaction: what it records about a refusal must stay, so refusals come back, not
/// thrown. `wrong`: somebody guesses.
Outcome<Admission> decide(Connection& db, const Attempt& attempt, const SealingKey& sealing_key, bool& wrong) {
  auto& row = db.statement(
      "SELECT sealed, role, expires, wrong_tries, used_by FROM trust_invitation WHERE number = ?");
  bind_blob(row, 1, attempt.number);
  if (!row.executeStep()) {
    wrong = true;
    return fail(FaultCode::untrusted, "the code is wrong", "pairing",
                "read the words on the server's screen again");
  }
  const bool emptied = blob_of(row, 0).empty();
  const auto key = unseal(blob_of(row, 0), sealing_key);
  Role role = role_in(row, 1);
  const UnixMs expires = integer_in(row, 2);
  const std::int64_t wrong_tries = integer_in(row, 3);
  const bool used = !row.getColumn(4).isNull();
  const bool used_by_guest = used && array_in<PublicKey>(row, 4) == attempt.guest;
  row.reset();
  const char* const ask = "ask the head of the room for a new code";
  if (emptied || attempt.now >= expires) return fail(FaultCode::expired, "the code has expired", "pairing", ask);
  if (used && !used_by_guest)
    return fail(FaultCode::refused, "the code was used by another device", "pairing", ask);
  if (wrong_tries >= DeviceList::kTriesPerInvitation) {
    return fail(FaultCode::refused, "the code is closed after too many wrong tries", "pairing", ask);
  }
  if (!key) {
    return fail(FaultCode::damaged, "the invitation was made with another device key", "pairing", ask);
  }
  if (const auto held = check_pairing_proof(*key, PairingSide::guest, attempt.handshake, attempt.proof);
      !held) {
    auto& count = db.statement("UPDATE trust_invitation SET wrong_tries = wrong_tries + 1 WHERE number = ?");
    bind_blob(count, 1, attempt.number);
    count.exec();
    wrong = true;
    return fail(held.error());
  }
  if (used) {
    // Only its first answer again: coming back must not undo that it was revoked in between, or given another role.
    const auto device = find_device(db, attempt.guest);
    if (!device || device->revoked) {
      return fail(FaultCode::refused, "this device was revoked", attempt.guest_name, ask);
    }
    role = device->role;
  } else {
    if (role != Role::head && is_last_head(db, attempt.guest))
      return fail(FaultCode::refused, "the room would have no head", "pairing", "pair with a head's code, or make another device a head first");
    auto& use = db.statement("UPDATE trust_invitation SET used_by = ? WHERE number = ?");
    bind_blob(use, 1, attempt.guest);
    bind_blob(use, 2, attempt.number);
    use.exec();
    enrol(db, attempt.guest, attempt.guest_name, role, attempt.now);
    if (role != Role::head) withdraw_asked_by(db, attempt.guest);
  }
  return Admission{role, pairing_proof(*key, PairingSide::host, attempt.handshake)};
}

}  // namespace

DeviceList::DeviceList(Ledger& ledger, const DeviceKey& key) : ledger_(ledger) {
  static constexpr std::string_view kPurpose = "weavelog invitation seal 1";
  auto seed = key.seed();
  crypto_generichash(sealing_key_.data(), sealing_key_.size(), as_bytes(kPurpose).data(), kPurpose.size(),
                     seed.data(), seed.size());
  sodium_memzero(seed.data(), seed.size());
}

DeviceList::~DeviceList() {
  sodium_memzero(sealing_key_.data(), sealing_key_.size());
}

Outcome<std::unique_ptr<DeviceList>> DeviceList::open(Ledger& ledger, const DeviceKey& key) {
  const auto made = ledger.transact([](Connection& db) {
    db.raw().exec(kTables);
    add_asked_by(db.raw());
  });
  if (!made) return fail(made.error());
  return std::unique_ptr<DeviceList>(new DeviceList(ledger, key));
}

Outcome<Invitation> DeviceList::invite(Role role, UnixMs life, const std::optional<PublicKey>& asked_by) {
  if (life <= 0 || life > kLongestLife) {
    return fail(FaultCode::bad_input, "a code lives from a moment to a week", "life", "choose minutes");
  }
  const UnixMs now = ledger_.wall().now();
  const Invitation invitation{make_pairing_secret(), role, now + life};
  const auto number = number_of(invitation.secret);
  const Bytes sealed = seal(pairing_key(invitation.secret), sealing_key_);
  bool too_many = false;
  const auto done = ledger_.transact([&](Connection& db) {
    empty_expired(db, now);
    auto& open = db.statement("SELECT count(*) FROM trust_invitation WHERE used_by IS NULL AND length(sealed) > 0");
    too_many = open.executeStep() && integer_in(open, 0) >= kOpenInvitations;
    open.reset();
    if (too_many) return;
    auto& row = db.statement(
        "INSERT INTO trust_invitation(number, sealed, role, made, expires, asked_by) VALUES(?, ?, ?, ?, ?, ?)");
    bind_blob(row, 1, number);
    bind_blob(row, 2, sealed);
    row.bind(3, static_cast<int>(role));
    row.bind(4, now);
    row.bind(5, invitation.expires);
    if (asked_by) bind_blob(row, 6, *asked_by);
    row.exec();
  });
  if (!done) return fail(done.error());
  if (too_many) {
    return fail(FaultCode::refused, "too many codes are open", "pairing",
                "withdraw some or wait until they expire");
  }
  return invitation;
}

std::vector<OpenInvitation> DeviceList::open_invitations() const {
  std::vector<OpenInvitation> out;
  const UnixMs now = ledger_.wall().now();
  ledger_.read([&](Connection& db) {
    auto& row = db.statement(
        "SELECT number, role, expires, wrong_tries, asked_by FROM trust_invitation"
        " WHERE used_by IS NULL AND expires > ? AND length(sealed) > 0 AND wrong_tries < ? ORDER BY made, number");
    row.bind(1, now);
    row.bind(2, kTriesPerInvitation);
    while (row.executeStep()) {
      out.push_back({array_in<InvitationNumber>(row, 0), role_in(row, 1), integer_in(row, 2),
                     static_cast<int>(integer_in(row, 3)), row.getColumn(4).isNull() ? std::nullopt : std::optional(array_in<PublicKey>(row, 4))});
    }
  });
  return out;
}

Outcome<> DeviceList::withdraw(const InvitationNumber& number) {
  return ledger_.transact([&](Connection& db) {
    auto& row = db.statement("DELETE FROM trust_invitation WHERE number = ?");
    bind_blob(row, 1, number);
    row.exec();
  });
}

Outcome<Admission> DeviceList::admit(const InvitationNumber& number, const Digest& handshake,
                                     const Digest& proof, const PublicKey& guest,
                                     std::string_view guest_name, const std::string& remote) {
  const Attempt attempt{number, handshake, proof, guest, shown_name(guest_name), ledger_.wall().now()};
  if (too_many_tries(remote, attempt.now)) {
    return fail(FaultCode::refused, "too many wrong codes in the last minute", "pairing",
                "wait a minute, then try again");
  }
  Outcome<Admission> decision;
  bool wrong = false;
  const auto done = ledger_.transact([&](Connection& db) { decision = decide(db, attempt, sealing_key_, wrong); });
  if (wrong) note_wrong_try(remote, attempt.now);
  if (!done) return fail(done.error());
  if (decision) ++revocations_;  // it may have had another role, which a session of its may still go by
  return decision;
}

bool DeviceList::too_many_tries(const std::string& remote, UnixMs now) {
  const std::lock_guard guard(tries_mutex_);
  const auto tries = wrong_tries_.find(remote);
  if (tries == wrong_tries_.end()) return false;
  // The future does not count: a clock set back must not lock anybody out.
  return std::count_if(tries->second.begin(), tries->second.end(), [&](UnixMs at) { return at > now - kMinute && at <= now; }) >= kTriesPerMinute;
}

void DeviceList::note_wrong_try(const std::string& remote, UnixMs now) {
  const std::lock_guard guard(tries_mutex_);
  std::erase_if(wrong_tries_, [&](const auto& one) { return one.second.back() <= now - kMinute || one.second.back() > now; });
  auto& tries = wrong_tries_[remote];
  tries.push_back(now);
  if (tries.size() > std::size_t{kTriesPerMinute}) tries.pop_front();
}

Outcome<EnrolledDevice> DeviceList::member(const PublicKey& key) const {
  std::optional<EnrolledDevice> device;
  ledger_.read([&](Connection& db) { device = find_device(db, key); });
  if (!device) {
    return fail(FaultCode::untrusted, "this server does not know the device", "pairing",
                "pair it with a code from the server's screen");
  }
  if (device->revoked) return fail(revoked_fault(*device));
  return *device;
}

std::vector<EnrolledDevice> DeviceList::devices() const {
  std::vector<EnrolledDevice> out;
  ledger_.read([&](Connection& db) {
    auto& row = db.statement("SELECT key, name, role, since, revoked FROM trust_device ORDER BY since, key");
    while (row.executeStep()) out.push_back(device_in(row));
    for (EnrolledDevice& device : out) {
      auto& late = db.statement("SELECT entries FROM trust_late WHERE key = ?");
      bind_blob(late, 1, device.key);
      if (late.executeStep()) device.late_entries = static_cast<std::uint64_t>(integer_in(late, 0));
    }
  });
  return out;
}

void DeviceList::carry_revocations(SQLite::Database& restored) {
  restored.exec(kTables);
  restored.exec(
      "INSERT INTO main.trust_device(key, name, role, since, revoked) SELECT key, name, role, since, revoked FROM"
      " replaced.trust_device WHERE revoked IS NOT NULL ON CONFLICT(key) DO UPDATE SET revoked = excluded.revoked");
  // Whose role was changed since has it still.
  restored.exec(
      "UPDATE main.trust_device SET role=(SELECT r.role FROM replaced.trust_device r WHERE r.key=trust_device.key) WHERE key IN (SELECT key FROM"
      " replaced.trust_device)");
  // Codes that were used, withdrawn or closed since the copy was made stay so, and so do those that a revoked device asked for. A code admits any
  // key, so that one which was good once more would let in whoever was revoked.
  add_asked_by(restored);
  restored.exec(
      "DELETE FROM main.trust_invitation WHERE used_by IS NULL AND (asked_by IN (SELECT key FROM main.trust_device WHERE revoked IS NOT NULL) OR number"
      " NOT IN (SELECT number FROM replaced.trust_invitation WHERE used_by IS NULL AND length(sealed)>0))");
  restored.exec(
      "UPDATE main.trust_invitation SET wrong_tries=max(wrong_tries, coalesce((SELECT r.wrong_tries FROM replaced.trust_invitation r WHERE"
      " r.number=trust_invitation.number), 0))");
}

void DeviceList::withdraw_open(SQLite::Database& restored) {
  restored.exec(kTables);
  restored.exec("DELETE FROM main.trust_invitation WHERE used_by IS NULL");
}

Outcome<> DeviceList::count_late(const std::vector<std::pair<AuthorCard, std::size_t>>& applied_by) {
  std::vector<std::pair<PublicKey, std::size_t>> late;
  ledger_.read([&](Connection& db) {
    auto& any = db.statement("SELECT EXISTS(SELECT 1 FROM trust_device WHERE revoked IS NOT NULL)");
    if (!any.executeStep() || integer_in(any, 0) == 0) return;
    for (const auto& [card, entries] : applied_by)
      if (const auto device = find_device(db, card.key); device && device->revoked) late.emplace_back(card.key, entries);
  });
  if (late.empty()) return {};
  return ledger_.transact([&](Connection& db) {
    for (const auto& [key, entries] : late) {
      auto& row = db.statement(
          "INSERT INTO trust_late(key, entries) VALUES(?1, ?2) ON CONFLICT(key) DO UPDATE SET entries = entries + ?2");
      bind_blob(row, 1, key);
      row.bind(2, static_cast<std::int64_t>(entries));
      row.exec();
    }
  });
}

bool DeviceList::may_order_forgetting(const PublicKey& key) const {
  if (key == ledger_.self().key || host(key)) return true;
  const auto device = member(key);
  return device && device->role != Role::reader;
}

Outcome<> DeviceList::revoke(const PublicKey& key) {
  bool found = false;
  const UnixMs now = ledger_.wall().now();
  const auto done = ledger_.transact([&](Connection& db) {
    auto& row = db.statement("UPDATE trust_device SET revoked = coalesce(revoked, ?) WHERE key = ?");
    row.bind(1, now);
    bind_blob(row, 2, key);
    found = row.exec() > 0;
    withdraw_asked_by(db, key);
  });
  if (!done) return fail(done.error());
  if (!found)
    return fail(FaultCode::not_found, "no such device is enrolled", "device", "look at the list of devices");
  ++revocations_;
  return {};
}

Outcome<> DeviceList::rename(const PublicKey& key, std::string_view name) {
  const std::string shown = shown_name(trimmed(name));
  if (shown.empty()) return fail(FaultCode::bad_input, "a device needs a name", "device", "give it one that tells it from the others");
  bool found = false;
  const auto done = ledger_.transact([&](Connection& db) {
    auto& row = db.statement("UPDATE trust_device SET name=? WHERE key=?");
    row.bind(1, shown);
    bind_blob(row, 2, key);
    found = row.exec() > 0;
  });
  if (!done) return done;
  if (!found) return fail(FaultCode::not_found, "no such device is enrolled", to_hex(key).substr(0, 12), "");
  return {};
}

Outcome<> DeviceList::set_role(const PublicKey& key, Role role) {
  bool found = false, last_head = false;
  const auto done = ledger_.transact([&](Connection& db) {
    const auto device = find_device(db, key);
    found = device.has_value();
    if (!found) return;
    last_head = role != Role::head && is_last_head(db, key);
    if (last_head) return;
    auto& row = db.statement("UPDATE trust_device SET role=? WHERE key=?");
    row.bind(1, static_cast<int>(role));
    bind_blob(row, 2, key);
    row.exec();
    if (role != Role::head) withdraw_asked_by(db, key);
  });
  if (!done) return done;
  if (!found) return fail(FaultCode::not_found, "no such device is enrolled", to_hex(key).substr(0, 12), "");
  if (last_head) return fail(FaultCode::refused, "the room would have no head", "device", "make another device a head first");
  ++revocations_;
  return {};
}

Outcome<> DeviceList::remember_host(const KnownHost& host) {
  const std::string name = shown_name(host.name);
  return ledger_.transact([&](Connection& db) {
    auto& row = db.statement(
        "INSERT INTO trust_host(key, name, address, port, fingerprint, role, since) VALUES(?1, ?2, ?3, ?4, "
        "?5, ?6, ?7)"
        " ON CONFLICT(key) DO UPDATE SET name = ?2, address = ?3, port = ?4, fingerprint = ?5, role = ?6");
    bind_blob(row, 1, host.key);
    row.bind(2, name);
    row.bind(3, host.address.host);
    row.bind(4, static_cast<int>(host.address.port));
    bind_blob(row, 5, host.fingerprint);
    row.bind(6, static_cast<int>(host.role));
    row.bind(7, host.since);
    row.exec();
  });
}

std::vector<KnownHost> DeviceList::hosts() const {
  std::vector<KnownHost> out;
  ledger_.read([&](Connection& db) {
    auto& row = db.statement(
        "SELECT key, name, address, port, fingerprint, role, since FROM trust_host ORDER BY since DESC, key");
    while (row.executeStep()) out.push_back(host_in(row));
  });
  return out;
}

std::optional<KnownHost> DeviceList::host(const PublicKey& key) const {
  std::optional<KnownHost> out;
  ledger_.read([&](Connection& db) {
    auto& row = db.statement(
        "SELECT key, name, address, port, fingerprint, role, since FROM trust_host WHERE key = ?");
    bind_blob(row, 1, key);
    if (row.executeStep()) out = host_in(row);
  });
  return out;
}

Outcome<> DeviceList::forget_host(const PublicKey& key) {
  return ledger_.transact([&](Connection& db) {
    auto& row = db.statement("DELETE FROM trust_host WHERE key = ?");
    bind_blob(row, 1, key);
    row.exec();
  });
}

}  // namespace weavelog
