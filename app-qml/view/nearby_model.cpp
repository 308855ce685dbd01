#include "app-qml/view/nearby_model.h"

#include <QQmlEngine>

#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "sync/net/exchange_guest.h"

namespace {

enum NearbyRole { NearNameRole = Qt::UserRole + 1, NearEventRole, NearAddressRole, NearStandingRole, NearKeyRole };

// The first query and its repetition, and the answers on a slow radio.
constexpr int patienceMs = 2500;

}  // namespace

NearbyModel::NearbyModel(AppDevice& device, std::vector<std::uint16_t> morePorts, QObject* parent)
    : QAbstractListModel(parent), device_(device), morePorts_(std::move(morePorts)) {
  patience_.setSingleShot(true);
  patience_.setInterval(patienceMs);
  connect(&patience_, &QTimer::timeout, this, [this] { setSettled(true); });
  connect(&device_, &AppDevice::connectionChanged, this, &NearbyModel::refresh);
}

NearbyModel* NearbyModel::create(QQmlEngine* engine, QJSEngine*) {
  return new NearbyModel(*provided<AppDevice>(engine));  // the engine takes it over
}

void NearbyModel::setLooking(bool looking) {
  if (looking == isLooking()) return;
  if (looking) {
    weavelog::NearbySearchOptions options;
    options.ports = morePorts_;
    for (const auto& host : device_.station().devices().hosts()) options.ports.push_back(host.address.port);
    options.on_change = [this] {
      if (moved_.exchange(true)) return;
      QMetaObject::invokeMethod(
          this,
          [this] {
            moved_ = false;
            refresh();
          },
          Qt::QueuedConnection);
    };
    search_ = std::make_unique<weavelog::NearbySearch>(std::move(options));
    patience_.start();
  } else {
    search_.reset();
    patience_.stop();
    setSettled(false);
    refresh();
  }
  emit lookingChanged();
}

void NearbyModel::setSettled(bool settled) {
  if (settled_ == settled) return;
  settled_ = settled;
  emit settledChanged();
}

void NearbyModel::refresh() {
  std::vector<Row> rows;
  if (search_) {
    const auto known = device_.station().devices().hosts();
    const auto chosen = device_.work().workplace().host();
    const bool connected = device_.connection().connected;
    for (auto& server : search_->servers()) {
      if (server.offer.key == device_.ledger().self().key) continue;  // this tablet itself, playing the host
      const auto host = weavelog::claimed_host(known, server.offer);
      const Standing standing = !host ? NotPaired : connected && chosen == host->key ? Connected : Paired;
      rows.push_back({std::move(server), standing});
    }
  }
  const int before = count();
  KeyedRows::update(*this, std::move(rows));
  if (count() != before) emit countChanged();
}

int NearbyModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : count();
}

QVariant NearbyModel::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
  const Row& row = rows_[static_cast<std::size_t>(index.row())];
  switch (role) {
    case Qt::DisplayRole:
    case NearNameRole:
      return qtext(row.server.offer.name);
    case NearEventRole:
      return qtext(row.server.offer.event);
    case NearAddressRole:
      return qtext(row.server.address.text());
    case NearStandingRole:
      return row.standing;
    case NearKeyRole:
      return qtext(weavelog::to_hex(row.server.offer.key));
    default:
      return {};
  }
}

QHash<int, QByteArray> NearbyModel::roleNames() const {
  return {{NearNameRole, "name"},
          {NearEventRole, "event"},
          {NearAddressRole, "address"},
          {NearStandingRole, "standing"},
          {NearKeyRole, "serverKey"}};
}
