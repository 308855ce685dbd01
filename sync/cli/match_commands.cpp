// match, name: who of one file is who of another, and how alike two names are; without any database.

#include "core/base/text.h"
#include "core/people/learn_weights.h"
#include "core/people/people_table.h"
#include "core/people/similarity.h"
#include "sync/cli/quality_commands.h"
#include "sync/cli/render.h"

namespace weavelog::cli {
namespace {

/// More rows than any circuit has players; beyond, a comparison of all would take minutes.
constexpr std::size_t kMostRows = 50'000;

struct MatchArguments {
  std::string a, b, weights = "auto", encoding;
};

Outcome<PeopleTable> people_in(const std::string& path, const std::string& encoding) {
  const auto bytes = plan_file(path);
  if (!bytes) return fail(bytes.error());
  CsvOptions options;
  options.limits.rows = kMostRows;
  if (!encoding.empty()) options.encoding = encoding_from(encoding).value_or(TextEncoding::detect);
  auto table = read_people(*bytes, options, path);
  if (!table) return fail(table.error());
  if (table->faults.empty()) return table;
  Fault first = table->faults.front();
  if (const std::size_t more = table->faults.size() - 1; more > 0) first.what += " (and " + std::to_string(more) + " more faults in this file)";
  return fail(first);
}

BookId number_of_row(std::size_t row) {
  BookId out;
  out.bytes[0] = 1;
  for (std::size_t i = 0; i < 8; ++i) out.bytes[15 - i] = static_cast<std::uint8_t>(row >> (8 * i));
  return out;
}

std::size_t row_of_number(const BookId& book) {
  std::size_t out = 0;
  for (std::size_t i = 8; i < 16; ++i) out = out << 8 | book.bytes[i];
  return out;
}

void put_row(json::object& out, const char* side, const PeopleRow& row) {
  const std::string key(side);
  if (!row.id.empty()) out[key] = row.id;
  out[key + "_line"] = row.line;
  out[key + "_name"] = row.name();
}

std::string row_text(const PeopleRow& row) {
  return "line " + std::to_string(row.line) + " " + row.name();
}

/// The levels of a table of weights, for the curious.
json::object weights_json(const MatchWeights& weights) {
  constexpr const char* kFields[] = {"family", "given", "country", "birth_year", "hand", "tour_number", "rackets", "strings"};
  json::object out;
  for (std::size_t field = 0; field < kComparedFields; ++field) {
    json::array same, other;
    for (std::size_t level = 0; level < levels_of(static_cast<ComparedField>(field)); ++level) {
      same.push_back(weights.same[field][level]);
      other.push_back(weights.stranger[field][level]);
    }
    out[kFields[field]] = json::object{{"same_person", std::move(same)}, {"stranger", std::move(other)}};
  }
  return out;
}

Outcome<Ending> match(const Settings& settings, const MatchArguments& arguments) {
  const auto a = people_in(arguments.a, arguments.encoding);
  if (!a) return fail(a.error());
  const auto b = people_in(arguments.b, arguments.encoding);
  if (!b) return fail(b.error());
  std::vector<std::pair<BookId, PersonFacts>> persons;
  for (std::size_t i = 0; i < b->rows.size(); ++i) persons.emplace_back(number_of_row(i), b->rows[i].facts);
  std::optional<PersonIndex> index(std::in_place, persons);
  LearntWeights learnt;
  const bool learn =
      arguments.weights == "learnt" || (arguments.weights == "auto" && a->rows.size() >= kEnoughToLearn && b->rows.size() >= kEnoughToLearn);
  if (learn) {
    std::vector<PersonFacts> entries;
    for (const PeopleRow& row : a->rows) entries.push_back(row.facts);
    learnt = learn_weights(*index, entries);
    index.emplace(persons, learnt.weights);
  }

  std::size_t known = 0, likely = 0;
  json::array pairs, fresh;
  std::string text;
  for (const PeopleRow& row : a->rows) {
    const MatchResult result = index->match(row.facts);
    if (result.band == MatchBand::new_person) {
      json::object one;
      put_row(one, "a", row);
      fresh.push_back(std::move(one));
      text += "new     " + row_text(row) + "\n";
      continue;
    }
    ++(result.band == MatchBand::known ? known : likely);
    for (const Candidate& candidate : result.candidates) {
      const PeopleRow& other = b->rows[row_of_number(candidate.book)];
      json::object one;
      put_row(one, "a", row);
      put_row(one, "b", other);
      one["score"] = candidate.probability;
      one["band"] = name_of_band(result.band);
      one["bits"] = candidate.weight;
      one["evidence"] = evidence_bits_json(candidate);
      pairs.push_back(std::move(one));
      text += std::string(result.band == MatchBand::known ? "known   " : "likely  ") + row_text(row) + " = " + row_text(other) + ", " +
              with_decimals(candidate.probability, 4) + ": " + evidence_text(candidate.evidence) + "\n";
      if (result.band == MatchBand::known) break;
    }
  }
  text += std::to_string(known) + " known, " + std::to_string(likely) + " likely, " + std::to_string(fresh.size()) + " new\n";
  json::object out{{"a_rows", a->rows.size()}, {"b_rows", b->rows.size()}, {"known", known}, {"likely", likely}, {"new", fresh.size()}};
  out["weights"] = learn ? "learnt" : "usual";
  if (learn) {
    out["learnt"] = json::object{
        {"rounds", learnt.rounds}, {"entries", learnt.entries}, {"expected_known", learnt.expected_known}, {"levels", weights_json(learnt.weights)}};
  }
  out["pairs"] = std::move(pairs);
  out["new_persons"] = std::move(fresh);
  Context(settings).answer(out, text);
  return Ending::done;
}

struct NameArguments {
  std::string a, b;
};

constexpr const char* kLevelNames[] = {"same", "sound", "short_form", "slip", "slip", "part", "initial", "different"};

json::array words_json(const std::vector<NameWord>& words) {
  json::array out;
  for (const NameWord& word : words)
    out.push_back(json::object{{"word", word.text}, {"sound", word.sound}, {"consonants", word.skeleton}, {"short_forms", word.groups.size()}});
  return out;
}

json::object name_json(const std::string& text, const NameKey& key) {
  return {{"name", text}, {"latin", to_latin(text)}, {"key", search_key(text)}, {"family", words_json(key.family)}, {"given", words_json(key.given)}};
}

std::string name_text(const std::string& name, const NameKey& key) {
  std::string out = name + ": key \"" + search_key(name) + "\"";
  const auto part = [&out](const char* which, const std::vector<NameWord>& words) {
    out += std::string(", ") + which;
    for (const NameWord& word : words) out += " " + word.text + " (sounds " + word.sound + ")";
  };
  if (!key.family.empty()) part("family", key.family);
  if (!key.given.empty()) part("given", key.given);
  return out + "\n";
}

Outcome<std::string> a_name(const std::string& given, const char* where) {
  auto text = clean_text(given, where);
  if (!text) return fail(text.error());
  constexpr std::size_t kLongest = 200;
  if (is_blank(*text)) return fail(FaultCode::bad_input, "there is no name", where, "give a name, as \"Family, Given\" or \"Given Family\"");
  if (text->size() > kLongest)
    return fail(FaultCode::bad_input, "the name is longer than " + std::to_string(kLongest) + " bytes", where, "give one name");
  return text;
}

Outcome<Ending> name(const Settings& settings, const NameArguments& arguments) {
  const auto a = a_name(arguments.a, "the first name"), b = a_name(arguments.b, "the second name");
  if (!a) return fail(a.error());
  if (!b) return fail(b.error());
  const NameKey key_a = whole_name_key(*a), key_b = whole_name_key(*b);
  const std::string folded_a = search_key(*a), folded_b = search_key(*b);
  const NameLikeness likeness = compare_names({key_a}, {key_b});
  const char* const family = kLevelNames[static_cast<std::size_t>(likeness.family)];
  const char* const given = kLevelNames[static_cast<std::size_t>(likeness.given)];
  json::array words;
  std::string text = name_text(*a, key_a) + name_text(*b, key_b);
  for (const auto word_a : words_of(folded_a)) {
    for (const auto word_b : words_of(folded_b)) {
      const double winkler = jaro_winkler(word_a, word_b);
      const std::size_t edits = damerau_levenshtein(word_a, word_b);
      words.push_back(json::object{{"a", word_a}, {"b", word_b}, {"jaro", jaro(word_a, word_b)}, {"jaro_winkler", winkler}, {"edits", edits}});
      text += "  " + std::string(word_a) + " / " + std::string(word_b) + ": Jaro-Winkler " + with_decimals(winkler, 3) + ", " +
              std::to_string(edits) + (edits == 1 ? " edit\n" : " edits\n");
    }
  }
  json::object out{{"a", name_json(*a, key_a)},
                   {"b", name_json(*b, key_b)},
                   {"whole", json::object{{"jaro", jaro(folded_a, folded_b)},
                                          {"jaro_winkler", jaro_winkler(folded_a, folded_b)},
                                          {"edits", damerau_levenshtein(folded_a, folded_b)}}},
                   {"words", std::move(words)},
                   {"family", likeness.said ? json::value(family) : json::value()},
                   {"given", likeness.said && likeness.given_said ? json::value(given) : json::value()},
                   {"swapped", likeness.swapped}};
  text += likeness.said ? std::string("family name: ") + family + (likeness.given_said ? std::string("; given name: ") + given : std::string()) +
                              (likeness.swapped ? "; family and given name changed places\n" : "\n")
                        : std::string("nothing in them can be compared\n");
  Context(settings).answer(out, text);
  return Ending::done;
}

}  // namespace

void add_match_commands(CLI::App& app, FolderWork& chosen) {
  add_plan_command<MatchArguments>(
      app, chosen, "match", "Who of one file is who of another: known, likely (look) or new; without --data", match,
      [](CLI::App& command, MatchArguments& arguments) {
        command.add_option("A", arguments.a, "CSV of the persons to be recognised")->required();
        command.add_option("B", arguments.b, "CSV of those who are known, each once")->required();
        command
            .add_option("--weights", arguments.weights, "usual; learnt from these very files, without labels; auto: learnt from 200 rows on in both")
            ->check(CLI::IsMember({"auto", "usual", "learnt"}))
            ->capture_default_str();
        command.add_option("--encoding", arguments.encoding, "utf-8, utf-16, windows-1252 or latin-1; default: UTF-8, or UTF-16 with a mark")
            ->check(CLI::IsMember({"utf-8", "utf-16", "windows-1252", "latin-1"}));
        command.footer(
            "Columns of both, in any order: family_name (has to be there), given_name, native_name (whole, in its own script), also_known_as (other "
            "names,\n"
            "\"Family, Given\" or a family name, parted by ; or |), country (three letters), birth_year, hand (right, left), tour_number, rackets, "
            "strings (parted\n"
            "alike), id (whatever tells the row). Others are ignored. At most 50,000 rows and 16 MiB.\n"
            "--json: one object: a_rows, b_rows, known, likely, new (counts of A's rows), weights, learnt, pairs: [{a, a_line, a_name, b, b_line, "
            "b_name,\n"
            "score (probability), band, bits, evidence: {field: {agreement, bits}}}], new_persons: [{a, a_line, a_name}]. `a` and `b` are the ids. A "
            "known\n"
            "row has one pair, a likely one up to five.");
      });
  add_plan_command<NameArguments>(
      app, chosen, "name", "Keys and similarities of two names; without --data", name, [](CLI::App& command, NameArguments& arguments) {
        command.add_option("A", arguments.a, "\"Family, Given\" or \"Given Family\", in any script")->required();
        command.add_option("B", arguments.b, "The other name")->required();
        command.footer(
            "--json: one object: a, b: {name, latin, key, family, given: [{word, sound, consonants, short_forms}]}, whole and\n"
            "words: [{a, b, jaro, jaro_winkler, edits}] of the folded keys, family, given (same, sound, short_form, slip, part,\n"
            "initial, different), swapped.");
      });
}

}  // namespace weavelog::cli
