#pragma once

#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>

#include <set>
#include <vector>

#include "app-qml/view/work.h"
#include "core/model/queries.h"

class QQmlEngine;
class QJSEngine;

// Whose cards go onto sheets: players found by name and ticked one by one, a whole country's team, or everybody with a racket in the room. What is
// ticked stays so while something else is typed.
class CardPicksModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  Q_PROPERTY(QString typed READ typed WRITE setTyped NOTIFY rowsChanged)
  Q_PROPERTY(int count READ count NOTIFY rowsChanged)
  // There are more than are listed: type on.
  Q_PROPERTY(bool more READ more NOTIFY rowsChanged)
  Q_PROPERTY(int ticked READ ticked NOTIFY tickedChanged)
  // Their books, by family name.
  Q_PROPERTY(QStringList books READ books NOTIFY tickedChanged)
  // Countries of the players here: [{value, text}], the text with how many they are.
  Q_PROPERTY(QVariantList countries READ countries NOTIFY countriesChanged)

 public:
  // `work` must outlive it.
  explicit CardPicksModel(Work& work, QObject* parent = nullptr) : QAbstractListModel(parent), work_(work) {}
  // Works on the engine's device, which must be open.
  static CardPicksModel* create(QQmlEngine* engine, QJSEngine* script);

  // Begins anew with nobody ticked.
  Q_INVOKABLE void begin();
  Q_INVOKABLE void tick(const QString& book, bool ticked);
  Q_INVOKABLE void tickCountry(const QString& code);
  // Everybody with an open racket at today's event.
  Q_INVOKABLE void tickRoom();
  Q_INVOKABLE void tickNobody();

  [[nodiscard]] QString typed() const { return typed_; }
  void setTyped(const QString& typed);
  [[nodiscard]] int count() const { return static_cast<int>(rows_.size()); }
  [[nodiscard]] bool more() const { return more_; }
  [[nodiscard]] int ticked() const { return static_cast<int>(ticked_.size()); }
  [[nodiscard]] QStringList books() const;
  [[nodiscard]] QVariantList countries() const { return countries_; }

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

 signals:
  void rowsChanged();
  void tickedChanged();
  void countriesChanged();

 private:
  enum Role { BookRole = Qt::UserRole, NameRole, AboutRole, TickedRole };

  void search();
  void tickedAnew();

  Work& work_;
  QString typed_;
  std::vector<weavelog::PlayerRow> rows_;
  bool more_ = false;
  std::set<weavelog::BookId> ticked_;
  QVariantList countries_;
};
