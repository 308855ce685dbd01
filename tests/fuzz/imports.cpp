// What people bring in files: entry lists, price lists, and the desk's requests in JSON.

#include <boost/json.hpp>

#include "core/base/local_time.h"
#include "core/desk/past_jobs.h"
#include "core/people/entry_list.h"
#include "core/people/learn_weights.h"
#include "core/people/people_table.h"
#include "core/people/price_list.h"
#include "sync/cli/field_input.h"
#include "tests/fuzz/target_list.h"

namespace weavelog::fuzz {
namespace {

Bytes bytes_of(std::string_view text) { return Bytes(text.begin(), text.end()); }

/// Encoding and separator are the first byte's, the table the rest.
CsvOptions csv_options(Input& in) {
  CsvOptions out;
  constexpr TextEncoding encodings[] = {TextEncoding::utf8, TextEncoding::windows_1252};
  if (in.pick(4) == 3) out.encoding = encodings[in.pick(2)];
  return out;
}

}  // namespace

void run_entry_list(ByteView input) {
  Input in(input);
  const CsvOptions options = csv_options(in);
  const ByteView text = in.rest();
  const auto list = read_entry_list(as_text(text), options, "list.csv");
  if (!list) return;
  for (const auto& row : list->rows) must_hold(!row.item.family_name.empty() || !row.item.native_name.empty(), "an entry without a name came in");
}

std::vector<Bytes> seeds_entry_list() {
  return {bytes_of("\x01" "family_name,given_name,native_name,country,birth_year,seed,entry,draw,hand,tour_number\n"
                   "Wendelmoor,Ilse,,NED,2002,3,direct,women singles,right,\n\"Quint, \"\"Q\"\"\",Bo,,SWE,1999,,WC,,left,12\n"),
          bytes_of("\x01" "Family_Name;COUNTRY;Seed\r\n\xC3\x98rnvik;NOR;1\r\n;XX;0\r\n"),
          bytes_of("\x01\xEF\xBB\xBF" "family_name\tentry\nA\tQ\nA\tLL\n")};
}

void run_past_jobs(ByteView input) {
  Input in(input);
  PastJobsOptions options;
  options.csv = csv_options(in);
  const auto doubts = in.pick(2);
  options.leave_doubts = doubts == 1;
  options.day_order = static_cast<DayOrder>(in.pick(3));
  const auto jobs = read_past_jobs(as_text(in.rest()), options, "old.csv");
  if (!jobs) return;
  for (const PastJob& job : jobs->rows) {
    must_hold(!job.person.family_name.empty() || !job.person.native_name.empty(), "a job of nobody came in");
    must_hold(!job.agreed.mains_string.empty() || job.agreed.mains_tension.has_value(), "a job of nothing came in");
    must_hold(job.date.empty() || day_from(job.date).has_value(), "a day came in that there is none");
    for (const auto* tension : {&job.agreed.mains_tension, &job.agreed.crosses_tension})
      must_hold(!*tension || (*tension)->unit != Unit::none || jobs->unit_open, "a tension without a unit came in");
  }
}

std::vector<Bytes> seeds_past_jobs() {
  return {bytes_of("\x01\x02\x03"
                   "name,date,racket,Tension (kg),string,hand\nIlse Wendelmoor,26/05/2030,2,25 / 24,Silk / Round,izquierda\n"),
          bytes_of("\x01\x01\x01"
                   "Nachname;Datum;Spannung;Saite\r\nWendelmoor;5/26/2030 10:00;25,5 / 52 lb;\r\n;;;\r\n"),
          bytes_of("\x01\x01\x02"
                   "family_name\tday\tmains mm\tcrosses lb\nA\t03/04/2030\t1.25\t52\nA\t31/31/2030\t125\t5\n")};
}

void run_people(ByteView input) {
  Input in(input);
  const CsvOptions options = csv_options(in);
  const auto table = read_people(as_text(in.rest()), options, "people.csv");
  if (!table || table->rows.size() > 60) return;
  std::vector<std::pair<BookId, PersonFacts>> persons;
  std::vector<PersonFacts> asked;
  for (const auto& row : table->rows) {
    must_hold(!row.facts.family.empty() || !row.facts.native.empty(), "a person without a name came in");
    BookId book;
    book.bytes[15] = static_cast<std::uint8_t>(persons.size() + 1);
    persons.emplace_back(book, row.facts);
    asked.push_back(row.facts);
  }
  const PersonIndex index(persons);
  for (const PersonFacts& facts : asked) {
    double sum = 0;
    for (const Candidate& candidate : index.match(facts).candidates) {
      must_hold(candidate.probability >= 0 && candidate.probability <= 1, "a probability is none");
      sum += candidate.probability;
    }
    must_hold(sum <= 1 + 1e-9, "one person is more than one");
  }
  const LearntWeights learnt = learn_weights(index, asked);
  must_hold(learnt.weights.known > 0 && learnt.weights.known < 1, "a learnt share is none");
}

std::vector<Bytes> seeds_people() {
  return {bytes_of("\x01id,family_name,given_name,native_name,also_known_as,country,birth_year,hand,tour_number,rackets,strings\n"
                   "1,Wendelmoor,Ilse,,\"Brandsma; Brandsma, Ilse\",NED,2002,right,T1,Orran 90; Orrdn 93,Tarnbrook Lan 90\n"
                   "2,WENDELMOOR,I.,,,NLD,2002,right,T1,Orran 90,\n"),
          bytes_of("\x01" "family_name;given_name\n\xD0\xA9\xD0\xB5\xD0\xB3\xD0\xBB\xD0\xBE\xD0\xB2\xD0\xB0;\xD0\xAE\xD0\xBB\xD0\xB8\xD1\x8F\nScheglova;Yuliya\n"),
          bytes_of("\x01" "family_name\n\xD9\x82\xD9\x86\xD8\xAF\xD9\x8A\n\xE7\x8E\x8B\xE5\xB0\x8F\xE6\x98\x8E\nd\n\n")};
}

void run_price_list(ByteView input) {
  Input in(input);
  const CsvOptions options = csv_options(in);
  (void)read_price_list(as_text(in.rest()), options, "prices.csv");
}

std::vector<Bytes> seeds_price_list() {
  return {bytes_of("\x01service,amount,currency\nstringing,22.00,EUR\nrush,\"10,50\",EUR\n"),
          bytes_of("\x01service;amount;currency\nstringing;3000;JPY\n;-1;ZZZ\n")};
}

void run_fields_json(ByteView input) {
  boost::system::error_code error;
  boost::json::parse_options limits;
  limits.max_depth = 32;
  const auto value = boost::json::parse(std::string(as_text(input)), error, {}, limits);
  if (error || !value.is_object()) return;
  cli::Typing typing;
  typing.now = 1'800'000'000'000;
  typing.zone = "Europe/Paris";
  Agreed agreed;
  (void)cli::set_fields(agreed, value.get_object(), typing, "agreed");
  Person person;
  (void)cli::set_fields(person, value.get_object(), typing, "player");
  Racket racket;
  (void)cli::set_fields(racket, value.get_object(), typing, "racket");
}

std::vector<Bytes> seeds_fields_json() {
  return {bytes_of(R"({"mains_string": "Tarnbrook Silk", "mains_gauge": "1.25", "mains_tension": "25 kg", "pieces": 2})"),
          bytes_of(R"({"crosses_gauge": {"amount": "1.23", "unit": "mm"}, "knots": 4, "mains_supply": "reel", "mains_owner": "room"})"),
          bytes_of(R"({"family_name": "Wendelmoor", "birth_year": 2002, "language": "fr", "tension_unit": "kg", "country": "NED"})"),
          bytes_of(R"({"label": "1", "maker": "Orrin", "ready_by": "+180", "note": null, "x": [1, true]})")};
}

}  // namespace weavelog::fuzz
