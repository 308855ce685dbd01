#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "app-qml/view/model_text.h"
#include "app-qml/view/person_links.h"
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
  // Of the player whose card is open.
  Q_PROPERTY(PersonLinks* links READ links CONSTANT)

 public:
  explicit PlayersPlace(Work& work, QObject* parent = nullptr)
      : QObject(parent), list_(work, false), card_(work), links_(work) {
    connect(&card_, &PlayerCard::bookChanged, this, [this] { links_.show(idFrom<weavelog::BookId>(card_.book())); });
  }
  // What provide() gave the engine.
  static PlayersPlace* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] PlayersModel* list() { return &list_; }
  [[nodiscard]] PlayerCard* card() { return &card_; }
  [[nodiscard]] PersonLinks* links() { return &links_; }

 private:
  PlayersModel list_;
  PlayerCard card_;
  PersonLinks links_;
};
