#include "core/bed/setup_words.h"

#include <algorithm>
#include <boost/json.hpp>
#include <cmath>

#include "core/base/csv.h"

namespace weavelog {
namespace {

Outcome<double> number_in(std::string_view text, std::string_view what) {
  const auto value = Decimal::parse(text);
  if (!value)
    return fail(FaultCode::bad_input, "\"" + std::string(text.substr(0, 40)) + "\" is no number", std::string(what), "give digits, as 1.25");
  return value->to_double();
}

Outcome<double> plain(std::string_view text, std::string_view what, Unit allowed) {
  const auto told = quantity_in(text, what);
  if (!told) return fail(told.error());
  if (told->unit != Unit::none && told->unit != allowed)
    return fail(FaultCode::bad_input, "this unit does not go with it", std::string(what),
                "give " + std::string(allowed == Unit::none ? "a plain number" : symbol_of(allowed)));
  return told->amount.to_double();
}

Outcome<> set_to(double& into, Outcome<double> value) {
  if (!value) return fail(value.error());
  into = *value;
  return {};
}

Outcome<double> tension_in(ToldSetup& told, std::string_view text, std::string_view what) {
  const auto value = quantity_in(text, what);
  if (!value) return fail(value.error());
  const auto newtons = in_newtons(*value);
  if (!newtons) return fail(FaultCode::bad_input, "a tension needs its unit", std::string(what), "give it as 24.5kg, 54lb or 240N");
  told.unit = value->unit;
  return *newtons;
}

Outcome<std::vector<double>> positions_in(std::string_view text, std::string_view what) {
  std::vector<double> out;
  for (std::size_t from = 0; from <= text.size();) {
    const std::size_t to = std::min(text.find('|', from), text.size());
    const auto one = number_in(text.substr(from, to - from), what);
    if (!one) return fail(one.error());
    out.push_back(*one);
    from = to + 1;
  }
  return out;
}

std::string kind_words(const BedStringKind& kind) {
  return std::string(name_of(kind.material)) + " " + std::to_string(std::lround(kind.gauge * 1000));
}

/// One of the names that mains and crosses have alike.
Outcome<bool> tell_strings(BedStrings& part, std::string_view name, std::string_view value, std::string_view what) {
  const auto set = [&](double& into, Outcome<double> number) -> Outcome<bool> {
    if (!number) return fail(number.error());
    into = *number;
    return true;
  };
  double number = 0;
  if (name == "string") {
    const auto material = material_from(value);
    if (!material) return fail(material.error());
    part.kind.material = *material;
    return true;
  }
  if (name == "gauge") return set(part.kind.gauge, plain(value, what, Unit::millimetre));
  if (name == "pre_stretch") return set(part.pre_stretch, plain(value, what, Unit::percent));
  if (name == "weight") {  // grams a metre
    auto made = set(number, plain(value, what, Unit::gram));
    if (made) part.kind.linear_density = number / 1000;
    return made;
  }
  if (name == "elasticity") {
    auto made = set(number, plain(value, what, Unit::newton));
    if (made) part.kind.elasticity = number;
    return made;
  }
  return false;
}

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && (text.front() == ' ' || text.front() == '\t')) text.remove_prefix(1);
  while (!text.empty() && (text.back() == ' ' || text.back() == '\t')) text.remove_suffix(1);
  return text;
}

/// The value of a column by name; "" where there is none.
class Columns {
 public:
  explicit Columns(const CsvTable& table) : table_(table) {}
  [[nodiscard]] std::string of(const CsvRow& row, std::string_view name) const {
    for (std::size_t i = 0; i < table_.header.size(); ++i)
      if (table_.header[i] == name) return row.fields[i];
    return {};
  }
  [[nodiscard]] bool has(std::string_view name) const { return std::find(table_.header.begin(), table_.header.end(), name) != table_.header.end(); }

 private:
  const CsvTable& table_;
};

Outcome<CsvTable> whole_table(std::string_view bytes, std::string_view source) {
  auto table = read_csv(bytes, {}, source);
  if (!table) return fail(table.error());
  if (!table->faults.empty()) return fail(table->faults.front());
  return table;
}

Fault at_row(Fault fault, std::string_view source, const CsvRow& row) {
  fault.where = csv_place(source, row.line) + (fault.where.empty() ? "" : ", " + fault.where);
  return fault;
}

}  // namespace

Outcome<Quantity> quantity_in(std::string_view text, std::string_view what) {
  text = trimmed(text);
  std::size_t end = 0;
  while (end < text.size() &&
         ((text[end] >= '0' && text[end] <= '9') || text[end] == '.' || text[end] == ',' || text[end] == '-' || text[end] == '+'))
    ++end;
  const auto amount = Decimal::parse(text.substr(0, end));
  if (!amount)
    return fail(FaultCode::bad_input, "\"" + std::string(text.substr(0, 40)) + "\" is no number with a unit", std::string(what),
                "give digits and unit, as 24.5kg");
  std::string_view unit = trimmed(text.substr(end));
  if (unit.empty()) return Quantity{*amount, Unit::none};
  if (unit == "cm2" || unit == "cm²") return Quantity{*amount, Unit::square_centimetre};
  if (unit == "in2" || unit == "in²" || unit == "sqin") return Quantity{*amount, Unit::square_inch};
  const auto known = unit_from(unit);
  if (!known)
    return fail(FaultCode::bad_input, "\"" + std::string(unit.substr(0, 20)) + "\" is no unit that is known", std::string(what),
                "give kg, lb, N, mm, in2, cm2, %, Hz");
  return Quantity{*amount, *known};
}

Outcome<double> seconds_in(std::string_view text, std::string_view what) {
  text = trimmed(text);
  std::size_t end = 0;
  while (end < text.size() && ((text[end] >= '0' && text[end] <= '9') || text[end] == '.')) ++end;
  const auto amount = number_in(text.substr(0, end), what);
  if (!amount) return fail(amount.error());
  const std::string_view unit = trimmed(text.substr(end));
  for (const auto& [name, factor] :
       {std::pair{"", 1.0}, std::pair{"s", 1.0}, std::pair{"min", 60.0}, std::pair{"h", 3600.0}, std::pair{"d", 86'400.0}})
    if (unit == name) return *amount * factor;
  return fail(FaultCode::bad_input, "\"" + std::string(unit.substr(0, 20)) + "\" is no time", std::string(what), "give 90s, 20min, 2h or 3d");
}

Outcome<double> stiffness_in(std::string_view text, std::string_view what) {
  text = trimmed(text);
  std::size_t end = 0;
  while (end < text.size() && ((text[end] >= '0' && text[end] <= '9') || text[end] == '.' || text[end] == ',')) ++end;
  const auto amount = number_in(text.substr(0, end), what);
  if (!amount) return fail(amount.error());
  const std::string_view unit = trimmed(text.substr(end));
  double factor = 0;
  // 1 kgf = 9.80665 N, 1 lbf = 4.4482216152605 N, 1 in = 25.4 mm, exactly (NIST SP 811, App. B.8).
  for (const auto& [name, by] : {std::pair{"N/mm", 1000.0}, std::pair{"kN/m", 1000.0}, std::pair{"N/m", 1.0}, std::pair{"kg/cm", 980.665},
                                 std::pair{"lb/in", 4.4482216152605 / 0.0254}})
    if (unit == name) factor = by;
  if (factor == 0) return fail(FaultCode::bad_input, "a stiffness needs its unit", std::string(what), "give it as 34N/mm, 35kg/cm or 195lb/in");
  const double value = *amount * factor;
  if (!(value >= 8000 && value <= 120'000))
    return fail(FaultCode::bad_input, "this is no stiffness of a string bed", std::string(what),
                "beds have some 20 to 50 N/mm; check the unit, or convert what your device shows");
  return value;
}

Outcome<> tell(ToldSetup& told, std::string_view word) {
  const std::size_t sign = word.find('=');
  if (sign == std::string_view::npos)
    return fail(FaultCode::bad_input, "\"" + std::string(word.substr(0, 60)) + "\" has no value", "setup", "give NAME=VALUE, as gauge=1.25");
  const std::string name(trimmed(word.substr(0, sign)));
  const std::string_view value = trimmed(word.substr(sign + 1));
  BedSetup& setup = told.setup;
  if (name == "head") {
    const auto area = quantity_in(value, name);
    if (!area) return fail(area.error());
    const double amount = area->amount.to_double();
    if (area->unit != Unit::square_inch && area->unit != Unit::square_centimetre)
      return fail(FaultCode::bad_input, "a head's area needs its unit", name, "give 100in2 or 645cm2");
    setup.area = area->unit == Unit::square_inch ? amount * 6.4516 : amount;
    setup.corners.clear();
    return {};
  }
  if (name == "aspect") return set_to(setup.aspect, plain(value, name, Unit::none));
  if (name == "shape") return set_to(setup.shape, plain(value, name, Unit::none));
  if (name == "pattern") {
    std::size_t by = value.find('x');
    if (by == std::string_view::npos) by = value.find('/');
    const auto mains = by == std::string_view::npos ? Outcome<double>(0) : number_in(trimmed(value.substr(0, by)), name);
    const auto crosses = by == std::string_view::npos ? Outcome<double>(0) : number_in(trimmed(value.substr(by + 1)), name);
    if (!mains || !crosses || !(*mains >= 1 && *mains <= 60 && *crosses >= 1 && *crosses <= 60) || *mains != std::floor(*mains) ||
        *crosses != std::floor(*crosses))
      return fail(FaultCode::bad_input, "this is no pattern", name, "give mains x crosses, as 16x19");
    setup.pattern.mains = static_cast<int>(*mains);
    setup.pattern.crosses = static_cast<int>(*crosses);
    setup.pattern.main_positions.clear();
    setup.pattern.cross_positions.clear();
    return {};
  }
  if (name == "widening") return set_to(setup.pattern.widening, plain(value, name, Unit::none));
  if (name == "main_positions" || name == "cross_positions") {
    auto positions = positions_in(value, name);
    if (!positions) return fail(positions.error());
    (name == "main_positions" ? setup.pattern.main_positions : setup.pattern.cross_positions) = std::move(*positions);
    return {};
  }
  if (name == "tension" || name == "mains" || name == "crosses") {
    const auto newtons = tension_in(told, value, name);
    if (!newtons) return fail(newtons.error());
    if (name != "crosses") setup.mains.pulled = *newtons;
    if (name == "crosses" || name == "tension" || !told.crosses_told) setup.crosses.pulled = *newtons;
    told.crosses_told = told.crosses_told || name == "crosses";
    told.tension_told = true;
    return {};
  }
  if (name == "pieces") {
    const auto pieces = plain(value, name, Unit::none);
    if (!pieces) return fail(pieces.error());
    if (*pieces != 1 && *pieces != 2) return fail(FaultCode::bad_input, "a racket is strung in one piece or two", name, "give 1 or 2");
    setup.pieces = static_cast<int>(*pieces);
    return {};
  }
  if (name == "temperature") return set_to(setup.temperature, plain(value, name, Unit::none));
  if (name == "after") {
    told.after_told = true;
    return set_to(setup.after, seconds_in(value, name));
  }
  if (name == "contact") return set_to(setup.assumed.contact, plain(value, name, Unit::millimetre));
  if (name == "off_machine" || name == "weaving_loss") {
    const auto percent = plain(value, name, Unit::percent);
    if (!percent) return fail(percent.error());
    (name == "off_machine" ? setup.assumed.off_machine : setup.assumed.weaving) = *percent / 100;
    return {};
  }
  if (name == "frame") return told.whose.frame = std::string(value), Outcome<>();
  if (name == "model") return told.whose.model = std::string(value), Outcome<>();
  const bool of_crosses = name.rfind("crosses_", 0) == 0, of_mains = name.rfind("mains_", 0) == 0;
  const std::string_view rest = std::string_view(name).substr(of_crosses ? 8 : of_mains ? 6 : 0);
  Outcome<bool> taken = false;
  if (!of_crosses) taken = tell_strings(setup.mains, rest, value, name);
  if (taken && !of_mains) taken = tell_strings(setup.crosses, rest, value, name);
  if (!taken) return fail(taken.error());
  if (!*taken)
    return fail(FaultCode::bad_input, "\"" + name.substr(0, 40) + "\" is not known of a setup", "setup",
                "give head, aspect, pattern, widening, string, gauge, tension, mains, crosses, pre_stretch, after, temperature, contact, frame or "
                "model; or mains_gauge, crosses_string, ...");
  return {};
}

Outcome<ToldSetup> setup_in_words(std::span<const std::string> words, ToldSetup before) {
  for (const std::string& word : words)
    if (auto taken = tell(before, word); !taken) return fail(taken.error());
  before.whose.material = material_of(before.setup);
  before.whose.string = kind_words(before.setup.mains.kind) +
                        (before.setup.crosses.kind == before.setup.mains.kind ? "" : " / " + kind_words(before.setup.crosses.kind));
  return before;
}

Outcome<ToldSetup> setup_in_json(std::string_view text, std::string_view source) {
  namespace json = boost::json;
  boost::system::error_code error;
  const json::value document = json::parse(text, error);
  const auto wrong = [&](std::string what) {
    return fail(FaultCode::bad_input, std::move(what), std::string(source), "give an object of names with texts or numbers, as {\"gauge\": 1.25}");
  };
  if (error || !document.is_object()) return wrong("this is no JSON object");
  std::vector<std::string> words;
  for (const auto& member : document.get_object()) {
    if (member.value().is_string())
      words.push_back(std::string(member.key()) + "=" + std::string(member.value().get_string()));
    else if (member.value().is_number())
      words.push_back(std::string(member.key()) + "=" +
                      Decimal::rounded(std::clamp(member.value().to_number<double>(), -1e6, 1e6), 6).trimmed().text());
    else
      return wrong("\"" + std::string(member.key()) + "\" is neither text nor number");
  }
  auto out = setup_in_words(words);
  if (!out) {
    Fault fault = out.error();
    fault.where = std::string(source) + (fault.where.empty() ? "" : ", " + fault.where);
    return fail(std::move(fault));
  }
  return out;
}

Outcome<std::vector<BedPoint>> read_corners(std::string_view bytes, std::string_view source) {
  const auto table = whole_table(bytes, source);
  if (!table) return fail(table.error());
  const Columns columns(*table);
  if (!columns.has("x") || !columns.has("y"))
    return fail(FaultCode::bad_input, "an outline needs the columns x and y", csv_place(source, 1), "give millimetres, a corner a row");
  std::vector<BedPoint> out;
  for (const CsvRow& row : table->rows) {
    const auto x = number_in(columns.of(row, "x"), "x"), y = number_in(columns.of(row, "y"), "y");
    if (!x) return fail(at_row(x.error(), source, row));
    if (!y) return fail(at_row(y.error(), source, row));
    out.push_back({*x, *y});
  }
  return out;
}

Outcome<std::vector<RelaxationReading>> read_relaxation(std::string_view bytes, std::string_view source) {
  const auto table = whole_table(bytes, source);
  if (!table) return fail(table.error());
  const Columns columns(*table);
  for (const char* needed : {"racket", "after"})
    if (!columns.has(needed))
      return fail(FaultCode::bad_input, std::string("the column ") + needed + " is missing", csv_place(source, 1),
                  "give racket, after, and value or hz");
  if (columns.has("value") == columns.has("hz"))
    return fail(FaultCode::bad_input, "readings are in a column value or a column hz", csv_place(source, 1), "give one of the two");
  std::vector<RelaxationReading> out;
  for (const CsvRow& row : table->rows) {
    RelaxationReading one;
    one.racket = columns.of(row, "racket");
    const auto after = seconds_in(columns.of(row, "after"), "after");
    if (!after) return fail(at_row(after.error(), source, row));
    one.seconds = *after;
    const bool tone = columns.has("hz");
    const auto value = number_in(columns.of(row, tone ? "hz" : "value"), tone ? "hz" : "value");
    if (!value) return fail(at_row(value.error(), source, row));
    one.value = tone ? *value * *value : *value;
    one.relative_sd = tone ? 0.01 : 0.02;
    if (const std::string text = columns.of(row, "material"); !text.empty()) {
      const auto material = material_from(text);
      if (!material) return fail(at_row(material.error(), source, row));
      one.of.material = *material;
    }
    for (const auto& [name, into, factor] : {std::tuple{"pre_stretch", &one.of.pre_stretch, 1.0}, std::tuple{"temperature", &one.of.temperature, 1.0},
                                             std::tuple{"doubt", &one.relative_sd, tone ? 0.02 : 0.01}}) {
      const std::string text = columns.of(row, name);
      if (text.empty()) continue;
      const auto number = number_in(text, name);
      if (!number) return fail(at_row(number.error(), source, row));
      *into = *number * factor;
    }
    out.push_back(std::move(one));
  }
  return out;
}

Outcome<MeasuredRows> read_measured(std::string_view bytes, const BedReckoner& reckoner, std::string_view source) {
  const auto table = whole_table(bytes, source);
  if (!table) return fail(table.error());
  const Columns columns(*table);
  if (!columns.has("setup"))
    return fail(FaultCode::bad_input, "the column setup is missing", csv_place(source, 1), "give the words of a setup, divided by spaces");
  MeasuredRows out;
  std::vector<double> ages;  // of the readings; below 0: not told
  for (const CsvRow& row : table->rows) {
    std::vector<std::string> words;
    std::string word;
    for (const char c : columns.of(row, "setup") + " ") {
      if (c == ' ' || c == ';') {
        if (!word.empty()) words.push_back(std::move(word));
        word.clear();
      } else {
        word += c;
      }
    }
    auto told = setup_in_words(words);
    if (!told) return fail(at_row(told.error(), source, row));
    if (!told->tension_told)
      return fail(
          at_row({FaultCode::bad_input, "a measured bed needs its tension", "setup", "give tension=24kg or mains= and crosses="}, source, row));
    const std::string stiffness = columns.of(row, "stiffness"), hz = columns.of(row, "hz");
    if (stiffness.empty() == hz.empty())
      return fail(at_row({FaultCode::bad_input, "a measured bed has a stiffness or a tone", "", "fill in one of stiffness and hz"}, source, row));
    const auto measured = hz.empty() ? stiffness_in(stiffness, "stiffness") : number_in(hz, "hz");
    if (!measured) return fail(at_row(measured.error(), source, row));
    const auto reckoned = reckoner.value(told->setup, hz.empty() ? BedGoal{BedGoal::Kind::stiffness, 0} : BedGoal{BedGoal::Kind::tone, 0});
    if (!reckoned) return fail(at_row(reckoned.error(), source, row));
    BedReading one{told->whose.frame, told->whose.model, told->whose.string, 0, hz.empty() ? 0.03 : 0.012};
    for (const auto& [name, into] : {std::pair{"frame", &one.frame}, std::pair{"model", &one.model}, std::pair{"string", &one.string}})
      if (const std::string text = columns.of(row, name); !text.empty()) *into = text;
    if (const std::string text = columns.of(row, "doubt"); !text.empty()) {
      const auto percent = number_in(text, "doubt");
      if (!percent) return fail(at_row(percent.error(), source, row));
      one.relative_sd = *percent / 100;
    }
    if (!(*measured > 0)) return fail(at_row({FaultCode::bad_input, "a reading is above 0", "", "give what was measured"}, source, row));
    one.log_ratio = (hz.empty() ? 1 : 2) * std::log(*measured / *reckoned);
    const auto tensions = reckoner.tensions(told->setup);
    if (!tensions) return fail(at_row(tensions.error(), source, row));
    one.material = told->whose.material;
    ages.push_back(told->after_told ? tensions->left : -1);
    out.readings.push_back(std::move(one));
  }
  if (std::all_of(ages.begin(), ages.end(), [](double left) { return left < 0; })) {
    out.ages.assumed = ages.size();
    return out;
  }
  std::vector<BedReading> known;
  for (std::size_t i = 0; i < ages.size(); ++i) {
    if (ages[i] < 0) {
      ++out.ages.unknown;
      continue;
    }
    out.ages.add(ages[i]);
    known.push_back(std::move(out.readings[i]));
  }
  out.readings = std::move(known);
  return out;
}

}  // namespace weavelog
