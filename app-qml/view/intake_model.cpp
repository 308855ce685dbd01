#include "app-qml/view/intake_model.h"

#include <QQmlEngine>
#include <map>

#include "app-qml/view/carry_words.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "core/log/entry.h"
#include "core/model/queries.h"
#include "sync/carry/carried_file.h"
#include "sync/trust/proquint.h"
#include "sync/trust/rights.h"

namespace {

constexpr int namesShown = 12;

// What players are called whose books are not held here yet, as their first entries say.
class NewNames {
 public:
  explicit NewNames(const weavelog::Ledger& ledger) : ledger_(ledger) {}

  void read(const weavelog::Batch& batch) {
    for (const auto& entry : batch.entries) {
      if (entry.book >= batch.books.size() || entry.author >= batch.authors.size()) continue;
      const auto& book = batch.books[entry.book];
      if (book.kind != weavelog::kPlayerBook || ledger_.book(book.id) || ledger_.is_forgotten(book.id)) continue;
      auto& person = people_[book.id];
      if (!person.family_name.empty() || !person.native_name.empty()) continue;
      const auto read = weavelog::decode_entry(entry.body, batch.authors[entry.author].id());
      if (!read) continue;
      for (const auto& write : read->writes) {
        if (write.kind != weavelog::kPerson) continue;
        using weavelog::Person;
        if (write.tag == weavelog::tag_of<Person>(&Person::family_name)) weavelog::from_value(write.value, person.family_name);
        if (write.tag == weavelog::tag_of<Person>(&Person::given_name)) weavelog::from_value(write.value, person.given_name);
        if (write.tag == weavelog::tag_of<Person>(&Person::native_name)) weavelog::from_value(write.value, person.native_name);
      }
    }
  }
  [[nodiscard]] QStringList names() const {
    QStringList out;
    for (const auto& [book, person] : people_) out.append(listedName(person.family_name, person.given_name, person.native_name));
    out.sort(Qt::CaseInsensitive);
    return out;
  }

 private:
  const weavelog::Ledger& ledger_;
  std::map<weavelog::BookId, weavelog::Person> people_;
};

int number(std::uint64_t count) { return static_cast<int>(std::min<std::uint64_t>(count, 1'000'000'000)); }

std::uint64_t counted(const weavelog::BundleSight& sight, weavelog::BookKind kind) {
  const auto found = sight.kinds.find(kind);
  return found == sight.kinds.end() ? 0 : found->second;
}

QString nameOf(const weavelog::Ledger& ledger, const weavelog::BookId& book) {
  const auto row = weavelog::find_player(ledger, book);
  return row ? listedName(row->family_name, row->given_name, row->native_name) : QString();
}

}  // namespace

IntakeModel::IntakeModel(AppDevice& device, QObject* parent) : QObject(parent), device_(device) {}
IntakeModel::~IntakeModel() { stop_ = true; }

IntakeModel* IntakeModel::create(QQmlEngine* engine, QJSEngine*) {
  return new IntakeModel(*provided<AppDevice>(engine));  // the engine takes it over
}

void IntakeModel::setState(State state) {
  state_ = state;
  emit changed();
}

QString IntakeModel::fileName() const { return qtext(file_.filename().string()); }

void IntakeModel::forget() {
  words_.reset();
  sight_.reset();
  receipt_.clear();
  receiptFile_.clear();
  holds_.clear();
  newNames_.clear();
  account_.clear();
  trouble_.clear();
  trusted_ = wrongWords_ = complete_ = false;
  newNamesMore_ = questions_ = 0;
}

void IntakeModel::open(const QUrl& file) {
  if (state_ == Looking || state_ == Taking) return;
  forget();
  file_ = (file.isLocalFile() ? file.toLocalFile() : file.toString()).toStdString();
  look();
}

void IntakeModel::unlock(const QString& words) {
  if (state_ != Locked) return;
  words_ = words.toStdString();
  look();
}

void IntakeModel::leave() {
  if (state_ == Looking || state_ == Taking) return;
  forget();
  file_.clear();
  setState(Empty);
}

void IntakeModel::stop() { stop_ = true; }

weavelog::TakeOptions IntakeModel::options() {
  auto& station = device_.station();
  weavelog::TakeOptions out;
  out.ledger = &station.ledger();
  out.devices = &station.devices();
  out.peers = &station.peers();
  out.pictures = &station.contents();
  out.room = device_.work().event();
  out.from_stranger = trusted_;
  out.may_take = [&station](const weavelog::BookId& book, weavelog::BookKind kind, const weavelog::BookId& room) {
    return weavelog::may_cross(station.ledger(), book, kind, room);
  };
  out.rights = weavelog::rights_in(out.room);
  return out;
}

void IntakeModel::tellProgress(std::uint64_t entries, std::uint64_t all) {
  const double progress = all == 0 ? 1 : std::min(1.0, static_cast<double>(entries) / static_cast<double>(all));
  QMetaObject::invokeMethod(
      this,
      [this, progress] {
        if (progress == progress_) return;
        progress_ = progress;
        emit progressChanged();
      },
      Qt::QueuedConnection);
}

void IntakeModel::look() {
  stop_ = false;
  progress_ = 0;
  wrongWords_ = false;
  trouble_.clear();
  setState(Looking);
  emit progressChanged();
  beside_.work(
      [this, file = file_, words = words_, options = options()]() -> Sighted {
        Sighted out;
        const auto& key = device_.ledger().key();
        // A receipt is small; what is large is no receipt.
        if (const auto small = weavelog::read_small_file(file, weavelog::kMaxReceiptBytes); small && weavelog::bundle_of_receipt(*small)) {
          auto receipt = weavelog::open_receipt(*small, key);
          auto kept = receipt ? weavelog::remember_receipt(device_.ledger(), device_.station().devices(), *receipt) : weavelog::Outcome<>{};
          if (!receipt || !kept) {
            out.fault = receipt ? kept.error() : receipt.error();
            out.ofReceipt = receipt.has_value();
            return out;
          }
          out.lines = weavelog::compare_receipt(device_.ledger(), *receipt);
          out.receipt = std::move(*receipt);
          return out;
        }
        const auto source = [&file] { return weavelog::read_carried_file(file); };
        auto begun = source();
        const auto head = begun ? weavelog::BundleHead::read(*begun) : weavelog::fail(begun.error());
        if (!head) {
          out.fault = head.error();
          return out;
        }
        if (!head->for_device && !words) {
          out.locked = true;
          return out;
        }
        auto again = source();
        if (!again) {
          out.fault = again.error();
          return out;
        }
        NewNames names(device_.ledger());
        auto looked = options;
        std::uint64_t all = 0;
        looked.go_on = [&](std::uint64_t entries) {
          tellProgress(entries, all);
          return !stop_;
        };
        auto sight = weavelog::look_into(std::move(*again), {&key, words}, looked, [&](const weavelog::Batch& batch) { names.read(batch); });
        if (!sight) {
          // The wrong words: asked again, rather than told as a fault of the file.
          out.wrong = out.locked = !head->for_device && (sight.error().code == weavelog::FaultCode::untrusted ||
                                                         sight.error().code == weavelog::FaultCode::bad_input);
          if (!out.locked) out.fault = sight.error();
          return out;
        }
        out.names = names.names();
        out.more = std::max<int>(0, static_cast<int>(out.names.size()) - namesShown);
        out.names = out.names.mid(0, namesShown);
        out.sight = std::move(*sight);
        return out;
      },
      [this](const Sighted& what) { seen(what); });
}

void IntakeModel::seen(const Sighted& what) {
  wrongWords_ = what.wrong;
  if (what.receipt) return tellReceipt(*what.receipt, what.lines);
  if (what.locked) return setState(Locked);
  if (what.fault) {
    trouble_ = what.ofReceipt ? receiptTrouble(*what.fault) : carryTrouble(what.fault, true);
    return setState(Failed);
  }
  sight_ = what.sight;
  newNames_ = what.names;
  newNamesMore_ = what.more;
  const auto& sight = *sight_;
  const auto players = counted(sight, weavelog::kPlayerBook), events = counted(sight, weavelog::kEventBook), kits = counted(sight, weavelog::kKitBook);
  if (players > 0) holds_.append(tr("%n player(s)", "", number(players)));
  if (events > 0) holds_.append(tr("%n event(s)", "", number(events)));
  if (kits > 0) holds_.append(tr("the private kit"));
  if (sight.pictures > 0) holds_.append(tr("%n picture(s)", "", number(sight.pictures)));
  holds_ = QStringList{holds_.join(QStringLiteral(", "))};
  holds_.append(sight.new_entries == 0 ? tr("All of it is here already.")
                                       : tr("New here: %1 of %2 entries.").arg(number(sight.new_entries)).arg(number(sight.entries)));
  if (!sight.withheld.empty()) holds_.append(tr("Stays out, as the players agreed here: %n player(s)", "", number(sight.withheld.size())));
  if (!sight.forgotten.empty()) holds_.append(tr("Stays out, because they were forgotten: %n player(s)", "", number(sight.forgotten.size())));
  if (!sight.not_begun.empty()) holds_.append(tr("Stays out: the book of another event, which only the head of the room may bring."));
  if (sight.refused && !mustTrust()) trouble_ = carryTrouble(sight.refused, true);
  if (!sight.refused && sight.fault) trouble_ = carryTrouble(sight.fault, true);
  if (!sight.refused && !sight.fault && sight.end != weavelog::ChunkEnd::whole)
    trouble_ = carryTrouble(weavelog::Fault{weavelog::FaultCode::malformed, "it ends early or is damaged", "bundle", ""}, true);
  setState(Seen);
}

bool IntakeModel::mustTrust() const { return sight_ && sight_->refused && sight_->refused->code == weavelog::FaultCode::untrusted; }
bool IntakeModel::takeable() const { return sight_ && (!sight_->refused || mustTrust()) && sight_->books > 0; }

QString IntakeModel::maker() const { return sight_ ? qtext(sight_->manifest.maker.device) : QString(); }
QString IntakeModel::standing() const { return sight_ ? standingText(sight_->maker) : QString(); }
QString IntakeModel::keyWords() const { return sight_ ? qtext(weavelog::fingerprint_words(sight_->manifest.maker.key)) : QString(); }
QString IntakeModel::made() const { return sight_ ? device_.work().timeText(sight_->manifest.made) : QString(); }
QString IntakeModel::note() const { return sight_ ? qtext(sight_->manifest.note) : QString(); }

void IntakeModel::take(bool trusted) {
  if (!takeable() || state_ == Taking || (mustTrust() && !trusted)) return;
  trusted_ = trusted;
  stop_ = false;
  progress_ = 0;
  trouble_.clear();
  account_.clear();
  setState(Taking);
  emit progressChanged();
  beside_.work(
      [this, file = file_, words = words_, options = options(), all = sight_->manifest.entries]() -> Brought {
        Brought out;
        auto& ledger = device_.ledger();
        auto source = weavelog::read_carried_file(file);
        if (!source) {
          out.fault = source.error();
          return out;
        }
        auto going = options;
        going.go_on = [&](std::uint64_t entries) {
          tellProgress(entries, all);
          return !stop_;
        };
        auto taken = weavelog::take_bundle(std::move(*source), {&ledger.key(), words}, going);
        if (!taken) {
          out.fault = taken.error();
          return out;
        }
        // Beside the bundle, where the stick goes back to whoever made it; where that can't be, it is kept for another place.
        if (auto sealed = weavelog::seal_receipt(weavelog::receipt_of(ledger, *taken), ledger.key(), taken->manifest.maker.key)) {
          const auto beside = weavelog::place_for_receipt(file.parent_path(), file.filename().string(), taken->id);
          out.receipt = std::move(*sealed);
          if (weavelog::write_carried_file(beside, true, [&](const weavelog::ByteSink& sink) { return sink(out.receipt); }))
            out.receiptFile = beside.string();
        }
        std::map<weavelog::BookId, bool> came;
        for (const auto& book : taken->books) came[book] = true;
        for (const auto& question : ledger.open_questions()) out.questions += came.contains(question.book);
        out.bundle = std::move(*taken);
        return out;
      },
      [this](const Brought& what) { taken(what); });
}

void IntakeModel::goOn() {
  if (state_ == Failed && !sight_) return look();
  if (state_ == Taken || state_ == Failed) take(trusted_);
}

void IntakeModel::taken(const Brought& what) {
  if (what.fault) {
    trouble_ = carryTrouble(what.fault, true);
    return setState(Failed);
  }
  const auto& bundle = *what.bundle;
  complete_ = bundle.complete();
  questions_ = what.questions;
  receipt_ = what.receipt;
  receiptFile_ = qtext(what.receiptFile);
  if (bundle.fault && !stop_) trouble_ = carryTrouble(bundle.fault, true);
  if (bundle.applied > 0) account_.append(tr("%n new entry(s) came in.", "", number(bundle.applied)));
  if (bundle.known > 0) account_.append(tr("%n entry(s) were here already.", "", number(bundle.known)));
  if (bundle.pictures > 0) account_.append(tr("%n picture(s) came in.", "", number(bundle.pictures)));
  if (bundle.pictures_failed > 0) account_.append(tr("%n picture(s) could not be stored.", "", number(bundle.pictures_failed)));
  if (bundle.pictures_gone > 0) account_.append(tr("%n picture(s) were lost already where it was made.", "", number(bundle.pictures_gone)));
  if (!bundle.withheld.empty()) {
    QStringList names;
    for (const auto& book : bundle.withheld) names.append(nameOf(device_.ledger(), book));
    account_.append(tr("Left out, as the players agreed here: %1").arg(names.join(QStringLiteral(", "))));
  }
  if (!bundle.forgotten.empty()) account_.append(tr("Left out, because they were forgotten: %n player(s)", "", number(bundle.forgotten.size())));
  if (!bundle.not_begun.empty()) account_.append(tr("Left out: the book of another event, which only the head of the room may bring."));
  if (bundle.erased > 0) account_.append(tr("Forgotten here too, because they withdrew: %n player(s)", "", number(bundle.erased)));
  if (bundle.quarantined > 0) account_.append(tr("%n entry(s) were put aside; the Exchange page tells why.", "", number(bundle.quarantined)));
  for (const auto& clock : bundle.wrong_clocks) account_.append(tr("The clock of %1 was far ahead.").arg(qtext(clock)));
  setState(Taken);
}

void IntakeModel::saveReceipt(const QUrl& folder) {
  if (receipt_.empty()) return;
  const auto about = weavelog::bundle_of_receipt(receipt_);
  if (!about) return;
  const auto name = weavelog::place_for_receipt((folder.isLocalFile() ? folder.toLocalFile() : folder.toString()).toStdString(), file_.filename().string(), *about);
  const auto written = weavelog::write_carried_file(name, true, [&](const weavelog::ByteSink& sink) { return sink(receipt_); });
  if (written) receiptFile_ = qtext(name.string());
  trouble_ = written ? QVariantMap() : carryTrouble(written.error(), false);
  emit changed();
}

void IntakeModel::tellReceipt(const weavelog::Receipt& receipt, const std::vector<weavelog::ReceiptLine>& lines) {
  const auto& devices = device_.station().devices();
  const auto known = weavelog::known_as(device_.ledger(), devices, receipt.by.key);
  const QString by = takerText(known == weavelog::KnownAs::stranger ? receipt.by.device : weavelog::device_name(device_.ledger(), devices, receipt.by.key), known);
  const QString at = device_.work().timeText(receipt.at);
  complete_ = receipt.complete;
  account_.append(receipt.complete ? tr("%1 took all of it in, %2.").arg(by, at) : tr("%1 took a part of it in, %2.").arg(by, at));
  account_.append(tr("It holds %n book(s) of it.", "", number(receipt.books.size())));
  for (const auto& line : lines) {
    if (!line.held || (line.lacking == 0 && line.parted == 0)) continue;
    const QString name = nameOf(device_.ledger(), line.book);
    const QString called = name.isEmpty() ? tr("The event") : name;
    if (line.lacking > 0) account_.append(tr("%1: %n newer entry(s) here that are not there yet.", "", number(line.lacking)).arg(called));
    if (line.parted > 0) account_.append(tr("%1: the two devices hold different entries.").arg(called));
    if (account_.size() > 20) break;
  }
  setState(Told);
  emit receiptRead();
}
