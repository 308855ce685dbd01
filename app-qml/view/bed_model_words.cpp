// What the string bed's figures are in words.

#include <QPainterPath>

#include <algorithm>
#include <cmath>

#include "app-qml/view/bed_made.h"
#include "app-qml/view/model_text.h"
#include "core/base/localised.h"
#include "core/bed/bed_words.h"
#include "core/desk/cautions.h"

namespace {

constexpr double hourSeconds = 3600;

QVariantList pair(double at, const QString& text) {
  return {at, text};
}

}  // namespace

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
  title_ = strung_ = matchTime_ = data_ = left_ = gauge_ = unit_ = mapNote_ = QString();
  map_.clear();
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
  for (const std::string& words :
       {weavelog::level_words(work_.language(), figures.correction), weavelog::age_words(work_.language(), made_->measured.ages)})
    if (!words.empty()) data_ += QStringLiteral(" ") + qtext(words);
  if (const std::size_t all = made_->measured.readings, own = made_->measured.own; all > own)
    data_ += QStringLiteral(" ") + tr("%n reading(s) are of other players’ rackets that this device holds.", nullptr, static_cast<int>(all - own));
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
  sayMap();
  sayCurve();
  emit changed();
}

void BedModel::sayMap() {
  const auto& map = made_->map;
  const auto figure = [&](double stiffness) { return number(stiffness / 1000, map.step() > 0 && map.step() < 1000 ? 1 : 0); };
  QVariantList areas, edges, spots;
  QStringList legend;
  for (std::size_t i = 0; i < map.steps.size(); ++i) {
    const auto& step = map.steps[i];
    QPainterPath area, edge;
    area.setFillRule(Qt::WindingFill);
    for (const auto& polygon : step.areas) {
      area.moveTo(polygon.front().x, polygon.front().y);
      for (const auto& corner : polygon) area.lineTo(corner.x, corner.y);
      area.closeSubpath();
    }
    for (const auto& line : step.edges) {
      edge.moveTo(line.from.x, line.from.y);
      edge.lineTo(line.to.x, line.to.y);
    }
    areas.append(QVariant::fromValue(area));
    edges.append(QVariant::fromValue(edge));
    legend.append(i + 1 < map.steps.size() ? tr("%1 to %2").arg(figure(step.from), figure(map.steps[i + 1].from))
                                           : tr("from %1").arg(figure(step.from)));
  }
  for (const auto& spot : map.spots) spots.append(QVariant(QVariantList{spot.at.x, spot.at.y, figure(spot.stiffness.value)}));
  const auto value = [&](std::size_t spot) { return spot < map.spots.size() ? figure(map.spots[spot].stiffness.value) : QString(); };
  map_ = {{"areas", areas},
          {"edges", edges},
          {"spots", spots},
          {"legend", legend},
          {"spoken", tr("In the middle %1 N/mm, near the tip %2, near the throat %3, near the sides %4 and %5 (estimates)")
                         .arg(value(0), value(2), value(4), value(1), value(3))}};
  const auto& middle = map.spots.front().stiffness;
  mapNote_ = tr("Estimates of the stiffness now in N/mm, pressed on a disc of %1 mm radius, as a ball flattens. In the middle %2, nine times of ten "
                "%3 to %4; one place against another is good to %5 %.")
                 .arg(number(map.contact, 0), number(middle.value / 1000, 1), number(middle.low / 1000, 1), number(middle.high / 1000, 1),
                      number(std::ceil(100 * (std::exp(1.6448536 * map.between_sd) - 1)), 0));
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

void BedModel::sayProposal(const weavelog::Outcome<weavelog::Equivalent>& made, bool otherRacket) {
  proposal_.clear();
  if (!made) {
    proposal_ = {{"fault", qtext(made.error().message())}};
  } else {
    const auto tension = [&](const weavelog::Quantity& quantity) { return weavelog::localised(work_.language(), quantity); };
    const auto line = [&](const QString& name, const weavelog::EquivalentTension& one) {
      return tr("%1: estimate %2, nine times of ten %3 to %4; now %5")
          .arg(name, force(one.exact), force(one.low), force(one.high), force(one.before));
    };
    const auto said = [&](double newtons) { return force(newtons).toStdString(); };
    QString caution;
    const double most = std::max(weavelog::in_newtons(made->mains.set).value_or(0), weavelog::in_newtons(made->crosses.set).value_or(0));
    if (!otherRacket && made_->mostTension && most > *made_->mostTension)
      caution = qtext(weavelog::caution_text(work_.language(), weavelog::Caution::tension_over_range));
    const auto fixed = [](const weavelog::EquivalentTension& one) { return one.low == one.high; };
    QStringList lines;
    if (!fixed(made->mains)) lines.append(line(tr("Mains"), made->mains));
    if (!fixed(made->crosses)) lines.append(line(tr("Crosses"), made->crosses));
    lines.append(
        tr("Stiffness of a firm stroke at the match: %1 N/mm, before %2 N/mm").arg(number(made->reached / 1000, 1), number(made->wanted / 1000, 1)));
    // One figure where both are set alike.
    const auto& words = weavelog::bed_words();
    const bool alike = made->mains.set == made->crosses.set && !fixed(made->mains) && !fixed(made->crosses);
    const std::string set =
        alike ? words.say(work_.language(), "equivalent.one",
                          {{"tension", made->mains.set}, {"low", said(made->mains.low)}, {"high", said(made->mains.high)}})
              : words.say(work_.language(), "equivalent.set", {{"mains", tension(made->mains.set)}, {"crosses", tension(made->crosses.set)}});
    proposal_ = {{"set", qtext(set)},
                 {"lines", lines},
                 {"data", qtext(weavelog::data_words(work_.language(), made->from_data, made->readings.of_all) + " " +
                                weavelog::level_words(work_.language(), made->readings))},
                 {"other", otherRacket},
                 {"caution", caution}};
  }
  emit proposalChanged();
}

void BedModel::sayHeard(const weavelog::Outcome<weavelog::BedReckoner::FromTone>& made) {
  heard_.clear();
  if (made) {
    const auto percent = [&](double part) { return number(100 * part, 0); };
    heard_ = {
        {"lines",
         QStringList{
             tr("Mean tension %1, nine times of ten %2 to %3").arg(force(made->tension.value), force(made->tension.low), force(made->tension.high)),
             tr("That is %1 % of what was pulled, %2 to %3 %")
                 .arg(percent(made->of_pulled.value), percent(made->of_pulled.low), percent(made->of_pulled.high)),
             tr("Stiffness in the centre %1 N/mm, %2 to %3")
                 .arg(number(made->stiffness.value / 1000, 1), number(made->stiffness.low / 1000, 1), number(made->stiffness.high / 1000, 1))}}};
  } else {
    heard_ = {{"fault", qtext(made.error().message())}};
  }
  emit heardChanged();
}
