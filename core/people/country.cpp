#include "core/people/country.h"

#include <algorithm>
#include <array>
#include <utility>

namespace weavelog {
namespace {

using Pair = std::pair<std::string_view, std::string_view>;

// Olympic code, ISO 3166-1 alpha-3, where they differ (both lists from memory); sorted.
constexpr auto kOlympicToIso = std::to_array<Pair>({
    {"ALG", "DZA"}, {"ANG", "AGO"}, {"ARU", "ABW"}, {"ASA", "ASM"}, {"BAH", "BHS"}, {"BAN", "BGD"},
    {"BAR", "BRB"}, {"BER", "BMU"}, {"BHU", "BTN"}, {"BIZ", "BLZ"}, {"BOT", "BWA"}, {"BRU", "BRN"},
    {"BUL", "BGR"}, {"BUR", "BFA"}, {"CAM", "KHM"}, {"CAY", "CYM"}, {"CGO", "COG"}, {"CHA", "TCD"},
    {"CHI", "CHL"}, {"CRC", "CRI"}, {"CRO", "HRV"}, {"DEN", "DNK"}, {"ESA", "SLV"}, {"FIJ", "FJI"},
    {"GAM", "GMB"}, {"GBS", "GNB"}, {"GEQ", "GNQ"}, {"GER", "DEU"}, {"GRE", "GRC"}, {"GRN", "GRD"},
    {"GUA", "GTM"}, {"GUI", "GIN"}, {"HAI", "HTI"}, {"HON", "HND"}, {"INA", "IDN"}, {"IRI", "IRN"},
    {"ISV", "VIR"}, {"IVB", "VGB"}, {"KOS", "XKX"}, {"KSA", "SAU"}, {"KUW", "KWT"}, {"LAT", "LVA"},
    {"LBA", "LBY"}, {"LES", "LSO"}, {"MAD", "MDG"}, {"MAS", "MYS"}, {"MAW", "MWI"}, {"MGL", "MNG"},
    {"MON", "MCO"}, {"MRI", "MUS"}, {"MTN", "MRT"}, {"MYA", "MMR"}, {"NCA", "NIC"}, {"NED", "NLD"},
    {"NEP", "NPL"}, {"NGR", "NGA"}, {"NIG", "NER"}, {"OMA", "OMN"}, {"PAR", "PRY"}, {"PHI", "PHL"},
    {"PLE", "PSE"}, {"POR", "PRT"}, {"PUR", "PRI"}, {"RSA", "ZAF"}, {"SAM", "WSM"}, {"SEY", "SYC"},
    {"SKN", "KNA"}, {"SLO", "SVN"}, {"SOL", "SLB"}, {"SRI", "LKA"}, {"SUD", "SDN"}, {"SUI", "CHE"},
    {"TAN", "TZA"}, {"TGA", "TON"}, {"TOG", "TGO"}, {"TPE", "TWN"}, {"UAE", "ARE"}, {"URU", "URY"},
    {"VAN", "VUT"}, {"VIE", "VNM"}, {"VIN", "VCT"}, {"ZAM", "ZMB"}, {"ZIM", "ZWE"},
});
static_assert(std::is_sorted(kOlympicToIso.begin(), kOlympicToIso.end()));

}  // namespace

bool is_country_code(std::string_view code) {
  return code.size() == 3 && std::all_of(code.begin(), code.end(), [](char c) {
           return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
         });
}

std::string country_key(std::string_view code) {
  std::string out(code);
  for (char& c : out)
    if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
  const auto found =
      std::lower_bound(kOlympicToIso.begin(), kOlympicToIso.end(), out,
                       [](const Pair& pair, const std::string& wanted) { return pair.first < wanted; });
  if (found != kOlympicToIso.end() && found->first == out) out = found->second;
  return out;
}

}  // namespace weavelog
