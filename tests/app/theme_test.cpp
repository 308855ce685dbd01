#include "app-qml/ui/theme/theme.h"

#include <catch2/catch.hpp>

TEST_CASE("sizes of type follow the text scale, within its bounds") {
  Theme theme(nullptr);
  const int body = theme.type().body;
  theme.setTextScale(1.6);
  CHECK(theme.type().body == static_cast<int>(std::lround(body * 1.6)));
  theme.setTextScale(40);
  CHECK(theme.textScale() == Theme::mostTextScale);
  theme.setTextScale(0.01);
  CHECK(theme.textScale() == Theme::leastTextScale);
}

TEST_CASE("a giant figure can be read at two metres") {
  // Common practice for signs (no source): a letter is told at 200 times its height; so 10 mm at two metres,
  // and twice that for a glance. On a 10.1-inch tablet of 1280 x 800 (149 pixels an inch) a digit of Noto
  // Sans is 0.71 of its size high.
  Theme theme(nullptr);
  theme.setTextScale(Theme::leastTextScale);
  const double millimetres = theme.type().giant * 0.71 / 149.0 * 25.4;
  CHECK(millimetres >= 10.0);
  theme.setTextScale(1.0);
  CHECK(theme.type().giant * 0.71 / 149.0 * 25.4 >= 20.0);
}

TEST_CASE("the theme tells each change once") {
  Theme theme(nullptr);
  int changes = 0;
  QObject::connect(&theme, &Theme::darkChanged, [&] { ++changes; });
  theme.setDark(true);
  theme.setDark(true);
  CHECK(changes == 1);
  CHECK(theme.colour() == darkColours());
}
