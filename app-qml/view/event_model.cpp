#include "app-qml/view/event_model.h"

#include <QLocale>
#include <QQmlEngine>
#include <QTimeZone>

#include <tuple>

#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "app-qml/view/word_list.h"
#include "core/base/iso_time.h"
#include "core/base/local_time.h"
#include "core/base/text.h"
#include "core/desk/event_book.h"
#include "core/model/queries.h"
#include "core/people/price_list.h"
#include "sync/trust/rights.h"

namespace {

// Today and six more: a week.
constexpr std::int64_t usualDays = 6;
// So many names stand beside a number of rackets.
constexpr std::size_t mostNames = 3;

std::string typed(const QVariantMap& form, const char* field) { return form.value(QLatin1String(field)).toString().trimmed().toStdString(); }

weavelog::EventInfo infoFrom(const QVariantMap& form) {
  weavelog::EventInfo info;
  info.name = typed(form, "name");
  info.place = typed(form, "place");
  info.first_day = typed(form, "firstDay");
  info.last_day = typed(form, "lastDay");
  info.time_zone = typed(form, "timeZone");
  info.currency = QString::fromStdString(typed(form, "currency")).toUpper().toStdString();
  return info;
}

QVariantMap formOf(const weavelog::EventInfo& info) {
  return {{QStringLiteral("name"), qtext(info.name)},           {QStringLiteral("place"), qtext(info.place)},
          {QStringLiteral("firstDay"), qtext(info.first_day)},  {QStringLiteral("lastDay"), qtext(info.last_day)},
          {QStringLiteral("timeZone"), qtext(info.time_zone)},  {QStringLiteral("currency"), qtext(info.currency)}};
}

}  // namespace

EventModel::EventModel(AppDevice& device, QObject* parent) : QObject(parent), device_(device) {
  connect(&device_.work(), &Work::changed, this, &EventModel::refresh);
  connect(&device_, &AppDevice::eventChanged, this, &EventModel::refresh);
  connect(&device_, &AppDevice::connectionChanged, this, &EventModel::refresh);
  refresh();
}

EventModel* EventModel::create(QQmlEngine* engine, QJSEngine*) {
  return new EventModel(*provided<AppDevice>(engine));  // the engine takes it over
}

void EventModel::refresh() {
  const auto before = std::tuple(events_, mayChange_, hosts_);
  const auto& ledger = device_.ledger();
  const auto shown = device_.work().event(), theirs = device_.hostsEvent();
  events_.clear();
  hosts_.clear();
  for (const auto& row : weavelog::all_events(ledger)) {
    QStringList days;
    const QLocale locale(qtext(device_.work().language().tag()));
    for (const auto& day : {row.first_day, row.last_day})
      if (const QDate date = QDate::fromString(qtext(day), Qt::ISODate); date.isValid()) days.append(locale.toString(date, QLocale::ShortFormat));
    days.removeDuplicates();
    events_.append(QVariantMap{{QStringLiteral("id"), idText(row.book)},
                               {QStringLiteral("name"), qtext(row.name)},
                               {QStringLiteral("detail"), joined({days.join(QStringLiteral(" – ")), qtext(row.place)}, QStringLiteral(", "))},
                               {QStringLiteral("waiting"), static_cast<int>(row.open_jobs)},
                               {QStringLiteral("shown"), row.book == shown},
                               {QStringLiteral("hosts"), row.book == theirs}});
    if (row.book == theirs && theirs != shown) hosts_ = qtext(row.name);
  }
  const auto key = device_.work().workplace().host();
  const auto host = key ? device_.station().devices().host(*key) : std::nullopt;
  mayChange_ = shown && (!host || weavelog::check_right(host->role, theirs, shown, weavelog::kEventBook, weavelog::kActEdit));
  if (std::tuple(events_, mayChange_, hosts_) != before) emit changed();
}

void EventModel::ask(bool change) {
  readLeft();
  emit asked(change);
}

void EventModel::readLeft() {
  left_ = weavelog::rackets_without_event(device_.ledger());
  emit leftChanged();
}

int EventModel::left() const {
  std::size_t count = 0;
  for (const auto& one : left_) count += one.jobs.size();
  return static_cast<int>(count);
}

QString EventModel::leftNames() const {
  QStringList names;
  for (const auto& one : left_)
    if (names.size() < static_cast<qsizetype>(mostNames)) names.append(qtext(one.name));
  if (left_.size() > mostNames) names.append(QStringLiteral("…"));
  return names.join(QStringLiteral(", "));
}

std::string EventModel::today() const {
  return weavelog::date_text(weavelog::LocalTime(device_.work().zone()).day_of(device_.work().now()));
}

QVariantMap EventModel::fresh() const {
  weavelog::EventInfo info;
  info.first_day = today();
  info.last_day = weavelog::date_text(weavelog::LocalTime(device_.work().zone()).day_of(device_.work().now()) + usualDays);
  // Where the tablet is now, not where the event on the screen was.
  info.time_zone = QTimeZone::systemTimeZoneId().toStdString();
  if (!weavelog::is_time_zone(info.time_zone)) info.time_zone = "UTC";
  // Whoever strung for euros last goes on in euros; at first the currency of where the tablet says it is.
  if (const auto event = device_.work().event())
    if (const auto last = weavelog::load_event(device_.ledger(), event)) info.currency = last->event.now.currency;
  if (info.currency.empty()) info.currency = QLocale::system().currencySymbol(QLocale::CurrencyIsoCode).toStdString();
  if (!weavelog::decimals_of_currency(info.currency)) info.currency.clear();
  QVariantMap form = formOf(info);
  form[QStringLiteral("who")] = device_.work().who();
  return form;
}

QVariantMap EventModel::held() const {
  const auto event = weavelog::load_event(device_.ledger(), device_.work().event());
  return formOf(event ? event->event.now : weavelog::EventInfo{});
}

QVariantMap EventModel::wrong(const QVariantMap& form, bool change) const {
  QVariantMap out;
  const auto info = infoFrom(form);
  if (info.name.empty()) out[QStringLiteral("name")] = tr("Give the event a name.");
  const bool begins = weavelog::is_iso_date(info.first_day), ends = weavelog::is_iso_date(info.last_day);
  const auto noDay = [&](const std::string& day) {
    return day.empty() ? tr("Say which day.") : tr("No such day; write it as %1.").arg(qtext(today()));
  };
  const auto held = change ? infoFrom(this->held()) : weavelog::EventInfo{};
  // A day that was said is not taken away.
  const auto mayLack = [&](const std::string& day, const std::string& before) { return change && day.empty() && before.empty(); };
  if (!begins && !mayLack(info.first_day, held.first_day)) out[QStringLiteral("firstDay")] = noDay(info.first_day);
  if (!ends && !mayLack(info.last_day, held.last_day)) out[QStringLiteral("lastDay")] = noDay(info.last_day);
  if (begins && ends && info.last_day < info.first_day) out[QStringLiteral("lastDay")] = tr("It lies before the first day.");
  if (!info.currency.empty() && !weavelog::decimals_of_currency(info.currency))
    out[QStringLiteral("currency")] = tr("No such currency; write its three letters, such as EUR.");
  if (!info.time_zone.empty() && !weavelog::is_time_zone(info.time_zone))
    out[QStringLiteral("timeZone")] = tr("No such time zone; write it as Europe/Lisbon.");
  return out;
}

QString EventModel::dayWords(const QString& day) const {
  const QDate date = QDate::fromString(day.trimmed(), Qt::ISODate);
  if (!date.isValid() || !weavelog::is_iso_date(day.trimmed().toStdString())) return {};
  return QLocale(qtext(device_.work().language().tag())).toString(date, QLocale::LongFormat);
}

QString EventModel::moved(const QString& day, int days) const {
  const auto number = weavelog::day_from(day.trimmed().toStdString());
  const auto later = number ? weavelog::date_text(*number + days) : today();
  return weavelog::is_iso_date(later) ? qtext(later) : day;
}

bool EventModel::make(const QVariantMap& form, bool takesLeft) {
  if (!wrong(form).isEmpty()) return false;
  auto& work = device_.work();
  const auto info = infoFrom(form);
  auto draft = weavelog::new_event(work.ledger().create_book_id(), info, work.now());
  if (draft)
    if (const std::string who = typed(form, "who"); !who.empty()) {
      // Promises are reckoned for who strings: without anybody on the team there would be none.
      weavelog::TeamMember member;
      member.name = who;
      member.role = weavelog::TeamRole::stringer;
      (void)weavelog::put_new(*draft, member, work.now());
    }
  // Nothing is said: what would be taken back with one tap is where the next racket goes.
  if (!work.commit(draft, {})) return false;
  device_.chooseEvent(draft->book());
  if (takesLeft) {
    const auto drafts = weavelog::take_into_event(work.ledger(), draft->book(), weavelog::rackets_without_event(work.ledger()));
    if (!drafts) {
      work.tell(drafts.error());
    } else {
      for (const auto& one : *drafts)
        if (!work.commit(one, {})) break;  // failed() has told why; the others stay as they were
    }
  }
  readLeft();
  refresh();
  emit made();
  return true;
}

bool EventModel::change(const QVariantMap& form, const QString& say) {
  if (!wrong(form, true).isEmpty()) return false;
  auto& work = device_.work();
  const auto record = weavelog::load_event(work.ledger(), work.event());
  if (!record) return work.commit(weavelog::fail(record.error()), {});
  auto wanted = infoFrom(form);
  wanted.keep_days = record->event.now.keep_days;
  const auto draft = weavelog::change_event(*record, wanted);
  if (draft && draft->empty()) return true;
  if (!work.commit(draft, say)) return false;
  return true;
}

void EventModel::show(const QString& event) {
  const auto book = idFrom<weavelog::BookId>(event);
  if (book && book != device_.work().event() && device_.ledger().book(book)) device_.chooseEvent(book);
}

void EventModel::showHosts() {
  if (const auto theirs = device_.hostsEvent(); theirs && theirs != device_.work().event() && device_.ledger().book(theirs)) device_.chooseEvent(theirs);
}
