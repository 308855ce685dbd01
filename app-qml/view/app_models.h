#pragma once

#include "app-qml/view/app_device.h"
#include "app-qml/view/desk_model.h"
#include "app-qml/view/money_place.h"
#include "app-qml/view/players_place.h"
#include "app-qml/view/provided.h"
#include "app-qml/view/settings.h"

// Every view model that needs a ledger, made in one place for the app and the tests. Only for a device that
// is open.
struct AppModels {
  AppModels(AppDevice& device, Settings& settings)
      : desk(device.work(), settings), players(device.work()), money(device.work()) {}

  // They must outlive the engine.
  void provideTo(QQmlEngine& engine) {
    provide(engine, desk);
    provide(engine, players);
    provide(engine, money);
  }

  DeskModel desk;
  PlayersPlace players;
  MoneyPlace money;
};
