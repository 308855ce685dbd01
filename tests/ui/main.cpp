#include <QGuiApplication>
#include <QQmlContext>
#include <QQmlEngine>
#include <QQuickStyle>
#include <QTemporaryDir>
#include <QtQuickTest>

#include "app-qml/ui/theme/theme.h"
#include "app-qml/view/app_models.h"
#include "app-qml/view/provided.h"
#include "app-qml/view/settings.h"
#include "app-qml/view/translation.h"
#include "tests/ui/arrival_server.h"
#include "tests/ui/jobs.h"
#include "tests/ui/room.h"
#include "tests/ui/walker.h"

// Sets each test file's engine up as the app does, with settings in a folder of its own.
class Setup : public QObject {
  Q_OBJECT

 public slots:
  void applicationAvailable() {
    QGuiApplication::setFont(themeFont());
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    QLocale::setDefault(QLocale(QStringLiteral("en")));
  }

  void qmlEngineAvailable(QQmlEngine* engine) {
    engine->addImportPath(QStringLiteral("qrc:/"));
    settings_ = std::make_unique<Settings>(
        std::make_unique<QSettings>(folder_.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat));
    settings_->useForThisRun(QStringLiteral("en"), QStringLiteral("light"));
    models_.reset();
    device_.reset();
    device_ = std::make_unique<AppDevice>(
        std::filesystem::path(folder_.filePath(QString::number(++devices_)).toStdString()), *settings_);
    // A test may choose another language; each file begins in English.
    translation_.use(settings_->language(), engine);
    connect(settings_.get(), &Settings::languageChanged, engine, [this, engine] { translation_.use(settings_->language(), engine); });
    provide(*engine, *settings_);
    provide(*engine, *device_);
    jobs_.useDevice(*device_);
    server_.useDevice(*device_);
    qmlRegisterSingletonInstance("Weavelog.Tests", 1, 0, "ArrivalServer", &server_);
    qmlRegisterSingletonInstance("Weavelog.Tests", 1, 0, "Jobs", &jobs_);
    models_ = std::make_unique<AppModels>(*device_, *settings_);
    models_->provideTo(*engine);
    room_.useDevice(*device_, *models_);
    qmlRegisterSingletonInstance("Weavelog.Tests", 1, 0, "Room", &room_);
    qmlRegisterSingletonInstance("Weavelog.Tests", 1, 0, "Walker", &walker_);
  }

 private:
  QTemporaryDir folder_;
  int devices_ = 0;  // one for each test file: none finds what another has written
  std::unique_ptr<Settings> settings_;
  Translation translation_;
  std::unique_ptr<AppDevice> device_;
  Jobs jobs_;
  ArrivalServer server_;
  std::unique_ptr<AppModels> models_;
  Room room_;
  Walker walker_;
};

QUICK_TEST_MAIN_WITH_SETUP(ui, Setup)

#include "main.moc"
