#pragma once

#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>
#include <deque>

#include "app-qml/view/job_cards.h"

class QQmlEngine;
class QJSEngine;

// All jobs that this device holds, newest first, however many: only the pages around what is looked at are in
// memory.
class JobsModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  Q_PROPERTY(int count READ count NOTIFY countChanged)
  // Only those of today's event.
  Q_PROPERTY(bool todayOnly READ todayOnly WRITE setTodayOnly NOTIFY todayOnlyChanged)

 public:
  static constexpr int pageRows = 64;
  static constexpr int mostPages = 5;

  // `work` must outlive it. Nothing is read before somebody looks.
  explicit JobsModel(Work& work, QObject* parent = nullptr);
  // Works on the engine's device, which must be open.
  static JobsModel* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] int count() const;
  [[nodiscard]] bool todayOnly() const { return todayOnly_; }
  void setTodayOnly(bool todayOnly);
  // Rows in memory now: at most pageRows x mostPages.
  [[nodiscard]] int rowsHeld() const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QHash<int, QByteArray> roleNames() const override { return jobCardRoles(); }

 signals:
  void countChanged();
  void todayOnlyChanged();

 private:
  struct Page {
    int number = 0;
    std::vector<JobCard> rows;
  };

  [[nodiscard]] std::optional<weavelog::BookId> scope() const;
  [[nodiscard]] const JobCard* card(int row) const;
  void refresh();

  Work& work_;
  bool todayOnly_ = false;
  // Known once somebody asked; kept from then on.
  mutable int count_ = -1;
  mutable std::deque<Page> pages_;  // most recently used first
};
