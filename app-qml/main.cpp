#include <QElapsedTimer>
#include <QFont>
#include <QGuiApplication>
#include <QLocale>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTimer>
#include <cstdio>

#include "app-qml/arguments.h"
#include "app-qml/demo_folder.h"
#include "app-qml/guarded_application.h"
#include "app-qml/paper_command.h"
#include "app-qml/ui/theme/theme.h"
#include "app-qml/view/app_device.h"
#include "app-qml/view/app_models.h"
#include "app-qml/view/code_reader.h"
#include "app-qml/view/provided.h"
#include "app-qml/view/settings.h"
#include "app-qml/view/translation.h"
#include "core/base/freed_memory.h"
#include "core/store/database.h"

namespace {

// Saves what the window shows once it has settled, and leaves with 0, or with 1 and one line.
void grabAndLeave(QQuickWindow* window, const QString& file) {
  // Fonts, layouts and transitions need a few frames; half a second covers the longest of them.
  QTimer::singleShot(500, window, [window, file] {
    if (window->grabWindow().save(file, "PNG")) {
      QCoreApplication::exit(0);
      return;
    }
    std::fprintf(stderr, "weavelog: could not write '%s'; is the folder writable and the disk not full?\n",
                 qPrintable(file));
    QCoreApplication::exit(1);
  });
}

// Without this, Qt ends the program with an abort where there is nothing to draw on.
bool hasDisplay() {
  return !qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM") || !qEnvironmentVariableIsEmpty("DISPLAY") ||
         !qEnvironmentVariableIsEmpty("WAYLAND_DISPLAY");
}

// Every code that is to be seen, a line each. 1 with one line where there is none.
int sayCodes(const QString& file) {
  const auto codes = codesOnFile(file);
  if (codes && !codes->isEmpty()) {
    for (const QString& code : *codes) std::printf("%s\n", qPrintable(code));
    return 0;
  }
  std::fprintf(stderr, "weavelog: %s\n", codes ? "no code is to be seen on the picture; take it from nearer by" : codes.error().message().c_str());
  return 1;
}

int run(int argc, char* argv[]) {
  QElapsedTimer sinceStart;
  sinceStart.start();
  const auto parsed = readArguments(argc, argv);
  if (const auto* end = std::get_if<EarlyEnd>(&parsed)) {
    std::fputs(end->text.c_str(), end->code == 0 ? stdout : stderr);
    return end->code;
  }
  const auto& arguments = std::get<Arguments>(parsed);

  // A paper is written without any screen, and a picture read.
  if ((!arguments.paper.isEmpty() || !arguments.pictureFile.isEmpty()) && !hasDisplay()) qputenv("QT_QPA_PLATFORM", "offscreen");
  if (!hasDisplay()) {
    std::fputs(
        "weavelog: there is no display here (neither DISPLAY nor WAYLAND_DISPLAY is set); "
        "to save pictures without one, set QT_QPA_PLATFORM=offscreen and use --grab\n",
        stderr);
    return 1;
  }

  QGuiApplication::setOrganizationName(QStringLiteral("weavelog"));
  QGuiApplication::setApplicationName(QStringLiteral("weavelog"));
  GuardedApplication application(argc, argv);
  if (!arguments.pictureFile.isEmpty()) return sayCodes(arguments.pictureFile);
  QGuiApplication::setFont(themeFont());
  // The other styles draw with shader effects, which software rendering leaves out.
  QQuickStyle::setStyle(QStringLiteral("Basic"));

  Settings settings(std::make_unique<QSettings>());
  settings.useForThisRun(arguments.language, arguments.theme, arguments.demo ? QString::fromUtf8(demoTabletName) : QString());
  Theme theme(nullptr);
  Translation translation;
  const QTemporaryDir demoFolder;
  if (arguments.demo) {
    const auto filled = fillWithDemo(demoFolder.filePath(QStringLiteral("device")).toStdString());
    if (!filled) {
      std::fprintf(stderr, "weavelog: %s\n", filled.error().message().c_str());
      return 1;
    }
  }
  const QString folder = arguments.demo ? demoFolder.filePath(QStringLiteral("device"))
                         : arguments.dataFolder.isEmpty()
                             ? QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)
                             : arguments.dataFolder;
  AppDevice device(std::filesystem::path(folder.toStdString()), settings);
  if (!arguments.paper.isEmpty()) {
    const auto written = device.isOpen() ? writePaper(arguments, device) : weavelog::Outcome<>(weavelog::fail(device.fault()));
    if (written) return 0;
    std::fprintf(stderr, "weavelog: %s\n", written.error().message().c_str());
    return 1;
  }
  std::unique_ptr<AppModels> models;
  if (device.isOpen()) {
    models = std::make_unique<AppModels>(device, settings);
    application.onFault([&device](const weavelog::Fault& fault) { device.work().tell(fault); });
  }
  QQmlApplicationEngine engine;
  engine.addImportPath(QStringLiteral("qrc:/"));
  provide(engine, settings);
  provide(engine, theme);
  provide(engine, device);
  if (models) models->provideTo(engine);

  const auto speak = [&] {
    translation.use(settings.language(), &engine);
    theme.setRightToLeft(QLocale().textDirection() == Qt::RightToLeft);
  };
  const auto dress = [&] {
    theme.setDark(settings.dark());
    theme.setTextScale(settings.textScale());
  };
  speak();
  dress();
  QObject::connect(&settings, &Settings::languageChanged, &engine, speak);
  QObject::connect(&settings, &Settings::darkChanged, &engine, dress);
  QObject::connect(&settings, &Settings::textScaleChanged, &engine, dress);

  QVariantMap start{{QStringLiteral("width"), arguments.size.width()},
                    {QStringLiteral("height"), arguments.size.height()}};
  if (!arguments.place.isEmpty() && !arguments.gallery)
    start.insert(QStringLiteral("startPlace"), arguments.place);
  if (!arguments.page.isEmpty() && !arguments.gallery)
    start.insert(QStringLiteral("startPage"), arguments.page);
  engine.setInitialProperties(start);
  QObject::connect(
      &engine, &QQmlApplicationEngine::objectCreationFailed, &application, [] { QCoreApplication::exit(1); },
      Qt::QueuedConnection);
  engine.load(arguments.gallery ? QUrl(QStringLiteral("qrc:/Weavelog/Gallery/GalleryWindow.qml"))
                                : QUrl(QStringLiteral("qrc:/Weavelog/Screens/Main.qml")));
  if (engine.rootObjects().isEmpty()) return 1;

  auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
  if (arguments.timing) {
    QObject::connect(
        window, &QQuickWindow::frameSwapped, &application,
        [&sinceStart] {
          std::fprintf(stderr, "first frame after %lld ms\n", static_cast<long long>(sinceStart.elapsed()));
        },
        static_cast<Qt::ConnectionType>(Qt::QueuedConnection | Qt::SingleShotConnection));
  }
  if (!arguments.grabFile.isEmpty()) grabAndLeave(window, arguments.grabFile);
  return QGuiApplication::exec();
}

}  // namespace

int main(int argc, char* argv[]) {
  weavelog::keep_freed_memory();
  try {
    return run(argc, argv);
  } catch (const SQLite::Exception& error) {
    // Damage that shows only while the first page is made.
    std::fprintf(stderr, "weavelog: %s\n", weavelog::fault_of(error, "ledger.db").message().c_str());
    return 1;
  }
}
