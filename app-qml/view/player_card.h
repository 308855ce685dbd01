#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariant>

#include <optional>

#include "app-qml/view/work.h"
#include "core/desk/person_books.h"

// One player as the desk needs to know them at a glance: open questions first, then what is agreed now, the
// rackets and the last jobs; and what can be mended about the person and the rackets.
class PlayerCard : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("Made by the app")
  // Hexadecimal; "" while no player is shown.
  Q_PROPERTY(QString book READ book NOTIFY cardChanged)
  Q_PROPERTY(QString name READ name NOTIFY cardChanged)
  Q_PROPERTY(QString detail READ detail NOTIFY cardChanged)
  // Every field of the person as it is edited, by its name in the registry.
  Q_PROPERTY(QVariant person READ person NOTIFY cardChanged)
  // [{subject, field, answers: [{value, device, day}]}]
  Q_PROPERTY(QVariantList questions READ questions NOTIFY cardChanged)
  // What is agreed now, one for each different wish: [{rackets, mains, mainsUnit, crosses, crossesUnit,
  // strings, lines:
  // [{label, value}], since: [{label, before, after}], event, day, takenIn}]; takenIn: not
  // all of these rackets are strung yet
  Q_PROPERTY(QVariantList agreed READ agreed NOTIFY cardChanged)
  // [{id, label, model, serial, note, stage}], stage -1 where the racket is not in today's room
  Q_PROPERTY(QVariantList rackets READ rackets NOTIFY cardChanged)
  // [{tag, racket, strings, tension, event, day, stage}], newest first, as many as are wanted
  Q_PROPERTY(QVariantList jobs READ jobs NOTIFY cardChanged)
  Q_PROPERTY(int jobCount READ jobCount NOTIFY cardChanged)
  // Devices that were given something of this person's books by this tablet, or gave it: [{device, day, given}], newest first; given: it has
  // them from here.
  Q_PROPERTY(QVariantList holders READ holders NOTIFY cardChanged)
  // The player agreed to one room only, and others have the book from before.
  Q_PROPERTY(bool heldBeyond READ heldBeyond NOTIFY cardChanged)
  // Books that belong to this person, those that are linked but not here included; 0 while nobody is shown.
  Q_PROPERTY(int bookCount READ bookCount NOTIFY cardChanged)
  Q_PROPERTY(bool hasLastTime READ hasLastTime NOTIFY cardChanged)

 public:
  explicit PlayerCard(Work& work, QObject* parent = nullptr);

  // Shows a player; one who is not here, or "", shows nobody.
  Q_INVOKABLE void show(const QString& book);
  Q_INVOKABLE void showMoreJobs();
  // Writes the fields named; true when that is on disk.
  Q_INVOKABLE bool savePerson(const QVariantMap& fields);
  Q_INVOKABLE bool saveRacket(const QString& id, const QVariantMap& fields);
  // What the player agrees to with a choice (the numbers of ConsentChoice), in a language.
  Q_INVOKABLE static QString consentText(int choice, const QString& language);
  // Question and answers in a language (see consentWords()).
  Q_INVOKABLE static QVariantMap consentWords(const QString& language);
  // Writes the consent down with the text that was shown, in all books of this person.
  Q_INVOKABLE bool giveConsent(int choice, const QString& language, const QString& shown);

  // The player withdraws: everything is erased, in all books of this person, here now and elsewhere at the next exchange. Nobody is shown
  // afterwards. True when that is on disk.
  Q_INVOKABLE bool forget();

  [[nodiscard]] QString book() const;
  [[nodiscard]] QString name() const;
  [[nodiscard]] QString detail() const;
  [[nodiscard]] QVariantMap person() const;
  [[nodiscard]] QVariantList questions() const { return questions_; }
  [[nodiscard]] QVariantList agreed() const { return agreed_; }
  [[nodiscard]] QVariantList rackets() const { return rackets_; }
  [[nodiscard]] QVariantList jobs() const { return jobs_; }
  [[nodiscard]] int jobCount() const;
  [[nodiscard]] QVariantList holders() const { return holders_; }
  [[nodiscard]] bool heldBeyond() const { return heldBeyond_; }
  [[nodiscard]] int bookCount() const;
  [[nodiscard]] bool hasLastTime() const { return !agreed_.isEmpty(); }
  // Only while a player is shown.
  [[nodiscard]] const std::optional<weavelog::PlayerRecord>& record() const { return record_; }

 signals:
  void cardChanged();
  // Somebody else is shown, or nobody.
  void bookChanged();

 private:
  void refresh();
  void readQuestions();
  void readAgreed();
  void readRackets();
  void readJobs();
  void readHolders();

  Work& work_;
  weavelog::BookId book_;
  std::optional<weavelog::PlayerRecord> record_;
  std::optional<weavelog::PersonBooks> person_;  // this book and those linked to it
  std::size_t jobsWanted_ = 8;
  QVariantList questions_, agreed_, rackets_, jobs_, holders_;
  bool heldBeyond_ = false;
};
