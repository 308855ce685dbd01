#include "app-qml/view/bed_model.h"

#include <QFileInfo>
#include <QQmlEngine>
#include <QSaveFile>
#include <QUrl>

#include <algorithm>
#include <cmath>

#include "app-qml/view/app_device.h"
#include "app-qml/view/job_cards.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "core/base/csv.h"
#include "core/base/localised.h"
#include "core/base/text.h"
#include "core/bed/bed_words.h"
#include "core/desk/cautions.h"
#include "core/model/queries.h"

namespace {

constexpr double hourSeconds = 3600;

QVariantList pair(double at, const QString& text) {
  return {at, text};
}

}  // namespace

// One working out, made beside the screen.
struct BedModel::Made {
  weavelog::BookId book;
  weavelog::EntityId job;
  std::optional<weavelog::Fault> fault;
  QString title;
  weavelog::RoomBed bed;
  weavelog::MeasuredBeds measured;
  weavelog::BedFigures figures;
  std::vector<weavelog::BedLeftAt> curve;
  std::vector<weavelog::BedSegment> strings;
  std::vector<weavelog::BedPoint> outline;
  std::vector<weavelog::BedStringChoice> choices;
  std::optional<double> mostTension;  // N, printed on the frame
  bool crack = false, pain = false;
};

namespace {

QString nameOf(const weavelog::PlayerRecord& record, const weavelog::Job& job) {
  const QString name = qtext(weavelog::listed_name(record.person.now));
  return job.tag_number ? QStringLiteral("%1 %2").arg(*job.tag_number).arg(name) : name;
}

}  // namespace

BedModel::BedModel(Work& work, QObject* parent) : QObject(parent), work_(work) {
  connect(&work_, &Work::changed, this, &BedModel::refresh);
}

BedModel* BedModel::create(QQmlEngine* engine, QJSEngine*) {
  return new BedModel(provided<AppDevice>(engine)->work());  // the engine takes it over
}

void BedModel::setWatched(bool watched) {
  if (watched == watched_) return;
  watched_ = watched;
  emit watchedChanged();
  refresh();
}

void BedModel::show(const QString& book, const QString& job) {
  book_ = idFrom<weavelog::BookId>(book);
  job_ = idFrom<weavelog::EntityId>(job);
  made_.reset();
  forgetProposal();
  heard_.clear();
  ++heardAsked_;
  emit heardChanged();
  say();
  refresh();
  emit asked();
}

void BedModel::showFirst(const QString& name) {
  using weavelog::Stage;
  const std::string wanted = weavelog::search_key(name.toStdString());
  for (const auto stage : {Stage::strung, Stage::checked, Stage::stencilled, Stage::ready, Stage::on_machine, Stage::received, Stage::collected})
    for (const auto& row : weavelog::jobs_at_stage(work_.ledger(), work_.event(), stage))
      if (weavelog::search_key(row.family_name + " " + row.given_name).starts_with(wanted)) return show(idText(row.book), idText(row.job));
}

void BedModel::refresh() {
  if (!watched_ || !book_) return;
  const auto make = [this, event = work_.event(), book = book_, job = job_, now = work_.now()] {
    auto made = std::make_shared<Made>();
    made->book = book;
    made->job = job;
    const auto work = [&]() -> weavelog::Outcome<> {
      const auto record = weavelog::load_player(work_.ledger(), book);
      if (!record) return weavelog::fail(record.error());
      if (const auto* held = record->job(job)) {
        made->title = nameOf(*record, held->now);
        made->pain = weavelog::speaks_of_pain(held->now.note) || weavelog::speaks_of_pain(record->person.now.note);
        made->crack = weavelog::doubt_about(*record, held->now.racket).has_value();
        if (const auto* racket = record->racket(held->now.racket); racket != nullptr && racket->now.tension_high)
          made->mostTension = weavelog::in_newtons(*racket->now.tension_high);
      }
      if (event) made->choices = weavelog::bed_strings(work_.ledger(), event);
      auto bed = weavelog::room_bed(*record, job, made->choices, now, weavelog::match_of(work_.ledger(), event, record->person.now, now));
      if (!bed) return weavelog::fail(bed.error());
      made->bed = std::move(*bed);
      const auto layout = weavelog::layout_of(made->bed.setup);
      if (!layout) return weavelog::fail(layout.error());
      made->strings = weavelog::drawn_strings(*layout);
      made->outline = layout->head.drawing();
      made->measured = weavelog::measured_beds(*record, made->choices);
      auto figures = weavelog::figures_of(made->bed, made->measured);
      if (!figures) return weavelog::fail(figures.error());
      made->figures = std::move(*figures);
      auto curve = weavelog::left_over_time(made->bed, made->measured, made->bed.at_match().after * 1.5);
      if (!curve) return weavelog::fail(curve.error());
      made->curve = std::move(*curve);
      return {};
    };
    if (const auto done = work(); !done) made->fault = done.error();
    return std::shared_ptr<const Made>(std::move(made));
  };
  beside_.work(make, [this](const auto& made) { take(made); });
  emit changed();
}

void BedModel::take(const std::shared_ptr<const Made>& made) {
  // Of a racket that is not shown any more nothing is told; what was asked of the other one is on its way.
  if (made->book == book_ && made->job == job_) {
    made_ = made;
    say();
  }
  emit changed();
}

// --- in words

QString BedModel::number(double value, int places) const {
  return qtext(weavelog::localised(work_.language(), weavelog::Decimal::rounded(value, static_cast<std::uint8_t>(places))));
}

double BedModel::newtonsOfUnit() const {
  return made_ ? weavelog::in_newtons({weavelog::Decimal{1, 0}, made_->bed.unit}).value_or(1) : 1;
}

QString BedModel::force(double newtons) const {
  const weavelog::Unit unit = made_->bed.unit;
  const std::uint8_t places = unit == weavelog::Unit::newton ? 0 : 1;
  return qtext(weavelog::localised(work_.language(), weavelog::Quantity{weavelog::Decimal::rounded(newtons / newtonsOfUnit(), places), unit}));
}

QString BedModel::band(double low, double high, int places) const {
  return tr("%1 to %2").arg(number(low, places), number(high, places));
}

QString BedModel::kiloStep() const {
  if (!made_) return QStringLiteral("1");
  return made_->bed.unit == weavelog::Unit::pound_force ? QStringLiteral("2")
         : made_->bed.unit == weavelog::Unit::newton    ? QStringLiteral("10")
                                                        : QStringLiteral("1");
}

void BedModel::say() {
  fault_.clear();
  title_ = strung_ = matchTime_ = data_ = left_ = gauge_ = unit_ = QString();
  for (auto* list : {&strings_, &outline_, &figures_, &curve_, &curveTimes_, &curveParts_, &curveMoments_, &choices_}) list->clear();
  assumed_.clear();
  cautions_.clear();
  if (made_) {
    title_ = made_->title;
    const auto& language = work_.language();
    if (made_->crack) cautions_.append(qtext(weavelog::caution_text(language, weavelog::Caution::cracked_frame)));
    if (made_->pain) cautions_.append(qtext(weavelog::caution_text(language, weavelog::Caution::arm_pain)));
    if (made_->fault) fault_ = qtext(made_->fault->message());
  }
  if (!made_ || made_->fault) {
    emit changed();
    return;
  }
  const auto& bed = made_->bed;
  const auto& figures = made_->figures;
  const auto stringText = [&](const QString& name, const weavelog::BedStringKind& kind) {
    return (name.isEmpty() ? tr("string not named") : name) + QStringLiteral(" ") + number(kind.gauge, 2) + QStringLiteral("\u00a0mm");
  };
  const QString mains = stringText(qtext(bed.mains_string), bed.setup.mains.kind),
                crosses = stringText(qtext(bed.crosses_string), bed.setup.crosses.kind);
  strung_ = (mains == crosses ? mains : mains + QStringLiteral(" / ") + crosses) + QStringLiteral(", ") +
            tr("pulled with %1 / %2").arg(force(bed.setup.mains.pulled), force(bed.setup.crosses.pulled));
  for (const auto& line : made_->strings) strings_.append(QVariant(QVariantList{line.from.x, line.from.y, line.to.x, line.to.y, line.main ? 1 : 0}));
  for (const auto& point : made_->outline) outline_.append(QVariant(QVariantList{point.x, point.y}));
  const auto row = [&](const QString& name, const weavelog::BedEstimate& now, const weavelog::BedEstimate& match, double by, int places,
                       const QString& of) {
    figures_.append(QVariantMap{{"name", name},
                                {"now", number(now.value / by, places) + QStringLiteral("\u00a0") + of},
                                {"nowBand", band(now.low / by, now.high / by, places)},
                                {"match", number(match.value / by, places) + QStringLiteral("\u00a0") + of},
                                {"matchBand", band(match.low / by, match.high / by, places)}});
  };
  unit_ = qtext(weavelog::symbol_of(bed.unit));
  const double one = newtonsOfUnit();
  const int places = bed.unit == weavelog::Unit::newton ? 0 : 1;
  row(tr("Stiffness in the centre"), figures.stiffness, figures.stiffness_match, 1000, 1, QStringLiteral("N/mm"));
  row(tr("Tone"), figures.tone, figures.tone_match, 1, 0, QStringLiteral("Hz"));
  row(tr("Tension in the mains"), figures.mains, figures.mains_match, one, places, unit_);
  row(tr("Tension in the crosses"), figures.crosses, figures.crosses_match, one, places, unit_);
  matchTime_ = work_.timeText(bed.match_at);
  data_ = qtext(weavelog::data_words(work_.language(), figures.from_data, figures.readings));
  if (made_->measured.left_out > 0)
    data_ += QStringLiteral(" ") + tr("%n reading(s) are left out: on a scale of the instrument’s own, or nothing like this racket.", nullptr,
                                      static_cast<int>(made_->measured.left_out));
  using weavelog::BedGap;
  for (const BedGap gap : bed.assumed) {
    switch (gap) {
      case BedGap::head_size:
        assumed_.append(tr("A head of %1 cm²").arg(number(bed.setup.area, 0)));
        break;
      case BedGap::pattern:
        assumed_.append(tr("A pattern of %1 x %2").arg(bed.setup.pattern.mains).arg(bed.setup.pattern.crosses));
        break;
      case BedGap::material:
        assumed_.append(tr("A synthetic gut, where the stock does not say the material"));
        break;
      case BedGap::gauge:
        assumed_.append(tr("A gauge of 1.30 mm, where none is said"));
        break;
      case BedGap::crosses_tension:
        assumed_.append(tr("Mains and crosses pulled alike"));
        break;
      case BedGap::pieces:
        assumed_.append(tr("Two pieces of string"));
        break;
      case BedGap::strung_at:
        assumed_.append(tr("It comes off the machine now"));
        break;
      case BedGap::match_at:
        assumed_.append(tr("A match at %1").arg(matchTime_));
        break;
    }
  }
  for (std::size_t i = 0; i < made_->choices.size(); ++i) {
    const auto& choice = made_->choices[i];
    choices_.append(QVariantMap{
        {"value", QString::number(i)},
        {"text",
         qtext(choice.name) + (choice.gauge_said ? QStringLiteral(" ") + number(choice.kind.gauge, 2) + QStringLiteral("\u00a0mm") : QString())},
        {"detail", choice.material_said ? QString() : tr("Its material is not said in the stock")}});
  }
  gauge_ = qtext(weavelog::Decimal::rounded(bed.setup.mains.kind.gauge, 2).text());
  sayCurve();
  emit changed();
}

void BedModel::sayCurve() {
  const auto& bed = made_->bed;
  for (const auto& point : made_->curve) curve_.append(QVariant(QVariantList{point.seconds, point.left.value, point.left.low, point.left.high}));
  const double last = made_->curve.back().seconds;
  const auto time = [&](double seconds, const QString& text) {
    if (seconds <= last * 1.001) curveTimes_.append(QVariant(pair(seconds, text)));
  };
  time(60, tr("1 min"));
  time(600, tr("10 min"));
  time(hourSeconds, tr("1 h"));
  time(6 * hourSeconds, tr("6 h"));
  time(24 * hourSeconds, tr("1 day"));
  time(7 * 24 * hourSeconds, tr("1 week"));
  double least = 1;
  for (const auto& point : made_->curve) least = std::min(least, point.left.low);
  const double step = least < 0.75 ? 0.1 : 0.05;
  for (double part = 1; part > least - step + 1e-9; part -= step)
    curveParts_.append(QVariant(pair(part, number(100 * part, 0) + QStringLiteral(" %"))));
  const double now = bed.setup.after, match = bed.at_match().after;
  if (bed.strung_at && now >= 60) curveMoments_.append(QVariant(pair(now, tr("now"))));
  if (match > now + 60) curveMoments_.append(QVariant(pair(match, tr("match"))));
  // The curve at the match, between its points.
  const auto after = std::find_if(made_->curve.begin(), made_->curve.end(), [&](const auto& point) { return point.seconds >= match; });
  const auto& at = after == made_->curve.end() ? made_->curve.back() : *after;
  left_ = qtext(weavelog::bed_words().say(work_.language(), "relaxation.left",
                                          {{"percent", weavelog::Decimal::rounded(100 * at.left.value, 0)},
                                           {"low", weavelog::Decimal::rounded(100 * at.left.low, 0)},
                                           {"high", weavelog::Decimal::rounded(100 * at.left.high, 0)}}));
}

// --- the same feel

void BedModel::forgetProposal() {
  ++proposalAsked_;
  if (proposal_.isEmpty()) return;
  proposal_.clear();
  emit proposalChanged();
}

void BedModel::propose(int what, int of, const QString& value) {
  if (!made_ || made_->fault) return;
  weavelog::BedChange change;
  change.of = of == OfMains ? weavelog::BedChange::Of::mains : of == OfCrosses ? weavelog::BedChange::Of::crosses : weavelog::BedChange::Of::both;
  const auto figure = weavelog::Decimal::parse(value.toStdString());
  const double number = figure ? figure->to_double() : 0;
  bool said = figure.has_value();
  switch (what) {
    case String: {
      const auto at = static_cast<std::size_t>(value.toULongLong(&said));
      said = said && at < made_->choices.size();
      if (!said) break;
      change.string = made_->choices[at];
      // A string of which the stock knows no gauge stays as thick as it is.
      if (!change.string->gauge_said)
        change.string->kind.gauge = of == OfCrosses ? made_->bed.setup.crosses.kind.gauge : made_->bed.setup.mains.kind.gauge;
      break;
    }
    case Gauge:
      change.gauge = number;
      break;
    case PreStretch:
      change.pre_stretch = number;
      break;
    case Mains:
      change.mains_more = number * newtonsOfUnit();
      break;
    case Crosses:
      change.crosses_more = number * newtonsOfUnit();
      break;
    default:
      said = false;
  }
  if (!said) return forgetProposal();
  proposing_.work([made = made_, change] { return weavelog::same_feel(made->bed, made->measured, change); },
                  [this, asked = ++proposalAsked_](const auto& answer) {
                    if (asked == proposalAsked_ && made_ && !made_->fault) sayProposal(answer);
                    emit changed();
                  });
  emit changed();
}

void BedModel::sayProposal(const weavelog::Outcome<weavelog::Equivalent>& made) {
  proposal_.clear();
  if (!made) {
    proposal_ = {{"fault", qtext(made.error().message())}};
  } else {
    const auto tension = [&](const weavelog::Quantity& quantity) { return weavelog::localised(work_.language(), quantity); };
    const auto line = [&](const QString& name, const weavelog::EquivalentTension& one) {
      return tr("%1: estimate %2, nine times of ten %3 to %4; now %5")
          .arg(name, force(one.exact), force(one.low), force(one.high), force(one.before));
    };
    QString caution;
    const double most = std::max(weavelog::in_newtons(made->mains.set).value_or(0), weavelog::in_newtons(made->crosses.set).value_or(0));
    if (made_->mostTension && most > *made_->mostTension)
      caution = qtext(weavelog::caution_text(work_.language(), weavelog::Caution::tension_over_range));
    const auto fixed = [](const weavelog::EquivalentTension& one) { return one.low == one.high; };
    QStringList lines;
    if (!fixed(made->mains)) lines.append(line(tr("Mains"), made->mains));
    if (!fixed(made->crosses)) lines.append(line(tr("Crosses"), made->crosses));
    lines.append(
        tr("Stiffness of a firm stroke at the match: %1 N/mm, before %2 N/mm").arg(number(made->reached / 1000, 1), number(made->wanted / 1000, 1)));
    proposal_ = {{"set", qtext(weavelog::bed_words().say(work_.language(), "equivalent.set",
                                                         {{"mains", tension(made->mains.set)}, {"crosses", tension(made->crosses.set)}}))},
                 {"lines", lines},
                 {"data", qtext(weavelog::data_words(work_.language(), made->from_data, made->readings.of_all))},
                 {"caution", caution}};
  }
  emit proposalChanged();
}

// --- a tone

void BedModel::hear(const QString& hertz) {
  const int asked = ++heardAsked_;
  const auto figure = weavelog::Decimal::parse(hertz.toStdString());
  if (!made_ || made_->fault || !figure) {
    heard_.clear();
    emit heardChanged();
    return;
  }
  hearing_.work([made = made_, hz = figure->to_double()] { return made->measured.reckoner.from_tone(made->bed.setup, hz); },
                [this, asked](const auto& answer) {
                  if (asked == heardAsked_ && made_ && !made_->fault) sayHeard(answer);
                  emit changed();
                });
  emit changed();
}

void BedModel::sayHeard(const weavelog::Outcome<weavelog::BedReckoner::FromTone>& made) {
  heard_.clear();
  if (made) {
    const auto percent = [&](double part) { return number(100 * part, 0); };
    heard_ = {{"lines", QStringList{tr("Mean tension %1, nine times of ten %2 to %3")
                                        .arg(force(made->tension.value), force(made->tension.low), force(made->tension.high)),
                                    tr("That is %1 % of what was pulled, %2 to %3 %")
                                        .arg(percent(made->of_pulled.value), percent(made->of_pulled.low), percent(made->of_pulled.high)),
                                    tr("Stiffness in the centre %1 N/mm, %2 to %3")
                                        .arg(number(made->stiffness.value / 1000, 1), number(made->stiffness.low / 1000, 1),
                                             number(made->stiffness.high / 1000, 1))}}};
  } else {
    heard_ = {{"fault", qtext(made.error().message())}};
  }
  emit heardChanged();
}

// --- the figures as a table

bool BedModel::saveCsv(const QUrl& file) {
  if (!made_ || made_->fault) return false;
  weavelog::CsvWriter csv;
  const auto text = [](double value, int places) { return weavelog::Decimal::rounded(value, static_cast<std::uint8_t>(places)).text(); };
  csv.row({"figure", "unit", "when", "estimate", "low", "high"});
  const auto row = [&](const char* name, const char* unit, const char* when, const weavelog::BedEstimate& one, double by, int places) {
    csv.row({name, unit, when, text(one.value / by, places), text(one.low / by, places), text(one.high / by, places)});
  };
  const auto& f = made_->figures;
  for (const bool match : {false, true}) {
    const char* when = match ? "match" : "now";
    row("centre stiffness", "N/mm", when, match ? f.stiffness_match : f.stiffness, 1000, 2);
    row("tone", "Hz", when, match ? f.tone_match : f.tone, 1, 1);
    row("mains tension", "N", when, match ? f.mains_match : f.mains, 1, 1);
    row("crosses tension", "N", when, match ? f.crosses_match : f.crosses, 1, 1);
  }
  for (const auto& point : made_->curve)
    csv.row({"tension left", "part of that at one minute", text(point.seconds, 0) + " s after stringing", text(point.left.value, 4),
             text(point.left.low, 4), text(point.left.high, 4)});
  const auto path = file.isLocalFile() ? file.toLocalFile() : file.toString();
  // What is no file must not be replaced by one.
  if (const QFileInfo there(path); there.exists() && !there.isFile()) {
    work_.tell({weavelog::FaultCode::io, "there is something that is no file", path.toStdString(), "choose another name"});
    return false;
  }
  const auto bytes = QByteArray::fromStdString(csv.text());
  QSaveFile out(path);
  if (out.open(QIODevice::WriteOnly) && out.write(bytes) == bytes.size() && out.commit()) return true;
  work_.tell({weavelog::FaultCode::io, "the file can't be written: " + out.errorString().toStdString(), path.toStdString(),
              "choose a folder that you may write to"});
  return false;
}
