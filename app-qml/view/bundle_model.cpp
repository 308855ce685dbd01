#include "app-qml/view/bundle_model.h"

#include <QDateTime>
#include <QQmlEngine>
#include <algorithm>
#include <set>

#include "app-qml/view/carry_words.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "core/base/text.h"
#include "core/model/queries.h"
#include "sync/carry/receipt.h"
#include "sync/trust/proquint.h"

namespace {

constexpr int leftOutShown = 20;

std::filesystem::path pathOf(const QUrl& url) { return (url.isLocalFile() ? url.toLocalFile() : url.toString()).toStdString(); }

// What every file system takes.
QString plainName(const std::string& text) {
  QString out;
  for (const QChar c : qtext(weavelog::search_key(text)))
    if (c.unicode() < 128 && c.isLetterOrNumber()) out.append(c);
    else if (!out.endsWith(u'-') && !out.isEmpty()) out.append(u'-');
  while (out.endsWith(u'-')) out.chop(1);
  return out.left(40);
}

QString leftOutName(const weavelog::Ledger& ledger, const weavelog::BookId& book, weavelog::BookKind kind) {
  if (kind == weavelog::kKitBook) return BundleModel::tr("Your private kit");
  const auto row = weavelog::find_player(ledger, book);
  return row ? listedName(row->family_name, row->given_name, row->native_name) : QString();
}

}  // namespace

BundleModel::BundleModel(AppDevice& device, QObject* parent)
    : QObject(parent), device_(device), outgoing_(device.station()), choice_(device.work(), this) {
  bundle_ = outgoing_.waiting();
  if (bundle_) {
    kind_ = bundle_->backup ? Backup : Players;
    state_ = Waiting;
  }
  const auto again = [this] {
    if (begun_ && state_ == Choosing) choice_.refresh();
  };
  connect(&device_, &AppDevice::changed, this, again);
  connect(&device_, &AppDevice::eventChanged, this, again);
  connect(&choice_, &PlayerChoice::changed, this, &BundleModel::measure);
  readMade();
}

BundleModel::~BundleModel() { stop_ = true; }

BundleModel* BundleModel::create(QQmlEngine* engine, QJSEngine*) {
  return new BundleModel(*provided<AppDevice>(engine));  // the engine takes it over
}

weavelog::BookId BundleModel::room() const { return forRoom_ && kind_ != Backup ? device_.work().event() : weavelog::BookId{}; }

void BundleModel::begin(int kind) {
  if (state_ == Making || state_ == Bringing || state_ == Waiting) return;
  kind_ = static_cast<Kind>(kind);
  state_ = Choosing;
  begun_ = true;
  bundle_.reset();
  trouble_.clear();
  words_.clear();
  wordsAgain_.clear();
  note_.clear();
  wordsMade_ = false;
  forRoom_ = false;
  const auto known = receivers();
  receiver_ = kind_ == Backup || known.size() < 2 ? QString() : known.first().toMap().value(QStringLiteral("value")).toString();
  emit changed();
  choice_.setRoom({});
  choice_.clear();
}

QVariantList BundleModel::receivers() const {
  QVariantList out;
  for (const auto& one : weavelog::known_devices(device_.ledger(), device_.station().devices()))
    out.append(QVariantMap{{QStringLiteral("value"), qtext(weavelog::to_hex(one.key))},
                           {QStringLiteral("text"), QStringLiteral("%1 (%2)").arg(qtext(one.name), standingText(one.known))}});
  out.append(QVariantMap{{QStringLiteral("value"), QString()}, {QStringLiteral("text"), tr("Whoever knows a passphrase")}});
  return out;
}

void BundleModel::setForRoom(bool forRoom) {
  if (forRoom == forRoom_) return;
  forRoom_ = forRoom;
  choice_.setRoom(room());
}

void BundleModel::setReceiver(const QString& receiver) {
  receiver_ = receiver;
  emit changed();
}

void BundleModel::setWords(const QString& words) {
  if (words == words_) return;
  words_ = words;
  wordsMade_ = false;
  emit changed();
}

void BundleModel::setWordsAgain(const QString& words) {
  wordsAgain_ = words;
  emit changed();
}

void BundleModel::makeUpWords() {
  words_ = qtext(weavelog::make_passphrase());
  wordsAgain_.clear();
  wordsMade_ = true;
  emit changed();
}

int BundleModel::strength() const { return static_cast<int>(weavelog::passphrase_strength(words_.toStdString())); }
QString BundleModel::strengthWords() const {
  return words_.isEmpty() ? QString() : strengthText(weavelog::passphrase_strength(words_.toStdString()));
}

void BundleModel::setNote(const QString& note) {
  note_ = note;
  emit changed();
}

bool BundleModel::ready() const {
  if (state_ != Choosing || sizing_ || size_.fault || size_.players + size_.events == 0) return false;
  return !receiver_.isEmpty() || (strength() > 0 && (wordsMade_ || words_ == wordsAgain_));
}

weavelog::BundleWish BundleModel::wish() const {
  weavelog::BundleWish out;
  const auto& ledger = device_.ledger();
  if (kind_ == Backup) {
    for (const auto& book : ledger.books()) out.books.push_back(book.id);
  } else if (kind_ == Event) {
    if (const auto event = device_.work().event()) {
      out.books = weavelog::players_at(ledger, event);
      out.books.insert(out.books.begin(), event);
    }
  } else {
    out.books = choice_.books();
  }
  out.leave_out = true;
  out.note = note_.toStdString();
  out.room = room();
  out.backup = kind_ == Backup;
  out.pictures = &device_.station().contents();
  out.may_leave = [&ledger, to = out.room](const weavelog::BookId& book, weavelog::BookKind kind) {
    return weavelog::may_cross(ledger, book, kind, to);
  };
  if (receiver_.isEmpty()) {
    out.receiver = weavelog::ForPassphrase{words_.toStdString(), {}};
  } else {
    weavelog::PublicKey key{};
    (void)weavelog::from_hex(receiver_.toStdString(), key);
    out.receiver = key;
  }
  return out;
}

void BundleModel::measure() {
  if (!begun_ || state_ != Choosing) return;
  sizing_ = true;
  emit changed();
  measuring_.work(
      [this, wish = wish(), language = device_.work().language()] {
        const auto& ledger = device_.ledger();
        Size out;
        const auto size = weavelog::bundle_size(ledger, wish);
        if (!size) {
          out.fault = size.error();
          return out;
        }
        std::set<weavelog::BookId> behind(size->left_out.begin(), size->left_out.end());
        for (const auto& book : wish.books) {
          const auto held = ledger.book(book);
          if (!held) continue;
          if (!behind.contains(book)) {
            out.players += held->kind == weavelog::kPlayerBook;
            out.events += held->kind == weavelog::kEventBook;
            continue;
          }
          if (out.leftOut.size() == leftOutShown) {
            ++out.leftOutMore;
            continue;
          }
          out.leftOut.append(QVariantMap{{QStringLiteral("name"), leftOutName(ledger, book, held->kind)},
                                         {QStringLiteral("why"), crossingText(weavelog::crossing(ledger, book, held->kind, wish.room))}});
        }
        out.pictures = static_cast<int>(size->pictures);
        out.text = bytesText(language, size->bytes);
        return out;
      },
      [this](const Size& size) {
        size_ = size;
        sizing_ = measuring_.busy();
        if (state_ == Choosing) trouble_ = carryTrouble(size_.fault, false);
        emit changed();
      });
}

QString BundleModel::fileName() const {
  const QString day = QDateTime::fromMSecsSinceEpoch(device_.work().now(), Qt::UTC).toString(QStringLiteral("yyyy-MM-dd"));
  QString name = kind_ == Event ? plainName(device_.eventName().toStdString()) : kind_ == Backup ? QStringLiteral("backup") : QStringLiteral("players");
  const QString device = plainName(device_.ledger().self().device);
  if (!device.isEmpty()) name += u'-' + device;
  return name + u'-' + day;
}

void BundleModel::write(const QUrl& folder) {
  if (!ready()) return;
  QString receiver = tr("whoever knows the passphrase");
  for (const auto& one : weavelog::known_devices(device_.ledger(), device_.station().devices()))
    if (qtext(weavelog::to_hex(one.key)) == receiver_) receiver = qtext(one.name);
  bring(wish(), receiver, weavelog::free_name(pathOf(folder), fileName().toStdString()));
}

void BundleModel::goOn() {
  if (state_ == Waiting) bring({}, {}, {});
}

void BundleModel::goOnIn(const QUrl& folder) {
  if (state_ != Waiting || !bundle_) return;
  // Under the name that it was to have, without the number that it may have had at the first place.
  bring({}, {}, weavelog::free_name(pathOf(folder), bundle_->target.stem().string()));
}

void BundleModel::bring(std::optional<weavelog::BundleWish> wish, const QString& receiver, const std::filesystem::path& target) {
  state_ = wish ? Making : Bringing;
  stop_ = false;
  trouble_.clear();
  progress_ = 0;
  emit changed();
  emit progressChanged();
  bringing_.work(
      [this, wish, receiver, target] {
        Ended out;
        if (auto asked = wish) {
          // Making counts for the first third: the disk of the device is quicker than a stick.
          const auto size = weavelog::bundle_size(device_.ledger(), *asked);
          const double all = size ? static_cast<double>(std::max<std::uint64_t>(size->entries, 1)) : 1;
          asked->go_on = [this, all](std::uint64_t done) {
            tellProgress(std::min(1.0, static_cast<double>(done) / all) / 3);
            return !stop_;
          };
          auto made = outgoing_.make(*asked, receiver.toStdString(), target);
          if (!made) {
            out.fault = made.error();
            return out;
          }
        } else if (!target.empty()) {
          if (auto moved = outgoing_.bring_to(target); !moved) out.fault = moved.error();
        }
        out.bundle = outgoing_.waiting();
        if (out.fault) return out;
        QMetaObject::invokeMethod(
            this,
            [this, bundle = out.bundle] {
              if (state_ != Making) return;
              state_ = Bringing;
              bundle_ = bundle;
              emit changed();
            },
            Qt::QueuedConnection);
        const double all = out.bundle ? static_cast<double>(std::max<std::uint64_t>(out.bundle->bytes, 1)) : 1;
        const auto brought = outgoing_.bring([this, all](std::uint64_t bytes) {
          tellProgress((1 + 2 * static_cast<double>(bytes) / all) / 3);
          return !stop_;
        });
        if (!brought) out.fault = brought.error();
        return out;
      },
      [this](const Ended& how) { ended(how); });
}

void BundleModel::ended(const Ended& how) {
  const bool stopped = how.fault && stop_;
  trouble_ = stopped ? QVariantMap() : carryTrouble(how.fault, false);
  const auto waits = outgoing_.waiting();
  if (how.bundle) bundle_ = how.bundle;
  state_ = waits ? Waiting : how.fault ? Choosing : Arrived;
  if (state_ == Arrived) readMade();
  emit changed();
}

void BundleModel::tellProgress(double progress) {
  QMetaObject::invokeMethod(
      this,
      [this, progress] {
        if (progress < progress_ + 0.005 && progress < 1) return;
        progress_ = progress;
        emit progressChanged();
      },
      Qt::QueuedConnection);
}

void BundleModel::stop() { stop_ = true; }

void BundleModel::giveUp() {
  if (state_ != Waiting) return;
  if (const auto gone = outgoing_.give_up(); !gone) {
    trouble_ = carryTrouble(gone.error(), false);
    emit changed();
    return;
  }
  seen();
}

void BundleModel::seen() {
  if (state_ == Making || state_ == Bringing) return;
  bundle_.reset();
  trouble_.clear();
  state_ = Choosing;
  begun_ = false;
  words_.clear();
  wordsAgain_.clear();
  wordsMade_ = false;
  emit changed();
}

QString BundleModel::file() const { return bundle_ ? qtext(bundle_->target.string()) : QString(); }
QString BundleModel::fileFor() const { return bundle_ ? qtext(bundle_->receiver) : QString(); }
QString BundleModel::fileSize() const { return bundle_ ? bytesText(device_.work().language(), bundle_->bytes) : QString(); }

QString BundleModel::ownWords() const { return qtext(weavelog::fingerprint_words(device_.ledger().self().key)); }

void BundleModel::readMade() {
  made_.clear();
  for (const auto& one : weavelog::bundles_made(device_.ledger(), device_.station().devices())) {
    QVariantList taken;
    for (const auto& by : one.taken) {
      const QString when = device_.work().timeText(by.at), who = takerText(by.device, by.known);
      taken.append(by.complete ? tr("taken in by %1, %2").arg(who, when) : tr("taken in by %1 in part, %2").arg(who, when));
    }
    QStringList detail{tr("%n book(s)", "", static_cast<int>(one.books)), qtext(one.note)};
    detail.removeAll(QString());
    made_.append(QVariantMap{{QStringLiteral("text"), tr("%1, for %2").arg(device_.work().timeText(one.made), qtext(one.receiver))},
                             {QStringLiteral("detail"), detail.join(QStringLiteral(" · "))},
                             {QStringLiteral("taken"), taken}});
    if (made_.size() == 10) break;
  }
  emit madeChanged();
}
