#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariant>

#include <memory>

#include "app-qml/view/beside_screen.h"
#include "app-qml/view/save_note.h"
#include "app-qml/view/work.h"
#include "core/desk/room_bed.h"

class QQmlEngine;
class QJSEngine;

// The string bed of one racket of the room: what is estimated of it now and at its match, which tension keeps its feel when something is changed,
// and what a tone says. All figures are estimates with a band in which the true one lies nine times of ten; worked out beside the screen.
class BedModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // Somebody looks at it: only then it is worked out.
  Q_PROPERTY(bool watched MEMBER watched_ WRITE setWatched NOTIFY watchedChanged)
  Q_PROPERTY(bool busy READ busy NOTIFY changed)
  Q_PROPERTY(bool ready READ ready NOTIFY changed)
  // Why nothing can be said, and what to do; "" where something can.
  Q_PROPERTY(QString fault READ fault NOTIFY changed)
  Q_PROPERTY(QString title READ title NOTIFY changed)
  // "Tarnbrook Silk 1.25 mm, 24.5 / 23.5 kg".
  Q_PROPERTY(QString strung READ strung NOTIFY changed)
  // As of BedPicture.
  Q_PROPERTY(QVariantList strings READ strings NOTIFY changed)
  Q_PROPERTY(QVariantList outline READ outline NOTIFY changed)
  // The stiffness over the bed, as BedPicture draws it: {areas, edges, spots: [[x, y, text], ...], legend: [text, ...], spoken}, lowest step first.
  Q_PROPERTY(QVariantMap map READ map NOTIFY changed)
  // What the map's figures are, with their band.
  Q_PROPERTY(QString mapNote READ mapNote NOTIFY changed)
  // [{name, now, nowBand, match, matchBand}].
  Q_PROPERTY(QVariantList figures READ figures NOTIFY changed)
  // When the match is, as far as is known.
  Q_PROPERTY(QString matchTime READ matchTime NOTIFY changed)
  // How much is data and how much model; what readings were left out.
  Q_PROPERTY(QString data READ data NOTIFY changed)
  // What had to be assumed, one line each.
  Q_PROPERTY(QStringList assumed READ assumed NOTIFY changed)
  // As of TensionLeftPicture.
  Q_PROPERTY(QVariantList curve READ curve NOTIFY changed)
  Q_PROPERTY(QVariantList curveTimes READ curveTimes NOTIFY changed)
  Q_PROPERTY(QVariantList curveParts READ curveParts NOTIFY changed)
  Q_PROPERTY(QVariantList curveMoments READ curveMoments NOTIFY changed)
  Q_PROPERTY(QString left READ left NOTIFY changed)
  // Cautions of the frame and the player's note.
  Q_PROPERTY(QStringList cautions READ cautions NOTIFY changed)
  // [{value, text}]: strings of the stock.
  Q_PROPERTY(QVariantList choices READ choices NOTIFY changed)
  // What the racket is strung with now, to begin a change from: gauge as a figure; the unit of tensions and what one step is of them.
  Q_PROPERTY(QString gauge READ gauge NOTIFY changed)
  Q_PROPERTY(QString unit READ unit NOTIFY changed)
  // The head as a figure in its unit ("cm²", or "in²" where it was said so), and how many mains and crosses.
  Q_PROPERTY(QString headSize READ headSize NOTIFY changed)
  Q_PROPERTY(QString headUnit READ headUnit NOTIFY changed)
  Q_PROPERTY(int mainsCount READ mainsCount NOTIFY changed)
  Q_PROPERTY(int crossesCount READ crossesCount NOTIFY changed)
  Q_PROPERTY(QString kiloStep READ kiloStep NOTIFY changed)
  // {set, lines, data, caution, other (it is another racket), fault}; empty until something is chosen.
  Q_PROPERTY(QVariantMap proposal READ proposal NOTIFY proposalChanged)
  // The tone in Hz that is reckoned now; 0 while nothing is.
  Q_PROPERTY(double toneNow READ toneNow NOTIFY changed)
  // {lines, fault}; empty until a tone was typed.
  Q_PROPERTY(QVariantMap heard READ heard NOTIFY heardChanged)

  // What became of the last file that was saved; gone when nobody looks any more.
  Q_PROPERTY(SaveNote* saved READ saved CONSTANT)

 public:
  // What is changed.
  enum What { String, Gauge, PreStretch, Mains, Crosses, HeadSize, Pattern };
  Q_ENUM(What)
  enum Of { Both, OfMains, OfCrosses };
  Q_ENUM(Of)

  explicit BedModel(Work& work, QObject* parent = nullptr);
  // Works on the engine's device, which must be open.
  static BedModel* create(QQmlEngine* engine, QJSEngine* script);

  void setWatched(bool watched);
  [[nodiscard]] bool busy() const { return beside_.busy() || proposing_.busy() || hearing_.busy() || writing_.busy(); }
  [[nodiscard]] bool ready() const { return made_ != nullptr; }
  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] QString title() const { return title_; }
  [[nodiscard]] QString strung() const { return strung_; }
  [[nodiscard]] QVariantList strings() const { return strings_; }
  [[nodiscard]] QVariantList outline() const { return outline_; }
  [[nodiscard]] QVariantMap map() const { return map_; }
  [[nodiscard]] QString mapNote() const { return mapNote_; }
  [[nodiscard]] QVariantList figures() const { return figures_; }
  [[nodiscard]] QString matchTime() const { return matchTime_; }
  [[nodiscard]] QString data() const { return data_; }
  [[nodiscard]] QStringList assumed() const { return assumed_; }
  [[nodiscard]] QVariantList curve() const { return curve_; }
  [[nodiscard]] QVariantList curveTimes() const { return curveTimes_; }
  [[nodiscard]] QVariantList curveParts() const { return curveParts_; }
  [[nodiscard]] QVariantList curveMoments() const { return curveMoments_; }
  [[nodiscard]] QString left() const { return left_; }
  [[nodiscard]] QStringList cautions() const { return cautions_; }
  [[nodiscard]] QVariantList choices() const { return choices_; }
  [[nodiscard]] QString gauge() const { return gauge_; }
  [[nodiscard]] QString unit() const { return unit_; }
  [[nodiscard]] QString headSize() const;
  [[nodiscard]] QString headUnit() const;
  [[nodiscard]] int mainsCount() const;
  [[nodiscard]] int crossesCount() const;
  [[nodiscard]] QString kiloStep() const;
  [[nodiscard]] QVariantMap proposal() const { return proposal_; }
  [[nodiscard]] double toneNow() const;
  [[nodiscard]] QVariantMap heard() const { return heard_; }

  // This racket's bed is to be looked at: asked() opens its sheet.
  Q_INVOKABLE void show(const QString& book, const QString& job);
  // That of the first racket of the room whose player is so called, "" for any.
  Q_INVOKABLE void showFirst(const QString& name);
  // `what` as of What, `of` as of Of (of String, Gauge and PreStretch); `value` the number of a choice, or a figure: mm, per cent, more tension in
  // the player's unit, a head's size in `headUnit`; of a pattern "18x20".
  Q_INVOKABLE void propose(int what, int of, const QString& value);
  Q_INVOKABLE void forgetProposal();
  // A tone in Hz, as typed or heard; `doubt` its relative standard deviation, 0: that of a usual instrument.
  Q_INVOKABLE void hear(const QString& hertz, double doubt = 0);
  // Keeps it as a reading of this racket. False: failed() of the work has told why.
  Q_INVOKABLE bool keepTone(const QString& hertz, const QString& note, const QString& say);
  // All figures as CSV. saved() tells where, or why not.
  Q_INVOKABLE bool saveCsv(const QUrl& file);
  // The sheet as PDF on A4, with what was proposed last; written beside the screen: busy until then, then saved() tells where, or why not.
  Q_INVOKABLE void savePdf(const QUrl& file);

  [[nodiscard]] SaveNote* saved() { return &saved_; }

 signals:
  void changed();
  void watchedChanged();
  void proposalChanged();
  void heardChanged();
  void asked();

 private:
  struct Made;
  void refresh();
  void take(const std::shared_ptr<const Made>& made);
  void say();
  void sayMap();
  void sayCurve();
  void sayHeard(const weavelog::Outcome<weavelog::BedReckoner::FromTone>& made);
  void sayProposal(const weavelog::Outcome<weavelog::Equivalent>& made, bool otherRacket);
  [[nodiscard]] QString number(double value, int places) const;
  [[nodiscard]] QString force(double newtons) const;
  [[nodiscard]] QString band(double low, double high, int places) const;
  [[nodiscard]] double newtonsOfUnit() const;

  Work& work_;
  SaveNote saved_{this};
  weavelog::BookId book_;
  weavelog::EntityId job_;
  bool watched_ = false;
  int proposalAsked_ = 0, heardAsked_ = 0;  // only the newest question is answered
  QString fault_, title_, strung_, matchTime_, data_, left_, gauge_, unit_, mapNote_;
  QVariantList strings_, outline_, figures_, curve_, curveTimes_, curveParts_, curveMoments_, choices_;
  QStringList assumed_, cautions_;
  QVariantMap proposal_, heard_, map_;
  std::optional<weavelog::BedChange> change_;  // that was proposed
  std::shared_ptr<const Made> made_;
  BesideScreen beside_{*this}, proposing_{*this}, hearing_{*this}, writing_{*this};  // end before what they report to
};
