#include "app-qml/view/host_model.h"

#include <QQmlEngine>

#include "app-qml/view/carry_words.h"
#include "app-qml/view/code_rows.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "core/desk/photo.h"
#include "core/model/queries.h"
#include "core/people/consent.h"

namespace {

// Whoever comes or goes is seen so soon.
constexpr int lookMs = 1000;

}  // namespace

HostModel::HostModel(AppDevice& device, std::uint16_t port, QObject* parent)
    : QObject(parent), device_(device), port_(port), choice_(device.work(), this) {
  look_.setInterval(lookMs);
  connect(&look_, &QTimer::timeout, this, &HostModel::readGuests);
  connect(&choice_, &PlayerChoice::changed, this, &HostModel::changed);
  connect(&device_, &AppDevice::eventChanged, this, [this] {
    if (on()) return;
    share_ = device_.work().event() ? Event : Players;
    emit changed();
  });
  share_ = device_.work().event() ? Event : Players;
}

HostModel::~HostModel() = default;

HostModel* HostModel::create(QQmlEngine* engine, QJSEngine*) {
  return new HostModel(*provided<AppDevice>(engine));  // the engine takes it over
}

void HostModel::setShare(Share share) {
  if (on() || share == share_) return;
  share_ = share;
  if (share_ == Players) choice_.refresh();
  emit changed();
}

bool HostModel::ready() const {
  return !on() && (share_ == Nothing || (share_ == Event && device_.work().event()) || (share_ == Players && choice_.chosen() > 0));
}

QString HostModel::shared() const {
  return on() && share_ == Players ? namesInShort(device_.ledger(), choice_.books()) : QString();
}

QString HostModel::address() const { return host_ ? qtext(host_->address().text()) : QString(); }

void HostModel::start(const QString& reach) {
  if (!ready()) return;
  auto& ledger = device_.ledger();
  weavelog::TabletHostOptions options;
  options.port = port_;
  options.reach = reach.toStdString();
  if (share_ == Event) {
    options.event = device_.work().event();
    options.event_name = device_.eventName().toStdString();
  }
  // This tablet is the host: what players said is asked for the event on its screen, whatever server it works for otherwise.
  const weavelog::BookId room = device_.work().event();
  options.may_leave = [&ledger, room](const weavelog::BookId& book, weavelog::BookKind kind) { return weavelog::may_cross(ledger, book, kind, room); };
  options.may_stay = [this](const weavelog::BookId& book, weavelog::BookKind kind, const weavelog::BookId& at, bool settled) {
    return weavelog::may_stay(device_.ledger(), book, kind, at, settled);
  };
  options.leaves_by = [&ledger, room] { return weavelog::LeaveRule{room, weavelog::crossing_mark(ledger, room)}; };
  options.names_content = [&ledger](const weavelog::BookId& book, const weavelog::Digest& content) {
    return weavelog::names_photo(ledger, book, content);
  };
  options.shares = [&ledger, event = options.event, players = share_ == Players ? choice_.books() : std::vector<weavelog::BookId>{}] {
    std::vector<weavelog::BookId> out = players;
    if (!event) return out;
    out.push_back(event);
    const auto theirs = weavelog::players_at(ledger, event);
    out.insert(out.end(), theirs.begin(), theirs.end());
    return out;
  };
  options.on_status = [this](const weavelog::SessionStatus&) {
    QMetaObject::invokeMethod(this, &HostModel::readGuests, Qt::QueuedConnection);
  };
  auto started = weavelog::TabletHost::start(device_.station(), std::move(options));
  trouble_ = started ? QVariantMap() : carryTrouble(started.error(), false);
  if (!started) {
    const bool alone = started.error().code == weavelog::FaultCode::not_found;
    trouble_[QStringLiteral("title")] = alone ? tr("This tablet is in no network") : tr("Others can't reach this tablet");
    trouble_[QStringLiteral("text")] = alone ? tr("Join the Wi-Fi that the others are in, or open one on this tablet.")
                                             : tr("Try again; if it stays, show the line below to whoever looks after the tablets.");
    trouble_[QStringLiteral("detail")] = alone ? QString() : qtext(started.error().message());
  } else {
    host_ = std::move(*started);
    look_.start();
  }
  emit changed();
  readGuests();
}

void HostModel::stop() {
  if (!on()) return;
  look_.stop();
  host_.reset();
  endInvite();
  emit changed();
  readGuests();
}

void HostModel::invite(bool reads) {
  if (!on()) return;
  const auto invited = host_->invite(reads ? weavelog::Role::reader : weavelog::Role::stringer);
  if (!invited) {
    device_.work().tell(invited.error());
    return;
  }
  const std::string code = invited->code.text();
  inviteCode_ = qtext(code);
  inviteRows_ = codeRows(code);
  inviteWords_ = qtext(weavelog::spoken_code(invited->invitation.secret));
  inviteUntil_ = device_.work().timeText(invited->invitation.expires);
  emit inviteChanged();
}

void HostModel::endInvite() {
  inviteRows_.clear();
  inviteWords_.clear();
  inviteCode_.clear();
  emit inviteChanged();
}

void HostModel::readGuests() {
  QVariantList guests;
  if (on()) {
    for (const auto& one : host_->connected()) {
      if (one.state < weavelog::SessionState::comparing || one.state == weavelog::SessionState::closed) continue;
      const bool agreed = one.state == weavelog::SessionState::agreed;
      guests.append(QVariantMap{{QStringLiteral("name"), qtext(one.device)},
                                {QStringLiteral("detail"), agreed ? tr("both agree") : tr("being brought up to date")},
                                {QStringLiteral("agreed"), agreed}});
    }
  }
  if (guests == guests_) return;
  // Whoever was invited has come: the code is used up.
  if (guests.size() > guests_.size() && !inviteCode_.isEmpty()) endInvite();
  guests_ = guests;
  emit guestsChanged();
}

QStringList HostModel::known() const {
  QStringList out;
  for (const auto& one : device_.station().devices().devices())
    if (!one.revoked) out.append(qtext(one.name));
  return out;
}
