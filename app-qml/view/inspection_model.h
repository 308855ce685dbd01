#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QPointF>
#include <QVariant>

#include <optional>

#include "app-qml/view/frame_places.h"
#include "app-qml/view/work.h"
#include "core/desk/cautions.h"
#include "core/desk/inspection.h"

class QQmlEngine;
class QJSEngine;

// One racket's frame under inspection: what was found on it, here and earlier, what is noted next, and the player's answers.
class InspectionModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  Q_PROPERTY(bool hasJob READ hasJob NOTIFY changed)
  Q_PROPERTY(QString player READ player NOTIFY changed)
  // "2, Maker Model"; "" for a racket that nothing is known of.
  Q_PROPERTY(QString racket READ racket NOTIFY changed)
  Q_PROPERTY(QString tag READ tag NOTIFY changed)
  Q_PROPERTY(int stage READ stage NOTIFY changed)
  // The language of the screens that the player reads first.
  Q_PROPERTY(QString language READ language NOTIFY changed)
  // New findings can be noted: the racket is neither past its inspection nor in two places.
  Q_PROPERTY(bool open READ isOpen NOTIFY changed)
  // Nothing was found for this job and it is not inspected yet: one tap can say so.
  Q_PROPERTY(bool canBeSound READ canBeSound NOTIFY changed)
  // [{id, number, text, detail, part, minutes, asks, proposal, answer, answered, hold, overridden, earlier}]: open findings in the order in
  // which they were made; hold as weavelog::FrameHold, of this job's findings only.
  Q_PROPERTY(QVariantList findings READ findings NOTIFY findingsChanged)
  // [{text, detail}]: those that were put right, newest first.
  Q_PROPERTY(QVariantList history READ history NOTIFY findingsChanged)
  // How many findings of this job hold it back.
  Q_PROPERTY(int holding READ holding NOTIFY changed)
  // The caution about cracked frames where it applies, until it was read for this job; otherwise "".
  Q_PROPERTY(QString caution READ caution NOTIFY changed)
  // What is asked about since ask(), whatever racket is under inspection by now: {player, meanwhile}; meanwhile: how it was answered elsewhere
  // since, in words, "" while it was not.
  Q_PROPERTY(QVariantMap asking READ asking NOTIFY askingChanged)

  // What is noted next.
  Q_PROPERTY(int part READ part NOTIFY formChanged)
  Q_PROPERTY(int minutes READ minutes NOTIFY formChanged)
  // Index in places; -1 for none.
  Q_PROPERTY(int place READ place WRITE setPlace NOTIFY formChanged)
  Q_PROPERTY(int fault READ fault WRITE setFault NOTIFY formChanged)
  // -1: not chosen yet; 0: only noted.
  Q_PROPERTY(int proposal READ proposal WRITE setProposal NOTIFY formChanged)
  Q_PROPERTY(QString note READ note WRITE setNote NOTIFY formChanged)
  // Something of it was said.
  Q_PROPERTY(bool begun READ isBegun NOTIFY formChanged)
  Q_PROPERTY(Missing missing READ missing NOTIFY formChanged)
  // "crack at 2 o'clock", as far as it was said.
  Q_PROPERTY(QString summary READ summary NOTIFY formChanged)

  // [{value, text}], in the language of the screens.
  Q_PROPERTY(QVariantList places READ places NOTIFY wordsChanged)
  Q_PROPERTY(QVariantList faults READ faults NOTIFY wordsChanged)
  Q_PROPERTY(QVariantList remedies READ remedies NOTIFY wordsChanged)

 public:
  enum class Missing { Nothing, Place, Fault, Note, Proposal };
  Q_ENUM(Missing)

  explicit InspectionModel(Work& work, QObject* parent = nullptr);
  // Works on the engine's device, which must be open.
  static InspectionModel* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] bool hasJob() const { return hasJob_; }
  [[nodiscard]] QString player() const { return player_; }
  [[nodiscard]] QString racket() const { return racket_; }
  [[nodiscard]] QString tag() const { return tag_; }
  [[nodiscard]] int stage() const { return static_cast<int>(stage_); }
  [[nodiscard]] QString language() const { return language_; }
  [[nodiscard]] bool isOpen() const { return open_; }
  [[nodiscard]] bool canBeSound() const { return canBeSound_; }
  [[nodiscard]] QVariantList findings() const { return findings_; }
  [[nodiscard]] QVariantList history() const { return history_; }
  [[nodiscard]] int holding() const { return holding_; }
  [[nodiscard]] QString caution() const { return caution_; }
  [[nodiscard]] QVariantMap asking() const { return askingShown_; }
  [[nodiscard]] int part() const { return static_cast<int>(place_.part); }
  [[nodiscard]] int minutes() const { return place_.minutes; }
  [[nodiscard]] int place() const;
  void setPlace(int index);
  [[nodiscard]] int fault() const { return static_cast<int>(fault_); }
  void setFault(int fault);
  [[nodiscard]] int proposal() const { return proposal_; }
  void setProposal(int proposal);
  [[nodiscard]] QString note() const { return note_; }
  void setNote(const QString& note);
  [[nodiscard]] bool isBegun() const;
  [[nodiscard]] Missing missing() const;
  [[nodiscard]] QString summary() const;
  [[nodiscard]] QVariantList places() const { return places_; }
  [[nodiscard]] QVariantList faults() const { return faults_; }
  [[nodiscard]] QVariantList remedies() const { return remedies_; }

  // Takes a racket under inspection; asked() follows if it is here.
  Q_INVOKABLE void show(const QString& book, const QString& job);
  // The same for the first racket in the room whose player's name begins so.
  Q_INVOKABLE void showFirst(const QString& name);
  // Throws away what was not noted yet.
  Q_INVOKABLE void clearForm();
  // A tap on the drawing, in its units (frame_places.h). In the middle of the strings it changes nothing.
  Q_INVOKABLE void tap(double x, double y);
  // One place on or back, as the arrow keys do it.
  Q_INVOKABLE void stepPlace(int by);
  // Where a mark is drawn, in the drawing's units.
  Q_INVOKABLE QPointF pointOf(int part, int minutes, double inside = 0) const;
  // The caution was read.
  Q_INVOKABLE void cautionRead();

  // Somebody is asked about a finding of the racket under inspection: answer() and letGoOn() are about that one, as it stands now, and write
  // nothing over what was said of it elsewhere since. False: there is no such finding.
  Q_INVOKABLE bool ask(const QString& finding);

  // Each is one action. False: nothing was written. `say` is what the toast says.
  Q_INVOKABLE bool noteFinding(const QString& say);
  Q_INVOKABLE bool sound(const QString& say);
  Q_INVOKABLE bool answer(const QString& finding, int remedy, const QString& saidBy, const QString& takenBy, const QString& say);
  Q_INVOKABLE bool letGoOn(const QString& finding, const QString& by, const QString& reason, const QString& say);
  Q_INVOKABLE bool mend(const QString& finding, const QString& by, const QString& say);

  // What the player is shown: {title, question, caution, choose, who, later, yes, remedies: [{value, text}]}; empty for no such finding.
  Q_INVOKABLE QVariantMap question(const QString& finding, const QString& language) const;
  // Open findings of a job's racket, in words, for whoever is about to string it: [{text, detail}].
  Q_INVOKABLE QVariantList findingsOn(const QString& book, const QString& job) const;

 signals:
  void changed();
  // Only where they are others: whoever reads or answers one is not disturbed by the clock.
  void findingsChanged();
  void askingChanged();
  void formChanged();
  void wordsChanged();
  // A racket was taken under inspection: show it.
  void asked();

 private:
  struct Asking {
    weavelog::BookId book;
    weavelog::EntityId finding;
    weavelog::EntityState seen;
  };

  void refresh();
  void followAsking();
  // What is asked about was answered elsewhere since; failed() has told how.
  [[nodiscard]] bool answeredMeanwhile();
  void speak();
  void describe(const weavelog::PlayerRecord& record, const weavelog::Loaded<weavelog::Job>& job);
  [[nodiscard]] QVariantMap row(const weavelog::PlayerRecord& record, const weavelog::Loaded<weavelog::FrameFinding>& finding) const;
  [[nodiscard]] QString detailOf(const weavelog::PlayerRecord& record, const weavelog::FrameFinding& finding) const;
  [[nodiscard]] weavelog::FoundOnFrame found() const;
  // The book that a finding is in: that of what is asked about, else of what is under inspection.
  [[nodiscard]] weavelog::BookId bookOfFinding(const weavelog::EntityId& finding) const;
  // Writes what `make` makes of a player's book as it is now.
  template <class Make>
  bool commit(const weavelog::BookId& book, Make make, const QString& say);
  // The same of what is said about a finding.
  template <class Make>
  bool commitSaid(const QString& finding, Make make, const QString& say);

  Work& work_;
  weavelog::BookId book_;
  weavelog::EntityId job_;
  bool hasJob_ = false, open_ = false, canBeSound_ = false;
  QString player_, racket_, tag_, language_, caution_;
  weavelog::Stage stage_ = weavelog::Stage::none;
  QVariantList findings_, history_;
  int holding_ = 0;
  bool doubted_ = false;
  std::optional<Asking> asking_;
  QVariantMap askingShown_;
  weavelog::CautionsShown shown_;  // by job

  FramePlace place_;
  weavelog::FrameFault fault_ = weavelog::FrameFault::unsaid;
  int proposal_ = -1;
  QString note_;

  weavelog::Language spoken_;
  QVariantList places_, faults_, remedies_;
};
