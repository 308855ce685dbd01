#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QUrl>
#include <QVariant>

#include <atomic>

#include "app-qml/view/app_device.h"
#include "app-qml/view/beside_screen.h"
#include "app-qml/view/player_choice.h"
#include "sync/carry/outgoing.h"

class QQmlEngine;
class QJSEngine;

// Making a bundle: what goes in, for whom, how large it will be; then written to a folder or stick, which may be pulled out in the middle.
class BundleModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  Q_PROPERTY(Kind kind READ kind NOTIFY changed)
  // Whose books go in, of the kind Players.
  Q_PROPERTY(PlayerChoice* choice READ choice CONSTANT)
  // Whoever gets it works in the room of today's event: players who agreed to that room only go along.
  Q_PROPERTY(bool forRoom READ forRoom WRITE setForRoom NOTIFY changed)
  // Devices it can be sealed for: [{value, text}], value "" for a passphrase, last.
  Q_PROPERTY(QVariantList receivers READ receivers NOTIFY changed)
  Q_PROPERTY(QString receiver READ receiver WRITE setReceiver NOTIFY changed)
  Q_PROPERTY(QString words READ words WRITE setWords NOTIFY changed)
  Q_PROPERTY(QString wordsAgain READ wordsAgain WRITE setWordsAgain NOTIFY changed)
  // How hard the words are to guess, in words, and as a number from 0 (too short) to 3.
  Q_PROPERTY(QString strengthWords READ strengthWords NOTIFY changed)
  Q_PROPERTY(int strength READ strength NOTIFY changed)
  // Made up here; they are shown and need not be typed twice.
  Q_PROPERTY(bool wordsMade READ wordsMade NOTIFY changed)
  Q_PROPERTY(QString note READ note WRITE setNote NOTIFY changed)
  // How large it would be: "about 2.3 MB", the players and other books in it; "" and 0 while that is worked out.
  Q_PROPERTY(bool sizing READ sizing NOTIFY changed)
  Q_PROPERTY(QString size READ size NOTIFY changed)
  Q_PROPERTY(int players READ players NOTIFY changed)
  Q_PROPERTY(int events READ events NOTIFY changed)
  Q_PROPERTY(int pictures READ pictures NOTIFY changed)
  // Of what was written: not in it, because they were gone or damaged.
  Q_PROPERTY(int picturesGone READ picturesGone NOTIFY changed)
  // Who stays behind: [{name, why}], at most twenty, and how many more.
  Q_PROPERTY(QVariantList leftOut READ leftOut NOTIFY changed)
  Q_PROPERTY(int leftOutMore READ leftOutMore NOTIFY changed)
  // Everything is said that is needed to write it.
  Q_PROPERTY(bool ready READ ready NOTIFY changed)
  Q_PROPERTY(State state READ state NOTIFY changed)
  Q_PROPERTY(double progress READ progress NOTIFY progressChanged)
  // The file that is written, waits or has arrived; for whom.
  Q_PROPERTY(QString file READ file NOTIFY changed)
  Q_PROPERTY(QString fileFor READ fileFor NOTIFY changed)
  Q_PROPERTY(QString fileSize READ fileSize NOTIFY changed)
  // {title, text, detail}; empty if nothing is wrong.
  Q_PROPERTY(QVariantMap trouble READ trouble NOTIFY changed)
  // Of this tablet's key, to be compared by whoever brings in what was made here.
  Q_PROPERTY(QString ownWords READ ownWords CONSTANT)
  // What was made here, newest first: [{text, detail, taken: [text]}].
  Q_PROPERTY(QVariantList made READ made NOTIFY madeChanged)

 public:
  enum Kind { Event, Players, Backup };
  Q_ENUM(Kind)
  // Waiting: it is made, and not all of it is where it should be.
  enum State { Choosing, Making, Bringing, Waiting, Arrived };
  Q_ENUM(State)

  // `device` must be open and outlive it.
  explicit BundleModel(AppDevice& device, QObject* parent = nullptr);
  ~BundleModel() override;
  static BundleModel* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] Kind kind() const { return kind_; }
  [[nodiscard]] PlayerChoice* choice() { return &choice_; }
  [[nodiscard]] bool forRoom() const { return forRoom_; }
  void setForRoom(bool forRoom);
  [[nodiscard]] QVariantList receivers() const;
  [[nodiscard]] const QString& receiver() const { return receiver_; }
  void setReceiver(const QString& receiver);
  [[nodiscard]] const QString& words() const { return words_; }
  void setWords(const QString& words);
  [[nodiscard]] const QString& wordsAgain() const { return wordsAgain_; }
  void setWordsAgain(const QString& words);
  [[nodiscard]] QString strengthWords() const;
  [[nodiscard]] int strength() const;
  [[nodiscard]] bool wordsMade() const { return wordsMade_; }
  [[nodiscard]] const QString& note() const { return note_; }
  void setNote(const QString& note);
  [[nodiscard]] bool sizing() const { return sizing_; }
  [[nodiscard]] QString size() const { return size_.text; }
  [[nodiscard]] int players() const { return size_.players; }
  [[nodiscard]] int events() const { return size_.events; }
  [[nodiscard]] int pictures() const { return size_.pictures; }
  [[nodiscard]] int picturesGone() const { return bundle_ ? static_cast<int>(bundle_->pictures_gone) : 0; }
  [[nodiscard]] QVariantList leftOut() const { return size_.leftOut; }
  [[nodiscard]] int leftOutMore() const { return size_.leftOutMore; }
  [[nodiscard]] bool ready() const;
  [[nodiscard]] State state() const { return state_; }
  [[nodiscard]] double progress() const { return progress_; }
  [[nodiscard]] QString file() const;
  [[nodiscard]] QString fileFor() const;
  [[nodiscard]] QString fileSize() const;
  [[nodiscard]] QVariantMap trouble() const { return trouble_; }
  [[nodiscard]] QVariantList made() const { return made_; }
  [[nodiscard]] QString ownWords() const;

  // A new one from the beginning; nothing happens while one is under way.
  Q_INVOKABLE void begin(int kind);
  Q_INVOKABLE void makeUpWords();
  // Makes it and brings it into that folder, under a name that is free there.
  Q_INVOKABLE void write(const QUrl& folder);
  // Goes on with what waits, there or in another folder.
  Q_INVOKABLE void goOn();
  Q_INVOKABLE void goOnIn(const QUrl& folder);
  // Stops; what is made waits.
  Q_INVOKABLE void stop();
  Q_INVOKABLE void giveUp();
  // Somebody has seen that it has arrived, or leaves what was begun.
  Q_INVOKABLE void seen();
  // A receipt came: what was made here is read anew.
  Q_INVOKABLE void readMade();

 signals:
  void changed();
  void progressChanged();
  void madeChanged();

 private:
  struct Size {
    QString text;
    int players = 0, events = 0, pictures = 0, leftOutMore = 0;
    QVariantList leftOut;
    std::optional<weavelog::Fault> fault;
  };
  struct Ended {
    std::optional<weavelog::Outgoing> bundle;
    std::optional<weavelog::Fault> fault;
  };

  [[nodiscard]] weavelog::BookId room() const;
  [[nodiscard]] weavelog::BundleWish wish() const;
  [[nodiscard]] QString fileName() const;
  void measure();
  void bring(std::optional<weavelog::BundleWish> wish, const QString& receiver, const std::filesystem::path& target);
  void ended(const Ended& how);
  void tellProgress(double progress);

  AppDevice& device_;
  weavelog::OutgoingBundle outgoing_;
  PlayerChoice choice_;
  Kind kind_ = Event;
  QString receiver_, words_, wordsAgain_, note_;
  bool begun_ = false;  // somebody is choosing: only then is worked out how large it would be
  bool forRoom_ = false, wordsMade_ = false, sizing_ = false;
  Size size_;
  State state_ = Choosing;
  std::optional<weavelog::Outgoing> bundle_;  // under way, waiting, or arrived
  double progress_ = 0;
  QVariantMap trouble_;
  QVariantList made_;
  std::atomic<bool> stop_ = false;
  BesideScreen measuring_{*this};  // these end before what they report to
  BesideScreen bringing_{*this};
};
