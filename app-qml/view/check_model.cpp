#include "app-qml/view/check_model.h"

#include <QQmlEngine>
#include <algorithm>

#include "app-qml/view/app_device.h"
#include "app-qml/view/job_brief.h"
#include "app-qml/view/job_cards.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "app-qml/view/word_list.h"
#include "core/desk/bench.h"
#include "core/desk/work_list.h"

namespace {

}  // namespace

CheckModel::CheckModel(Work& work, QObject* parent) : QObject(parent), work_(work) {
  connect(&work_, &Work::changed, this, &CheckModel::refresh);
}

CheckModel* CheckModel::create(QQmlEngine* engine, QJSEngine*) {
  return new CheckModel(provided<AppDevice>(engine)->work());  // the engine takes it over
}

QVariantList CheckModel::items() const {
  QVariantList out;
  for (const Item& item : items_)
    out.append(QVariantMap{{QStringLiteral("name"), qtext(item.name)},
                           {QStringLiteral("text"), item.text},
                           {QStringLiteral("found"), static_cast<int>(item.found)}});
  return out;
}

int CheckModel::count(Found found) const {
  return static_cast<int>(std::count_if(items_.begin(), items_.end(), [&](const Item& item) { return item.found == found; }));
}

QVariantList CheckModel::waysBack() const {
  QVariantList out;
  for (const auto stage : weavelog::redo_stages(stage_)) out.append(static_cast<int>(stage));
  return out;
}

void CheckModel::setBackTo(int stage) {
  backTo_ = stage;
  emit changed();
}

void CheckModel::setReason(const QString& reason) {
  if (reason_ == reason) return;
  reason_ = reason;
  emit changed();
}

bool CheckModel::isComplete() const {
  if (!isOpen() || items_.empty() || unseen() > 0) return false;
  return wrong() == 0 || (backTo_ != 0 && !reason_.trimmed().isEmpty());
}

bool CheckModel::isBegun() const {
  return count(Found::Unseen) < static_cast<int>(items_.size()) || !reason_.trimmed().isEmpty();
}

void CheckModel::show(const QString& book, const QString& job) {
  look(book, job);
  emit checkAsked();
}

void CheckModel::showStencils(const QString& book, const QString& job) {
  look(book, job);
  emit stencilsAsked();
}

void CheckModel::showFirst(bool stencils) {
  for (const auto stage : {weavelog::Stage::strung, weavelog::Stage::checked, weavelog::Stage::stencilled})
    for (const auto& row : weavelog::jobs_at_stage(work_.ledger(), work_.event(), stage, 1)) {
      const QString book = qtext(row.book.hex()), job = qtext(row.job.hex());
      return stencils ? showStencils(book, job) : show(book, job);
    }
}

void CheckModel::look(const QString& book, const QString& job) {
  book_ = bookOf(book);
  job_ = entityOf(job);
  startAgain();
  refresh();
}

void CheckModel::startAgain() {
  for (Item& item : items_) item.found = Found::Unseen;
  reason_.clear();
  backTo_ = 0;
  emit changed();
}

void CheckModel::find(int row, int found) {
  if (row < 0 || row >= static_cast<int>(items_.size())) return;
  Found& held = items_[static_cast<std::size_t>(row)].found;
  const auto wanted = static_cast<Found>(found);
  held = held == wanted ? Found::Unseen : wanted;
  // Where it usually goes; whoever checks may choose another.
  if (wrong() > 0 && backTo_ == 0 && isOpen()) backTo_ = static_cast<int>(weavelog::redo_stages(stage_).front());
  emit changed();
}

void CheckModel::restIsRight() {
  for (Item& item : items_)
    if (item.found == Found::Unseen) item.found = Found::Right;
  emit changed();
}

void CheckModel::refresh() {
  if (!job_) return;
  const auto record = weavelog::load_player(work_.ledger(), book_);
  const auto* job = record ? record->job(job_) : nullptr;
  hasJob_ = job != nullptr;
  stencils_.clear();
  history_.clear();
  caution_.clear();
  brief_.clear();
  if (job == nullptr) {
    items_.clear();
    stage_ = weavelog::Stage::none;
    emit changed();
    return;
  }
  stage_ = record->stage_of(job_).stage;
  brief_ = jobBrief(work_, *record, job_);
  player_ = qtext(weavelog::listed_name(record->person.now));
  tag_ = job->now.tag_number ? QString::number(*job->now.tag_number) : QString();
  racket_.clear();
  if (const auto* racket = record->racket(job->now.racket)) {
    QStringList parts{qtext(racket->now.label), qtext(racket->now.maker + (racket->now.maker.empty() ? "" : " ") + racket->now.model)};
    parts.removeAll(QString());
    racket_ = parts.join(QStringLiteral(", "));
  }

  std::vector<Item> before;
  before.swap(items_);
  for (const auto& step : weavelog::work_list(weavelog::list_steps(work_.ledger(), job->now.event), weavelog::WorkList::check)) {
    Item& item = items_.emplace_back(Item{step.name, qtext(weavelog::step_words(work_.language(), step.step))});
    for (const Item& held : before)
      if (held.name == item.name) item.found = held.found;
  }
  redos_ = static_cast<int>(weavelog::redos_of(*record, job_));
  for (const auto* check : weavelog::checks_of(*record, job_))
    history_.append(QVariantMap{{QStringLiteral("text"), firstUpper(qtext(weavelog::check_words(work_.language(), check->now)))},
                                {QStringLiteral("detail"), QStringList{qtext(check->now.by), work_.timeText(check->now.at)}},
                                {QStringLiteral("passed"), check->now.passed.value_or(false)}});
  const auto stencil = [&](const std::string& mark, const std::string& ink, bool ofString) {
    if (!mark.empty() || !ink.empty())
      stencils_.append(QVariantMap{
          {QStringLiteral("mark"), qtext(mark)}, {QStringLiteral("ink"), qtext(ink)}, {QStringLiteral("ofString"), ofString}});
  };
  stencil(job->now.racket_stencil, job->now.racket_ink, false);
  stencil(job->now.string_stencil, job->now.string_ink, true);
  if (!shown_.was_shown(job_.hex(), weavelog::Caution::stencil_ink))
    caution_ = qtext(weavelog::caution_text(work_.language(), weavelog::Caution::stencil_ink));
  emit changed();
}

bool CheckModel::store(const QString& say) {
  const auto record = weavelog::load_player(work_.ledger(), book_);
  if (!record) return work_.commit(weavelog::fail(record.error()), {});
  weavelog::CheckFound found;
  for (const Item& item : items_)
    if (item.found != Found::Unseen) found.items.push_back({item.name, item.found == Found::Right});
  if (wrong() > 0) {
    found.reason = reason_.trimmed().toStdString();
    found.back_to = static_cast<weavelog::Stage>(backTo_);
  }
  found.by = work_.who().toStdString();
  found.at = work_.now();
  if (!work_.commit(weavelog::check_racket(*record, job_, found), say)) return false;
  startAgain();
  return true;
}

bool CheckModel::stencilled(const QString& say) {
  const auto record = weavelog::load_player(work_.ledger(), book_);
  if (!record) return work_.commit(weavelog::fail(record.error()), {});
  const weavelog::StageStep step{weavelog::Stage::stencilled, work_.who().toStdString(), {}, work_.now()};
  if (!work_.commit(weavelog::take_step(*record, std::span(&job_, 1), step), say)) return false;
  (void)shown_.first_time(job_.hex(), weavelog::Caution::stencil_ink);
  refresh();
  return true;
}
