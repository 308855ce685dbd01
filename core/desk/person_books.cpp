#include "core/desk/person_books.h"

#include <algorithm>
#include <map>

#include "core/base/text.h"
#include "core/log/derived_id.h"

namespace weavelog {
namespace {

UnixMs newest_job(const PlayerRecord& record) {
  UnixMs out = 0;
  for (const auto& job : record.jobs) out = std::max(out, job.now.at.value_or(0));
  return out;
}

template <class T>
void append_all(std::vector<T>& to, const std::vector<T>& from) {
  to.insert(to.end(), from.begin(), from.end());
}

template <class T, class Key>
void in_order(std::vector<Loaded<T>>& list, const Key& key) {
  std::stable_sort(list.begin(), list.end(), [&](const auto& a, const auto& b) { return key(a) < key(b); });
}

/// By field: what each of the entities says, those that say nothing left out.
void compare_fields(std::vector<BookDifference>& out, const std::string& subject, std::span<const EntityState* const> entities,
                    std::span<const FieldInfo> fields) {
  for (const FieldInfo& field : fields) {
    BookDifference difference{field.tag, field.name, subject, {}};
    bool differ = false;
    for (const EntityState* entity : entities) {
      const Cell* cell = entity->find(field.tag);
      if (!cell) continue;
      const CellValue& held = cell->latest();
      if (is_cleared(held.value)) continue;
      difference.answers.push_back({entity->book, entity->id, held.value, held.stamp.wall_ms()});
      differ = differ || held.value != difference.answers.front().value;
    }
    if (!differ) continue;
    std::stable_sort(difference.answers.begin(), difference.answers.end(), [](const auto& a, const auto& b) { return a.at > b.at; });
    out.push_back(std::move(difference));
  }
}

template <class S>
std::vector<FieldInfo> fields_of_struct() {
  std::vector<FieldInfo> out;
  for_each_field<S>([&](FieldTag tag, std::string_view name, bool guarded, auto) { out.push_back({tag, Described<S>::kind, name, guarded}); });
  return out;
}

EntityId link_id(const BookId& one, const BookId& other) {
  // Of the same id in both books, whoever says it first.
  return derived_id(std::min(one, other), "link " + std::max(one, other).hex());
}

Outcome<> check_saying(const std::string& by) {
  if (is_blank(by)) return fail(FaultCode::bad_input, "it was not said who says so", "name", "give a name");
  return {};
}

Outcome<> check_player(const Ledger& ledger, const BookId& book) {
  const auto info = ledger.book(book);
  if (info && info->kind != kPlayerBook) return fail(FaultCode::not_found, "this is no player's book", book.hex(), "choose a player");
  return {};
}

/// Nothing if the book is not here or says it already.
void say(std::vector<Draft>& out, const Ledger& ledger, const BookId& book, const BookId& other, LinkSaid said, const std::string& by, UnixMs at) {
  const auto record = load_player(ledger, book);
  if (!record || !record->person.id()) return;
  EntityState seen;
  seen.book = book;
  seen.kind = kBookLink;
  seen.id = link_id(book, other);
  BookLink wanted;
  for (const auto& link : record->links) {
    if (link.id() != seen.id) continue;
    if (link.now.said == said && link.now.other == other) return;
    seen = link.seen;
    wanted = link.now;
  }
  wanted.other = other;
  wanted.said = said;
  wanted.by = by;
  wanted.at = at;
  Draft draft(book, kPlayerBook, kActLinkBooks);
  put_changes(draft, seen, wanted);
  out.push_back(std::move(draft));
}

}  // namespace

Outcome<PersonBooks> load_person(const Ledger& ledger, const BookId& book) {
  auto first = load_player(ledger, book);
  if (!first) return fail(first.error());
  PersonBooks out;
  out.records.push_back(std::move(*first));
  LinkedBooks linked = linked_books(ledger, book);
  for (const BookId& other : linked.here) {
    if (other == book) continue;
    auto record = load_player(ledger, other);
    if (record) out.records.push_back(std::move(*record));
    else out.elsewhere.push_back(other);  // it was forgotten a moment ago
  }
  std::stable_sort(out.records.begin() + 1, out.records.end(), [](const auto& a, const auto& b) { return newest_job(a) > newest_job(b); });
  append_all(out.elsewhere, linked.elsewhere);
  std::erase(out.elsewhere, book);
  return out;
}

BookId newest_book(const PersonBooks& books) {
  const PlayerRecord* newest = &books.records.front();
  for (const PlayerRecord& record : books.records)
    if (newest_job(record) > newest_job(*newest)) newest = &record;
  return newest->book;
}

PlayerRecord together(const PersonBooks& books) {
  PlayerRecord out = books.records.front();
  for (std::size_t i = 1; i < books.records.size(); ++i) {
    const PlayerRecord& other = books.records[i];
    append_all(out.rackets, other.rackets);
    append_all(out.setups, other.setups);
    append_all(out.drop_offs, other.drop_offs);
    append_all(out.jobs, other.jobs);
    append_all(out.marks, other.marks);
    append_all(out.consents, other.consents);
    append_all(out.findings, other.findings);
    append_all(out.benches, other.benches);
    append_all(out.checks, other.checks);
    append_all(out.readings, other.readings);
    append_all(out.photos, other.photos);
    append_all(out.links, other.links);
    append_all(out.other_names, other.other_names);
    append_all(out.cards, other.cards);
    append_all(out.questions, other.questions);
  }
  if (books.records.size() == 1) return out;
  const auto made = [](const auto& one) { return one.id(); };  // ids begin with the time of making
  in_order(out.rackets, made);
  in_order(out.setups, made);
  in_order(out.drop_offs, made);
  in_order(out.jobs, made);
  in_order(out.consents, made);
  in_order(out.findings, made);
  in_order(out.benches, made);
  in_order(out.checks, made);
  in_order(out.readings, made);
  in_order(out.photos, made);
  in_order(out.cards, made);
  return out;
}

std::vector<BookDifference> differences(const PersonBooks& books) {
  std::vector<BookDifference> out;
  std::vector<const EntityState*> persons;
  for (const PlayerRecord& record : books.records)
    if (record.person.id()) persons.push_back(&record.person.seen);
  auto fields = fields_of_struct<Person>();
  std::erase_if(fields, [](const FieldInfo& field) { return field.name.ends_with("_name"); });
  compare_fields(out, {}, persons, fields);
  std::map<std::string, std::vector<const Loaded<Setup>*>> setups;
  for (const PlayerRecord& record : books.records)
    for (const auto& setup : record.setups) {
      auto& alike = setups[search_key(setup.now.name)];
      // Two of one name in one book are that book's own affair.
      if (std::none_of(alike.begin(), alike.end(), [&](const auto* one) { return one->seen.book == record.book; })) alike.push_back(&setup);
    }
  auto agreed = fields_of_struct<Setup>();
  std::erase_if(agreed, [](const FieldInfo& field) { return field.name == "name"; });
  for (const auto& [key, alike] : setups) {
    if (alike.size() < 2) continue;
    std::vector<const EntityState*> states;
    for (const auto* setup : alike) states.push_back(&setup->seen);
    compare_fields(out, alike.front()->now.name, states, agreed);
  }
  return out;
}

Outcome<ForgetReport> forget_person(Ledger& ledger, const BookId& book) {
  const LinkedBooks linked = linked_books(ledger, book);
  std::vector<BookId> all;
  for (const BookId& other : linked.elsewhere)
    if (other != book && !ledger.is_forgotten(other)) all.push_back(other);
  for (const BookId& other : linked.here)
    if (other != book) all.push_back(other);
  all.push_back(book);
  ForgetReport out;
  for (const BookId& one : all) {
    // One that is not here has no kind of its own to go by; the book asked for has to be here.
    auto report = ledger.forget(one, one == book ? std::optional<BookKind>() : kPlayerBook);
    if (!report) return fail(report.error());
    append_all(out.erased, report->erased);
    out.refused += report->refused;
    out.not_yet_gone = report->not_yet_gone;  // the rewriting of the file is one for all: the last word counts
  }
  return out;
}

Outcome<std::vector<Draft>> settle(const PersonBooks& books, const BookDifference& difference, const Value& answer) {
  std::vector<Draft> out;
  for (const BookAnswer& held : difference.answers) {
    if (held.value.index() != answer.index())
      return fail(FaultCode::bad_input, "this is no answer to what differs", std::string(difference.name), "give one of its kind");
    const auto record = std::find_if(books.records.begin(), books.records.end(), [&](const auto& one) { return one.book == held.book; });
    const EntityState* seen = nullptr;
    if (record != books.records.end()) {
      if (record->person.id() == held.entity) seen = &record->person.seen;
      else if (const auto* setup = record->setup(held.entity)) seen = &setup->seen;
    }
    if (!seen) return fail(FaultCode::not_found, "one of the books has changed", held.book.hex(), "look at the player again");
    if (held.value == answer) continue;
    Draft draft(held.book, kPlayerBook, kActEdit);
    draft.put(*seen, difference.field, answer);
    out.push_back(std::move(draft));
  }
  return out;
}

Outcome<std::vector<Draft>> say_of_books(const Ledger& ledger, const BookId& one, const BookId& other, LinkSaid said, const std::string& by, UnixMs at) {
  if (auto checked = check_saying(by); !checked) return fail(checked.error());
  if (one == other) return fail(FaultCode::bad_input, "this is one book, not two", one.hex(), "choose two players");
  if (said != LinkSaid::same_person && said != LinkSaid::other_person)
    return fail(FaultCode::bad_input, "nothing was said of the two books", one.hex(), "say whether they are one person's");
  for (const BookId& book : {one, other})
    if (auto checked = check_player(ledger, book); !checked) return fail(checked.error());
  if (!ledger.book(one) && !ledger.book(other)) return fail(FaultCode::not_found, "neither of the two books is on this device", one.hex(), "exchange first");
  std::vector<Draft> out;
  say(out, ledger, one, other, said, by, at);
  say(out, ledger, other, one, said, by, at);
  return out;
}

Outcome<std::vector<Draft>> part_book(const Ledger& ledger, const BookId& book, const std::string& by, UnixMs at) {
  if (auto checked = check_saying(by); !checked) return fail(checked.error());
  const auto record = load_player(ledger, book);
  if (!record) return fail(record.error());
  std::vector<Draft> out;
  LinkedBooks group = linked_books(ledger, book);
  append_all(group.here, group.elsewhere);
  for (const BookId& other : group.here) {
    if (other == book || said_of(ledger, book, other) != LinkSaid::same_person) continue;
    say(out, ledger, book, other, LinkSaid::other_person, by, at);
    say(out, ledger, other, book, LinkSaid::other_person, by, at);
  }
  return out;
}

}  // namespace weavelog
