#pragma once
// Language: which one a person reads, as a BCP 47 tag ("de", "de-CH").

#include <compare>
#include <optional>
#include <string>
#include <string_view>

namespace weavelog {

/// A valid language tag in its usual spelling; English unless said otherwise.
class Language {
 public:
  Language() = default;
  /// Reads "de", "DE", "de-CH", "de_CH"; nothing if it is not a language tag with a two- or three-letter
  /// language.
  [[nodiscard]] static std::optional<Language> from(std::string_view tag);

  /// The whole tag: decides how numbers, times and sort order look.
  [[nodiscard]] const std::string& tag() const { return tag_; }
  /// The language alone, without script and region: decides which phrases are used.
  [[nodiscard]] std::string_view base() const { return std::string_view(tag_).substr(0, tag_.find('-')); }
  /// Its name in itself: "Deutsch".
  [[nodiscard]] std::string own_name() const;

  auto operator<=>(const Language&) const = default;

 private:
  std::string tag_ = "en";
};

}  // namespace weavelog
