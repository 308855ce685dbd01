// Session, continued: finding out what either side lacks. What both agreed on, set reconciliation, offers.

#include <algorithm>

#include "sync/exchange/reconcile.h"
#include "sync/exchange/session.h"

namespace weavelog {
namespace {

constexpr int kMostDoubts = 3;
constexpr std::size_t kBooksPerMessage = 1000;
constexpr std::size_t kReconcileFrame = 128 * 1024;
constexpr std::size_t kMostLackingBooks = 2'000'000;

/// Entries of `ours` that are not among `theirs`.
std::uint64_t lacking_there(const Heads& ours, const Heads& theirs) {
  std::uint64_t out = 0;
  for (const Head& head : ours) {
    const auto known = std::find_if(theirs.begin(), theirs.end(), [&](const Head& one) { return one.author == head.author; });
    const std::uint64_t held = known == theirs.end() ? 0 : known->seq;
    if (head.seq > held) out += head.seq - held;
  }
  return out;
}

}  // namespace

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
  if (const auto agreement = options_.peers->agreement(*number)) ours_.token = agreement->token;
  send(ours_);
}

void Session::handle(const Standing& standing, ByteView) {
  if (!expect(status_.state == SessionState::comparing, "standing")) return;
  status_.state = SessionState::exchanging;
  if (standing.books == ours_.books && standing.digest == ours_.digest) {
    flowing_ = true;
  } else if (standing.token == ours_.token && ours_.token != AgreementToken{}) {
    cursor_ = options_.peers->agreement(status_.peer_number)->position;
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
  offered_.clear();
  cursor_ = options_.ledger->position();
  reconciler_ = std::make_unique<Reconciler>(common_books().items(), kReconcileFrame);
  if (options_.side == Side::guest) send(Reconcile{reconciler_->initiate()});
}

void Session::doubt() {
  if (reconciler_) return;  // the same doubt; it is being settled
  // Reconciling anew mends what can be mended; what then still differs must not hold up the rest.
  if (doubts_ == kMostDoubts) {
    status_.at_odds = true;
    return;
  }
  ++doubts_;
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
  if (expect(options_.side == Side::guest && open(), "doubt")) doubt();
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
  // Found: offer what we have with what we hold of it, and ask for the rest by its items. At least one, which also tells
  // the host that this is over.
  std::size_t offered = 0, asked = 0;
  const std::vector<BookInfo> have = common_->books_of(have_);
  do {
    Offer offer;
    for (; offered < have.size() && offer.books.size() < kBooksPerMessage; ++offered)
      offer.books.push_back({have[offered].id, have[offered].kind, told_heads(have[offered].id)});
    // Wishes only after all offers: of a book that both changed, the host then knows what we hold before it sends any.
    for (; offered == have.size() && asked < need_.size() && offer.wanted.size() < kBooksPerMessage; ++asked) offer.wanted.push_back(need_[asked]);
    send(offer);
    if (!offer.books.empty()) ++holdings_due_;
  } while (offered < have.size() || asked < need_.size());
  status_.books_expected = need_.size();
  reconciler_.reset();
  flowing_ = true;
  pump();
}

void Session::queue(const BookHeads& theirs) {
  const auto held = options_.ledger->book(theirs.book);
  if (held && kept_apart(held->id)) return weigh_apart(theirs);
  if (!held || !may_send(held->id, held->kind) || lacking_.size() >= kMostLackingBooks) return;
  if (meet_forks(theirs)) return;
  lacking_entries_ += lacking_there(options_.ledger->heads(theirs.book), theirs.heads);
  lacking_.push_back(theirs);
}

void Session::handle(const Offer& offer, ByteView) {
  if (!expect(options_.side == Side::host && open(), "offer")) return;
  if (!widen_offered(offer.books)) return;
  Holding holding;
  for (const BookHeads& theirs : offer.books) {
    // Of a book outside its scope a guest does not even learn that it is held: it sends all of it, and shows by that what it has.
    const bool told = !scoped() || options_.peers->in_scope(status_.peer_number, theirs.book);
    holding.books.push_back({theirs.book, theirs.kind, told || kept_apart(theirs.book) ? told_heads(theirs.book) : Heads{}});
    offered_.insert(theirs.book);
    queue(theirs);
  }
  if (!offer.wanted.empty())
    for (const BookInfo& book : common_books().books_of(offer.wanted))
      if (!offered_.contains(book.id)) queue({book.id, book.kind, {}});
  if (!holding.books.empty()) send(holding);
  reconciler_.reset();
  flowing_ = true;
  pump();
}

void Session::handle(const Holding& holding, ByteView) {
  if (!expect(open() && holdings_due_ > 0, "holding")) return;
  --holdings_due_;
  for (const BookHeads& theirs : holding.books) {
    if (theirs.heads.empty() && came_short_.contains(theirs.book)) note_not_begun(theirs.book);
    queue(theirs);
  }
  pump();
}

}  // namespace weavelog
