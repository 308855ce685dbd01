#include "core/desk/past_job_columns.h"

#include <algorithm>
#include <array>
#include <optional>

#include "core/base/text.h"

namespace weavelog {
namespace {

struct OurColumn {
  std::string_view name;
  std::string_view known_as;  // search keys of headers, parted by commas
};
// Words of English, German, French and Spanish lists, from memory. Left out because two of these languages part over them: main, tag.
constexpr auto kOurs = std::to_array<OurColumn>({
    {"family_name", "family name,last name,surname,lastname,nachname,familienname,nom,nom de famille,apellido,apellidos"},
    {"given_name", "given name,first name,firstname,forename,vorname,prenom,nombre"},
    {"name", "name,player,full name,spieler,spielerin,joueur,joueuse,jugador,jugadora,customer,kunde,client,cliente"},
    {"native_name", "native name,name in own script"},
    {"country", "country,nation,nationality,nat,land,pays,pais"},
    {"birth_year", "birth year,year of birth,born,jahrgang,geburtsjahr,annee de naissance,ano de nacimiento"},
    {"hand", "hand,plays,schlaghand,mano"},
    {"tour_number", "tour number,licence,license,lizenz,licencia"},
    {"date", "date,day,strung on,datum,jour,fecha"},
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

bool is_force(Unit unit) {
  return in_newtons(Quantity{Decimal{1, 0}, unit}).has_value();
}
bool is_letter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<unsigned char>(c) >= 0x80;
}

bool is_gauge(std::string_view ours) {
  return ours == "mains_gauge" || ours == "crosses_gauge";
}

/// A header parted into what it names and the unit at its end, in brackets or not.
struct Parted {
  std::string name;
  Unit unit = Unit::none;
};
Parted parted(std::string_view header) {
  std::string_view rest = trimmed(header);
  while (!rest.empty() && (rest.back() == ')' || rest.back() == ']')) rest = trimmed(rest.substr(0, rest.size() - 1));
  std::size_t begin = rest.size();
  while (begin > 0 && (is_letter(rest[begin - 1]) || rest[begin - 1] == '%')) --begin;
  const auto unit = unit_from(rest.substr(begin));
  if (!unit || *unit == Unit::none || begin == rest.size()) return {std::string(header), Unit::none};
  rest = rest.substr(0, begin);
  while (!rest.empty() && std::string_view(" ([,:;/-_.").find(rest.back()) != std::string_view::npos) rest.remove_suffix(1);
  return {std::string(rest), *unit};
}

std::string_view ours_named(std::string_view header) {
  std::string spaced = search_key(header);
  std::replace(spaced.begin(), spaced.end(), '_', ' ');
  for (const OurColumn& column : kOurs) {
    std::string ours(column.name);
    std::replace(ours.begin(), ours.end(), '_', ' ');
    if (spaced == ours) return column.name;
    std::string_view rest = column.known_as;
    while (!rest.empty()) {
      const auto comma = rest.find(',');
      if (rest.substr(0, comma) == spaced) return column.name;
      rest = comma == std::string_view::npos ? std::string_view{} : rest.substr(comma + 1);
    }
  }
  return {};
}

/// "mains (kg)" is no string: the unit tells what is meant.
std::string_view meant_with(std::string_view ours, Unit unit) {
  if (is_force(unit)) {
    if (ours == "mains_string") return "mains_tension";
    if (ours == "crosses_string") return "crosses_tension";
    if (ours == "string") return "tension";
  }
  if (unit == Unit::millimetre) {
    if (ours == "mains_string") return "mains_gauge";
    if (ours == "crosses_string") return "crosses_gauge";
  }
  return ours;
}

}  // namespace

std::vector<std::string_view> past_job_columns() {
  std::vector<std::string_view> out;
  for (const OurColumn& column : kOurs) out.push_back(column.name);
  return out;
}

bool holds_tension(std::string_view ours) {
  return ours == "tension" || ours == "mains_tension" || ours == "crosses_tension";
}

Unit unit_in_header(std::string_view header, std::string_view ours) {
  const Unit unit = parted(header).unit;
  const bool fits =
      (holds_tension(ours) && is_force(unit)) || (is_gauge(ours) && unit == Unit::millimetre) || (ours == "prestretch" && unit == Unit::percent);
  return fits ? unit : Unit::none;
}

std::vector<ColumnUse> recognised_columns(const std::vector<std::string>& header) {
  std::vector<ColumnUse> out;
  for (const std::string& one : header) {
    const Parted parts = parted(one);
    std::string_view ours = ours_named(one);
    if (ours.empty() && !parts.name.empty()) ours = meant_with(ours_named(parts.name), parts.unit);
    const bool taken = std::any_of(out.begin(), out.end(), [&](const ColumnUse& use) { return use.ours == ours; });
    if (taken) ours = {};
    out.push_back({one, std::string(ours), unit_in_header(one, ours)});
  }
  return out;
}

}  // namespace weavelog
