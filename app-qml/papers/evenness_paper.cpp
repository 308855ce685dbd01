#include "app-qml/papers/evenness_paper.h"

#include <QStringList>
#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numbers>

#include "app-qml/papers/chart_marks.h"
#include "app-qml/papers/list_flow.h"
#include "app-qml/papers/list_papers.h"
#include "app-qml/papers/paper_words.h"
#include "core/base/localised.h"
#include "core/desk/room_quality.h"

namespace {

using weavelog::Decimal;
using weavelog::Language;
using weavelog::Watched;

constexpr std::size_t mostPoints = 180, pointsInRow = 60, mostAlarms = 12;
constexpr int lineSteps = 16;

Decimal tenth(double value, int places = 1) {
  return Decimal::rounded(std::clamp(value, -1e6, 1e6), static_cast<std::uint8_t>(places));
}

// Marks as on the screen: a dot, with a bar through it beyond the tolerance; a ring where there is no figure; alarms as diamond, triangle, square.
void markAt(PaperPage& page, QPointF at, const std::optional<Watched>& alarm, bool beyond, bool told) {
  constexpr qreal small = 0.85, large = 1.5, bar = 1.6;
  if (!alarm) {
    QPolygonF round;  // an ellipse of so few millimetres would be flattened to a diamond
    for (int i = 0; i < 24; ++i) round << at + small * QPointF(std::cos(i * std::numbers::pi / 12), std::sin(i * std::numbers::pi / 12));
    if (told) {
      page.fill(round);
    } else {
      QPainterPath ring;
      ring.addPolygon(round);
      ring.closeSubpath();
      page.clear(QRectF(at - QPointF(0.45, 0.45), QSizeF(0.9, 0.9)));
      page.draw(ring, 0.2);
    }
    if (beyond) ruled(page, at - QPointF(bar, 0), at + QPointF(bar, 0), 0.5);
    return;
  }
  QPolygonF shape;
  if (*alarm == Watched::racket)
    shape << at + QPointF(0, -large) << at + QPointF(large, 0) << at + QPointF(0, large) << at + QPointF(-large, 0);
  else if (*alarm == Watched::machine)
    shape << at + QPointF(0, -large) << at + QPointF(large, 1.2) << at + QPointF(-large, 1.2);
  else
    shape << at + QPointF(-1.2, -1.2) << at + QPointF(1.2, -1.2) << at + QPointF(1.2, 1.2) << at + QPointF(-1.2, 1.2);
  page.fill(shape);
}

class EvennessTeller {
 public:
  EvennessTeller(const weavelog::RoomQuality& room, const PaperRequest& request, ListFlow& flow)
      : room_(room), request_(request), language_(request.language), flow_(flow) {
    for (const auto& alarm : room_.alarms()) {
      auto [held, fresh] = marks_.emplace(alarm.racket, alarm.alarm.watched);
      if (!fresh && held->second == Watched::racket) held->second = alarm.alarm.watched;
    }
    for (std::size_t i = 0; i < room_.rackets().size(); ++i) {
      const auto& one = room_.rackets()[i];
      const Watched kind = request_.watched;
      if (kind == Watched::racket || (kind == Watched::machine ? one.machine : one.stringer) == request_.watchedName) shown_.push_back(i);
    }
  }

  [[nodiscard]] bool empty() const { return shown_.empty(); }

  void tell() {
    if (request_.watched != Watched::racket)
      flow_.paragraph(say(request_.watched == Watched::machine ? "even.machine" : "even.stringer", {{"name", request_.watchedName}}), true);
    tellChart();
    tellAlarms();
    tellVariance();
    tellMachines();
    tellRackets();
    if (!room_.left_out().empty()) {
      flow_.heading(say("even.left_out"));
      for (const auto& fault : room_.left_out()) flow_.paragraph(words(fault.message()));
    }
  }

 private:
  [[nodiscard]] QString say(std::string_view key, const weavelog::PhraseArgs& args = {}) const { return paperSay(language_, key, args); }
  [[nodiscard]] QString qualitySay(std::string_view key, const weavelog::PhraseArgs& args) const {
    return words(weavelog::quality_words().say(language_, key, args));
  }
  [[nodiscard]] QString number(double value, int places = 1) const { return words(weavelog::localised(language_, tenth(value, places))); }
  [[nodiscard]] QString signedPercent(double value) const {
    return (value > 0 ? QStringLiteral("+") : QString()) + number(value) + QStringLiteral("\u00a0%");
  }
  [[nodiscard]] static bool told(const weavelog::QualityRacket& one) { return one.deviation.against != weavelog::Against::nothing; }
  [[nodiscard]] std::optional<Watched> markOf(std::size_t racket) const {
    const auto mark = marks_.find(racket);
    if (mark == marks_.end()) return std::nullopt;
    const bool ofKind = request_.watched == Watched::racket || mark->second == request_.watched || mark->second == Watched::racket;
    return ofKind ? std::optional(mark->second) : std::nullopt;
  }

  void tellChart() {
    std::vector<std::size_t> points = shown_;
    if (points.size() > mostPoints) points.erase(points.begin(), points.end() - static_cast<std::ptrdiff_t>(mostPoints));
    flow_.heading(say("even.chart"));
    flow_.paragraph(say("even.chart_note", {{"n", static_cast<std::int64_t>(points.size())}, {"all", static_cast<std::int64_t>(shown_.size())}}));
    const double tolerance = room_.rules().tolerance, limit = 3 * room_.scatter().percent;
    double reach = std::max(1.3 * tolerance, 1.15 * limit);
    for (const std::size_t i : points)
      if (told(room_.rackets()[i])) reach = std::max(reach, 1.1 * std::fabs(room_.rackets()[i].deviation.percent));
    perRow_ = std::clamp<std::size_t>(points.size(), 20, pointsInRow);
    for (std::size_t from = 0; from < points.size(); from += pointsInRow) {
      const std::vector<std::size_t> row(points.begin() + static_cast<std::ptrdiff_t>(from),
                                         points.begin() + static_cast<std::ptrdiff_t>(std::min(points.size(), from + pointsInRow)));
      flow_.figure(44, [&](PaperPage& page, const QRectF& box) { drawRow(page, box, row, tolerance, limit, reach); });
    }
    flow_.figure(10, [&](PaperPage& page, const QRectF& box) { drawLegend(page, box); });
    const auto& scatter = room_.scatter();
    flow_.paragraph(say(scatter.readings > 0 ? "even.scatter" : "even.scatter_assumed",
                        {{"percent", tenth(scatter.percent)}, {"n", static_cast<std::int64_t>(scatter.readings)}}));
    const auto capability = room_.capability(request_.watched, request_.watchedName);
    if (capability)
      flow_.paragraph(say("even.capability", {{"outside", tenth(100 * capability->outside, 0)},
                                              {"tolerance", tenth(tolerance, 2).trimmed()},
                                              {"low", tenth(100 * capability->outside_band.low, 0)},
                                              {"high", tenth(100 * capability->outside_band.high, 0)},
                                              {"n", static_cast<std::int64_t>(capability->count)},
                                              {"seen", static_cast<std::int64_t>(capability->seen_outside)}}));
    else
      flow_.paragraph(say("even.no_capability"));
    flow_.paragraph(say("estimate.health"));
  }

  void drawRow(PaperPage& page, const QRectF& box, const std::vector<std::size_t>& row, double tolerance, double limit, double reach) const {
    const QRectF face(box.left() + 15, box.top() + 2, box.width() - 17, box.height() - 7);
    const auto y = [&](double percent) { return face.center().y() - percent / reach * face.height() / 2; };
    const auto x = [&](std::size_t at) {
      return face.left() + 2 + (face.width() - 4) * (static_cast<double>(at) + 0.5) / static_cast<double>(perRow_);
    };
    page.frame(face, 0.15);
    ruled(page, {face.left(), y(0)}, {face.right(), y(0)}, 0.2);
    axisWords(page, box.left(), 14, y(0), QStringLiteral("0"), Qt::AlignRight);
    const bool both = std::fabs(limit - tolerance) / reach * face.height() / 2 > 3.2;
    for (const double side : {1.0, -1.0}) {
      ruled(page, {face.left(), y(side * tolerance)}, {face.right(), y(side * tolerance)}, 0.35);
      ruled(page, {face.left(), y(side * limit)}, {face.right(), y(side * limit)}, 0.25, true);
      axisWords(page, box.left(), 14, y(side * tolerance), signedPercent(side * tolerance), Qt::AlignRight);
      if (both) axisWords(page, box.left(), 14, y(side * limit), signedPercent(side * limit), Qt::AlignRight);
    }
    if (request_.watched != Watched::racket) {
      QPainterPath path;
      for (std::size_t i = 0; i < row.size(); ++i) {
        const auto& one = room_.rackets()[row[i]];
        const auto& average = request_.watched == Watched::machine ? one.machine_average : one.stringer_average;
        if (!average) continue;
        if (path.isEmpty())
          path.moveTo(x(i), y(average->value));
        else
          path.lineTo(x(i), y(average->value));
      }
      page.draw(path, 0.6);
    }
    for (std::size_t i = 0; i < row.size(); ++i) {
      const auto& one = room_.rackets()[row[i]];
      const double percent = told(one) ? one.deviation.percent : 0;
      markAt(page, {x(i), y(percent)}, markOf(row[i]), told(one) && std::fabs(percent) > tolerance, told(one));
      if (i % 5 == 0 && one.tag) axisWords(page, x(i) - 6, 12, face.bottom() + 2.5, QString::number(*one.tag), Qt::AlignHCenter);
    }
  }

  void drawLegend(PaperPage& page, const QRectF& box) const {
    struct Line {
      std::optional<Watched> alarm;
      bool beyond, told;
      const char* key;
    };
    constexpr int columns = 3;
    const std::array lines{Line{{}, false, true, "even.mark.within"},
                           Line{{}, true, true, "even.mark.beyond"},
                           Line{{}, false, false, "even.mark.nothing"},
                           Line{Watched::racket, false, true, "even.mark.racket"},
                           Line{Watched::machine, false, true, "even.mark.machine"},
                           Line{Watched::stringer, false, true, "even.mark.stringer"}};
    for (std::size_t i = 0; i < lines.size(); ++i) {
      const QPointF at(box.left() + 2 + box.width() / columns * static_cast<double>(i % columns),
                       box.top() + 2.5 + 5 * static_cast<double>(i / columns));
      markAt(page, at, lines[i].alarm, lines[i].beyond, lines[i].told);
      axisWords(page, at.x() + 3, box.width() / columns - 6, at.y(), say(lines[i].key), Qt::AlignLeft);
    }
  }

  void tellAlarms() {
    flow_.heading(say("even.alarms"));
    std::vector<QStringList> rows;
    const auto& all = room_.alarms();
    for (std::size_t n = 0; n < std::min(all.size(), mostAlarms); ++n) {
      const auto& one = all[all.size() - 1 - n];
      const auto& racket = room_.rackets()[one.racket];
      const auto& alarm = one.alarm;
      const auto half = tenth((alarm.band.high - alarm.band.low) / 2);
      const QString what = say(alarm.watched == Watched::racket    ? "even.alarm.racket"
                               : alarm.watched == Watched::machine ? "even.alarm.machine"
                                                                   : "even.alarm.stringer",
                               {{"who", (racket.tag ? std::to_string(*racket.tag) + " " : std::string()) + racket.name},
                                {"name", alarm.name},
                                {"percent", signedPercent(alarm.percent).toStdString()},
                                {"band", half},
                                {"n", static_cast<std::int64_t>(alarm.rackets)}});
      // What one racket set off stands together.
      if (n > 0 && all[all.size() - n].racket == one.racket) {
        rows.back()[1] = stackedOnPaper({what, rows.back()[1]});
        continue;
      }
      QStringList why;
      const auto suspect = room_.suspect(language_, one.racket);
      if (!one.causes.findings.empty()) {
        const auto& first = one.causes.findings.front();
        why.append(words(weavelog::evidence_words(language_, suspect, first)));
        QStringList causes;
        for (const auto& finding : one.causes.findings) {
          if (causes.size() == 3 || (!causes.isEmpty() && finding.chance < 0.05)) break;
          causes.append(words(weavelog::cause_words(language_, finding.cause)) + QStringLiteral(" ") + number(100 * finding.chance, 0) +
                        QStringLiteral("\u00a0%"));
        }
        why.append(say("even.causes", {{"causes", causes.join(QStringLiteral(", ")).toStdString()}}));
        const bool either =
            one.causes.machine_or_stringer && (first.cause == weavelog::Cause::machine_calibration || first.cause == weavelog::Cause::stringer);
        why.append(either ? qualitySay("together", {{"machine", suspect.machine}, {"stringer", suspect.stringer}})
                          : words(weavelog::advice_words(language_, suspect, first)));
      }
      rows.push_back({timeOnPaper(language_, racket.at, request_.zone), what, stackedOnPaper(why)});
    }
    if (rows.empty()) {
      flow_.paragraph(say("even.no_alarms"));
      return;
    }
    flow_.table({{say("column.time"), 20}, {say("column.what"), 32, true}, {say("even.why"), 60}}, rows);
    if (all.size() > mostAlarms) flow_.paragraph(say("even.older", {{"n", static_cast<std::int64_t>(all.size() - mostAlarms)}}));
  }

  void tellVariance() {
    if (room_.variance().empty()) return;
    flow_.heading(say("even.variance"));
    for (const auto& part : room_.variance()) {
      using By = weavelog::VariancePart::By;
      flow_.paragraph(say("even.variance_part", {{"by", std::string(part.by == By::stringer  ? "stringer"
                                                                    : part.by == By::machine ? "machine"
                                                                                             : "frame")},
                                                 {"percent", tenth(100 * part.share, 0)},
                                                 {"low", tenth(100 * part.band.low, 0)},
                                                 {"high", tenth(100 * part.band.high, 0)},
                                                 {"n", static_cast<std::int64_t>(part.groups)},
                                                 {"differ", std::string(part.chance < 0.01   ? "clearly"
                                                                        : part.chance < 0.05 ? "seem"
                                                                                             : "no")}}));
    }
  }

  void tellMachines() {
    if (room_.machines().empty()) return;
    flow_.heading(say("even.machines"));
    for (const auto& machine : room_.machines()) {
      flow_.paragraph(say("even.machine", {{"name", machine.name}}), true);
      const auto day = [&](weavelog::UnixMs at) { return weavelog::Moment{at, request_.zone, weavelog::Moment::Form::day}; };
      if (!machine.calibration) {
        flow_.paragraph(
            say(machine.readings.empty() ? "even.no_pulls" : "even.few_pulls", {{"n", static_cast<std::int64_t>(machine.readings.size())}}));
      } else {
        const auto& line = *machine.calibration;
        flow_.figure(52, [&](PaperPage& page, const QRectF& box) { drawLine(page, box, machine); });
        const auto pull = [&](double value) { return weavelog::Quantity{tenth(std::max(0.0, value)), machine.unit}; };
        if (const auto off = line.error_at(line.reference()))
          flow_.paragraph(say("even.off", {{"reference", pull(line.reference())},
                                           {"percent", signedPercent(off->percent).toStdString()},
                                           {"band", tenth((off->band.high - off->band.low) / 2)},
                                           {"tolerance", tenth(line.options().tolerance, 2).trimmed()}}));
        const double wanted = std::round(line.reference() * 2) / 2;
        if (const auto setting = line.setting_for(wanted))
          flow_.paragraph(setting->needed ? qualitySay("calibration.corrected", {{"wanted", pull(wanted)},
                                                                                 {"set", pull(setting->set)},
                                                                                 {"level", std::int64_t{95}},
                                                                                 {"low", pull(setting->band.low)},
                                                                                 {"high", pull(setting->band.high)}})
                                          : qualitySay("calibration.none", {{"wanted", pull(wanted)}}));
        if (line.is_bent()) flow_.paragraph(qualitySay("calibration.curved", {}));
      }
      if (machine.due)
        flow_.paragraph(*machine.due < request_.now ? qualitySay("calibration.overdue", {{"day", day(*machine.due)}})
                                                    : qualitySay("calibration.due", {{"day", day(*machine.due)},
                                                                                     {"why", std::string(machine.due_by_drift ? "drift" : "age")}}));
    }
  }

  // The pulls of the newest day against what was set, per cent off, and the line through them with its 95 % band.
  void drawLine(PaperPage& page, const QRectF& box, const weavelog::MachineQuality& machine) const {
    const auto& line = *machine.calibration;
    const auto range = line.straight().range();
    const double room = std::max(0.5, 0.08 * (range.high - range.low)), low = range.low - room, high = range.high + room;
    const double tolerance = line.options().tolerance;
    double reach = 1.5 * tolerance;
    std::vector<QPointF> points;
    const auto utcDay = [](weavelog::UnixMs at) { return at / 86'400'000; };
    for (const auto& reading : machine.readings) {
      if (!line.sessions().empty() && (!reading.at || utcDay(*reading.at) != utcDay(line.sessions().back().at))) continue;
      points.emplace_back(reading.set, 100 * (reading.pulled / reading.set - 1));
      reach = std::max(reach, 1.15 * std::fabs(points.back().y()));
    }
    const QRectF face(box.left() + 15, box.top() + 2, std::min(120.0, box.width() - 17), box.height() - 9);
    const auto at = [&](double set, double percent) {
      return QPointF(face.left() + (set - low) / (high - low) * face.width(),
                     face.center().y() - std::clamp(percent / reach, -1.0, 1.0) * face.height() / 2);
    };
    page.frame(face, 0.15);
    for (const double percent : {0.0, tolerance, -tolerance}) {
      ruled(page, at(low, percent), at(high, percent), percent == 0 ? 0.2 : 0.35);
      axisWords(page, box.left(), 14, at(low, percent).y(), percent == 0 ? QStringLiteral("0") : signedPercent(percent), Qt::AlignRight);
    }
    const auto set = [&](double value) { return words(weavelog::localised(language_, weavelog::Quantity{tenth(value), machine.unit})); };
    axisWords(page, at(range.low, 0).x() - 15, 30, face.bottom() + 3, set(range.low), Qt::AlignHCenter);
    axisWords(page, at(range.high, 0).x() - 15, 30, face.bottom() + 3, set(range.high), Qt::AlignHCenter);
    QPainterPath middle, lower, upper;
    for (int i = 0; i <= lineSteps; ++i) {
      const double where = range.low + (range.high - range.low) * i / lineSteps;
      const auto off = line.error_at(where);
      if (!off) continue;
      for (const auto& [path, percent] : {std::pair{&middle, off->percent}, std::pair{&lower, off->band.low}, std::pair{&upper, off->band.high}}) {
        if (path->elementCount() == 0)
          path->moveTo(at(where, percent));
        else
          path->lineTo(at(where, percent));
      }
    }
    page.draw(middle, 0.6);
    page.draw(lower, 0.25, true);
    page.draw(upper, 0.25, true);
    for (const QPointF& point : points) {
      QPainterPath cross;
      const QPointF centre = at(point.x(), point.y());
      cross.moveTo(centre + QPointF(-1, -1));
      cross.lineTo(centre + QPointF(1, 1));
      cross.moveTo(centre + QPointF(-1, 1));
      cross.lineTo(centre + QPointF(1, -1));
      page.draw(cross, 0.35);
    }
    if (box.right() - face.right() > 30)
      page.put(QRectF(face.right() + 4, face.top(), box.right() - face.right() - 4, face.height()), say("even.line_note"),
               {.most = 3, .least = 2, .lines = 12, .align = Qt::AlignLeft | Qt::AlignVCenter});
  }

  void tellRackets() {
    flow_.heading(say("even.rackets"));
    std::vector<QStringList> rows;
    for (const std::size_t i : shown_) {
      const auto& one = room_.rackets()[i];
      const auto mark = markOf(i);
      const double band = 1.96 * room_.scatter().percent * one.deviation.doubt;
      const QString off = told(one) ? signedPercent(one.deviation.percent) + QStringLiteral(" ± ") + number(band) : QStringLiteral("–");
      QStringList signs;
      if (!told(one)) signs.append(say("even.mark.nothing"));
      if (told(one) && std::fabs(one.deviation.percent) > room_.rules().tolerance) signs.append(say("even.sign.beyond"));
      if (mark)
        signs.append(say(*mark == Watched::racket ? "even.mark.racket" : *mark == Watched::machine ? "even.mark.machine" : "even.mark.stringer"));
      rows.push_back({timeOnPaper(language_, one.at, request_.zone), one.tag ? QString::number(*one.tag) : QString(), words(one.name),
                      saidOnPaper(language_, one.read), off, stackedOnPaper({words(one.stringer), words(one.machine)}), stackedOnPaper(signs)});
    }
    flow_.table({{say("column.time"), 24},
                 {say("column.tag"), 14, true, Qt::AlignRight},
                 {say("column.player"), 32},
                 {say("even.read"), 20, false, Qt::AlignRight},
                 {say("even.off_by"), 26, true, Qt::AlignRight},
                 {say("even.who"), 24},
                 {say("even.signs"), 34}},
                rows);
  }

  const weavelog::RoomQuality& room_;
  const PaperRequest& request_;
  const Language& language_;
  ListFlow& flow_;
  std::map<std::size_t, Watched> marks_;
  std::vector<std::size_t> shown_;
  std::size_t perRow_ = pointsInRow;
};

}  // namespace

weavelog::Outcome<std::vector<PaperPage>> evenness(const weavelog::Ledger& ledger, const PaperRequest& request, const PaperSize& size) {
  const auto room = weavelog::RoomQuality::make(ledger, request.event);
  if (!room) return weavelog::fail(room.error());
  ListFlow flow(size, paperSay(request.language, "paper.evenness"), belowTitle(ledger, request, request.language), pageNumbers(request.language));
  EvennessTeller teller(*room, request, flow);
  if (teller.empty())
    return weavelog::fail(weavelog::FaultCode::not_found, "no string bed was measured yet", request.watchedName,
                          "measure rackets before they leave the bench");
  teller.tell();
  return flow.take();
}
