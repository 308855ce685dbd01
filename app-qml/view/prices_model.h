#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariant>

#include <optional>

#include "app-qml/view/work.h"
#include "core/desk/event_book.h"

// The price list of today's event, in its currency.
class PricesModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("Made by the app")
  Q_PROPERTY(bool hasEvent READ hasEvent NOTIFY changed)
  Q_PROPERTY(QString currency READ currency NOTIFY changed)  // "" while the event has none
  // Why nothing can be charged, such as prices of two currencies; "" otherwise.
  Q_PROPERTY(QString fault READ fault NOTIFY changed)
  // What jobs are charged by themselves, priced or not, "string NAME" for every string of the room's that has a price or is in
  // use: [{service, amount, typed}]; amount "" where there is no price
  Q_PROPERTY(QVariantList ofJobs READ ofJobs NOTIFY changed)
  // Everything else: the same.
  Q_PROPERTY(QVariantList others READ others NOTIFY changed)

 public:
  explicit PricesModel(Work& work, QObject* parent = nullptr);

  // An empty amount takes the service off the list.
  Q_INVOKABLE bool set(const QString& service, const QString& amount, const QString& say);
  Q_INVOKABLE bool setCurrency(const QString& currency, const QString& say);
  // What is wrong with a price; "" for nothing, and for an empty field.
  Q_INVOKABLE QString wrongWith(const QString& amount) const;
  Q_INVOKABLE QString wrongCurrency(const QString& currency) const;

  [[nodiscard]] bool hasEvent() const { return event_.has_value(); }
  [[nodiscard]] QString currency() const { return QString::fromStdString(currency_); }
  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] QVariantList ofJobs() const { return ofJobs_; }
  [[nodiscard]] QVariantList others() const { return others_; }

 signals:
  void changed();

 private:
  void refresh();

  Work& work_;
  std::string currency_;
  QString fault_;
  std::optional<weavelog::EventRecord> event_;
  QVariantList ofJobs_, others_;
};
