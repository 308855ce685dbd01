#include "app-qml/papers/bed_paper.h"

#include <QStringList>
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "app-qml/papers/chart_marks.h"
#include "app-qml/papers/list_flow.h"
#include "app-qml/papers/list_papers.h"
#include "app-qml/papers/paper_words.h"
#include "core/base/localised.h"
#include "core/bed/bed_words.h"
#include "core/bed/stiffness_map.h"
#include "core/desk/cautions.h"

namespace {

using weavelog::BedEstimate;
using weavelog::Decimal;
using weavelog::Language;
using weavelog::Outcome;
using weavelog::Quantity;
using weavelog::Unit;

constexpr std::size_t mostSheets = 60, mostStrings = 8;
constexpr double hourSeconds = 3600;

// One bed as it goes onto paper.
struct BedSheet {
  weavelog::PlayerRecord record;
  weavelog::EntityId job;
  std::vector<weavelog::BedStringChoice> choices;
  weavelog::RoomBed bed;
  weavelog::MeasuredBeds measured;
  weavelog::BedFigures figures;
  weavelog::StiffnessMap map;
  std::vector<weavelog::BedLeftAt> curve;
};

class BedTeller {
 public:
  BedTeller(const PaperRequest& request, const BedSheet& sheet, ListFlow& flow)
      : request_(request),
        language_(request.language),
        sheet_(sheet),
        flow_(flow),
        one_(weavelog::in_newtons({Decimal{1, 0}, sheet.bed.unit}).value_or(1)) {}

  void tell() {
    flow_.paragraph(title(), true);
    flow_.paragraph(strung());
    tellCautions();
    tellDrawing();
    tellFigures();
    tellLeft();
    tellSameFeel();
    flow_.paragraph(say("bed.maker"));
    flow_.paragraph(say("estimate.health"));
  }

 private:
  [[nodiscard]] QString say(std::string_view key, const weavelog::PhraseArgs& args = {}) const { return paperSay(language_, key, args); }
  [[nodiscard]] QString number(double value, int places) const {
    return words(weavelog::localised(language_, Decimal::rounded(value, static_cast<std::uint8_t>(places))));
  }
  [[nodiscard]] Quantity forceOf(double newtons) const {
    return {Decimal::rounded(newtons / one_, sheet_.bed.unit == Unit::newton ? 0 : 1), sheet_.bed.unit};
  }
  [[nodiscard]] QString force(double newtons) const { return words(weavelog::localised(language_, forceOf(newtons))); }
  [[nodiscard]] QString band(double low, double high, int places) const {
    return say("bed.band", {{"low", Decimal::rounded(low, static_cast<std::uint8_t>(places))},
                            {"high", Decimal::rounded(high, static_cast<std::uint8_t>(places))}});
  }

  [[nodiscard]] QString title() const {
    const auto* job = sheet_.record.job(sheet_.job);
    QStringList parts;
    if (job != nullptr && job->now.tag_number) parts.append(say("statement.tag", {{"number", *job->now.tag_number}}));
    parts.append(words(weavelog::listed_name(sheet_.record.person.now)));
    if (const auto* racket = job != nullptr ? sheet_.record.racket(job->now.racket) : nullptr) {
      QStringList model{words(racket->now.maker), words(racket->now.model)};
      model.removeAll(QString());
      parts.append(model.join(u' '));
      parts.append(words(racket->now.label));
    }
    return joinedOnPaper(parts);
  }

  [[nodiscard]] QString strung() const {
    const auto& bed = sheet_.bed;
    const auto text = [&](const std::string& name, const weavelog::BedStringKind& kind) {
      return apart(name.empty() ? say("bed.string_unnamed") : words(name)) + u' ' + number(kind.gauge, 2) + QStringLiteral("\u00a0mm");
    };
    const QString mains = text(bed.mains_string, bed.setup.mains.kind), crosses = text(bed.crosses_string, bed.setup.crosses.kind);
    return (mains == crosses ? mains : mains + QStringLiteral(" / ") + crosses) + QStringLiteral(", ") +
           say("bed.pulled", {{"mains", forceOf(bed.setup.mains.pulled)}, {"crosses", forceOf(bed.setup.crosses.pulled)}});
  }

  void tellCautions() {
    const auto* job = sheet_.record.job(sheet_.job);
    if (job == nullptr) return;
    const auto caution = [&](weavelog::Caution one) { flow_.paragraph(words("! " + weavelog::caution_text(language_, one))); };
    if (weavelog::doubt_about(sheet_.record, job->now.racket)) caution(weavelog::Caution::cracked_frame);
    const auto* racket = sheet_.record.racket(job->now.racket);
    const auto most = racket != nullptr && racket->now.tension_high ? weavelog::in_newtons(*racket->now.tension_high) : std::nullopt;
    if (most && std::max(sheet_.bed.setup.mains.pulled, sheet_.bed.setup.crosses.pulled) > *most + 0.01)
      caution(weavelog::Caution::tension_over_range);
    if (weavelog::speaks_of_pain(job->now.note) || weavelog::speaks_of_pain(sheet_.record.person.now.note)) caution(weavelog::Caution::arm_pain);
  }

  [[nodiscard]] QString stiffness(double value) const { return number(value / 1000, sheet_.map.step() > 0 && sheet_.map.step() < 1000 ? 1 : 0); }

  void tellDrawing() {
    const auto& map = sheet_.map;
    const auto& middle = map.spots.front().stiffness;
    const Quantity centre{Decimal::rounded(middle.value / 1000, 1), Unit::newton_per_millimetre};
    QStringList notes{say("bed.map"),
                      words(weavelog::bed_words().say(
                          language_, "figure.band",
                          {{"value", centre}, {"low", Decimal::rounded(middle.low / 1000, 1)}, {"high", Decimal::rounded(middle.high / 1000, 1)}})),
                      say("bed.map_note", {{"radius", Decimal::rounded(map.contact, 0)},
                                           {"percent", Decimal::rounded(std::ceil(100 * (std::exp(1.6448536 * map.between_sd) - 1)), 0)}}),
                      words(weavelog::data_words(language_, sheet_.figures.from_data, sheet_.figures.readings))};
    for (const std::string& more : {weavelog::level_words(language_, sheet_.figures.correction), weavelog::age_words(language_, sheet_.measured.ages)})
      if (!more.empty()) notes.append(words(more));
    const QStringList assumed = assumedWords();
    if (!assumed.isEmpty()) notes.append(say("bed.assumed") + QChar::LineSeparator + assumed.join(QChar::LineSeparator));
    const bool beside = flow_.width() > 120;
    const qreal height = beside ? 88 : std::min(100.0, flow_.width() * 1.4);
    flow_.figure(height, [&](PaperPage& page, const QRectF& box) {
      const QRectF face(box.left(), box.top(), beside ? 70 : box.width(), box.height());
      drawBed(page, face);
      if (!beside) return;
      const QRectF room(face.right() + 6, box.top(), box.right() - face.right() - 6, box.height());
      page.put(room, notes.join(QString(QChar::LineSeparator) + QChar::LineSeparator),
               {.most = 3.3, .least = 2.2, .lines = 40, .align = Qt::AlignLeft | Qt::AlignVCenter});
    });
    if (!beside)
      for (const QString& note : notes) flow_.paragraph(note);
  }

  void drawBed(PaperPage& page, const QRectF& face) const {
    const auto layout = weavelog::layout_of(sheet_.bed.setup);
    if (!layout) return;
    const qreal unit = std::min((face.width() - 3) / (2 * layout->head.half_width()), (face.height() - 3) / (2 * layout->head.half_length()));
    const auto at = [&](const weavelog::BedPoint& point) { return face.center() + QPointF(unit * point.x, -unit * point.y); };
    const auto through = [&](const std::vector<weavelog::BedSegment>& segments) {
      QPainterPath path;
      for (const auto& one : segments) {
        path.moveTo(at(one.from));
        path.lineTo(at(one.to));
      }
      return path;
    };
    page.draw(through(weavelog::drawn_strings(*layout)), 0.1);
    QPolygonF outline;
    for (const auto& point : layout->head.drawing(180)) outline << at(point);
    QPainterPath frame;
    frame.addPolygon(outline);
    frame.closeSubpath();
    page.draw(frame, 1.2);
    for (const auto& step : sheet_.map.steps) page.draw(through(step.edges), 0.45);
    // Each line is named once, all round so that names do not meet.
    constexpr std::array angles{20.0, 68.0, 112.0, 160.0, 200.0, 248.0};
    for (std::size_t i = 1; i < sheet_.map.steps.size(); ++i) {
      const double towards = angles[i % angles.size()] * std::numbers::pi / 180;
      const weavelog::BedSegment* nearest = nullptr;
      double best = 10;
      for (const auto& edge : sheet_.map.steps[i].edges) {
        const double off = std::abs(std::remainder(std::atan2(edge.from.y, edge.from.x) - towards, 2 * std::numbers::pi));
        if (off < best) {
          best = off;
          nearest = &edge;
        }
      }
      if (nearest != nullptr) plate(page, at(nearest->from), stiffness(sheet_.map.steps[i].from), 2.2);
    }
    for (const auto& spot : sheet_.map.spots) plate(page, at(spot.at), stiffness(spot.stiffness.value), 2.8, true);
  }

  void tellFigures() {
    const auto& f = sheet_.figures;
    std::vector<QStringList> rows;
    const auto row = [&](const char* key, const BedEstimate& now, const BedEstimate& match, double by, int places, const QString& of) {
      const auto cell = [&](const BedEstimate& one) {
        return stackedOnPaper({number(one.value / by, places) + QStringLiteral("\u00a0") + of, band(one.low / by, one.high / by, places)});
      };
      rows.push_back({say(key), cell(now), cell(match)});
    };
    const int places = sheet_.bed.unit == Unit::newton ? 0 : 1;
    const QString unit = words(std::string(weavelog::symbol_of(sheet_.bed.unit)));
    row("bed.stiffness", f.stiffness, f.stiffness_match, 1000, 1, QStringLiteral("N/mm"));
    row("bed.tone", f.tone, f.tone_match, 1, 0, QStringLiteral("Hz"));
    row("bed.mains", f.mains, f.mains_match, one_, places, unit);
    row("bed.crosses", f.crosses, f.crosses_match, one_, places, unit);
    flow_.heading(say("bed.figures"));
    flow_.table({{say("column.what"), 40, true},
                 {say("bed.now"), 30, false, Qt::AlignRight},
                 {say("bed.at_match", {{"when", weavelog::Moment{sheet_.bed.match_at, request_.zone}}}), 30, false, Qt::AlignRight}},
                rows);
    flow_.paragraph(say("estimate.bands"));
  }

  [[nodiscard]] QStringList assumedWords() const {
    QStringList out;
    for (const auto gap : sheet_.bed.assumed) {
      const auto& setup = sheet_.bed.setup;
      out.append(say("bed.assumed." + std::string(weavelog::name_of(gap)), {{"area", Decimal::rounded(setup.area, 0)},
                                                                            {"mains", std::int64_t{setup.pattern.mains}},
                                                                            {"crosses", std::int64_t{setup.pattern.crosses}},
                                                                            {"when", weavelog::Moment{sheet_.bed.match_at, request_.zone}}}));
    }
    return out;
  }

  void tellLeft() {
    const double match = sheet_.bed.at_match().after;
    const auto after = std::find_if(sheet_.curve.begin(), sheet_.curve.end(), [&](const auto& point) { return point.seconds >= match; });
    const auto& left = (after == sheet_.curve.end() ? sheet_.curve.back() : *after).left;
    flow_.heading(say("bed.left"));
    flow_.figure(40, [&](PaperPage& page, const QRectF& box) { drawCurve(page, box, match); });
    flow_.paragraph(words(weavelog::bed_words().say(language_, "relaxation.left",
                                                    {{"percent", Decimal::rounded(100 * left.value, 0)},
                                                     {"low", Decimal::rounded(100 * left.low, 0)},
                                                     {"high", Decimal::rounded(100 * left.high, 0)}})));
    flow_.paragraph(say("bed.left_note"));
  }

  void drawCurve(PaperPage& page, const QRectF& box, double match) const {
    const auto& curve = sheet_.curve;
    const QRectF face(box.left() + 13, box.top() + 5, box.width() - 17, box.height() - 11);
    double least = 1;
    for (const auto& point : curve) least = std::min(least, point.left.low);
    const double step = least < 0.75 ? 0.1 : 0.05, floor = std::floor(least / step + 1e-9) * step;
    const double first = std::log(curve.front().seconds), last = std::log(curve.back().seconds);
    const auto x = [&](double seconds) { return face.left() + face.width() * std::clamp((std::log(seconds) - first) / (last - first), 0.0, 1.0); };
    const auto y = [&](double part) { return face.top() + face.height() * std::clamp((1 - part) / (1 - floor), 0.0, 1.0); };
    for (double part = 1; part > floor - 1e-9; part -= step) {
      ruled(page, {face.left(), y(part)}, {face.right(), y(part)}, 0.1);
      axisWords(page, box.left(), 12, y(part), number(100 * part, 0) + QStringLiteral(" %"), Qt::AlignRight);
    }
    constexpr std::array times{std::pair{60.0, "bed.time.minute"},          std::pair{600.0, "bed.time.ten_minutes"},
                               std::pair{hourSeconds, "bed.time.hour"},     std::pair{6 * hourSeconds, "bed.time.six_hours"},
                               std::pair{24 * hourSeconds, "bed.time.day"}, std::pair{7 * 24 * hourSeconds, "bed.time.week"}};
    for (const auto& [seconds, key] : times) {
      if (seconds < curve.front().seconds || seconds > curve.back().seconds * 1.001) continue;
      ruled(page, {x(seconds), face.top()}, {x(seconds), face.bottom()}, 0.1);
      axisWords(page, x(seconds) - 10, seconds > curve.back().seconds * 0.9 ? 10 + face.right() - x(seconds) + 4 : 20, face.bottom() + 3, say(key),
                seconds > curve.back().seconds * 0.9 ? Qt::AlignRight : Qt::AlignHCenter);
    }
    const auto line = [&](auto value, qreal thickness, bool dashed) {
      QPainterPath path(QPointF(x(curve.front().seconds), y(value(curve.front().left))));
      for (const auto& point : curve) path.lineTo(x(point.seconds), y(value(point.left)));
      page.draw(path, thickness, dashed);
    };
    line([](const BedEstimate& one) { return one.value; }, 0.6, false);
    line([](const BedEstimate& one) { return one.low; }, 0.25, true);
    line([](const BedEstimate& one) { return one.high; }, 0.25, true);
    if (match > curve.front().seconds) {
      ruled(page, {x(match), face.top() - 1}, {x(match), face.bottom()}, 0.4);
      axisWords(page, x(match) - 15, 30, face.top() - 3, say("bed.match"), Qt::AlignHCenter);
    }
  }

  [[nodiscard]] QString changeWords(const weavelog::BedChange& change) const {
    QStringList parts;
    if (change.string)
      parts.append(words(change.string->name) +
                   (change.gauge ? QString() : u' ' + number(change.string->kind.gauge, 2) + QStringLiteral("\u00a0mm")));
    if (change.string && !change.string->material_said) parts.append(say("bed.change.material_unsaid"));
    if (change.gauge) parts.append(say("bed.change.gauge", {{"gauge", Quantity{Decimal::rounded(*change.gauge, 2), Unit::millimetre}}}));
    if (change.pre_stretch)
      parts.append(say("bed.change.pre_stretch", {{"percent", Quantity{Decimal::rounded(*change.pre_stretch, 0), Unit::percent}}}));
    const auto more = [&](double newtons) { return (newtons > 0 ? QStringLiteral("+") : QString()) + force(newtons); };
    if (change.mains_more != 0) parts.append(say("bed.change.mains", {{"more", more(change.mains_more).toStdString()}}));
    if (change.crosses_more != 0) parts.append(say("bed.change.crosses", {{"more", more(change.crosses_more).toStdString()}}));
    if (change.area) parts.append(say("bed.change.head", {{"area", Quantity{Decimal::rounded(*change.area, 0), Unit::square_centimetre}}}));
    if (change.pattern)
      parts.append(say("bed.change.pattern", {{"mains", std::int64_t{change.pattern->first}}, {"crosses", std::int64_t{change.pattern->second}}}));
    if (change.of == weavelog::BedChange::Of::mains) parts.append(say("bed.change.only_mains"));
    if (change.of == weavelog::BedChange::Of::crosses) parts.append(say("bed.change.only_crosses"));
    return parts.join(QStringLiteral(", "));
  }

  // What was asked for, then other strings of the stock, a thinner and a thicker gauge, and tighter mains.
  [[nodiscard]] std::vector<weavelog::BedChange> changes() const {
    std::vector<weavelog::BedChange> out;
    if (request_.change) out.push_back(*request_.change);
    const auto& held = sheet_.bed;
    std::size_t strings = 0;
    for (const auto& choice : sheet_.choices) {
      auto string = choice;
      if (!string.gauge_said) string.kind.gauge = held.setup.mains.kind.gauge;
      if (string.name == held.mains_string && string.kind.gauge == held.setup.mains.kind.gauge && held.mains_string == held.crosses_string) continue;
      if (request_.change && request_.change->string && request_.change->string->name == string.name &&
          request_.change->string->kind == string.kind && request_.change->of == weavelog::BedChange::Of::both)
        continue;
      if (++strings > mostStrings) break;
      weavelog::BedChange change;
      change.string = string;
      out.push_back(change);
    }
    for (const double by : {-0.05, 0.05}) {
      const double gauge = held.setup.mains.kind.gauge + by;
      if (gauge < 0.9 || gauge > 1.6) continue;
      weavelog::BedChange change;
      change.gauge = gauge;
      out.push_back(change);
    }
    weavelog::BedChange tighter;
    tighter.mains_more = one_ * (held.unit == Unit::pound_force ? 2 : held.unit == Unit::newton ? 10 : 1);
    out.push_back(tighter);
    return out;
  }

  void tellSameFeel() {
    std::vector<QStringList> rows;
    for (const auto& change : changes()) {
      const auto made = weavelog::same_feel(sheet_.bed, sheet_.measured, change);
      if (!made) {
        rows.push_back({changeWords(change), QStringLiteral("–"), words(made.error().what)});
        continue;
      }
      const auto bands = [&](const char* key, const weavelog::EquivalentTension& one) {
        return one.low == one.high ? QString() : say(key, {{"low", forceOf(one.low)}, {"high", forceOf(one.high)}});
      };
      rows.push_back(
          {changeWords(change),
           words(weavelog::localised(language_, made->mains.set)) + QStringLiteral(" / ") + words(weavelog::localised(language_, made->crosses.set)),
           stackedOnPaper({bands("bed.mains_band", made->mains), bands("bed.crosses_band", made->crosses)})});
    }
    flow_.heading(say("bed.same_feel"));
    flow_.paragraph(say("bed.same_feel_note"));
    flow_.table({{say("bed.change"), 34}, {say("bed.set"), 28, true}, {say("bed.bands"), 38}}, rows);
  }

  const PaperRequest& request_;
  const Language& language_;
  const BedSheet& sheet_;
  ListFlow& flow_;
  double one_;  // N in one of the player's units
};

Outcome<BedSheet> sheetOf(const weavelog::Ledger& ledger, const PaperRequest& request, const weavelog::JobRow& row,
                          const std::vector<weavelog::BedStringChoice>& choices) {
  auto record = weavelog::load_player(ledger, row.book);
  if (!record) return weavelog::fail(record.error());
  const auto match = weavelog::match_of(ledger, request.event, record->person.now, request.now);
  auto bed = weavelog::room_bed(*record, row.job, choices, request.now, match);
  if (!bed) return weavelog::fail(bed.error());
  auto measured = weavelog::measured_beds(*record, choices, weavelog::measured_players(ledger, row.book));
  auto figures = weavelog::figures_of(*bed, measured);
  if (!figures) return weavelog::fail(figures.error());
  auto map = weavelog::stiffness_map(bed->setup, measured.reckoner, figures->stiffness);
  if (!map) return weavelog::fail(map.error());
  auto curve = weavelog::left_over_time(*bed, measured, bed->at_match().after * 1.5, 65);
  if (!curve) return weavelog::fail(curve.error());
  return BedSheet{std::move(*record),  row.job,         choices,          std::move(*bed), std::move(measured),
                  std::move(*figures), std::move(*map), std::move(*curve)};
}

}  // namespace

Outcome<std::vector<PaperPage>> bedSheets(const weavelog::Ledger& ledger, const PaperRequest& request, const PaperSize& size) {
  if (request.jobs.empty())
    return weavelog::fail(weavelog::FaultCode::not_found, "there is no racket whose string bed could be told", {},
                          "take a racket in first, or choose others");
  if (request.jobs.size() > mostSheets)
    return weavelog::fail(weavelog::FaultCode::bad_input, "these are more than 60 string beds", {}, "choose fewer rackets");
  const auto choices = weavelog::bed_strings(ledger, request.event);
  std::vector<PaperPage> pages;
  for (const auto& row : request.jobs) {
    const auto sheet = sheetOf(ledger, request, row, choices);
    if (!sheet && request.jobs.size() == 1) return weavelog::fail(sheet.error());
    ListFlow flow(size, paperSay(request.language, "paper.string_bed"), belowTitle(ledger, request, request.language), pageNumbers(request.language));
    if (sheet) {
      BedTeller(request, *sheet, flow).tell();
    } else {  // of several, one that can't be told is not left out in silence
      const QString tag = row.tag_number ? paperSay(request.language, "statement.tag", {{"number", *row.tag_number}}) : QString();
      flow.paragraph(joinedOnPaper({tag, words(row.family_name + " " + row.given_name)}), true);
      flow.paragraph(words(sheet.error().message()));
    }
    auto made = flow.take();
    std::move(made.begin(), made.end(), std::back_inserter(pages));
  }
  return pages;
}
