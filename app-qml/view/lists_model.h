#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariant>

#include "app-qml/view/work.h"
#include "core/desk/work_list.h"

class QQmlEngine;
class QJSEngine;

// The lists by which the room works, as a person changes them: the steps at the bench, the list of the check.
class ListsModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // Which one is shown: 1 the bench's steps, 2 the check's list.
  Q_PROPERTY(int list READ list WRITE setList NOTIFY changed)
  // [{name, text, own}], in the room's order.
  Q_PROPERTY(QVariantList steps READ steps NOTIFY changed)
  // [{name, text}]: what was taken off and can be put on again.
  Q_PROPERTY(QVariantList removed READ removed NOTIFY changed)
  // As common practice has it, nothing changed.
  Q_PROPERTY(bool usual READ usual NOTIFY changed)

 public:
  explicit ListsModel(Work& work, QObject* parent = nullptr);
  // Works on the engine's device, which must be open.
  static ListsModel* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] int list() const { return static_cast<int>(list_); }
  void setList(int list);
  [[nodiscard]] QVariantList steps() const { return steps_; }
  [[nodiscard]] QVariantList removed() const { return removed_; }
  [[nodiscard]] bool usual() const { return usual_; }

  // At the end. `say` is what the toast says, with the offer to take it back. False: failed() of the work has told why.
  Q_INVOKABLE bool add(const QString& text, const QString& say);
  // In the language that the device speaks where the room has words for it, otherwise for every language. Of common practice "": its words again.
  Q_INVOKABLE bool reword(const QString& name, const QString& text, const QString& say);
  // One place up (-1) or down (1) among those that are shown; nothing is said of it.
  Q_INVOKABLE bool move(const QString& name, int by);
  Q_INVOKABLE bool remove(const QString& name, const QString& say);
  Q_INVOKABLE bool putBack(const QString& name, const QString& say);
  Q_INVOKABLE bool backToUsual(const QString& say);
  // "" or what is wrong with the words of a step, or of a new one ("").
  Q_INVOKABLE QString wrongWords(const QString& name, const QString& text) const;

 signals:
  void changed();

 private:
  void refresh();
  bool change(const QString& name, const weavelog::StepChange& change, const QString& say);
  [[nodiscard]] std::vector<weavelog::Loaded<weavelog::ListStep>> held() const;

  Work& work_;
  weavelog::WorkList list_ = weavelog::WorkList::bench;
  std::vector<weavelog::WorkStep> all_;  // those turned off too
  QVariantList steps_, removed_;
  bool usual_ = true;
};
