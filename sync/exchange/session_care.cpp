// Session, continued: what devices tell each other beside entries. Forgotten books, chains that parted,
// devices and their revocation, invitations.

#include <algorithm>

#include "core/log/head_index.h"
#include "core/store/database.h"
#include "sync/exchange/session.h"

namespace weavelog {
namespace {

constexpr std::size_t kStubsPerMessage = 1000;
/// A tournament has some hundreds of players, a career some thousands.
constexpr std::uint64_t kUnheldStubsOfOne = 20'000;
constexpr std::uint64_t kWhole = INT64_MAX;

void leave_out(Heads& heads, const std::vector<AuthorId>& authors) {
  std::erase_if(heads, [&](const Head& head) {
    return std::find(authors.begin(), authors.end(), head.author) != authors.end();
  });
}

}  // namespace

// ------------------------------------------------------------------------------------------------ forgetting

/// As many as may go before the next tick: a connection that can't keep up with what waits for it is closed.
void Session::tell_stubs() {
  if (protocol_ < kProtocolWithStubs) return;
  const auto tell = [&](std::int64_t& after, bool echo) {
    while (stub_bytes_ > 0) {
      const auto some = options_.ledger->forgotten(after, kStubsPerMessage);
      if (some.empty()) return false;
      after = some.back().number;
      Stubs message;
      for (const Forgotten& one : some)
        if (echo || one.heard_from != status_.peer.key) message.stubs.push_back(one.stub);
      if (message.stubs.empty()) continue;
      send(message);
      if (status_.state == SessionState::closed) return false;
      stub_bytes_ -= std::min(stub_bytes_, out_.back().size());
      // What both agreed on was over other books.
      said_.reset();
      heard_.reset();
    }
    return true;
  };
  more_stubs_ = tell(told_, false);
  if (!more_stubs_ && all_stubs_after_) {
    if (tell(*all_stubs_after_, true)) return;
    all_stubs_after_.reset();
    stubs_asked_ = true;
  }
  if (more_stubs_ || !stubs_asked_) return;
  // If they are the ones who lack nothing, they have to hear what we know.
  stubs_asked_ = false;
  stubs_said_ = stubs_known();
  send(*stubs_said_);
}

StubsKnown Session::stubs_known() {
  for (;;) {
    const auto news = options_.ledger->forgotten(stubs_up_to_, kStubsPerMessage);
    if (news.empty()) return stubs_;
    for (const Forgotten& one : news) {
      const Digest digest = digest_of({as_bytes("weavelog forgotten 1"), one.stub.book.bytes});
      for (std::size_t i = 0; i < stubs_.sum.size(); ++i) stubs_.sum[i] ^= digest[i];
    }
    stubs_.count += news.size();
    stubs_up_to_ = news.back().number;
  }
}

/// What a peer was told is remembered by its key; but a device can go on from an old copy of its files and know no longer.
void Session::compare_stubs() {
  if (protocol_ < kProtocolWithPackedEntries) return;
  const StubsKnown known = stubs_known();
  if (known == stubs_said_.value_or(StubsKnown{})) return;  // who knows of none need not say so first
  stubs_said_ = known;
  send(known);
}

void Session::handle(const StubsKnown& theirs, ByteView) {
  if (!expect(open(), "stubs known")) return;
  tell_stubs();
  if (telling_stubs()) {
    stubs_asked_ = true;  // what they said is no longer true by then
    return;
  }
  const StubsKnown ours = stubs_known();
  if (ours == theirs || all_stubs_told_ == ours) return;
  all_stubs_told_ = ours;
  all_stubs_after_ = 0;
  said_.reset();
  heard_.reset();
  tell_stubs();
}

/// A device passes on only what it obeyed itself, and could order the same in its own name: so it vouches for
/// authors that are not known here. From a guest who may not write it has to be an author who may.
bool Session::entitled(const Stub& stub) const {
  return options_.side == Side::guest || status_.role != Role::reader ||
         options_.devices->may_order_forgetting(stub.key);
}

void Session::handle(const Stubs& message, ByteView) {
  if (!expect(status_.state == SessionState::comparing || open(), "stubs")) return;
  std::vector<Stub> obeyed;
  std::vector<BookId> declined;
  for (const Stub& stub : message.stubs) {
    if (entitled(stub))
      obeyed.push_back(stub);
    else if (options_.ledger->book(stub.book))
      declined.push_back(stub.book);
  }
  obeyed = bounded(std::move(obeyed));
  if (status_.state == SessionState::closed) return;
  const auto report = options_.ledger->obey(obeyed, status_.peer.key);
  if (!report) return close(report.error());
  if (auto kept = options_.peers->decline(status_.peer_number, declined); !kept) return close(kept.error());
  declined_.insert(declined.begin(), declined.end());
  status_.forgotten += report->erased.size();
  said_.reset();
  heard_.reset();
}

/// Anybody can make up books that were never here and say that they are forgotten; a ledger remembers only so many of these.
std::vector<Stub> Session::bounded(std::vector<Stub> stubs) {
  if (options_.side == Side::guest || status_.role == Role::head) return stubs;
  const std::uint64_t before = options_.peers->unheld_stubs(status_.peer_number);
  std::uint64_t brought = before;
  std::erase_if(stubs, [&](const Stub& stub) {
    if (options_.ledger->book(stub.book) || options_.ledger->is_forgotten(stub.book)) return false;
    if (brought >= kUnheldStubsOfOne) return true;
    ++brought;
    return false;
  });
  if (brought != before)
    if (auto kept = options_.peers->note_unheld_stubs(status_.peer_number, brought); !kept) close(kept.error());
  return stubs;
}

// ------------------------------------------------------------------------------------------------ forks

Digest Session::compared(const BookInfo& book) const {
  const bool apart = kept_apart(book.id);
  const auto& forks = apart ? apart_forks_ : forks_;
  const auto found = forks.find(book.id);
  if (found == forks.end()) return apart ? digest_of_heads(apart_.at(book.id)) : book.heads;
  Heads heads = told_heads(book.id);
  leave_out(heads, {found->second.begin(), found->second.end()});
  return digest_of_heads(heads);
}

void Session::note_forks(const BookId& book, const std::vector<AuthorId>& authors) {
  forks_[book].insert(authors.begin(), authors.end());
  status_.forks = 0;
  for (const auto& [id, parted] : forks_) status_.forks += parted.size();
  if (protocol_ < kProtocolWithStubs) return;
  const PublicKey key = options_.ledger->self().key;
  for (const KnownAuthor& known : options_.ledger->authors())
    if (known.card.key == key && std::find(authors.begin(), authors.end(), known.card.id()) != authors.end())
      held_back_.insert(book);
}

bool Session::meet_forks(const BookHeads& theirs) {
  if (theirs.heads.empty() && forks_.empty()) return false;
  auto authors = options_.ledger->forked(theirs.book, theirs.heads);
  const auto known = forks_.find(theirs.book);
  if (authors.empty() && known == forks_.end()) return false;
  if (known != forks_.end())
    std::erase_if(authors, [&](const AuthorId& author) { return known->second.contains(author); });
  BookHeads lacking = theirs;
  // Chains that parted before are in both places already.
  if (known != forks_.end())
    for (const AuthorId& author : known->second) {
      leave_out(lacking.heads, {author});
      lacking.heads.push_back({author, kWhole, {}});
    }
  if (!authors.empty()) {
    leave_out(lacking.heads, authors);
    BookHeads ours{theirs.book, theirs.kind, options_.ledger->heads(theirs.book)};
    leave_out(ours.heads, authors);
    ours.heads = as_told(std::move(ours.heads));
    note_forks(theirs.book, authors);
    if (protocol_ >= kProtocolWithStubs) send(Forks{{{std::move(ours), authors}}});
  }
  lacking_.push_back(std::move(lacking));
  return true;
}

void Session::handle(const Forks& message, ByteView) {
  if (!expect(open(), "forks")) return;
  for (const ForkNotice& notice : message.forks) {
    const auto held = options_.ledger->book(notice.heads.book);
    const bool apart = held && kept_apart(held->id);
    if (!held || (!apart && !may_send(held->id, held->kind))) continue;
    const auto& noted = apart ? apart_forks_ : forks_;
    const auto known = noted.find(held->id);
    // Once a chain that is held here: a faulty peer can't make it go on for ever.
    std::vector<AuthorId> fresh;
    for (const Head& head : told_heads(held->id))
      if (std::find(notice.authors.begin(), notice.authors.end(), head.author) != notice.authors.end() &&
          (known == noted.end() || !known->second.contains(head.author)))
        fresh.push_back(head.author);
    if (fresh.empty()) continue;
    note_forks(held->id, fresh);
    // What the peer said of such a chain before is another branch than it holds now, which it sends whole: no answer to that.
    if (apart) {
      apart_forks_[held->id].insert(fresh.begin(), fresh.end());
      continue;
    }
    BookHeads lacking = notice.heads;
    leave_out(lacking.heads, fresh);
    lacking_.push_back(std::move(lacking));
  }
  pump();
}

/// The peer says what it holds of a book that is kept apart here. If it is less of a chain than it said before, or another branch, then it says
/// that chain anew.
void Session::weigh_apart(const BookHeads& theirs) {
  if (theirs.heads.empty() || protocol_ < kProtocolWithStubs) return;
  const auto left_out = apart_forks_.find(theirs.book);
  std::vector<AuthorId> otherwise;
  const HeadIndex index(theirs.heads);
  for (const Head& said : apart_.at(theirs.book)) {
    const Head* now = index.find(said.author);
    if (now != nullptr && (now->seq > said.seq || *now == said)) continue;
    if (left_out == apart_forks_.end() || !left_out->second.contains(said.author)) otherwise.push_back(said.author);
  }
  if (otherwise.empty()) return;
  apart_forks_[theirs.book].insert(otherwise.begin(), otherwise.end());
  if (auto forgot = options_.peers->forget_apart(status_.peer_number, theirs.book, otherwise); !forgot) return close(forgot.error());
  apart_ = options_.peers->apart(status_.peer_number);
  send(Forks{{{{theirs.book, theirs.kind, kept_apart(theirs.book) ? as_told(apart_.at(theirs.book)) : Heads{}}, otherwise}}});
}

bool Session::forget_apart(const BookId& book) {
  std::vector<AuthorId> authors;
  for (const Head& said : apart_.at(book)) authors.push_back(said.author);
  if (auto forgot = options_.peers->forget_apart(status_.peer_number, book, authors); !forgot) {
    close(forgot.error());
    return false;
  }
  apart_ = options_.peers->apart(status_.peer_number);
  return true;
}

/// What others wrote after the other branch must not be applied to ours: the same number means another entry
/// there. It comes again behind the branch.
Batch Session::without_held_back(const Batch& batch) {
  const PublicKey key = options_.ledger->self().key;
  for (const BatchEntry& entry : batch.entries)
    if (entry.seq == 1 && entry.author < batch.authors.size() && entry.book < batch.books.size() &&
        batch.authors[entry.author].key == key)
      held_back_.erase(batch.books[entry.book].id);
  Batch out = batch;
  out.ahead = {};
  std::erase_if(out.entries, [&](const BatchEntry& entry) {
    return entry.book < batch.books.size() &&
           (held_back_.contains(batch.books[entry.book].id) || not_kept_.contains(batch.books[entry.book].id));
  });
  return out;
}

void Session::after_ingest(const Batch& batch, const IngestReport& report) {
  for (const AuthorId& author : report.wrong_clocks)
    for (const AuthorCard& card : batch.authors)
      if (card.id() == author && std::find(status_.wrong_clocks.begin(), status_.wrong_clocks.end(),
                                           card.device) == status_.wrong_clocks.end())
        status_.wrong_clocks.push_back(card.device);
  if (options_.side == Side::host)
    if (auto counted = options_.devices->count_late(report.applied_by); !counted)
      return close(counted.error());
  for (const auto& [book, author] : report.forks) {
    if (const auto known = forks_.find(book); known != forks_.end() && known->second.contains(author))
      continue;
    const auto held = options_.ledger->book(book);
    if (!held) continue;
    note_forks(book, {author});
    held_back_.erase(book);  // the other branch has come already
    BookHeads ours{book, held->kind, options_.ledger->heads(book)};
    leave_out(ours.heads, {author});
    ours.heads = as_told(std::move(ours.heads));
    if (protocol_ >= kProtocolWithStubs && !kept_apart(book)) send(Forks{{{std::move(ours), {author}}}});
    if (may_send(book, held->kind)) lacking_.push_back({book, held->kind, {}});
  }
}

// ------------------------------------------------------------------------------------------------ what may not stay

void Session::note_not_begun(const BookId& book) {
  not_begun_.insert(book);
  status_.not_begun = not_begun_.size();
}

void Session::note_brought(const Batch& batch) {
  if (!options_.may_stay) return;
  for (const BatchBook& book : batch.books)
    if (!brought_.contains(book.id) && !not_kept_.contains(book.id) && !options_.ledger->book(book.id)) brought_.insert(book.id);
}

/// At the end of a session that was cut off. With a broken disk nothing more can be done about it.
void Session::leave() noexcept {
  try {
    (void)let_go_of_brought(false);
  } catch (const SQLite::Exception&) {
  }
}

/// An entry list that says that a player is at this event may come after the player's book: so most of it waits until both have said all.
bool Session::let_go_of_brought(bool settled) {
  const std::uint64_t before = status_.not_kept;
  for (const BookId& id : brought_) {
    const auto book = options_.ledger->book(id);
    if (!book || options_.may_stay(id, book->kind, status_.event, settled)) continue;
    const auto gone = options_.ledger->shed({&id, 1});
    // Refused where this device wrote into it itself: its own words stay.
    if (!gone && gone.error().code != FaultCode::refused && settled) {
      close(gone.error());  // what could not be let go stays here, and that is said
      return false;
    }
    if (!gone) continue;
    not_kept_.insert(id);
    ++status_.not_kept;
  }
  if (settled) brought_.clear();
  return status_.not_kept != before;
}

// ------------------------------------------------------------------------------------------------ devices

/// A device that was revoked is refused from that moment on, not only at its next hello.
void Session::check_membership() {
  if (options_.side != Side::host || status_.state < SessionState::comparing ||
      status_.state == SessionState::closed)
    return;
  const std::uint64_t now = options_.devices->revocations();
  if (now == revocations_seen_) return;
  revocations_seen_ = now;
  const auto device = options_.devices->member(status_.peer.key);
  if (!device) return close(device.error());
  status_.role = device->role;
}

Session::Frames Session::wish_devices() {
  return guarded([&] {
    if (open() && protocol_ >= kProtocolWithStubs) send(DevicesWish{});
  });
}

Session::Frames Session::wish_revocation(const PublicKey& device) {
  return guarded([&] {
    if (open() && protocol_ >= kProtocolWithStubs) send(RevocationWish{device});
  });
}

Session::Frames Session::wish_change(const PublicKey& device, const std::string& name, std::optional<Role> role) {
  return guarded([&] {
    if (!open()) return;
    if (protocol_ < kProtocolWithDeviceChanges) {
      // Nothing crosses, so nothing may close: it is only said.
      status_.fault = Fault{FaultCode::newer, "\"" + status_.peer.device + "\" does not know how to change devices from afar", "devices", "update Weavelog there"};
      return;
    }
    send(DeviceChange{device, name, role ? static_cast<std::uint64_t>(*role) : 0});
  });
}

void Session::answer_devices() {
  Devices answer;
  for (const EnrolledDevice& device : options_.devices->devices())
    answer.devices.push_back({device.key, device.name, static_cast<std::uint64_t>(device.role), device.since,
                              device.revoked.value_or(0), device.late_entries});
  send(answer);
}

void Session::handle(const DevicesWish&, ByteView) {
  if (!expect(options_.side == Side::host && open(), "devices")) return;
  if (status_.role != Role::head)
    return close({FaultCode::refused, "only the head of the room sees who is enrolled",
                  "exchange with " + status_.peer.device, ""});
  answer_devices();
}

void Session::handle(const RevocationWish& wish, ByteView) {
  if (!expect(options_.side == Side::host && open(), "revocation")) return;
  const std::string where = "exchange with " + status_.peer.device;
  if (status_.role != Role::head)
    return close(
        {FaultCode::refused, "only the head of the room revokes devices", where, "ask the head of the room"});
  if (wish.key == status_.peer.key)
    return close({FaultCode::refused, "a device can't revoke itself", where, "another head has to do it"});
  if (auto revoked = options_.devices->revoke(wish.key); !revoked) return close(revoked.error());
  answer_devices();
}

void Session::handle(const DeviceChange& change, ByteView) {
  if (!expect(options_.side == Side::host && open(), "device change")) return;
  const std::string where = "exchange with " + status_.peer.device;
  if (status_.role != Role::head)
    return close({FaultCode::refused, "only the head of the room changes devices", where, "ask the head of the room"});
  if (!change.name.empty())
    if (auto named = options_.devices->rename(change.key, change.name); !named) return close(named.error());
  if (change.role != 0) {
    const auto role = role_from(change.role);
    if (!role) return close(role.error());
    if (auto set = options_.devices->set_role(change.key, *role); !set) return close(set.error());
  }
  answer_devices();
}

void Session::handle(const Devices& message, ByteView) {
  if (!expect(options_.side == Side::guest && open(), "devices")) return;
  std::vector<EnrolledDevice> devices;
  for (const DeviceLine& line : message.devices) {
    EnrolledDevice& device = devices.emplace_back();
    device.key = line.key;
    device.name = line.name;
    device.role = role_from(line.role).value_or(Role::reader);
    device.since = line.since_ms;
    if (line.revoked_ms != 0) device.revoked = line.revoked_ms;
    device.late_entries = line.late_entries;
  }
  status_.devices = std::move(devices);
}

// ------------------------------------------------------------------------------------------------ invitations

Session::Frames Session::wish_invitation(Role role, UnixMs life) {
  return guarded([&] {
    if (open()) send(InvitationWish{static_cast<std::uint64_t>(role), life});
  });
}

void Session::handle(const InvitationWish& wish, ByteView) {
  if (!expect(options_.side == Side::host && open(), "invitation")) return;
  if (status_.role != Role::head)
    return close({FaultCode::refused, "only the head of the room invites devices", "exchange with " + status_.peer.device, ""});
  const auto role = role_from(wish.role);
  if (!role) return close(role.error());
  const auto invitation = options_.devices->invite(*role, wish.life_ms, status_.peer.key);
  if (!invitation) return close(invitation.error());
  send(InvitationGrant{wish.role, invitation->secret, invitation->expires});
}

void Session::handle(const InvitationGrant& grant, ByteView) {
  const auto role = role_from(grant.role);
  if (!expect(options_.side == Side::guest && open() && role, "invitation")) return;
  status_.invitation = Invitation{grant.secret, *role, grant.expires_ms};
}

}  // namespace weavelog
