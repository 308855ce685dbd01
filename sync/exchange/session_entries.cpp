// Session, continued: entries both ways, with their answers, and the agreement when nothing is lacking any more.

#include <algorithm>
#include <stdexcept>

#include "sync/exchange/borrowed_names.h"
#include "sync/exchange/incoming_books.h"
#include "sync/exchange/session.h"

namespace weavelog {
namespace {

constexpr std::uint64_t kBatchesInFlight = 6;
constexpr int kBatchesUntilNoted = 32;

bool lists_unused_book(const Batch& batch) {
  std::vector<bool> used(batch.books.size());
  for (const BatchEntry& entry : batch.entries)
    if (entry.book < used.size()) used[entry.book] = true;
  return std::find(used.begin(), used.end(), false) != used.end();
}

}  // namespace

void Session::pump() {
  if (!flowing_ || status_.state == SessionState::closed) return;
  // What is not held in common may not leave, or was made this moment.
  const CommonBooks* common = keeps_common() ? &common_books() : nullptr;
  const auto wanted = [&](const BookId& id) {
    if (common != nullptr && common->holds(id)) return true;
    const auto book = options_.ledger->book(id);
    return book && may_send(book->id, book->kind);
  };
  while (sent_ - acked_ < kBatchesInFlight) {
    Batch batch;
    const bool queued = !lacking_.empty();
    const std::int64_t before = cursor_;
    if (queued) {
      batch = options_.ledger->missing(lacking_, batch_bytes_);
    } else {
      if (cursor_ >= options_.ledger->position()) break;
      auto since = options_.ledger->since(cursor_, wanted, status_.peer_number, batch_bytes_);
      cursor_ = since.next;
      batch = std::move(since.batch);
    }
    if (batch.empty()) continue;  // only what may not go to this peer: both agree as before
    const std::size_t count = batch.entries.size();
    if (send_entries(batch)) {
      // What came into a book meanwhile was not counted when it was queued.
      if (queued) lacking_entries_ = lacking_.empty() ? 0 : lacking_entries_ - std::min<std::uint64_t>(lacking_entries_, count);
      continue;
    }
    // It fits no frame. Fewer entries at a time do.
    if (count == 1)
      return close({FaultCode::bad_input, "an entry that fits no message, in book " + batch.books.front().id.hex(),
                    "exchange with " + status_.peer.device, "report this; nothing was lost"});
    batch_bytes_ = std::max<std::size_t>(1, batch_bytes_ / 2);
    if (queued) {
      put_back(batch);
    } else {
      cursor_ = before;
    }
  }
  status_.entries_to_send = status_.entries_sent + lacking_entries_;
  status_.all_sent = idle() && short_up_to_ == 0;
  // The first agreement of a session is what people wait for; later ones can wait for a quiet moment (tick), because the
  // digest over all common books costs more than one change.
  if (status_.all_sent && !status_.agreed) settle();
}

bool Session::send_entries(Batch& batch) {
  Entries said{sent_ + 1, std::move(batch)};
  Message message = protocol_ >= kProtocolWithPackedEntries ? Message(PackedEntries{std::move(said)}) : Message(std::move(said));
  Entries& entries = *entries_in(message);
  Bytes frame;
  try {
    frame = encode_frame(message);
  } catch (const std::length_error&) {
    batch = std::move(entries.batch);
    return false;
  }
  ++sent_;
  status_.state = SessionState::exchanging;
  status_.entries_sent += entries.batch.entries.size();
  count_exchanged(entries.batch, true);
  Sent sent{entries.batch.entries.size(), {}};
  for (const BatchBook& book : entries.batch.books) sent.books.push_back(book.id);
  in_flight_.push_back(std::move(sent));
  if (options_.sends) options_.sends(entries.number, entries.batch);
  out_.push_back(std::move(frame));
  return true;
}

void Session::put_back(const Batch& batch) {
  for (std::size_t i = batch.books.size(); i-- > 0;) {
    const BatchBook& book = batch.books[i];
    // What is still queued of it says what else the peer holds; else it lacked nothing but this.
    const bool begun = !lacking_.empty() && lacking_.front().book == book.id;
    BookHeads theirs{book.id, book.kind, begun ? std::move(lacking_.front().heads) : options_.ledger->heads(book.id)};
    if (begun) lacking_.pop_front();
    std::set<std::uint32_t> seen;
    for (const BatchEntry& entry : batch.entries) {
      if (entry.book != i || !seen.insert(entry.author).second) continue;
      const AuthorId author = batch.authors[entry.author].id();
      std::erase_if(theirs.heads, [&](const Head& head) { return head.author == author; });
      if (entry.seq > 1) theirs.heads.push_back({author, entry.seq - 1, {}});
    }
    lacking_.push_front(std::move(theirs));
  }
}

void Session::settle() {
  if (!idle()) return;
  offer_agreement();
  weigh_agreement();
}

bool Session::idle() const {
  return flowing_ && holdings_due_ == 0 && lacking_.empty() && sent_ == acked_ && cursor_ >= options_.ledger->position();
}

void Session::handle(const Entries& entries, ByteView) {
  if (!expect(open(), "entries")) return;
  if (options_.side == Side::host && status_.role == Role::reader)
    return close({FaultCode::refused, "a device in the role of reader sends changes", "exchange with " + status_.peer.device,
                  "ask the head of the room for another role"});
  if (options_.side == Side::host)
    if (auto beyond = beyond_role(entries.batch)) return close(std::move(*beyond));
  if (entries.number != applied_ + 1)
    return close({FaultCode::malformed, "a batch out of order", "exchange", "end the exchange and try again"});
  // A book would come into the scope, and be remembered, for nothing.
  if (lists_unused_book(entries.batch))
    return close({FaultCode::malformed, "a batch that names a book of which it has nothing", "exchange with " + status_.peer.device,
                  "the sender is faulty; nothing was lost"});
  if (options_.side == Side::host)
    for (const BatchBook& book : entries.batch.books)
      if (!options_.ledger->book(book.id) && !options_.rights.may_begin(status_.role, book)) {
        not_kept_.insert(book.id);
        note_not_begun(book.id);
      }
  for (const BatchBook& book : entries.batch.books) received_.insert(book.id);
  const auto [fresh, apart] = scoped() ? incoming_books(*options_.ledger, *options_.peers, status_.peer_number, status_.peer.key, entries.batch,
                                                         [this](const BookId& book) { return not_kept_.contains(book); })
                                       : IncomingBooks{};
  // What comes from a peer and was not here is shared with it from then on, by both sides alike.
  if (auto widened = options_.peers->widen(status_.peer_number, fresh); !widened) return close(widened.error());
  given_.insert(fresh.begin(), fresh.end());
  std::optional<Batch> rest;
  if (!held_back_.empty() || !not_kept_.empty()) rest = without_held_back(entries.batch);
  if (options_.side == Side::host) {
    const auto borrowed = borrowed_names(*options_.ledger, *options_.devices, *weigher_, entries.batch);
    if (!borrowed.empty()) {
      if (!rest) rest = entries.batch;
      take_names_away(*rest, borrowed);
    }
  }
  Outcome<ApartBegun> begun;
  if (!apart.empty()) begun = options_.peers->begin_apart(status_.peer_number, entries.batch, apart);
  if (!begun) return close(begun.error());
  note_brought(rest ? *rest : entries.batch);
  const auto report = options_.ledger->ingest(rest ? *rest : entries.batch, status_.peer_number);
  if (!report) return close(report.error());
  if (!apart.empty()) {
    if (auto kept = options_.peers->keep_apart(status_.peer_number, entries.batch, apart, *begun); !kept) return close(kept.error());
    apart_ = options_.peers->apart(status_.peer_number);
  }
  ++applied_;
  status_.state = SessionState::exchanging;
  status_.entries_received += report->applied;
  status_.quarantined += report->quarantined;
  status_.books_received = received_.size();
  // What settling the last doubt brought may show the next that is lacking: only doubts that bring nothing are counted.
  if (report->applied > 0 && !status_.at_odds) doubts_ = 0;
  // The doubt first: whoever hears the answer knows then that the batch is not all there. What was on its way when it was said is part of it.
  if (report->gaps && !doubt_said_) doubt();
  const bool whole = !report->gaps && !report->other_kind && (!rest || rest->entries.size() == entries.batch.entries.size());
  if (whole || protocol_ < kProtocolWithPackedEntries) {
    send(Ack{applied_});
  } else {
    send(HeldBack{applied_});
  }
  after_ingest(entries.batch, *report);
  count_exchanged(entries.batch, false);
  // Those that came into the scope but brought nothing new would not be looked at otherwise.
  if (!fresh.empty()) common_books().revisit(*options_.ledger, may_cross(), fresh);
  pump();
}

std::optional<Fault> Session::beyond_role(const Batch& batch) {
  // Of a tablet that plays the host the guest is no more than met: whether it may is known where it is enrolled.
  const auto author = weigher_->beyond(status_.peer.key, status_.role, options_.rights, options_.shares ? OwnWords::if_new : OwnWords::all, batch);
  if (!author) return std::nullopt;
  const std::string where = "exchange with " + status_.peer.device;
  if (author->key == status_.peer.key)
    return Fault{FaultCode::refused, std::string("a device in the role of ") + name_of(status_.role) + " sends what only others of the room may change",
                 where, "ask the head of the room for another role, and exchange again"};
  return Fault{FaultCode::refused, "a device brings what one that is not known here (\"" + author->device + "\") changed, and only others of the room may",
               where, "pair that device with this room, or let the head of the room bring it"};
}

void Session::count_exchanged(const Batch& batch, bool sent) {
  for (const BatchEntry& entry : batch.entries) {
    if (entry.book >= batch.books.size() || batch.books[entry.book].kind != options_.ledger->registry().personal()) continue;
    ExchangedCount& count = exchanged_[batch.books[entry.book].id];
    ++(sent ? count.sent : count.received);
  }
  if (++uncounted_ == kBatchesUntilNoted) note_exchanged();
}

/// With every agreement, in its transaction, else only now and then and at the end: it is a write to the disk.
void Session::note_exchanged() {
  uncounted_ = 0;
  if (exchanged_.empty() || status_.peer_number == 0) return;
  // An exchange is not given up because this could not be written down: it is tried again with what crosses next.
  if (options_.peers->note_exchanged(status_.peer_number, exchanged_, options_.ledger->wall().now())) exchanged_.clear();
}

void Session::handle(const PackedEntries& packed, ByteView frame) { handle(packed.entries, frame); }

void Session::handle(const Ack& ack, ByteView) { answered(ack.number, true); }

void Session::handle(const HeldBack& held_back, ByteView) { answered(held_back.number, false); }

void Session::answered(std::uint64_t number, bool whole) {
  if (number <= acked_ || number > sent_)
    return close({FaultCode::malformed, "an answer to a batch that was never sent", "exchange", "end the exchange and try again"});
  for (std::uint64_t answered = acked_; answered < number; ++answered) {
    status_.entries_confirmed += in_flight_.front().entries;
    if (!whole) came_short_.insert(in_flight_.front().books.begin(), in_flight_.front().books.end());
    in_flight_.pop_front();
  }
  acked_ = number;
  // What was held back comes again later: only a later batch that is all there can make it good.
  if (!whole) {
    short_up_to_ = sent_;
  } else if (number > short_up_to_) {
    short_up_to_ = 0;
  }
  pump();
}

void Session::pump_new_scope() {
  if (!scoped() || !flowing_) return;
  std::vector<BookId> ticked = options_.peers->scope_after(status_.peer_number, scope_known_);
  scope_known_ += ticked.size();
  std::erase_if(ticked, [&](const BookId& book) { return given_.contains(book); });
  if (ticked.empty()) return;
  common_books().revisit(*options_.ledger, may_cross(), ticked);
  if (options_.side == Side::host) {
    // A guest has no answer to an offer: all of it goes, and what it holds already it knows when it comes.
    for (const BookId& book : ticked)
      if (const auto held = options_.ledger->book(book)) queue({held->id, held->kind, {}});
    return;
  }
  for (const BookId& book : ticked)
    if (const auto held = options_.ledger->book(book); held && common_->holds(book)) to_offer_.push_back({held->id, held->kind});
  send_offers();
}

Session::Frames Session::changed() {
  return guarded([&] {
    if (!flowing_) {
      changed_unseen_ = true;  // what was ticked meanwhile is not among what is compared: the next tick sees to it
      return;
    }
    take_changes();
  });
}

void Session::take_changes() {
  changed_unseen_ = false;
  tell_stubs();
  if (!widen_shared()) return;
  pump_new_scope();
  pump();
}

Session::Frames Session::tick() {
  return guarded([&] {
    stub_bytes_ = kStubBytesAtOnce;
    if (flowing_ && telling_stubs()) tell_stubs();
    if (flowing_ && changed_unseen_) take_changes();
    doubt_once_more();
    settle();
    contents_.tick();
    offer_contents();
  });
}

// ------------------------------------------------------------------------------------------------ agreement

void Session::offer_agreement() {
  if (telling_stubs()) return;  // both have to know the same to be forgotten
  // A host that may have to let go of something waits until the guest has said all, so that the guest does not take for agreed what is not.
  if (options_.side == Side::host && !brought_.empty() && !(heard_ && heard_->sent == applied_)) return;
  Agree agree{sent_, applied_, {}};
  if (said_ && said_->sent == agree.sent && said_->applied == agree.applied) return;
  compare_stubs();
  agree.digest = common_books().digest();
  said_ = agree;
  send(agree);
}

void Session::handle(const Agree& agree, ByteView) {
  if (!expect(open(), "agree")) return;
  heard_ = agree;
  if (!idle()) return;
  if (!brought_.empty()) offer_agreement();  // it waited for this
  weigh_agreement();
}

void Session::weigh_agreement() {
  // Comparable only if both speak of the same moment: all that either sent is applied by the other.
  if (!heard_ || !said_ || heard_->sent != applied_ || heard_->applied != sent_ || said_->sent != sent_ || said_->applied != applied_) return;
  const Agree theirs = *heard_;
  heard_.reset();
  if (let_go_of_brought(true)) {
    said_.reset();
    offer_agreement();
  }
  if (status_.state == SessionState::closed) return;
  const auto& books = common_books();
  const Digest digest = books.digest();
  if (digest != theirs.digest) {
    // Ours may have changed since they spoke (a local action that was already sent on); then they will speak again.
    if (said_->digest == digest) doubt();
    return;
  }
  Agreement agreement;
  agreement.digest = digest;
  agreement.books = books.size();
  agreement.position = cursor_;
  agreement.at = options_.ledger->wall().now();
  const Digest named = digest_of({as_bytes("weavelog agreement 1"), handshake_, digest});
  std::copy_n(named.begin(), agreement.token.size(), agreement.token.begin());
  if (auto kept = options_.peers->agree(status_.peer_number, agreement, exchanged_); !kept) return close(kept.error());
  exchanged_.clear();
  uncounted_ = 0;
  if (told_ > options_.peers->told(status_.peer_number))
    if (auto kept = options_.peers->tell(status_.peer_number, told_); !kept) return close(kept.error());
  status_.agreed = agreement;
  status_.at_odds = false;
  doubts_ = 0;
  doubt_said_ = false;
  status_.state = SessionState::agreed;
  offer_contents();
}

}  // namespace weavelog
