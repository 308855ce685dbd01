#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QThreadPool>
#include <QVariant>

#include "app-qml/view/app_device.h"
#include "sync/net/exchange_guest.h"

class QQmlEngine;
class QJSEngine;

// The exchange with an event server as a person sees it: pairing, which server, how far it is, what still
// waits here, what went wrong and what to do. The connection itself is the device's.
class ExchangeModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  Q_PROPERTY(State state READ state NOTIFY changed)
  // The event server's name for itself, "" before it was ever met.
  Q_PROPERTY(QString host READ host NOTIFY changed)
  // Newest first: [{key, name, address, role, chosen}], `role` as Role.
  Q_PROPERTY(QVariantList hosts READ hosts NOTIFY changed)
  Q_PROPERTY(Role role READ role NOTIFY changed)
  // Actions of this tablet that the event server has not confirmed; `moreWaiting` if there are still more
  // than that.
  Q_PROPERTY(int waiting READ waiting NOTIFY waitingChanged)
  Q_PROPERTY(bool moreWaiting READ moreWaiting NOTIFY waitingChanged)
  // Players of this tablet whose books nobody ticked for the event server: they stay here alone.
  Q_PROPERTY(int stayHere READ stayHere NOTIFY waitingChanged)
  // Books that come in now, and how many of them are here; 0 of 0 while nothing comes.
  Q_PROPERTY(int booksReceived READ booksReceived NOTIFY changed)
  Q_PROPERTY(int booksExpected READ booksExpected NOTIFY changed)
  // The last agreement: three words that both sides show, when it was, over how many books; "" if there was
  // none.
  Q_PROPERTY(QString agreedWords READ agreedWords NOTIFY changed)
  Q_PROPERTY(QString agreedAt READ agreedAt NOTIFY changed)
  Q_PROPERTY(int agreedBooks READ agreedBooks NOTIFY changed)
  Q_PROPERTY(Trouble trouble READ trouble NOTIFY changed)
  // The fault in the program's own words, for whoever is asked about it.
  Q_PROPERTY(QString troubleDetail READ troubleDetail NOTIFY changed)
  // Minutes by which the event server's clock is ahead of this tablet's, where that is worth a word;
  // otherwise 0.
  Q_PROPERTY(int clockAhead READ clockAhead NOTIFY changed)
  // What could not be taken over: [{reason, count, at}].
  Q_PROPERTY(QVariantList quarantine READ quarantine NOTIFY changed)
  Q_PROPERTY(int quarantined READ quarantined NOTIFY changed)
  // Devices whose data was copied and whose copies wrote on as one: [{device, books}].
  Q_PROPERTY(QVariantList copies READ copies NOTIFY changed)
  // Devices that wrote with a clock far ahead of this one's, as a list of names; "" if there are none.
  Q_PROPERTY(QString fastClocks READ fastClocks NOTIFY changed)
  // Some books can't be made equal with this event server; everything else has crossed.
  Q_PROPERTY(bool atOdds READ atOdds NOTIFY changed)
  // An invitation for another tablet, which only a head gets: rows of a QR code, five words, until when.
  Q_PROPERTY(QVariantList inviteRows READ inviteRows NOTIFY inviteChanged)
  Q_PROPERTY(QString inviteWords READ inviteWords NOTIFY inviteChanged)
  Q_PROPERTY(QString inviteCode READ inviteCode NOTIFY inviteChanged)
  Q_PROPERTY(QString inviteUntil READ inviteUntil NOTIFY inviteChanged)
  Q_PROPERTY(QString inviteAddress READ inviteAddress NOTIFY inviteChanged)

 public:
  enum State { Alone, Pairing, Trying, Greeting, Bringing, Agreed };
  Q_ENUM(State)
  enum Role { NoRole, Head, Desk, Stringer, Reader };
  Q_ENUM(Role)
  enum Trouble {
    NoTrouble,
    Unreachable,
    WrongCertificate,
    UnknownDevice,
    WrongCode,
    CodeExpired,
    Refused,
    NewerProtocol,
    ClockOff,
    DiskFull,
    Other
  };
  Q_ENUM(Trouble)

  // `device` must be open and outlive it. Goes back to the event server of last time, in the background.
  explicit ExchangeModel(AppDevice& device, QObject* parent = nullptr);
  ~ExchangeModel() override;
  static ExchangeModel* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] State state() const;
  [[nodiscard]] QString host() const;
  [[nodiscard]] QVariantList hosts() const;
  [[nodiscard]] Role role() const;
  [[nodiscard]] int waiting() const { return waiting_; }
  [[nodiscard]] bool moreWaiting() const { return moreWaiting_; }
  [[nodiscard]] int stayHere() const { return stayHere_; }
  [[nodiscard]] int booksReceived() const;
  [[nodiscard]] int booksExpected() const;
  [[nodiscard]] QString agreedWords() const;
  [[nodiscard]] QString agreedAt() const;
  [[nodiscard]] int agreedBooks() const;
  [[nodiscard]] Trouble trouble() const;
  [[nodiscard]] QString troubleDetail() const;
  [[nodiscard]] int clockAhead() const;
  [[nodiscard]] QVariantList quarantine() const { return quarantine_; }
  [[nodiscard]] int quarantined() const { return quarantined_; }
  [[nodiscard]] QVariantList copies() const { return copies_; }
  [[nodiscard]] QString fastClocks() const { return fastClocks_; }
  [[nodiscard]] bool atOdds() const { return status_.session.at_odds; }
  [[nodiscard]] QVariantList inviteRows() const { return inviteRows_; }
  [[nodiscard]] QString inviteWords() const { return inviteWords_; }
  [[nodiscard]] QString inviteCode() const { return inviteCode_; }
  [[nodiscard]] QString inviteUntil() const { return inviteUntil_; }
  [[nodiscard]] QString inviteAddress() const { return inviteAddress_; }

  // A whole code as it is scanned, or five words together with the server's address. "" when the pairing has
  // begun, otherwise what is wrong with what was typed, and what to do.
  Q_INVOKABLE QString pair(const QString& codeOrWords, const QString& address);
  // Whether a text is a whole code, so that no address is needed.
  Q_INVOKABLE static bool isWholeCode(const QString& text);
  Q_INVOKABLE void chooseHost(const QString& key);
  // The same at an address where that server was heard, which may have changed. It is kept once the server has
  // proved itself there. Nothing changes if the exchange with it goes on already.
  Q_INVOKABLE void meet(const QString& key, const QString& address);
  Q_INVOKABLE void forgetHost(const QString& key);
  Q_INVOKABLE void tryNow();
  // Asks the event server for an invitation with a role (Role).
  Q_INVOKABLE void invite(int role);
  Q_INVOKABLE void endInvite();

 signals:
  void changed();
  void waitingChanged();
  void inviteChanged();

 private:
  void follow();
  void goBackTo(const weavelog::KnownHost& host);
  void countWaiting();
  void takeCount(int waiting, bool more, int stay);
  void readQuarantine();
  void readOddDevices();
  void showInvite();
  [[nodiscard]] std::optional<weavelog::KnownHost> knownHost() const;
  [[nodiscard]] std::optional<weavelog::Agreement> agreement() const;

  AppDevice& device_;
  bool pairing_ = false;
  bool keepsTrying_ = false;  // the connection is one to a known server, which is tried again
  weavelog::GuestStatus status_;
  int waiting_ = 0;
  bool moreWaiting_ = false;
  int stayHere_ = 0;
  bool counting_ = false, countAgain_ = false;
  QVariantList quarantine_;
  int quarantined_ = 0;
  QVariantList copies_;
  QString fastClocks_;
  bool inviting_ = false;
  std::optional<weavelog::PairingSecret> earlier_;  // of an invitation that was shown before
  QVariantList inviteRows_;
  QString inviteWords_, inviteCode_, inviteUntil_, inviteAddress_;
  QThreadPool counter_;  // last: waits for its work before anything else goes
};
