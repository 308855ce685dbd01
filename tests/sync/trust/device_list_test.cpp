#include "sync/trust/device_list.h"

#include <catch2/catch.hpp>
#include <fstream>
#include <iterator>

#include "core/store/backup.h"
#include "core/store/database.h"
#include "tests/support/temporary_folder.h"

using namespace weavelog;
using weavelog::testing::TemporaryFolder;

namespace {

constexpr UnixMs kNoon = 1'750'000'000'000;

/// A host with its ledger in a file, that can be closed and opened again.
struct Host {
  explicit Host(const std::filesystem::path& place) : file(place) { start(); }
  void start() {
    list.reset();
    ledger.reset();
    LedgerOptions options;
    options.file = file;
    options.registry = &registry;
    options.clock = &clock;
    options.key = key;
    options.device_name = "Desk";
    ledger = Ledger::open(std::move(options)).value();
    list = DeviceList::open(*ledger, key).value();
  }

  std::filesystem::path file;
  FieldRegistry registry{1, {}, {}};
  ManualClock clock{kNoon};
  DeviceKey key = DeviceKey::generate();
  std::unique_ptr<Ledger> ledger;
  std::unique_ptr<DeviceList> list;
};

/// A guest that knows some secret, and comes with a handshake of its own.
struct Guest {
  explicit Guest(const PairingSecret& known) : secret(known) {}
  Outcome<Admission> come_to(DeviceList& list, const std::string& remote = {}) const { return come_as(list, key.public_key(), remote); }
  Outcome<Admission> come_as(DeviceList& list, const PublicKey& who, const std::string& remote = {}) const {
    return list.admit(number_of(secret), handshake,
                      pairing_proof(pairing_key(secret), PairingSide::guest, handshake), who, "Tablet 1", remote);
  }
  /// Knows the number but not the secret.
  Outcome<Admission> guess(DeviceList& list) const {
    return list.admit(number_of(secret), handshake, Digest{}, key.public_key(), "Tablet 1");
  }

  PairingSecret secret;
  DeviceKey key = DeviceKey::generate();
  Digest handshake = digest_of(as_bytes("hello and hello"));
};

FaultCode code_of(const Outcome<Admission>& admission) {
  REQUIRE_FALSE(admission);
  CHECK_FALSE(admission.error().what_to_do.empty());
  return admission.error().code;
}

}  // namespace

TEST_CASE("device list: a guest with the code is enrolled once, with its role, for good", "[trust]") {
  const TemporaryFolder folder;
  Host host(folder / "host.db");
  const auto invitation = host.list->invite(Role::stringer);
  REQUIRE(invitation);
  CHECK(invitation->expires == kNoon + DeviceList::kInvitationLife);
  REQUIRE(host.list->open_invitations().size() == 1);
  const Guest guest(invitation->secret);
  CHECK(host.list->member(guest.key.public_key()).error().code == FaultCode::untrusted);

  const auto admission = guest.come_to(*host.list);
  REQUIRE(admission);
  CHECK(admission->role == Role::stringer);
  CHECK(check_pairing_proof(pairing_key(guest.secret), PairingSide::host, guest.handshake,
                            admission->host_proof));
  CHECK(host.list->open_invitations().empty());

  host.start();
  const auto member = host.list->member(guest.key.public_key());
  REQUIRE(member);
  CHECK(member->role == Role::stringer);
  CHECK(member->name == "Tablet 1");
  CHECK(member->since == kNoon);
  // Its answer may have been lost: the same guest may come again, another may not.
  CHECK(guest.come_to(*host.list));
  CHECK(code_of(Guest(invitation->secret).come_to(*host.list)) == FaultCode::refused);
  CHECK(host.list->devices().size() == 1);
}

// Found by fuzzing the greeting.
TEST_CASE("device list: who comes again with a used invitation has the role that it has now, after a restart too", "[trust]") {
  const TemporaryFolder folder;
  Host host(folder / "host.db");
  const Guest head(host.list->invite(Role::head)->secret), other(host.list->invite(Role::head)->secret);
  REQUIRE(head.come_to(*host.list));
  REQUIRE(other.come_to(*host.list));
  REQUIRE(host.list->set_role(other.key.public_key(), Role::reader));
  host.start();
  const auto again = other.come_to(*host.list);
  REQUIRE(again);
  CHECK(again->role == Role::reader);
  CHECK(head.come_to(*host.list)->role == Role::head);
}

TEST_CASE("device list: an invitation survives a restart and expires by the wall clock", "[trust]") {
  const TemporaryFolder folder;
  Host host(folder / "host.db");
  const Guest in_time(host.list->invite(Role::desk, 60'000)->secret);
  const Guest late(host.list->invite(Role::desk, 60'000)->secret);
  host.start();
  host.clock.advance(59'999);
  CHECK(in_time.come_to(*host.list));
  host.clock.advance(1);
  CHECK(code_of(late.come_to(*host.list)) == FaultCode::expired);
  CHECK(host.list->open_invitations().empty());
  CHECK(host.list->devices().size() == 1);
  CHECK(host.list->invite(Role::desk, 0).error().code == FaultCode::bad_input);
  CHECK(host.list->invite(Role::desk, 8LL * 24 * 3600 * 1000).error().code == FaultCode::bad_input);
}

// Found by the simulator: the next code that was made took the expired one away, and who came late was told that it was wrong.
TEST_CASE("device list: who comes late with a code hears so, however many were made since, and the code stays expired", "[trust]") {
  const TemporaryFolder folder;
  Host host(folder / "host.db");
  const Guest used(host.list->invite(Role::desk)->secret);
  REQUIRE(used.come_to(*host.list));
  host.clock.advance(1);
  const Guest late(host.list->invite(Role::desk)->secret);
  host.clock.advance(DeviceList::kInvitationLife);
  const Guest next(host.list->invite(Role::desk)->secret);
  for (int i = 0; i < DeviceList::kTriesPerMinute; ++i) CHECK(code_of(late.come_to(*host.list)) == FaultCode::expired);
  CHECK(code_of(used.come_to(*host.list)) == FaultCode::expired);
  CHECK(next.come_to(*host.list));  // and nobody was counted as guessing
  host.clock.advance(-DeviceList::kInvitationLife);
  CHECK(host.list->open_invitations().empty());
  CHECK(code_of(late.come_to(*host.list)) == FaultCode::expired);
  // Its secret is gone, and not all that ever expired are remembered.
  std::int64_t rows = 0, sealed = 0;
  for (int i = 0; i < 100; ++i) {
    host.clock.advance(DeviceList::kInvitationLife);
    REQUIRE(host.list->invite(Role::desk));
  }
  host.ledger->read([&](Connection& db) {
    auto& count = db.statement("SELECT count(*), sum(length(sealed) > 0) FROM trust_invitation");
    REQUIRE(count.executeStep());
    rows = count.getColumn(0).getInt64();
    sealed = count.getColumn(1).getInt64();
  });
  CHECK(rows < 70);
  CHECK(sealed == 1);
}

TEST_CASE("device list: wrong tries close the invitation", "[trust]") {
  const TemporaryFolder folder;
  Host host(folder / "host.db");
  const Guest guest(host.list->invite(Role::reader)->secret);
  for (int i = 0; i < DeviceList::kTriesPerInvitation; ++i) {
    CHECK(code_of(guest.guess(*host.list)) == FaultCode::untrusted);
    host.clock.advance(60'000);  // the limit per minute is another one
  }
  CHECK(host.list->open_invitations().empty());
  CHECK(code_of(guest.come_to(*host.list)) == FaultCode::refused);
  CHECK(host.list->devices().empty());
}

TEST_CASE("device list: too many wrong codes in a minute hold whoever comes from there for a minute, no longer, and nobody else", "[trust]") {
  const TemporaryFolder folder;
  Host host(folder / "host.db");
  const Guest guest(host.list->invite(Role::reader)->secret), neighbour(host.list->invite(Role::reader)->secret);
  for (int i = 0; i < DeviceList::kTriesPerMinute; ++i) {
    CHECK(code_of(Guest(make_pairing_secret()).come_to(*host.list)) == FaultCode::untrusted);
  }
  CHECK(code_of(guest.come_to(*host.list)) == FaultCode::refused);
  CHECK(neighbour.come_to(*host.list, "10.0.0.7"));
  host.clock.advance(60'000);
  CHECK(guest.come_to(*host.list));
  // A clock set back does not lock anybody out.
  const Guest other(host.list->invite(Role::reader)->secret);
  for (int i = 0; i < DeviceList::kTriesPerMinute; ++i)
    (void)Guest(make_pairing_secret()).come_to(*host.list);
  host.clock.advance(-3600'000);
  CHECK(other.come_to(*host.list));
}

TEST_CASE("device list: open codes go with the device that asked for them, whether it is revoked or is no head any more", "[trust]") {
  const TemporaryFolder folder;
  Host host(folder / "host.db");
  const Guest lost(host.list->invite(Role::head)->secret), head(host.list->invite(Role::head)->secret);
  REQUIRE(lost.come_to(*host.list));
  REQUIRE(head.come_to(*host.list));
  const PublicKey key = lost.key.public_key();
  const auto asked_by = [&](const std::optional<PublicKey>& who) { return Guest(host.list->invite(Role::head, DeviceList::kInvitationLife, who)->secret); };
  const Guest used = asked_by(key);
  REQUIRE(used.come_to(*host.list));
  const Guest of_lost = asked_by(key), of_head = asked_by(head.key.public_key()), own = asked_by({});
  host.start();
  CHECK(host.list->open_invitations().size() == 3);
  const std::string how = GENERATE("revoked", "another role", "enrolled anew in another role");
  if (how == "revoked") {
    REQUIRE(host.list->revoke(key));
  } else if (how == "another role") {
    REQUIRE(host.list->set_role(key, Role::desk));
  } else {
    REQUIRE(Guest(host.list->invite(Role::desk)->secret).come_as(*host.list, key));
  }
  CHECK(host.list->open_invitations().size() == 2);
  CHECK(code_of(of_lost.come_to(*host.list)) == FaultCode::untrusted);
  CHECK(of_head.come_to(*host.list));
  CHECK(own.come_to(*host.list));
  CHECK(used.come_to(*host.list));  // its first answer again: who was let in before is in the list of devices
}

TEST_CASE("device list: a copy that is put back brings no code of a device that was revoked since, even one of before codes were told by who asked", "[trust]") {
  const TemporaryFolder folder;
  Host host(folder / "host.db");
  const Guest lost(host.list->invite(Role::head)->secret), head(host.list->invite(Role::head)->secret);
  REQUIRE(lost.come_to(*host.list));
  REQUIRE(head.come_to(*host.list));
  const Guest of_lost(host.list->invite(Role::head, DeviceList::kInvitationLife, lost.key.public_key())->secret);
  const Guest of_head(host.list->invite(Role::head, DeviceList::kInvitationLife, head.key.public_key())->secret);
  const bool older = GENERATE(false, true);
  if (older) REQUIRE(host.ledger->transact([](Connection& db) { db.raw().exec("ALTER TABLE trust_invitation DROP COLUMN asked_by"); }));
  REQUIRE(back_up(host.file, folder / "copy.db", nullptr));
  if (older) host.start();
  REQUIRE(host.list->revoke(lost.key.public_key()));
  host.list.reset();
  host.ledger.reset();
  REQUIRE(restore(folder / "copy.db", host.file, true, {DeviceList::carry_revocations}));
  host.start();
  CHECK(code_of(lost.come_to(*host.list)) == FaultCode::refused);
  // In a file of before nobody knows whose a code is: a person sees it among the open ones.
  CHECK(host.list->open_invitations().size() == (older ? 2 : 1));
  if (!older) CHECK(code_of(of_lost.come_to(*host.list)) == FaultCode::untrusted);
  CHECK(of_head.come_to(*host.list));
}

TEST_CASE("device list: a copy that is put back makes no code good again and no role what it was", "[trust]") {
  const TemporaryFolder folder;
  Host host(folder / "host.db");
  const Guest head(host.list->invite(Role::head)->secret), demoted(host.list->invite(Role::head)->secret);
  REQUIRE(head.come_to(*host.list));
  REQUIRE(demoted.come_to(*host.list));
  const auto code = host.list->invite(Role::head), withdrawn = host.list->invite(Role::head), open = host.list->invite(Role::desk);
  const Guest used(code->secret);
  REQUIRE(back_up(host.file, folder / "copy.db", nullptr));
  REQUIRE(used.come_to(*host.list));
  REQUIRE(host.list->revoke(used.key.public_key()));
  REQUIRE(host.list->withdraw(number_of(withdrawn->secret)));
  REQUIRE(host.list->set_role(demoted.key.public_key(), Role::reader));
  host.list.reset();
  host.ledger.reset();
  REQUIRE(restore(folder / "copy.db", host.file, true, {DeviceList::carry_revocations}));
  host.start();
  for (const auto& spent : {code, withdrawn}) CHECK(code_of(Guest(spent->secret).come_to(*host.list)) == FaultCode::untrusted);
  CHECK(host.list->member(demoted.key.public_key())->role == Role::reader);
  CHECK(host.list->member(head.key.public_key())->role == Role::head);
  CHECK(Guest(open->secret).come_to(*host.list));
}

TEST_CASE("device list: where a copy is put back over what can't be read, or where nothing is, none of its open codes is good", "[trust]") {
  const TemporaryFolder folder;
  Host host(folder / "host.db");
  const Guest head(host.list->invite(Role::head)->secret);
  REQUIRE(head.come_to(*host.list));
  const auto code = host.list->invite(Role::head), open = host.list->invite(Role::desk);
  REQUIRE(back_up(host.file, folder / "copy.db", nullptr));
  const Guest used(code->secret);
  REQUIRE(used.come_to(*host.list));
  REQUIRE(host.list->revoke(used.key.public_key()));
  host.list.reset();
  host.ledger.reset();
  enum There { unreadable, only_just_made, nothing };
  const There there = GENERATE(unreadable, only_just_made, nothing);
  std::filesystem::remove(host.file);
  if (there == unreadable) {
    std::ofstream(host.file, std::ios::binary | std::ios::trunc) << std::string(8192, 'x');
  } else if (there == only_just_made) {
    host.start();
    host.list.reset();
    host.ledger.reset();
  }
  const auto restored = restore(folder / "copy.db", host.file, there != nothing, {DeviceList::carry_revocations, DeviceList::withdraw_open});
  REQUIRE(restored);
  CHECK_FALSE(restored->carried);
  CHECK(restored->replaced.has_value() == (there != nothing));
  host.start();
  CHECK(host.list->open_invitations().empty());
  for (const auto& gone : {code, open}) CHECK(code_of(Guest(gone->secret).come_to(*host.list)) == FaultCode::untrusted);
  CHECK(host.list->member(head.key.public_key())->role == Role::head);
  CHECK(head.come_to(*host.list));  // its first answer again
}

TEST_CASE("device list: a file of before codes were told by who asked for them goes on", "[trust]") {
  const TemporaryFolder folder;
  Host host(folder / "host.db");
  const Guest guest(host.list->invite(Role::desk)->secret);
  REQUIRE(host.ledger->transact([](Connection& db) { db.raw().exec("ALTER TABLE trust_invitation DROP COLUMN asked_by"); }));
  host.start();
  REQUIRE(host.list->open_invitations().size() == 1);
  CHECK_FALSE(host.list->open_invitations()[0].asked_by);
  CHECK(guest.come_to(*host.list));
  CHECK(host.list->invite(Role::desk, 1000, guest.key.public_key()));
}

TEST_CASE("device list: the last head does not give the room away by pairing anew with a lesser code", "[trust]") {
  const TemporaryFolder folder;
  Host host(folder / "host.db");
  const Guest head(host.list->invite(Role::head)->secret);
  REQUIRE(head.come_to(*host.list));
  const std::uint64_t before = host.list->revocations();
  const Guest again(host.list->invite(Role::stringer)->secret);
  CHECK(code_of(again.come_as(*host.list, head.key.public_key())) == FaultCode::refused);
  CHECK(host.list->member(head.key.public_key())->role == Role::head);
  const Guest other(host.list->invite(Role::head)->secret);
  REQUIRE(other.come_to(*host.list));
  CHECK(again.come_as(*host.list, head.key.public_key()));  // the code is still good
  CHECK(host.list->member(head.key.public_key())->role == Role::stringer);
  CHECK(host.list->revocations() > before);  // sessions of before look anew
}

TEST_CASE("device list: a withdrawn code is as good as none", "[trust]") {
  const TemporaryFolder folder;
  Host host(folder / "host.db");
  const Guest guest(host.list->invite(Role::head)->secret);
  REQUIRE(host.list->withdraw(number_of(guest.secret)));
  CHECK(code_of(guest.come_to(*host.list)) == FaultCode::untrusted);
}

TEST_CASE("device list: who is revoked stays out until invited anew", "[trust]") {
  const TemporaryFolder folder;
  Host host(folder / "host.db");
  Guest guest(host.list->invite(Role::head)->secret);
  REQUIRE(guest.come_to(*host.list));
  REQUIRE(host.list->revoke(guest.key.public_key()));
  const auto member = host.list->member(guest.key.public_key());
  REQUIRE_FALSE(member);
  CHECK(member.error().code == FaultCode::refused);
  // The invitation that it used, although not yet expired, does not bring it back.
  CHECK(code_of(guest.come_to(*host.list)) == FaultCode::refused);
  CHECK_FALSE(host.list->member(guest.key.public_key()));
  REQUIRE(host.list->devices().size() == 1);
  CHECK(host.list->devices()[0].revoked == kNoon);

  host.clock.advance(1000);
  guest.secret = host.list->invite(Role::reader)->secret;
  REQUIRE(guest.come_to(*host.list));
  CHECK(host.list->member(guest.key.public_key())->role == Role::reader);
  CHECK(host.list->member(guest.key.public_key())->since == kNoon + 1000);
  CHECK(host.list->revoke(PublicKey{}).error().code == FaultCode::not_found);
}

TEST_CASE("device list: a device gets another name or role, and a room is never without a head", "[trust]") {
  const TemporaryFolder folder;
  Host host(folder / "host.db");
  Guest head(host.list->invite(Role::head)->secret), other(host.list->invite(Role::stringer)->secret);
  REQUIRE(head.come_to(*host.list));
  REQUIRE(other.come_to(*host.list));
  REQUIRE(host.list->rename(other.key.public_key(), "  bench by the window "));
  CHECK(host.list->member(other.key.public_key())->name == "bench by the window");
  CHECK(host.list->rename(other.key.public_key(), " ").error().code == FaultCode::bad_input);
  CHECK(host.list->rename(PublicKey{}, "nobody").error().code == FaultCode::not_found);

  const std::uint64_t before = host.list->revocations();
  CHECK(host.list->set_role(head.key.public_key(), Role::desk).error().code == FaultCode::refused);
  CHECK(host.list->member(head.key.public_key())->role == Role::head);
  CHECK(host.list->revocations() == before);
  REQUIRE(host.list->set_role(other.key.public_key(), Role::head));
  CHECK(host.list->revocations() != before);
  REQUIRE(host.list->set_role(head.key.public_key(), Role::desk));
  CHECK(host.list->member(head.key.public_key())->role == Role::desk);
  CHECK(host.list->set_role(PublicKey{}, Role::desk).error().code == FaultCode::not_found);
  host.start();
  CHECK(host.list->member(other.key.public_key())->role == Role::head);
}

TEST_CASE("device list: the database file does not reveal an open code", "[trust]") {
  const TemporaryFolder folder;
  Host host(folder / "host.db");
  const auto invitation = host.list->invite(Role::head).value();
  const auto key = pairing_key(invitation.secret);
  std::string all;
  for (const auto& entry : std::filesystem::directory_iterator(folder.path())) {
    std::ifstream in(entry.path(), std::ios::binary);
    all.append(std::istreambuf_iterator<char>(in), {});
  }
  const auto number = number_of(invitation.secret);
  CHECK(all.find(as_text(number)) != std::string::npos);  // we did look at the right bytes
  CHECK(all.find(as_text(invitation.secret)) == std::string::npos);
  CHECK(all.find(as_text(key)) == std::string::npos);
  CHECK(all.find(spoken_code(invitation.secret)) == std::string::npos);
}

TEST_CASE("device list: an invitation made with another device key is a clear fault", "[trust]") {
  const TemporaryFolder folder;
  Host host(folder / "host.db");
  const Guest guest(host.list->invite(Role::head)->secret);
  host.key = DeviceKey::generate();
  host.start();
  CHECK(code_of(guest.come_to(*host.list)) == FaultCode::damaged);
}

TEST_CASE("device list: no more than so many open codes", "[trust]") {
  const TemporaryFolder folder;
  Host host(folder / "host.db");
  for (int i = 0; i < DeviceList::kOpenInvitations; ++i) REQUIRE(host.list->invite(Role::desk));
  CHECK(host.list->invite(Role::desk).error().code == FaultCode::refused);
  host.clock.advance(DeviceList::kInvitationLife);
  CHECK(host.list->invite(Role::desk));
}

TEST_CASE("device list: names from elsewhere are kept readable", "[trust]") {
  const TemporaryFolder folder;
  Host host(folder / "host.db");
  const auto enrolled_as = [&](std::string_view name) {
    const Guest guest(host.list->invite(Role::desk)->secret);
    REQUIRE(host.list->admit(number_of(guest.secret), guest.handshake,
                             pairing_proof(pairing_key(guest.secret), PairingSide::guest, guest.handshake),
                             guest.key.public_key(), name));
    return host.list->member(guest.key.public_key())->name;
  };
  CHECK(enrolled_as("Łucja's tablet") == "Łucja's tablet");
  CHECK(enrolled_as("a\x1b[2Jb\nc") == "a [2Jb c");
  CHECK(enrolled_as("good\xff bad") == "good");
  std::string longest;
  for (int i = 0; i < 50; ++i) longest += "é";
  CHECK(enrolled_as(longest).size() == 64);
  CHECK(enrolled_as("x" + longest).size() == 63);
}

TEST_CASE("device list: hosts that we were paired with", "[trust]") {
  const TemporaryFolder folder;
  Host host(folder / "guest.db");
  KnownHost harbour;
  harbour.key.fill(1);
  harbour.name = "Harbour";
  harbour.address = {"192.0.2.7", 26110};
  harbour.fingerprint.fill(7);
  harbour.role = Role::stringer;
  harbour.since = kNoon;
  KnownHost lakeside = harbour;
  lakeside.key.fill(2);
  lakeside.name = "Lakeside";
  lakeside.since = kNoon + 1;
  REQUIRE(host.list->remember_host(harbour));
  REQUIRE(host.list->remember_host(lakeside));
  harbour.address.host = "desk.local";
  REQUIRE(host.list->remember_host(harbour));
  host.start();
  const auto hosts = host.list->hosts();
  REQUIRE(hosts.size() == 2);
  CHECK(hosts[0].name == "Lakeside");
  CHECK(hosts[1].address == Address{"desk.local", 26110});
  CHECK(hosts[1].fingerprint == harbour.fingerprint);
  CHECK(hosts[1].role == Role::stringer);
  REQUIRE(host.list->forget_host(lakeside.key));
  CHECK_FALSE(host.list->host(lakeside.key));
  CHECK(host.list->host(harbour.key));
}
