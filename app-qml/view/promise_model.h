#pragma once

#include "app-qml/view/drop_off_draft.h"
#include "app-qml/view/promise_answer.h"

class QQmlEngine;
class QJSEngine;

// What the desk can promise for the drop-off in the making.
class PromiseModel final : public PromiseAnswer {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON

 public:
  PromiseModel(Work& work, DropOffDraft& draft, QObject* parent = nullptr);
  // Works on the engine's device, which must be open, and its desk.
  static PromiseModel* create(QQmlEngine* engine, QJSEngine* script);

 private:
  [[nodiscard]] Asked asked() const override;
  void promiseFor(weavelog::UnixMs at) override { draft_.readyAt(at); }

  DropOffDraft& draft_;
};
