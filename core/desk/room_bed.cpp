#include "core/desk/room_bed.h"

#include <algorithm>
#include <cmath>

#include "core/base/text.h"
#include "core/desk/event_book.h"
#include "core/desk/room_order.h"
#include "core/model/stock.h"

namespace weavelog {
namespace {

constexpr double kInch2 = 6.4516;  // cm2: NIST SP 811, App. B.8
constexpr double kUsualHead = 632;
constexpr UnixMs kUsualWait = 2LL * 3'600'000;
constexpr UnixMs kLongestAgo = 2LL * 365 * 86'400'000;  // as far as core/bed reckons
constexpr UnixMs kFarthestMatch = 60LL * 86'400'000;     // longer than any event

std::optional<BedMaterial> bed_material(StringMaterial said) {
  switch (said) {
    case StringMaterial::natural_gut:
      return BedMaterial::natural_gut;
    case StringMaterial::multifilament:
      return BedMaterial::multifilament;
    case StringMaterial::synthetic_gut:
      return BedMaterial::synthetic_gut;
    case StringMaterial::polyester:
      return BedMaterial::polyester;
    case StringMaterial::aramid:
      return BedMaterial::aramid;
    case StringMaterial::unsaid:
      break;
  }
  return {};
}

std::optional<double> millimetres(const std::optional<Quantity>& said) {
  if (!said || said->unit != Unit::millimetre) return {};
  const double mm = said->amount.to_double();
  return mm >= 0.8 && mm <= 1.8 ? std::optional(mm) : std::nullopt;
}

std::optional<double> square_centimetres(const std::optional<Quantity>& said) {
  if (!said) return {};
  const double amount = said->amount.to_double();
  if (said->unit == Unit::square_centimetre) return amount;
  if (said->unit == Unit::square_inch) return amount * kInch2;
  return {};
}

/// 0 for none.
double newtons(const std::optional<Quantity>& said) {
  return said ? in_newtons(*said).value_or(0) : 0;
}

double percent(const std::optional<Quantity>& said) {
  return said && said->unit == Unit::percent ? said->amount.to_double() : 0;
}

std::string string_key(const std::string& name, double gauge) {
  return search_key(name) + " " + std::to_string(std::lround(gauge * 1000));
}

/// What a reading is of, as corrections know it: both strings, of a hybrid.
std::string strings_key(const std::string& mains, const std::string& crosses, const BedSetup& setup) {
  const std::string main = string_key(mains, setup.mains.kind.gauge), cross = string_key(crosses, setup.crosses.kind.gauge);
  return main == cross ? main : main + " / " + cross;
}

std::optional<UnixMs> strung_by(const PlayerRecord& record, const EntityId& job, UnixMs at) {
  std::optional<UnixMs> out;
  for (const PlacedMark& placed : record.marks)
    if (placed.mark.job == job && placed.mark.stage == Stage::strung && placed.mark.at && *placed.mark.at <= at)
      out = std::max(out.value_or(*placed.mark.at), *placed.mark.at);
  return out;
}

/// Two relative doubts where both bear on a figure.
double together(double a, double b) {
  return std::sqrt(a * a + b * b);
}

}  // namespace

std::string_view name_of(BedGap gap) {
  switch (gap) {
    case BedGap::head_size:
      return "head_size";
    case BedGap::pattern:
      return "pattern";
    case BedGap::material:
      return "material";
    case BedGap::gauge:
      return "gauge";
    case BedGap::crosses_tension:
      return "crosses_tension";
    case BedGap::pieces:
      return "pieces";
    case BedGap::strung_at:
      return "strung_at";
    case BedGap::match_at:
      return "match_at";
  }
  return {};
}

std::vector<BedStringChoice> bed_strings(const Ledger& ledger, const BookId& event) {
  std::map<std::string, BedStringChoice> held;
  for (EntityState& state : ledger.entities(event, kStockItem)) {
    const Loaded<StockItem> item(std::move(state));
    if (is_blank(item.now.name)) continue;
    BedStringChoice one;
    one.name = item.now.name;
    const auto material = bed_material(item.now.material);
    const auto gauge = millimetres(item.now.gauge);
    one.kind.material = material.value_or(one.kind.material);
    one.kind.gauge = gauge.value_or(one.kind.gauge);
    one.material_said = material.has_value();
    one.gauge_said = gauge.has_value();
    auto& there = held[string_key(one.name, one.gauge_said ? one.kind.gauge : 0)];
    if (there.name.empty() || !there.material_said) there = std::move(one);
  }
  std::vector<BedStringChoice> out;
  for (auto& one : held) out.push_back(std::move(one.second));
  return out;
}

std::optional<UnixMs> match_of(const Ledger& ledger, const BookId& event, const Person& person, UnixMs now) {
  if (!event) return {};
  const auto record = load_event(ledger, event);
  if (!record) return {};
  const auto matches = next_matches(room_order(event_draws(ledger, event), record->event.now.time_zone), now);
  for (const std::string& name : {person.given_name + " " + person.family_name, person.family_name + " " + person.given_name})
    if (const auto match = matches.find(search_key(name)); match != matches.end()) return match->second;
  return {};
}

BedSetup RoomBed::at_match() const {
  BedSetup out = setup;
  out.after = static_cast<double>(std::max(match_at, now) - strung_at.value_or(now)) / 1000;
  return out;
}

Outcome<RoomBed> room_bed(const PlayerRecord& record, const EntityId& job, std::span<const BedStringChoice> strings, UnixMs at,
                          std::optional<UnixMs> match) {
  const Loaded<Job>* held = record.job(job);
  if (held == nullptr) return fail(FaultCode::not_found, "there is no such racket", "job", "open it again from the room");
  const Agreed& agreed = held->now;
  const double mains = newtons(agreed.mains_tension), crosses = newtons(agreed.crosses_tension);
  if (mains == 0 && crosses == 0)
    return fail(FaultCode::bad_input, "no tension was agreed for this racket", "tension",
                "say the tension first; nothing of its bed can be estimated without");
  RoomBed out;
  const auto lacks = [&](BedGap gap) {
    if (std::find(out.assumed.begin(), out.assumed.end(), gap) == out.assumed.end()) out.assumed.push_back(gap);
  };
  const Loaded<Racket>* racket = record.racket(held->now.racket);
  const auto area = racket != nullptr ? square_centimetres(racket->now.head_size) : std::nullopt;
  if (!area) lacks(BedGap::head_size);
  out.setup.area = area.value_or(kUsualHead);
  if (racket != nullptr && racket->now.mains_count && racket->now.crosses_count) {
    out.setup.pattern.mains = static_cast<int>(std::clamp<std::int64_t>(*racket->now.mains_count, 0, 1000));
    out.setup.pattern.crosses = static_cast<int>(std::clamp<std::int64_t>(*racket->now.crosses_count, 0, 1000));
  } else {
    lacks(BedGap::pattern);
  }
  out.mains_string = agreed.mains_string;
  out.crosses_string = is_blank(agreed.crosses_string) ? agreed.mains_string : agreed.crosses_string;
  const auto kind_of = [&](const std::string& name, const std::optional<Quantity>& said) {
    BedStringKind kind;
    const std::string key = search_key(name);
    auto gauge = millimetres(said);
    bool material = false;
    for (const BedStringChoice& one : strings) {
      if (key.empty() || search_key(one.name) != key) continue;
      if (one.material_said) {
        kind.material = one.kind.material;
        material = true;
      }
      // The stock's gauge stands for one that nobody said, where it is the only one there.
      if (!gauge && one.gauge_said &&
          std::count_if(strings.begin(), strings.end(), [&](const auto& other) { return search_key(other.name) == key; }) == 1)
        gauge = one.kind.gauge;
    }
    if (!material) lacks(BedGap::material);
    if (!gauge) lacks(BedGap::gauge);
    kind.gauge = gauge.value_or(kind.gauge);
    return kind;
  };
  const bool one_string = is_blank(agreed.crosses_string);
  out.setup.mains.kind = kind_of(out.mains_string, agreed.mains_gauge);
  out.setup.crosses.kind = kind_of(out.crosses_string, agreed.crosses_gauge || !one_string ? agreed.crosses_gauge : agreed.mains_gauge);
  if (crosses == 0 || mains == 0) lacks(BedGap::crosses_tension);
  out.setup.mains.pulled = mains != 0 ? mains : crosses;
  out.setup.crosses.pulled = crosses != 0 ? crosses : mains;
  out.setup.mains.pre_stretch = percent(agreed.mains_prestretch);
  out.setup.crosses.pre_stretch = percent(agreed.crosses_prestretch);
  if (!agreed.pieces) lacks(BedGap::pieces);
  out.setup.pieces = agreed.pieces == 1 ? 1 : 2;
  const auto force = [](Unit unit) { return unit == Unit::kilogram_force || unit == Unit::pound_force || unit == Unit::newton; };
  out.unit = force(record.person.now.tension_unit) ? record.person.now.tension_unit
             : mains != 0                          ? agreed.mains_tension->unit
                                                   : agreed.crosses_tension->unit;
  out.now = at;
  out.strung_at = strung_by(record, job, at);
  if (!out.strung_at) lacks(BedGap::strung_at);
  if (out.strung_at && at - *out.strung_at > kLongestAgo)
    return fail(FaultCode::bad_input, "this racket was strung more than two years ago", "job",
                "look at a newer job; strings so old are past any estimate");
  out.setup.after = out.strung_at ? static_cast<double>(at - *out.strung_at) / 1000 : 0;
  // A match that far away is none of this stringing: the clock of this device, or of who told the time, is wrong.
  const UnixMs farthest = at + kFarthestMatch, told = match.value_or(farthest), promised = held->now.ready_by.value_or(farthest);
  UnixMs when = told;
  if (told >= farthest) {
    lacks(BedGap::match_at);
    when = promised > at && promised < farthest ? promised : at + kUsualWait;
  }
  out.match_at = std::clamp(when, at, out.strung_at.value_or(at) + kLongestAgo);
  std::sort(out.assumed.begin(), out.assumed.end());
  out.whose.frame = held->now.racket ? held->now.racket.hex() : std::string();
  if (racket != nullptr) out.whose.model = search_key(racket->now.maker + " " + racket->now.model);
  out.whose.string = strings_key(out.mains_string, out.crosses_string, out.setup);
  out.whose.material = material_of(out.setup);
  return out;
}

Outcome<BedFigures> figures_of(const RoomBed& bed, const MeasuredBeds& measured) {
  const BedReckoner& reckoner = measured.reckoner;
  const BedGoal small{BedGoal::Kind::stiffness, 0}, tone{BedGoal::Kind::tone, 0};
  const BedSetup later = bed.at_match();
  const auto whole = reckoner.whole(bed.setup, 500);
  if (!whole) return fail(whole.error());
  const auto then = reckoner.ratio(later, bed.setup, small, true), tone_then = reckoner.ratio(later, bed.setup, tone, true);
  const auto tensions = reckoner.tensions(later);
  for (const auto* one : {&then, &tone_then})
    if (!*one) return fail(one->error());
  if (!tensions) return fail(tensions.error());
  BedFigures out;
  const BedCorrection correction = measured.corrections.of(bed.whose);
  const BedEstimate model = whole->stiffness.estimate;
  const bool read = measured.readings > 0;
  const double log = read ? correction.log : 0;
  const auto with = [&](const BedEstimate& one, double share) {
    const double sd = read ? std::min(one.relative_sd, share * correction.sd) : one.relative_sd;
    return BedEstimate::of(one.value * std::exp(share * log), sd);
  };
  out.stiffness = with(model, 1);
  out.tone = with(whole->tone.estimate, 0.5);
  const auto at_match = [](const BedEstimate& now, const BedEstimate& ratio) {
    return BedEstimate::of(now.value * ratio.value, together(now.relative_sd, ratio.relative_sd));
  };
  out.stiffness_match = at_match(out.stiffness, then->estimate);
  out.tone_match = at_match(out.tone, tone_then->estimate);
  // The small-load stiffness goes with the tension: what moves it by the tension alone is the tension's doubt. Of what readings say of the
  // stiffness, the tension takes the part that its doubt has in the whole (normal errors, one observation of their sum).
  double of_tension = 0;
  for (const BedDoubt& doubt : whole->stiffness.doubts)
    if (doubt.of.ends_with("off_machine") || doubt.of.ends_with("loss") || doubt.of == "weaving") of_tension += doubt.slope * doubt.slope;
  const double all = model.relative_sd * model.relative_sd, part = all > 0 ? std::min(1.0, of_tension / all) : 0;
  const double learned = read ? std::max(0.0, 1 - out.stiffness.relative_sd * out.stiffness.relative_sd / all) : 0;
  const double tension_sd = std::sqrt(of_tension * (1 - part * learned)), moved = std::exp(part * log);
  out.mains = BedEstimate::of(whole->tensions.mains * moved, tension_sd);
  out.crosses = BedEstimate::of(whole->tensions.crosses * moved, together(tension_sd, bed.setup.assumed.weaving_sd / 2));
  const double ratio_sd = then->estimate.relative_sd;
  out.mains_match = BedEstimate::of(tensions->mains * moved, together(out.mains.relative_sd, ratio_sd));
  out.crosses_match = BedEstimate::of(tensions->crosses * moved, together(out.crosses.relative_sd, ratio_sd));
  out.left_match = then->estimate;
  out.mains_share = whole->mains_share;
  out.from_data = read ? correction.from_data : 0;
  out.readings = measured.readings;
  out.correction = correction;
  out.doubts = whole->stiffness.doubts;
  return out;
}

Outcome<std::vector<BedLeftAt>> left_over_time(const RoomBed& bed, const MeasuredBeds& measured, double until, int points) {
  const double from = 60, to = std::clamp(until, 86'400.0, static_cast<double>(kLongestAgo) / 1000);
  const auto n_mains = static_cast<double>(bed.setup.pattern.mains), n_crosses = static_cast<double>(bed.setup.pattern.crosses);
  const double share = n_mains / (n_mains + n_crosses);
  std::vector<BedLeftAt> out;
  for (int i = 0; i < std::max(2, points); ++i) {
    const double seconds = from * std::pow(to / from, static_cast<double>(i) / (std::max(2, points) - 1));
    const auto left = [&](const BedStrings& part) {
      return measured.reckoner.relaxation().left_at({part.kind.material, part.pre_stretch, bed.setup.temperature}, seconds);
    };
    const auto mains = left(bed.setup.mains), crosses = left(bed.setup.crosses);
    if (!mains) return fail(mains.error());
    if (!crosses) return fail(crosses.error());
    const auto mean = [&](double a, double b) { return share * a + (1 - share) * b; };
    const BedEstimate &a = mains->left, &b = crosses->left;
    out.push_back({seconds, {mean(a.value, b.value), mean(a.low, b.low), mean(a.high, b.high), mean(a.relative_sd, b.relative_sd)}});
  }
  return out;
}

Outcome<Equivalent> same_feel(const RoomBed& bed, const MeasuredBeds& measured, const BedChange& change, const BedGoal& goal) {
  if (change.mains_more != 0 && change.crosses_more != 0)
    return fail(FaultCode::bad_input, "mains and crosses can’t both be set", "tension", "change one; the other makes up for it");
  EquivalentAsk ask;
  ask.from = ask.to = bed.at_match();
  ask.of_from = ask.of_to = bed.whose;
  ask.goal = goal;
  ask.unit = bed.unit;
  ask.step = bed.unit == Unit::newton ? 5 : 0.5;
  std::string mains = bed.mains_string, crosses = bed.crosses_string;
  const auto put = [&](BedStrings& part, std::string& name) {
    if (change.string) {
      name = change.string->name;
      part.kind = change.string->kind;
    }
    if (change.gauge) part.kind.gauge = *change.gauge;
    if (change.pre_stretch) part.pre_stretch = *change.pre_stretch;
  };
  if (change.of != BedChange::Of::crosses) put(ask.to.mains, mains);
  if (change.of != BedChange::Of::mains) put(ask.to.crosses, crosses);
  if (change.area) ask.to.area = *change.area;
  if (change.pattern) {
    ask.to.pattern.mains = change.pattern->first;
    ask.to.pattern.crosses = change.pattern->second;
  }
  if (change.area || change.pattern) {  // another racket, of which nothing was measured under this name
    ask.of_to.frame.clear();
    ask.of_to.model.clear();
  }
  ask.of_to.string = strings_key(mains, crosses, ask.to);
  ask.of_to.material = material_of(ask.to);
  if (change.mains_more != 0) {
    ask.to.mains.pulled += change.mains_more;
    ask.adjust = EquivalentAsk::Adjust::crosses;
  } else if (change.crosses_more != 0) {
    ask.to.crosses.pulled += change.crosses_more;
    ask.adjust = EquivalentAsk::Adjust::mains;
  } else if (!change.string && !change.gauge && !change.pre_stretch && !change.area && !change.pattern) {
    return fail(FaultCode::bad_input, "nothing is changed", "change", "choose what shall be otherwise");
  }
  return equivalent(ask, measured.reckoner, measured.corrections);
}

}  // namespace weavelog
