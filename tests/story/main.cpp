// weavelog-story: plays the story in the terminal. weavelog-story PROGRAMS FOLDER [SEED]
#include <cstdlib>
#include <iostream>

#include "tests/story/story.h"

int main(int argc, char** argv) {
  if (argc < 3 || argc > 4) {
    std::cerr << "weavelog-story: say the build folder and an empty folder for the devices; a seed kills processes on the way\n";
    return 2;
  }
  weavelog::testing::StoryOptions options;
  options.programs = argv[1];
  options.folder = argv[2];
  if (argc == 4) options.kill_with_seed = static_cast<unsigned>(std::strtoul(argv[3], nullptr, 10));
  options.tell = [](const std::string& text) { std::cout << text << "\n" << std::flush; };
  try {
    const auto end = weavelog::testing::Story(std::move(options)).play();
    if (end.killed > 0) std::cout << end.killed << " processes were killed on the way.\n";
    return 0;
  } catch (const std::exception& error) {
    std::cerr << "weavelog-story: " << error.what() << '\n';
    return 1;
  }
}
