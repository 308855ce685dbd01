#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "app-qml/view/drop_off_draft.h"
#include "app-qml/view/known_alike.h"
#include "app-qml/view/player_card.h"
#include "app-qml/view/players_model.h"

class QQmlEngine;
class QJSEngine;
class Settings;

// The desk: who is found, whose card lies open, what is being handed over, and which of its pages one is on.
class DeskModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  Q_PROPERTY(PlayersModel* finder READ finder CONSTANT)
  Q_PROPERTY(PlayerCard* card READ card CONSTANT)
  Q_PROPERTY(DropOffDraft* draft READ draft CONSTANT)
  // Who a new player may be.
  Q_PROPERTY(KnownAlike* alike READ alike CONSTANT)
  Q_PROPERTY(Page page READ page NOTIFY pageChanged)

 public:
  enum class Page { Find, Player, DropOff, Confirm, Stored };
  Q_ENUM(Page)

  DeskModel(Work& work, Settings& settings, QObject* parent = nullptr);
  // What provide() gave the engine.
  static DeskModel* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] PlayersModel* finder() { return &finder_; }
  [[nodiscard]] PlayerCard* card() { return &card_; }
  [[nodiscard]] DropOffDraft* draft() { return &draft_; }
  [[nodiscard]] KnownAlike* alike() { return &alike_; }
  [[nodiscard]] Page page() const { return page_; }

  // A row of the finder was chosen: the card of a known player; somebody of the entry list begins at once.
  Q_INVOKABLE void choose(int row);
  Q_INVOKABLE void showPlayer(const QString& book);
  // Somebody who is on no list; what was typed is taken as the family name.
  Q_INVOKABLE void addPlayer();
  // The player who is being written down is one of those who are known here: goes on with that one. What was said of rackets meanwhile is
  // kept; where nothing was, the player's card is shown with what was last time.
  Q_INVOKABLE void takeKnown(const QString& book);
  Q_INVOKABLE void sameAsLastTime();
  Q_INVOKABLE void askEverything();
  Q_INVOKABLE void resume(const QString& draft);
  // To the read-back, if nothing is in its way.
  Q_INVOKABLE void readBack();
  // The player says yes to the text that was shown; stored is the next page.
  Q_INVOKABLE void confirm(const QString& shown);
  Q_INVOKABLE void storeUnconfirmed();
  // One page back; a drop-off in the making stays and is listed as unfinished.
  Q_INVOKABLE void back();
  // To the beginning, for the next player.
  Q_INVOKABLE void next();
  // Opens "player:NAME", "drop-off:NAME", "first:NAME", "confirm:NAME" or "consent:NAME" (the read-back of
  // everything, before which somebody who never answered is asked) for the first player so found.
  Q_INVOKABLE void open(const QString& what);

 signals:
  void pageChanged();
  // Something is in the way of the read-back: on this part of the questions (DropOffDraft::troublePart).
  void heldBack(int part);

 private:
  void turnTo(Page page);
  // Nothing is in the way of a read-back; otherwise heldBack() has said so.
  bool readyToRead();

  Work& work_;
  Settings& settings_;
  PlayersModel finder_;
  PlayerCard card_;
  DropOffDraft draft_;
  KnownAlike alike_;
  Page page_ = Page::Find;
};
