#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QTimer>
#include <QVariant>

#include <optional>

#include "app-qml/view/drop_off_shelf.h"
#include "app-qml/view/drop_off_state.h"
#include "app-qml/view/work.h"
#include "core/desk/player_record.h"
#include "core/people/person_facts.h"

// A drop-off in the making: whose rackets, which of them, what is asked for each, by when. Every answer is on
// disk within a moment, so a kill loses nothing; what is left unfinished is listed until it is stored or
// thrown away.
class DropOffDraft : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("Made by the app")
  Q_PROPERTY(bool begun READ begun NOTIFY edited)
  Q_PROPERTY(bool fresh READ fresh NOTIFY edited)      // the player is new here
  Q_PROPERTY(bool asWhole READ asWhole NOTIFY edited)  // every question is asked
  Q_PROPERTY(QString player READ player NOTIFY edited)
  // Every field of a new player, by its name in the registry.
  Q_PROPERTY(QVariant person READ person NOTIFY edited)
  // [{label, model, picked, stage, made, mains, crosses}], stage >= 0: in the room already, cannot be picked
  Q_PROPERTY(QVariantList rackets READ rackets NOTIFY edited)
  Q_PROPERTY(int pickedCount READ pickedCount NOTIFY edited)
  // Index of the racket that the questions are for; -1: all that are picked.
  Q_PROPERTY(int scope READ scope WRITE setScope NOTIFY edited)
  // What is asked for within the scope, by field; "" or 0 where nothing is said or the rackets differ (then
  // the field is among `differing`).
  Q_PROPERTY(QVariant wish READ wish NOTIFY edited)
  Q_PROPERTY(QVariant units READ units NOTIFY edited)
  Q_PROPERTY(QStringList differing READ differing NOTIFY edited)
  // What they have there: field -> "24 kg, 25 kg".
  Q_PROPERTY(QVariant apart READ apart NOTIFY edited)
  // Rackets of the scope by their tensions (see tensionGroups()).
  Q_PROPERTY(QVariantList groups READ groups NOTIFY edited)
  // [{label, before, after}]: what is not as last time.
  Q_PROPERTY(QVariantList changes READ changes NOTIFY edited)
  // field -> {what, toDo, refused}; what is missing only once somebody wanted to read back.
  Q_PROPERTY(QVariant findings READ findings NOTIFY edited)
  // What two people answered differently, on what the picked rackets go by (see listedQuestions()): nothing is read back before the player has
  // chosen, and the yes to the read-back closes it for everybody.
  Q_PROPERTY(QVariantList questions READ questions NOTIFY edited)
  // Names of the fields within the scope that are in question: they say nothing and take nothing until then.
  Q_PROPERTY(QStringList openFields READ openFields NOTIFY edited)
  // [{rackets, text, written}]: what has to be said about the rackets that are handed over (cautionsOf).
  Q_PROPERTY(QVariantList cautions READ cautions NOTIFY edited)
  // Questions that stringing waits for and that are not answered yet, as words.
  Q_PROPERTY(QStringList stillNeeded READ stillNeeded NOTIFY edited)
  Q_PROPERTY(QString readyBy READ readyBy NOTIFY edited)  // "14:30"; "" for none
  Q_PROPERTY(QString readyDay READ readyDay NOTIFY edited)
  Q_PROPERTY(int rush READ rush NOTIFY edited)
  Q_PROPERTY(QVariant dropOff READ dropOff NOTIFY edited)
  // The text for the turned screen in `language`, exactly as it is stored.
  Q_PROPERTY(QString readBack READ readBack NOTIFY edited)
  // {yes, no}: what the player can answer, in the same language.
  Q_PROPERTY(QVariant answers READ answers NOTIFY edited)
  // The player has not answered yet where their setups may go: asked on the turned screen.
  Q_PROPERTY(bool consentOpen READ consentOpen NOTIFY edited)
  // It is asked before the read-back: where everything is asked, until it is answered or put off. "Same as
  // last time" has no question in its way.
  Q_PROPERTY(bool consentFirst READ consentFirst NOTIFY edited)
  // The answer (the numbers of ConsentChoice), 0: none yet. Stored when the read-back is confirmed.
  Q_PROPERTY(int consent READ consent NOTIFY edited)
  // Question and answers in the language of the read-back (see consentWords()).
  Q_PROPERTY(QVariant consentWords READ consentWords NOTIFY edited)
  Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY edited)
  // [{id, player, rackets, day}], newest first.
  Q_PROPERTY(QVariantList unfinished READ unfinished NOTIFY unfinishedChanged)
  // After storing: [{tag, racket}], in the order of the drop-off.
  Q_PROPERTY(QVariantList tags READ tags NOTIFY edited)

 public:
  explicit DropOffDraft(Work& work, QObject* parent = nullptr);
  ~DropOffDraft() override;

  // Begins one for a known player: with what was last time, or with every question open. False: no such
  // player.
  bool begin(const weavelog::BookId& player, bool asWhole);
  // Begins one for somebody new.
  void beginNew(const weavelog::Person& person, const weavelog::EntityId& entry, const QString& tensionUnit);
  // Goes on with one that was left unfinished.
  Q_INVOKABLE bool resume(const QString& id);
  Q_INVOKABLE void discard(const QString& id);
  // Leaves it unfinished.
  void leave();

  Q_INVOKABLE void pick(int racket, bool picked);
  Q_INVOKABLE void addRacket();
  Q_INVOKABLE void removeRacket(int racket);
  Q_INVOKABLE void setRacket(int racket, const QString& field, const QVariant& value);
  Q_INVOKABLE void setPerson(const QString& field, const QVariant& value);
  // What is emptied again where the rackets differed leaves each of them as it was.
  Q_INVOKABLE void set(const QString& field, const QVariant& value);
  // A figure one step up or down for each racket that has one, from where it is (see Figures::stepped()).
  Q_INVOKABLE void stepEach(const QString& field, const QString& by, const QString& least, const QString& most);
  // What was typed into a field can't stand and was not taken; "": it can again. Nothing is read back while there is one.
  Q_INVOKABLE void mistyped(const QString& field, const QString& text);
  // Where the first step of a figure goes that is not said yet: the middle of what is usual in its unit.
  Q_INVOKABLE QString usualFirst(const QString& field) const;
  // The unit of a tension; the digits stay as they were said.
  Q_INVOKABLE void setUnit(const QString& field, const QString& unit);
  // "mains" or "crosses" by so much in the unit in which it is said: "-1".
  Q_INVOKABLE void adjust(const QString& part, const QString& by);
  // The first `each` of the picked rackets as the first one is, the next ones by so much more, and so on: "first two at 25, the next
  // two at 25.5". Mains and crosses alike, each in its own unit.
  Q_INVOKABLE void spread(int each, const QString& by);
  // What the setup of a group is kept as: "day"; "": as before it was named.
  Q_INVOKABLE void nameGroup(int group, const QString& name);
  // Steps that a person usually asks for, in the unit of that part: "-1", "-0.5", "0.5", "1".
  Q_INVOKABLE QStringList steps(const QString& part) const;
  // The crosses as the mains.
  Q_INVOKABLE void sameForCrosses();
  Q_INVOKABLE void askAll();
  // Chooses an answer to one of `questions`, from 0. False: there is none such.
  Q_INVOKABLE bool settle(int question, int answer);
  // Chooses another one; `unit` is one of its units, or empty. "", or what is wrong with it, and then nothing is chosen.
  Q_INVOKABLE QString settleOtherwise(int question, const QString& text, const QString& unit);
  Q_INVOKABLE void setDropOff(const QString& field, const QVariant& value);
  // Ready so many minutes from now, to the next quarter of an hour.
  Q_INVOKABLE void readyIn(int minutes);
  Q_INVOKABLE void moveReady(int minutes);
  Q_INVOKABLE void noReadyTime();
  // 0: the player wants to be asked later.
  Q_INVOKABLE void answerConsent(int choice);
  // True if it can be read back; otherwise findings say what is in the way.
  bool prepareReadBack();
  // Which page of the questions holds what is in the way: 0 player and rackets, 1 strings, 2 tensions, 3 finish; -1:
  // none.
  [[nodiscard]] int troublePart() const;
  // Once that page is shown: fieldFirst() leads to the field.
  void pointAtTrouble();
  // Stores what was confirmed: `shown` is the text that was on the screen. An empty one stores without a
  // confirmation, and without the consent. False: failed() of the work has told why.
  bool store(const QString& shown);

  [[nodiscard]] bool begun() const { return state_.has_value(); }
  [[nodiscard]] bool fresh() const { return state_ && state_->fresh; }
  [[nodiscard]] bool asWhole() const { return state_ && state_->asWhole; }
  [[nodiscard]] QString player() const;
  [[nodiscard]] QVariantMap person() const;
  [[nodiscard]] QVariantList rackets() const;
  [[nodiscard]] int pickedCount() const;
  [[nodiscard]] int scope() const { return scope_; }
  void setScope(int scope);
  [[nodiscard]] QVariantMap wish() const;
  [[nodiscard]] QVariantMap units() const;
  [[nodiscard]] QStringList differing() const;
  [[nodiscard]] QVariantMap apart() const;
  [[nodiscard]] QVariantList groups() const;
  [[nodiscard]] QVariantList changes() const;
  [[nodiscard]] QVariantList questions() const;
  [[nodiscard]] QStringList openFields() const;
  [[nodiscard]] QVariantMap findings() const;
  [[nodiscard]] QVariantList cautions() const;
  [[nodiscard]] QStringList stillNeeded() const;
  [[nodiscard]] QString readyBy() const;
  [[nodiscard]] QString readyDay() const;
  [[nodiscard]] int rush() const;
  [[nodiscard]] QVariantMap dropOff() const;
  [[nodiscard]] QString readBack() const;
  [[nodiscard]] QVariantMap answers() const;
  [[nodiscard]] bool consentOpen() const;
  [[nodiscard]] bool consentFirst() const;
  [[nodiscard]] int consent() const;
  [[nodiscard]] QVariantMap consentWords() const;
  [[nodiscard]] QString language() const;
  void setLanguage(const QString& language);
  [[nodiscard]] QVariantList unfinished() const { return shelf_.listed(); }
  [[nodiscard]] QVariantList tags() const { return tags_; }
  // What is asked for the rackets that are picked, and their patterns as far as they are known.
  struct Asked {
    weavelog::Agreed agreed;
    std::string pattern;
  };
  [[nodiscard]] std::vector<Asked> asked() const;
  [[nodiscard]] std::optional<weavelog::UnixMs> readyAt() const;
  void readyAt(weavelog::UnixMs at);
  // The book of the drop-off that is in the making.
  [[nodiscard]] weavelog::BookId book() const;
  // Of the drop-off itself; "" while there is none.
  [[nodiscard]] QString id() const { return state_ ? state_->id : QString(); }
  // Of the entry list that a new player came from; none otherwise.
  [[nodiscard]] weavelog::EntityId entry() const { return state_ && state_->fresh ? state_->entry : weavelog::EntityId{}; }
  // All that was written down of a new player; none while there is none.
  [[nodiscard]] std::optional<weavelog::PersonFacts> newcomer() const;
  // Nothing was said yet but who a new player is.
  [[nodiscard]] bool saysNothing() const;
  // The new player is one who is known: what was said of rackets and strings stays.
  void turnInto(const weavelog::BookId& player);

 signals:
  void edited();
  void unfinishedChanged();
  void stored();
  // A field was to be changed that is in question.
  void questionFirst();
  // What stands in this field can't stand: the one to look at before the read-back.
  void fieldFirst(const QString& field);

 private:
  using Line = DropOffState::Line;

  void start(DropOffState state);
  void readRecord();
  void readTags();
  void goOn(DropOffState state);
  void touch();
  void keep();
  [[nodiscard]] std::vector<Line*> inScope();
  [[nodiscard]] std::vector<const Line*> inScope() const;
  // One of these is in question; questionFirst() has said so.
  bool askedFirst(const QStringList& fields);
  [[nodiscard]] weavelog::Unit tensionUnit() const;
  // In which the figures of a field are said: that of the field, else the usual one.
  [[nodiscard]] weavelog::Unit unitOf(const QString& field) const;

  Work& work_;
  DropOffShelf shelf_;
  std::optional<DropOffState> state_;
  weavelog::PlayerRecord record_;
  int scope_ = -1;
  bool wanted_ = false;        // somebody wanted to read it back: what is missing is said
  bool consentLater_ = false;  // the player was asked and put it off
  weavelog::Unit newUnit_ = weavelog::Unit::kilogram_force;
  // A field in which the rackets differed before one answer for all of them was begun, and what each had.
  struct Before {
    QString field;
    std::vector<weavelog::Agreed> agreed;
  };
  std::optional<Before> before_;
  QStringList mistyped_;       // fields in which something stands that is none
  QVariantList tags_;
  weavelog::BookId untagged_;  // whose rackets of the newest drop-off wait for an event
  QTimer keepSoon_;
};
