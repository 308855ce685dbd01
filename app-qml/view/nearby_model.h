#pragma once

#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>
#include <QTimer>

#include <atomic>
#include <memory>
#include <vector>

#include "app-qml/view/app_device.h"
#include "app-qml/view/keyed_rows.h"
#include "sync/net/nearby.h"

class QQmlEngine;
class QJSEngine;

// The event servers that answer on this network, for as long as somebody looks. What a row says is a hint:
// pairing or the pinned certificate proves whom one connects to.
//
// Roles: name, event (may be ""), address, standing (Standing), serverKey (as ExchangeModel's keys).
class NearbyModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  Q_PROPERTY(int count READ count NOTIFY countChanged)
  // Asks the network only while it is true; nobody is near while it is not.
  Q_PROPERTY(bool looking READ isLooking WRITE setLooking NOTIFY lookingChanged)
  // Looked for so long that nobody means nobody.
  Q_PROPERTY(bool settled READ isSettled NOTIFY settledChanged)

 public:
  // Connected: it is the one that this tablet works with, and the connection stands.
  enum Standing { NotPaired, Paired, Connected };
  Q_ENUM(Standing)

  // `device` must be open and outlive it. `morePorts` are asked beside the usual one and those of known
  // servers.
  explicit NearbyModel(AppDevice& device, std::vector<std::uint16_t> morePorts = {},
                       QObject* parent = nullptr);
  static NearbyModel* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] int count() const { return static_cast<int>(rows_.size()); }
  [[nodiscard]] bool isLooking() const { return search_ != nullptr; }
  void setLooking(bool looking);
  [[nodiscard]] bool isSettled() const { return settled_; }

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

 signals:
  void countChanged();
  void lookingChanged();
  void settledChanged();

 private:
  friend struct KeyedRows;

  struct Row {
    weavelog::NearbyServer server;
    Standing standing = NotPaired;

    [[nodiscard]] auto key() const { return std::pair(server.offer.key, server.offer.fingerprint); }
    bool operator==(const Row&) const = default;
  };

  void refresh();
  void setSettled(bool settled);

  AppDevice& device_;
  std::vector<std::uint16_t> morePorts_;
  std::vector<Row> rows_;
  QTimer patience_;
  bool settled_ = false;
  std::atomic<bool> moved_ = false;
  std::unique_ptr<weavelog::NearbySearch> search_;  // last: its thread ends before anything else goes
};
