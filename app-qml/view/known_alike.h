#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariant>

#include <memory>
#include <optional>
#include <set>

#include "app-qml/view/beside_screen.h"
#include "app-qml/view/work.h"
#include "core/people/people_here.h"

// Who on this device somebody may be whose name is being written down anew: looked for beside the screen while one types. Nothing is kept of
// what is answered but who is taken.
class KnownAlike : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("Made by the app")
  // [candidateShown() and {book}], best first; empty while nobody is alike, or after "somebody else".
  Q_PROPERTY(QVariantList people READ people NOTIFY changed)
  // The first of them is known beyond doubt, by what was written down so far.
  Q_PROPERTY(bool known READ known NOTIFY changed)

 public:
  explicit KnownAlike(Work& work, QObject* parent = nullptr);

  // What is known of whom one looks for; none: nobody is looked for. `which` tells one drop-off from another.
  void lookFor(const QString& which, const std::optional<weavelog::PersonFacts>& facts);
  // None of these: they are not shown again for this drop-off, unless somebody further turns up.
  Q_INVOKABLE void someoneElse();

  [[nodiscard]] QVariantList people() const { return people_; }
  [[nodiscard]] bool known() const { return known_; }

 signals:
  void changed();

 private:
  struct Found {
    weavelog::MatchBand band = weavelog::MatchBand::new_person;
    std::vector<weavelog::BookId> books;
    QVariantList people;
    std::shared_ptr<const weavelog::PeopleHere> here;
    std::int64_t position = 0;
  };

  void look();
  void take(const Found& found);
  void show(QVariantList people, bool known);

  Work& work_;
  QString which_;
  std::optional<weavelog::PersonFacts> facts_;
  std::shared_ptr<const weavelog::PeopleHere> here_;  // as of position_ of the ledger
  std::int64_t position_ = 0;
  std::vector<weavelog::BookId> books_;
  std::set<weavelog::BookId> others_;  // who it is not
  QVariantList people_;
  bool known_ = false;
  BesideScreen beside_{*this};  // ends before what it reports to
};
