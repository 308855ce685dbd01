// Session, continued: finding out what either side lacks. What both agreed on, set reconciliation, offers.

#include <algorithm>
#include <utility>

#include "core/log/head_index.h"
#include "sync/exchange/reconcile.h"
#include "sync/exchange/session.h"

namespace weavelog {
namespace {

constexpr int kMostDoubts = 3;
constexpr std::size_t kBooksPerMessage = 1000;
/// Of one message; 48 bytes each, which do not shrink. A book that has more of them is told with these: what is not told comes once too often.
constexpr std::size_t kHeadsPerMessage = 4000;
/// Offered and not answered yet, before the next offer goes: what waits for a slow peer is bounded.
constexpr std::size_t kBooksOnOffer = 500;
constexpr std::size_t kReconcileFrame = 128 * 1024;
/// Beside twice what both have in common: no honest peer lacks more, however often it asks.
constexpr std::size_t kMoreLackingBooks = 1000;

/// Entries of `ours` that are not among `theirs`.
std::uint64_t lacking_there(const Heads& ours, const Heads& theirs) {
  std::uint64_t out = 0;
  const HeadIndex index(theirs);
  for (const Head& head : ours) {
    const Head* known = index.find(head.author);
    const std::uint64_t held = known == nullptr ? 0 : known->seq;
    if (head.seq > held) out += head.seq - held;
  }
  return out;
}

bool names_one_twice(const std::vector<BookHeads>& books) {
  std::set<BookId> named;
  return !std::all_of(books.begin(), books.end(), [&](const BookHeads& book) { return named.insert(book.book).second; });
}

}  // namespace

Heads Session::as_told(Heads heads) {
  if (heads.size() > kHeadsPerMessage) heads.resize(kHeadsPerMessage);
  return heads;
}

bool Session::may_leave(const BookId& book, BookKind kind) const { return options_.may_leave(book, kind) && !declined_.contains(book); }

bool Session::may_send(const BookId& book, BookKind kind) const {
  return may_leave(book, kind) && (!scoped() || options_.peers->in_scope(status_.peer_number, book));
}

CommonBooks::MayCross Session::may_cross() const {
  // What is kept apart here the other compares only while it may itself hand it on, by the same rule.
  return [this](const BookId& book, BookKind kind) { return may_send(book, kind) || (kept_apart(book) && may_leave(book, kind)); };
}

bool Session::keeps_common() const { return options_.leaves_by && declined_.empty() && forks_.empty() && apart_.empty(); }

CommonBooks& Session::common_books() {
  std::erase_if(apart_, [&](const auto& one) { return !kept_apart(one.first); });  // ticked meanwhile
  std::optional<BookId> room;
  std::optional<std::uint64_t> mark;
  if (keeps_common()) {
    const LeaveRule rule = options_.leaves_by();
    room = rule.room;
    mark = rule.mark;
  }
  const bool other = !common_ || common_room_ != room;
  if (other) {
    const std::int64_t shared = scoped() ? status_.peer_number : 0;
    if (room) {
      common_ = options_.peers->common_books(shared, *room);
    } else {
      const auto before = common_ ? common_ : std::make_shared<CommonBooks>();
      common_ = before->copy_comparing([this](const BookInfo& book) { return compared(book); });
    }
    common_room_ = room;
  }
  common_->refresh(*options_.ledger, may_cross(), mark);
  // While another set was compared, of books kept apart, some of them may have come into the scope.
  if (other && room && scoped()) {
    const std::size_t visited = common_->scope_visited();
    const auto ticked = options_.peers->scope_after(status_.peer_number, visited);
    common_->revisit(*options_.ledger, may_cross(), ticked);
    common_->set_scope_visited(visited + ticked.size());
  }
  return *common_;
}

void Session::begin_comparing() {
  const auto number = options_.peers->number_of(status_.peer.key);
  if (!number) return close(number.error());
  status_.peer_number = *number;
  declined_ = options_.peers->declined(*number);
  told_ = options_.peers->told(*number);
  if (!widen_shared()) return;
  if (scoped()) apart_ = options_.peers->apart(*number);
  // Ticked since the last session: their entries may be older than what both agreed on then.
  if (scoped()) {
    auto& common = common_books();
    const std::size_t visited = common.scope_visited();
    const auto ticked = options_.peers->scope_after(*number, visited);
    common.revisit(*options_.ledger, may_cross(), ticked);
    scope_known_ = visited + ticked.size();
    common.set_scope_visited(scope_known_);
  }
  status_.state = SessionState::comparing;
  tell_stubs();
  // The position first: what is written in between is then sent once too often rather than never.
  cursor_ = options_.ledger->position();
  const auto& books = common_books();
  ours_.books = books.size();
  ours_.digest = books.digest();
  ours_.token = {};
  if (const auto agreement = options_.peers->agreement(*number)) {
    ours_.token = agreement->token;
    agreed_position_ = agreement->position;  // a book that is forgotten before the peer answers takes the agreement with it
  }
  send(ours_);
}

void Session::handle(const Standing& standing, ByteView) {
  if (!expect(status_.state == SessionState::comparing, "standing")) return;
  status_.state = SessionState::exchanging;
  if (standing.books == ours_.books && standing.digest == ours_.digest) {
    flowing_ = true;
  } else if (standing.token == ours_.token && ours_.token != AgreementToken{}) {
    cursor_ = agreed_position_;
    flowing_ = true;
  } else if (options_.side == Side::guest) {
    start_reconciling();
  }
  pump();
  open_contents();
}

void Session::start_reconciling() {
  flowing_ = false;
  doubt_said_ = false;
  status_.state = SessionState::exchanging;
  have_.clear();
  need_.clear();
  to_offer_.clear();
  asked_ = 0;
  offered_.clear();
  cursor_ = options_.ledger->position();
  reconciler_ = std::make_unique<Reconciler>(common_books().items(), kReconcileFrame);
  if (options_.side == Side::guest) send(Reconcile{reconciler_->initiate()});
}

void Session::doubt() {
  if (reconciler_) return;  // the same doubt; it is being settled
  // Reconciling anew mends what can be mended; what then still differs must not hold up the rest.
  if (doubts_ == kMostDoubts) {
    if (!status_.at_odds) compared_at_ = options_.ledger->position();
    status_.at_odds = true;
    return;
  }
  ++doubts_;
  compare_anew();
}

/// What came since may be what the two were at odds about, or may have opened another book that only comparing finds.
void Session::doubt_once_more() {
  constexpr int kTicks = 20;
  if (!status_.at_odds || !flowing_ || ++ticks_at_odds_ < kTicks) return;
  ticks_at_odds_ = 0;
  const std::int64_t now = options_.ledger->position();
  if (now == compared_at_) return;
  compared_at_ = now;
  compare_anew();
}

void Session::compare_anew() {
  said_.reset();
  heard_.reset();
  if (options_.side == Side::guest) {
    start_reconciling();
  } else {
    doubt_said_ = true;
    send(Doubt{});
  }
}

void Session::handle(const Doubt&, ByteView) {
  // The host counts its own doubts: what it takes in by them the guest does not see.
  if (expect(options_.side == Side::guest && open(), "doubt") && !reconciler_) compare_anew();
}

void Session::handle(const Reconcile& step, ByteView) {
  if (!expect(open(), "reconcile")) return;
  if (!reconciler_ && options_.side == Side::host) start_reconciling();
  if (!expect(reconciler_ != nullptr, "reconcile")) return;
  auto answer = reconciler_->receive(step.message);
  if (!answer) return close(answer.error());
  if (options_.side == Side::host) {
    send(Reconcile{std::move(answer->reply)});
    return;
  }
  have_.insert(have_.end(), answer->have.begin(), answer->have.end());
  need_.insert(need_.end(), answer->need.begin(), answer->need.end());
  if (!answer->reply.empty()) {
    send(Reconcile{std::move(answer->reply)});
    return;
  }
  // Found: offer what we have with what we hold of it, and ask for the rest by its items. At least one message, which also tells
  // the host that this is over.
  for (const BookInfo& book : common_->books_of(have_)) to_offer_.push_back({book.id, book.kind});
  status_.books_expected = need_.size();
  reconciler_.reset();
  flowing_ = true;
  if (to_offer_.empty() && need_.empty()) {
    send(Offer{});
  } else {
    send_offers();
  }
  pump();
}

void Session::send_offers() {
  while ((!to_offer_.empty() || asked_ < need_.size()) && holdings_due_ < kBooksOnOffer) {
    Offer offer;
    std::set<BookId> named;  // what was ticked while it waited stands here twice
    for (std::size_t heads = 0; !to_offer_.empty() && offer.books.size() < kBooksPerMessage && heads < kHeadsPerMessage; to_offer_.pop_front()) {
      const BatchBook& book = to_offer_.front();
      if (!options_.ledger->book(book.id) || !named.insert(book.id).second) continue;  // forgotten while it waited
      offer.books.push_back({book.id, book.kind, as_told(told_heads(book.id))});
      heads += offer.books.back().heads.size();
    }
    // Wishes only after all offers: of a book that both changed, the host then knows what we hold before it sends any.
    for (; to_offer_.empty() && asked_ < need_.size() && offer.wanted.size() < kBooksPerMessage; ++asked_) offer.wanted.push_back(need_[asked_]);
    holdings_due_ += offer.books.size();
    send(offer);
  }
}

void Session::queue(const BookHeads& theirs) {
  const auto held = options_.ledger->book(theirs.book);
  if (held && kept_apart(held->id)) return weigh_apart(theirs);
  if (!held || !may_send(held->id, held->kind)) return;
  if (common_ && lacking_.size() >= 2 * common_->size() + kMoreLackingBooks) return;
  if (meet_forks(theirs)) return;
  const Heads ours = options_.ledger->heads(theirs.book);
  lacking_entries_ += lacking_there(ours, theirs.heads);
  BookHeads lacking = theirs;
  // Chains that are not here would only be kept in mind.
  if (lacking.heads.size() > ours.size()) {
    std::set<AuthorId> held_here;
    for (const Head& head : ours) held_here.insert(head.author);
    std::erase_if(lacking.heads, [&](const Head& head) { return !held_here.contains(head.author); });
  }
  lacking_.push_back(std::move(lacking));
}

void Session::handle(const Offer& offer, ByteView) {
  if (!expect(options_.side == Side::host && open(), "offer")) return;
  // As no program offers them.
  if (offer.books.size() > kBooksPerMessage || offer.wanted.size() > kBooksPerMessage || names_one_twice(offer.books))
    return close({FaultCode::malformed, "an offer of more books than one message holds, or of one book twice", "exchange with " + status_.peer.device,
                  "the sender is faulty; nothing was lost"});
  if (!widen_offered(offer.books)) return;
  Holding holding;
  std::size_t heads = 0;
  for (const BookHeads& theirs : offer.books) {
    // Of a book outside its scope a guest does not even learn that it is held: it sends all of it, and shows by that what it has.
    const bool told_here = !scoped() || options_.peers->in_scope(status_.peer_number, theirs.book);
    holding.books.push_back({theirs.book, theirs.kind, told_here || kept_apart(theirs.book) ? as_told(told_heads(theirs.book)) : Heads{}});
    heads += holding.books.back().heads.size();
    if (options_.ledger->book(theirs.book)) offered_.insert(theirs.book);
    queue(theirs);
    if (heads < kHeadsPerMessage) continue;
    send(std::exchange(holding, {}));
    heads = 0;
  }
  if (!offer.wanted.empty())
    for (const BookInfo& book : common_books().books_of(offer.wanted)) {
      if (offered_.contains(book.id)) continue;
      if (kept_apart(book.id)) {
        if (!forget_apart(book.id)) return;
      } else {
        queue({book.id, book.kind, {}});
      }
    }
  if (!holding.books.empty()) send(holding);
  reconciler_.reset();
  flowing_ = true;
  pump();
}

void Session::handle(const Holding& holding, ByteView) {
  if (!expect(open() && holding.books.size() <= holdings_due_, "holding")) return;
  holdings_due_ -= holding.books.size();
  for (const BookHeads& theirs : holding.books) {
    if (theirs.heads.empty() && came_short_.contains(theirs.book)) note_not_begun(theirs.book);
    if (theirs.heads.empty() && kept_apart(theirs.book)) {
      if (!forget_apart(theirs.book)) return;
    } else {
      queue(theirs);
    }
  }
  send_offers();
  pump();
}

}  // namespace weavelog
