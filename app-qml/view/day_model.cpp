#include "app-qml/view/day_model.h"

#include <QFile>
#include <QQmlEngine>
#include <QSaveFile>

#include <algorithm>
#include <set>

#include "app-qml/view/app_device.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "core/base/local_time.h"
#include "core/base/localised.h"

namespace {

constexpr qint64 mostSightBytes = 8 << 20;

QString named(const weavelog::OpenJob& racket) { return qtext(weavelog::racket_words(racket)); }

int minutesFrom(weavelog::UnixMs begin, weavelog::UnixMs at) { return static_cast<int>((at - begin) / weavelog::kMinuteMs); }

}  // namespace

// One working out, made beside the screen.
struct DayModel::Made {
  weavelog::BookId event;
  std::optional<weavelog::RoomDay> day;
  weavelog::DayPlan plan;
  weavelog::PlanSight sight;
  std::optional<weavelog::Fault> fault;
};

DayModel::DayModel(Work& work, const QString& folder, QObject* parent) : QObject(parent), work_(work), folder_(folder) {
  connect(&work_, &Work::changed, this, &DayModel::refresh);
}

DayModel* DayModel::create(QQmlEngine* engine, QJSEngine*) {
  auto* device = provided<AppDevice>(engine);
  return new DayModel(device->work(), device->folder());  // the engine takes it over
}

void DayModel::setWatched(bool watched) {
  if (watched == watched_) return;
  watched_ = watched;
  emit watchedChanged();
  anew_ = false;
  if (!watched) keepSight();
  refresh();
}

void DayModel::refresh() {
  if (!watched_) return;
  const auto make = [this, anew = anew_, event = work_.event(), now = work_.now()] {
    auto made = std::make_shared<Made>();
    made->event = event;
    if (!event) {
      made->fault = weavelog::Fault{weavelog::FaultCode::not_found, tr("there is no event yet").toStdString(), {}, tr("pair with its server, or make one").toStdString()};
    } else if (auto day = weavelog::RoomDay::make(work_.ledger(), event, now); !day) {
      made->fault = day.error();
    } else {
      made->day = std::move(*day);
      auto input = made->day->input();
      if (anew) input.told.clear();
      if (auto plan = weavelog::plan_day(input, input.told.empty() ? weavelog::PlanEffort::day : weavelog::PlanEffort::event)) {
        made->plan = std::move(*plan);
        made->sight = weavelog::plan_sight(work_.ledger(), event, *made->day, made->plan);
      } else {
        made->fault = plan.error();
      }
    }
    return std::shared_ptr<const Made>(std::move(made));
  };
  beside_.work(make, [this](const auto& made) {
    made_ = made;
    show();
  });
  emit changed();
}

void DayModel::planAnew() {
  anew_ = true;
  refresh();
}

QString DayModel::clock(weavelog::UnixMs at) const { return work_.timeText(at); }

void DayModel::show() {
  hours_.clear();
  benches_.clear();
  changes_.clear();
  doubts_.clear();
  fault_ = made_->fault ? qtext(made_->fault->message()) : QString();
  rackets_ = late_ = toTell_ = minutes_ = 0;
  told_ = false;
  if (!made_->fault) {
    const auto& day = *made_->day;
    rackets_ = static_cast<int>(day.input().jobs.size());
    told_ = !day.input().told.empty();
    std::set<weavelog::EntityId> places;
    for (const auto& draft : day.tell(made_->plan, {}, day.input().now))
      for (const auto& write : draft.writes()) places.insert(write.entity);
    toTell_ = static_cast<int>(places.size());
    showBenches();
    for (const auto& change : weavelog::changes_of(day.input(), made_->plan)) {
      const QString name = named(day.racket(change.job));
      const QString was = tr("%1 at %2").arg(clock(change.ready_told), qtext(change.bench_told));
      if (!change.ready_now) changes_.append(tr("%1: no shift has room any more; told was %2").arg(name, was));
      else
        changes_.append(tr("%1: strung %2 at %3, told was %4").arg(name, clock(*change.ready_now), qtext(change.bench_now), was) +
                        (change.late_now && !change.late_told ? tr(" – late now") : QString()));
    }
    using Kind = weavelog::DayDoubt::Kind;
    for (const auto& doubt : day.doubts()) {
      const QString bench = qtext(day.input().benches[doubt.bench].name);
      const bool racket = doubt.kind == Kind::two_at_once || doubt.kind == Kind::not_of_team || doubt.kind == Kind::no_such_time;
      const QString name = racket ? named(day.open()[doubt.open_job]) : QString();
      switch (doubt.kind) {
        case Kind::two_at_once: doubts_.append(tr("%1 has two rackets on the machine. Is %2 strung? Then tap it on.").arg(bench, name)); break;
        case Kind::not_of_team: doubts_.append(tr("%1 is on a machine of somebody who is not in the team.").arg(name)); break;
        case Kind::machine_out: doubts_.append(tr("%1 has no machine: theirs is out of order, and no other is free.").arg(bench)); break;
        case Kind::other_machine:
          doubts_.append(tr("%1 is planned on %2: their own machine is out of order.").arg(bench, qtext(day.input().benches[doubt.bench].machine)));
          break;
        case Kind::no_such_time:
          doubts_.append(tr("%1 is in no plan: it is wanted, or went on the machine, at a time that can’t be. Look at its times.").arg(name));
          break;
        case Kind::no_machine: doubts_.append(tr("There is no machine for %1.").arg(bench)); break;
      }
    }
    for (const std::size_t one : day.waiting()) doubts_.append(tr("%1 waits for the player’s answer and is in no plan.").arg(named(day.open()[one])));
    for (const std::size_t job : made_->plan.unfitting) doubts_.append(tr("No shift has room for %1.").arg(named(day.racket(job))));
    if (day.shifts_assumed()) doubts_.append(tr("Nobody has said who is in the room when: everybody counts as there from 8 to 20 o’clock."));
  }
  showNews();
  emit changed();
}

void DayModel::showBenches() {
  const auto& day = *made_->day;
  const auto& input = day.input();
  // From the hour in which the first racket in work was begun, two hours back at most.
  weavelog::UnixMs begin = input.now;
  for (const auto& planned : made_->plan.jobs) begin = std::min(begin, planned.begin);
  begin = std::max(begin, input.now - 2 * weavelog::kHourMs) / weavelog::kHourMs * weavelog::kHourMs;
  // To the end of what is planned, and of the first day's shifts; at least four hours.
  const weavelog::LocalTime zone(day.zone());
  const weavelog::UnixMs midnight = zone.begin_of(zone.day_of(input.now) + 1);
  weavelog::UnixMs end = begin + 4 * weavelog::kHourMs;
  for (const auto& planned : made_->plan.jobs) end = std::max(end, planned.end);
  for (const auto& bench : input.benches)
    for (const auto& span : bench.open)
      if (span.from < midnight) end = std::max(end, span.until);
  end = (end + weavelog::kHourMs - 1) / weavelog::kHourMs * weavelog::kHourMs;
  minutes_ = minutesFrom(begin, end);
  now_ = minutesFrom(begin, input.now);
  const weavelog::MomentWriter tick(work_.language(), day.zone(), weavelog::Moment::Form::time_of_day);
  for (weavelog::UnixMs at = begin; at < end; at += weavelog::kHourMs) hours_.append(QVariantMap{{"at", minutesFrom(begin, at)}, {"text", qtext(tick(at))}});
  std::vector<bool> differs(input.jobs.size());
  for (const auto& change : weavelog::changes_of(input, made_->plan)) differs[change.job] = true;
  for (std::size_t bench = 0; bench < input.benches.size(); ++bench) {
    QVariantList closed, jobs;
    weavelog::UnixMs shut = input.now;
    for (const auto& span : input.benches[bench].open) {
      if (span.from > shut) closed.append(QVariantMap{{"from", minutesFrom(begin, shut)}, {"until", minutesFrom(begin, std::min(span.from, end))}});
      shut = span.until;
      if (shut >= end) break;
    }
    if (shut < end) closed.append(QVariantMap{{"from", minutesFrom(begin, shut)}, {"until", minutesFrom(begin, end)}});
    for (const auto& planned : made_->plan.jobs) {
      if (planned.bench != bench) continue;
      const auto& racket = day.racket(planned.job);
      const auto& job = input.jobs[planned.job];
      late_ += planned.late > 0 ? 1 : 0;
      jobs.append(QVariantMap{{"job", qtext(racket.job.hex())},
                              {"book", qtext(racket.player.hex())},
                              {"tag", racket.tag_number ? QString::number(*racket.tag_number) : QString()},
                              {"name", qtext(racket.family_name.empty() ? racket.given_name : racket.family_name)},
                              {"whole", named(racket)},
                              {"from", std::max(0, minutesFrom(begin, planned.begin))},
                              {"until", minutesFrom(begin, planned.end)},
                              {"times", tr("%1 to %2").arg(clock(planned.begin), clock(planned.end))},
                              {"promised", work_.timeText(racket.facts.ready_by)},
                              {"late", static_cast<int>((planned.late + weavelog::kMinuteMs - 1) / weavelog::kMinuteMs)},
                              {"changed", static_cast<bool>(differs[planned.job])},
                              {"inWork", job.in_work.has_value()},
                              {"onCourt", racket.facts.rush == weavelog::Rush::on_court},
                              {"away", job.home && *job.home != bench ? qtext(input.benches[*job.home].name) : QString()}});
    }
    benches_.append(QVariantMap{{"name", qtext(input.benches[bench].name)}, {"machine", qtext(input.benches[bench].machine)}, {"closed", closed}, {"jobs", jobs}});
  }
}

// --- what happened since the last look

QString DayModel::sightFile() const { return folder_ + QStringLiteral("/plan-seen-%1.json").arg(idText(made_->event)); }

void DayModel::showNews() {
  news_.clear();
  lookedAt_.clear();
  if (made_->fault) return;
  if (beforeOf_ != made_->event) {
    beforeOf_ = made_->event;
    before_.reset();
    QFile file(sightFile());
    if (file.size() <= mostSightBytes && file.open(QIODevice::ReadOnly)) {
      const QByteArray bytes = file.readAll();
      // What can't be read is as if nobody had looked yet.
      if (auto sight = weavelog::sight_from({bytes.constData(), static_cast<std::size_t>(bytes.size())})) before_ = std::move(*sight);
    }
  }
  if (!before_) return;
  lookedAt_ = clock(before_->at);
  using Kind = weavelog::PlanNews::Kind;
  QStringList came, off;
  for (const auto& one : weavelog::news_since(*before_, made_->sight)) {
    const QString who = qtext(one.who), was = qtext(one.before), is = qtext(one.after);
    switch (one.kind) {
      case Kind::now_late:
        news_.append(one.to > 0 ? tr("%1 will be late: ready %2").arg(who, clock(one.to)) : tr("%1 will be late: no shift has room").arg(who));
        break;
      case Kind::withdrew: news_.append(tr("%1 withdrew").arg(who)); break;
      case Kind::home_moved: news_.append(tr("%1 moved from %2 to %3").arg(who, was, is)); break;
      case Kind::other_bench: news_.append(tr("%1: %3 strings it, not %2").arg(who, was, is)); break;
      case Kind::later: news_.append(tr("%1: ready %3 instead of %2").arg(who, clock(one.from), clock(one.to))); break;
      case Kind::in_time_again: news_.append(tr("%1 will be ready in time again").arg(who)); break;
      case Kind::sooner: news_.append(tr("%1: already ready %2").arg(who, clock(one.to))); break;
      case Kind::played: news_.append(tr("%1: %n match(es) played", nullptr, one.count).arg(who)); break;
      case Kind::came: came.append(who); break;
      case Kind::off_the_list: off.append(who); break;
    }
  }
  if (!came.isEmpty()) news_.append(tr("Came in: %1").arg(came.join(QStringLiteral(", "))));
  if (!off.isEmpty()) news_.append(tr("Strung or gone: %1").arg(off.join(QStringLiteral(", "))));
}

void DayModel::keepSight() {
  if (!made_ || made_->fault) return;
  before_ = made_->sight;
  beforeOf_ = made_->event;
  const std::string text = weavelog::sight_text(*before_);
  QSaveFile file(sightFile());
  // If it can't be written (a full disk), the next look tells more than it need; nothing is lost by that.
  if (file.open(QIODevice::WriteOnly) && file.write(text.data(), static_cast<qint64>(text.size())) == static_cast<qint64>(text.size())) (void)file.commit();
}

void DayModel::seen() {
  keepSight();
  if (made_) show();
}

bool DayModel::tell(const QString& say) {
  if (!made_ || made_->fault) return false;
  anew_ = false;
  const auto drafts = made_->day->tell(made_->plan, work_.who().toStdString(), work_.now());
  for (std::size_t i = 0; i < drafts.size(); ++i)
    if (!work_.commit(drafts[i], i + 1 == drafts.size() ? say : QString())) return false;
  return true;
}
