#include "app-qml/view/new_time_model.h"

#include <QQmlEngine>

#include <algorithm>

#include "app-qml/view/app_device.h"
#include "app-qml/view/job_cards.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "core/base/local_time.h"
#include "core/base/localised.h"
#include "core/desk/new_time.h"

namespace {

constexpr weavelog::UnixMs wholeQuarter = 15 * weavelog::kMinuteMs;

}  // namespace

NewTimeModel::NewTimeModel(Work& work, QObject* parent) : PromiseAnswer(work, parent) {
  connect(this, &NewTimeModel::edited, this, &NewTimeModel::ask);
}

NewTimeModel* NewTimeModel::create(QQmlEngine* engine, QJSEngine*) {
  return new NewTimeModel(provided<AppDevice>(engine)->work());  // the engine takes it over
}

bool NewTimeModel::show(const QString& book, const QString& job) {
  const auto record = weavelog::load_player(work().ledger(), bookOf(book));
  const auto jobs = record ? weavelog::promised_with(*record, entityOf(job)) : std::vector<weavelog::EntityId>{};
  if (std::find(jobs.begin(), jobs.end(), entityOf(job)) == jobs.end()) return false;
  book_ = bookOf(book);
  job_ = entityOf(job);
  jobs_ = jobs;
  before_ = record->job(job_)->now.ready_by;
  wanted_ = before_;
  onlyThis_ = false;
  player_ = (qtext(record->person.now.given_name) + QLatin1Char(' ') + qtext(record->person.now.family_name)).trimmed();
  emit edited();
  return true;
}

std::vector<weavelog::EntityId> NewTimeModel::meant() const { return onlyThis_ ? std::vector{job_} : jobs_; }

void NewTimeModel::move(int minutes) {
  const auto now = work().now();
  const auto from = wanted_.value_or((now + wholeQuarter - 1) / wholeQuarter * wholeQuarter);
  wanted_ = std::max(from + minutes * weavelog::kMinuteMs, (now + wholeQuarter - 1) / wholeQuarter * wholeQuarter);
  emit edited();
}

bool NewTimeModel::agree(const QString& agreedBy, const QString& say) {
  const auto record = weavelog::load_player(work().ledger(), book_);
  if (!record) {
    work().tell(record.error());
    return false;
  }
  return work().commit(weavelog::agree_time(*record, meant(), {wanted_.value_or(0), agreedBy.trimmed().toStdString(), work().now()}), say);
}

QString NewTimeModel::before() const { return work().timeText(before_); }

void NewTimeModel::setOnlyThis(bool only) {
  if (only == onlyThis_) return;
  onlyThis_ = only;
  emit edited();
}

QString NewTimeModel::time() const {
  if (!wanted_) return {};
  return qtext(weavelog::localised(work().language(), weavelog::Moment{*wanted_, work().zone(), weavelog::Moment::Form::time_of_day}));
}

QString NewTimeModel::day() const { return dayText(work().language(), wanted_, work().zone()); }

bool NewTimeModel::inWork() const { return !book_ ? false : asked().rackets.empty(); }

PromiseAnswer::Asked NewTimeModel::asked() const {
  Asked out;
  const auto record = weavelog::load_player(work().ledger(), book_);
  if (!record) return out;
  for (const auto& id : meant()) {
    const auto* job = record->job(id);
    // What is on a machine or strung is not in the queue any more.
    if (!job || record->stage_of(id).stage >= weavelog::Stage::on_machine) continue;
    const auto* racket = record->racket(job->now.racket);
    std::string pattern;
    if (racket && racket->now.mains_count && racket->now.crosses_count)
      pattern = std::to_string(*racket->now.mains_count) + "x" + std::to_string(*racket->now.crosses_count);
    out.rackets.push_back({job->now, std::move(pattern)});
    out.rush = job->now.rush;
    out.without.push_back(id);
  }
  if (differs() || before_) out.wish = wanted_;
  return out;
}

void NewTimeModel::promiseFor(weavelog::UnixMs at) {
  wanted_ = at;
  emit edited();
}
