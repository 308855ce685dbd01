#include "sync/cli/entered.h"

#include <algorithm>
#include <set>

#include "core/base/text.h"
#include "core/model/queries.h"
#include "core/model/tables.h"
#include "core/people/name_found.h"
#include "sync/cli/choose.h"
#include "sync/cli/render.h"

namespace weavelog::cli {
namespace {

constexpr std::size_t kMostShown = 20;

/// "Kova Mira (CZE)", as the list has it.
std::string entry_words(const std::string& family, const std::string& given, const std::string& native, const std::string& country) {
  return name_text(family, given, native) + (country.empty() ? "" : " (" + country + ")");
}

std::string entry_words(const EntryListItem& item) {
  return entry_words(item.family_name, item.given_name, item.native_name, item.country) + (item.draw.empty() ? "" : ", " + item.draw);
}

/// Whether an entry that is nobody's yet looks like the player at all: that costs little, and asking who of all players it is costs a look at all of them.
bool may_be_entered(const Ledger& ledger, const BookId& event, const PlayerRow& player) {
  const PersonIndex only({{player.book, facts_of(player)}});
  const auto entries = entry_list(ledger, event);
  return std::any_of(entries.begin(), entries.end(), [&](const EntryRow& row) {
    PersonFacts facts;
    facts.family = row.family_name;
    facts.given = row.given_name;
    facts.native = row.native_name;
    facts.country = row.country;
    facts.birth_year = row.birth_year;
    return !row.player && !only.comparisons(facts).empty();
  });
}

/// The names are the same, and nothing else speaks against it.
bool of_that_name(const Candidate& match) {
  if (match.agreement(EvidenceField::name) != Likeness::same) return false;
  return std::none_of(match.evidence.begin(), match.evidence.end(), [](const Evidence& one) { return one.agreement == Likeness::different; });
}

/// One person's entries: of one country and birth year, no two in one draw.
bool of_one_person(const std::vector<const ArrivalLine*>& lines) {
  std::set<std::string> draws;
  return std::all_of(lines.begin(), lines.end(), [&](const ArrivalLine* line) {
    const EntryListItem &item = line->item, &first = lines.front()->item;
    return item.country == first.country && item.birth_year == first.birth_year && draws.insert(search_key(item.draw)).second;
  });
}

Outcome<> say_who(Context& context, const BookId& event, const std::vector<std::pair<EntityId, BookId>>& links) {
  const auto record = load_event(context.ledger(), event);
  if (!record) return fail(record.error());
  const auto draft = link_entries(*record, links);
  if (!draft) return fail(draft.error());
  if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
  return {};
}

}  // namespace

std::vector<EntityId> entries_of(const std::vector<ArrivalLine>& lines, const BookId& book) {
  std::vector<EntityId> known, likely;
  for (const ArrivalLine& line : lines) {
    if (line.candidates.empty() || line.candidates.front().match.book != book) continue;
    if (line.linked) return {};
    (line.band == MatchBand::known ? known : likely).push_back(line.entry);
  }
  if (!known.empty()) return known;
  return likely.size() == 1 ? likely : std::vector<EntityId>();
}

EntriesLinked link_entered(Context& context, const BookId& event, const BookId& player) {
  EntriesLinked out;
  const auto row = find_player(context.ledger(), player);
  if (!row || is_entered(context.ledger(), player, event) || !may_be_entered(context.ledger(), event, *row)) return out;
  const auto lines = arrival(context.ledger(), event, context.now());
  std::vector<const ArrivalLine*> known, named, likely;
  for (const ArrivalLine& line : lines) {
    // One that is said to be a book which is not here stays so.
    if (line.item.player || line.candidates.empty() || line.candidates.front().match.book != player) continue;
    const bool alone = line.candidates.size() == 1;
    (line.band == MatchBand::known ? known : alone && of_that_name(line.candidates.front().match) ? named : likely).push_back(&line);
  }
  if (known.empty()) {
    if (of_one_person(named))
      known.swap(named);
    else
      likely.swap(named);
  }
  if (known.empty() && likely.size() == 1)
    out.text = "may be " + entry_words(likely.front()->item) + " of the entry list: `arrival` shows it, `tick " + player.hex() + "` says so\n";
  if (known.empty() && likely.size() > 1) {
    std::vector<std::string> named_so;
    for (const ArrivalLine* line : likely) named_so.push_back(entry_words(line->item));
    out.text = "of the entry list " + several_words(named_so) + "; a country or birth year of the player would tell which\n";
  }
  if (known.empty()) return out;
  std::vector<std::pair<EntityId, BookId>> links;
  for (const ArrivalLine* line : known) links.emplace_back(line->entry, player);
  if (auto said = say_who(context, event, links); !said) {
    out.text = "the entry list does not say yet who this is: " + said.error().message() + "\n";
    return out;
  }
  for (const ArrivalLine* line : known) {
    out.entries.push_back(line->entry);
    out.text += "linked to the entry list: " + entry_words(line->item) + "\n";
  }
  return out;
}

std::string entered_text(Context& context, const std::string& typed) {
  const std::string key = search_key(typed);
  const auto event = context.event();
  if (key.empty() || !event) return {};
  std::string text;
  std::size_t found = 0;
  for (const EntryRow& row : entry_list(context.ledger(), *event)) {
    if (row.held_here || !name_found(search_words(row.family_name, row.given_name, row.native_name), key)) continue;
    if (++found > kMostShown) continue;
    text += entry_words(row.family_name, row.given_name, row.native_name, row.country) +
            "  is on the entry list" + (row.draw.empty() ? "" : ", " + row.draw) + ", and no player here yet\n";
  }
  if (found > kMostShown) text += "and " + std::to_string(found - kMostShown) + " more\n";
  if (found > 0)
    text += "The first `drop-off` makes players of them; an exchange or a bundle brings what others hold of them, `arrival` shows whom this device knows.\n";
  return text;
}

}  // namespace weavelog::cli
