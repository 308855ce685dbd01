#include "core/desk/past_jobs.h"

#include <algorithm>
#include <array>
#include <map>

#include "core/base/iso_time.h"
#include "core/base/local_time.h"
#include "core/base/text.h"
#include "core/people/country.h"

namespace weavelog {
namespace {

constexpr std::size_t kNone = SIZE_MAX;
constexpr const char* kFigure = "0123456789.,+- ";

/// Tensions that rackets are strung at, by unit: common practice, no source. They do not overlap.
struct Plausible {
  Unit unit;
  double low, high;
};
constexpr auto kPlausible = std::to_array<Plausible>({{Unit::kilogram_force, 8, 36.5}, {Unit::pound_force, 36.5, 85}, {Unit::newton, 85, 380}});
/// So many of the figures have to fit for a unit to be taken as meant.
constexpr double kMostFit = 0.9;

bool plausible(double value, const Plausible& range) { return value >= range.low * 0.6 && value <= range.high * 1.4; }
const Plausible* range_of(Unit unit) {
  const auto found = std::find_if(kPlausible.begin(), kPlausible.end(), [&](const Plausible& one) { return one.unit == unit; });
  return found == kPlausible.end() ? nullptr : &*found;
}

/// "26/5/2031" or "26.05.2031": its numbers.
struct PartedDate {
  int first = 0, second = 0, year = 0;
  char by = '/';
};
std::optional<PartedDate> parted_date(std::string_view cell) {
  PartedDate out;
  std::array<int, 3> numbers{};
  std::size_t part = 0, digits = 0;
  for (const char c : cell) {
    if (c >= '0' && c <= '9') {
      if (++digits > (part == 2 ? 4U : 2U)) return std::nullopt;
      numbers[part] = numbers[part] * 10 + (c - '0');
    } else if ((c == '/' || c == '.') && part < 2 && digits > 0 && (part == 0 || c == out.by)) {
      out.by = c;
      digits = 0;
      ++part;
    } else if (part == 2 && digits == 4 && (c == ' ' || c == 'T')) {
      break;  // a time of day stands behind
    } else {
      return std::nullopt;
    }
  }
  if (part != 2 || digits != 4) return std::nullopt;
  out.first = numbers[0];
  out.second = numbers[1];
  out.year = numbers[2];
  return out;
}

std::string iso_of(int year, int month, int day) {
  const auto two = [](int n) { return (n < 10 ? "0" : "") + std::to_string(n); };
  return std::to_string(year) + "-" + two(month) + "-" + two(day);
}

class Reader {
 public:
  Reader(const CsvTable& table, const PastJobsOptions& options, std::string_view source) : table_(table), options_(options), source_(source) {
  }

  Outcome<PastJobs> read() {
    if (auto placed = place_columns(); !placed) return fail(placed.error());
    if (auto told = find_day_order(); !told) return fail(told.error());
    for (const CsvFault& fault : table_.faults) out_.faults.push_back({fault, fault.line, {}, {}, false, false, fault});
    for (const CsvRow& row : table_.rows) read_row(row);
    if (auto said = give_units(); !said) return fail(said.error());
    return std::move(out_);
  }

 private:
  Outcome<> place_columns() {
    const auto wrong = [&](const std::string& what, const std::string& column, const std::string& todo) {
      return fail(FaultCode::bad_input, what, csv_place(source_, 1, 0, column), todo);
    };
    auto uses = recognised_columns(table_.header);
    const auto names = past_job_columns();
    const auto is_ours = [&](const std::string& ours) { return std::find(names.begin(), names.end(), ours) != names.end(); };
    std::vector<std::pair<std::size_t, std::string>> said;
    if (options_.meanings) {
      if (options_.meanings->size() != uses.size())
        return wrong(std::to_string(options_.meanings->size()) + " columns were said, the file has " + std::to_string(uses.size()), "", "say every one of them");
      for (std::size_t i = 0; i < uses.size(); ++i) said.emplace_back(i, (*options_.meanings)[i]);
      for (ColumnUse& use : uses) use.ours.clear();
    }
    for (const auto& [ours, header] : options_.columns) {
      if (options_.meanings) break;
      const auto found = std::find(table_.header.begin(), table_.header.end(), header);
      if (is_ours(ours) && found == table_.header.end())
        return wrong("the file has no column \"" + shortened(header, 40) + "\"", "", "copy it from the first line of the file");
      said.emplace_back(found - table_.header.begin(), ours);
    }
    for (const auto& [place, ours] : said) {
      if (ours.empty()) continue;
      if (!is_ours(ours)) return wrong("there is no column of ours called \"" + shortened(ours, 40) + "\"", "", "look at the list of columns");
      // What was said goes before what another header was recognised as.
      for (std::size_t i = 0; i < uses.size(); ++i)
        if (uses[i].ours == ours && std::none_of(said.begin(), said.end(), [&](const auto& one) { return one.first == i; })) uses[i] = {uses[i].header, {}, Unit::none};
      uses[place] = {uses[place].header, ours, unit_in_header(uses[place].header, ours)};
    }
    out_.columns = uses;
    for (std::size_t i = 0; i < uses.size(); ++i) {
      if (uses[i].ours.empty()) continue;
      if (!places_.emplace(uses[i].ours, i).second) return wrong("two columns are taken for " + uses[i].ours, uses[i].header, "say which of them it is");
    }
    const auto has = [&](std::string_view name) { return place_of(name) != kNone; };
    if (!has("family_name") && !has("name") && !has("native_name"))
      return wrong("no column holds the players' names", "", "say which: family_name=HEADER or name=HEADER");
    if (!has("mains_string") && !has("string") && !has("mains_tension") && !has("tension"))
      return wrong("no column holds a string or a tension", "", "say which: string=HEADER or tension=HEADER");
    return {};
  }

  /// All dates with slashes are in one order: a number above 12 anywhere tells which.
  Outcome<> find_day_order() {
    const std::size_t at = place_of("date");
    if (at == kNone) return {};
    std::size_t days_line = 0, months_line = 0;
    bool any = false, matters = false;
    for (const CsvRow& row : table_.rows) {
      const auto date = at < row.fields.size() ? parted_date(trimmed(row.fields[at])) : std::nullopt;
      if (!date || date->by != '/' || (date->first > 12 && date->second > 12)) continue;  // no date in either order
      any = true;
      matters = matters || date->first != date->second;
      if (date->first > 12 && days_line == 0) days_line = row.line;
      if (date->second > 12 && months_line == 0) months_line = row.line;
    }
    if (!any) return {};
    out_.day_order = DayOrder::days_first;
    if (options_.day_order != DayOrder::unsaid) {
      out_.day_order = options_.day_order;
      out_.day_order_by = DayOrderBy::said;
    } else if (days_line > 0 && months_line > 0) {
      if (!options_.leave_doubts)
        return fail(FaultCode::bad_input, "dates are in both orders: day first in line " + std::to_string(days_line) + ", month first in line " + std::to_string(months_line),
                    csv_place(source_, std::max(days_line, months_line), at + 1, table_.header[at]), "write them as 2031-05-26, or say the order");
      out_.day_order_by = DayOrderBy::clash;
    } else if (days_line > 0 || months_line > 0) {
      out_.day_order = days_line > 0 ? DayOrder::days_first : DayOrder::months_first;
      out_.day_order_by = DayOrderBy::table;
    } else if (matters) {
      out_.day_order_by = DayOrderBy::taken;
    }
    return {};
  }

  [[nodiscard]] std::size_t place_of(std::string_view ours) const {
    const auto found = places_.find(std::string(ours));
    return found == places_.end() ? kNone : found->second;
  }
  [[nodiscard]] std::string place(const CsvRow& row, std::string_view ours) const {
    const std::size_t at = place_of(ours);
    return csv_place(source_, row.line, at == kNone ? 0 : at + 1, at == kNone ? std::string_view{} : std::string_view(table_.header[at]));
  }
  void wrong(const CsvRow& row, std::string_view ours, const std::string& found, const std::string& expected, bool odd_unit = false) {
    good_ = false;
    out_.faults.push_back({{FaultCode::bad_input, "\"" + shortened(found, 40) + "\" is not " + expected, place(row, ours), "correct the cell, or leave it empty"},
                           row.line, std::string(ours), shortened(found, 40), odd_unit, false, {}});
  }
  std::string text(const CsvRow& row, std::string_view ours, std::size_t most = 200) {
    const std::size_t at = place_of(ours);
    if (at == kNone || at >= row.fields.size()) return {};
    const auto clean = clean_text(row.fields[at]);
    if (!clean || clean->size() > most) {
      wrong(row, ours, row.fields[at], "a text of at most " + std::to_string(most) + " bytes");
      return {};
    }
    return *clean;
  }

  /// A figure with or without its unit; without, that of the header, otherwise it waits for one.
  std::optional<Quantity> force(const CsvRow& row, std::string_view ours, const std::string& cell) {
    if (is_blank(cell)) return std::nullopt;
    std::string figure = cell;
    const auto letters = figure.find_first_not_of(kFigure);
    Unit unit = Unit::none;
    if (letters != std::string::npos) {
      const auto said = unit_from(trimmed(std::string_view(figure).substr(letters)));
      if (!said || !in_newtons(Quantity{Decimal{1, 0}, *said})) {
        wrong(row, ours, cell, "a tension, such as 25, 25.5 kg or 55 lb");
        return std::nullopt;
      }
      unit = *said;
      figure.resize(letters);
    }
    std::replace(figure.begin(), figure.end(), ',', '.');
    const auto amount = Decimal::parse(trimmed(figure));
    if (!amount || amount->to_double() <= 0 || amount->to_double() > 1000) {
      wrong(row, ours, cell, "a tension, such as 25, 25.5 kg or 55 lb");
      return std::nullopt;
    }
    const std::size_t at = place_of(ours);
    if (unit == Unit::none && at != kNone && out_.columns[at].unit != Unit::none) {
      unit = out_.columns[at].unit;
      if (const Plausible* range = range_of(unit); range != nullptr && !plausible(amount->to_double(), *range)) {
        wrong(row, ours, cell, "a tension in " + std::string(symbol_of(unit)) + ", as the column says", true);
        return std::nullopt;
      }
    }
    return Quantity{*amount, unit};
  }

  void tensions(const CsvRow& row, Agreed& agreed) {
    const std::string both = text(row, "tension", 60);
    if (!both.empty()) {
      const auto bar = both.find('/');
      std::string mains = both.substr(0, bar);
      const std::string crosses = bar == std::string::npos ? mains : both.substr(bar + 1);
      // "25 / 24 kg": the unit stands behind both.
      const auto letters = crosses.find_first_not_of(kFigure);
      if (letters != std::string::npos && mains.find_first_not_of(kFigure) == std::string::npos) mains += crosses.substr(letters);
      agreed.mains_tension = force(row, "tension", mains);
      agreed.crosses_tension = bar == std::string::npos ? agreed.mains_tension : force(row, "tension", crosses);
    }
    if (const auto own = force(row, "mains_tension", text(row, "mains_tension", 60))) agreed.mains_tension = own;
    if (const auto own = force(row, "crosses_tension", text(row, "crosses_tension", 60))) agreed.crosses_tension = own;
  }

  std::optional<Quantity> measure(const CsvRow& row, std::string_view ours, Unit usual, double low, double high, const std::string& expected) {
    std::string cell = text(row, ours, 40);
    if (is_blank(cell)) return std::nullopt;
    const auto letters = cell.find_first_not_of(kFigure);
    const std::string unit = letters == std::string::npos ? std::string() : std::string(trimmed(std::string_view(cell).substr(letters)));
    std::string figure = cell.substr(0, letters);
    std::replace(figure.begin(), figure.end(), ',', '.');
    const auto amount = Decimal::parse(trimmed(figure));
    const bool unit_fits = unit.empty() || unit_from(unit) == usual;
    if (!amount || !unit_fits || amount->to_double() < low || amount->to_double() > high) {
      wrong(row, ours, cell, expected);
      return std::nullopt;
    }
    return Quantity{*amount, usual};
  }

  std::string date(const CsvRow& row) {
    const std::string cell = text(row, "date", 40);
    if (is_blank(cell)) return {};
    std::string day = cell.substr(0, 10);
    if (const auto parts = parted_date(cell)) {
      // With points the day stands first everywhere.
      const bool months_first = parts->by == '/' && out_.day_order == DayOrder::months_first;
      day = iso_of(parts->year, months_first ? parts->first : parts->second, months_first ? parts->second : parts->first);
    }
    if (!is_iso_date(day) || !day_from(day)) {
      wrong(row, "date", cell, "a day, such as 2031-05-26 or 26.05.2031");
      return {};
    }
    if (!options_.last_day.empty() && day > options_.last_day) {
      wrong(row, "date", cell, "a day that has come yet, by this device's clock");
      out_.faults.back().to_come = true;
      return {};
    }
    return day;
  }

  void person(const CsvRow& row, Person& out) {
    out.family_name = text(row, "family_name");
    out.given_name = text(row, "given_name");
    out.native_name = text(row, "native_name");
    const std::string whole = text(row, "name");
    if (out.family_name.empty() && !whole.empty()) {
      const auto comma = whole.find(',');
      const auto space = whole.rfind(' ');
      if (comma != std::string::npos) {
        out.family_name = std::string(trimmed(std::string_view(whole).substr(0, comma)));
        out.given_name = std::string(trimmed(std::string_view(whole).substr(comma + 1)));
      } else if (space != std::string::npos) {
        out.family_name = whole.substr(space + 1);
        out.given_name = std::string(trimmed(std::string_view(whole).substr(0, space)));
      } else {
        out.family_name = whole;
      }
    }
    if (good_ && is_blank(out.family_name) && is_blank(out.native_name))
      wrong(row, place_of("family_name") != kNone ? "family_name" : "name", out.family_name, "a name");
    out.country = text(row, "country", 40);
    std::transform(out.country.begin(), out.country.end(), out.country.begin(), [](char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; });
    if (!out.country.empty() && !is_country_code(out.country)) wrong(row, "country", out.country, "a country of three letters, such as POR");
    if (const std::string year = text(row, "birth_year", 10); !is_blank(year)) {
      const auto number = Decimal::parse(year);
      if (number && number->to_double() >= 1900 && number->to_double() <= 2099 && number->to_double() == static_cast<double>(static_cast<int>(number->to_double())))
        out.birth_year = static_cast<std::int64_t>(number->to_double());
      else wrong(row, "birth_year", year, "a year from 1900 to 2099");
    }
    if (const std::string hand = search_key(text(row, "hand", 20)); !hand.empty()) {
      if (hand.front() == 'l' || hand.front() == 'g' || hand.front() == 'z' || hand.front() == 'i') out.hand = Hand::left;  // left, links, gauche, zurda, izquierda
      else if (hand.front() == 'r' || hand.front() == 'd') out.hand = Hand::right;                           // right, rechts, droite, diestra, derecha
      else wrong(row, "hand", hand, "right or left");
    }
    out.tour_number = text(row, "tour_number", 40);
  }

  void read_row(const CsvRow& row) {
    good_ = true;
    PastJob job;
    job.line = row.line;
    person(row, job.person);
    job.date = date(row);
    job.event_name = text(row, "event");
    job.racket.label = text(row, "racket", 60);
    job.racket.maker = text(row, "maker", 60);
    job.racket.model = text(row, "model", 60);
    Agreed& agreed = job.agreed;
    if (const std::string both = text(row, "string"); !both.empty()) {
      const auto bar = both.find('/');
      agreed.mains_string = std::string(trimmed(std::string_view(both).substr(0, bar)));
      agreed.crosses_string = bar == std::string::npos ? agreed.mains_string : std::string(trimmed(std::string_view(both).substr(bar + 1)));
    }
    if (const std::string own = text(row, "mains_string"); !own.empty()) agreed.mains_string = own;
    if (const std::string own = text(row, "crosses_string"); !own.empty()) agreed.crosses_string = own;
    if (agreed.crosses_string.empty()) agreed.crosses_string = agreed.mains_string;
    const std::string gauge = "a gauge in mm, such as 1.25";
    agreed.mains_gauge = measure(row, "mains_gauge", Unit::millimetre, 0.6, 2, gauge);
    agreed.crosses_gauge = measure(row, "crosses_gauge", Unit::millimetre, 0.6, 2, gauge);
    agreed.mains_prestretch = agreed.crosses_prestretch = measure(row, "prestretch", Unit::percent, 0, 30, "a pre-stretch in per cent, 0 to 30");
    tensions(row, agreed);
    job.stringer = text(row, "stringer", 100);
    agreed.note = text(row, "note", 1000);
    if (good_ && agreed.mains_string.empty() && !agreed.mains_tension)
      wrong(row, place_of("tension") != kNone ? "tension" : "mains_tension", "", "a string or a tension: nothing is said of this racket");
    if (good_) out_.rows.push_back(std::move(job));
  }

  Outcome<> give_units() {
    std::vector<double> bare;
    const auto each = [&](const auto& use) {
      for (PastJob& job : out_.rows)
        for (auto* tension : {&job.agreed.mains_tension, &job.agreed.crosses_tension})
          if (*tension && (*tension)->unit == Unit::none) use(job, **tension);
    };
    each([&](PastJob&, Quantity& one) { bare.push_back(one.amount.to_double()); });
    if (bare.empty()) return {};
    Unit unit = options_.unit.value_or(Unit::none);
    std::map<Unit, std::size_t> fits;
    for (const double value : bare)
      for (const Plausible& one : kPlausible)
        if (value >= one.low && value < one.high) ++fits[one.unit];
    if (unit == Unit::none) {
      for (const auto& [candidate, count] : fits)
        if (static_cast<double>(count) >= kMostFit * static_cast<double>(bare.size())) unit = candidate;
      if (unit == Unit::none && options_.leave_doubts) {
        out_.unit_open = true;
        return {};
      }
      if (unit == Unit::none) {
        std::string what = "tensions without a unit fit no single one:";
        for (const auto& [candidate, count] : fits) what += " " + std::to_string(count) + " look like " + std::string(symbol_of(candidate)) + ",";
        what.pop_back();
        return fail(FaultCode::bad_input, what, csv_place(source_, 1, 0, "tension"), "say the unit, or write it into the cells");
      }
      out_.unit_found = true;
    }
    out_.unit = unit;
    const Plausible* range = range_of(unit);
    std::erase_if(out_.rows, [&](PastJob& job) {
      bool odd = false;
      for (auto* tension : {&job.agreed.mains_tension, &job.agreed.crosses_tension}) {
        if (!*tension || (*tension)->unit != Unit::none) continue;
        const double value = (*tension)->amount.to_double();
        odd = odd || (range != nullptr && (!plausible(value, *range) || (out_.unit_found && (value < range->low || value >= range->high))));
        (*tension)->unit = unit;
      }
      if (odd)
        out_.faults.push_back({{FaultCode::bad_input, "this tension does not look like " + std::string(symbol_of(unit)) + " as the others do",
                                csv_place(source_, job.line, 0, "tension"), "write the unit beside it"},
                               job.line, "tension", {}, true, false, {}});
      return odd;
    });
    return {};
  }

  const CsvTable& table_;
  const PastJobsOptions& options_;
  std::string source_;
  std::map<std::string, std::size_t> places_;
  PastJobs out_;
  bool good_ = true;
};

}  // namespace

std::string last_past_day(UnixMs now) {
  constexpr UnixMs kFarthestEast = UnixMs{14} * 3600 * 1000;  // UTC+14
  return date_text(LocalTime("UTC").day_of(now + kFarthestEast));
}

Outcome<PastJobs> past_jobs_of(const CsvTable& table, const PastJobsOptions& options, std::string_view source) {
  return Reader(table, options, source).read();
}

Outcome<PastJobs> read_past_jobs(std::string_view bytes, const PastJobsOptions& options, std::string_view source) {
  const auto table = read_csv(bytes, options.csv, source);
  if (!table) return fail(table.error());
  return past_jobs_of(*table, options, source);
}

}  // namespace weavelog
