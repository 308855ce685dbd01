#include "app-qml/view/work.h"

#include <QQmlEngine>
#include <QTimeZone>

#include "app-qml/view/app_device.h"
#include "app-qml/view/provided.h"
#include "core/base/localised.h"
#include "core/desk/undo.h"
#include "core/model/event.h"

namespace {

constexpr weavelog::UnixMs halfADay = 12 * 3600 * 1000;

}  // namespace

Work::Work(weavelog::Workplace& workplace, QObject* parent)
    : QObject(parent), workplace_(workplace), zone_(QTimeZone::systemTimeZoneId().toStdString()) {}

Work* Work::create(QQmlEngine* engine, QJSEngine*) {
  Work& work = provided<AppDevice>(engine)->work();
  QJSEngine::setObjectOwnership(&work, QJSEngine::CppOwnership);
  return &work;
}

void Work::setEvent(const weavelog::BookId& event) {
  std::string zone = QTimeZone::systemTimeZoneId().toStdString();
  if (event)
    for (const auto& state : ledger().entities(event, weavelog::kEvent)) {
      const auto info = weavelog::from_state<weavelog::EventInfo>(state);
      if (!info.time_zone.empty()) zone = info.time_zone;
    }
  if (event_ == event && zone_ == zone) return;
  event_ = event;
  zone_ = std::move(zone);
  emit changed();
}

void Work::setWho(const QString& who) {
  if (who_ == who) return;
  who_ = who;
  emit changed();
}

void Work::setLanguage(const QString& language) {
  const auto wanted = weavelog::Language::from(language.toStdString());
  if (!wanted || *wanted == language_) return;
  language_ = *wanted;
  emit changed();
}

QString Work::timeText(const std::optional<weavelog::UnixMs>& at) const {
  if (!at) return {};
  const auto form = std::abs(*at - now()) < halfADay ? weavelog::Moment::Form::time_of_day
                                                     : weavelog::Moment::Form::day_and_time;
  return QString::fromStdString(weavelog::localised(language_, weavelog::Moment{*at, zone_, form}));
}

bool Work::commit(const weavelog::Outcome<weavelog::Draft>& draft, const QString& say) {
  if (!draft) {
    tell(draft.error());
    return false;
  }
  const auto committed = workplace_.commit(*draft);
  if (!committed) {
    tell(committed.error());
    return false;
  }
  last_ = LastAction{draft->book(), committed->dot.seq};
  emit changed();
  if (!say.isEmpty()) emit done(say);
  return true;
}

bool Work::undo() {
  if (!last_) return false;
  const LastAction last = *last_;
  last_.reset();
  return commit(weavelog::undo(ledger(), last.book, last.seq), {});
}

void Work::tell(const weavelog::Fault& fault) {
  QString what = QString::fromStdString(fault.what);
  if (!fault.where.empty()) what = QString::fromStdString(fault.where) + QStringLiteral(": ") + what;
  emit failed(what, QString::fromStdString(fault.what_to_do));
}
