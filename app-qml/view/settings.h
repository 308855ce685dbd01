#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QSettings>
#include <QString>
#include <QStringList>

#include <memory>

class QQmlEngine;
class QJSEngine;

// What the person at this device chose; kept in QSettings at once, so a kill loses nothing. A stored value
// that this version does not know reads as the default. Values are never shared with other devices.
class Settings : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // "en", "fr", "es" or "de"; the first start takes the system's, English where it is none of these.
  Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY languageChanged)
  Q_PROPERTY(QStringList languages READ languages CONSTANT)
  // "kg", "lb" or "N": what a new tension is asked in. A stored tension keeps the unit in which it was said.
  Q_PROPERTY(QString tensionUnit READ tensionUnit WRITE setTensionUnit NOTIFY tensionUnitChanged)
  // "light", "dark" or "system".
  Q_PROPERTY(QString appearance READ appearance WRITE setAppearance NOTIFY appearanceChanged)
  // What appearance comes to on this device now.
  Q_PROPERTY(bool dark READ dark NOTIFY darkChanged)
  // What this device is called on others; heard by them at the next start of the app.
  Q_PROPERTY(QString deviceName READ deviceName WRITE setDeviceName NOTIFY deviceNameChanged)
  // Who stands at this device: signs stages and drop-offs. May be empty.
  Q_PROPERTY(QString stringer READ stringer WRITE setStringer NOTIFY stringerChanged)
  // The second scan of a tag takes its racket's next step at once, instead of offering it.
  Q_PROPERTY(bool scanSteps READ scanSteps WRITE setScanSteps NOTIFY scanStepsChanged)
  // 0.85 to 1.6.
  Q_PROPERTY(double textScale READ textScale WRITE setTextScale NOTIFY textScaleChanged)

 public:
  explicit Settings(std::unique_ptr<QSettings> store, QObject* parent = nullptr);

  // What provide() gave the engine, otherwise one that keeps its values under the application's name.
  static Settings* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] QString language() const { return language_; }
  [[nodiscard]] static QStringList languages();
  [[nodiscard]] QString tensionUnit() const { return tensionUnit_; }
  [[nodiscard]] QString appearance() const { return appearance_; }
  [[nodiscard]] bool dark() const;
  [[nodiscard]] double textScale() const { return textScale_; }
  [[nodiscard]] QString deviceName() const { return deviceName_; }
  [[nodiscard]] QString stringer() const { return stringer_; }
  [[nodiscard]] bool scanSteps() const { return scanSteps_; }

  // Takes a language, an appearance and a device name for this run without keeping them; an empty or unknown one
  // is left alone.
  void useForThisRun(const QString& language, const QString& appearance, const QString& deviceName = {});

  // The setters ignore a value that is none of those named above.
  void setLanguage(const QString& language);
  void setTensionUnit(const QString& unit);
  void setAppearance(const QString& appearance);
  void setTextScale(double scale);
  // Names lose spaces at their ends and what goes beyond 60 characters. An empty device name is not taken.
  void setDeviceName(const QString& name);
  void setStringer(const QString& name);
  void setScanSteps(bool takes);

  // What a group of papers ("tags", "labels", "lists") was last printed on, and the printer that was last used; "" for none yet.
  [[nodiscard]] QString paperSize(const QString& group) const;
  [[nodiscard]] QString printer() const;
  void setPaperSize(const QString& group, const QString& size);
  void setPrinter(const QString& printer);

 signals:
  void languageChanged();
  void tensionUnitChanged();
  void appearanceChanged();
  void darkChanged();
  void textScaleChanged();
  void deviceNameChanged();
  void stringerChanged();
  void scanStepsChanged();

 private:
  bool eventFilter(QObject* watched, QEvent* event) override;

  std::unique_ptr<QSettings> store_;
  QString language_;
  QString tensionUnit_;
  QString appearance_;
  double textScale_ = 1.0;
  QString deviceName_;
  QString stringer_;
  bool scanSteps_ = false;
};
