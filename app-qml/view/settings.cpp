#include "app-qml/view/settings.h"

#include <QEvent>
#include <QGuiApplication>
#include <QLocale>
#include <QPalette>
#include <QSysInfo>
#include <algorithm>
#include <cmath>

#include "app-qml/view/provided.h"

namespace {

constexpr double leastScale = 0.85;
constexpr double mostScale = 1.6;

QStringList tensionUnits() {
  return {QStringLiteral("kg"), QStringLiteral("lb"), QStringLiteral("N")};
}

QStringList appearances() {
  return {QStringLiteral("system"), QStringLiteral("light"), QStringLiteral("dark")};
}

QString oneOf(const QStringList& known, const QString& stored, const QString& otherwise) {
  return known.contains(stored) ? stored : otherwise;
}

QString shortName(const QString& name) {
  return name.simplified().left(60);
}

QString systemLanguage() {
  return oneOf(Settings::languages(), QLocale::system().name().section(u'_', 0, 0), QStringLiteral("en"));
}

// Stores a new value of a setting that is one of a few words; false when there is nothing to do.
bool changeWord(QSettings& store, const char* key, QString& held, const QString& wanted,
                const QStringList& known) {
  if (held == wanted || !known.contains(wanted)) return false;
  held = wanted;
  store.setValue(QLatin1String(key), wanted);
  store.sync();
  return true;
}

}  // namespace

Settings::Settings(std::unique_ptr<QSettings> store, QObject* parent)
    : QObject(parent), store_(std::move(store)) {
  language_ = oneOf(languages(), store_->value(QStringLiteral("language")).toString(), systemLanguage());
  tensionUnit_ =
      oneOf(tensionUnits(), store_->value(QStringLiteral("tensionUnit")).toString(), QStringLiteral("kg"));
  appearance_ =
      oneOf(appearances(), store_->value(QStringLiteral("appearance")).toString(), QStringLiteral("system"));
  bool readable = false;
  const double scale = store_->value(QStringLiteral("textScale"), 1.0).toDouble(&readable);
  textScale_ = readable && std::isfinite(scale) ? std::clamp(scale, leastScale, mostScale) : 1.0;
  deviceName_ = shortName(store_->value(QStringLiteral("deviceName")).toString());
  if (deviceName_.isEmpty()) deviceName_ = shortName(QSysInfo::machineHostName());
  if (deviceName_.isEmpty()) deviceName_ = QStringLiteral("weavelog");
  stringer_ = shortName(store_->value(QStringLiteral("stringer")).toString());
  scanSteps_ = store_->value(QStringLiteral("scanSteps"), false).toBool();
  // Qt 6.4 has no signal for the system's light and dark: the palette changes with it.
  if (qGuiApp != nullptr) qGuiApp->installEventFilter(this);
}

Settings* Settings::create(QQmlEngine* engine, QJSEngine*) {
  if (auto* settings = provided<Settings>(engine)) return settings;
  return new Settings(std::make_unique<QSettings>());  // the engine takes it over
}

void Settings::useForThisRun(const QString& language, const QString& appearance, const QString& deviceName) {
  if (languages().contains(language) && language != language_) {
    language_ = language;
    emit languageChanged();
  }
  if (appearances().contains(appearance) && appearance != appearance_) {
    appearance_ = appearance;
    emit appearanceChanged();
    emit darkChanged();
  }
  const QString wanted = shortName(deviceName);
  if (!wanted.isEmpty() && wanted != deviceName_) {
    deviceName_ = wanted;
    emit deviceNameChanged();
  }
}

QStringList Settings::languages() {
  return {QStringLiteral("en"), QStringLiteral("fr"), QStringLiteral("es"), QStringLiteral("de")};
}

bool Settings::dark() const {
  if (appearance_ == QLatin1String("dark")) return true;
  if (appearance_ == QLatin1String("light") || qGuiApp == nullptr) return false;
  return QGuiApplication::palette().color(QPalette::Window).lightness() < 128;
}

void Settings::setLanguage(const QString& language) {
  if (changeWord(*store_, "language", language_, language, languages())) emit languageChanged();
}

void Settings::setTensionUnit(const QString& unit) {
  if (changeWord(*store_, "tensionUnit", tensionUnit_, unit, tensionUnits())) emit tensionUnitChanged();
}

void Settings::setAppearance(const QString& appearance) {
  if (!changeWord(*store_, "appearance", appearance_, appearance, appearances())) return;
  emit appearanceChanged();
  emit darkChanged();
}

void Settings::setTextScale(double scale) {
  if (!std::isfinite(scale)) return;
  const double wanted = std::clamp(scale, leastScale, mostScale);
  if (std::abs(wanted - textScale_) < 1e-9) return;
  textScale_ = wanted;
  store_->setValue(QStringLiteral("textScale"), wanted);
  store_->sync();
  emit textScaleChanged();
}

void Settings::setDeviceName(const QString& name) {
  const QString wanted = shortName(name);
  if (wanted.isEmpty() || wanted == deviceName_) return;
  deviceName_ = wanted;
  store_->setValue(QStringLiteral("deviceName"), wanted);
  store_->sync();
  emit deviceNameChanged();
}

void Settings::setStringer(const QString& name) {
  const QString wanted = shortName(name);
  if (wanted == stringer_) return;
  stringer_ = wanted;
  store_->setValue(QStringLiteral("stringer"), wanted);
  store_->sync();
  emit stringerChanged();
}

void Settings::setScanSteps(bool takes) {
  if (takes == scanSteps_) return;
  scanSteps_ = takes;
  store_->setValue(QStringLiteral("scanSteps"), takes);
  store_->sync();
  emit scanStepsChanged();
}

QString Settings::paperSize(const QString& group) const { return store_->value(QStringLiteral("papers/") + group).toString(); }

QString Settings::printer() const { return store_->value(QStringLiteral("papers/printer")).toString(); }

void Settings::setPaperSize(const QString& group, const QString& size) {
  if (size == paperSize(group)) return;
  store_->setValue(QStringLiteral("papers/") + group, size);
  store_->sync();
}

void Settings::setPrinter(const QString& printer) {
  if (printer == this->printer()) return;
  store_->setValue(QStringLiteral("papers/printer"), printer);
  store_->sync();
}

bool Settings::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::ApplicationPaletteChange) emit darkChanged();
  return QObject::eventFilter(watched, event);
}
