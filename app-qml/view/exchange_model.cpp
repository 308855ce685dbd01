#include "app-qml/view/exchange_model.h"

#include <QQmlEngine>
#include <QTimer>
#include <map>

#include "app-qml/view/code_rows.h"
#include "app-qml/view/provided.h"
#include "core/model/fields.h"
#include "sync/trust/pairing.h"
#include "sync/trust/proquint.h"

namespace {

// Enough to say "many", little enough to be counted at once.
constexpr std::size_t countedBytes = 256 * 1024;
// What the clocks of two tablets may differ by without a word: an order of times is kept whatever they say.
constexpr std::int64_t quietClock = 5 * 60 * 1000;
constexpr weavelog::UnixMs inviteLife = 15 * 60 * 1000;

QString keyText(const weavelog::PublicKey& key) {
  return QString::fromStdString(weavelog::to_hex(key));
}

QString said(const weavelog::Fault& fault) {
  QStringList parts{QString::fromStdString(fault.what), QString::fromStdString(fault.what_to_do)};
  parts.removeAll(QString());
  return parts.join(QStringLiteral("; "));
}

ExchangeModel::Role roleShown(weavelog::Role role) {
  return static_cast<ExchangeModel::Role>(role);
}

}  // namespace

ExchangeModel::ExchangeModel(AppDevice& device, QObject* parent) : QObject(parent), device_(device) {
  counter_.setMaxThreadCount(1);
  connect(&device_, &AppDevice::connectionChanged, this, &ExchangeModel::follow);
  connect(&device_, &AppDevice::changed, this, [this] {
    readQuarantine();
    readOddDevices();
    countWaiting();
    emit changed();
  });
  connect(&device_.work(), &Work::changed, this, &ExchangeModel::countWaiting);
  readQuarantine();
  readOddDevices();
  countWaiting();
  // After the first frame: a start without network must not be felt.
  QTimer::singleShot(0, this, [this] {
    if (const auto host = knownHost(); host && device_.guest() == nullptr) goBackTo(*host);
  });
}

ExchangeModel::~ExchangeModel() {
  counter_.waitForDone();
}

ExchangeModel* ExchangeModel::create(QQmlEngine* engine, QJSEngine*) {
  return new ExchangeModel(*provided<AppDevice>(engine));  // the engine takes it over
}

std::optional<weavelog::KnownHost> ExchangeModel::knownHost() const {
  const auto key = device_.work().workplace().host();
  return key ? device_.station().devices().host(*key) : std::nullopt;
}

std::optional<weavelog::Agreement> ExchangeModel::agreement() const {
  if (status_.session.agreed) return status_.session.agreed;
  const auto key = device_.work().workplace().host();
  if (!key) return std::nullopt;
  const auto number = device_.station().peers().number_of(*key);
  return number ? device_.station().peers().agreement(*number) : std::nullopt;
}

ExchangeModel::State ExchangeModel::state() const {
  if (device_.guest() == nullptr) return Alone;
  if (!status_.connected) return pairing_ ? (status_.fault ? Alone : Pairing) : Trying;
  switch (status_.session.state) {
    case weavelog::SessionState::greeting:
    case weavelog::SessionState::proving:
      return pairing_ ? Pairing : Greeting;
    case weavelog::SessionState::comparing:
    case weavelog::SessionState::exchanging:
      return Bringing;
    case weavelog::SessionState::agreed:
      return Agreed;
    case weavelog::SessionState::closed:
      break;
  }
  return Trying;
}

QString ExchangeModel::host() const {
  if (!status_.session.peer.device.empty()) return QString::fromStdString(status_.session.peer.device);
  const auto host = knownHost();
  return host ? QString::fromStdString(host->name) : QString();
}

QVariantList ExchangeModel::hosts() const {
  const auto chosen = device_.work().workplace().host();
  QVariantList out;
  for (const auto& host : device_.station().devices().hosts()) {
    out.append(QVariantMap{{QStringLiteral("key"), keyText(host.key)},
                           {QStringLiteral("name"), QString::fromStdString(host.name)},
                           {QStringLiteral("address"), QString::fromStdString(host.address.text())},
                           {QStringLiteral("role"), roleShown(host.role)},
                           {QStringLiteral("chosen"), chosen == host.key}});
  }
  return out;
}

ExchangeModel::Role ExchangeModel::role() const {
  if (status_.connected && status_.session.state >= weavelog::SessionState::comparing &&
      status_.session.state != weavelog::SessionState::closed)
    return roleShown(status_.session.role);
  const auto host = knownHost();
  return host ? roleShown(host->role) : NoRole;
}

int ExchangeModel::booksReceived() const {
  return status_.connected ? static_cast<int>(status_.session.books_received) : 0;
}

int ExchangeModel::booksExpected() const {
  return status_.connected ? static_cast<int>(status_.session.books_expected) : 0;
}

QString ExchangeModel::agreedWords() const {
  const auto agreed = agreement();
  return agreed ? QString::fromStdString(weavelog::agreement_words(agreed->digest)) : QString();
}

QString ExchangeModel::agreedAt() const {
  const auto agreed = agreement();
  return agreed ? device_.work().timeText(agreed->at) : QString();
}

int ExchangeModel::agreedBooks() const {
  const auto agreed = agreement();
  return agreed ? static_cast<int>(agreed->books) : 0;
}

ExchangeModel::Trouble ExchangeModel::trouble() const {
  const auto& fault = status_.fault ? status_.fault : status_.session.fault;
  if (!fault || (status_.connected && status_.session.state != weavelog::SessionState::closed))
    return NoTrouble;
  switch (fault->code) {
    case weavelog::FaultCode::untrusted:
      // Before the server has said a word, it is its certificate that was not believed.
      if (status_.session.peer.key == weavelog::PublicKey{}) return WrongCertificate;
      return pairing_ ? WrongCode : UnknownDevice;
    case weavelog::FaultCode::expired:
      return CodeExpired;
    case weavelog::FaultCode::refused:
      return Refused;
    case weavelog::FaultCode::newer:
      return NewerProtocol;
    case weavelog::FaultCode::clock:
      return ClockOff;
    case weavelog::FaultCode::no_space:
      return DiskFull;
    case weavelog::FaultCode::io:
    case weavelog::FaultCode::not_found:
      return Unreachable;
    default:
      return Other;
  }
}

QString ExchangeModel::troubleDetail() const {
  const auto& fault = status_.fault ? status_.fault : status_.session.fault;
  return fault && trouble() != NoTrouble ? said(*fault) : QString();
}

int ExchangeModel::clockAhead() const {
  const std::int64_t ahead = status_.session.clock_ahead_ms;
  return std::abs(ahead) < quietClock ? 0 : static_cast<int>(ahead / 60'000);
}

bool ExchangeModel::isWholeCode(const QString& text) {
  return text.trimmed().startsWith(QStringLiteral("weavelog:"), Qt::CaseInsensitive);
}

QString ExchangeModel::pair(const QString& codeOrWords, const QString& address) {
  weavelog::ExchangeGuestOptions options;
  if (isWholeCode(codeOrWords)) {
    const auto code = weavelog::PairingCode::parse(codeOrWords.trimmed().toStdString());
    if (!code) return tr("That is no whole code. Scan it once more, or type the five words.");
    options = weavelog::ExchangeGuest::to_pair(*code);
  } else {
    const auto secret = weavelog::parse_spoken_code(codeOrWords.trimmed().toStdString());
    if (!secret) {
      // The fault names the word by its number.
      const QString where = QString::fromStdString(secret.error().where);
      const bool oneWord = where.startsWith(QStringLiteral("word "));
      return oneWord ? tr("Word %1 can’t be one of a code. Each has five letters; compare it letter by letter.").arg(where.mid(5))
                     : tr("A code has five words of five letters each. Compare them with the other screen.");
    }
    const auto at = weavelog::Address::parse(address.trimmed().toStdString());
    if (!at) return tr("That is no address. One looks like desk.local or 192.168.1.20:26110.");
    options.address = *at;
    options.secret = *secret;
  }
  // What comes from now on is counted: so the connection to the event server before has to be over.
  device_.hangUp();
  device_.beginArrival();
  pairing_ = true;
  keepsTrying_ = false;
  status_ = {};
  endInvite();
  device_.connectWith(std::move(options));
  return {};
}

void ExchangeModel::chooseHost(const QString& key) {
  for (const auto& host : device_.station().devices().hosts()) {
    if (keyText(host.key) != key) continue;
    if (!device_.isOnlyMet(host.key)) device_.useHost(host.key);
    device_.followAgain();
    goBackTo(host);
    return;
  }
}

void ExchangeModel::meet(const QString& key, const QString& address) {
  const auto at = weavelog::Address::parse(address.toStdString());
  for (auto host : device_.station().devices().hosts()) {
    if (!at || keyText(host.key) != key) continue;
    if (status_.connected && status_.session.peer.key == host.key) return;
    if (!device_.isOnlyMet(host.key)) device_.useHost(host.key);
    host.address = *at;
    device_.followAgain();
    goBackTo(host);
    return;
  }
}

void ExchangeModel::forgetHost(const QString& key) {
  for (const auto& host : device_.station().devices().hosts()) {
    if (keyText(host.key) != key) continue;
    if (device_.work().workplace().host() == host.key) device_.leaveHost();
    (void)device_.station().devices().forget_host(host.key);
  }
  status_ = device_.connection();
  emit changed();
  countWaiting();
}

void ExchangeModel::goBackTo(const weavelog::KnownHost& host) {
  pairing_ = false;
  keepsTrying_ = true;
  status_ = {};
  device_.connectWith(weavelog::ExchangeGuest::to_return(host));
}

void ExchangeModel::tryNow() {
  if (device_.guest() != nullptr && !pairing_) {
    device_.guest()->retry_now();
  } else if (const auto host = knownHost()) {
    goBackTo(*host);
  }
}

void ExchangeModel::follow() {
  status_ = device_.connection();
  const auto state = status_.session.state;
  const bool proved = state >= weavelog::SessionState::comparing && state != weavelog::SessionState::closed;
  if (pairing_ && proved && status_.connected) pairing_ = false;
  // A pairing's connection ends once; from then on it is a known server like any other.
  if (!pairing_ && device_.guest() != nullptr && !status_.connected && !keepsTrying_) {
    if (const auto host = knownHost()) {
      QTimer::singleShot(0, this, [this, host = *host] { goBackTo(host); });
    }
  }
  showInvite();
  countWaiting();
  emit changed();
}

void ExchangeModel::countWaiting() {
  const auto key = device_.work().workplace().host();
  const bool allSent = status_.connected && status_.session.all_sent && status_.session.state == weavelog::SessionState::agreed;
  // Without an event server nothing waits, and nobody is missed there.
  if (!key || allSent) takeCount(0, false, key ? stayHere_ : 0);
  if (!key) return;
  if (counting_) {
    countAgain_ = true;
    return;
  }
  counting_ = true;
  counter_.start([this, key = *key, allSent] {
    auto& station = device_.station();
    int count = 0, stay = 0;
    bool more = false;
    if (const auto number = station.peers().number_of(key)) {
      const auto agreed = station.peers().agreement(*number);
      const auto scope = station.peers().scope(*number);
      for (const auto& book : station.ledger().books(weavelog::kPlayerBook)) stay += scope.contains(book.id) ? 0 : 1;
      if (!allSent) {
        const auto since = station.ledger().since(
            agreed ? agreed->position : 0, [&](const weavelog::BookId& book) { return scope.contains(book); },
            *number, countedBytes);
        count = static_cast<int>(since.batch.entries.size());
        more = since.next < station.ledger().position();
      }
    }
    QMetaObject::invokeMethod(
        this,
        [this, count, more, stay] {
          counting_ = false;
          takeCount(count, more, stay);
          if (std::exchange(countAgain_, false)) countWaiting();
        },
        Qt::QueuedConnection);
  });
}

void ExchangeModel::takeCount(int waiting, bool more, int stay) {
  if (waiting == waiting_ && more == moreWaiting_ && stay == stayHere_) return;
  waiting_ = waiting;
  moreWaiting_ = more;
  stayHere_ = stay;
  emit waitingChanged();
}

void ExchangeModel::readQuarantine() {
  // One line a reason: a broken chain puts many entries aside for the same one.
  std::map<std::string, std::pair<int, weavelog::UnixMs>> reasons;
  quarantined_ = 0;
  for (const auto& kept : device_.ledger().quarantine()) {
    auto& [count, at] = reasons[kept.reason];
    ++count;
    at = std::max(at, kept.at);
    ++quarantined_;
  }
  quarantine_.clear();
  for (const auto& [reason, held] : reasons) {
    quarantine_.append(QVariantMap{{QStringLiteral("reason"), QString::fromStdString(reason)},
                                   {QStringLiteral("count"), held.first},
                                   {QStringLiteral("at"), device_.work().timeText(held.second)}});
  }
}

void ExchangeModel::readOddDevices() {
  std::map<std::string, int> books;
  for (const auto& fork : device_.ledger().forks()) ++books[fork.author.device];
  copies_.clear();
  for (const auto& [device, count] : books)
    copies_.append(QVariantMap{{QStringLiteral("device"), QString::fromStdString(device)},
                               {QStringLiteral("books"), count}});
  QStringList fast;
  for (const auto& known : device_.ledger().authors())
    if (known.wrong_clock) fast.append(QString::fromStdString(known.card.device));
  fast.removeDuplicates();
  fastClocks_ = fast.join(QStringLiteral(", "));
}

void ExchangeModel::invite(int role) {
  if (device_.guest() == nullptr) return;
  endInvite();
  inviting_ = true;
  earlier_ = status_.session.invitation ? std::optional(status_.session.invitation->secret) : std::nullopt;
  device_.guest()->wish_invitation(static_cast<weavelog::Role>(role), inviteLife);
}

void ExchangeModel::endInvite() {
  inviting_ = false;
  inviteRows_.clear();
  inviteWords_.clear();
  inviteCode_.clear();
  emit inviteChanged();
}

void ExchangeModel::showInvite() {
  if (!inviting_ || !status_.session.invitation) return;
  const auto host = knownHost();
  const auto& invitation = *status_.session.invitation;
  if (!host || earlier_ == invitation.secret) return;
  const std::string code = weavelog::PairingCode{host->address, host->fingerprint, invitation.secret}.text();
  if (inviteCode_ == QString::fromStdString(code)) return;
  inviteCode_ = QString::fromStdString(code);
  inviteRows_ = codeRows(code);
  inviteWords_ = QString::fromStdString(weavelog::spoken_code(invitation.secret));
  inviteUntil_ = device_.work().timeText(invitation.expires);
  inviteAddress_ = QString::fromStdString(host->address.text());
  emit inviteChanged();
}
