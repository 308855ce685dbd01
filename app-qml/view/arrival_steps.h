#pragma once

#include <QtQml/qqmlregistration.h>
#include <QElapsedTimer>
#include <QObject>
#include <QTimer>

#include <optional>

#include "app-qml/view/arrival_model.h"
#include "app-qml/view/beside_screen.h"
#include "app-qml/view/time_left.h"
#include "core/people/arrival_account.h"
#include "sync/net/exchange_guest.h"

class QQmlEngine;
class QJSEngine;

// Arriving at an event, step by step: the event server is met, its entry list comes over, each player is looked at, what was ticked goes
// across, and everything is accounted for. Where it stands follows from what is on the disk and from the connection, so that it goes on
// wherever it was interrupted.
class ArrivalSteps : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // One was begun and not looked through to the end.
  Q_PROPERTY(bool goingOn READ goingOn NOTIFY changed)
  Q_PROPERTY(Step step READ step NOTIFY changed)
  // The event server has been met, and there is no connection now: it goes on by itself.
  Q_PROPERTY(bool cut READ cut NOTIFY changed)
  // What has gone, in entries, of all that was ticked; 0 of 0 while nothing was.
  Q_PROPERTY(int gone READ gone NOTIFY changed)
  Q_PROPERTY(int toGo READ toGo NOTIFY changed)
  // What has come, in books, of all that were found lacking here.
  Q_PROPERTY(int come READ come NOTIFY changed)
  Q_PROPERTY(int toCome READ toCome NOTIFY changed)
  // How long it will still take, in seconds; -1 while that can't be told.
  Q_PROPERTY(int secondsLeft READ secondsLeft NOTIFY changed)
  // The account: players whose books were not there, and rackets.
  Q_PROPERTY(int playersCame READ playersCame NOTIFY changed)
  Q_PROPERTY(int racketsCame READ racketsCame NOTIFY changed)
  Q_PROPERTY(int playersWent READ playersWent NOTIFY changed)
  Q_PROPERTY(int racketsWent READ racketsWent NOTIFY changed)

 public:
  enum Step { Meet, List, People, Across, Account };
  Q_ENUM(Step)

  // `device` must be open and outlive it.
  explicit ArrivalSteps(AppDevice& device, QObject* parent = nullptr);
  static ArrivalSteps* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] bool goingOn() const { return arrival_.has_value(); }
  [[nodiscard]] Step step() const;
  [[nodiscard]] bool cut() const { return arrival_ && arrival_->met && !proved(); }
  [[nodiscard]] int gone() const;
  [[nodiscard]] int toGo() const { return toGo_; }
  [[nodiscard]] int come() const;
  [[nodiscard]] int toCome() const;
  [[nodiscard]] int secondsLeft() const;
  [[nodiscard]] int playersCame() const { return static_cast<int>(came_.players); }
  [[nodiscard]] int racketsCame() const { return static_cast<int>(came_.jobs); }
  [[nodiscard]] int playersWent() const { return static_cast<int>(went_.players); }
  [[nodiscard]] int racketsWent() const { return static_cast<int>(went_.jobs); }

  // Arrives at the event server that is known already: what comes from now on is counted. Pairing begins one by itself.
  Q_INVOKABLE void begin();
  // The players were looked at: those who are ticked in the list go, or nobody does. False: failed() of the work has told why.
  Q_INVOKABLE bool goOn(ArrivalModel* list);
  // Back to the players.
  Q_INVOKABLE void lookAgain();
  // The account was read.
  Q_INVOKABLE void finish();

 signals:
  void changed();
  // Somebody wants to see what needs an answer.
  void questionsAsked();

 private:
  void follow();
  void readArrival();
  void count();
  [[nodiscard]] bool proved() const;
  [[nodiscard]] bool settled() const;
  [[nodiscard]] bool listIsHere() const;

  AppDevice& device_;
  std::optional<weavelog::Arrival> arrival_;
  weavelog::GuestStatus status_;
  bool peopleDone_ = false;
  bool settledOnce_ = false;
  // What both had agreed on before something was sent along: only another agreement is one over that too.
  std::optional<weavelog::AgreementToken> agreedBefore_;
  std::optional<qint64> sentAt_ = 0;  // by clock_
  int entries_ = 0;  // of the list
  int toGo_ = 0;
  std::optional<std::uint64_t> leftToGo_;  // as it was last known
  std::uint64_t comeBefore_ = 0;           // books that came in earlier connections
  std::uint64_t expectedSeen_ = 0;
  weavelog::Moved came_, went_;
  QElapsedTimer clock_;
  TimeLeft outLeft_, inLeft_;
  QTimer second_;
  BesideScreen beside_{*this};  // ends before what it reports to
};
