#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QTimer>
#include <QVariant>

#include <optional>
#include <utility>

#include "app-qml/view/work.h"
#include "core/desk/bench.h"
#include "core/desk/stock.h"

// The work on the racket that lies on the bench: the room's steps with those done, its time on the machine, the string that it takes, what
// was measured, how it was found.
class BenchWork : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("the bench has one")
  // [{name, text, done}], in the room's order.
  Q_PROPERTY(QVariantList steps READ steps NOTIFY changed)
  Q_PROPERTY(int stepsDone READ stepsDone NOTIFY changed)
  // On the machine since it was put there, also while the app was shut; -1: it is not on one.
  Q_PROPERTY(int seconds READ seconds NOTIFY timeChanged)
  // What it will probably take of the stock: [{part, name, amount, sets}]; part as in StockUse, amount in metres as text or sets.
  Q_PROPERTY(QVariantList suggested READ suggested NOTIFY changed)
  // What was taken for it, in the same form without the part.
  Q_PROPERTY(QVariantList taken READ taken NOTIFY changed)
  // [{text, value, detail}], newest first.
  Q_PROPERTY(QVariantList readings READ readings NOTIFY changed)
  // How often it was done again, and what the newest check said of it then.
  Q_PROPERTY(int redos READ redos NOTIFY changed)
  Q_PROPERTY(QString lastCheck READ lastCheck NOTIFY changed)

 public:
  // As weavelog::ReadingKind.
  enum class Measure { TensionHead = 1, BedStiffness = 2, Tone = 3 };
  Q_ENUM(Measure)

  explicit BenchWork(Work& work, QObject* parent = nullptr);

  [[nodiscard]] QVariantList steps() const { return steps_; }
  [[nodiscard]] int stepsDone() const { return stepsDone_; }
  [[nodiscard]] int seconds() const;
  [[nodiscard]] QVariantList suggested() const { return suggestedRows_; }
  [[nodiscard]] QVariantList taken() const { return taken_; }
  [[nodiscard]] QVariantList readings() const { return readings_; }
  [[nodiscard]] int redos() const { return redos_; }
  [[nodiscard]] QString lastCheck() const { return lastCheck_; }

  // What lies there now.
  void look(const weavelog::PlayerRecord& record, const weavelog::EntityId& job);
  void lookAtNothing();

  // A step was done, or was not after all; nothing is said of it.
  Q_INVOKABLE bool tick(const QString& name, bool done);
  // Takes what is suggested out of the stock. `say` is what the toast says.
  Q_INVOKABLE bool takeString(const QString& say);
  // A reading is entered: the next measure() is of the racket that lies there now, whatever lies there by then.
  Q_INVOKABLE void beginReading();
  // `figure` as text with a point, `unit` one of unitsOf(); `setTo`: what a tension head was set to then, in the same unit, "" if nobody said.
  Q_INVOKABLE bool measure(int what, const QString& figure, int unit, const QString& note, const QString& say, const QString& setTo = {});
  // [{value, text}]; the text of an instrument's own scale is "".
  Q_INVOKABLE static QVariantList unitsOf(int what);

 signals:
  void changed();
  void timeChanged();

 private:
  void lookAtStock(const weavelog::PlayerRecord& record);
  [[nodiscard]] QVariantMap stockRow(const weavelog::StockItem& item, std::int64_t amount) const;

  Work& work_;
  QTimer second_;
  weavelog::BookId book_;
  weavelog::EntityId job_;
  std::optional<std::pair<weavelog::BookId, weavelog::EntityId>> reading_;  // what a reading is entered of
  weavelog::BookId event_;
  std::optional<weavelog::UnixMs> since_;
  std::vector<weavelog::StockUse> suggested_;
  QVariantList steps_, suggestedRows_, taken_, readings_;
  QString lastCheck_;
  int stepsDone_ = 0, redos_ = 0;
};
