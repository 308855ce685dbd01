#include "app-qml/view/bed_made.h"

#include <QQmlEngine>
#include <QUrl>

#include <algorithm>

#include "app-qml/papers/paper.h"
#include "app-qml/view/app_device.h"
#include "app-qml/view/job_cards.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "core/base/csv.h"
#include "core/base/localised.h"
#include "core/base/text.h"
#include "core/bed/bed_words.h"
#include "core/desk/bench.h"
#include "core/desk/cautions.h"
#include "core/model/queries.h"

namespace {

constexpr double usualDoubt = 0.003;  // of a tone that an instrument shows
constexpr double inch2 = 6.4516;      // cm2: NIST SP 811, App. B.8

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
  saved_.clear();
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
        if (const auto* racket = record->racket(held->now.racket); racket != nullptr) {
          if (racket->now.tension_high) made->mostTension = weavelog::in_newtons(*racket->now.tension_high);
          made->inches = racket->now.head_size && racket->now.head_size->unit == weavelog::Unit::square_inch;
        }
      }
      if (event) made->choices = weavelog::bed_strings(work_.ledger(), event);
      auto bed = weavelog::room_bed(*record, job, made->choices, now, weavelog::match_of(work_.ledger(), event, record->person.now, now));
      if (!bed) return weavelog::fail(bed.error());
      made->bed = std::move(*bed);
      const auto layout = weavelog::layout_of(made->bed.setup);
      if (!layout) return weavelog::fail(layout.error());
      made->strings = weavelog::drawn_strings(*layout);
      made->outline = layout->head.drawing();
      made->measured = weavelog::measured_beds(*record, made->choices, weavelog::measured_players(work_.ledger(), book));
      auto figures = weavelog::figures_of(made->bed, made->measured);
      if (!figures) return weavelog::fail(figures.error());
      made->figures = std::move(*figures);
      auto map = weavelog::stiffness_map(made->bed.setup, made->measured.reckoner, made->figures.stiffness);
      if (!map) return weavelog::fail(map.error());
      made->map = std::move(*map);
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

QString BedModel::headSize() const {
  return made_ ? qtext(weavelog::Decimal::rounded(made_->bed.setup.area / (made_->inches ? inch2 : 1), 0).text()) : QString();
}
QString BedModel::headUnit() const {
  return qtext(weavelog::symbol_of(made_ && made_->inches ? weavelog::Unit::square_inch : weavelog::Unit::square_centimetre));
}
int BedModel::mainsCount() const {
  return made_ ? made_->bed.setup.pattern.mains : 0;
}
int BedModel::crossesCount() const {
  return made_ ? made_->bed.setup.pattern.crosses : 0;
}

// --- the same feel

void BedModel::forgetProposal() {
  ++proposalAsked_;
  change_.reset();
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
    case HeadSize:
      change.area = number * (made_->inches ? inch2 : 1);
      break;
    case Pattern: {
      bool mains = false, crosses = false;
      change.pattern = {value.section(u'x', 0, 0).toInt(&mains), value.section(u'x', 1).toInt(&crosses)};
      said = mains && crosses;
      break;
    }
    default:
      said = false;
  }
  if (!said) return forgetProposal();
  change_ = change;
  const bool other = change.area || change.pattern;
  proposing_.work([made = made_, change] { return weavelog::same_feel(made->bed, made->measured, change); },
                  [this, other, asked = ++proposalAsked_](const auto& answer) {
                    if (asked == proposalAsked_ && made_ && !made_->fault) sayProposal(answer, other);
                    emit changed();
                  });
  emit changed();
}

// --- a tone

void BedModel::hear(const QString& hertz, double doubt) {
  const int asked = ++heardAsked_;
  const auto figure = weavelog::Decimal::parse(hertz.toStdString());
  if (!made_ || made_->fault || !figure) {
    heard_.clear();
    emit heardChanged();
    return;
  }
  hearing_.work([made = made_, hz = figure->to_double(),
                 doubt] { return made->measured.reckoner.from_tone(made->bed.setup, hz, doubt > 0 ? doubt : usualDoubt); },
                [this, asked](const auto& answer) {
                  if (asked == heardAsked_ && made_ && !made_->fault) sayHeard(answer);
                  emit changed();
                });
  emit changed();
}

double BedModel::toneNow() const {
  return made_ && !made_->fault ? made_->figures.tone.value : 0;
}

bool BedModel::keepTone(const QString& hertz, const QString& note, const QString& say) {
  const auto record = weavelog::load_player(work_.ledger(), book_);
  if (!record) return work_.commit(weavelog::fail(record.error()), {});
  const auto amount = weavelog::Decimal::parse(hertz.toStdString());
  if (!amount) return work_.commit(weavelog::fail(amount.error()), {});
  weavelog::Reading reading;
  reading.what = weavelog::ReadingKind::tone;
  reading.value = weavelog::Quantity{*amount, weavelog::Unit::hertz};
  reading.at = work_.now();
  reading.by = work_.who().toStdString();
  reading.note = note.toStdString();
  return work_.commit(weavelog::put_reading(*record, job_, reading), say);
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
  return saved_.write(file, QByteArray::fromStdString(csv.text()));
}

// --- and as a sheet

void BedModel::savePdf(const QUrl& file) {
  if (!made_ || made_->fault) return;
  PaperRequest request;
  request.kind = PaperKind::stringBed;
  request.event = work_.event();
  request.language = work_.language();
  request.zone = work_.zone();
  request.now = work_.now();
  request.change = change_;
  if (const auto row = weavelog::find_job(work_.ledger(), book_, job_)) request.jobs.push_back(*row);
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
