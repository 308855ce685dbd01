// bed: geometry, stiffness, map, relaxation, equivalents of a setup told in words or a file.

#include <cmath>

#include "core/base/csv.h"
#include "core/bed/bed_words.h"
#include "core/bed/equivalents.h"
#include "sync/cli/bed_input.h"

namespace weavelog::cli {
namespace {

struct GeometryArguments {
  BedArguments bed;
  StringAllowance allowance;
};

json::array points_json(const std::vector<BedPoint>& points) {
  json::array out;
  for (const BedPoint& point : points) out.push_back(json::array{point.x, point.y});
  return out;
}

json::array strings_json(const std::vector<BedString>& strings) {
  json::array out;
  for (const BedString& one : strings) out.push_back(json::object{{"at", one.at}, {"low", one.low}, {"high", one.high}, {"length", one.length()}});
  return out;
}

Outcome<Ending> geometry(const Settings& settings, const GeometryArguments& arguments) {
  const auto told = told_setup(arguments.bed, false);
  if (!told) return fail(told.error());
  const auto layout = layout_of(told->setup);
  if (!layout) return fail(layout.error());
  const auto need = string_needed(*layout, told->setup.pieces, arguments.allowance);
  if (!need) return fail(need.error());
  json::array lines;
  for (const BedSegment& line : drawn_strings(*layout))
    lines.push_back(json::object{
        {"string", line.main ? "main" : "cross"}, {"from", json::array{line.from.x, line.from.y}}, {"to", json::array{line.to.x, line.to.y}}});
  const auto part = [](const StringLength& one) {
    return json::object{{"in_face", one.in_face}, {"around", one.around}, {"ends", one.ends}, {"metres", one.metres()}};
  };
  json::object out{{"area_cm2", layout->head.area_cm2()},
                   {"length_mm", 2 * layout->head.half_length()},
                   {"width_mm", 2 * layout->head.half_width()},
                   {"within_rules", layout->head.within_rules()},
                   {"mains", strings_json(layout->mains)},
                   {"crosses", strings_json(layout->crosses)},
                   {"string", json::object{{"pieces", need->pieces},
                                           {"mains", part(need->mains)},
                                           {"crosses", part(need->crosses)},
                                           {"metres", need->metres()},
                                           {"short_side", need->short_side}}},
                   {"drawing", json::object{{"outline", points_json(layout->head.drawing())}, {"strings", std::move(lines)}}}};
  std::string text = "head " + fixed(layout->head.area_cm2(), 0) + " cm2, " + fixed(2 * layout->head.half_length(), 0) + " x " +
                     fixed(2 * layout->head.half_width(), 0) + " mm" + (layout->head.within_rules() ? "" : ", larger than the rules allow") + "\n" +
                     std::to_string(layout->mains.size()) + " mains, " + std::to_string(layout->crosses.size()) + " crosses, " +
                     fixed(layout->mains_in_face(), 2) + " m and " + fixed(layout->crosses_in_face(), 2) + " m in the face\n";
  text += "string: " + fixed(need->mains.metres(), 1) + " m mains, " + fixed(need->crosses.metres(), 1) + " m crosses, " + fixed(need->metres(), 1) +
          " m " + (need->pieces == 1 ? "in one piece, short side " + fixed(need->short_side, 1) + " m\n" : "in two pieces\n");
  Context(settings).answer(out, text);
  return Ending::done;
}

struct StiffnessArguments {
  BedArguments bed;
  double load = 500;
};

Outcome<Ending> stiffness(const Settings& settings, const StiffnessArguments& arguments) {
  const auto told = told_setup(arguments.bed);
  if (!told) return fail(told.error());
  const auto reckoner = bed_reckoner(arguments.bed);
  if (!reckoner) return fail(reckoner.error());
  const auto whole = reckoner->whole(told->setup, arguments.load);
  if (!whole) return fail(whole.error());
  ReadingAges ages;
  const auto corrections = bed_corrections(arguments.bed, *reckoner, ages);
  if (!corrections) return fail(corrections.error());
  const BedCorrection correction = corrections->of(told->whose);
  BedFigure small = whole->stiffness, loaded = whole->loaded, tone = whole->tone;
  if (correction.of_all > 0) {  // what is left of the doubt is what the readings leave
    small.estimate = BedEstimate::of(small.estimate.value * std::exp(correction.log), std::min(small.estimate.relative_sd, correction.sd));
    loaded.estimate = BedEstimate::of(loaded.estimate.value * std::exp(correction.log), std::min(loaded.estimate.relative_sd, correction.sd + 0.02));
    tone.estimate = BedEstimate::of(tone.estimate.value * std::exp(correction.log / 2), std::min(tone.estimate.relative_sd, correction.sd / 2));
  }
  json::array modes;
  for (const double hz : whole->modes) modes.push_back(hz);
  const double mains = whole->tensions.mains, crosses = whole->tensions.crosses;
  json::object out{{"contact_mm", told->setup.assumed.contact},
                   {"stiffness_N_per_mm", estimate_json(small.estimate, 1000)},
                   {"load_N", arguments.load},
                   {"loaded_N_per_mm", estimate_json(loaded.estimate, 1000)},
                   {"loaded_if_crossings_held_N_per_mm", whole->held / 1000},
                   {"sinks_mm", whole->sinks * 1000},
                   {"mains_share", whole->mains_share},
                   {"tension_N", json::object{{"mains", mains}, {"crosses", crosses}}},
                   {"left_since_a_minute", json::object{{"mains", whole->tensions.left_mains}, {"crosses", whole->tensions.left_crosses}}},
                   {"tone_Hz", estimate_json(tone.estimate)},
                   {"modes_Hz", std::move(modes)},
                   {"doubts", doubts_json(small.doubts)},
                   {"correction", json::object{{"factor", std::exp(correction.log)},
                                               {"from_data", correction.of_all > 0 ? correction.from_data : 0.0},
                                               {"readings", correction.of_all},
                                               {"levels", levels_json(correction)},
                                               {"ages", ages_json(ages)}}}};
  const std::string text = "estimates, contact disc of " + fixed(told->setup.assumed.contact, 0) + " mm radius in the middle\n" + "stiffness " +
                           estimate_text(small.estimate, 1000, 1, "N/mm") + ", mains " + fixed(100 * whole->mains_share, 0) + " % of it\n" +
                           "under " + fixed(arguments.load, 0) + " N " + estimate_text(loaded.estimate, 1000, 1, "N/mm") + ", sinks " +
                           fixed(whole->sinks * 1000, 1) + " mm\n" + "tone " + estimate_text(tone.estimate, 1, 0, "Hz") + "\n" +
                           "tension in the bed " + tension_text(mains, told->unit) + " / " + tension_text(crosses, told->unit) + "\n" +
                           data_lines(Context(settings).language(), correction.from_data, correction, ages);
  Context(settings).answer(out, text);
  return Ending::done;
}

struct MapArguments {
  BedArguments bed;
  std::string out;
};

Outcome<Ending> map(const Settings& settings, const MapArguments& arguments) {
  const auto told = told_setup(arguments.bed);
  if (!told) return fail(told.error());
  const auto reckoner = bed_reckoner(arguments.bed);
  if (!reckoner) return fail(reckoner.error());
  const auto now = reckoner->tensions(told->setup);
  if (!now) return fail(now.error());
  const auto net = net_of(told->setup, now->mains, now->crosses);
  if (!net) return fail(net.error());
  const auto figure = reckoner->figure(told->setup, {BedGoal::Kind::stiffness, 0});
  if (!figure) return fail(figure.error());
  NetContact contact;
  contact.radius = told->setup.assumed.contact;
  const std::vector<NetPoint> points = net->map(contact);
  if (points.empty()) return fail(FaultCode::bad_input, "the contact disc fits nowhere into the head", "contact", "give a smaller radius");
  const double low = figure->estimate.low / figure->estimate.value, high = figure->estimate.high / figure->estimate.value;
  json::array list;
  CsvWriter csv;
  csv.row({"x_mm", "y_mm", "stiffness_N_per_mm", "low", "high"});
  for (const NetPoint& point : points) {
    list.push_back(json::object{{"x", point.x}, {"y", point.y}, {"stiffness_N_per_mm", point.stiffness / 1000}});
    csv.row({fixed(point.x, 1), fixed(point.y, 1), fixed(point.stiffness / 1000, 2), fixed(point.stiffness / 1000 * low, 2),
             fixed(point.stiffness / 1000 * high, 2)});
  }
  const Context context(settings);
  if (!arguments.out.empty())
    if (auto written = context.deliver(csv.text(), arguments.out); !written) return fail(written.error());
  json::object out{{"contact_mm", contact.radius},
                   {"points", std::move(list)},
                   {"band", json::object{{"low", low}, {"high", high}}},
                   {"middle_N_per_mm", estimate_json(figure->estimate, 1000)}};
  context.answer(out, arguments.out.empty() ? csv.text() : std::to_string(points.size()) + " points in " + arguments.out + "\n");
  return Ending::done;
}

struct RelaxArguments {
  BedArguments bed;
  std::vector<std::string> at{"10min", "1h", "3h", "1d", "7d"};
  std::string racket, since;
};

Outcome<Ending> relax(const Settings& settings, const RelaxArguments& arguments) {
  const auto told = told_setup(arguments.bed, false);
  if (!told) return fail(told.error());
  const auto reckoner = bed_reckoner(arguments.bed);
  if (!reckoner) return fail(reckoner.error());
  const RelaxationModel& model = reckoner->relaxation();
  if (arguments.racket.empty() != arguments.since.empty())
    return fail(FaultCode::bad_input, "a racket of own readings and the time since which go together", "--racket, --since", "give both or neither");
  const BedStrings& part = told->setup.mains;
  const RelaxationCase of{part.kind.material, part.pre_stretch, told->setup.temperature};
  json::array list;
  std::string text =
      arguments.racket.empty() ? "left of the tension at one minute, estimates\n" : "left of the tension since " + arguments.since + ", estimates\n";
  for (const std::string& at : arguments.at) {
    const auto seconds = seconds_in(at, "--at");
    if (!seconds) return fail(seconds.error());
    Outcome<TensionLeft> left = TensionLeft{};
    if (arguments.racket.empty()) {
      left = model.left_at(of, *seconds);
    } else {
      const auto since = seconds_in(arguments.since, "--since");
      if (!since) return fail(since.error());
      left = model.left_of(arguments.racket, *since, *seconds);
    }
    if (!left) return fail(left.error());
    list.push_back(json::object{{"after_s", *seconds},
                                {"left", estimate_json(left->left)},
                                {"loss_per_decade", estimate_json(left->per_decade)},
                                {"from_data", left->from_data}});
    text += "  " + at + ": " + estimate_text(left->left, 0.01, 1, "%") + ", " + fixed(100 * left->from_data, 0) +
            " % of the doubt is gone by own readings\n";
  }
  Context(settings).answer(
      json::object{{"material", name_of(of.material)}, {"at", std::move(list)}, {"readings", model.readings()}, {"rackets", model.rackets()}}, text);
  return Ending::done;
}

struct EquivalentArguments {
  BedArguments bed;
  std::vector<std::string> changes;
  std::string goal = "loaded", adjust = "both";
  double load = 500, step = 0;
};

json::object set_json(const EquivalentTension& one, Unit unit) {
  const double by = in_newtons({Decimal{1, 0}, unit}).value_or(1);
  return {{"set", text_of(one.set)}, {"exact", one.exact / by},   {"low", one.low / by},
          {"high", one.high / by},   {"before", one.before / by}, {"unit", symbol_of(unit)}};
}

Outcome<Ending> equivalents(const Settings& settings, const EquivalentArguments& arguments) {
  const auto from = told_setup(arguments.bed);
  if (!from) return fail(from.error());
  const auto to = setup_in_words(arguments.changes, *from);
  if (!to) return fail(to.error());
  const auto reckoner = bed_reckoner(arguments.bed);
  if (!reckoner) return fail(reckoner.error());
  ReadingAges ages;
  const auto corrections = bed_corrections(arguments.bed, *reckoner, ages);
  if (!corrections) return fail(corrections.error());
  EquivalentAsk ask;
  ask.from = from->setup;
  ask.to = to->setup;
  ask.of_from = from->whose;
  ask.of_to = to->whose;
  ask.goal = {arguments.goal == "tone" ? BedGoal::Kind::tone : BedGoal::Kind::stiffness, arguments.goal == "loaded" ? arguments.load : 0};
  ask.adjust = arguments.adjust == "mains"     ? EquivalentAsk::Adjust::mains
               : arguments.adjust == "crosses" ? EquivalentAsk::Adjust::crosses
                                               : EquivalentAsk::Adjust::both;
  ask.unit = from->unit;
  ask.step = arguments.step;
  const auto made = equivalent(ask, *reckoner, *corrections);
  if (!made) return fail(made.error());
  const bool tone = ask.goal.kind == BedGoal::Kind::tone;
  const double by = tone ? 1 : 1000;
  const char* unit = tone ? "Hz" : "N/mm";
  json::object out{{"goal", arguments.goal},
                   {"mains", set_json(made->mains, ask.unit)},
                   {"crosses", set_json(made->crosses, ask.unit)},
                   {"wanted", made->wanted / by},
                   {"reached", made->reached / by},
                   {"unit", unit},
                   {"doubt_percent", 100 * made->relative_sd},
                   {"from_data", made->from_data},
                   {"from_model", 1 - made->from_data},
                   {"correction", made->correction},
                   {"readings", json::object{{"frame", made->readings.of_frame},
                                             {"model", made->readings.of_model},
                                             {"string", made->readings.of_string},
                                             {"material", made->readings.of_material},
                                             {"all", made->readings.of_all}}},
                   {"levels", levels_json(made->readings)},
                   {"ages", ages_json(ages)},
                   {"doubts", doubts_json(made->doubts)}};
  const auto line = [&](const char* which, const EquivalentTension& one) {
    return std::string(which) + " " + text_of(one.set) + " (estimate " + tension_text(one.exact, ask.unit) + ", " + tension_text(one.low, ask.unit) +
           " to " + tension_text(one.high, ask.unit) + "; before " + tension_text(one.before, ask.unit) + ")\n";
  };
  const std::string text = line("mains", made->mains) + line("crosses", made->crosses) + "keeps " + fixed(made->wanted / by, 1) + " " + unit +
                           " (reaches " + fixed(made->reached / by, 1) + ")\n" +
                           data_lines(Context(settings).language(), made->from_data, made->readings, ages);
  Context(settings).answer(out, text);
  return Ending::done;
}

}  // namespace

void add_bed_commands(CLI::App& app, FolderWork& chosen) {
  CLI::App* bed = app.add_subcommand("bed", "The string bed of a setup: geometry, stiffness, relaxation, equivalents; without --data");
  bed->require_subcommand(1);
  add_plan_command<GeometryArguments>(*bed, chosen, "geometry", "Places and lengths of the strings, string needed, a drawing", geometry,
                                      [](CLI::App& command, GeometryArguments& arguments) {
                                        add_bed_options(command, arguments.bed);
                                        command.option_defaults()->always_capture_default();
                                        command.add_option("--wall", arguments.allowance.wall, "mm through the frame, each hole");
                                        command.add_option("--reach", arguments.allowance.reach, "mm to the tension head, each end that is pulled");
                                        command.add_option("--tie-off", arguments.allowance.tie_off, "mm of a knot that is not pulled");
                                        command.add_option("--spare", arguments.allowance.spare, "mm in all");
                                        command.footer(
                                            "--json: area_cm2, length_mm, width_mm, within_rules, mains and crosses [{at, low, high, length}] in mm, "
                                            "string {pieces, mains, crosses, metres, short_side},\n"
                                            "drawing {outline [[x, y]], strings [{string, from, to}]}.");
                                      });
  add_plan_command<StiffnessArguments>(*bed, chosen, "stiffness", "Stiffness in the middle, under load, tone, tension in the bed", stiffness,
                                       [](CLI::App& command, StiffnessArguments& arguments) {
                                         add_bed_options(command, arguments.bed, true);
                                         command.add_option("--load", arguments.load, "N on the contact disc")->capture_default_str();
                                         command.footer(kBandFooter);
                                       });
  add_plan_command<MapArguments>(*bed, chosen, "map", "Stiffness all over the bed, as CSV or JSON", map,
                                 [](CLI::App& command, MapArguments& arguments) {
                                   add_bed_options(command, arguments.bed);
                                   command.add_option("--out", arguments.out, "CSV file");
                                   command.footer(kBandFooter);
                                 });
  add_plan_command<RelaxArguments>(
      *bed, chosen, "relax", "What is left of the tension after a time", relax, [](CLI::App& command, RelaxArguments& arguments) {
        add_bed_options(command, arguments.bed);
        command.add_option("--at", arguments.at, "Times since stringing, as 20min,2h,1d")->delimiter(',')->capture_default_str();
        command.add_option("--racket", arguments.racket, "One of the readings' rackets");
        command.add_option("--since", arguments.since, "For it: the time at which it was read");
        command.footer(kBandFooter);
      });
  add_plan_command<EquivalentArguments>(
      *bed, chosen, "equivalent", "The tension that keeps the feel when something changes", equivalents,
      [](CLI::App& command, EquivalentArguments& arguments) {
        add_bed_options(command, arguments.bed, true);
        command.add_option("--change", arguments.changes, "What changes, in the same words: --change gauge=1.20 --change crosses_string=multi")
            ->required();
        command.add_option("--keep", arguments.goal, "loaded: stiffness under --load; stiffness: under a small load; tone")
            ->check(CLI::IsMember({"loaded", "stiffness", "tone"}))
            ->capture_default_str();
        command.add_option("--load", arguments.load, "N on the contact disc")->capture_default_str();
        command.add_option("--adjust", arguments.adjust, "What may be set anew")
            ->check(CLI::IsMember({"both", "mains", "crosses"}))
            ->capture_default_str();
        command.add_option("--step", arguments.step, "To which the machine is set, in the unit of the tension; 0: 0.5 kg, 1 lb or 5 N")
            ->capture_default_str();
        command.footer(kBandFooter);
      });
}

}  // namespace weavelog::cli
