#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariant>

#include <optional>

#include "app-qml/view/work.h"
#include "core/desk/event_book.h"
#include "core/desk/player_record.h"
#include "core/desk/statement.h"

// One player's account at today's event: what is due, every line by its job, what was not charged yet, and what a person
// does about it. Each action is one entry in the event's book, which undo takes back.
class AccountModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("Made by the app")
  // Hexadecimal; "" while nobody's account is shown.
  Q_PROPERTY(QString book READ book NOTIFY changed)
  Q_PROPERTY(QString name READ name NOTIFY changed)
  // One for each currency that occurs, the event's first and always there: [{digits, currency, sign, charged, paid, typed}];
  // sign: 1 the player owes, 0 even, -1 the room owes; typed: what is due as an amount field takes it, "" if nothing is.
  Q_PROPERTY(QVariantList due READ due NOTIFY changed)
  // Newest first: [{job, tag, racket, sum, charged, lines: [{id, service, payment, means, note, amount, at, by, reversed,
  // reverses, open}]}]; job "" for what belongs to none; charged: a charge of it stands
  Q_PROPERTY(QVariantList parts READ parts NOTIFY changed)
  // [{job, tag, racket, sum, lines: [{service, note, amount}], unpriced: [{service, note}]}]
  Q_PROPERTY(QVariantList uncharged READ uncharged NOTIFY changed)
  // What the price list has beside what jobs are charged by themselves: [{service, amount, typed}]
  Q_PROPERTY(QVariantList wares READ wares NOTIFY changed)
  // Amounts on which two tablets differ.
  Q_PROPERTY(int questions READ questions NOTIFY changed)
  // ISO 4217; "" while the event has none.
  Q_PROPERTY(QString currency READ currency NOTIFY changed)

 public:
  explicit AccountModel(Work& work, QObject* parent = nullptr);

  Q_INVOKABLE void show(const QString& book);
  // All of them in one action. `say` is what the toast says; here and below.
  Q_INVOKABLE bool charge(const QStringList& jobs, const QString& say);
  // What those jobs come to by the price list: "76,02 EUR".
  Q_INVOKABLE QString sumOf(const QStringList& jobs) const;
  // Of 1,000.
  Q_INVOKABLE bool discount(const QString& job, int perMille, const QString& reason, const QString& say);
  // `means` is a number of PaidBy.
  Q_INVOKABLE bool pay(const QString& amount, int means, const QString& note, const QString& say);
  Q_INVOKABLE bool reverse(const QString& line, const QString& reason, const QString& say);
  Q_INVOKABLE bool sell(const QString& service, const QString& each, int count, const QString& note, const QString& say);
  // What is wrong with an amount, to stand below its field; "" for nothing, and for an empty field.
  Q_INVOKABLE QString wrongWith(const QString& amount) const;
  // An amount that was typed, as it is told; "" for none.
  Q_INVOKABLE QString told(const QString& amount) const;

  [[nodiscard]] QString book() const;
  [[nodiscard]] QString name() const { return name_; }
  [[nodiscard]] QVariantList due() const { return due_; }
  [[nodiscard]] QVariantList parts() const { return parts_; }
  [[nodiscard]] QVariantList uncharged() const { return uncharged_; }
  [[nodiscard]] QVariantList wares() const { return wares_; }
  [[nodiscard]] int questions() const { return questions_; }
  [[nodiscard]] QString currency() const { return QString::fromStdString(currency_); }

 signals:
  void changed();

 private:
  void refresh();
  void readDue(const weavelog::Statement& statement);
  void readParts(const weavelog::Statement& statement);
  void readUncharged(const weavelog::Statement& statement);
  void readWares();
  [[nodiscard]] std::string who() const;

  Work& work_;
  weavelog::BookId book_;
  QString name_;
  std::string currency_;
  std::optional<weavelog::EventRecord> event_;
  std::optional<weavelog::PlayerRecord> record_;
  QVariantList due_, parts_, uncharged_, wares_;
  int questions_ = 0;
};
