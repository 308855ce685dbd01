#include "app-qml/view/promise_answer.h"

#include <QLocale>

#include <cmath>

#include "app-qml/view/model_text.h"

namespace {

constexpr int askMs = 120;                          // after the last tap
constexpr weavelog::UnixMs oldMs = 2 * 60'000;      // a queue of so long ago is read again

}  // namespace

struct PromiseAnswer::Answer {
  std::shared_ptr<const weavelog::RoomPromises> room;
  std::optional<weavelog::Fault> fault;
  std::optional<weavelog::Promise> earliest;
  std::optional<weavelog::RoomWish> wish;
};

PromiseAnswer::PromiseAnswer(Work& work, QObject* parent) : QObject(parent), work_(work) {
  soon_.setSingleShot(true);
  soon_.setInterval(askMs);
  connect(&soon_, &QTimer::timeout, this, &PromiseAnswer::start);
  connect(&work_, &Work::changed, this, [this] {
    stale_ = true;
    ask();
  });
}

void PromiseAnswer::setWatched(bool watched) {
  if (watched == watched_) return;
  watched_ = watched;
  emit watchedChanged();
  ask();
}

void PromiseAnswer::ask() {
  if (watched_) soon_.start();
}

void PromiseAnswer::start() {
  if (!watched_) return;
  const Asked asked = this->asked();
  if (asked.rackets.empty() || !work_.event()) {
    take({});
    return;
  }
  const auto now = work_.now();
  const bool read = stale_ || !room_ || now - room_->day().input().now > oldMs || now < room_->day().input().now ||
                    asked.without != without_;
  stale_ = false;
  without_ = asked.without;
  const auto make = [this, asked, read, now, event = work_.event(), room = room_] {
    Answer answer;
    answer.room = room;
    if (read) {
      auto made = weavelog::RoomPromises::make(work_.ledger(), event, now, asked.without);
      if (made) answer.room = std::make_shared<const weavelog::RoomPromises>(std::move(*made));
      else answer.fault = made.error();
    }
    if (!answer.fault) {
      weavelog::RacketsToCome rackets;
      rackets.rush = asked.rush;
      for (const auto& one : asked.rackets)
        rackets.kinds.push_back(answer.room->day().work_kind(one.agreed.mains_string, one.agreed.crosses_string, one.pattern, one.agreed.pieces.value_or(0)));
      if (asked.wish) {
        auto wish = answer.room->check(rackets, *asked.wish);
        if (wish) {
          answer.earliest = wish->earliest;
          answer.wish = std::move(*wish);
        } else {
          answer.fault = wish.error();
        }
      } else if (auto earliest = answer.room->earliest(rackets)) {
        answer.earliest = *earliest;
      } else {
        answer.fault = earliest.error();
      }
    }
    return answer;
  };
  beside_.work(make, [this](const Answer& answer) { take(answer); });
}

void PromiseAnswer::take(const Answer& answer) {
  room_ = answer.room;
  fault_ = answer.fault ? qtext(answer.fault->message()) : QString();
  earliest_ = confidence_ = chance_ = QString();
  earliestAt_.reset();
  mustMove_.clear();
  answered_ = canBeKept_ = impossible_ = false;
  const QLocale locale(qtext(work_.language().tag()));
  const auto percent = [&](double part) { return tr("%1 %").arg(locale.toString(static_cast<int>(std::lround(part * 100)))); };
  if (answer.earliest) {
    earliestAt_ = answer.earliest->ready_by;
    earliest_ = work_.timeText(earliestAt_);
  }
  if (answer.earliest) confidence_ = percent(weavelog::kPromisesKept);
  if (answer.wish) {
    answered_ = true;
    canBeKept_ = answer.wish->can_be_kept;
    chance_ = percent(answer.wish->chance);
    impossible_ = !canBeKept_ && !answer.wish->even_first;
    if (answer.wish->even_first)
      for (const auto& cost : answer.wish->must_move) {
        const QString who = cost.tag_number ? QStringLiteral("%1 %2").arg(*cost.tag_number).arg(qtext(cost.name)) : qtext(cost.name);
        mustMove_.append(tr("%1, promised for %2: %3 now, %4 then").arg(who, work_.timeText(cost.ready_by), percent(cost.before), percent(cost.after)));
      }
  }
  emit changed();
}

void PromiseAnswer::takeEarliest() {
  if (earliestAt_) promiseFor(*earliestAt_);
}
