// Tables of readings: of rackets, and of machines against a gauge.

#include <cmath>

#include "core/quality/calibration.h"
#include "core/quality/causes.h"
#include "core/quality/room_charts.h"
#include "core/quality/written_number.h"
#include "tests/fuzz/target_list.h"

namespace weavelog::fuzz {
namespace {

Bytes bytes_of(std::string_view text) { return Bytes(text.begin(), text.end()); }

}  // namespace

void run_readings(ByteView input) {
  const auto table = read_strung(as_text(input), "readings.csv");
  if (!table || table->readings.size() > 200) return;
  const auto deviations = deviations_of(*table);
  if (!deviations) return;
  const Scatter scatter = scatter_of(table->readings, *deviations);
  must_hold(std::isfinite(scatter.percent) && scatter.percent > 0, "a scatter is none");
  for (const ChartBy by : {ChartBy::setup, ChartBy::machine, ChartBy::room})
    for (const RoomChart& chart : room_charts(*table, *deviations, by))
      must_hold(chart.limits ? std::isfinite(chart.limits->upper) && chart.limits->lower < chart.limits->upper : chart.no_limits.has_value(),
                "limits are none");
  (void)variance_splits(*table, *deviations);
  std::vector<SuspectRacket> rackets;
  for (std::size_t i = 0; i < table->readings.size(); ++i) {
    const StrungReading& one = table->readings[i];
    if ((*deviations)[i].against == Against::nothing) continue;
    rackets.push_back({(*deviations)[i].percent, (*deviations)[i].doubt, one.stringer, one.machine, one.frame, one.string});
  }
  if (rackets.empty()) return;
  CauseOptions options;
  options.scatter = scatter.percent;
  const auto report = causes_of(rackets, rackets.size() - 1, options);
  must_hold(report.has_value(), "a racket has no causes");
  double sum = 0;
  for (const CauseFinding& finding : report->findings) {
    sum += finding.chance;
    must_hold(!evidence_words(Language(), rackets.back(), finding).empty(), "evidence is not said");
  }
  must_hold(std::fabs(sum - 1) < 1e-6, "chances do not add up");
}

std::vector<Bytes> seeds_readings() {
  return {bytes_of("racket,reading,wanted,stringer,machine,frame,string,at\nA,31.2 N/mm,30 N/mm,Ida,T1,f1,Lumen,2031-05-26T10:00\n"
                   "B,29.1 N/mm,30 N/mm,Bo,T1,f2,Lumen,2031-05-26T11:00\nC,27 N/mm,30 N/mm,Ida,T2,f1,Lumen,2031-05-26T12:00\n"),
          bytes_of("reading;setup;kind;wanted;wanted_unit\n25,1;a;98;24;kg\n25,3;a;98;24;kg\n24,9;a;98;24;kg\n25;a;98;24;kg\n26;a;98;25;kg\n25;a;98;55;lb\n"),
          bytes_of("[{\"reading\": 31.5, \"unit\": \"N/mm\", \"setup\": \"x\"}, {\"reading\": \"3.2 kg/cm\", \"setup\": \"x\"}]")};
}

void run_gauge(ByteView input) {
  if (const auto number = WrittenNumber::parse(as_text(input))) must_hold(std::isfinite(number->to_double()), "a number is none");
  const auto table = read_gauge(as_text(input), "gauge.csv");
  if (!table || table->readings.size() > 200) return;
  const auto made = Calibration::of(table->readings);
  if (!made) return;
  const auto error = made->error_at(made->reference());
  must_hold(error && std::isfinite(error->percent), "the error in the middle is none");
  if (const auto setting = made->setting_for(made->reference()))
    must_hold(std::isfinite(setting->set) && std::isfinite(setting->band.low) && std::isfinite(setting->next.high), "a setting is none");
}

std::vector<Bytes> seeds_gauge() {
  return {bytes_of("set,pulled,machine,at\n20 kg,19.3,T1,2031-05-26\n"),
          bytes_of("set,pulled,unit,at\n20,19.3,kg,2031-05-26\n22,21.4,kg,2031-05-26\n24,23.3,kg,2031-05-26\n26,25.1,kg,2031-05-26\n28,27.2,kg,2031-05-26\n"
                   "28,27.1,kg,2031-05-26\n20,19.6,kg,2031-05-19\n22,21.6,kg,2031-05-19\n24,23.5,kg,2031-05-19\n26,25.5,kg,2031-05-19\n28,27.3,kg,2031-05-19\n"),
          bytes_of("[{\"set\": \"55 lb\", \"pulled\": \"24.1 kg\"}]"), bytes_of("-12.5e-3")};
}

}  // namespace weavelog::fuzz
