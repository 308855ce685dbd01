// Session, continued: entries both ways, with their answers, and the agreement when nothing is lacking any more.

#include <algorithm>

#include "sync/exchange/session.h"

namespace weavelog {
namespace {

constexpr std::uint64_t kBatchesInFlight = 4;
constexpr std::size_t kBooksPerMessage = 1000;

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
    if (!lacking_.empty()) {
      batch = options_.ledger->missing(lacking_, options_.batch_bytes);
    } else {
      if (cursor_ >= options_.ledger->position()) break;
      auto since = options_.ledger->since(cursor_, wanted, status_.peer_number, options_.batch_bytes);
      cursor_ = since.next;
      batch = std::move(since.batch);
    }
    if (batch.empty()) continue;  // only what may not go to this peer: both agree as before
    status_.state = SessionState::exchanging;
    status_.entries_sent += batch.entries.size();
    Entries entries{++sent_, std::move(batch)};
    if (protocol_ >= kProtocolWithPackedEntries) {
      send(PackedEntries{std::move(entries)});
    } else {
      send(std::move(entries));
    }
  }
  status_.all_sent = idle() && short_up_to_ == 0;
  // The first agreement of a session is what people wait for; later ones can wait for a quiet moment (tick), because the
  // digest over all common books costs more than one change.
  if (status_.all_sent && !status_.agreed) settle();
}

void Session::settle() {
  if (!idle()) return;
  offer_agreement();
  weigh_agreement();
}

bool Session::idle() const {
  return flowing_ && lacking_.empty() && sent_ == acked_ && cursor_ >= options_.ledger->position();
}

void Session::handle(const Entries& entries, ByteView) {
  if (!expect(open(), "entries")) return;
  if (options_.side == Side::host && status_.role == Role::reader)
    return close({FaultCode::refused, "a device in the role of reader sends changes", "exchange with " + status_.peer.device,
                  "ask the head of the room for another role"});
  if (entries.number != applied_ + 1)
    return close({FaultCode::malformed, "a batch out of order", "exchange", "end the exchange and try again"});
  std::vector<BookId> fresh;
  for (const auto& book : entries.batch.books) {
    received_.insert(book.id);
    if (options_.side == Side::guest && !options_.peers->in_scope(status_.peer_number, book.id)) fresh.push_back(book.id);
  }
  // What comes from a peer is shared with it from then on, by both sides alike.
  if (auto widened = options_.peers->widen(status_.peer_number, fresh); !widened) return close(widened.error());
  given_.insert(fresh.begin(), fresh.end());
  std::optional<Batch> rest;
  if (!held_back_.empty()) rest = without_held_back(entries.batch);
  const auto report = options_.ledger->ingest(rest ? *rest : entries.batch, status_.peer_number);
  if (!report) return close(report.error());
  ++applied_;
  status_.state = SessionState::exchanging;
  status_.entries_received += report->applied;
  status_.quarantined += report->quarantined;
  status_.books_received = received_.size();
  // The doubt first: whoever hears the answer knows then that the batch is not all there.
  if (report->gaps) doubt();
  const bool whole = !report->gaps && (!rest || rest->entries.size() == entries.batch.entries.size());
  if (whole || protocol_ < kProtocolWithPackedEntries) {
    send(Ack{applied_});
  } else {
    send(HeldBack{applied_});
  }
  after_ingest(entries.batch, *report);
  // Those that came into the scope but brought nothing new would not be looked at otherwise.
  if (!fresh.empty() && keeps_common()) common_books().revisit(*options_.ledger, may_cross(), fresh);
  pump();
}

void Session::handle(const PackedEntries& packed, ByteView frame) { handle(packed.entries, frame); }

void Session::handle(const Ack& ack, ByteView) { answered(ack.number, true); }

void Session::handle(const HeldBack& held_back, ByteView) { answered(held_back.number, false); }

void Session::answered(std::uint64_t number, bool whole) {
  if (number <= acked_ || number > sent_)
    return close({FaultCode::malformed, "an answer to a batch that was never sent", "exchange", "end the exchange and try again"});
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
  if (options_.side != Side::guest || !flowing_) return;
  std::vector<BookId> ticked = options_.peers->scope_after(status_.peer_number, scope_known_);
  scope_known_ += ticked.size();
  std::erase_if(ticked, [&](const BookId& book) { return given_.contains(book); });
  if (ticked.empty()) return;
  common_books().revisit(*options_.ledger, may_cross(), ticked);
  Offer offer;
  for (const BookId& book : ticked) {
    if (const auto held = options_.ledger->book(book); held && common_->holds(book))
      offer.books.push_back({held->id, held->kind, options_.ledger->heads(book)});
    if (offer.books.size() == kBooksPerMessage) {
      send(offer);
      offer.books.clear();
    }
  }
  if (!offer.books.empty()) send(offer);
}

Session::Frames Session::changed() {
  return guarded([&] {
    if (!flowing_) return;
    tell_stubs();
    pump_new_scope();
    pump();
  });
}

Session::Frames Session::tick() {
  return guarded([&] {
    settle();
    contents_.tick();
    offer_contents();
  });
}

// ------------------------------------------------------------------------------------------------ agreement

void Session::offer_agreement() {
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
  if (idle()) weigh_agreement();
}

void Session::weigh_agreement() {
  // Comparable only if both speak of the same moment: all that either sent is applied by the other.
  if (!heard_ || !said_ || heard_->sent != applied_ || heard_->applied != sent_ || said_->sent != sent_ || said_->applied != applied_) return;
  const Agree theirs = *heard_;
  heard_.reset();
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
  if (auto kept = options_.peers->agree(status_.peer_number, agreement); !kept) return close(kept.error());
  if (told_ > options_.peers->told(status_.peer_number))
    if (auto kept = options_.peers->tell(status_.peer_number, told_); !kept) return close(kept.error());
  status_.agreed = agreement;
  status_.at_odds = false;
  doubts_ = 0;
  status_.state = SessionState::agreed;
  offer_contents();
}

}  // namespace weavelog
