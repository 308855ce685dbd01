#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QUrl>
#include <QVariant>

#include <functional>

#include "app-qml/view/work.h"
#include "core/desk/draws.h"

class QQmlEngine;
class QJSEngine;

// The draws of today's event: brought in from a file, played on by tapping who won.
class DrawModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // Which of the plan's views is shown: "draw", "benches", "day", "forecast".
  Q_PROPERTY(QString view MEMBER view_ NOTIFY viewChanged)
  // Somebody looks at the draw: only then it is read.
  Q_PROPERTY(bool watched MEMBER watched_ WRITE setWatched NOTIFY watchedChanged)
  // [{id, name, detail}], in order of making.
  Q_PROPERTY(QVariantList draws READ draws NOTIFY changed)
  // Which one is shown: its id; "" while there is none.
  Q_PROPERTY(QString draw READ draw WRITE setDraw NOTIFY changed)
  // [{title, short, matches: [{round, match, decided, score, end, court, when, notBefore (as typed), follows ("2/7"), one, other}]}], first round first. A side: {line, name, mark ("2", "WC"), known,
  // bye, won, lost, out (withdrawn), bench (the home stringer's name)}.
  Q_PROPERTY(QVariantList rounds READ rounds NOTIFY changed)
  // Of a group, best first: "Name: 2 wins".
  Q_PROPERTY(QStringList standing READ standing NOTIFY changed)
  // What does not fit together, in words.
  Q_PROPERTY(QStringList troubles READ troubles NOTIFY changed)

 public:
  // As EndOfMatch.
  enum End { Played = 1, Walkover, Retired, Disqualified };
  Q_ENUM(End)

  explicit DrawModel(Work& work, QObject* parent = nullptr);
  // Works on the engine's device, which must be open.
  static DrawModel* create(QQmlEngine* engine, QJSEngine* script);

  void setWatched(bool watched);
  [[nodiscard]] QVariantList draws() const { return draws_; }
  [[nodiscard]] QString draw() const { return draw_; }
  void setDraw(const QString& draw);
  [[nodiscard]] QVariantList rounds() const { return rounds_; }
  [[nodiscard]] QStringList standing() const { return standing_; }
  [[nodiscard]] QStringList troubles() const { return troubles_; }

  // Brings a draw in from a table (DEVELOPERS.md, "Tables of a plan"); of qualifying with the number of those who come through, otherwise 0;
  // or of a round-robin group. False:
  // failed() of the work has told why. `say` is what the toast says.
  Q_INVOKABLE bool bringIn(const QUrl& file, const QString& name, int qualifiers, bool group, const QString& say);
  // Makes a draw of what was typed: [{player, partner, seed, bye, wildCard}], one a line; an empty player is not known yet. A group
  // is round robin: everybody meets everybody.
  Q_INVOKABLE bool make(const QString& name, const QVariantList& lines, int qualifiers, bool group, const QString& say);
  Q_INVOKABLE bool takeAway(const QString& say);
  // The line (from 1) won its match of that round.
  Q_INVOKABLE bool won(int round, int line, int end, const QString& score, const QString& say);
  Q_INVOKABLE bool takeBack(int round, int match, const QString& say);
  Q_INVOKABLE bool withdraw(int line, const QString& say);
  // Somebody on a line where nobody is known, or in the place of who withdrew.
  Q_INVOKABLE bool putOn(int line, const QString& player, const QString& partner, const QString& say);
  // The court; a time as moment_from() reads it, "" for none; the match of this draw that it follows, as "2/7", "" for none.
  Q_INVOKABLE bool setPlay(int round, int match, const QString& court, const QString& notBefore, const QString& follows, const QString& say);

 signals:
  void changed();
  void viewChanged();
  void watchedChanged();

 private:
  void refresh();
  [[nodiscard]] const weavelog::HeldDraw* shown() const;
  bool add(weavelog::NewDraw wanted, const QString& name, int qualifiers, const QString& say);
  // The draw that is shown, or a fault that failed() tells.
  bool with(const QString& say, const std::function<weavelog::Outcome<weavelog::Draft>(const weavelog::HeldDraw&)>& make);

  Work& work_;
  bool watched_ = false;
  QString view_ = QStringLiteral("draw"), draw_;
  std::vector<weavelog::HeldDraw> held_;
  QVariantList draws_, rounds_;
  QStringList troubles_, standing_;
};
