#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariant>

#include <vector>

#include "app-qml/view/players_model.h"
#include "core/desk/person_books.h"

// What belongs together with the book that is shown: books made elsewhere for the same person, where they differ, and who else it might be; and
// by what other names the player goes.
class PersonLinks : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("Made by the app")
  // [{book, name, about, here}]: the other books of this person; not here: known of, but not on this device.
  Q_PROPERTY(QVariantList books READ books NOTIFY changed)
  // [{field, subject, answers: [{text, about}]}]: where the books differ.
  Q_PROPERTY(QVariantList differences READ differences NOTIFY changed)
  // [{id, text, why}]: other names; why as weavelog::NameWhy.
  Q_PROPERTY(QVariantList names READ names NOTIFY changed)
  // Players to choose from when another book is to be linked; this one's own books are not among what can be linked.
  Q_PROPERTY(PlayersModel* finder READ finder CONSTANT)

 public:
  explicit PersonLinks(Work& work, QObject* parent = nullptr);

  // Shows what belongs to a book; none, or one that is not here: nothing.
  void show(const weavelog::BookId& book);

  // True when it is on disk; otherwise the work has told why.
  Q_INVOKABLE bool link(const QString& other, const QString& by, const QString& say);
  Q_INVOKABLE bool sayDifferent(const QString& other, const QString& by, const QString& say);
  Q_INVOKABLE bool part(const QString& by, const QString& say);
  // Both books say what this answer says, by their places in `differences`.
  Q_INVOKABLE bool settle(int difference, int answer, const QString& say);
  Q_INVOKABLE bool addName(const QString& family, const QString& given, const QString& native, int why, const QString& by, const QString& say);
  Q_INVOKABLE bool dropName(const QString& id, const QString& say);

  [[nodiscard]] QVariantList books() const { return books_; }
  [[nodiscard]] QVariantList differences() const { return differences_; }
  [[nodiscard]] QVariantList names() const { return names_; }
  [[nodiscard]] PlayersModel* finder() { return &finder_; }

 signals:
  void changed();

 private:
  void refresh();
  bool commit(const weavelog::Outcome<std::vector<weavelog::Draft>>& drafts, const QString& say);

  Work& work_;
  PlayersModel finder_;
  weavelog::BookId book_;
  weavelog::PersonBooks person_;
  std::vector<weavelog::BookDifference> open_;
  QVariantList books_, differences_, names_;
};
