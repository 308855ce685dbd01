#include "app-qml/view/arrival_steps.h"

#include <QQmlEngine>

#include <algorithm>

#include "app-qml/view/provided.h"
#include "core/model/queries.h"

namespace {

// Far longer than it takes to offer what was ticked.
constexpr qint64 othersMs = 10'000;

// What is counted beside the screen whenever the ledger has moved on.
struct Counted {
  std::optional<weavelog::Arrival> arrival;
  weavelog::Moved came, went;
  int entries = 0, toGo = 0;
};

Counted counted(const weavelog::Ledger& ledger, const weavelog::BookId& event) {
  Counted out;
  out.arrival = weavelog::arrival_going_on(ledger);
  if (event) out.entries = static_cast<int>(weavelog::entry_list(ledger, event).size());
  if (!out.arrival) return out;
  out.came = weavelog::came_in(weavelog::book_sums(ledger), *out.arrival);
  out.went = weavelog::went_out(*out.arrival);
  for (const auto& [book, sum] : out.arrival->sent)
    for (const auto& head : ledger.heads(book)) out.toGo += static_cast<int>(head.seq);
  return out;
}

}  // namespace

ArrivalSteps::ArrivalSteps(AppDevice& device, QObject* parent) : QObject(parent), device_(device) {
  clock_.start();
  connect(&device_, &AppDevice::connectionChanged, this, &ArrivalSteps::follow);
  connect(&device_, &AppDevice::changed, this, &ArrivalSteps::count);
  connect(&device_, &AppDevice::eventChanged, this, &ArrivalSteps::count);
  connect(&device_, &AppDevice::arrivalBegun, this, &ArrivalSteps::readArrival);
  // The time that is left goes down while nothing comes, too.
  second_.setInterval(1000);
  connect(&second_, &QTimer::timeout, this, &ArrivalSteps::follow);
  arrival_ = weavelog::arrival_going_on(device_.ledger());
  peopleDone_ = arrival_ && !arrival_->sent.empty();
  follow();
  count();
}

ArrivalSteps* ArrivalSteps::create(QQmlEngine* engine, QJSEngine*) {
  return new ArrivalSteps(*provided<AppDevice>(engine));  // the engine takes it over
}

bool ArrivalSteps::proved() const {
  const auto state = status_.session.state;
  return status_.connected && state >= weavelog::SessionState::comparing && state != weavelog::SessionState::closed;
}

bool ArrivalSteps::settled() const {
  const auto& session = status_.session;
  if (!arrival_ || !proved() || !session.all_sent || session.entries_confirmed != session.entries_to_send) return false;
  // What can't be made equal is said, and holds nothing up.
  if (session.at_odds) return true;
  if (session.state != weavelog::SessionState::agreed || !session.agreed || session.agreed->token == agreedBefore_) return false;
  if (arrival_->sent.empty()) return true;
  // The agreement may be one over what stood before, which comes a moment later than what was ticked: it has to be one over that too. Where a
  // session compares something else (chains that have parted) only time tells.
  const auto common = device_.station().peers().common_books(session.peer_number, device_.work().event());
  const auto& mayLeave = device_.work().workplace().may_leave();
  const bool held = std::all_of(arrival_->sent.begin(), arrival_->sent.end(),
                                [&](const auto& one) { return common->holds(one.first) || !mayLeave(one.first, weavelog::kPlayerBook); });
  return (held && common->digest() == session.agreed->digest) || (sentAt_ && clock_.elapsed() - *sentAt_ > othersMs);
}

bool ArrivalSteps::listIsHere() const {
  const auto& event = status_.session.event;
  return entries_ > 0 && (!proved() || !event || event == device_.work().event());
}

ArrivalSteps::Step ArrivalSteps::step() const {
  if (!arrival_ || !arrival_->met) return Meet;
  if (peopleDone_) return settledOnce_ ? Account : Across;
  return listIsHere() ? People : List;
}

void ArrivalSteps::begin() { device_.beginArrival(); }

void ArrivalSteps::readArrival() {
  arrival_ = weavelog::arrival_going_on(device_.ledger());
  peopleDone_ = settledOnce_ = false;
  leftToGo_.reset();
  agreedBefore_.reset();
  sentAt_ = clock_.elapsed();
  comeBefore_ = expectedSeen_ = 0;
  came_ = went_ = {};
  toGo_ = 0;
  follow();
  count();
}

bool ArrivalSteps::goOn(ArrivalModel* list) {
  if (!arrival_) return false;
  const auto agreed = device_.connection().session.agreed;
  const std::size_t before = arrival_->sent.size();
  if (list->ticked() > 0 && !list->send()) return false;
  if (const auto now = weavelog::arrival_going_on(device_.ledger())) arrival_->sent = now->sent;
  agreedBefore_.reset();
  if (arrival_->sent.size() > before) {
    if (agreed) agreedBefore_ = agreed->token;
    sentAt_ = clock_.elapsed();
    leftToGo_.reset();
  }
  peopleDone_ = true;
  settledOnce_ = false;
  count();
  follow();
  return true;
}

void ArrivalSteps::lookAgain() {
  peopleDone_ = settledOnce_ = false;
  emit changed();
}

void ArrivalSteps::finish() {
  if (const auto ended = weavelog::end_arrival(device_.ledger()); !ended) return device_.work().tell(ended.error());
  readArrival();
}

void ArrivalSteps::follow() {
  status_ = device_.connection();
  if (arrival_ && !arrival_->met && proved()) {
    if (const auto noted = weavelog::note_met(device_.ledger(), status_.session.peer.key); !noted) device_.work().tell(noted.error());
    arrival_->met = status_.session.peer.key;
  }
  const auto& session = status_.session;
  if (proved() && session.entries_to_send > 0) leftToGo_ = session.entries_to_send - std::min(session.entries_to_send, session.entries_confirmed);
  if (settled()) leftToGo_ = 0;
  // Another connection counts anew: what had come before stays counted.
  if (session.books_expected != expectedSeen_) {
    expectedSeen_ = session.books_expected;
    comeBefore_ = came_.players - std::min<std::uint64_t>(came_.players, session.books_received);
  }
  if (peopleDone_ && settled() && !settledOnce_) {
    count();  // the last time
    settledOnce_ = true;
  }
  const auto now = clock_.elapsed();
  outLeft_.see(gone(), toGo_, now);
  inLeft_.see(come(), toCome(), now);
  if (const bool wait = step() == Across || (step() == List && proved()); wait != second_.isActive()) wait ? second_.start() : second_.stop();
  emit changed();
}

void ArrivalSteps::count() {
  // Once it is accounted for, what the room does from then on is no part of the arrival.
  if (!arrival_ || settledOnce_) return;
  beside_.work([this, event = device_.work().event()] { return counted(device_.ledger(), event); },
               [this](const Counted& found) {
                 // One that was begun or ended meanwhile is another one.
                 const bool same = found.arrival.has_value() == arrival_.has_value() && (!arrival_ || found.arrival->began == arrival_->began);
                 if (!same) return;
                 if (found.arrival) arrival_->sent = found.arrival->sent;
                 came_ = found.came;
                 went_ = found.went;
                 entries_ = found.entries;
                 toGo_ = found.toGo;
                 follow();
               });
}

int ArrivalSteps::gone() const {
  const int left = static_cast<int>(leftToGo_.value_or(static_cast<std::uint64_t>(toGo_)));
  return std::max(0, toGo_ - left);
}

int ArrivalSteps::come() const { return std::min(toCome(), static_cast<int>(comeBefore_ + status_.session.books_received)); }

int ArrivalSteps::toCome() const { return static_cast<int>(comeBefore_ + status_.session.books_expected); }

int ArrivalSteps::secondsLeft() const {
  if (!proved()) return -1;
  const auto out = outLeft_.seconds(), in = inLeft_.seconds();
  if (!out && !in) return -1;
  if (settled()) return 0;
  return std::max(out.value_or(0), in.value_or(0));
}
