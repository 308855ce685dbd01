#include <algorithm>
#include <cmath>
#include <utility>

#include "core/desk/room_bed.h"

namespace weavelog {
namespace {

constexpr std::size_t kMostOwn = 60, kMostOthers = 120;
constexpr std::size_t kMostPlayers = 150;
constexpr double kStiffnessSd = 0.03, kToneSd = 0.012;  // of readings, as files of measured beds have it

bool of_bed(const Reading& reading) {
  return (reading.what == ReadingKind::bed_stiffness || reading.what == ReadingKind::tone) && reading.value && reading.at && reading.job;
}

/// A reading with its player's record.
struct Held {
  const PlayerRecord* record = nullptr;
  const Reading* reading = nullptr;
};

struct Taken {
  RoomBed bed;
  std::string stringing;
  bool tone = false, age_known = false, own = false;
  double value = 0;  // N/m or Hz
};

/// How long before a reading the racket came off its machine is known where the room follows its stages: what is read before anybody tapped
/// "strung" is read while it comes off.
bool age_known(const PlayerRecord& record, const EntityId& job) {
  return std::any_of(record.marks.begin(), record.marks.end(), [&](const PlacedMark& placed) {
    return placed.mark.job == job && (placed.mark.stage == Stage::strung || placed.mark.stage == Stage::on_machine);
  });
}

std::vector<Held> newest_of(const PlayerRecord& record) {
  std::vector<Held> out;
  for (const auto& one : record.readings)
    if (of_bed(one.now)) out.push_back({&record, &one.now});
  return out;
}

void keep_newest(std::vector<Held>& held, std::size_t most) {
  std::stable_sort(held.begin(), held.end(), [](const Held& a, const Held& b) { return *a.reading->at > *b.reading->at; });
  if (held.size() > most) held.resize(most);
}

}  // namespace

std::vector<PlayerRecord> measured_players(const Ledger& ledger, const BookId& but) {
  std::vector<std::pair<UnixMs, BookId>> newest;
  for (const BookInfo& book : ledger.books(kPlayerBook)) {
    if (book.id == but) continue;
    std::optional<UnixMs> last;
    for (EntityState& state : ledger.entities(book.id, kReading)) {
      const Loaded<Reading> reading(std::move(state));
      if (of_bed(reading.now)) last = std::max(last.value_or(*reading.now.at), *reading.now.at);
    }
    if (last) newest.emplace_back(*last, book.id);
  }
  std::sort(newest.begin(), newest.end(), std::greater<>());
  if (newest.size() > kMostPlayers) newest.resize(kMostPlayers);
  std::vector<PlayerRecord> out;
  for (const auto& one : newest)
    if (auto record = load_player(ledger, one.second)) out.push_back(std::move(*record));
  return out;
}

MeasuredBeds measured_beds(const PlayerRecord& record, std::span<const BedStringChoice> strings, std::span<const PlayerRecord> others) {
  MeasuredBeds out;
  std::vector<Held> newest = newest_of(record), further;
  keep_newest(newest, kMostOwn);
  for (const PlayerRecord& other : others) {
    const std::vector<Held> held = newest_of(other);
    further.insert(further.end(), held.begin(), held.end());
  }
  keep_newest(further, kMostOthers);
  newest.insert(newest.end(), further.begin(), further.end());
  std::vector<Taken> taken;
  for (const Held& one : newest) {
    const Reading& reading = *one.reading;
    auto bed = room_bed(*one.record, reading.job, strings, *reading.at);
    double value = reading.value->amount.to_double();
    const bool tone = reading.what == ReadingKind::tone && reading.value->unit == Unit::hertz;
    const bool stiffness = reading.what == ReadingKind::bed_stiffness;
    if (stiffness && reading.value->unit == Unit::newton_per_millimetre)
      value *= 1000;
    else if (stiffness && reading.value->unit == Unit::kilogram_force_per_centimetre)
      value *= 980.665;
    else if (!tone)
      value = 0;
    if (!bed || !(value > 0)) {
      ++out.left_out;
      continue;
    }
    taken.push_back({std::move(*bed), {}, tone, age_known(*one.record, reading.job), one.record == &record, value});
    taken.back().stringing = reading.job.hex() + " " + std::to_string(taken.back().bed.strung_at.value_or(0)) + (tone ? " tone" : " stiffness");
  }
  std::map<std::string, std::size_t> of_stringing;
  for (const Taken& one : taken) ++of_stringing[one.stringing];
  std::vector<RelaxationReading> over_time;
  for (const Taken& one : taken) {
    const BedSetup& setup = one.bed.setup;
    if (of_stringing[one.stringing] < 2 || !one.bed.strung_at || setup.mains.kind.material != setup.crosses.kind.material) continue;
    over_time.push_back({one.stringing,
                         {setup.mains.kind.material, (setup.mains.pre_stretch + setup.crosses.pre_stretch) / 2, setup.temperature},
                         setup.after,
                         one.tone ? one.value * one.value : one.value});
  }
  // Readings that can't belong together say nothing of relaxation; what they say of the bed is judged one by one below.
  if (auto relaxation = RelaxationModel::fitted(over_time)) out.reckoner = BedReckoner(std::move(*relaxation));
  std::vector<BedReading> readings;
  for (const Taken& one : taken) {
    if (!one.age_known) {
      ++out.ages.unknown;
      continue;
    }
    const auto reckoned = out.reckoner.value(one.bed.setup, {one.tone ? BedGoal::Kind::tone : BedGoal::Kind::stiffness, 0});
    const auto tensions = out.reckoner.tensions(one.bed.setup);
    const double log_ratio = reckoned && tensions ? (one.tone ? 2 : 1) * std::log(one.value / *reckoned) : HUGE_VAL;
    if (!(std::abs(log_ratio) <= std::log(2.0))) {
      ++out.left_out;
      continue;
    }
    out.ages.add(tensions->left);
    out.own += one.own ? 1 : 0;
    const BedWhose& whose = one.bed.whose;
    readings.push_back({whose.frame, whose.model, whose.string, log_ratio, one.tone ? kToneSd : kStiffnessSd, whose.material});
  }
  out.readings = readings.size();
  if (auto fitted = BedCorrections::fitted(readings))
    out.corrections = std::move(*fitted);
  else {
    out.left_out += std::exchange(out.readings, 0);
    out.own = 0;
  }
  return out;
}

}  // namespace weavelog
