#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariant>

#include "app-qml/view/work.h"
#include "core/desk/bench.h"
#include "core/desk/machines.h"

// On which of the room's machines one racket is put, or is: the usual one until another is chosen. Of a racket that is on a machine the
// choice is stored at once; otherwise with the step that puts it there (fill()).
class MachineChoice : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("bench and board have one each")
  // [{id, name, detail, broken}], in the room's order; empty where there is nothing to choose: the room lists no machine, or the racket
  // goes to none with its next step and is on none.
  Q_PROPERTY(QVariantList machines READ machines NOTIFY changed)
  Q_PROPERTY(QString chosen READ chosen NOTIFY changed)  // "": none was said
  Q_PROPERTY(QString name READ name NOTIFY changed)      // of the chosen one
  // What speaks against the chosen one, each a sentence.
  Q_PROPERTY(QStringList doubts READ doubts NOTIFY changed)
  Q_PROPERTY(bool mounted READ mounted NOTIFY changed)

 public:
  explicit MachineChoice(Work& work, QObject* parent = nullptr);

  [[nodiscard]] QVariantList machines() const;
  [[nodiscard]] QString chosen() const;
  [[nodiscard]] QString name() const;
  [[nodiscard]] QStringList doubts() const { return doubts_; }
  [[nodiscard]] bool mounted() const { return mounted_; }

  // A racket of that record, which can go to a machine now, is on one, or neither.
  void look(const weavelog::PlayerRecord& record, const weavelog::EntityId& job, bool canMount);
  void lookAtNothing();
  // What is chosen goes into a step to a machine.
  void fill(weavelog::StageStep& step) const;

  // `say` is what the toast says where that is stored at once. False: it is not chosen.
  Q_INVOKABLE bool choose(const QString& machine, const QString& say);

 signals:
  void changed();

 private:
  [[nodiscard]] const weavelog::MachineNow* held() const;

  Work& work_;
  weavelog::BookId book_;
  weavelog::EntityId job_, chosen_, picked_;  // picked_: by a person, for this job
  weavelog::Agreed agreed_;
  QString knownName_;  // of a machine that is not listed any more
  std::vector<weavelog::MachineNow> machines_;
  QStringList doubts_;
  bool mounted_ = false;
};
