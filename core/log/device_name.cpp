#include "core/log/device_name.h"

#include "core/base/utf8.h"

namespace weavelog {

std::string shown_words(std::string_view words, std::size_t most) {
  std::string out(words.substr(0, most));
  if (const auto bad = first_invalid_utf8(out)) out.resize(*bad);
  for (char& c : out) {
    if (static_cast<unsigned char>(c) < 0x20 || c == 0x7f) c = ' ';
  }
  return out;
}

std::string shown_name(std::string_view name) { return shown_words(name, kMaxDeviceName); }

}  // namespace weavelog
