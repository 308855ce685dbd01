#include "app-qml/view/players_place.h"

#include "app-qml/view/provided.h"

PlayersPlace* PlayersPlace::create(QQmlEngine* engine, QJSEngine*) {
  return provided<PlayersPlace>(engine);
}
