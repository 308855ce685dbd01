#include "app-qml/view/arrival_model.h"

#include <QQmlEngine>

#include "app-qml/view/provided.h"
#include "core/base/localised.h"
#include "core/people/arrival.h"
#include "sync/net/exchange_guest.h"

namespace {

enum ArrivalRole {
  NameRole = Qt::UserRole + 1,
  DetailRole,
  BandRole,
  CandidatesRole,
  TickedRole,
  SentRole,
};

QString joined(QStringList parts, const QString& between) {
  parts.removeAll(QString());
  return parts.join(between);
}

QString nameOf(const std::string& family, const std::string& given, const std::string& native) {
  const QString name =
      joined({QString::fromStdString(family), QString::fromStdString(given)}, QStringLiteral(" "));
  return name.isEmpty() ? QString::fromStdString(native) : name;
}

QString yearText(const std::optional<std::int64_t>& year) {
  return year ? QString::number(*year) : QString();
}

// What speaks for a candidate, or against: "name, country".
QString evidence(const weavelog::Candidate& candidate, bool speaksFor) {
  QStringList parts;
  for (const auto& one : candidate.evidence) {
    if (one.agreement == weavelog::Likeness::unsaid || (one.weight > 0) != speaksFor) continue;
    switch (one.field) {
      case weavelog::EvidenceField::name:
        parts.append(one.agreement == weavelog::Likeness::same ? ArrivalModel::tr("name") : ArrivalModel::tr("name nearly"));
        break;
      case weavelog::EvidenceField::country: parts.append(ArrivalModel::tr("country")); break;
      case weavelog::EvidenceField::birth_year: parts.append(ArrivalModel::tr("birth year")); break;
      case weavelog::EvidenceField::hand: parts.append(ArrivalModel::tr("hand")); break;
      case weavelog::EvidenceField::tour_number: parts.append(ArrivalModel::tr("tour number")); break;
      default: break;
    }
  }
  return parts.join(QStringLiteral(", "));
}

}  // namespace

ArrivalModel::ArrivalModel(AppDevice& device, QObject* parent) : QAbstractListModel(parent), device_(device) {
  connect(&device_, &AppDevice::eventChanged, this, &ArrivalModel::look);
  look();
}

ArrivalModel* ArrivalModel::create(QQmlEngine* engine, QJSEngine*) {
  return new ArrivalModel(*provided<AppDevice>(engine));  // the engine takes it over
}

int ArrivalModel::known() const {
  return static_cast<int>(std::count_if(rows_.begin(), rows_.end(), [](const Row& row) { return row.band == Known; }));
}

int ArrivalModel::likely() const {
  return static_cast<int>(
      std::count_if(rows_.begin(), rows_.end(), [](const Row& row) { return row.band == Likely; }));
}

int ArrivalModel::ticked() const {
  return static_cast<int>(
      std::count_if(rows_.begin(), rows_.end(), [](const Row& row) { return row.ticked >= 0 && !row.sent; }));
}

void ArrivalModel::look() {
  const auto event = device_.work().event();
  if (!event) {
    take({});
    return;
  }
  beside_.work([this, event, now = device_.work().now()] { return std::pair(event, compared(event, now)); },
               [this](const auto& seen) {
                 if (seen.first == device_.work().event()) take(seen.second);
               });
}

std::vector<ArrivalModel::Row> ArrivalModel::compared(const weavelog::BookId& event, weavelog::UnixMs now) const {
  std::vector<Row> rows;
  for (const auto& line : weavelog::arrival(device_.ledger(), event, now)) {
    Row row;
    row.entry = line.entry;
    row.band = line.band == weavelog::MatchBand::known    ? Known
               : line.band == weavelog::MatchBand::likely ? Likely
                                                          : New;
    row.name = nameOf(line.item.family_name, line.item.given_name, line.item.native_name);
    row.detail = joined({QString::fromStdString(line.item.country), yearText(line.item.birth_year),
                         QString::fromStdString(line.item.draw)},
                        QStringLiteral("  ·  "));
    for (const auto& candidate : line.candidates) {
      const auto& player = candidate.player;
      QString last;
      if (candidate.last) {
        last = joined({QString::fromStdString(candidate.last->tensions()),
                       QString::fromStdString(candidate.last->mains_string),
                       QString::fromStdString(candidate.last->event_name)},
                      QStringLiteral("  ·  "));
      }
      if (candidate.last && candidate.last->days)
        last = joined({last, tr("%n day(s) ago", "", static_cast<int>(*candidate.last->days))}, QStringLiteral("  ·  "));
      row.books.push_back(player.book);
      row.candidates.append(QVariantMap{
          {QStringLiteral("name"), nameOf(player.family_name, player.given_name, player.native_name)},
          {QStringLiteral("detail"), joined({QString::fromStdString(player.country), yearText(player.birth_year)},
                                            QStringLiteral("  ·  "))},
          {QStringLiteral("last"), last},
          {QStringLiteral("like"), evidence(candidate.match, true)},
          {QStringLiteral("unlike"), evidence(candidate.match, false)},
          {QStringLiteral("mayCross"), candidate.may_cross}});
      if (device_.work().workplace().is_ticked(player.book)) {
        row.sent = true;
        row.ticked = static_cast<int>(row.books.size()) - 1;
      }
    }
    rows.push_back(std::move(row));
  }
  return rows;
}

void ArrivalModel::take(std::vector<Row> rows) {
  // What a person ticked meanwhile stays ticked.
  for (Row& row : rows) {
    const auto before =
        std::find_if(rows_.begin(), rows_.end(), [&](const Row& one) { return one.entry == row.entry; });
    if (before != rows_.end() && !row.sent && before->ticked >= 0 && before->books == row.books)
      row.ticked = before->ticked;
  }
  KeyedRows::update(*this, std::move(rows));
  emit countChanged();
  emit tickedChanged();
}

void ArrivalModel::tick(int row, int candidate) {
  if (row < 0 || row >= count()) return;
  Row& one = rows_[static_cast<std::size_t>(row)];
  const int most = static_cast<int>(one.books.size());
  if (one.sent || candidate >= most || candidate < -1 || candidate == one.ticked) return;
  if (candidate >= 0 && !one.candidates[candidate].toMap().value(QStringLiteral("mayCross")).toBool()) return;
  one.ticked = candidate;
  emit dataChanged(index(row, 0), index(row, 0), {TickedRole});
  emit tickedChanged();
}

void ArrivalModel::tickAllKnown() {
  for (int row = 0; row < count(); ++row)
    if (rows_[static_cast<std::size_t>(row)].band == Known) tick(row, 0);
}

// Who an entry is, said by a person, so that no other device has to ask again.
bool ArrivalModel::link(const Row& row) {
  const auto event = device_.work().event();
  const auto state = device_.ledger().entity(event, row.entry);
  const auto book = row.books[static_cast<std::size_t>(row.ticked)];
  if (!state || weavelog::from_state<weavelog::EntryListItem>(*state).player == book) return true;
  weavelog::Draft draft(event, weavelog::kEventBook, weavelog::kActLinkEntry);
  draft.put(*state, weavelog::tag_of<weavelog::EntryListItem>(&weavelog::EntryListItem::player), book);
  return device_.work().commit(draft, {});
}

bool ArrivalModel::send() {
  std::vector<weavelog::BookId> books;
  for (const Row& row : rows_) {
    if (row.sent || row.ticked < 0) continue;
    if (!link(row)) return false;
    books.push_back(row.books[static_cast<std::size_t>(row.ticked)]);
  }
  if (const auto ticked = device_.work().workplace().tick(books); !ticked)
    return device_.work().commit(weavelog::fail(ticked.error()), {});
  if (device_.guest() != nullptr) device_.guest()->scope_changed();
  for (int row = 0; row < count(); ++row) {
    Row& one = rows_[static_cast<std::size_t>(row)];
    if (one.ticked < 0) continue;
    one.sent = true;
    emit dataChanged(index(row, 0), index(row, 0));
  }
  emit tickedChanged();
  return true;
}

int ArrivalModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : count();
}

QHash<int, QByteArray> ArrivalModel::roleNames() const {
  return {{NameRole, "name"},           {DetailRole, "detail"}, {BandRole, "band"},
          {CandidatesRole, "candidates"}, {TickedRole, "ticked"}, {SentRole, "sent"}};
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
      return row.band;
    case CandidatesRole:
      return row.candidates;
    case TickedRole:
      return row.ticked;
    case SentRole:
      return row.sent;
    default:
      return {};
  }
}
