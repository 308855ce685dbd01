#include "app-qml/view/stock_model.h"

#include <QDateTime>
#include <QLocale>
#include <QQmlEngine>
#include <QTimeZone>

#include <algorithm>

#include "app-qml/view/app_device.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "core/base/localised.h"
#include "core/desk/money.h"
#include "core/desk/stock.h"
#include "core/model/queries.h"

namespace {

constexpr std::int64_t mmOfMetre = 1000;
constexpr std::int64_t sixDays = std::int64_t{6} * 86'400'000;

// Nobody reads a reel to the millimetre.
QString figure(std::int64_t amount, bool reel) {
  if (!reel) return QString::number(amount);
  const auto metres = weavelog::Decimal::rounded(static_cast<double>(amount) / mmOfMetre, 1);
  return qtext(metres.trimmed().text());
}

// "Thursday", in the event's zone.
QString weekday(const Work& work, weavelog::UnixMs at) {
  const QTimeZone zone(QByteArray::fromStdString(work.zone()));
  const auto there = QDateTime::fromMSecsSinceEpoch(at, zone.isValid() ? zone : QTimeZone::utc());
  return QLocale(QString::fromStdString(work.language().tag())).dayName(there.date().dayOfWeek(), QLocale::LongFormat);
}

QString nameOf(const weavelog::PlayerRow& player) {
  weavelog::Person person;
  person.family_name = player.family_name;
  person.given_name = player.given_name;
  person.native_name = player.native_name;
  return qtext(weavelog::listed_name(person));
}

}  // namespace

StockModel::StockModel(Work& work, QObject* parent) : QAbstractListModel(parent), work_(work) {
  connect(&work_, &Work::changed, this, &StockModel::refresh);
  refresh();
}

StockModel* StockModel::create(QQmlEngine* engine, QJSEngine*) {
  return new StockModel(provided<AppDevice>(engine)->work());  // the engine takes it over
}

bool StockModel::hasEvent() const {
  return static_cast<bool>(work_.event());
}

int StockModel::low() const {
  return static_cast<int>(std::count_if(rows_.begin(), rows_.end(), [](const Row& row) { return row.low; }));
}

std::string StockModel::who() const {
  return work_.who().isEmpty() ? work_.ledger().self().device : work_.who().toStdString();
}

StockModel::Row StockModel::rowOf(const weavelog::StockLevel& level) const {
  const auto& item = level.item.now;
  Row row;
  row.item = level.item.id();
  row.name = qtext(item.name);
  row.gauge = saidText(work_.language(), item.gauge);
  row.reel = item.supply == weavelog::Supply::reel;
  row.left = figure(level.left, row.reel);
  if (level.used > 0) row.used = figure(level.used, row.reel);
  if (item.low_mark) row.lowMark = figure(*item.low_mark, row.reel);
  row.low = level.low();
  row.note = qtext(item.note);
  row.owner = item.player ? Player : item.whose.empty() ? Room : Stringer;
  row.whose = qtext(item.whose);
  if (item.player) {
    const auto player = weavelog::find_player(work_.ledger(), item.player);
    if (player) row.whose = nameOf(*player);
  }
  if (const auto at = level.runs_out_at(work_.now())) {
    const bool today = weavelog::day_at(*at, work_.zone()) == weavelog::day_at(work_.now(), work_.zone());
    const bool soon = *at - work_.now() < sixDays;
    row.gone = today ? AtTime : soon ? OnWeekday : OnDay;
    const auto form = today ? weavelog::Moment::Form::time_of_day : weavelog::Moment::Form::day;
    row.goneWhen = row.gone == OnWeekday ? weekday(work_, *at)
                                         : qtext(weavelog::localised(work_.language(), weavelog::Moment{*at, work_.zone(), form}));
  }
  return row;
}

void StockModel::refresh() {
  std::vector<Row> rows;
  if (work_.event()) {
    const auto bounds = weavelog::bounds_of_day(weavelog::day_at(work_.now(), work_.zone()), work_.zone());
    const auto morning = bounds ? bounds->from : work_.now();
    for (const auto& level : weavelog::stock_levels(work_.ledger(), work_.event(), morning)) rows.push_back(rowOf(level));
  }
  std::stable_sort(rows.begin(), rows.end(), [](const Row& a, const Row& b) {
    if (a.owner != b.owner) return a.owner < b.owner;
    if (a.whose != b.whose) return a.whose.localeAwareCompare(b.whose) < 0;
    return a.name.localeAwareCompare(b.name) < 0;
  });
  for (std::size_t i = 0; i < rows.size(); ++i) rows[i].first = i == 0 || rows[i].owner != rows[i - 1].owner;
  KeyedRows::update(*this, std::move(rows));
  emit countChanged();
}

bool StockModel::add(const QVariantMap& item, const QString& say) {
  const auto text = [&](const char* key) { return item.value(QLatin1String(key)).toString().trimmed().toStdString(); };
  weavelog::StockItem wanted;
  wanted.name = text("name");
  wanted.note = text("note");
  wanted.supply = item.value(QStringLiteral("reel")).toBool() ? weavelog::Supply::reel : weavelog::Supply::set;
  wanted.material = static_cast<weavelog::StringMaterial>(item.value(QStringLiteral("material")).toInt());
  const auto owner = item.value(QStringLiteral("owner")).toInt();
  wanted.owner = owner == Player ? weavelog::StringOwner::player : weavelog::StringOwner::room;
  if (owner == Player) wanted.player = idFrom<weavelog::BookId>(item.value(QStringLiteral("player")).toString());
  if (owner == Stringer) wanted.whose = text("whose");
  if (const auto gauge = text("gauge"); !gauge.empty()) {
    const auto amount = weavelog::Decimal::parse(gauge);
    if (!amount) return work_.commit(weavelog::fail(amount.error()), {});
    wanted.gauge = weavelog::Quantity{*amount, weavelog::Unit::millimetre};
  }
  if (const auto low = text("low"); !low.empty()) {
    const auto mark = weavelog::stock_amount_from(low, wanted.supply);
    if (!mark) return work_.commit(weavelog::fail(mark.error()), {});
    wanted.low_mark = *mark;
  }
  std::int64_t there = 0;
  if (const auto amount = text("amount"); !amount.empty()) {
    const auto read = weavelog::stock_amount_from(amount, wanted.supply);
    if (!read) return work_.commit(weavelog::fail(read.error()), {});
    there = *read;
  }
  return work_.commit(weavelog::add_stock_item(work_.event(), wanted, work_.now(), there, who()), say);
}

bool StockModel::move(const QString& item, int why, const QString& amount, const QString& note, const QString& say) {
  const auto id = idFrom<weavelog::EntityId>(item);
  const auto row = std::find_if(rows_.begin(), rows_.end(), [&](const Row& one) { return one.item == id; });
  if (row == rows_.end()) return false;
  const auto read = weavelog::stock_amount_from(amount.trimmed().toStdString(),
                                                row->reel ? weavelog::Supply::reel : weavelog::Supply::set);
  if (!read) return work_.commit(weavelog::fail(read.error()), {});
  return work_.commit(weavelog::move_stock(work_.event(), {id, static_cast<weavelog::StockWhy>(why), *read, note.trimmed().toStdString(),
                                                           who(), work_.now()}),
                      say);
}

QString StockModel::wrongWith(const QString& amount, bool reel) const {
  if (amount.trimmed().isEmpty()) return {};
  if (weavelog::stock_amount_from(amount.trimmed().toStdString(), reel ? weavelog::Supply::reel : weavelog::Supply::set)) return {};
  return reel ? tr("Give metres, such as 62.5.") : tr("Give a whole number of sets.");
}

QString StockModel::wrongGauge(const QString& gauge) const {
  if (gauge.trimmed().isEmpty()) return {};
  const auto amount = weavelog::Decimal::parse(gauge.trimmed().toStdString());
  // Strings are 0.6 to 2 mm thick: common practice, no source.
  if (amount && amount->to_double() >= 0.6 && amount->to_double() <= 2) return {};
  return tr("Give the gauge in mm, such as 1.25.");
}

QVariantList StockModel::players() const {
  QVariantList out;
  if (!work_.event()) return out;
  for (const auto& book : weavelog::players_at(work_.ledger(), work_.event()))
    if (const auto player = weavelog::find_player(work_.ledger(), book))
      out.append(QVariantMap{{"value", idText(book)}, {"text", nameOf(*player)}});
  std::sort(out.begin(), out.end(), [](const QVariant& a, const QVariant& b) {
    return a.toMap()["text"].toString().localeAwareCompare(b.toMap()["text"].toString()) < 0;
  });
  return out;
}

int StockModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : count();
}

QHash<int, QByteArray> StockModel::roleNames() const {
  return {{ItemRole, "item"},   {NameRole, "name"},           {GaugeRole, "gauge"},     {OwnerRole, "owner"}, {FirstRole, "first"}, {WhoseRole, "whose"},
          {ReelRole, "reel"},   {LeftRole, "remains"},           {UsedTodayRole, "used"},  {LowMarkRole, "lowMark"}, {LowRole, "low"},
          {GoneRole, "gone"},   {GoneWhenRole, "goneWhen"},   {NoteRole, "note"}};
}

QVariant StockModel::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
  const Row& row = rows_[static_cast<std::size_t>(index.row())];
  switch (role) {
    case ItemRole:
      return idText(row.item);
    case Qt::DisplayRole:
    case NameRole:
      return row.name;
    case GaugeRole:
      return row.gauge;
    case OwnerRole:
      return row.owner;
    case FirstRole:
      return row.first;
    case WhoseRole:
      return row.whose;
    case ReelRole:
      return row.reel;
    case LeftRole:
      return row.left;
    case UsedTodayRole:
      return row.used;
    case LowMarkRole:
      return row.lowMark;
    case LowRole:
      return row.low;
    case GoneRole:
      return row.gone;
    case GoneWhenRole:
      return row.goneWhen;
    case NoteRole:
      return row.note;
    default:
      return {};
  }
}
