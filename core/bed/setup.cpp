#include "core/bed/setup.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>

namespace weavelog {
namespace {

constexpr double kSpacingSd = 0.15;  // of the pattern's widening

/// How far assumptions are moved from their middle, each in standard deviations, by name: doubts of equal name are one.
using Moved = std::map<std::string, double>;

double moved(const Moved& by, const std::string& what) {
  const auto found = by.find(what);
  return found == by.end() ? 0 : found->second;
}

std::string doubt_name(BedMaterial material, const char* what) {
  return std::string(name_of(material)) + ": " + what;
}
/// Another diameter is another string: its error is its own.
std::string gauge_name(const BedStringKind& kind) {
  return "gauge of " + std::string(name_of(kind.material)) + " " + std::to_string(std::lround(kind.gauge * 1000));
}

/// The doubts that a setup has, but for the model's own.
std::vector<std::string> doubts_of(const BedSetup& setup) {
  std::vector<std::string> out{"off_machine", "weaving", "contact"};
  if (setup.pattern.main_positions.empty()) out.emplace_back("spacing");
  for (const BedStrings* part : {&setup.mains, &setup.crosses}) {
    const BedStringKind& kind = part->kind;
    for (const char* what : {"off_machine", "loss"}) out.push_back(doubt_name(kind.material, what));
    if (!kind.elasticity) out.push_back(doubt_name(kind.material, "modulus"));
    if (!kind.linear_density) out.push_back(doubt_name(kind.material, "density"));
    if (!kind.linear_density || !kind.elasticity) out.push_back(gauge_name(kind));
  }
  std::sort(out.begin(), out.end());
  out.erase(std::unique(out.begin(), out.end()), out.end());
  return out;
}

/// One part of the bed with its assumptions moved.
struct PartNow {
  NetString string;
  double left = 1;
};

Outcome<PartNow> part_now(const BedSetup& setup, const BedStrings& part, const RelaxationModel& relaxation, bool crosses, const Moved& by) {
  const auto left = relaxation.left_at({part.kind.material, part.pre_stretch, setup.temperature}, setup.after);
  if (!left) return fail(left.error());
  const MaterialPrior& prior = prior_of(part.kind.material);
  const BedAssumptions& assumed = setup.assumed;
  const double lost = assumed.off_machine + assumed.off_machine_sd * moved(by, "off_machine") +
                      assumed.between_materials_sd * moved(by, doubt_name(part.kind.material, "off_machine"));
  const double weaving = crosses ? assumed.weaving + assumed.weaving_sd * moved(by, "weaving") : 0;
  // The loss with time is moved by its own doubt, which own readings make smaller.
  const double loss_moved = std::exp(left->per_decade.relative_sd * moved(by, doubt_name(part.kind.material, "loss")));
  PartNow out;
  out.left = 1 - (1 - left->left.value) * loss_moved;
  const double diameter = std::exp(assumed.gauge_sd * moved(by, gauge_name(part.kind)));
  out.string.tension = part.pulled * (1 - lost) * (1 - weaving) * out.left;
  out.string.elasticity =
      elasticity_of(part.kind) *
      (part.kind.elasticity ? 1 : std::exp(prior.modulus_sd * moved(by, doubt_name(part.kind.material, "modulus"))) * diameter * diameter);
  out.string.linear_density =
      linear_density_of(part.kind) *
      (part.kind.linear_density ? 1 : std::exp(prior.density_sd * moved(by, doubt_name(part.kind.material, "density"))) * diameter * diameter);
  if (!(out.string.tension > 0))
    return fail(FaultCode::bad_input, "these losses leave no tension", "assumptions", "give a smaller loss or a shorter time");
  return out;
}

Outcome<> checked(const BedSetup& setup) {
  for (const auto& [part, name] : {std::pair{&setup.mains, "mains"}, std::pair{&setup.crosses, "crosses"}}) {
    const std::string where = name;
    if (!(part->pulled >= 40 && part->pulled <= 500))
      return fail(FaultCode::bad_input, "no machine pulls this tension", where + ", tension",
                  "give 4 to 51 kg, 9 to 112 lb or 40 to 500 N, with the unit");
    if (!(part->kind.gauge >= 0.8 && part->kind.gauge <= 1.8))
      return fail(FaultCode::bad_input, "no string is so thin or so thick", where + ", gauge", "give millimetres, 0.8 to 1.8");
    if (part->kind.linear_density && !(*part->kind.linear_density >= 2e-4 && *part->kind.linear_density <= 6e-3))
      return fail(FaultCode::bad_input, "no string weighs this", where + ", linear density", "give grams a metre, 0.2 to 6");
    if (part->kind.elasticity && !(*part->kind.elasticity >= 200 && *part->kind.elasticity <= 2e5))
      return fail(FaultCode::bad_input, "no string stretches so", where + ", elasticity", "give EA in newtons, 200 to 200,000");
    if (!(part->pre_stretch >= 0 && part->pre_stretch <= 30))
      return fail(FaultCode::bad_input, "nobody pre-stretches so", where + ", pre-stretch", "give 0 to 30 percent");
  }
  if (!(setup.temperature >= -30 && setup.temperature <= 80))
    return fail(FaultCode::bad_input, "no racket lies so cold or so hot", "temperature", "give degrees Celsius, -30 to 80");
  if (!(setup.after >= 0 && setup.after <= 2 * 366 * 86'400.0))
    return fail(FaultCode::bad_input, "this time since stringing can't be", "after", "give 0 to two years");
  const BedAssumptions& a = setup.assumed;
  const auto part = [](double value) { return value >= 0 && value < 0.9; };
  if (!part(a.off_machine) || !part(a.weaving) || !part(a.off_machine_sd) || !part(a.weaving_sd) || !part(a.between_materials_sd) ||
      !part(a.gauge_sd) || !part(a.model_sd))
    return fail(FaultCode::bad_input, "a loss is a part of the tension", "assumptions", "give 0 to below 0.9");
  if (!(a.contact >= 5 && a.contact <= 60 && a.contact_sd >= 0 && a.contact_sd <= a.contact / 2))
    return fail(FaultCode::bad_input, "no ball touches so much or so little", "contact", "give a radius of 5 to 60 mm; 20 to 30 is usual");
  return {};
}

Outcome<double> value_moved(const BedSetup& setup, const BedGoal& goal, const RelaxationModel& relaxation, const Moved& by, int pieces) {
  BedSetup here = setup;
  if (here.pattern.main_positions.empty()) here.pattern.widening = std::clamp(here.pattern.widening + kSpacingSd * moved(by, "spacing"), 1.0, 3.0);
  const auto layout = layout_of(here);
  if (!layout) return fail(layout.error());
  const auto main = part_now(here, here.mains, relaxation, false, by), cross = part_now(here, here.crosses, relaxation, true, by);
  if (!main) return fail(main.error());
  if (!cross) return fail(cross.error());
  const std::vector<NetString> mains(layout->mains.size(), main->string), crosses(layout->crosses.size(), cross->string);
  const auto net = StringNet::make(*layout, mains, crosses, pieces);
  if (!net) return fail(net.error());
  if (goal.kind == BedGoal::Kind::tone) {
    const auto modes = net->modes(1);
    if (!modes) return fail(modes.error());
    return modes->front();
  }
  NetContact contact;
  contact.radius = here.assumed.contact + here.assumed.contact_sd * moved(by, "contact");
  const auto pressed = goal.force > 0 ? net->press(contact, goal.force) : net->press_lightly(contact);
  if (!pressed) return fail(pressed.error());
  return pressed->stiffness();
}

/// Of the logarithm of `value` by each doubt, to both sides.
Outcome<BedFigure> with_doubts(const std::vector<std::string>& doubts, double model_sd, const std::function<Outcome<double>(const Moved&)>& value) {
  const auto middle = value({});
  if (!middle) return fail(middle.error());
  BedFigure out;
  double variance = model_sd * model_sd;
  if (model_sd > 0) out.doubts.push_back({"model", model_sd, model_sd});
  for (const std::string& doubt : doubts) {
    const auto less = value({{doubt, -0.5}}), more = value({{doubt, 0.5}});
    if (!less) return fail(less.error());
    if (!more) return fail(more.error());
    const double slope = std::log(*more / *less);
    if (std::abs(slope) < 1e-9) continue;
    variance += slope * slope;
    out.doubts.push_back({doubt, std::abs(slope), slope});
  }
  std::stable_sort(out.doubts.begin(), out.doubts.end(), [](const BedDoubt& a, const BedDoubt& b) { return a.relative_sd > b.relative_sd; });
  out.estimate = BedEstimate::of(*middle, std::sqrt(variance));
  return out;
}

}  // namespace

std::string material_of(const BedSetup& setup) {
  const std::string mains(name_of(setup.mains.kind.material)), crosses(name_of(setup.crosses.kind.material));
  return mains == crosses ? mains : mains + " / " + crosses;
}

Outcome<BedLayout> layout_of(const BedSetup& setup) {
  if (auto fine = checked(setup); !fine) return fail(fine.error());
  const auto head = setup.corners.empty() ? HeadOutline::of_area(setup.area, setup.aspect, setup.shape) : HeadOutline::of_corners(setup.corners);
  if (!head) return fail(head.error());
  if (!(head->area_cm2() >= 300 && head->area_cm2() <= 1000))
    return fail(FaultCode::bad_input, "no racket has a head of this area", "outline",
                "give the corners in millimetres; the area comes to 300 to 1,000 cm2");
  return lay_out(*head, setup.pattern);
}

Outcome<StringNet> net_of(const BedSetup& setup, double mains_tension, double crosses_tension, int pieces) {
  const auto layout = layout_of(setup);
  if (!layout) return fail(layout.error());
  const auto strings = [](const BedStrings& part, double tension, std::size_t count) {
    return std::vector<NetString>(count, {tension, elasticity_of(part.kind), linear_density_of(part.kind)});
  };
  return StringNet::make(*layout, strings(setup.mains, mains_tension, layout->mains.size()),
                         strings(setup.crosses, crosses_tension, layout->crosses.size()), pieces);
}

Outcome<BedReckoner::Tensions> BedReckoner::tensions(const BedSetup& setup) const {
  if (auto fine = checked(setup); !fine) return fail(fine.error());
  const auto main = part_now(setup, setup.mains, relaxation_, false, {}), cross = part_now(setup, setup.crosses, relaxation_, true, {});
  if (!main) return fail(main.error());
  if (!cross) return fail(cross.error());
  return Tensions{main->string.tension, cross->string.tension, (main->left + cross->left) / 2, main->left, cross->left};
}

Outcome<double> BedReckoner::value(const BedSetup& setup, const BedGoal& goal, int pieces) const {
  return value_moved(setup, goal, relaxation_, {}, pieces);
}

Outcome<BedFigure> BedReckoner::figure(const BedSetup& setup, const BedGoal& goal) const {
  return with_doubts(doubts_of(setup), setup.assumed.model_sd, [&](const Moved& by) { return value_moved(setup, goal, relaxation_, by, 1); });
}

Outcome<BedFigure> BedReckoner::ratio(const BedSetup& one, const BedSetup& other, const BedGoal& goal, bool same_frame) const {
  std::vector<std::string> doubts = doubts_of(one);
  for (std::string& doubt : doubts_of(other))
    if (std::find(doubts.begin(), doubts.end(), doubt) == doubts.end()) doubts.push_back(std::move(doubt));
  // What the model leaves out is nearly the same in two beds of one frame, and less so in two frames.
  const double model = one.assumed.model_sd * (same_frame ? 0.15 : 0.8);
  return with_doubts(doubts, model, [&](const Moved& by) -> Outcome<double> {
    const auto a = value_moved(one, goal, relaxation_, by, 1), b = value_moved(other, goal, relaxation_, by, 1);
    if (!a) return fail(a.error());
    if (!b) return fail(b.error());
    return *a / *b;
  });
}

Outcome<BedReckoner::Whole> BedReckoner::whole(const BedSetup& setup, double force) const {
  Whole out;
  const auto tension = tensions(setup);
  if (!tension) return fail(tension.error());
  out.tensions = *tension;
  const auto net = net_of(setup, tension->mains, tension->crosses);
  if (!net) return fail(net.error());
  NetContact contact;
  contact.radius = setup.assumed.contact;
  const auto light = net->press_lightly(contact);
  const auto deep = net->press(contact, force), held = net->press(contact, force, StringNet::Crossings::hold);
  if (!light) return fail(light.error());
  if (!deep) return fail(deep.error());
  if (!held) return fail(held.error());
  out.mains_share = light->mains_share;
  out.held = held->stiffness();
  out.sinks = deep->mean;
  auto modes = net->modes(4);
  if (!modes) return fail(modes.error());
  out.modes = std::move(*modes);
  for (auto [to, goal] : {std::pair{&out.stiffness, BedGoal{BedGoal::Kind::stiffness, 0}},
                          std::pair{&out.loaded, BedGoal{BedGoal::Kind::stiffness, force}}, std::pair{&out.tone, BedGoal{BedGoal::Kind::tone, 0}}}) {
    auto made = figure(setup, goal);
    if (!made) return fail(made.error());
    *to = std::move(*made);
  }
  return out;
}

Outcome<BedReckoner::FromTone> BedReckoner::from_tone(const BedSetup& setup, double hz, double relative_sd) const {
  if (!(hz >= 200 && hz <= 1500))
    return fail(FaultCode::bad_input, "this is no tone of a string bed", "tone",
                "give hertz; beds sound at some 400 to 800 Hz. A tension or stiffness is another reading");
  if (!(relative_sd >= 0 && relative_sd < 0.5))
    return fail(FaultCode::bad_input, "a doubt is a part of the reading", "tone", "give 0.003 for 0.3 percent");
  const auto now = tensions(setup);
  if (!now) return fail(now.error());
  const auto layout = layout_of(setup);
  if (!layout) return fail(layout.error());
  const auto tone = figure(setup, {BedGoal::Kind::tone, 0});
  if (!tone) return fail(tone.error());
  const auto stiffness = figure(setup, {BedGoal::Kind::stiffness, 0});
  if (!stiffness) return fail(stiffness.error());
  // The tone goes with the root of all tensions, the small-load stiffness with the tensions themselves.
  const double grows = std::pow(hz / tone->estimate.value, 2);
  const auto n_mains = static_cast<double>(layout->mains.size()), n_crosses = static_cast<double>(layout->crosses.size());
  const double mean = (now->mains * n_mains + now->crosses * n_crosses) / (n_mains + n_crosses);
  const double pulled = (setup.mains.pulled * n_mains + setup.crosses.pulled * n_crosses) / (n_mains + n_crosses);
  if (!(mean * grows >= pulled * 0.25 && mean * grows <= pulled * 1.2))
    return fail(FaultCode::bad_input,
                "this tone does not go with this setup: it would mean " + std::to_string(std::lround(100 * mean * grows / pulled)) +
                    " % of the pulled tension",
                "tone", "check racket, string, tension and the unit of the reading");
  // What says nothing of the tension any more: whatever moves tone and stiffness by the tension alone falls out.
  double of_tension = 4 * relative_sd * relative_sd, of_stiffness = of_tension;
  const auto slope = [](const BedFigure& figure, const std::string& doubt) {
    for (const BedDoubt& one : figure.doubts)
      if (one.of == doubt) return one.slope;
    return 0.0;
  };
  const auto of_tension_alone = [](const std::string& doubt) {
    return doubt == "off_machine" || doubt.ends_with("off_machine") || doubt.ends_with("loss");
  };
  for (const BedDoubt& one : tone->doubts)
    if (one.of != "model" && !of_tension_alone(one.of) && one.of != "weaving") of_tension += 4 * one.slope * one.slope;
  for (const std::string& doubt : doubts_of(setup))
    if (!of_tension_alone(doubt)) of_stiffness += std::pow(slope(*stiffness, doubt) - 2 * slope(*tone, doubt), 2);
  const double model = setup.assumed.model_sd * setup.assumed.model_sd;
  of_tension += model;
  of_stiffness += model;
  FromTone out;
  const double sd = std::sqrt(of_tension), apart = std::sqrt(of_tension + std::pow(setup.assumed.weaving_sd / 2, 2));
  out.tension = BedEstimate::of(mean * grows, sd);
  out.mains = BedEstimate::of(now->mains * grows, apart);
  out.crosses = BedEstimate::of(now->crosses * grows, apart);
  out.of_pulled = BedEstimate::of(mean * grows / pulled, sd);
  out.stiffness = BedEstimate::of(stiffness->estimate.value * grows, std::sqrt(of_stiffness));
  return out;
}

}  // namespace weavelog
