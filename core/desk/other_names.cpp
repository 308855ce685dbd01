#include "core/desk/other_names.h"

#include <algorithm>

#include "core/base/text.h"

namespace weavelog {
namespace {

std::string key_of(std::string_view family, std::string_view given, std::string_view native) {
  return search_key(family) + "|" + search_key(given) + "|" + search_key(native);
}

}  // namespace

Outcome<Draft> add_other_name(const PlayerRecord& record, OtherName name, const std::string& by, UnixMs at) {
  const Person& person = record.person.now;
  if (!record.person.id()) return fail(FaultCode::not_found, "this book has no player yet", record.book.hex(), "look the player up again");
  if (is_blank(by)) return fail(FaultCode::bad_input, "it was not said who says so", "name", "give a name");
  if (is_blank(name.family_name) && is_blank(name.given_name) && is_blank(name.native_name))
    return fail(FaultCode::bad_input, "no other name was said", "other name", "give a family or a given name");
  const std::string key = key_of(name.family_name, name.given_name, name.native_name);
  if (key == key_of(person.family_name, person.given_name, person.native_name) || key == key_of(person.family_name, person.given_name, "") ||
      std::any_of(record.other_names.begin(), record.other_names.end(),
                  [&](const auto& held) { return key == key_of(held.now.family_name, held.now.given_name, held.now.native_name); }))
    return fail(FaultCode::refused, "the player is called so already", other_name_words(name), "nothing needs to be done");
  name.at = at;
  name.by = by;
  Draft draft(record.book, kPlayerBook, kActOtherName);
  (void)put_new(draft, name, at);
  return draft;
}

Outcome<Draft> drop_other_name(const PlayerRecord& record, const EntityId& id) {
  const auto held = std::find_if(record.other_names.begin(), record.other_names.end(), [&](const auto& one) { return one.id() == id; });
  if (held == record.other_names.end()) return fail(FaultCode::not_found, "the player has no such other name", id.hex(), "look at the list again");
  Draft draft(record.book, kPlayerBook, kActOtherName);
  put_changes(draft, held->seen, OtherName{});
  return draft;
}

std::string other_name_words(const OtherName& name) {
  std::string out = name.family_name + (name.given_name.empty() || name.family_name.empty() ? "" : " ") + name.given_name;
  if (!name.native_name.empty()) out += out.empty() ? name.native_name : " (" + name.native_name + ")";
  return out;
}

}  // namespace weavelog
