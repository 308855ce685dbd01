#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QUrl>
#include <QVariant>

#include <optional>

#include "app-qml/view/beside_screen.h"
#include "app-qml/view/work.h"
#include "sync/carry/card_intake.h"

class QQmlEngine;
class QJSEngine;

// A player card that comes in, by camera, picture, scanner or as text: who signed it and when, what of it is new, newer or older than what is held
// here; and taking it in, by which it becomes the player's book.
class TakeCardModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  Q_PROPERTY(State state READ state NOTIFY changed)
  // What the program says itself of a card that it can't take; "" where the state says all.
  Q_PROPERTY(QString fault READ fault NOTIFY changed)
  // Somebody asked for the sheet and has not left it.
  Q_PROPERTY(bool wanted READ wanted NOTIFY changed)
  Q_PROPERTY(bool looking READ looking NOTIFY changed)
  // The player's book, "" before a card was read; whether it is here already.
  Q_PROPERTY(QString book READ book NOTIFY changed)
  Q_PROPERTY(bool held READ held NOTIFY changed)
  Q_PROPERTY(QString name READ name NOTIFY changed)
  Q_PROPERTY(QString about READ about NOTIFY changed)
  // Who signed it, as it calls itself; the words of its key; how it is known here; when that was; whether by a clock ahead of ours.
  Q_PROPERTY(QString device READ device NOTIFY changed)
  Q_PROPERTY(QString words READ words NOTIFY changed)
  Q_PROPERTY(Signer signer READ signer NOTIFY changed)
  Q_PROPERTY(QString made READ made NOTIFY changed)
  Q_PROPERTY(bool ahead READ ahead NOTIFY changed)
  Q_PROPERTY(bool takenBefore READ takenBefore NOTIFY changed)
  // What is on it: see cardLines().
  Q_PROPERTY(QVariantList lines READ lines NOTIFY changed)
  // How many fields are new here.
  Q_PROPERTY(int fresh READ fresh NOTIFY changed)
  // Fields of which card and device differ: [{field, of, ours, oursAt, card, cardAt}].
  Q_PROPERTY(QVariantList newer READ newer NOTIFY changed)
  Q_PROPERTY(QVariantList older READ older NOTIFY changed)
  Q_PROPERTY(QVariantList questions READ questions NOTIFY changed)
  // What the player agreed to here, 0: nothing was said (see ConsentChoice). A card carries no consent.
  Q_PROPERTY(int consent READ consent NOTIFY changed)
  Q_PROPERTY(QString consentText READ consentText NOTIFY changed)

 public:
  // NoCode: a picture without any; NoCard: a code of something else. Stored: it was taken in; Nothing new: all of it was here.
  enum State { Waiting, Read, Stored, NothingNew, NoFile, NoCode, NoCard, Damaged, Forged, FromNewer, Revoked, Forgotten, NoConsent, Refused };
  Q_ENUM(State)
  enum Signer { Self, Host, Member, Author, Stranger, ShutOut };
  Q_ENUM(Signer)

  // `work` must outlive it.
  explicit TakeCardModel(Work& work, QObject* parent = nullptr);
  // Works on the engine's device, which must be open.
  static TakeCardModel* create(QQmlEngine* engine, QJSEngine* script);

  // Opens the sheet: asked().
  Q_INVOKABLE void ask();
  // What a scanner, a camera or a paste gave; asked() too.
  Q_INVOKABLE void take(const QString& text);
  // A picture on the disk, looked at beside the screen.
  Q_INVOKABLE void takePicture(const QUrl& file);
  Q_INVOKABLE void leave();
  // Takes it in: what is new and, if so said, what is newer. False: failed() of the work has told why.
  Q_INVOKABLE bool store(bool acceptNewer);

  [[nodiscard]] State state() const { return state_; }
  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] bool wanted() const { return wanted_; }
  [[nodiscard]] bool looking() const { return beside_.busy(); }
  [[nodiscard]] QString book() const;
  [[nodiscard]] bool held() const { return findings_.held; }
  [[nodiscard]] QString name() const;
  [[nodiscard]] QString about() const;
  [[nodiscard]] QString device() const;
  [[nodiscard]] QString words() const;
  [[nodiscard]] Signer signer() const { return static_cast<Signer>(findings_.signer); }
  [[nodiscard]] QString made() const;
  [[nodiscard]] bool ahead() const { return findings_.ahead; }
  [[nodiscard]] bool takenBefore() const { return findings_.taken.has_value(); }
  [[nodiscard]] QVariantList lines() const;
  [[nodiscard]] int fresh() const { return static_cast<int>(findings_.count(weavelog::CardVerdict::fresh)); }
  [[nodiscard]] QVariantList newer() const { return differing(weavelog::CardVerdict::newer); }
  [[nodiscard]] QVariantList older() const { return differing(weavelog::CardVerdict::older); }
  [[nodiscard]] QVariantList questions() const { return differing(weavelog::CardVerdict::question); }
  [[nodiscard]] int consent() const;
  [[nodiscard]] QString consentText() const;

 signals:
  void asked();
  void changed();

 private:
  void read(const QString& text);
  void weigh();
  void end(State state, const QString& fault = {});
  [[nodiscard]] QVariantList differing(weavelog::CardVerdict verdict) const;

  Work& work_;
  State state_ = Waiting;
  bool wanted_ = false;
  QString fault_;
  std::optional<weavelog::PlayerCard> card_;
  weavelog::CardFindings findings_;
  BesideScreen beside_{*this};  // ends before what it reports to
};
