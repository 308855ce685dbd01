#include "app-qml/view/forecast_model.h"

#include <QLocale>
#include <QQmlEngine>

#include <cmath>

#include "app-qml/view/app_device.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "core/base/local_time.h"
#include "core/base/localised.h"
#include "core/desk/room_forecast.h"

namespace {

QVariantMap bandOf(const QString& name, const weavelog::Band& band) {
  const auto whole = [](double value) { return static_cast<int>(std::lround(value)); };
  return {{"name", name}, {"mean", whole(band.mean)}, {"low", whole(band.low)}, {"high", whole(band.high)}};
}

}  // namespace

ForecastModel::ForecastModel(Work& work, QObject* parent) : QObject(parent), work_(work) {
  connect(&work_, &Work::changed, this, &ForecastModel::refresh);
}

ForecastModel* ForecastModel::create(QQmlEngine* engine, QJSEngine*) {
  return new ForecastModel(provided<AppDevice>(engine)->work());  // the engine takes it over
}

void ForecastModel::setWatched(bool watched) {
  if (watched == watched_) return;
  watched_ = watched;
  emit watchedChanged();
  refresh();
}

void ForecastModel::setDay(int day) {
  if (day == day_) return;
  day_ = day;
  show();
}

void ForecastModel::refresh() {
  if (!watched_) return;
  const auto make = [this, event = work_.event(), now = work_.now()]() -> weavelog::Outcome<weavelog::Forecast> {
    if (!event) return weavelog::fail(weavelog::FaultCode::not_found, "there is no event yet", {}, "pair with its server, or make one");
    const auto input = weavelog::room_forecast_input(work_.ledger(), event, now);
    if (!input) return weavelog::fail(input.error());
    return weavelog::forecast_of(*input);
  };
  beside_.work(make, [this](const auto& made) {
    fault_ = made ? QString() : qtext(made.error().message());
    made_ = made ? std::optional(*made) : std::nullopt;
    show();
  });
  emit changed();
}

void ForecastModel::show() {
  days_.clear();
  hours_.clear();
  strings_.clear();
  sums_.clear();
  if (made_) {
    const QLocale locale(qtext(work_.language().tag()));
    day_ = std::clamp(day_, 0, static_cast<int>(made_->days.size()) - 1);
    const weavelog::MomentWriter dayName(work_.language(), "UTC", weavelog::Moment::Form::day);
    for (const auto& day : made_->days) {
      const auto date = weavelog::day_from(day.day);
      auto row = bandOf(date ? qtext(dayName(*date * 86'400'000)) : qtext(day.day), day.rackets);
      row["benches"] = day.benches;
      days_.append(row);
    }
    const auto& shown = made_->days[static_cast<std::size_t>(day_)];
    for (std::size_t hour = 0; hour < 24; ++hour) {
      if (shown.by_hour[hour].high < 0.5 && shown.by_hour[hour].mean < 0.05) continue;
      auto row = bandOf(QStringLiteral("%1:00").arg(static_cast<int>(hour), 2, 10, QLatin1Char('0')), shown.by_hour[hour]);
      row["benches"] = shown.benches_by_hour[hour];
      hours_.append(row);
    }
    for (const auto& need : made_->strings) strings_.append(bandOf(need.string.empty() ? tr("not known yet") : qtext(need.string), need.metres));
    sums_ = bandOf({}, made_->rackets);
    sums_["perMatch"] = locale.toString(made_->rackets_a_match, 'f', 1);
  }
  emit changed();
}
