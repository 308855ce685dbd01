#include "sync/carry/passphrase.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>
#include <string>
#include <vector>

#include "core/base/text.h"
#include "sync/carry/bundle_seal.h"

namespace weavelog {
namespace {

// A guess a second for a year is 25 bits, a million a second 45; with Argon2id at 64 MiB a fast machine makes some tens a second and core.
constexpr double kFair = 35, kStrong = 55;
// A word out of a list of some thousand that people use; a letter that continues a word.
constexpr double kWord = 10, kPattern = 1;

/// One number a character; which one matters for ASCII only.
std::u32string characters(std::string_view utf8) {
  std::u32string out;
  for (const char c : utf8) {
    const auto byte = static_cast<unsigned char>(c);
    if ((byte & 0xc0) != 0x80) {
      out.push_back(byte);
    } else if (!out.empty()) {
      out.back() = out.back() * 64 + (byte & 0x3f);
    }
  }
  return out;
}

bool is_digit(char32_t c) { return c >= '0' && c <= '9'; }
bool is_small(char32_t c) { return c >= 'a' && c <= 'z'; }
bool is_large(char32_t c) { return c >= 'A' && c <= 'Z'; }

/// How many characters there are to choose from, by the kinds that occur.
double pool_of(const std::u32string& text) {
  double pool = 0;
  const auto some = [&](auto is) { return std::any_of(text.begin(), text.end(), is); };
  if (some(is_digit)) pool += 10;
  if (some(is_small)) pool += 26;
  if (some(is_large)) pool += 26;
  if (some([](char32_t c) { return c < 128 && !is_digit(c) && !is_small(c) && !is_large(c); })) pool += 20;
  if (some([](char32_t c) { return c >= 128; })) pool += 20;
  return std::max(pool, 2.0);
}

/// The same character again, the next in the alphabet or among the digits, or the neighbour on a keyboard.
bool continues(char32_t before, char32_t now) {
  if (now == before || now == before + 1 || now + 1 == before) return true;
  constexpr std::array<std::u32string_view, 4> kRows{U"qwertyuiop", U"qwertzuiop", U"asdfghjkl", U"zxcvbnm"};
  return std::any_of(kRows.begin(), kRows.end(), [&](std::u32string_view row) {
    const auto at = row.find(before), next = row.find(now);
    return at != row.npos && next != row.npos && (next == at + 1 || at == next + 1);
  });
}

double bits_of_word(const std::u32string& word, double pool) {
  double bits = 0;
  for (std::size_t i = 0; i < word.size(); ++i) bits += i > 0 && continues(word[i - 1], word[i]) ? kPattern : std::log2(pool);
  return bits;
}

}  // namespace

double passphrase_bits(std::string_view words) {
  std::vector<std::u32string> parts(1);
  std::u32string all;
  for (const char32_t c : characters(words)) {
    if (c == ' ' || c == '-') {
      if (!parts.back().empty()) parts.emplace_back();
      continue;
    }
    parts.back().push_back(c);
    all.push_back(c);
  }
  const double pool = pool_of(all);
  const bool sentence = parts.size() >= 4;
  std::set<std::u32string> seen;
  double bits = 0;
  for (const std::u32string& part : parts) {
    if (!seen.insert(part).second) {
      bits += kPattern;
      continue;
    }
    const double own = bits_of_word(part, pool);
    const bool letters = std::none_of(part.begin(), part.end(), is_digit);
    // Among many words one is a word, not a row of chosen letters.
    bits += sentence && letters ? std::min(own, kWord + (part.size() >= 5 ? 2.0 : 0.0)) : own * (letters && part.size() > 3 ? 0.6 : 1.0);
  }
  return bits;
}

PassphraseStrength passphrase_strength(std::string_view words) {
  const auto clean = clean_text(words, "passphrase");
  if (!clean || characters(*clean).size() < kShortestPassphrase) return PassphraseStrength::too_short;
  const double bits = passphrase_bits(*clean);
  return bits < kFair ? PassphraseStrength::weak : bits < kStrong ? PassphraseStrength::fair : PassphraseStrength::strong;
}

}  // namespace weavelog
