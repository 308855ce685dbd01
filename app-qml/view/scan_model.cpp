#include "app-qml/view/scan_model.h"

#include <QGuiApplication>
#include <QKeyEvent>
#include <QQmlEngine>
#include <QWindow>
#include <algorithm>

#include "app-qml/view/app_device.h"
#include "app-qml/view/job_cards.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "core/desk/player_record.h"
#include "core/desk/inspection.h"
#include "core/desk/stages.h"
#include "core/desk/tag_code.h"
#include "sync/carry/player_card.h"

namespace {

using weavelog::FaultCode;
using weavelog::Stage;

bool isEnter(const QKeyEvent& key) { return key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter; }

std::optional<std::int64_t> numberIn(const QString& text) {
  bool number = false;
  const auto value = text.trimmed().toLongLong(&number);
  return number && value > 0 ? std::optional<std::int64_t>(value) : std::nullopt;
}

}  // namespace

ScanModel::ScanModel(Work& work, QObject* parent) : QObject(parent), work_(work) {
  time_.start();
  if (qGuiApp != nullptr) qGuiApp->installEventFilter(this);
}

ScanModel::~ScanModel() = default;

ScanModel* ScanModel::create(QQmlEngine* engine, QJSEngine*) {
  return new ScanModel(provided<AppDevice>(engine)->work());  // the engine takes it over
}

bool ScanModel::eventFilter(QObject* watched, QEvent* event) {
  // A key comes to its window first and is handed on to items from there: once is enough.
  if (!watched->isWindowType()) return false;
  if (event->type() == QEvent::KeyRelease && eatEnterUp_ && isEnter(*static_cast<QKeyEvent*>(event))) {
    eatEnterUp_ = false;
    return true;
  }
  if (event->type() != QEvent::KeyPress) return false;
  const auto& key = *static_cast<QKeyEvent*>(event);
  if ((key.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier)) != 0) {
    ear_.forget();
    return false;
  }
  const qint64 now = time_.elapsed();
  if (!isEnter(key)) {
    if (key.text().isEmpty() || !key.text().front().isPrint()) return false;
    const bool before = ear_.inCard();
    const bool cards = ear_.typed(key.text(), now);
    // All but the newest of its first letters have gone where the keyboard is.
    if (cards && !before) takeOutOfField(static_cast<qsizetype>(weavelog::kCardPrefix.size()) - 1);
    return cards;
  }
  const bool card = ear_.inCard();
  const auto code = ear_.entered(now);
  if (!code) return false;
  eatEnterUp_ = true;
  if (!card) takeOutOfField(code->size());
  take(*code);
  return true;
}

void ScanModel::takeOutOfField(qsizetype length) const {
  // As many steps back as the code has characters, so that the field tells everybody that listens to it.
  QObject* field = QGuiApplication::focusObject();
  if (field == nullptr || field->metaObject()->indexOfProperty("cursorPosition") < 0) return;
  for (qsizetype i = 0; i < length; ++i) {
    QKeyEvent press(QEvent::KeyPress, Qt::Key_Backspace, Qt::NoModifier);
    QCoreApplication::sendEvent(field, &press);
  }
}

bool ScanModel::isCode(const QString& text) const { return weavelog::looks_like_tag_code(text.toStdString()); }

QString ScanModel::titleOf(const weavelog::JobRow& row) {
  return row.tag_number ? tr("Tag %1, %2").arg(QString::number(*row.tag_number), playerOf(row)) : playerOf(row);
}

QVariantMap ScanModel::rowOf(const weavelog::JobRow& row) const {
  const QString label = qtext(row.racket_label), readyBy = work_.timeText(row.ready_by);
  QStringList detail{label.isEmpty() ? QString() : tr("Racket %1").arg(label), qtext(row.racket_model),
                     readyBy.isEmpty() ? QString() : tr("By %1").arg(readyBy)};
  detail.removeAll(QString());
  return {{QStringLiteral("book"), idText(row.book)},
          {QStringLiteral("job"), idText(row.job)},
          {QStringLiteral("text"), titleOf(row)},
          {QStringLiteral("detail"), detail.join(QStringLiteral(", "))},
          {QStringLiteral("stage"), static_cast<int>(row.stage)}};
}

weavelog::Outcome<std::vector<weavelog::JobRow>> ScanModel::jobsOf(const QString& code) const {
  if (!work_.event())
    return weavelog::fail(FaultCode::not_found, tr("There is no event yet").toStdString(), {},
                          tr("Pair with an event server under Exchange, or make an event.").toStdString());
  auto number = numberIn(code);
  if (!number) {
    const auto read = weavelog::tag_number_from(code.toStdString(), work_.event());
    if (!read) {
      const auto fault = read.error().code;
      if (fault == FaultCode::refused)
        return weavelog::fail(fault, tr("This tag is of another event").toStdString(), {},
                              tr("Find the racket by its player's name.").toStdString());
      if (fault == FaultCode::malformed)
        return weavelog::fail(fault, tr("The tag was misread").toStdString(), {},
                              tr("Scan it again, or type the number that stands on it.").toStdString());
      if (isCode(code))
        return weavelog::fail(fault, tr("The scanner types for another keyboard").toStdString(), {},
                              tr("Set the scanner to the keyboard that this device is set to.").toStdString());
      return weavelog::fail(fault, tr("This is no code of a tag").toStdString(), {},
                            tr("Scan the tag, or type the number that stands on it.").toStdString());
    }
    number = *read;
  }
  auto rows = weavelog::find_jobs_by_tag(work_.ledger(), *number, work_.event());
  if (rows.empty())
    return weavelog::fail(FaultCode::not_found, tr("No racket here has tag %1").arg(*number).toStdString(), {},
                          tr("It may not have come to this device yet: look under Exchange.").toStdString());
  // A number that was given out twice means the racket that is in the room.
  const auto open = [](const weavelog::JobRow& row) { return weavelog::is_open(row.stage) || row.clash; };
  if (std::any_of(rows.begin(), rows.end(), open)) std::erase_if(rows, [&](const auto& row) { return !open(row); });
  return rows;
}

void ScanModel::take(const QString& code) {
  if (!comparing_ && weavelog::looks_like_card(code.toStdString())) return emit cardScanned(code);
  auto rows = jobsOf(code);
  if (comparing_) {
    // What said nothing is scanned again; after both, the next scan begins with another racket.
    if (!sides_.empty() && !sides_.back().row) sides_.pop_back();
    if (sides_.size() == 2) sides_.clear();
    Side side;
    if (!rows) {
      side.fault = qtext(rows.error().what);
    } else if (rows->size() > 1) {
      side.fault = tr("This number was given out twice");
    } else {
      side.row = std::move(rows->front());
    }
    sides_.push_back(std::move(side));
    emit compareChanged();
    return;
  }
  if (!rows) return work_.tell(rows.error());
  if (rows->size() == 1) return emit found(idText(rows->front().book), idText(rows->front().job));
  several_.clear();
  for (const auto& row : *rows) several_.append(rowOf(row));
  emit severalFound();
}

QVariantList ScanModel::withNumber(const QString& text) const {
  QVariantList out;
  const auto number = numberIn(text);
  if (!number || !work_.event()) return out;
  auto rows = weavelog::find_jobs_by_tag(work_.ledger(), *number, work_.event());
  std::stable_partition(rows.begin(), rows.end(), [](const auto& row) { return weavelog::is_open(row.stage); });
  for (const auto& row : rows) out.append(rowOf(row));
  return out;
}

QVariantMap ScanModel::jobOf(const QString& book, const QString& job) const {
  const auto row = weavelog::find_job(work_.ledger(), bookOf(book), entityOf(job));
  if (!row) return {};
  QVariantMap out = rowOf(*row);
  Stage next = row->clash ? Stage::none : usualStep(row->stage);
  const auto record = weavelog::load_player(work_.ledger(), row->book);
  if (record && weavelog::held_back(*record, row->job)) next = Stage::none;
  out.insert(QStringLiteral("nextStage"), static_cast<int>(next));
  return out;
}

void ScanModel::setComparing(bool comparing) {
  if (comparing == comparing_) return;
  comparing_ = comparing;
  sides_.clear();
  emit compareChanged();
}

void ScanModel::compareAgain() {
  sides_.clear();
  emit compareChanged();
}

ScanModel::Compared ScanModel::compared() const {
  if (sides_.empty()) return Compared::Nothing;
  const bool unknown = std::any_of(sides_.begin(), sides_.end(), [](const Side& side) { return !side.row; });
  if (unknown) return Compared::Unknown;
  if (sides_.size() == 1) return Compared::First;
  return sides_[0].row->job == sides_[1].row->job ? Compared::Same : Compared::Different;
}

QVariantList ScanModel::sides() const {
  QVariantList out;
  for (const auto& side : sides_) {
    QVariantMap one = side.row ? rowOf(*side.row) : QVariantMap{{QStringLiteral("text"), side.fault}, {QStringLiteral("detail"), QString()}};
    one.insert(QStringLiteral("fault"), !side.row);
    if (side.row) one.insert(QStringLiteral("player"), playerOf(*side.row));
    out.append(one);
  }
  return out;
}

QVariantMap ScanModel::both() const {
  if (compared() != Compared::Same) return {};
  return jobOf(idText(sides_.front().row->book), idText(sides_.front().row->job));
}
