#include "core/desk/phrases.h"

#include "core/model/choices.h"

namespace weavelog {
namespace {

template <class Enum>
std::string_view choice_name(std::int64_t number) {
  return std::in_range<std::uint8_t>(number) ? name_of_choice(static_cast<Enum>(number)) : std::string_view{};
}

/// Phrase key of a choice, empty if the field holds plain numbers.
std::string choice_key(std::string_view field, std::int64_t number) {
  if (field == "mains_supply" || field == "crosses_supply")
    return "choice." + std::string(choice_name<Supply>(number));
  if (field == "mains_owner" || field == "crosses_owner")
    return "choice." + std::string(choice_name<StringOwner>(number));
  if (field == "consent") return "consent." + std::string(choice_name<ConsentChoice>(number));
  if (field == "answer") return "remedy." + std::string(choice_name<FrameRemedy>(number));
  if (field == "hand") return "hand." + std::string(choice_name<Hand>(number));
  if (field == "stage") return "stage." + std::string(choice_name<Stage>(number));
  return {};
}

}  // namespace

const Phrases& desk_words() {
  static const Phrases words({desk_phrases()});
  return words;
}

std::string field_words(const Language& language, std::string_view field) {
  const std::string key = "field." + std::string(field);
  return desk_words().has(key) ? desk_words().say(language, key) : std::string(field);
}

std::string value_words(const Language& language, std::string_view field, const Value& value) {
  if (is_cleared(value)) return desk_words().say(language, "value.none");
  if (const auto* quantity = std::get_if<Quantity>(&value)) return localised(language, *quantity);
  if (const auto* number = std::get_if<std::int64_t>(&value)) {
    const std::string key = choice_key(field, *number);
    if (!key.empty() && desk_words().has(key)) return desk_words().say(language, key);
  }
  if (field == "language")
    if (const auto* tag = std::get_if<std::string>(&value))
      if (const auto spoken = Language::from(*tag)) return spoken->own_name();
  return text_of(value);
}

std::string setup_words(const Language& language, std::string_view name) {
  if (!name.starts_with('=')) return std::string(name);
  const std::string key = "setup." + std::string(name.substr(1));
  return desk_words().has(key) ? desk_words().say(language, key) : std::string(name.substr(1));  // of a newer version
}

}  // namespace weavelog
