// Writes every target's seeds: fuzz_seeds FOLDER makes FOLDER/TARGET/NUMBER.

#include <filesystem>
#include <fstream>
#include <iostream>

#include "tests/fuzz/target.h"

int main(int argc, char** argv) {
  if (argc != 2) {
    std::cerr << "fuzz_seeds FOLDER\n";
    return 2;
  }
  for (const auto& target : weavelog::fuzz::targets()) {
    const auto folder = std::filesystem::path(argv[1]) / target.name;
    std::filesystem::create_directories(folder);
    std::size_t number = 0;
    for (const auto& seed : target.seeds()) {
      std::ofstream out(folder / ("seed-" + std::to_string(number++)), std::ios::binary);
      out.write(reinterpret_cast<const char*>(seed.data()), static_cast<std::streamsize>(seed.size()));
      if (!out) {
        std::cerr << "fuzz_seeds: can't write to " << folder << '\n';
        return 1;
      }
    }
    std::cout << target.name << '\n';
  }
}
