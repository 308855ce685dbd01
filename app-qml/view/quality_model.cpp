#include "app-qml/view/quality_model.h"

#include <QQmlEngine>

#include <algorithm>
#include <cmath>
#include <set>

#include "app-qml/papers/paper.h"
#include "app-qml/view/app_device.h"
#include "app-qml/view/job_cards.h"
#include "core/bed/bed_words.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "core/base/localised.h"
#include "core/quality/charts.h"
#include "core/quality/measured.h"

namespace {

using weavelog::Watched;
constexpr std::size_t mostPoints = 160;
constexpr int lineSteps = 8;

QString markOf(Watched watched) { return qtext(std::string(weavelog::name_of(watched))); }

// "25,5" or "25.5"; nothing if it is no number between these.
std::optional<double> numberIn(const QString& text, double least, double most) {
  const auto amount = weavelog::Decimal::parse(text.trimmed().toStdString());
  if (!amount) return std::nullopt;
  const double value = amount->to_double();
  return value >= least && value <= most ? std::optional(value) : std::nullopt;
}

}  // namespace

QualityModel::QualityModel(Work& work, QObject* parent) : QObject(parent), work_(work) {
  connect(&work_, &Work::changed, this, &QualityModel::refresh);
}

QualityModel* QualityModel::create(QQmlEngine* engine, QJSEngine*) {
  return new QualityModel(provided<AppDevice>(engine)->work());  // the engine takes it over
}

void QualityModel::setWatched(bool watched) {
  if (watched == watched_) return;
  watched_ = watched;
  saved_.clear();
  emit watchedChanged();
  refresh();
}

void QualityModel::look(const QString& who, const QString& job) {
  if (looked_.value(who) == job) return;
  if (job.isEmpty()) {
    looked_.remove(who);
  } else {
    looked_[who] = job;
  }
  // What is known is of a moment ago; nothing is said of the racket until it was worked out anew.
  verdicts_.remove(who);
  emit changed();
  refresh();
}

void QualityModel::refresh() {
  if (!watched_ && looked_.isEmpty()) return;
  const auto make = [this, event = work_.event()] {
    return std::make_shared<const Made>(event ? weavelog::RoomQuality::make(work_.ledger(), event)
                                              : Made(weavelog::fail(weavelog::FaultCode::not_found, "there is no event yet", {}, "pair with its server, or make one")));
  };
  beside_.work(make, [this](const auto& made) {
    made_ = made;
    show();
  });
  emit changed();
}

void QualityModel::setOf(const QString& of) {
  if (of == of_) return;
  of_ = of;
  if (made_) show();
  else emit changed();
}

void QualityModel::setWanted(const QString& wanted) {
  if (wanted == wanted_) return;
  wanted_ = wanted;
  if (made_) show();
  else emit changed();
}

QString QualityModel::wrongWanted() const {
  return wanted_.trimmed().isEmpty() || numberIn(wanted_, 1, 100) ? QString() : tr("Give a pull from 1 to 100 kg.");
}

QString QualityModel::figure(double value, int decimals) const {
  const double bound = 1e6;
  return qtext(weavelog::localised(work_.language(), weavelog::Decimal::rounded(std::clamp(value, -bound, bound), static_cast<std::uint8_t>(decimals))));
}

// A figure that somebody set: "4", not "4.0".
QString QualityModel::setFigure(double value) const {
  return qtext(weavelog::localised(work_.language(), weavelog::Decimal::rounded(std::clamp(value, 0.0, 1e6), 2).trimmed()));
}

Watched QualityModel::watchedKind() const {
  return of_.startsWith(QLatin1String("machine:")) ? Watched::machine : of_.startsWith(QLatin1String("stringer:")) ? Watched::stringer : Watched::racket;
}
std::string QualityModel::watchedName() const { return of_.section(u':', 1).toStdString(); }

void QualityModel::show() {
  choices_.clear();
  points_.clear();
  alarms_.clear();
  machines_.clear();
  variance_.clear();
  leftOut_.clear();
  verdicts_.clear();
  scatter_.clear();
  capability_.clear();
  rackets_ = olderAlarms_ = 0;
  fault_ = *made_ ? QString() : qtext(made_->error().message());
  if (*made_) {
    showRoom();
    showPoints();
    showAlarms();
    showMachines();
    showVerdicts();
  }
  emit changed();
}

void QualityModel::showRoom() {
  const auto& room = **made_;
  std::set<std::string> machines, stringers;
  for (const auto& racket : room.rackets()) {
    if (!racket.machine.empty()) machines.insert(racket.machine);
    if (!racket.stringer.empty()) stringers.insert(racket.stringer);
  }
  choices_.append(QVariantMap{{"value", QString()}, {"text", tr("All rackets")}});
  for (const auto& name : machines) choices_.append(QVariantMap{{"value", QString("machine:" + qtext(name))}, {"text", tr("Machine: %1").arg(qtext(name))}});
  for (const auto& name : stringers) choices_.append(QVariantMap{{"value", QString("stringer:" + qtext(name))}, {"text", tr("Stringer: %1").arg(qtext(name))}});
  const auto& rules = room.rules();
  tolerance_ = rules.tolerance;
  limit_ = 3 * room.scatter().percent;
  const auto& ruled = rules.held.now;
  ruledTolerance_ = ruled.tolerance_per_mille ? setFigure(static_cast<double>(*ruled.tolerance_per_mille) / 10) : QString();
  ruledDays_ = ruled.calibrate_every_days ? QString::number(*ruled.calibrate_every_days) : QString();
  const auto& scatter = room.scatter();
  scatter_ = (scatter.readings > 0 ? tr("One reading scatters by about %1 % (estimate of %n reading(s)).", nullptr, static_cast<int>(scatter.readings))
                                   : tr("Too few readings to tell their scatter: %1 % is assumed, as such gauges and rooms usually have."))
                 .arg(figure(scatter.percent));
  if (const auto aged = weavelog::one_age_words(work_.language(), room.ages()); !aged.empty()) scatter_ += QStringLiteral(" ") + qtext(aged);
  capability_ = capabilityWords();
  for (const auto& part : room.variance()) {
    const QString share = tr("%1 % of the variance (estimate, 95 %: %2 to %3 %), between %n of them", nullptr, static_cast<int>(part.groups))
                              .arg(figure(100 * part.share, 0), figure(100 * part.band.low, 0), figure(100 * part.band.high, 0));
    using By = weavelog::VariancePart::By;
    const QString what = part.by == By::stringer ? tr("Stringers: %1") : part.by == By::machine ? tr("Machines: %1") : tr("Frames: %1");
    const QString differ = part.chance < 0.01 ? tr("; they differ clearly") : part.chance < 0.05 ? tr("; they seem to differ") : tr("; no clear difference");
    variance_.append(what.arg(share) + differ);
  }
  for (const auto& fault : room.left_out()) leftOut_.append(qtext(fault.message()));
}

QString QualityModel::capabilityWords() const {
  const auto& room = **made_;
  const auto capability = room.capability(watchedKind(), watchedName());
  if (capability)
    return tr("Of 100 rackets about %1 lie more than %2 % from what was to be expected (estimate, 95 %: %3 to %4). Of the %n read, %5 did.", nullptr,
              static_cast<int>(capability->count))
        .arg(figure(100 * capability->outside, 0), setFigure(tolerance_), figure(100 * capability->outside_band.low, 0),
             figure(100 * capability->outside_band.high, 0), QString::number(capability->seen_outside));
  std::size_t told = 0;
  for (const auto& racket : room.rackets()) {
    const bool counts = watchedKind() == Watched::racket || (watchedKind() == Watched::machine ? racket.machine : racket.stringer) == watchedName();
    told += counts && racket.deviation.against != weavelog::Against::nothing ? 1 : 0;
  }
  if (told < weavelog::kSettledLimits)
    return tr("Too few readings to tell what can be held: %1 of at least %2 that can be compared.").arg(told).arg(weavelog::kSettledLimits);
  return qtext(capability.error().message());
}

void QualityModel::showPoints() {
  const auto& room = **made_;
  std::map<std::size_t, Watched> marks;  // the gravest: a machine or stringer concerns more than one racket
  for (const auto& alarm : room.alarms()) {
    auto [held, fresh] = marks.emplace(alarm.racket, alarm.alarm.watched);
    if (!fresh && held->second == Watched::racket) held->second = alarm.alarm.watched;
  }
  const Watched kind = watchedKind();
  const std::string name = watchedName();
  std::vector<std::size_t> shown;
  for (std::size_t i = 0; i < room.rackets().size(); ++i) {
    const auto& one = room.rackets()[i];
    if (kind == Watched::racket || (kind == Watched::machine ? one.machine : one.stringer) == name) shown.push_back(i);
  }
  rackets_ = static_cast<int>(shown.size());
  if (shown.size() > mostPoints) shown.erase(shown.begin(), shown.end() - static_cast<std::ptrdiff_t>(mostPoints));
  double most = std::max(1.3 * tolerance_, 1.15 * limit_);
  for (const std::size_t i : shown) {
    const auto& one = room.rackets()[i];
    const bool told = one.deviation.against != weavelog::Against::nothing;
    const double percent = told ? one.deviation.percent : 0;
    most = std::max(most, 1.1 * std::fabs(percent));
    const auto mark = marks.find(i);
    const bool ofKind = mark != marks.end() && (kind == Watched::racket || mark->second == kind || mark->second == Watched::racket);
    const auto& average = kind == Watched::machine ? one.machine_average : one.stringer_average;
    const QString who = (one.tag ? QString::number(*one.tag) + QStringLiteral(" ") : QString()) + qtext(one.name);
    const QString off = (percent > 0 ? QStringLiteral("+") : QString()) + figure(percent);
    const QString reads = told ? tr("%1 % (± %2, estimate)").arg(off, figure(1.96 * room.scatter().percent * one.deviation.doubt))
                               : tr("nothing to compare it with yet");
    QStringList detail{qtext(weavelog::localised(work_.language(), one.read)), qtext(one.stringer), qtext(one.machine), work_.timeText(one.at)};
    detail.removeAll(QString());
    points_.append(QVariantMap{{"told", told},
                               {"percent", percent},
                               {"average", kind != Watched::racket && average ? QVariant(average->value) : QVariant()},
                               {"mark", ofKind ? markOf(mark->second) : QString()},
                               {"beyond", told && std::fabs(percent) > tolerance_},
                               {"text", QString(who + QStringLiteral(": ") + reads)},
                               {"detail", detail.join(QStringLiteral(", "))}});
  }
  reach_ = most;
}

void QualityModel::showAlarms() {
  const auto& room = **made_;
  const auto& language = work_.language();
  const auto& all = room.alarms();
  const std::size_t shown = std::min(all.size(), weavelog::kAlarmsExplained);
  olderAlarms_ = static_cast<int>(all.size() - shown);
  for (std::size_t n = 0; n < shown; ++n) {
    const auto& one = all[all.size() - 1 - n];
    const auto& racket = room.rackets()[one.racket];
    const auto& alarm = one.alarm;
    const QString off = (alarm.percent > 0 ? QStringLiteral("+") : QString()) + figure(alarm.percent);
    const QString band = figure((alarm.band.high - alarm.band.low) / 2);
    const QString who = (racket.tag ? QString::number(*racket.tag) + QStringLiteral(" ") : QString()) + qtext(racket.name);
    const QString title = alarm.watched == Watched::racket ? tr("Racket %1: %2 % (± %3)").arg(who, off, band)
                          : alarm.watched == Watched::machine
                              ? tr("Machine %1: %2 % (± %3) over %n racket(s)", nullptr, static_cast<int>(alarm.rackets)).arg(qtext(alarm.name), off, band)
                              : tr("Stringer %1: %2 % (± %3) over %n racket(s)", nullptr, static_cast<int>(alarm.rackets)).arg(qtext(alarm.name), off, band);
    // What one racket set off stands together.
    const QVariantMap titled{{"mark", markOf(alarm.watched)}, {"text", title}};
    if (n > 0 && all[all.size() - n].racket == one.racket) {
      QVariantMap held = alarms_.last().toMap();
      held["titles"] = QVariantList{titled} + held["titles"].toList();
      alarms_.last() = held;
      continue;
    }
    QVariantList causes;
    QString why, advice;
    const auto suspect = room.suspect(language, one.racket);
    for (const auto& finding : one.causes.findings) {
      if (causes.size() == 3) break;
      if (causes.isEmpty()) {
        why = qtext(weavelog::evidence_words(language, suspect, finding));
        advice = qtext(weavelog::advice_words(language, suspect, finding));
        if (one.causes.machine_or_stringer && (finding.cause == weavelog::Cause::machine_calibration || finding.cause == weavelog::Cause::stringer))
          advice = qtext(weavelog::quality_words().say(language, "together", {{"machine", suspect.machine}, {"stringer", suspect.stringer}}));
      } else if (finding.chance < 0.05) {
        break;
      }
      causes.append(QVariantMap{{"text", qtext(weavelog::cause_words(language, finding.cause))}, {"chance", static_cast<int>(std::lround(100 * finding.chance))}});
    }
    alarms_.append(QVariantMap{{"titles", QVariantList{titled}}, {"when", work_.timeText(racket.at)}, {"text", why}, {"advice", advice}, {"causes", causes}});
  }
}

void QualityModel::showMachines() {
  for (const auto& machine : (*made_)->machines()) machines_.append(machineCard(machine));
}

QVariantMap QualityModel::machineCard(const weavelog::MachineQuality& machine) const {
  const auto& language = work_.language();
  const auto say = [&](const char* key, const weavelog::PhraseArgs& args) { return qtext(weavelog::quality_words().say(language, key, args)); };
  const auto pull = [&](double value) { return weavelog::Quantity{weavelog::Decimal::rounded(std::clamp(value, 0.0, 1e6), 1), machine.unit}; };
  const auto tenth = [](double value) { return weavelog::Decimal::rounded(std::clamp(std::fabs(value), 0.0, 1e6), 1); };
  const auto day = [&](weavelog::UnixMs at) { return weavelog::Moment{at, work_.zone(), weavelog::Moment::Form::day}; };
  const bool overdue = machine.due && *machine.due < work_.now();
  QVariantMap out{{"id", qtext(machine.machine.hex())}, {"name", qtext(machine.name)}, {"pulls", static_cast<int>(machine.readings.size())}, {"overdue", overdue}};
  out["due"] = !machine.due ? tr("It was never held against a gauge.")
               : overdue    ? say("calibration.overdue", {{"day", day(*machine.due)}})
                            : say("calibration.due", {{"day", day(*machine.due)}, {"why", std::string(machine.due_by_drift ? "drift" : "age")}});
  out["known"] = machine.calibration.has_value();
  if (!machine.calibration) {
    out["missing"] = machine.readings.empty() ? tr("No pull against the gauge was noted.")
                                              : tr("%n pull(s) noted, too few for a line: at three settings or more, each twice, on one day.", nullptr,
                                                   static_cast<int>(machine.readings.size()));
    return out;
  }
  const auto& line = *machine.calibration;
  QStringList sentences;
  double wanted = std::round(line.reference() * 2) / 2;
  if (const auto typed = numberIn(wanted_, 1, 100)) wanted = *typed * weavelog::unit_factor(weavelog::Unit::kilogram_force, machine.unit).value_or(1);
  if (const auto setting = line.setting_for(wanted)) {
    sentences.append(setting->needed ? say("calibration.corrected", {{"wanted", pull(wanted)}, {"set", pull(setting->set)}, {"level", static_cast<std::int64_t>(95)},
                                                                     {"low", pull(setting->band.low)}, {"high", pull(setting->band.high)}})
                                     : say("calibration.none", {{"wanted", pull(wanted)}}));
  } else {
    sentences.append(tr("What to set for %1 is not known: the pulls noted do not reach it.").arg(qtext(weavelog::localised(language, pull(wanted)))));
  }
  out["beyond"] = line.state() == weavelog::Calibration::State::beyond;
  if (const auto off = line.error_at(line.reference())) {
    const auto band = tenth((off->band.high - off->band.low) / 2);
    const std::string side = off->percent < 0 ? "low" : "high";
    if (line.state() == weavelog::Calibration::State::beyond)
      sentences.append(say("calibration.beyond", {{"reference", pull(line.reference())}, {"percent", tenth(off->percent)}, {"band", band}, {"side", side},
                                                  {"tolerance", tenth(line.options().tolerance)}}));
    else
      sentences.append(tr("At %1 it is off by %2 % (± %3, estimate); %4 % are tolerated.")
                           .arg(qtext(weavelog::localised(language, pull(line.reference()))), figure(off->percent), qtext(weavelog::localised(language, band)),
                                setFigure(line.options().tolerance)));
  }
  if (line.is_bent()) sentences.append(say("calibration.curved", {}));
  if (line.drift() && line.drift()->clear && line.sessions().size() > 1) {
    const auto& sessions = line.sessions();
    const auto& drift = *line.drift();
    sentences.append(say("calibration.drift", {{"before", day(sessions[sessions.size() - 2].at)}, {"after", day(sessions.back().at)},
                                               {"reference", pull(line.reference())}, {"percent", tenth(drift.percent)},
                                               {"band", tenth((drift.band.high - drift.band.low) / 2)}}));
  }
  out["sentences"] = sentences;
  // The newest day's pulls, as the line was made of them.
  const auto range = line.straight().range();
  const double room = std::max(0.5, 0.08 * (range.high - range.low)), low = range.low - room, high = range.high + room;
  double reach = 1.5 * line.options().tolerance;
  QVariantList points, drawn;
  const auto utcDay = [](weavelog::UnixMs at) { return at / 86'400'000; };
  for (const auto& reading : machine.readings) {
    if (!line.sessions().empty() && (!reading.at || utcDay(*reading.at) != utcDay(line.sessions().back().at))) continue;
    const double off = 100 * (reading.pulled / reading.set - 1);
    reach = std::max(reach, 1.15 * std::fabs(off));
    points.append(QVariantMap{{"x", reading.set}, {"y", off}});
  }
  for (int i = 0; i <= lineSteps; ++i) {
    const double set = range.low + (range.high - range.low) * i / lineSteps;
    drawn.append(QVariantMap{{"x", set}, {"y", 100 * (line.line().at(set) / set - 1)}});
  }
  out["points"] = points;
  out["line"] = drawn;
  out["low"] = low;
  out["high"] = high;
  out["reach"] = reach;
  out["tolerance"] = line.options().tolerance;
  out["lowText"] = qtext(weavelog::localised(language, pull(range.low)));
  out["highText"] = qtext(weavelog::localised(language, pull(range.high)));
  return out;
}

QString QualityModel::correction(const QString& machine, const QString& amount, const QString& unit) const {
  const auto figure = weavelog::Decimal::parse(amount.toStdString());
  const auto said = weavelog::unit_from(unit.toStdString());
  if (!made_ || !*made_ || machine.isEmpty() || !figure || !said) return {};
  for (const auto& one : (*made_)->machines()) {
    if (one.machine != entityOf(machine) || !one.calibration) continue;
    // In the unit in which it was agreed, whatever the gauge shows.
    const auto to = weavelog::unit_factor(*said, one.unit);
    if (!to || !(*to > 0)) return {};
    const auto setting = one.calibration->setting_for(figure->to_double() * *to);
    if (!setting || !setting->needed) return {};
    const auto pull = [&](double value) { return weavelog::Quantity{weavelog::Decimal::rounded(std::clamp(value / *to, 0.0, 1e6), 1), *said}; };
    return qtext(weavelog::quality_words().say(work_.language(), "calibration.corrected",
                                               {{"wanted", weavelog::Quantity{*figure, *said}}, {"set", pull(setting->set)},
                                                {"level", static_cast<std::int64_t>(95)}, {"low", pull(setting->band.low)}, {"high", pull(setting->band.high)}}));
  }
  return {};
}

void QualityModel::showVerdicts() {
  using State = weavelog::RoomQuality::Verdict::State;
  for (auto one = looked_.constBegin(); one != looked_.constEnd(); ++one) {
    const auto verdict = (*made_)->racket_off(entityOf(one.value()));
    verdicts_.insert(one.key(), QVariantMap{{"off", verdict.state == State::off},
                                            {"told", verdict.state == State::off || verdict.state == State::even},
                                            {"text", qtext((*made_)->verdict_words(work_.language(), verdict))}});
  }
}

bool QualityModel::setRules(const QString& tolerance, const QString& days, const QString& say) {
  const auto now = weavelog::quality_rules(work_.ledger(), work_.event());
  weavelog::QualityRules wanted;
  if (!tolerance.trimmed().isEmpty()) {
    const auto percent = numberIn(tolerance, 0, 100);
    wanted.tolerance_per_mille = percent ? std::llround(*percent * 10) : 0;  // what is no number is refused as what is too small
  }
  if (!days.trimmed().isEmpty()) {
    bool number = false;
    const auto count = days.trimmed().toLongLong(&number);
    wanted.calibrate_every_days = number ? count : 0;
  }
  return work_.commit(weavelog::set_quality_rules(work_.event(), now, wanted), say);
}

bool QualityModel::save(const QUrl& file) {
  if (!made_ || !*made_) {
    work_.tell({weavelog::FaultCode::not_found, tr("There is no chart yet.").toStdString(), {}, tr("Wait a moment and save it again.").toStdString()});
    return false;
  }
  return saved_.write(file, QByteArray::fromStdString(weavelog::quality_csv(**made_, watchedKind(), watchedName())));
}

void QualityModel::savePdf(const QUrl& file) {
  PaperRequest request;
  request.kind = PaperKind::evenness;
  request.event = work_.event();
  request.language = work_.language();
  request.zone = work_.zone();
  request.now = work_.now();
  request.watched = watchedKind();
  request.watchedName = watchedName();
  const auto write = [&ledger = work_.ledger(), request, path = pathOf(file)] {
    const auto paper = makePaper(ledger, request);
    return paper ? writePdf(*paper, path) : weavelog::Outcome<>(weavelog::fail(paper.error()));
  };
  saved_.clear();
  writing_.work(write, [this, file](const auto& written) {
    saved_.say(file, written.has_value());
    emit changed();
  });
  emit changed();
}
