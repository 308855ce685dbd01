#include "sync/trust/key_file.h"

#include <sodium.h>

#include "sync/trust/private_file.h"

namespace weavelog {
namespace {

constexpr std::string_view kTitle = "weavelog device key ";
constexpr std::string_view kVersion = "1\n";
constexpr std::string_view kSeed = "seed ";
constexpr std::string_view kPublic = "\npublic ";
constexpr std::size_t kHex = 64;

std::string text_of(const DeviceKey& key) {
  auto seed = key.seed();
  std::string hex = to_hex(seed);
  std::string text;
  text.append(kTitle).append(kVersion).append(kSeed).append(hex);
  text.append(kPublic).append(to_hex(key.public_key())).append("\n");
  sodium_memzero(seed.data(), seed.size());
  sodium_memzero(hex.data(), hex.size());
  return text;
}

Outcome<DeviceKey> key_from(std::string_view text, const std::filesystem::path& file) {
  const auto damaged = [&](const char* what) {
    return fail(
        FaultCode::damaged, what, file.string(),
        "put the file back from a backup; only if there is none, move it away and pair this device anew");
  };
  if (!text.starts_with(kTitle)) return damaged("is not a device key");
  text.remove_prefix(kTitle.size());
  if (!text.starts_with(kVersion)) {
    const std::string_view version = text.substr(0, text.find('\n'));
    if (version.size() == text.size() || version.empty() ||
        version.find_first_not_of("0123456789") != std::string_view::npos) {
      return damaged("the device key is damaged");
    }
    return fail(FaultCode::newer, "the device key was written by a newer version", file.string(),
                "update Weavelog");
  }
  text.remove_prefix(kVersion.size());
  std::array<std::uint8_t, 32> seed{};
  PublicKey expected{};
  const std::size_t size = kSeed.size() + kHex + kPublic.size() + kHex + 1;
  if (text.size() != size || !text.starts_with(kSeed) || text.back() != '\n' ||
      text.substr(kSeed.size() + kHex, kPublic.size()) != kPublic ||
      !from_hex(text.substr(kSeed.size(), kHex), seed) ||
      !from_hex(text.substr(kSeed.size() + kHex + kPublic.size(), kHex), expected)) {
    return damaged("the device key is damaged");
  }
  DeviceKey key = DeviceKey::from_seed(seed);
  sodium_memzero(seed.data(), seed.size());
  // The public half is the checksum of the secret half.
  if (key.public_key() != expected) return damaged("the two halves of the device key do not belong together");
  return key;
}

}  // namespace

Outcome<DeviceKey> load_or_create_key(const std::filesystem::path& file) {
  // Twice at most: another process of ours may make the file between our look and our own making.
  for (int round = 0; round < 2; ++round) {
    auto text = read_private_file(file);
    if (!text) return fail(text.error());
    if (*text) {
      auto key = key_from(**text, file);
      sodium_memzero((*text)->data(), (*text)->size());
      return key;
    }
    DeviceKey fresh = DeviceKey::generate();
    std::string made = text_of(fresh);
    const auto created = create_private_file(file, made);
    sodium_memzero(made.data(), made.size());
    if (!created) return fail(created.error());
    if (*created) return fresh;
  }
  return fail(FaultCode::io, "the device key comes and goes", file.string(),
              "check what else uses the data folder");
}

}  // namespace weavelog
