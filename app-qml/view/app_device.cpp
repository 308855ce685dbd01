#include "app-qml/view/app_device.h"

#include <QSysInfo>

#include <algorithm>

#include "app-qml/view/provided.h"
#include "app-qml/view/settings.h"
#include "core/desk/photo.h"
#include "core/model/fields.h"
#include "core/model/queries.h"
#include "core/model/tables.h"
#include "core/people/arrival_account.h"
#include "core/people/consent.h"
#include "core/store/database.h"
#include "sync/net/exchange_guest.h"

namespace {

// Long enough to gather the entries of one batch, short enough that another tablet's change is seen at once.
constexpr int gatherMs = 30;

constexpr std::string_view eventKey = "app.event";
constexpr std::string_view hostKey = "app.host";
// The event server at which a person looks at another event than its own.
constexpr std::string_view awayKey = "app.away";
std::string metKey(const weavelog::PublicKey& key) { return "app.met " + weavelog::to_hex(key); }

}  // namespace

AppDevice::AppDevice(const std::filesystem::path& folder, Settings& settings,
                     const weavelog::WallClock& clock)
    : settings_(settings) {
  gather_.setSingleShot(true);
  gather_.setInterval(gatherMs);
  connect(&gather_, &QTimer::timeout, this, [this] {
    ledgerMoved_ = false;
    findEvent();
    emit changed();
    work_->refresh();
  });
  try {
    openFolder(folder, clock);
    if (!fault_) {
      // Every table that the screens begin with is touched once here, where damage can still be told on a
      // page of its own.
      (void)weavelog::all_events(ledger());
      (void)weavelog::find_players(ledger(), {}, 1);
      (void)weavelog::page_of_jobs(ledger(), {}, {}, 1);
      (void)ledger().open_questions();
      (void)ledger().quarantine();
    }
  } catch (const SQLite::Exception& error) {
    fault_ = weavelog::fault_of(error, folder / "ledger.db");
  } catch (const std::exception& error) {
    fault_ = weavelog::Fault{weavelog::FaultCode::damaged, error.what(), folder.string(),
                             "keep a copy of the folder and start with another one"};
  }
  if (fault_) return;
  work_ = std::make_unique<Work>(*workplace_);
  const auto speak = [this] { work_->setLanguage(settings_.language()); };
  const auto sign = [this] { work_->setWho(settings_.stringer()); };
  speak();
  sign();
  connect(&settings_, &Settings::languageChanged, this, speak);
  connect(&settings_, &Settings::stringerChanged, this, sign);
  findEvent();
  subscription_ = ledger().subscribe([this](std::int64_t) {
    if (ledgerMoved_.exchange(true)) return;
    QMetaObject::invokeMethod(
        this, [this] { gather_.start(); }, Qt::QueuedConnection);
  });
}

AppDevice::~AppDevice() {
  hangUp();
  if (subscription_ >= 0) ledger().unsubscribe(subscription_);
}

AppDevice* AppDevice::create(QQmlEngine* engine, QJSEngine*) {
  return provided<AppDevice>(engine);
}

void AppDevice::openFolder(const std::filesystem::path& folder, const weavelog::WallClock& clock) {
  weavelog::StationOptions options;
  options.folder = folder;
  options.device_name = settings_.deviceName().toStdString();
  options.registry = &weavelog::model_registry();
  options.projections = {std::make_shared<weavelog::ModelTables>()};
  options.clock = &clock;
  auto opened = weavelog::Station::open(std::move(options));
  if (!opened) {
    fault_ = opened.error();
    return;
  }
  station_ = std::move(*opened);
  workplace_ = std::make_unique<weavelog::Workplace>(
      *station_, [this](const weavelog::BookId& book, weavelog::BookKind kind) {
        return weavelog::may_cross(ledger(), book, kind, room());
      });
  // What is written while there is no network is for the event server that this device was at last.
  if (const auto kept = ledger().remembered(hostKey)) {
    weavelog::PublicKey key{};
    if (kept->size() == key.size()) {
      std::copy(kept->begin(), kept->end(), key.begin());
      workplace_->set_host(key);
    }
  }
}

QString AppDevice::faultWhat() const {
  return fault_ ? QString::fromStdString(fault_->what) : QString();
}
QString AppDevice::faultWhere() const {
  return fault_ ? QString::fromStdString(fault_->where) : QString();
}
QString AppDevice::faultToDo() const {
  return fault_ ? QString::fromStdString(fault_->what_to_do) : QString();
}

QString AppDevice::folder() const {
  return station_ ? QString::fromStdString(station_->folder().string()) : QString();
}

QString AppDevice::event() const {
  return work_ && work_->event() ? QString::fromStdString(work_->event().hex()) : QString();
}

void AppDevice::chooseEvent(const weavelog::BookId& event) {
  eventChosen_ = true;
  useEvent(event);
  // Not kept means only that the next start falls back on the newest event.
  (void)ledger().remember(eventKey, event.view());
  const auto theirs = hostsEvent();
  noteAway(theirs && theirs != event ? workplace_->host() : std::nullopt);
}

weavelog::BookId AppDevice::hostsEvent() const {
  const auto host = workplace_->host();
  return host ? weavelog::event_of_host(ledger(), *host) : weavelog::BookId{};
}

void AppDevice::followAgain() { noteAway(std::nullopt); }

void AppDevice::noteAway(const std::optional<weavelog::PublicKey>& host) {
  const auto kept = ledger().remembered(awayKey);
  const weavelog::Bytes wanted = host ? weavelog::Bytes(host->begin(), host->end()) : weavelog::Bytes{};
  // Not kept means only that the next start may go over to the server's event.
  if (kept.value_or(weavelog::Bytes{}) != wanted) (void)ledger().remember(awayKey, wanted);
}

void AppDevice::findEvent() {
  const auto events = weavelog::all_events(ledger());
  weavelog::BookId wanted = work_->event();
  if (!eventChosen_) {
    if (const auto kept = ledger().remembered(eventKey)) {
      const auto chosen = weavelog::BookId::from_bytes(*kept);
      for (const auto& row : events) eventChosen_ = eventChosen_ || (chosen && row.book == *chosen);
      if (eventChosen_) wanted = *chosen;
    }
    if (!eventChosen_ && !events.empty()) wanted = events.front().book;
  }
  useEvent(wanted);
}

void AppDevice::useEvent(const weavelog::BookId& event) {
  QString name;
  for (const auto& row : weavelog::all_events(ledger()))
    if (row.book == event) name = QString::fromStdString(row.name);
  const bool another = event != work_->event() || name != eventName_;
  eventName_ = name;
  work_->setEvent(event);  // the same one may have got another time zone
  followRoom();
  if (another) emit eventChanged();
}

// What a player said holds for the room that a book would go to. Whoever works for no server has the event on the screen.
void AppDevice::followRoom() {
  const auto theirs = hostsEvent();
  const std::lock_guard guard(roomMutex_);
  room_ = theirs ? theirs : work_->event();
}

weavelog::BookId AppDevice::room() const {
  const std::lock_guard guard(roomMutex_);
  return room_;
}

weavelog::GuestStatus AppDevice::connection() const {
  return guest_ ? guest_->status() : weavelog::GuestStatus{};
}

void AppDevice::connectWith(weavelog::ExchangeGuestOptions options) {
  hangUp();
  options.may_leave = workplace_->may_leave();
  options.may_stay = [this](const weavelog::BookId& book, weavelog::BookKind kind, const weavelog::BookId& room, bool settled) {
    return weavelog::may_stay(ledger(), book, kind, room, settled);
  };
  options.leaves_by = [this] { return weavelog::LeaveRule{room(), weavelog::crossing_mark(ledger(), room())}; };
  options.names_content = [this](const weavelog::BookId& book, const weavelog::Digest& content) {
    return weavelog::names_photo(ledger(), book, content);
  };
  guest_ = std::make_unique<weavelog::ExchangeGuest>(*station_, std::move(options),
                                                     [this](const weavelog::GuestStatus&) {
                                                       if (connectionMoved_.exchange(true)) return;
                                                       QMetaObject::invokeMethod(
                                                           this,
                                                           [this] {
                                                             connectionMoved_ = false;
                                                             followHost();
                                                             emit connectionChanged();
                                                           },
                                                           Qt::QueuedConnection);
                                                     });
  emit connectionChanged();
}

void AppDevice::beginArrival() {
  if (const auto begun = weavelog::begin_arrival(ledger(), work_->now()); !begun) work_->tell(begun.error());
  followAgain();
  emit arrivalBegun();
}

void AppDevice::hangUp() {
  if (!guest_) return;
  guest_.reset();
  emit connectionChanged();
}

bool AppDevice::isOnlyMet(const weavelog::PublicKey& key) const {
  const auto kept = ledger().remembered(metKey(key));
  return kept && !kept->empty();
}

void AppDevice::leaveHost() {
  hangUp();
  workplace_->set_host(std::nullopt);
  (void)ledger().remember(hostKey, {});
  followRoom();
}

// Once the host has proved who it is, what is written here is for it, and its event is today's.
void AppDevice::useHost(const weavelog::PublicKey& key) {
  if (workplace_->host() == key) return;
  workplace_->set_host(key);
  (void)ledger().remember(hostKey, key);
  followRoom();
}

void AppDevice::followHost() {
  const auto status = connection();
  const auto state = status.session.state;
  if (state < weavelog::SessionState::comparing || state == weavelog::SessionState::closed) return;
  const auto& event = status.session.event;
  const auto& peer = status.session.peer.key;
  if (isOnlyMet(peer) == static_cast<bool>(event)) {
    const weavelog::Bytes met(event ? 0 : 1, 1);
    (void)ledger().remember(metKey(peer), met);  // not kept means only that it counts as a room's at the next start
  }
  if (!event) return;
  useHost(peer);
  followRoom();  // whose event it is may be known only now
  const auto away = ledger().remembered(awayKey);
  if (away && std::equal(away->begin(), away->end(), peer.begin(), peer.end())) return;
  if (event != work_->event() && ledger().book(event)) chooseEvent(event);
}
