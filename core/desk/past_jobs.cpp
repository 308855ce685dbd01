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

struct OurColumn {
  std::string_view name;
  std::string_view known_as;  // search keys of headers, parted by commas
};
// Words of English, German, French and Spanish lists, from memory.
constexpr auto kOurs = std::to_array<OurColumn>({
    {"family_name", "family name,last name,surname,lastname,nachname,familienname,nom,nom de famille,apellido,apellidos"},
    {"given_name", "given name,first name,firstname,forename,vorname,prenom,nombre"},
    {"name", "name,player,full name,spieler,spielerin,joueur,joueuse,jugador,jugadora,customer,kunde,client,cliente"},
    {"native_name", "native name,name in own script"},
    {"country", "country,nation,nationality,nat,land,pays,pais"},
    {"birth_year", "birth year,year of birth,born,jahrgang,geburtsjahr,annee de naissance,ano de nacimiento"},
    {"hand", "hand,plays,schlaghand,main,mano"},
    {"tour_number", "tour number,licence,license,lizenz,licencia"},
    {"date", "date,day,strung on,datum,tag,jour,fecha"},
    {"event", "event,tournament,turnier,tournoi,torneo"},
    {"racket", "racket,racquet,racket number,label,schlager,raquette,raqueta,nummer,no,nr"},
    {"maker", "maker,brand,make,marke,hersteller,marque,marca"},
    {"model", "model,racket model,frame,modell,modele,modelo,cadre"},
    {"mains_string", "mains string,mains,main string,langssaite,langs,montants,cordage montants,verticales"},
    {"mains_gauge", "mains gauge,main gauge,gauge mains,starke langs,jauge montants,calibre verticales"},
    {"mains_tension", "mains tension,tension mains,main tension,langs kg,tension montants,tension verticales"},
    {"crosses_string", "crosses string,crosses,cross string,quersaite,quer,travers,cordage travers,horizontales"},
    {"crosses_gauge", "crosses gauge,cross gauge,gauge crosses,starke quer,jauge travers,calibre horizontales"},
    {"crosses_tension", "crosses tension,tension crosses,cross tension,quer kg,tension travers,tension horizontales"},
    {"string", "string,strings,saite,cordage,cuerda,cordaje"},
    {"tension", "tension,kg,lbs,lb,spannung,harte,besaitungsharte,tensiones"},
    {"prestretch", "prestretch,pre stretch,vordehnung,pre etirage,preestirado"},
    {"stringer", "stringer,strung by,besaiter,cordeur,encordador"},
    {"note", "note,notes,comment,remark,bemerkung,notiz,remarque,nota,comentario"},
});
constexpr std::size_t kNone = SIZE_MAX;

/// Tensions that rackets are strung at, by unit: common practice, no source. They do not overlap.
struct Plausible {
  Unit unit;
  double low, high;
};
constexpr auto kPlausible = std::to_array<Plausible>({{Unit::kilogram_force, 8, 36.5}, {Unit::pound_force, 36.5, 85}, {Unit::newton, 85, 380}});
/// So many of the figures have to fit for a unit to be taken as meant.
constexpr double kMostFit = 0.9;

std::size_t ours_called(std::string_view name) {
  for (std::size_t i = 0; i < kOurs.size(); ++i)
    if (kOurs[i].name == name) return i;
  return kNone;
}

std::size_t ours_like(const std::string& header) {
  const std::string key = search_key(header);
  std::string spaced = key;
  std::replace(spaced.begin(), spaced.end(), '_', ' ');
  for (std::size_t i = 0; i < kOurs.size(); ++i) {
    std::string_view rest = kOurs[i].known_as;
    std::string ours(kOurs[i].name);
    std::replace(ours.begin(), ours.end(), '_', ' ');
    if (spaced == ours) return i;
    while (!rest.empty()) {
      const auto comma = rest.find(',');
      if (rest.substr(0, comma) == spaced) return i;
      rest = comma == std::string_view::npos ? std::string_view{} : rest.substr(comma + 1);
    }
  }
  return kNone;
}

class Reader {
 public:
  Reader(const CsvTable& table, const PastJobsOptions& options, std::string_view source) : table_(table), options_(options), source_(source) {
    places_.fill(kNone);
  }

  Outcome<PastJobs> read() {
    if (auto placed = place_columns(); !placed) return fail(placed.error());
    out_.faults = table_.faults;
    for (const CsvRow& row : table_.rows) read_row(row);
    if (auto said = give_units(); !said) return fail(said.error());
    return std::move(out_);
  }

 private:
  Outcome<> place_columns() {
    const auto wrong = [&](const std::string& what, const std::string& column, const std::string& todo) {
      return fail(FaultCode::bad_input, what, csv_place(source_, 1, 0, column), todo);
    };
    std::vector<std::size_t> uses(table_.header.size(), kNone);
    for (const auto& [ours, header] : options_.columns) {
      const std::size_t place = ours_called(ours);
      if (place == kNone) return wrong("there is no column of ours called \"" + shortened(ours, 40) + "\"", "", "look at the list of columns");
      const auto found = std::find(table_.header.begin(), table_.header.end(), header);
      if (found == table_.header.end()) return wrong("the file has no column \"" + shortened(header, 40) + "\"", "", "copy it from the first line of the file");
      uses[static_cast<std::size_t>(found - table_.header.begin())] = place;
    }
    for (std::size_t i = 0; i < uses.size(); ++i) {
      if (uses[i] != kNone) continue;
      const std::size_t like = ours_like(table_.header[i]);
      if (like == kNone || std::find(uses.begin(), uses.end(), like) != uses.end()) continue;
      uses[i] = like;
    }
    for (std::size_t i = 0; i < uses.size(); ++i) {
      out_.columns.push_back({table_.header[i], uses[i] == kNone ? std::string() : std::string(kOurs[uses[i]].name)});
      if (uses[i] == kNone) continue;
      if (places_[uses[i]] != kNone)
        return wrong("two columns are taken for " + std::string(kOurs[uses[i]].name), table_.header[i], "say which of them it is");
      places_[uses[i]] = i;
    }
    const auto has = [&](std::string_view name) { return places_[ours_called(name)] != kNone; };
    if (!has("family_name") && !has("name") && !has("native_name"))
      return wrong("no column holds the players' names", "", "say which: family_name=HEADER or name=HEADER");
    if (!has("mains_string") && !has("string") && !has("mains_tension") && !has("tension"))
      return wrong("no column holds a string or a tension", "", "say which: string=HEADER or tension=HEADER");
    return {};
  }

  [[nodiscard]] std::string place(const CsvRow& row, std::string_view ours) const {
    const std::size_t at = places_[ours_called(ours)];
    return csv_place(source_, row.line, at == kNone ? 0 : at + 1, at == kNone ? std::string_view{} : std::string_view(table_.header[at]));
  }
  void wrong(const CsvRow& row, std::string_view ours, const std::string& found, const std::string& expected) {
    good_ = false;
    out_.faults.push_back({FaultCode::bad_input, "\"" + shortened(found, 40) + "\" is not " + expected, place(row, ours), "correct the cell, or leave it empty"});
  }
  std::string text(const CsvRow& row, std::string_view ours, std::size_t most = 200) {
    const std::size_t at = places_[ours_called(ours)];
    if (at == kNone || at >= row.fields.size()) return {};
    const auto clean = clean_text(row.fields[at]);
    if (!clean || clean->size() > most) {
      wrong(row, ours, row.fields[at], "a text of at most " + std::to_string(most) + " bytes");
      return {};
    }
    return *clean;
  }

  /// A figure with or without its unit; without, it waits in bare_ for one.
  std::optional<Quantity> force(const CsvRow& row, std::string_view ours, const std::string& cell) {
    if (is_blank(cell)) return std::nullopt;
    std::string figure = cell;
    const auto letters = figure.find_first_not_of("0123456789.,+- ");
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
    return Quantity{*amount, unit};
  }

  void tensions(const CsvRow& row, Agreed& agreed) {
    const std::string both = text(row, "tension", 60);
    if (!both.empty()) {
      const auto bar = both.find('/');
      agreed.mains_tension = force(row, "tension", both.substr(0, bar));
      agreed.crosses_tension = bar == std::string::npos ? agreed.mains_tension : force(row, "tension", both.substr(bar + 1));
      // "25 / 24 kg": the unit stands behind both.
      if (agreed.mains_tension && agreed.crosses_tension && agreed.mains_tension->unit == Unit::none) agreed.mains_tension->unit = agreed.crosses_tension->unit;
    }
    if (const auto own = force(row, "mains_tension", text(row, "mains_tension", 60))) agreed.mains_tension = own;
    if (const auto own = force(row, "crosses_tension", text(row, "crosses_tension", 60))) agreed.crosses_tension = own;
  }

  std::optional<Quantity> measure(const CsvRow& row, std::string_view ours, Unit usual, double low, double high, const std::string& expected) {
    std::string cell = text(row, ours, 40);
    if (is_blank(cell)) return std::nullopt;
    const auto letters = cell.find_first_not_of("0123456789.,+- ");
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
    // Day first where it is not ISO: as lists in Europe have it. A month of thirteen tells of another order, and is not guessed at.
    if (day.size() == 10 && (day[2] == '.' || day[2] == '/') && day[5] == day[2]) day = day.substr(6, 4) + "-" + day.substr(3, 2) + "-" + day.substr(0, 2);
    if (is_iso_date(day) && day_from(day)) return day;
    wrong(row, "date", cell, "a day, such as 2031-05-26 or 26.05.2031");
    return {};
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
      wrong(row, places_[ours_called("family_name")] != kNone ? "family_name" : "name", out.family_name, "a name");
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
      if (hand.front() == 'l' || hand.front() == 'g' || hand.front() == 'z') out.hand = Hand::left;         // left, links, gauche, zurda
      else if (hand.front() == 'r' || hand.front() == 'd') out.hand = Hand::right;                           // right, rechts, droite, diestra
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
      wrong(row, places_[ours_called("tension")] != kNone ? "tension" : "mains_tension", "", "a string or a tension: nothing is said of this racket");
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
      if (unit == Unit::none) {
        std::string what = "tensions without a unit fit no single one:";
        for (const auto& [candidate, count] : fits) what += " " + std::to_string(count) + " look like " + std::string(symbol_of(candidate)) + ",";
        what.pop_back();
        return fail(FaultCode::bad_input, what, csv_place(source_, 1, 0, "tension"), "say the unit, or write it into the cells");
      }
      out_.unit_found = true;
    }
    out_.unit = unit;
    const auto range = std::find_if(kPlausible.begin(), kPlausible.end(), [&](const Plausible& one) { return one.unit == unit; });
    std::erase_if(out_.rows, [&](PastJob& job) {
      bool odd = false;
      for (auto* tension : {&job.agreed.mains_tension, &job.agreed.crosses_tension}) {
        if (!*tension || (*tension)->unit != Unit::none) continue;
        const double value = (*tension)->amount.to_double();
        odd = odd || (range != kPlausible.end() && (value < range->low * 0.6 || value > range->high * 1.4 || (out_.unit_found && (value < range->low || value >= range->high))));
        (*tension)->unit = unit;
      }
      if (odd)
        out_.faults.push_back({FaultCode::bad_input, "this tension does not look like " + std::string(symbol_of(unit)) + " as the others do",
                               csv_place(source_, job.line, 0, "tension"), "write the unit beside it"});
      return odd;
    });
    return {};
  }

  const CsvTable& table_;
  const PastJobsOptions& options_;
  std::string source_;
  std::array<std::size_t, kOurs.size()> places_{};
  PastJobs out_;
  bool good_ = true;
};

}  // namespace

std::vector<std::string_view> past_job_columns() {
  std::vector<std::string_view> out;
  for (const OurColumn& column : kOurs) out.push_back(column.name);
  return out;
}

Outcome<PastJobs> read_past_jobs(std::string_view bytes, const PastJobsOptions& options, std::string_view source) {
  const auto table = read_csv(bytes, options.csv, source);
  if (!table) return fail(table.error());
  return Reader(*table, options, source).read();
}

}  // namespace weavelog
