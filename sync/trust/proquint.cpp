#include "sync/trust/proquint.h"

#include <stdexcept>

namespace weavelog {
namespace {

constexpr std::string_view kConsonants = "bdfghjklmnprstvz";
constexpr std::string_view kVowels = "aiou";
constexpr std::size_t kLetters = 5;
constexpr std::size_t kMaxText = 1024;

char lower(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

bool is_separator(char c) {
  return c == ' ' || c == '-' || c == '_' || c == '.' || c == ',' || c == '\t' || c == '\n' || c == '\r';
}

/// Keyboards and chats turn "-" into typographic dashes (U+2010 to U+2015) and spaces into U+00A0: take them
/// as such.
std::string plain_separators(std::string_view text) {
  std::string out;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto at = [&](std::size_t k) { return static_cast<unsigned char>(text[k]); };
    if (i + 2 < text.size() && at(i) == 0xe2 && at(i + 1) == 0x80 && at(i + 2) >= 0x90 && at(i + 2) <= 0x95) {
      out.push_back('-');
      i += 2;
    } else if (i + 1 < text.size() && at(i) == 0xc2 && at(i + 1) == 0xa0) {
      out.push_back(' ');
      i += 1;
    } else {
      out.push_back(lower(text[i]));
    }
  }
  return out;
}

std::string printable(std::string_view text) {
  std::string out;
  for (const char c : text.substr(0, 20)) out.push_back(c > ' ' && c < 0x7f ? c : '?');
  return out;
}

}  // namespace

std::string to_proquints(ByteView bytes) {
  if (bytes.size() % 2 != 0) throw std::logic_error("to_proquints: an odd number of bytes");
  std::string out;
  for (std::size_t i = 0; i < bytes.size(); i += 2) {
    const auto word = static_cast<unsigned>(bytes[i] << 8 | bytes[i + 1]);
    if (i != 0) out.push_back('-');
    out.push_back(kConsonants[word >> 12]);
    out.push_back(kVowels[word >> 10 & 3]);
    out.push_back(kConsonants[word >> 6 & 15]);
    out.push_back(kVowels[word >> 4 & 3]);
    out.push_back(kConsonants[word & 15]);
  }
  return out;
}

Outcome<Bytes> from_proquints(std::string_view given) {
  const char* const say_again = "ask for the words again, letter by letter if need be";
  if (given.size() > kMaxText) return fail(FaultCode::bad_input, "far too many words", "code", say_again);
  const std::string text = plain_separators(given);
  Bytes out;
  std::size_t number = 0;
  for (std::size_t start = 0; start < text.size();) {
    if (is_separator(text[start])) {
      ++start;
      continue;
    }
    std::size_t end = start;
    while (end < text.size() && !is_separator(text[end])) ++end;
    const std::string_view run = std::string_view(text).substr(start, end - start);
    for (std::size_t at = 0; at < run.size(); at += kLetters) {
      ++number;
      const std::string_view word = run.substr(at, kLetters);
      const std::string where = "word " + std::to_string(number);
      unsigned value = 0;
      for (std::size_t k = 0; k < word.size(); ++k) {
        const std::string_view alphabet = k % 2 == 0 ? kConsonants : kVowels;
        const auto found = alphabet.find(word[k]);
        if (found == std::string_view::npos) {
          return fail(FaultCode::bad_input,
                      "letter " + std::to_string(k + 1) + " of \"" + printable(word) +
                          "\" can't be; it is one of " + std::string(alphabet),
                      where, say_again);
        }
        value = value << (k % 2 == 0 ? 4 : 2) | static_cast<unsigned>(found);
      }
      if (word.size() != kLetters) {
        return fail(FaultCode::bad_input,
                    "\"" + printable(word) + "\" has " + std::to_string(word.size()) + " letters, not five",
                    where, say_again);
      }
      out.push_back(static_cast<std::uint8_t>(value >> 8));
      out.push_back(static_cast<std::uint8_t>(value));
    }
    start = end;
  }
  return out;
}

std::string agreement_words(const Digest& digest) {
  // Hashed once more so that the words tell nothing of the digest that signatures and reconciliation use.
  const Digest words = digest_of({as_bytes("weavelog agreement words 1"), digest});
  return to_proquints(ByteView(words).first(6));
}

std::string fingerprint_words(ByteView fingerprint) {
  return to_proquints(fingerprint.first(8));
}

}  // namespace weavelog
