#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariant>

#include <optional>

#include "app-qml/view/work.h"
#include "core/desk/event_book.h"
#include "core/desk/money.h"

// The money of one day of the event: what was charged by service, what came in by means, the count of the box, and how
// somebody closed it. Days are those of the event's time zone.
class DayMoney : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("Made by the app")
  Q_PROPERTY(bool watched READ watched WRITE setWatched NOTIFY changed)
  Q_PROPERTY(QString day READ day NOTIFY changed)  // ISO 8601
  Q_PROPERTY(QString dayText READ dayText NOTIFY changed)
  Q_PROPERTY(bool today READ today NOTIFY changed)
  // [{currency, charged, paid, services: [{service, amount}], means: [{means, amount}]}]
  Q_PROPERTY(QVariantList totals READ totals NOTIFY changed)
  Q_PROPERTY(QString currency READ currency NOTIFY changed)  // "" while the event has none
  // Cash of the day by its lines: what the box should have taken.
  Q_PROPERTY(QString cash READ cash NOTIFY changed)
  // Newest first: [{at, by, note, counted, difference, sign, chargedSince, paidSince}]; the last two "" where nothing was
  // written for that day since
  Q_PROPERTY(QVariantList closes READ closes NOTIFY changed)

 public:
  explicit DayMoney(Work& work, QObject* parent = nullptr);

  Q_INVOKABLE void step(int days);
  Q_INVOKABLE void showToday();
  // What is wrong with a count of the box; "" for nothing, and for an empty field.
  Q_INVOKABLE QString wrongWith(const QString& counted) const;
  // {sign, amount}: 1 there is more in the box than the lines say, -1 less, 0 it agrees; empty for no count.
  Q_INVOKABLE QVariantMap difference(const QString& counted) const;
  Q_INVOKABLE bool close(const QString& counted, const QString& note, const QString& say);

  [[nodiscard]] bool watched() const { return watched_; }
  void setWatched(bool watched);
  [[nodiscard]] QString day() const { return QString::fromStdString(day_); }
  [[nodiscard]] QString dayText() const;
  [[nodiscard]] bool today() const;
  [[nodiscard]] QVariantList totals() const { return totals_; }
  [[nodiscard]] QString currency() const { return QString::fromStdString(currency_); }
  [[nodiscard]] QString cash() const;
  [[nodiscard]] QVariantList closes() const { return closes_; }

 signals:
  void changed();

 private:
  void refresh();
  void readTotals();
  void readCloses();
  [[nodiscard]] std::int64_t cashMinor() const;

  Work& work_;
  bool watched_ = false;
  std::string day_;  // "" until it is watched: today
  std::string shownDay_;
  std::string currency_;
  std::optional<weavelog::EventRecord> event_;
  std::vector<weavelog::MoneyRow> lines_;
  QVariantList totals_, closes_;
};
