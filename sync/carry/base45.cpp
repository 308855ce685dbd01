#include "sync/carry/base45.h"

namespace weavelog {
namespace {

constexpr std::string_view kAlphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";
static_assert(kAlphabet.size() == 45);

}  // namespace

std::string to_base45(ByteView bytes) {
  std::string out;
  out.reserve(bytes.size() / 2 * 3 + 2);
  std::size_t at = 0;
  for (; at + 1 < bytes.size(); at += 2) {
    const std::size_t value = std::size_t{bytes[at]} * 256 + bytes[at + 1];
    out += kAlphabet[value % 45];
    out += kAlphabet[value / 45 % 45];
    out += kAlphabet[value / (45 * 45)];
  }
  if (at < bytes.size()) {
    out += kAlphabet[bytes[at] % 45U];
    out += kAlphabet[bytes[at] / 45U];
  }
  return out;
}

std::optional<Bytes> from_base45(std::string_view text) {
  if (text.size() % 3 == 1) return std::nullopt;
  Bytes out;
  for (std::size_t at = 0; at < text.size(); at += 3) {
    const std::string_view group = text.substr(at, 3);
    std::size_t value = 0, weight = 1;
    for (const char c : group) {
      const std::size_t digit = kAlphabet.find(c);
      if (digit == std::string_view::npos) return std::nullopt;
      value += digit * weight;
      weight *= 45;
    }
    if (value > (group.size() == 3 ? 0xffffU : 0xffU)) return std::nullopt;
    if (group.size() == 3) out.push_back(static_cast<std::uint8_t>(value >> 8));
    out.push_back(static_cast<std::uint8_t>(value));
  }
  return out;
}

}  // namespace weavelog
