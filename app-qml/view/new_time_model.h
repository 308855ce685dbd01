#pragma once

#include "app-qml/view/promise_answer.h"
#include "core/desk/player_record.h"

class QQmlEngine;
class QJSEngine;

// Another time for rackets that are in the room: what was promised, what can be promised now, and the new one as it is agreed.
class NewTimeModel final : public PromiseAnswer {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // "Given Family".
  Q_PROPERTY(QString player READ player NOTIFY edited)
  // "12:30"; "" if none was said.
  Q_PROPERTY(QString before READ before NOTIFY edited)
  // So many rackets were promised together.
  Q_PROPERTY(int together READ together NOTIFY edited)
  // Only this one gets another time.
  Q_PROPERTY(bool onlyThis READ onlyThis WRITE setOnlyThis NOTIFY edited)
  // What is to be agreed: "13:15", and its day if it is not today; "" for none yet.
  Q_PROPERTY(QString time READ time NOTIFY edited)
  Q_PROPERTY(QString day READ day NOTIFY edited)
  // It differs from what was promised, and can be stored.
  Q_PROPERTY(bool differs READ differs NOTIFY edited)
  // All of them are on a machine: nothing is reckoned for them.
  Q_PROPERTY(bool inWork READ inWork NOTIFY edited)

 public:
  explicit NewTimeModel(Work& work, QObject* parent = nullptr);
  // Works on the engine's device, which must be open.
  static NewTimeModel* create(QQmlEngine* engine, QJSEngine* script);

  // False, and nothing shown, if the racket is in no work of the room.
  Q_INVOKABLE bool show(const QString& book, const QString& job);
  // Minutes.
  Q_INVOKABLE void move(int minutes);
  // True when it is on disk.
  Q_INVOKABLE bool agree(const QString& agreedBy, const QString& say);

  [[nodiscard]] QString player() const { return player_; }
  [[nodiscard]] QString before() const;
  [[nodiscard]] int together() const { return static_cast<int>(jobs_.size()); }
  [[nodiscard]] bool onlyThis() const { return onlyThis_; }
  void setOnlyThis(bool only);
  [[nodiscard]] QString time() const;
  [[nodiscard]] QString day() const;
  [[nodiscard]] bool differs() const { return wanted_ && wanted_ != before_; }
  [[nodiscard]] bool inWork() const;

 signals:
  void edited();

 private:
  [[nodiscard]] Asked asked() const override;
  void promiseFor(weavelog::UnixMs at) override;
  [[nodiscard]] std::vector<weavelog::EntityId> meant() const;

  weavelog::BookId book_;
  weavelog::EntityId job_;
  std::vector<weavelog::EntityId> jobs_;
  QString player_;
  std::optional<weavelog::UnixMs> before_, wanted_;
  bool onlyThis_ = false;
};
