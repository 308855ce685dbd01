#include "app-qml/view/arrival_model.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QQmlEngine>

#include <algorithm>

#include "app-qml/view/drop_off_storing.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "core/desk/person_books.h"
#include "core/people/consent.h"
#include "sync/net/exchange_guest.h"

namespace {

enum ArrivalRole {
  NameRole = Qt::UserRole + 1,
  DetailRole,
  BandRole,
  CandidatesRole,
  TickedRole,
  SentRole,
  CameRole,
  LinkRole,
  FactsRole,
};

// As many lines as a screen shows at once, twice over: a long list is shown piece by piece.
constexpr std::size_t page = 40;
// A list of lists, so that what names a forgotten book is erased (Ledger::remember).
constexpr std::string_view ticksKey = "arrival ticks";

}  // namespace

ArrivalModel::ArrivalModel(AppDevice& device, QObject* parent) : QAbstractListModel(parent), device_(device), most_(page) {
  connect(&device_, &AppDevice::eventChanged, this, &ArrivalModel::look);
  connect(&device_, &AppDevice::changed, this, [this] {
    if (looking_) look();
  });
  readTicks();
  look();
}

ArrivalModel* ArrivalModel::create(QQmlEngine* engine, QJSEngine*) {
  return new ArrivalModel(*provided<AppDevice>(engine));  // the engine takes it over
}

int ArrivalModel::countOf(Row::Band band) const {
  return static_cast<int>(std::count_if(all_.begin(), all_.end(), [&](const Row& row) { return row.band == band; }));
}

int ArrivalModel::ticked() const {
  return static_cast<int>(std::count_if(all_.begin(), all_.end(), [&](const Row& row) { return isTicked(row); }));
}

int ArrivalModel::unanswered() const {
  return static_cast<int>(std::count_if(all_.begin(), all_.end(), [](const Row& row) { return row.band == Row::Likely && !row.sent && row.ticked < 0; }));
}

QVariantMap ArrivalModel::gains() const {
  int roomPlayers = 0, roomFirst = 0, roomNewer = 0, herePlayers = 0, hereFirst = 0, hereNewer = 0;
  std::size_t roomRackets = 0, hereRackets = 0;
  for (const Row& row : all_) {
    if (isTicked(row) && !row.there[static_cast<std::size_t>(row.ticked)].nothing()) {
      const auto& gain = row.there[static_cast<std::size_t>(row.ticked)];
      ++roomPlayers;
      roomFirst += gain.first ? 1 : 0;
      roomNewer += gain.newer_days ? 1 : 0;
      roomRackets += gain.jobs;
    }
    if (row.here.nothing()) continue;
    ++herePlayers;
    hereFirst += row.here.first ? 1 : 0;
    hereNewer += row.here.newer_days ? 1 : 0;
    hereRackets += row.here.jobs;
  }
  return {{QStringLiteral("roomPlayers"), roomPlayers}, {QStringLiteral("roomFirst"), roomFirst},
          {QStringLiteral("roomRackets"), static_cast<int>(roomRackets)}, {QStringLiteral("roomNewer"), roomNewer},
          {QStringLiteral("herePlayers"), herePlayers}, {QStringLiteral("hereFirst"), hereFirst},
          {QStringLiteral("hereRackets"), static_cast<int>(hereRackets)}, {QStringLiteral("hereNewer"), hereNewer}};
}

QVariantList ArrivalModel::staying() const {
  QVariantList out;
  for (const Row& row : all_) {
    if (row.sent || row.band == Row::New || isTicked(row)) continue;
    const auto best = row.candidates[row.shown()].toMap();
    const Stay why = !best.value(QStringLiteral("mayCross")).toBool() ? NotAgreed : row.band == Row::Likely ? NotAnswered : NotTicked;
    out.append(QVariantMap{{QStringLiteral("name"), row.name}, {QStringLiteral("why"), why}});
  }
  return out;
}

QVariantList ArrivalModel::consents() const {
  std::map<int, int> counts;
  for (const Row& row : all_)
    if (isTicked(row)) ++counts[row.candidates[row.ticked].toMap().value(QStringLiteral("consent")).toInt()];
  QVariantList out;
  for (const auto& [choice, count] : counts) out.append(QVariantMap{{QStringLiteral("choice"), choice}, {QStringLiteral("count"), count}});
  return out;
}

void ArrivalModel::setLooking(bool looking) {
  if (looking == looking_) return;
  looking_ = looking;
  emit lookingChanged();
  if (looking_) look();
}

void ArrivalModel::setFilter(Filter filter) {
  if (filter == filter_) return;
  filter_ = filter;
  most_ = page;
  show();
}

void ArrivalModel::showMore() {
  most_ += page;
  show();
}

void ArrivalModel::look() {
  const auto event = device_.work().event();
  if (!event) {
    take({});
    return;
  }
  ArrivalSight sight{device_.ledger(), event, device_.work().now(), {}, {}};
  auto& workplace = device_.work().workplace();
  // Of whom a person says that they are in the list: they are entered, although it does not say so yet.
  sight.mayLeave = [&ledger = device_.ledger(), event](const weavelog::BookId& book) {
    return weavelog::may_cross(ledger, book, weavelog::kPlayerBook, event, true);
  };
  sight.atRoom = [&workplace](const weavelog::BookId& book) { return workplace.is_ticked(book); };
  beside_.work([sight] { return std::pair(sight.event, arrivalRows(sight)); },
               [this](const auto& seen) {
                 if (seen.first == device_.work().event()) take(seen.second);
               });
}

void ArrivalModel::take(std::vector<Row> rows) {
  // What a person ticked stays ticked, if it is still among the candidates.
  for (Row& row : rows) {
    const auto kept = ticks_.find(row.entry);
    if (row.sent || kept == ticks_.end()) continue;
    const auto at = std::find(row.books.begin(), row.books.end(), kept->second);
    if (at != row.books.end()) row.ticked = static_cast<int>(at - row.books.begin());
  }
  all_ = std::move(rows);
  show();
  emit countChanged();
  emit tickedChanged();
}

void ArrivalModel::show() {
  std::vector<Row> wanted;
  std::size_t found = 0;
  for (const Row& row : all_) {
    if (filter_ != All && static_cast<int>(row.band) != static_cast<int>(filter_) - 1) continue;
    if (++found <= most_) wanted.push_back(row);
  }
  hidden_ = static_cast<int>(found - wanted.size());
  KeyedRows::update(*this, std::move(wanted));
  emit filterChanged();
}

void ArrivalModel::setTick(Row& row, int candidate) {
  const int most = static_cast<int>(row.books.size());
  if (row.sent || candidate >= most || candidate < -1 || candidate == row.ticked) return;
  // Whose history may not go can't be ticked; but that it is nobody of ours can always be said.
  const bool noneOfOurs = row.asksForLink() && candidate == 0;
  if (candidate >= 0 && !noneOfOurs && !row.candidates[candidate].toMap().value(QStringLiteral("mayCross")).toBool()) return;
  row.ticked = candidate;
  if (candidate < 0) {
    ticks_.erase(row.entry);
  } else {
    ticks_[row.entry] = row.books[static_cast<std::size_t>(candidate)];
  }
}

void ArrivalModel::tick(int row, int candidate) {
  if (row < 0 || row >= rowCount()) return;
  const auto entry = rows_[static_cast<std::size_t>(row)].entry;
  for (Row& one : all_)
    if (one.entry == entry) setTick(one, candidate);
  keepTicks();
}

void ArrivalModel::tickAllKnown() {
  for (Row& row : all_)
    if (row.band == Row::Known && row.ticked < 0) setTick(row, 0);
  keepTicks();
}

void ArrivalModel::keepTicks() {
  QJsonArray list;
  for (const auto& [entry, book] : ticks_) list.append(QJsonArray{idText(entry), idText(book)});
  const QByteArray bytes = QJsonDocument(list).toJson(QJsonDocument::Compact);
  if (auto kept = device_.ledger().remember(ticksKey, weavelog::as_bytes(bytes.toStdString())); !kept) device_.work().tell(kept.error());
  show();
  emit tickedChanged();
}

void ArrivalModel::readTicks() {
  const auto kept = device_.ledger().remembered(ticksKey);
  if (!kept) return;
  const auto list = QJsonDocument::fromJson(QByteArray(reinterpret_cast<const char*>(kept->data()), static_cast<qsizetype>(kept->size()))).array();
  for (const auto& line : list) {
    const auto entry = idFrom<weavelog::EntityId>(line.toArray().at(0).toString());
    const auto book = idFrom<weavelog::BookId>(line.toArray().at(1).toString());
    if (entry && book) ticks_[entry] = book;
  }
}

// Who an entry is, said by a person, so that no other device has to ask again.
bool ArrivalModel::sayWho(const Row& row) {
  auto& work = device_.work();
  const auto book = row.books[static_cast<std::size_t>(row.ticked)];
  if (row.asksForLink()) {
    const std::string by = work.who().isEmpty() ? device_.ledger().self().device : work.who().toStdString();
    for (std::size_t i = 1; i < row.books.size(); ++i) {
      // One of them is this player's too; if none is, that is said of each.
      if (row.ticked > 0 && row.books[i] != book) continue;
      const auto said = row.ticked > 0 ? weavelog::LinkSaid::same_person : weavelog::LinkSaid::other_person;
      const auto drafts = weavelog::say_of_books(device_.ledger(), row.books[i], row.linkedTo, said, by, work.now());
      if (!drafts) return work.commit(weavelog::fail(drafts.error()), {});
      // In our own book only, and past the workplace, which would put the book among those that go: whose it is not must not travel for that.
      for (const auto& draft : *drafts) {
        if (draft.book() != row.books[i]) continue;
        if (const auto stored = device_.ledger().append(draft); !stored) return work.commit(weavelog::fail(stored.error()), {});
      }
    }
    return true;
  }
  return row.linkedTo || linkEntry(work, row.entry, book);
}

bool ArrivalModel::send() {
  auto& workplace = device_.work().workplace();
  if (!workplace.host())
    return device_.work().commit(weavelog::fail(weavelog::FaultCode::bad_input, "no event server is chosen", "", "pair with the event server first"), {});
  std::vector<weavelog::BookId> chosen;
  for (const Row& row : all_) {
    if (!isTicked(row)) continue;
    if (!sayWho(row)) return false;
    if (!row.asksForLink() || row.ticked > 0) chosen.push_back(row.books[static_cast<std::size_t>(row.ticked)]);
  }
  // One person's books go together; a linked one whose player did not agree to travel stays.
  auto books = weavelog::with_linked(device_.ledger(), chosen);
  std::erase_if(books, [&](const weavelog::BookId& book) {
    return std::find(chosen.begin(), chosen.end(), book) == chosen.end() && !workplace.may_leave()(book, weavelog::kPlayerBook);
  });
  std::vector<weavelog::BookId> fresh = books;
  std::erase_if(fresh, [&](const weavelog::BookId& book) { return workplace.is_ticked(book); });
  if (const auto ticked = workplace.tick(books); !ticked) return device_.work().commit(weavelog::fail(ticked.error()), {});
  if (const auto kept = weavelog::note_sent(device_.ledger(), fresh); !kept) device_.work().tell(kept.error());
  if (device_.guest() != nullptr) device_.guest()->scope_changed();
  for (Row& row : all_) {
    if (row.ticked < 0) continue;
    row.sent = true;
    ticks_.erase(row.entry);
  }
  keepTicks();
  look();
  return true;
}

int ArrivalModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QHash<int, QByteArray> ArrivalModel::roleNames() const {
  return {{NameRole, "name"},     {DetailRole, "detail"}, {BandRole, "band"}, {CandidatesRole, "candidates"},
          {TickedRole, "ticked"}, {SentRole, "sent"},     {CameRole, "came"}, {LinkRole, "asksForLink"}, {FactsRole, "facts"}};
}

QVariant ArrivalModel::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
  const Row& row = rows_[static_cast<std::size_t>(index.row())];
  switch (role) {
    case Qt::DisplayRole:
    case NameRole:
      return row.name;
    case DetailRole:
      return row.detail;
    case BandRole:
      return static_cast<int>(row.band);
    case FactsRole:
      return row.facts;
    case CandidatesRole:
      return row.candidates;
    case TickedRole:
      return row.ticked;
    case SentRole:
      return row.sent;
    case CameRole:
      return row.came;
    case LinkRole:
      return row.asksForLink();
    default:
      return {};
  }
}
