#include "app-qml/view/numbers_model.h"

#include <QQmlEngine>

#include <functional>
#include <tuple>

#include "app-qml/view/app_device.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "core/base/local_time.h"
#include "core/desk/numbers.h"

namespace {

weavelog::RoomNumbers count(const Work& work, bool today) {
  const weavelog::LocalTime local(work.zone());
  const auto day = local.day_of(work.now());
  return weavelog::numbers_of(weavelog::job_facts(work.ledger(), work.event()), work.zone(), work.now(),
                              today ? local.begin_of(day) : INT64_MIN, today ? local.begin_of(day + 1) : INT64_MAX);
}

QString percent(std::int64_t perMille) {
  return NumbersModel::tr("%1 %").arg((perMille + (perMille < 0 ? -5 : 5)) / 10);
}

QString span(const std::optional<std::int64_t>& ms) {
  if (!ms) return {};
  const auto minutes = *ms / 60'000;
  return minutes < 60 ? NumbersModel::tr("%1 min").arg(minutes) : NumbersModel::tr("%1 h %2 min").arg(minutes / 60).arg(minutes % 60);
}

QVariantList rowsOf(const std::vector<weavelog::NumbersRow>& rows, const std::function<QString(const std::string&)>& name) {
  QVariantList out;
  for (const auto& row : rows)
    out.append(QVariantMap{{"key", name(row.key)},
                           {"taken", static_cast<int>(row.taken_in)},
                           {"strung", static_cast<int>(row.strung)},
                           {"ready", static_cast<int>(row.ready)},
                           {"late", static_cast<int>(row.late)}});
  return out;
}

}  // namespace

NumbersModel::NumbersModel(Work& work, QObject* parent) : QObject(parent), work_(work) {
  connect(&work_, &Work::changed, this, &NumbersModel::refresh);
}

NumbersModel* NumbersModel::create(QQmlEngine* engine, QJSEngine*) {
  return new NumbersModel(provided<AppDevice>(engine)->work());  // the engine takes it over
}

void NumbersModel::setWatched(bool watched) {
  if (watched_ == watched) return;
  watched_ = watched;
  saved_.clear();
  refresh();
}

void NumbersModel::setToday(bool today) {
  if (today_ == today) return;
  today_ = today;
  refresh();
  emit changed();
}

void NumbersModel::refresh() {
  if (!watched_ || !work_.event()) return;
  const auto shown = [this] { return std::tuple(sums_, growth_, days_, hours_, stringers_, strings_, tensions_); };
  const auto before = shown();
  const auto numbers = count(work_, today_);
  const auto number = [](std::int64_t value) { return QVariant(static_cast<int>(value)); };
  sums_ = {{"jobs", number(numbers.jobs)},       {"strung", number(numbers.strung)},   {"ready", number(numbers.ready)},
           {"collected", number(numbers.collected)}, {"inRoom", number(numbers.in_room)}, {"rush", number(numbers.rush)},
           {"onCourt", number(numbers.on_court)}, {"redone", number(numbers.redone)},   {"aside", number(numbers.aside)},
           {"late", number(numbers.late)},       {"overdue", number(numbers.overdue)}, {"waiting", number(numbers.waiting)},
           {"onTime", numbers.on_time_per_mille() ? percent(*numbers.on_time_per_mille()) : QString()},
           {"turnaround", span(numbers.turnaround)}, {"slow", span(numbers.slow_turnaround)}, {"wait", span(numbers.wait)}};
  const weavelog::LocalTime local(work_.zone());
  const auto as_it_is = [](const std::string& key) { return qtext(key); };
  days_ = rowsOf(numbers.by_day, [&](const std::string& key) {
    return dayText(work_.language(), local.begin_of(weavelog::day_from(key).value_or(0)), work_.zone());
  });
  hours_ = rowsOf(numbers.by_hour, [](const std::string& key) { return QStringLiteral("%1:00").arg(qtext(key)); });
  stringers_ = rowsOf(numbers.by_stringer, as_it_is);
  strings_ = rowsOf(numbers.by_string, as_it_is);
  tensions_ = rowsOf(numbers.by_tension, [](const std::string& key) { return tr("%1 kg").arg(qtext(key)); });
  growth_.clear();
  if (const auto growth = weavelog::growth_of(work_.ledger(), work_.event(), work_.zone(), work_.now())) {
    growth_ = {{"name", qtext(growth->name)}, {"now", number(growth->this_sum)}, {"before", number(growth->last_sum)}, {"whole", number(growth->last_whole)}};
    if (const auto more = growth->per_mille()) growth_["more"] = QString((*more > 0 ? QStringLiteral("+") : QString()) + percent(*more));
  }
  if (shown() != before) emit changed();
}

bool NumbersModel::save(const QUrl& file) {
  return saved_.write(file, QByteArray::fromStdString(weavelog::numbers_csv(count(work_, today_))));
}
