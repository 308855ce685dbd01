#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariant>

#include "app-qml/view/account_model.h"
#include "app-qml/view/accounts_model.h"
#include "app-qml/view/day_money.h"
#include "app-qml/view/prices_model.h"

class QQmlEngine;
class QJSEngine;

// The room's money: accounts of players, the day, the price list.
class MoneyPlace : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // "accounts", "day" or "prices": what the place shows.
  Q_PROPERTY(QString view READ view WRITE setView NOTIFY viewChanged)
  Q_PROPERTY(AccountsModel* list READ list CONSTANT)
  Q_PROPERTY(AccountModel* account READ account CONSTANT)
  Q_PROPERTY(DayMoney* day READ day CONSTANT)
  Q_PROPERTY(PricesModel* prices READ prices CONSTANT)

 public:
  explicit MoneyPlace(Work& work, QObject* parent = nullptr)
      : QObject(parent), work_(work), list_(work), account_(work), day_(work), prices_(work) {}
  // What provide() gave the engine.
  static MoneyPlace* create(QQmlEngine* engine, QJSEngine* script);

  // From wherever a player is shown: opens the place with that player's account.
  Q_INVOKABLE void go(const QString& book) {
    account_.show(book);
    setView(QStringLiteral("accounts"));
    emit asked();
  }
  // A page to begin with: "account:NAME" (the first player so found), "day:" or "prices:". False: it is none of these.
  Q_INVOKABLE bool open(const QString& page);

  // How a player stands at today's event: {due ("25,50 EUR", what the player owes; "" if nothing), uncharged (rackets)}.
  Q_INVOKABLE QVariantMap standing(const QString& book) const;

  [[nodiscard]] QString view() const { return view_; }
  void setView(const QString& view) {
    if (view_ == view) return;
    view_ = view;
    emit viewChanged();
  }
  [[nodiscard]] AccountsModel* list() { return &list_; }
  [[nodiscard]] AccountModel* account() { return &account_; }
  [[nodiscard]] DayMoney* day() { return &day_; }
  [[nodiscard]] PricesModel* prices() { return &prices_; }

 signals:
  void asked();
  void viewChanged();

 private:
  Work& work_;
  QString view_ = QStringLiteral("accounts");
  AccountsModel list_;
  AccountModel account_;
  DayMoney day_;
  PricesModel prices_;
};
