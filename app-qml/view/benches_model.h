#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariant>

#include <memory>

#include "app-qml/view/beside_screen.h"
#include "app-qml/view/work.h"
#include "core/desk/room_benches.h"

class QQmlEngine;
class QJSEngine;

// The home benches of today's event: who strings whom, with the load of each bench and who might meet on one.
class BenchesModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // Somebody looks at it: only then it is worked out.
  Q_PROPERTY(bool watched MEMBER watched_ WRITE setWatched NOTIFY watchedChanged)
  // No two share a bench who can meet when so many or fewer are left: 8 from the quarter-finals on; 0: they may.
  Q_PROPERTY(int apartFrom READ apartFrom NOTIFY changed)
  // What a match's chances come from: "rating", "seed", "even"; "" the best that the draw says.
  Q_PROPERTY(QString chances READ chances NOTIFY changed)
  // What a meeting on one bench costs, the final's first, as text: "16 8 4 2 1".
  Q_PROPERTY(QString weights READ weights NOTIFY changed)
  // Why there can be no plan, and what to do; "" where there can.
  Q_PROPERTY(QString fault READ fault NOTIFY changed)
  // Everybody has a bench.
  Q_PROPERTY(bool planned READ planned NOTIFY changed)
  // A plan is being worked out.
  Q_PROPERTY(bool busy READ busy NOTIFY busyChanged)
  // How good the last plan is, in a sentence; "" before the first.
  Q_PROPERTY(QString proof READ proof NOTIFY changed)
  // [{bench, name, machine, rackets (expected of all that is left, text), share (0 to 1 of the largest), people: [{person, name, pinned, meets}],
  // meetings: [{one, other (places in people), odds (0 to 1), late (it can be so late in the draw that it should not be)}]}]
  Q_PROPERTY(QVariantList benches READ benches NOTIFY changed)
  // Of those without a bench, where some have one: names.
  Q_PROPERTY(QStringList without READ without NOTIFY changed)

 public:
  explicit BenchesModel(Work& work, QObject* parent = nullptr);
  // Works on the engine's device, which must be open.
  static BenchesModel* create(QQmlEngine* engine, QJSEngine* script);

  void setWatched(bool watched);
  [[nodiscard]] int apartFrom() const { return apartFrom_; }
  // Holds for the next plan.
  Q_INVOKABLE bool keepApartFrom(int places, const QString& say);
  [[nodiscard]] QString chances() const { return chances_; }
  [[nodiscard]] QString weights() const { return weights_; }
  // Both hold for the next plan. False: failed() of the work has told why.
  Q_INVOKABLE bool setRules(const QString& chances, const QString& weights, const QString& say);
  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] bool planned() const { return choice_.has_value(); }
  [[nodiscard]] bool busy() const { return beside_.busy(); }
  [[nodiscard]] QString proof() const { return proof_; }
  [[nodiscard]] QVariantList benches() const { return benches_; }
  [[nodiscard]] QStringList without() const { return without_; }

  // Works a plan out and keeps it; `say` is what the toast says. Goes on beside the screen.
  Q_INVOKABLE void plan(const QString& say);
  // Why a player is where they are.
  Q_INVOKABLE QString why(int person) const;
  // [{bench, name, here, cost ("+2.5", "0"), allowed}]: what it costs to have that player there.
  Q_INVOKABLE QVariantList waysOf(int person) const;
  // By hand: the player stays there until the pin is taken out.
  Q_INVOKABLE bool move(int person, int bench, const QString& say);
  // [{wish, text}]: what the player wishes for.
  Q_INVOKABLE QVariantList wishesOf(int person) const;
  // Only, or never, with that bench's stringer; holds for the next plan.
  Q_INVOKABLE bool addWish(int person, bool never, int bench, const QString& say);
  Q_INVOKABLE bool dropWish(int wish, const QString& say);
  Q_INVOKABLE bool unpin(int person, const QString& say);

 signals:
  void changed();
  void watchedChanged();
  void busyChanged();

 private:
  void refresh();
  void show();
  void take(const std::shared_ptr<weavelog::RoomBenches>& room, const weavelog::Outcome<weavelog::BenchPlan>& plan, const QString& say);
  [[nodiscard]] bool knows(int person) const;
  [[nodiscard]] bool pinned(std::size_t person) const;

  Work& work_;
  bool watched_ = false;
  int apartFrom_ = 8;
  QString chances_, weights_, fault_, proof_;
  std::shared_ptr<weavelog::RoomBenches> room_;
  std::optional<weavelog::BenchChoice> choice_;
  QVariantList benches_;
  QStringList without_;
  BesideScreen beside_{*this};  // ends before what it reports to
};
