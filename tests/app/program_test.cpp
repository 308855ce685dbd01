// The program `weavelog` itself, as a person starts it.

#include <QFile>
#include <QImage>
#include <QProcess>
#include <QTemporaryDir>
#include <catch2/catch.hpp>

namespace {

struct Outcome {
  int code = -1;
  QString out;
  QString err;
};

Outcome run(const QStringList& arguments, const QString& home, bool display = true) {
  QProcess process;
  auto environment = QProcessEnvironment::systemEnvironment();
  for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"}) environment.remove(name);
  if (display) environment.insert("QT_QPA_PLATFORM", "offscreen");
  environment.insert("QT_QUICK_BACKEND", "software");
  environment.insert("XDG_CONFIG_HOME", home);
  environment.insert("XDG_RUNTIME_DIR", home);
  environment.insert("LC_ALL", "C.UTF-8");
  process.setProcessEnvironment(environment);
  process.start(QStringLiteral(WEAVELOG_APP_PROGRAM), arguments);
  REQUIRE(process.waitForFinished(30'000));
  REQUIRE(process.exitStatus() == QProcess::NormalExit);
  return {process.exitCode(), QString::fromUtf8(process.readAllStandardOutput()),
          QString::fromUtf8(process.readAllStandardError())};
}

}  // namespace

TEST_CASE("help goes to standard output and ends with 0") {
  const QTemporaryDir home;
  const auto outcome = run({"--help"}, home.path());
  CHECK(outcome.code == 0);
  CHECK(outcome.err.isEmpty());
  for (const char* option :
       {"--gallery", "--size", "--grab", "--theme", "--language", "--place", "--timing"}) {
    CAPTURE(option);
    CHECK(outcome.out.contains(QLatin1String(option)));
  }
}

TEST_CASE("a wrong argument is one line on standard error and code 2") {
  const QTemporaryDir home;
  const QList<QStringList> wrong{{"--bogus"},
                                 {"stray"},
                                 {"--size", "wide"},
                                 {"--size", "10x10"},
                                 {"--size"},
                                 {"--theme", "plaid"},
                                 {"--language", "xx"},
                                 {"--place", "kitchen"},
                                 {"--grab", "/no/such/folder/a.png"},
                                 {"--grab", home.filePath("a.txt")},
                                 {"--paper", "tags"},
                                 {"--out", home.filePath("a.pdf")},
                                 {"--paper", "poster", "--out", home.filePath("a.pdf")},
                                 {"--paper", "tags", "--out", home.filePath("a.txt")},
                                 {"--paper", "tags", "--out", home.filePath("a.png")},
                                 {"--paper", "tags", "--out", home.filePath("a.pdf"), "--roll", "58"},
                                 {"--paper", "tags", "--out", home.filePath("a.pdf"), "--tags", "3-1"}};
  for (const auto& arguments : wrong) {
    CAPTURE(arguments.join(' ').toStdString());
    const auto outcome = run(arguments, home.path());
    CHECK(outcome.code == 2);
    CHECK(outcome.out.isEmpty());
    CHECK(outcome.err.count('\n') == 1);
    CHECK(outcome.err.startsWith("weavelog: "));
    CHECK(outcome.err.contains("--help"));
  }
}

TEST_CASE("where there is no display, one line says so and what to do") {
  const QTemporaryDir home;
  const auto outcome = run({}, home.path(), false);
  CHECK(outcome.code == 1);
  CHECK(outcome.err.count('\n') == 1);
  CHECK(outcome.err.contains("--grab"));
}

TEST_CASE("papers are written without a display, and what can't be is one line and code 1") {
  const QTemporaryDir home;
  const QString file = home.filePath("paper.pdf");
  const auto written = run({"--demo", "--paper", "work-list", "--out", file}, home.path(), false);
  CHECK(written.err.toStdString().empty());
  CHECK(written.code == 0);
  QFile pdf(file);
  REQUIRE(pdf.open(QIODevice::ReadOnly));
  CHECK(pdf.read(5) == "%PDF-");
  const QList<QStringList> wrong{{"--demo", "--paper", "statement", "--out", file},
                                 {"--demo", "--paper", "statement", "--player", "nobody of that name", "--out", file},
                                 {"--demo", "--paper", "labels", "--roll", "62", "--out", file},
                                 {"--demo", "--paper", "tags", "--player", "a", "--player", "b", "--out", file},
                                 {"--demo", "--paper", "tags", "--country", "POL", "--out", file},
                                 {"--demo", "--paper", "card-sheet", "--country", "XXX", "--out", file},
                                 {"--demo", "--paper", "card", "--country", "TUR", "--out", home.filePath("a.png")},
                                 {"--read-code", file},
                                 {"--read-code", home.filePath("none.png")},
                                 {"--demo", "--paper", "tags", "--tags", "999999", "--out", file},
                                 {"--data", home.filePath("fresh"), "--paper", "work-list", "--out", file}};
  for (const auto& arguments : wrong) {
    CAPTURE(arguments.join(' ').toStdString());
    const auto outcome = run(arguments, home.path(), false);
    CHECK(outcome.code == 1);
    CHECK(outcome.err.count('\n') == 1);
    CHECK(outcome.err.startsWith("weavelog: "));
  }
}

TEST_CASE("a card is written as picture and sheet, and read off the picture again") {
  const QTemporaryDir home;
  const QString picture = home.filePath("card.png");
  const auto written = run({"--demo", "--paper", "card", "--player", "Gazeloglu", "--out", picture}, home.path(), false);
  CHECK(written.err.toStdString().empty());
  REQUIRE(written.code == 0);
  const auto read = run({"--read-code", picture}, home.path(), false);
  CHECK(read.code == 0);
  CHECK(read.out.startsWith("WEAVELOG:CARD:"));
  CHECK(read.out.count('\n') == 1);
  const auto sheet = run({"--demo", "--paper", "card-sheet", "--country", "TUR", "--out", home.filePath("team.pdf")}, home.path(), false);
  CHECK(sheet.code == 0);
  CHECK(QFileInfo(home.filePath("team.pdf")).size() > 10'000);
}

TEST_CASE("every place is grabbed at its size without a warning, on a tablet and on a phone") {
  const QTemporaryDir home;
  for (const char* place : {"desk", "room", "bench", "players", "team", "questions", "exchange", "settings"}) {
    for (const QSize size : {QSize(1280, 800), QSize(412, 915)}) {
      CAPTURE(place, size.width());
      const QString file = home.filePath("page.png");
      const auto outcome = run({"--place", place, "--grab", file, "--theme", "dark", "--size",
                                QString("%1x%2").arg(size.width()).arg(size.height())},
                               home.path());
      CHECK(outcome.code == 0);
      CHECK(outcome.err.toStdString().empty());
      const QImage picture(file);
      CHECK(picture.size() == size);
      QFile::remove(file);
    }
  }
}

TEST_CASE("light and dark are told apart, and each language opens") {
  const QTemporaryDir home;
  const QString light = home.filePath("light.png");
  const QString dark = home.filePath("dark.png");
  REQUIRE(run({"--theme", "light", "--grab", light}, home.path()).code == 0);
  REQUIRE(run({"--theme", "dark", "--grab", dark}, home.path()).code == 0);
  CHECK(QImage(light).pixelColor(1000, 10).lightness() > 200);
  CHECK(QImage(dark).pixelColor(1000, 10).lightness() < 40);
  QList<QImage> pictures;
  for (const char* language : {"en", "fr", "es", "de"}) {
    CAPTURE(language);
    const QString file = home.filePath("page.png");
    const auto outcome =
        run({"--language", language, "--place", "settings", "--grab", file, "--theme", "light"}, home.path());
    CHECK(outcome.code == 0);
    CHECK(outcome.err.toStdString().empty());
    // The heading alone differs in every language.
    const QImage heading = QImage(file).copy(112, 0, 1000, 100);
    CHECK_FALSE(pictures.contains(heading));
    pictures.append(heading);
  }
}

TEST_CASE("the gallery opens without a warning, and tells the time to its first frame") {
  const QTemporaryDir home;
  const auto outcome = run({"--gallery", "--timing", "--grab", home.filePath("page.png")}, home.path());
  CHECK(outcome.code == 0);
  CHECK(outcome.err.count('\n') == 1);
  CHECK(outcome.err.startsWith("first frame after "));
}
