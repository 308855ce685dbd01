#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QTimer>
#include <QVariant>

#include <memory>
#include <mutex>

#include "app-qml/view/app_device.h"
#include "app-qml/view/player_choice.h"
#include "sync/net/tablet_host.h"

class QQmlEngine;
class QJSEngine;

// This tablet as host: others in the local network exchange with it, without an event server, for as long as it is on.
class HostModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // What they get. Chosen while it is off; without an event it is chosen players.
  Q_PROPERTY(Share share READ share WRITE setShare NOTIFY changed)
  Q_PROPERTY(PlayerChoice* choice READ choice CONSTANT)
  Q_PROPERTY(bool on READ on NOTIFY changed)
  // It can be switched on.
  Q_PROPERTY(bool ready READ ready NOTIFY changed)
  // While it is on: the names of the chosen players that they get; "" where it is not about players.
  Q_PROPERTY(QString shared READ shared NOTIFY changed)
  Q_PROPERTY(QString address READ address NOTIFY changed)
  // {title, text, detail}; empty if nothing is wrong.
  Q_PROPERTY(QVariantMap trouble READ trouble NOTIFY changed)
  // Who is here now: [{name, detail, agreed}]; who was here before and may come again without a code.
  Q_PROPERTY(QVariantList guests READ guests NOTIFY guestsChanged)
  Q_PROPERTY(QStringList known READ known NOTIFY guestsChanged)
  // An invitation: rows of a QR code, five words, the whole code, until when; "" while there is none.
  Q_PROPERTY(QVariantList inviteRows READ inviteRows NOTIFY inviteChanged)
  Q_PROPERTY(QString inviteWords READ inviteWords NOTIFY inviteChanged)
  Q_PROPERTY(QString inviteCode READ inviteCode NOTIFY inviteChanged)
  Q_PROPERTY(QString inviteUntil READ inviteUntil NOTIFY inviteChanged)

 public:
  // Event: today's event and its players, and they work at it with this tablet. Nothing: only what they bring comes here.
  enum Share { Event, Players, Nothing };
  Q_ENUM(Share)

  // `device` must be open and outlive it. `port`: where it listens first.
  explicit HostModel(AppDevice& device, std::uint16_t port = weavelog::kDefaultPort, QObject* parent = nullptr);
  ~HostModel() override;
  static HostModel* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] Share share() const { return share_; }
  void setShare(Share share);
  [[nodiscard]] PlayerChoice* choice() { return &choice_; }
  [[nodiscard]] bool on() const { return host_ != nullptr; }
  [[nodiscard]] bool ready() const;
  [[nodiscard]] QString shared() const;
  [[nodiscard]] QString address() const;
  [[nodiscard]] QVariantMap trouble() const { return trouble_; }
  [[nodiscard]] QVariantList guests() const { return guests_; }
  [[nodiscard]] QStringList known() const;
  [[nodiscard]] QVariantList inviteRows() const { return inviteRows_; }
  [[nodiscard]] QString inviteWords() const { return inviteWords_; }
  [[nodiscard]] QString inviteCode() const { return inviteCode_; }
  [[nodiscard]] QString inviteUntil() const { return inviteUntil_; }

  // `reach`: how others reach this machine; "": its address in the local network.
  Q_INVOKABLE void start(const QString& reach = {});
  Q_INVOKABLE void stop();
  // A code for one more tablet; `reads`: it only gets, and brings nothing.
  Q_INVOKABLE void invite(bool reads);
  Q_INVOKABLE void endInvite();

 signals:
  void changed();
  void guestsChanged();
  void inviteChanged();

 private:
  void readGuests();

  AppDevice& device_;
  std::uint16_t port_;
  PlayerChoice choice_;
  Share share_ = Players;
  QVariantMap trouble_;
  QVariantList guests_, inviteRows_;
  QString inviteWords_, inviteCode_, inviteUntil_;
  QTimer look_;
  std::unique_ptr<weavelog::TabletHost> host_;  // last: its threads end before anything else goes
};
