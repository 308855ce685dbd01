#include "app-qml/view/bench_work.h"

#include <algorithm>

#include "app-qml/view/model_text.h"
#include "app-qml/view/word_list.h"
#include "core/base/localised.h"
#include "core/desk/check.h"
#include "core/desk/phrases.h"
#include "core/desk/work_list.h"

namespace {

}  // namespace

BenchWork::BenchWork(Work& work, QObject* parent) : QObject(parent), work_(work) {
  second_.setInterval(1000);
  connect(&second_, &QTimer::timeout, this, &BenchWork::timeChanged);
}

int BenchWork::seconds() const {
  if (!since_) return -1;
  return static_cast<int>(std::max<weavelog::UnixMs>(0, work_.now() - *since_) / 1000);
}

void BenchWork::lookAtNothing() {
  book_ = {};
  job_ = {};
  since_.reset();
  second_.stop();
  steps_.clear();
  suggested_.clear();
  suggestedRows_.clear();
  taken_.clear();
  readings_.clear();
  lastCheck_.clear();
  stepsDone_ = redos_ = 0;
  emit changed();
  emit timeChanged();
}

void BenchWork::look(const weavelog::PlayerRecord& record, const weavelog::EntityId& id) {
  const auto* job = record.job(id);
  if (job == nullptr) return lookAtNothing();
  book_ = record.book;
  job_ = id;
  event_ = job->now.event;

  std::vector<std::string> done;
  if (const auto* held = weavelog::bench_now(record, id)) done = weavelog::split_names(held->now.steps_done);
  steps_.clear();
  stepsDone_ = 0;
  for (const auto& step : weavelog::work_list(weavelog::list_steps(work_.ledger(), event_), weavelog::WorkList::bench)) {
    const bool isDone = std::find(done.begin(), done.end(), step.name) != done.end();
    stepsDone_ += isDone ? 1 : 0;
    steps_.append(QVariantMap{{QStringLiteral("name"), qtext(step.name)},
                              {QStringLiteral("text"), qtext(weavelog::step_words(work_.language(), step.step))},
                              {QStringLiteral("done"), isDone}});
  }

  const auto time = weavelog::time_on_machine(record, id);
  since_ = time && !time->until ? std::optional(time->since) : std::nullopt;
  since_ ? second_.start() : second_.stop();

  readings_.clear();
  for (const auto* held : weavelog::readings_of(record, id)) {
    const auto& reading = held->now;
    const std::string key = "reading." + std::string(weavelog::name_of_choice(reading.what));
    readings_.append(QVariantMap{
        {QStringLiteral("text"),
         weavelog::desk_words().has(key) ? firstUpper(qtext(weavelog::desk_words().say(work_.language(), key))) : QString()},
        {QStringLiteral("value"), reading.value ? qtext(weavelog::localised(work_.language(), *reading.value)) : QString()},
        {QStringLiteral("detail"), QStringList{qtext(reading.by), work_.timeText(reading.at), qtext(reading.note)}}});
  }
  redos_ = static_cast<int>(weavelog::redos_of(record, id));
  const auto checks = weavelog::checks_of(record, id);
  lastCheck_ = checks.empty() ? QString() : firstUpper(qtext(weavelog::check_words(work_.language(), checks.front()->now)));
  lookAtStock(record);
  emit changed();
  emit timeChanged();
}

QVariantMap BenchWork::stockRow(const weavelog::StockItem& item, std::int64_t amount) const {
  QString name = qtext(item.name);
  if (item.gauge) name += QStringLiteral(" ") + qtext(weavelog::localised(work_.language(), *item.gauge));
  const bool reel = item.supply == weavelog::Supply::reel;
  const auto metres = weavelog::Decimal::rounded(static_cast<double>(amount) / 1000, 1);
  return {{QStringLiteral("name"), name},
          {QStringLiteral("amount"),
           reel ? qtext(weavelog::localised(work_.language(), weavelog::Quantity{metres, weavelog::Unit::metre})) : QString()},
          {QStringLiteral("sets"), reel ? 0 : static_cast<int>(amount)}};
}

void BenchWork::lookAtStock(const weavelog::PlayerRecord& record) {
  suggested_.clear();
  suggestedRows_.clear();
  taken_.clear();
  if (!event_) return;
  const auto levels = weavelog::stock_levels(work_.ledger(), event_, work_.now());
  const auto item = [&](const weavelog::EntityId& id) -> const weavelog::StockItem* {
    for (const auto& level : levels)
      if (level.item.id() == id) return &level.item.now;
    return nullptr;
  };
  for (const auto& [id, amount] : weavelog::stock_of_job(work_.ledger(), event_, job_))
    if (const auto* one = item(id)) taken_.append(stockRow(*one, amount));
  if (!taken_.isEmpty()) return;
  suggested_ = weavelog::suggest_uses(record, job_, levels);
  for (const auto& use : suggested_) {
    const auto* one = item(use.item);
    if (one == nullptr) continue;
    QVariantMap row = stockRow(*one, use.amount);
    row.insert(QStringLiteral("part"), qtext(use.part));
    suggestedRows_.append(row);
  }
}

bool BenchWork::tick(const QString& name, bool done) {
  const auto record = weavelog::load_player(work_.ledger(), book_);
  if (!record) return work_.commit(weavelog::fail(record.error()), {});
  return work_.commit(weavelog::tick_step(*record, job_, name.toStdString(), done, {work_.who().toStdString(), work_.now()}), {});
}

bool BenchWork::takeString(const QString& say) {
  return work_.commit(weavelog::use_for_job(event_, job_, suggested_, work_.who().toStdString(), work_.now()), say);
}

void BenchWork::beginReading() { reading_ = std::pair(book_, job_); }

bool BenchWork::measure(int what, const QString& figure, int unit, const QString& note, const QString& say, const QString& setTo) {
  const auto [book, job] = reading_.value_or(std::pair(book_, job_));
  const auto record = weavelog::load_player(work_.ledger(), book);
  if (!record) return work_.commit(weavelog::fail(record.error()), {});
  const auto amount = weavelog::Decimal::parse(figure.toStdString());
  if (!amount) return work_.commit(weavelog::fail(amount.error()), {});
  weavelog::Reading reading;
  reading.what = static_cast<weavelog::ReadingKind>(what);
  reading.value = weavelog::Quantity{*amount, static_cast<weavelog::Unit>(unit)};
  if (!setTo.isEmpty()) {
    const auto set = weavelog::Decimal::parse(setTo.toStdString());
    if (!set) return work_.commit(weavelog::fail(set.error()), {});
    reading.set_to = weavelog::Quantity{*set, reading.value->unit};
  }
  reading.at = work_.now();
  reading.by = work_.who().toStdString();
  reading.note = note.trimmed().toStdString();
  if (!work_.commit(weavelog::put_reading(*record, job, reading), say)) return false;
  reading_.reset();
  return true;
}

QVariantList BenchWork::unitsOf(int what) {
  QVariantList out;
  for (const auto unit : weavelog::units_of(static_cast<weavelog::ReadingKind>(what))) {
    const auto symbol = weavelog::symbol_of(unit);
    out.append(QVariantMap{{QStringLiteral("value"), static_cast<int>(unit)},
                           {QStringLiteral("text"), QString::fromUtf8(symbol.data(), static_cast<qsizetype>(symbol.size()))}});
  }
  return out;
}
