#include "core/base/phrases.h"

#include <unicode/locid.h>
#include <unicode/messagepattern.h>
#include <unicode/msgfmt.h>

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <stdexcept>

namespace weavelog {
namespace {

[[noreturn]] void broken(std::string_view language, std::string_view key, const std::string& what) {
  throw std::logic_error("phrase \"" + std::string(key) + "\" (" + std::string(language) + "): " + what);
}

struct Phrase {
  icu::MessageFormat format;
  std::set<std::string> arguments;
};

std::set<std::string> arguments_of(const icu::MessagePattern& pattern) {
  std::set<std::string> out;
  for (std::int32_t i = 0; i < pattern.countParts(); ++i) {
    const auto& part = pattern.getPart(i);
    if (part.getType() != UMSGPAT_PART_TYPE_ARG_NAME && part.getType() != UMSGPAT_PART_TYPE_ARG_NUMBER)
      continue;
    std::string name;
    pattern.getSubstring(part).toUTF8String(name);
    out.insert(std::move(name));
  }
  return out;
}

Phrase parsed(const PhraseText& text) {
  UErrorCode status = U_ZERO_ERROR;
  UParseError place{};
  const auto pattern_text = icu::UnicodeString::fromUTF8(text.pattern);
  const icu::MessagePattern pattern(pattern_text, &place, status);
  icu::MessageFormat format(pattern_text, icu::Locale::forLanguageTag(text.language, status), place, status);
  if (U_FAILURE(status)) {
    broken(text.language, text.key,
           std::string("the pattern is broken at character ") + std::to_string(place.offset) + ": " +
               u_errorName(status));
  }
  return {std::move(format), arguments_of(pattern)};
}

struct ToFormattable {
  const Language& language;

  icu::Formattable operator()(std::int64_t number) const { return icu::Formattable(number); }
  icu::Formattable operator()(const std::string& text) const {
    return icu::Formattable(icu::UnicodeString::fromUTF8(text));
  }
  template <class T>
  icu::Formattable operator()(const T& value) const {
    return (*this)(localised(language, value));
  }
};

std::string listed(const std::set<std::string>& names) {
  std::string out;
  for (const auto& name : names) out += (out.empty() ? "" : ", ") + name;
  return out.empty() ? "none" : out;
}

}  // namespace

struct Phrases::Tables {
  using Table = std::map<std::string, Phrase, std::less<>>;
  std::map<std::string, Table, std::less<>> by_language;

  [[nodiscard]] const Phrase* find(std::string_view language, std::string_view key) const {
    const auto table = by_language.find(language);
    if (table == by_language.end()) return nullptr;
    const auto phrase = table->second.find(key);
    return phrase == table->second.end() ? nullptr : &phrase->second;
  }
};

Phrases::Phrases(std::initializer_list<std::span<const PhraseText>> texts) {
  auto tables = std::make_unique<Tables>();
  for (const auto& part : texts) {
    for (const auto& text : part) {
      const auto language = Language::from(text.language);
      if (!language || language->tag() != text.language)
        broken(text.language, text.key, "not a language tag");
      auto& table = tables->by_language[std::string(text.language)];
      if (!table.try_emplace(std::string(text.key), parsed(text)).second)
        broken(text.language, text.key, "the key occurs twice");
    }
  }
  tables_ = std::move(tables);
}
Phrases::~Phrases() = default;
Phrases::Phrases(Phrases&&) noexcept = default;
Phrases& Phrases::operator=(Phrases&&) noexcept = default;

std::string Phrases::say(const Language& language, std::string_view key, const PhraseArgs& args) const {
  const Phrase* phrase = tables_->find(language.tag(), key);
  if (!phrase) phrase = tables_->find(language.base(), key);
  if (!phrase && !tables_->by_language.contains(language.base())) phrase = tables_->find("en", key);
  if (!phrase) broken(language.tag(), key, "there is no such phrase");

  std::vector<icu::UnicodeString> names;
  std::vector<icu::Formattable> values;
  for (const auto& [name, value] : args) {
    names.push_back(icu::UnicodeString::fromUTF8(name));
    values.push_back(std::visit(ToFormattable{language}, value));
  }
  for (const auto& wanted : phrase->arguments) {
    const bool given =
        std::any_of(args.begin(), args.end(), [&](const auto& arg) { return arg.first == wanted; });
    if (!given) broken(language.tag(), key, "argument " + wanted + " is missing");
  }

  // Formatting fills caches inside the object, so every call works on a copy.
  const icu::MessageFormat format(phrase->format);
  UErrorCode status = U_ZERO_ERROR;
  icu::UnicodeString text;
  format.format(names.data(), values.data(), static_cast<std::int32_t>(names.size()), text, status);
  if (U_FAILURE(status))
    broken(language.tag(), key, std::string("an argument is of the wrong kind: ") + u_errorName(status));
  std::string out;
  return text.toUTF8String(out);
}

bool Phrases::has(std::string_view key) const {
  return std::any_of(tables_->by_language.begin(), tables_->by_language.end(),
                     [&](const auto& table) { return table.second.contains(key); });
}

std::vector<Language> Phrases::languages() const {
  std::vector<Language> out;
  for (const auto& [tag, table] : tables_->by_language) out.push_back(Language::from(tag).value());
  return out;
}

std::vector<std::string> Phrases::gaps() const {
  std::map<std::string_view, std::pair<std::string_view, const Phrase*>> first_of;
  for (const auto& [tag, table] : tables_->by_language)
    for (const auto& [key, phrase] : table) first_of.try_emplace(key, tag, &phrase);

  std::vector<std::string> out;
  for (const auto& [key, first] : first_of) {
    for (const auto& [tag, table] : tables_->by_language) {
      const auto found = table.find(key);
      if (found == table.end()) {
        out.push_back(tag + " lacks " + std::string(key));
      } else if (found->second.arguments != first.second->arguments) {
        out.push_back(std::string(key) + ": " + std::string(first.first) + " has " +
                      listed(first.second->arguments) + "; " + tag + " has " +
                      listed(found->second.arguments));
      }
    }
  }
  return out;
}

}  // namespace weavelog
