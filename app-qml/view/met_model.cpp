#include "app-qml/view/met_model.h"

#include <QQmlEngine>

#include <tuple>

#include "app-qml/view/carry_words.h"
#include "app-qml/view/provided.h"
#include "core/model/fields.h"
#include "sync/net/exchange_guest.h"

MetModel::MetModel(AppDevice& device, QObject* parent) : QObject(parent), device_(device), choice_(device.work(), this) {
  connect(&device_, &AppDevice::connectionChanged, this, &MetModel::follow);
  connect(&device_, &AppDevice::changed, this, [this] {
    follow();
    if (!host_.isEmpty()) choice_.refresh();
  });
  follow();
}

MetModel* MetModel::create(QQmlEngine* engine, QJSEngine*) {
  return new MetModel(*provided<AppDevice>(engine));  // the engine takes it over
}

void MetModel::follow() {
  const auto before = std::tuple(host_, onlyGets_, given_);
  const auto status = device_.connection();
  const auto& session = status.session;
  const bool proved = status.connected && session.state >= weavelog::SessionState::comparing && session.state != weavelog::SessionState::closed;
  const bool met = proved && !session.event;
  const bool begins = met && host_.isEmpty();
  host_ = met ? QString::fromStdString(session.peer.device) : QString();
  onlyGets_ = met && session.role == weavelog::Role::reader;
  given_ = met ? namesOfGiven() : QString();
  if (begins) choice_.clear();
  if (before != std::tuple(host_, onlyGets_, given_)) emit changed();
}

QString MetModel::namesOfGiven() const {
  const auto& station = device_.station();
  const auto number = device_.station().peers().number_of(device_.connection().session.peer.key);
  if (!number) return {};
  std::vector<weavelog::BookId> books;
  for (const auto& book : device_.station().peers().scope(*number))
    if (const auto held = station.ledger().book(book); held && held->kind == weavelog::kPlayerBook) books.push_back(book);
  return namesInShort(station.ledger(), books);
}

bool MetModel::give() {
  if (host_.isEmpty() || choice_.chosen() == 0) return false;
  auto& peers = device_.station().peers();
  const auto number = peers.number_of(device_.connection().session.peer.key);
  const auto given = number ? peers.widen(*number, choice_.books()) : weavelog::Outcome<>(weavelog::fail(number.error()));
  if (!given) {
    device_.work().tell(given.error());
    return false;
  }
  if (device_.guest() != nullptr) device_.guest()->scope_changed();
  choice_.chooseNobody();
  follow();
  return true;
}
