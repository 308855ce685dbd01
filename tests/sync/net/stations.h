#pragma once
// A station of the small registry in a folder of its own.

#include <catch2/catch.hpp>
#include <filesystem>
#include <memory>

#include "sync/exchange/station.h"
#include "tests/support/small_registry.h"

namespace weavelog::testing {

inline std::unique_ptr<Station> station(const std::filesystem::path& folder, const std::string& name) {
  StationOptions options;
  options.folder = folder;
  options.device_name = name;
  options.registry = &small_registry();
  auto opened = Station::open(std::move(options));
  if (!opened) FAIL(opened.error().message());
  return std::move(*opened);
}

}  // namespace weavelog::testing
