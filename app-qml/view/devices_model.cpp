#include "app-qml/view/devices_model.h"

#include <QDate>
#include <QLocale>
#include <QQmlEngine>
#include <utility>

#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "app-qml/view/word_list.h"
#include "core/desk/keep_rule.h"
#include "sync/trust/rights.h"

namespace {

std::optional<weavelog::PublicKey> publicKeyFrom(const QString& hex) {
  weavelog::PublicKey key{};
  if (!weavelog::from_hex(hex.toStdString(), key)) return std::nullopt;
  return key;
}

bool isProved(const weavelog::GuestStatus& status) {
  return status.connected && status.session.state >= weavelog::SessionState::comparing && status.session.state != weavelog::SessionState::closed;
}

}  // namespace

DevicesModel::DevicesModel(AppDevice& device, QObject* parent) : QObject(parent), device_(device) {
  connect(&device_, &AppDevice::connectionChanged, this, &DevicesModel::follow);
  connect(&device_, &AppDevice::changed, this, &DevicesModel::readRule);
  connect(&device_.work(), &Work::changed, this, &DevicesModel::readRule);
  readRule();
}

DevicesModel* DevicesModel::create(QQmlEngine* engine, QJSEngine*) {
  return new DevicesModel(*provided<AppDevice>(engine));  // the engine takes it over
}

bool DevicesModel::manages() const {
  const auto status = device_.connection();
  return isProved(status) && status.session.role == weavelog::Role::head;
}

void DevicesModel::ask() {
  if (!manages()) return;
  asking_ = devices_.isEmpty();
  device_.guest()->wish_devices();
  emit changed();
}

template <class Wish>
void DevicesModel::wish(const QString& key, Wish send) {
  const auto device = publicKeyFrom(key);
  if (!device || !manages()) return;
  trouble_.clear();
  wished_ = true;
  send(*device_.guest(), *device);
  emit changed();
}

void DevicesModel::rename(const QString& key, const QString& name) {
  if (name.trimmed().isEmpty()) return;
  wish(key, [&](weavelog::ExchangeGuest& guest, const weavelog::PublicKey& device) { guest.wish_change(device, name.trimmed().toStdString(), {}); });
}

void DevicesModel::setRole(const QString& key, int role) {
  const auto wanted = weavelog::role_from(static_cast<std::uint64_t>(std::max(role, 0)));
  if (!wanted) return;
  wish(key, [&](weavelog::ExchangeGuest& guest, const weavelog::PublicKey& device) { guest.wish_change(device, {}, *wanted); });
}

void DevicesModel::revoke(const QString& key) {
  wish(key, [](weavelog::ExchangeGuest& guest, const weavelog::PublicKey& device) { guest.wish_revocation(device); });
}

void DevicesModel::follow() {
  const auto status = device_.connection();
  if (status.session.devices) {
    asking_ = false;
    QVariantList listed;
    for (const auto& device : *status.session.devices)
      listed.append(QVariantMap{{"key", qtext(weavelog::to_hex(device.key))},
                                {"name", qtext(device.name)},
                                {"role", static_cast<int>(device.role)},
                                {"since", dayText(device_.work().language(), device.since, device_.work().zone())},
                                {"revoked", dayText(device_.work().language(), device.revoked, device_.work().zone())},
                                {"late", static_cast<int>(device.late_entries)},
                                {"self", device.key == device_.ledger().self().key}});
    if (listed != devices_) wished_ = false;  // answered
    devices_ = listed;
  }
  // Other faults of the connection are told where it is shown.
  if (const auto& fault = status.session.fault; fault && std::exchange(wished_, false))
    trouble_ = joined({qtext(fault->what), qtext(fault->what_to_do)}, QStringLiteral("; "));
  if (!manages()) asking_ = false;
  readRule();
  emit changed();
}

void DevicesModel::readRule() {
  const auto event = device_.work().event();
  keepDays_ = -1;
  keptUntil_.clear();
  setsRule_ = false;
  // An event that was made here has no server that could keep to a rule.
  const auto theirs = device_.hostsEvent();
  if (const auto record = weavelog::load_event(device_.ledger(), event); record && record->event.id() && (!theirs || theirs == event)) {
    const auto& info = record->event.now;
    if (weavelog::books_go_at(info)) {
      keepDays_ = static_cast<int>(info.keep_days.value_or(0));
      // With its year: it may be far.
      const QDate last = QDate::fromString(qtext(info.last_day), Qt::ISODate).addDays(keepDays_);
      keptUntil_ = QLocale(qtext(device_.work().language().tag())).toString(last, QLocale::LongFormat);
    }
    const auto key = device_.work().workplace().host();
    const auto host = key ? device_.station().devices().host(*key) : std::nullopt;
    setsRule_ = !info.last_day.empty() &&
                (!host || weavelog::check_right(host->role, weavelog::event_of_host(device_.ledger(), *key), event, weavelog::kEventBook, weavelog::kActEdit));
  }
  emit ruleChanged();
}

bool DevicesModel::setKeepDays(int days, const QString& say) {
  const auto record = weavelog::load_event(device_.ledger(), device_.work().event());
  if (!record) return device_.work().commit(weavelog::fail(record.error()), {});
  return device_.work().commit(weavelog::set_keep_days(*record, days < 0 ? std::nullopt : std::optional<std::int64_t>(days)), say);
}
