#include "core/desk/consent.h"

#include "core/base/digest.h"

namespace weavelog {

std::string consent_text(const Language& language, ConsentChoice choice) {
  const std::string key = "consent." + std::string(name_of_choice(choice));
  return desk_words().has(key) ? desk_words().say(language, key) : std::string();
}

Outcome<> note_consent(Draft& draft, ConsentChoice choice, const Confirmation& confirmation,
                       const BookId& event) {
  const std::string text = consent_text(confirmation.language, choice);
  if (text.empty() || confirmation.text != text)
    return fail(FaultCode::bad_input, "what was agreed to is not what is about to be stored", "consent",
                "show the sentence again and have it confirmed");
  const Digest digest = digest_of(as_bytes(text));
  ConsentGiven given;
  given.choice = choice;
  given.at = confirmation.at;
  given.text = text;
  given.digest.assign(digest.begin(), digest.end());
  given.language = confirmation.language.tag();
  given.device.assign(confirmation.device.bytes.begin(), confirmation.device.bytes.end());
  given.event = event;
  (void)put_new(draft, given, confirmation.at);
  return {};
}

Outcome<Draft> give_consent(const PlayerRecord& record, ConsentChoice choice,
                            const Confirmation& confirmation, const BookId& event) {
  if (!record.person.id())
    return fail(FaultCode::not_found, "there is no player to consent", record.book.hex(),
                "add the player first");
  Draft draft(record.book, kPlayerBook, kActConsent);
  // Put even if it is the same choice as before, so that all answers that stood are closed by this one.
  draft.put(record.person.seen, tag_of<Person>(&Person::consent), to_value(choice));
  if (auto noted = note_consent(draft, choice, confirmation, event); !noted) return fail(noted.error());
  return draft;
}

Outcome<std::vector<Draft>> give_consent(const PersonBooks& books, ConsentChoice choice, const Confirmation& confirmation,
                                         const BookId& event) {
  std::vector<Draft> out;
  for (const PlayerRecord& record : books.records) {
    auto draft = give_consent(record, choice, confirmation, event);
    if (!draft) return fail(draft.error());
    out.push_back(std::move(*draft));
  }
  return out;
}

}  // namespace weavelog
