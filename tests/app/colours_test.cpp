#include "app-qml/ui/theme/colours.h"

#include <QMetaProperty>
#include <QSet>
#include <catch2/catch.hpp>

#include "tests/support/published.h"

namespace {

QColor colour(const Colours& table, const char* name) {
  const auto& meta = Colours::staticMetaObject;
  const int index = meta.indexOfProperty(name);
  if (index < 0) return {};
  return meta.property(index).readOnGadget(&table).value<QColor>();
}

}  // namespace

// Source of the values: fixtures/published/README.md, contrast.csv (WCAG 2.x, glossary).
TEST_CASE("contrast follows the published formula", "[published]") {
  const auto rows = weavelog::test::published_rows("contrast.csv");
  REQUIRE(rows.size() >= 15);
  for (const auto& row : rows) {
    CAPTURE(row.at("colour1"), row.at("colour2"));
    const QColor one(QString::fromStdString(row.at("colour1")));
    const QColor other(QString::fromStdString(row.at("colour2")));
    CHECK(relativeLuminance(one) == Approx(std::stod(row.at("luminance1"))).epsilon(1e-9));
    CHECK(relativeLuminance(other) == Approx(std::stod(row.at("luminance2"))).epsilon(1e-9));
    CHECK(contrastRatio(one, other) == Approx(std::stod(row.at("contrast"))).epsilon(1e-9));
    CHECK((contrastRatio(one, other) >= 4.5) == (row.at("AA_text_4.5") == "pass"));
    CHECK((contrastRatio(other, one) >= 3.0) == (row.at("AA_large_or_ui_3") == "pass"));
  }
}

TEST_CASE("every pair of colours that the screens use can be read, light and dark") {
  for (const Colours* table : {&lightColours(), &darkColours()}) {
    for (const auto& pair : colourPairs()) {
      CAPTURE(table == &darkColours(), pair.ink, pair.ground);
      const QColor ink = colour(*table, pair.ink);
      const QColor ground = colour(*table, pair.ground);
      REQUIRE(ink.isValid());
      REQUIRE(ground.isValid());
      REQUIRE(ink.alpha() == 255);
      REQUIRE(ground.alpha() == 255);
      CHECK(contrastRatio(ink, ground) >= pair.leastRatio);
    }
  }
}

TEST_CASE("no colour of the tables is missing from the pairs") {
  // A dividing line is decoration (the gap between two things divides them too), and a scrim only dims.
  QSet<QString> covered{QStringLiteral("line"), QStringLiteral("scrim")};
  for (const auto& pair : colourPairs()) {
    covered.insert(QString::fromLatin1(pair.ink));
    covered.insert(QString::fromLatin1(pair.ground));
  }
  const auto& meta = Colours::staticMetaObject;
  REQUIRE(meta.propertyCount() > 25);
  for (int i = 0; i < meta.propertyCount(); ++i) {
    CAPTURE(meta.property(i).name());
    CHECK(covered.contains(QString::fromLatin1(meta.property(i).name())));
    CHECK(colour(lightColours(), meta.property(i).name()).isValid());
    CHECK(colour(darkColours(), meta.property(i).name()).isValid());
  }
}

TEST_CASE("the dark table is dark and the light one light, except for codes") {
  CHECK(relativeLuminance(lightColours().ground) > 0.7);
  CHECK(relativeLuminance(darkColours().ground) < 0.05);
  CHECK(lightColours().codeDark == darkColours().codeDark);
  CHECK(lightColours().codeLight == darkColours().codeLight);
}
