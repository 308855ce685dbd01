#include "app-qml/view/figures.h"

#include <catch2/catch.hpp>

TEST_CASE("a typed figure is read with a point or a comma and kept as it was said") {
  CHECK(Figures::read(" 24,5 ") == "24.5");
  CHECK(Figures::read("24.5") == "24.5");
  CHECK(Figures::read("24.") == "24");
  CHECK(Figures::read("007") == "7");
  CHECK(Figures::read("24.30") == "24.3");
  CHECK(Figures::read("-0.25") == "-0.25");
  CHECK(Figures::read("0.1") == "0.1");
}

TEST_CASE("what is no figure reads as none") {
  for (const char* typed :
       {"", " ", "kg", "24 kg", "1e3", "24.5.1", "24,5,1", "--2", "+2", "1234567", "1.2345", "nan", "٢٤"}) {
    CAPTURE(typed);
    CHECK(Figures::read(QString::fromUtf8(typed)).isEmpty());
  }
}

TEST_CASE("half steps go to the next half and stay within the bounds") {
  CHECK(Figures::stepped("24.5", "0.5", "5", "45") == "25");
  CHECK(Figures::stepped("24.5", "-0.5", "5", "45") == "24");
  CHECK(Figures::stepped("24.3", "0.5", "5", "45") == "24.5");
  CHECK(Figures::stepped("24.3", "-0.5", "5", "45") == "24");
  CHECK(Figures::stepped("45", "0.5", "5", "45") == "45");
  CHECK(Figures::stepped("5", "-0.5", "5", "45") == "5");
  CHECK(Figures::stepped("55", "-0.5", "5", "45") == "45");
  CHECK(Figures::stepped("", "0.5", "5", "45") == "5");
  CHECK(Figures::stepped("-0.5", "0.5", "-1", "1") == "0");
  CHECK(Figures::stepped("-0.2", "-0.5", "-1", "1") == "-0.5");
}

TEST_CASE("the first step from no figure goes to the one that is usual, within the bounds") {
  CHECK(Figures::stepped("", "0.5", "1", "999", "24") == "24");
  CHECK(Figures::stepped("", "-0.5", "1", "999", "24") == "24");
  CHECK(Figures::stepped("", "0.5", "1", "20", "24") == "20");
  CHECK(Figures::stepped("", "0.5", "1", "999", "kg") == "1");
  CHECK(Figures::stepped("30", "0.5", "1", "999", "24") == "30.5");
}

TEST_CASE("a step without sense changes nothing") {
  CHECK(Figures::stepped("24.5", "0", "5", "45") == "24.5");
  CHECK(Figures::stepped("24.5", "half", "5", "45") == "24.5");
  CHECK(Figures::stepped("24.5", "0.5", "45", "5") == "24.5");
}

TEST_CASE("a hundred steps of a tenth up and down end where they began") {
  QString figure = QStringLiteral("20");
  for (int i = 0; i < 100; ++i) figure = Figures::stepped(figure, "0.1", "0", "100");
  CHECK(figure == "30");
  for (int i = 0; i < 100; ++i) figure = Figures::stepped(figure, "-0.1", "0", "100");
  CHECK(figure == "20");
}

TEST_CASE("bounds belong to the range, and no figure does not") {
  CHECK(Figures::within("5", "5", "45"));
  CHECK(Figures::within("45", "5", "45"));
  CHECK_FALSE(Figures::within("45.001", "5", "45"));
  CHECK_FALSE(Figures::within("4.999", "5", "45"));
  CHECK_FALSE(Figures::within("", "5", "45"));
}

TEST_CASE("long figures are read with their thousands apart") {
  CHECK(Figures::grouped("12345.50", "en") == "12,345.50");
  CHECK(Figures::grouped("12345.5", "de") == "12.345,5");
  CHECK(Figures::grouped("-1200", "en") == "-1,200");
  CHECK(Figures::grouped("200", "fr") == "200");
  CHECK(Figures::grouped("", "en") == "");
}

TEST_CASE("a figure is shown with the decimal sign of the language") {
  CHECK(Figures::shown("24.5", "en") == "24.5");
  CHECK(Figures::shown("24.5", "de") == "24,5");
  CHECK(Figures::shown("24.5", "fr") == "24,5");
  CHECK(Figures::shown("24", "es") == "24");
}
