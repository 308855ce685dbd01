#include "app-qml/view/team_model.h"

#include <QQmlEngine>

#include <algorithm>
#include <tuple>

#include "app-qml/view/app_device.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "core/base/iso_time.h"
#include "core/base/local_time.h"
#include "core/base/localised.h"
#include "core/desk/shifts.h"

namespace {

QString clockText(const Work& work, std::int64_t at) {
  return qtext(weavelog::localised(work.language(), weavelog::Moment{at, work.zone(), weavelog::Moment::Form::time_of_day}));
}

}  // namespace

TeamModel::TeamModel(Work& work, QObject* parent) : QObject(parent), work_(work) {
  connect(&work_, &Work::changed, this, &TeamModel::refresh);
  refresh();
}

TeamModel* TeamModel::create(QQmlEngine* engine, QJSEngine*) {
  return new TeamModel(provided<AppDevice>(engine)->work());  // the engine takes it over
}

void TeamModel::refresh() {
  const auto before = std::tuple(members_, shifts_, warnings_);
  members_.clear();
  shifts_.clear();
  warnings_.clear();
  const auto event = work_.event() ? weavelog::load_event(work_.ledger(), work_.event())
                                   : weavelog::fail(weavelog::FaultCode::not_found, "no event");
  if (event) {
    const auto all = weavelog::load_shifts(work_.ledger(), work_.event());
    const auto nameOf = [&](const weavelog::EntityId& id) {
      for (const auto& member : event->team)
        if (member.id() == id) return qtext(member.now.name);
      return tr("Somebody who is not on the team any more");
    };
    const auto now = work_.now();
    for (const auto& member : event->team) {
      QString until;
      for (const auto& shift : all)
        if (shift.now.member == member.id() && *shift.now.from <= now && now < *shift.now.until) until = work_.timeText(shift.now.until);
      members_.append(QVariantMap{{"id", idText(member.id())},
                                  {"name", qtext(member.now.name)},
                                  {"role", static_cast<int>(member.now.role)},
                                  {"languages", qtext(member.now.languages)},
                                  {"skills", qtext(member.now.skills)},
                                  {"here", !until.isEmpty()},
                                  {"until", until}});
    }
    const weavelog::LocalTime local(work_.zone());
    const auto today = local.day_of(now);
    for (const auto& shift : all) {
      if (local.day_of(*shift.now.until) < today) continue;
      shifts_.append(QVariantMap{{"id", idText(shift.id())},
                                 {"name", nameOf(shift.now.member)},
                                 {"day", dayText(work_.language(), shift.now.from, work_.zone())},
                                 {"from", clockText(work_, *shift.now.from)},
                                 {"until", clockText(work_, *shift.now.until)}});
    }
    for (const auto& warning : weavelog::shift_warnings(all, work_.zone())) {
      if (warning.day < today) continue;
      const auto minutes = warning.length / 60'000;
      warnings_.append(QVariantMap{{"name", nameOf(warning.member)},
                                   {"day", dayText(work_.language(), local.begin_of(warning.day), work_.zone())},
                                   {"length", tr("%1 h %2 min").arg(minutes / 60).arg(minutes % 60)},
                                   {"rest", warning.kind == weavelog::ShiftWarning::Kind::short_rest}});
    }
  }
  if (std::tuple(members_, shifts_, warnings_) != before) emit changed();
}

bool TeamModel::open(const QString& page) {
  const auto view = page.section(u':', 0, 0);
  if (!QStringList{QStringLiteral("people"), QStringLiteral("machines"), QStringLiteral("lists"), QStringLiteral("numbers"), QStringLiteral("evenness")}.contains(view)) return false;
  view_ = view;
  emit viewChanged();
  return true;
}

bool TeamModel::setMember(const QString& name, int role, const QString& languages, const QString& skills, const QString& say) {
  const auto event = weavelog::load_event(work_.ledger(), work_.event());
  if (!event) return work_.commit(weavelog::fail(event.error()), {});
  weavelog::TeamMember member;
  member.name = name.trimmed().toStdString();
  member.role = static_cast<weavelog::TeamRole>(role);
  member.languages = languages.trimmed().toStdString();
  member.skills = skills.trimmed().toStdString();
  return work_.commit(weavelog::put_team_member(*event, member, work_.now()), say);
}

std::string TeamModel::dateIn(int days) const {
  return weavelog::date_text(weavelog::LocalTime(work_.zone()).day_of(work_.now()) + days);
}

QString TeamModel::dayIn(int days) const {
  const weavelog::LocalTime local(work_.zone());
  return dayText(work_.language(), local.begin_of(local.day_of(work_.now()) + days), work_.zone());
}

bool TeamModel::addShift(const QString& member, int days, const QString& from, const QString& until, const QString& say) {
  const auto event = weavelog::load_event(work_.ledger(), work_.event());
  if (!event) return work_.commit(weavelog::fail(event.error()), {});
  const auto begins = weavelog::moment_from(dateIn(days) + "T" + from.trimmed().toStdString(), work_.zone(), work_.now());
  if (!begins) return work_.commit(weavelog::fail(begins.error()), {});
  // The next time that a clock shows that once the shift has begun.
  const auto ends = weavelog::moment_from(until.trimmed().toStdString(), work_.zone(), *begins);
  if (!ends) return work_.commit(weavelog::fail(ends.error()), {});
  return work_.commit(weavelog::add_shift(*event, {idFrom<weavelog::EntityId>(member), *begins, *ends, {}}, work_.now()), say);
}

bool TeamModel::removeShift(const QString& shift, const QString& say) {
  const auto id = idFrom<weavelog::EntityId>(shift);
  for (const auto& one : weavelog::load_shifts(work_.ledger(), work_.event()))
    if (one.id() == id) return work_.commit(weavelog::remove_shift(work_.event(), one), say);
  return false;
}

QString TeamModel::wrongTime(const QString& time) const {
  if (time.trimmed().isEmpty()) return {};
  if (time.contains(u':') && weavelog::moment_from(time.trimmed().toStdString(), work_.zone(), work_.now())) return {};
  return tr("Give a time such as 8:30.");
}
