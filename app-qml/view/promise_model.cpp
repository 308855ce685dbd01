#include "app-qml/view/promise_model.h"

#include <QQmlEngine>

#include "app-qml/view/app_device.h"
#include "app-qml/view/desk_model.h"
#include "app-qml/view/provided.h"

PromiseModel::PromiseModel(Work& work, DropOffDraft& draft, QObject* parent) : PromiseAnswer(work, parent), draft_(draft) {
  connect(&draft_, &DropOffDraft::edited, this, &PromiseModel::ask);
}

PromiseModel* PromiseModel::create(QQmlEngine* engine, QJSEngine*) {
  return new PromiseModel(provided<AppDevice>(engine)->work(), *provided<DeskModel>(engine)->draft());  // the engine takes it over
}

PromiseAnswer::Asked PromiseModel::asked() const {
  Asked out;
  for (auto& one : draft_.asked()) out.rackets.push_back({std::move(one.agreed), std::move(one.pattern)});
  out.rush = static_cast<weavelog::Rush>(draft_.rush());
  out.wish = draft_.readyAt();
  return out;
}
