#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariant>

#include "app-qml/view/bench_work.h"
#include "app-qml/view/machine_choice.h"
#include "app-qml/view/stage_column.h"
#include "core/desk/cautions.h"
#include "core/desk/player_record.h"

class QQmlEngine;
class QJSEngine;

// The racket on the bench: the one this person has begun, otherwise the next one that a bench should take up;
// what is agreed about it, what differs from the player's last one, what to beware of, and its next step.
//
// What a person looks at is never exchanged for another racket: where it went elsewhere, that is said, and it stays until a tap.
class BenchModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  Q_PROPERTY(bool hasJob READ hasJob NOTIFY changed)
  Q_PROPERTY(QString book READ book NOTIFY changed)
  Q_PROPERTY(QString job READ job NOTIFY changed)
  Q_PROPERTY(QString player READ player NOTIFY changed)
  // "Racket 2, Maker Model"
  Q_PROPERTY(QString racket READ racket NOTIFY changed)
  Q_PROPERTY(QString racketModel READ racketModel NOTIFY changed)
  Q_PROPERTY(QString tag READ tag NOTIFY changed)
  Q_PROPERTY(QString readyBy READ readyBy NOTIFY changed)
  // As JobCard::Due.
  Q_PROPERTY(int due READ due NOTIFY changed)
  Q_PROPERTY(int rush READ rush NOTIFY changed)
  Q_PROPERTY(int stage READ stage NOTIFY changed)
  // Somebody looks at the bench. While nobody does, a racket that nobody chose or began makes room for a more urgent one.
  Q_PROPERTY(bool onScreen READ onScreen WRITE setOnScreen NOTIFY onScreenChanged)
  // Where the racket went that lay here: {how: Away, tag, player, by, stage}; empty while it lies here. It has no step then.
  Q_PROPERTY(QVariantMap away READ away NOTIFY changed)
  // The stage that one tap takes the racket to: cut out, on the machine, strung; none where the bench has no
  // step.
  Q_PROPERTY(int nextStage READ nextStage NOTIFY changed)
  // Figures as text with a point, and their units; "" for what is not said.
  Q_PROPERTY(QString mains READ mains NOTIFY changed)
  Q_PROPERTY(QString mainsUnit READ mainsUnit NOTIFY changed)
  Q_PROPERTY(QString crosses READ crosses NOTIFY changed)
  Q_PROPERTY(QString crossesUnit READ crossesUnit NOTIFY changed)
  // "25 / 24 kg".
  Q_PROPERTY(QString tension READ tension NOTIFY changed)
  // What is strung at these tensions, and its gauge, "1.25 mm"; "" for what is not said.
  Q_PROPERTY(QString mainsString READ mainsString NOTIFY changed)
  Q_PROPERTY(QString mainsGauge READ mainsGauge NOTIFY changed)
  Q_PROPERTY(QString crossesString READ crossesString NOTIFY changed)
  Q_PROPERTY(QString crossesGauge READ crossesGauge NOTIFY changed)
  // [{label, oldValue, newValue, changed}]: everything said but the note; tensions only where they changed.
  Q_PROPERTY(QVariantList lines READ lines NOTIFY changed)
  // When and where the player's last job was, "" if this is the first.
  Q_PROPERTY(QString comparedWith READ comparedWith NOTIFY changed)
  Q_PROPERTY(QString note READ note NOTIFY changed)
  // Texts of the cautions before the next step, each once a racket.
  Q_PROPERTY(QStringList cautions READ cautions NOTIFY changed)
  // Fields with two answers, by name: to be asked about before anything is strung.
  Q_PROPERTY(QStringList openFields READ openFields NOTIFY changed)
  // Reasons that were written beside stages of this racket, newest first.
  Q_PROPERTY(QStringList reasons READ reasons NOTIFY changed)
  // What is done with it here.
  Q_PROPERTY(BenchWork* work READ work CONSTANT)
  // On which machine it goes, or is.
  Q_PROPERTY(MachineChoice* machine READ machine CONSTANT)
  // What may be taken up, the next one first.
  Q_PROPERTY(QAbstractItemModel* queue READ queue CONSTANT)
  Q_PROPERTY(int waiting READ waiting NOTIFY changed)
  // An on-court rush that waits while another racket lies on the bench: {player, tag, book, job}; otherwise
  // empty.
  Q_PROPERTY(QVariantMap onCourt READ onCourt NOTIFY changed)

 public:
  // How a racket left: another bench took it on, two did while apart, it is strung or further, it waits for its player's answer, it was
  // put aside, collected, its drop-off was taken back, its player's book was forgotten.
  enum class Away { Here, Taken, TwoTook, MovedOn, Waits, PutAside, Collected, TakenBack, Forgotten };
  Q_ENUM(Away)

  explicit BenchModel(Work& work, QObject* parent = nullptr);
  // Works on the engine's device, which must be open.
  static BenchModel* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] bool hasJob() const { return card_.has_value(); }
  [[nodiscard]] QString book() const;
  [[nodiscard]] QString job() const;
  [[nodiscard]] QString player() const { return card_ ? playerOf(card_->row) : QString(); }
  [[nodiscard]] QString racket() const;
  [[nodiscard]] QString racketModel() const;
  [[nodiscard]] QString tag() const;
  [[nodiscard]] QString readyBy() const { return card_ ? card_->readyBy : QString(); }
  [[nodiscard]] int due() const { return card_ ? static_cast<int>(card_->due) : 0; }
  [[nodiscard]] int rush() const { return card_ ? static_cast<int>(card_->row.rush) : 0; }
  [[nodiscard]] int stage() const { return card_ ? static_cast<int>(card_->row.stage) : 0; }
  [[nodiscard]] int nextStage() const { return static_cast<int>(next_); }
  [[nodiscard]] QString mains() const { return amount(agreed_.mains_tension); }
  [[nodiscard]] QString mainsUnit() const { return unit(agreed_.mains_tension); }
  [[nodiscard]] QString crosses() const { return amount(agreed_.crosses_tension); }
  [[nodiscard]] QString crossesUnit() const { return unit(agreed_.crosses_tension); }
  [[nodiscard]] bool onScreen() const { return onScreen_; }
  void setOnScreen(bool onScreen);
  [[nodiscard]] QVariantMap away() const { return away_; }
  [[nodiscard]] QString tension() const;
  [[nodiscard]] QString mainsString() const { return QString::fromStdString(agreed_.mains_string); }
  [[nodiscard]] QString mainsGauge() const;
  [[nodiscard]] QString crossesString() const { return QString::fromStdString(agreed_.crosses_string); }
  [[nodiscard]] QString crossesGauge() const;
  [[nodiscard]] QVariantList lines() const { return lines_; }
  [[nodiscard]] QString comparedWith() const { return comparedWith_; }
  [[nodiscard]] QString note() const { return QString::fromStdString(agreed_.note); }
  [[nodiscard]] QStringList cautions() const { return cautions_; }
  [[nodiscard]] QStringList openFields() const { return openFields_; }
  [[nodiscard]] QStringList reasons() const { return reasons_; }
  [[nodiscard]] BenchWork* work() { return &doing_; }
  [[nodiscard]] MachineChoice* machine() { return &machine_; }
  [[nodiscard]] QAbstractItemModel* queue() { return &queue_; }
  [[nodiscard]] int waiting() const { return queue_.count(); }
  [[nodiscard]] QVariantMap onCourt() const { return onCourt_; }

  // Instead of the racket that went away, the one that comes next.
  Q_INVOKABLE void next();
  // Puts a racket on the bench; it stays there until it is strung, or another is chosen.
  Q_INVOKABLE void choose(const QString& book, const QString& job);
  // The next step. `say` is what the toast says. False: nothing was written.
  Q_INVOKABLE bool step(const QString& say);

 signals:
  void changed();
  void onScreenChanged();

 private:
  struct Place {
    weavelog::BookId book;
    weavelog::EntityId job;
  };

  struct Stood {
    weavelog::Stage stage = weavelog::Stage::none;
    std::string by;
    std::optional<std::int64_t> at;
    bool operator==(const Stood&) const = default;
  };

  // What lies here, and how it stood when it was seen last: what is different then was done by somebody else.
  struct Lying {
    Place place;
    bool chosen = false;  // or begun here
    weavelog::Stage stage = weavelog::Stage::none;
    std::string by;
    QString tag, player;
    // Where it stood before that, newest last: a step that is taken back here leads there, and is nobody else's.
    std::vector<Stood> before;
  };
  struct Left {
    Place place;
    std::optional<std::int64_t> mountedAt;
  };

  void refresh();
  // What lies on the bench: still the same, or the one begun here, or the next.
  [[nodiscard]] std::optional<weavelog::JobRow> pick();
  // The same where nothing lies there; never `without`.
  [[nodiscard]] std::optional<weavelog::JobRow> takeUp(const weavelog::EntityId& without);
  void lay(const weavelog::JobRow& row, bool chosen);
  // The strung racket is on the machine again, because that step was taken back.
  [[nodiscard]] std::optional<weavelog::JobRow> backOnMachine();
  [[nodiscard]] Away awayFrom(const std::optional<weavelog::JobRow>& row) const;
  void tellAway(Away how, const std::optional<weavelog::JobRow>& row);
  void describe(const weavelog::PlayerRecord& record);
  void compareWithLast(const weavelog::PlayerRecord& record, const weavelog::Job& job);
  [[nodiscard]] static QString amount(const std::optional<weavelog::Quantity>& quantity);
  [[nodiscard]] static QString unit(const std::optional<weavelog::Quantity>& quantity);

  Work& work_;
  BenchWork doing_;
  MachineChoice machine_;
  StageColumn queue_;
  bool onScreen_ = false;
  std::optional<Lying> lying_;
  std::optional<Left> left_;  // strung last
  std::optional<JobCard> card_;
  QVariantMap away_;
  weavelog::Agreed agreed_;
  weavelog::Stage next_ = weavelog::Stage::none;
  QVariantList lines_;
  QString comparedWith_;
  QStringList cautions_, openFields_, reasons_;
  QVariantMap onCourt_;
  std::vector<weavelog::Caution> due_;  // those behind cautions_
  weavelog::CautionsShown shown_;       // on this bench, by job
};
