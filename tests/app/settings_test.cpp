#include "app-qml/view/settings.h"

#include <QFile>
#include <QTemporaryDir>
#include <catch2/catch.hpp>

namespace {

struct Folder {
  QTemporaryDir folder;
  [[nodiscard]] QString file() const { return folder.filePath(QStringLiteral("settings.ini")); }
  [[nodiscard]] std::unique_ptr<QSettings> store() const {
    return std::make_unique<QSettings>(file(), QSettings::IniFormat);
  }
  void write(const char* content) const {
    QFile out(file());
    REQUIRE(out.open(QIODevice::WriteOnly));
    out.write(content);
  }
};

}  // namespace

TEST_CASE("what was chosen is there at the next start") {
  const Folder folder;
  {
    Settings settings(folder.store());
    settings.setLanguage("de");
    settings.setTensionUnit("lb");
    settings.setAppearance("dark");
    settings.setTextScale(1.25);
    settings.setScanSteps(true);
  }
  const Settings again(folder.store());
  CHECK(again.language() == "de");
  CHECK(again.tensionUnit() == "lb");
  CHECK(again.appearance() == "dark");
  CHECK(again.dark());
  CHECK(again.textScale() == 1.25);
  CHECK(again.scanSteps());
}

TEST_CASE("a setting is on disk before the program ends") {
  const Folder folder;
  Settings settings(folder.store());
  settings.setTensionUnit("N");
  const Settings other(folder.store());
  CHECK(other.tensionUnit() == "N");
}

TEST_CASE("stored values that make no sense read as the defaults") {
  const Folder folder;
  folder.write("[General]\nlanguage=xx\ntensionUnit=stone\nappearance=plaid\ntextScale=nan\n");
  const Settings settings(folder.store());
  CHECK(Settings::languages().contains(settings.language()));
  CHECK(settings.tensionUnit() == "kg");
  CHECK(settings.appearance() == "system");
  CHECK(settings.textScale() == 1.0);
}

TEST_CASE("a damaged settings file does not keep the app from starting") {
  const Folder folder;
  folder.write("\x00\xff[[[=\n=\n;\"");
  const Settings settings(folder.store());
  CHECK(settings.tensionUnit() == "kg");
}

TEST_CASE("a value that is none of the known ones changes nothing and tells nobody") {
  const Folder folder;
  Settings settings(folder.store());
  settings.setTensionUnit("kg");
  int told = 0;
  QObject::connect(&settings, &Settings::tensionUnitChanged, [&] { ++told; });
  settings.setTensionUnit("stone");
  settings.setTensionUnit("");
  CHECK(settings.tensionUnit() == "kg");
  CHECK(told == 0);
  settings.setTensionUnit("lb");
  CHECK(told == 1);
}

TEST_CASE("the text scale stays within its bounds") {
  const Folder folder;
  Settings settings(folder.store());
  settings.setTextScale(9);
  CHECK(settings.textScale() == 1.6);
  settings.setTextScale(std::numeric_limits<double>::quiet_NaN());
  CHECK(settings.textScale() == 1.6);
}

TEST_CASE("what holds for one run is not kept") {
  const Folder folder;
  {
    Settings settings(folder.store());
    settings.setLanguage("fr");
    settings.setDeviceName("Bench 3");
    settings.useForThisRun("es", "dark", "Demo tablet");
    CHECK(settings.language() == "es");
    CHECK(settings.dark());
    CHECK(settings.deviceName() == "Demo tablet");
    settings.useForThisRun("es", "dark");
    CHECK(settings.deviceName() == "Demo tablet");
  }
  const Settings again(folder.store());
  CHECK(again.deviceName() == "Bench 3");
  CHECK(again.language() == "fr");
  CHECK(again.appearance() == "system");
}
