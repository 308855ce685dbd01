#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "app-qml/view/player_card.h"
#include "app-qml/view/players_model.h"

class QQmlEngine;
class QJSEngine;

// Everybody whose book this device holds, and the one whose card lies open there.
class PlayersPlace : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  Q_PROPERTY(PlayersModel* list READ list CONSTANT)
  Q_PROPERTY(PlayerCard* card READ card CONSTANT)

 public:
  explicit PlayersPlace(Work& work, QObject* parent = nullptr)
      : QObject(parent), list_(work, false), card_(work) {}
  // What provide() gave the engine.
  static PlayersPlace* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] PlayersModel* list() { return &list_; }
  [[nodiscard]] PlayerCard* card() { return &card_; }

 private:
  PlayersModel list_;
  PlayerCard card_;
};
