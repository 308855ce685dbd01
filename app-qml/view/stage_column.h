#pragma once

#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>

#include "app-qml/view/job_cards.h"
#include "app-qml/view/keyed_rows.h"

// The jobs of today's event at one stage, by ready-by; or any other short list of jobs.
class StageColumn : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("the board makes its columns")
  Q_PROPERTY(int stage READ stage CONSTANT)
  Q_PROPERTY(int count READ count NOTIFY countChanged)
  // How many of them are late.
  Q_PROPERTY(int late READ late NOTIFY countChanged)

 public:
  StageColumn(const Work& work, weavelog::Stage stage, QObject* parent);

  [[nodiscard]] int stage() const { return static_cast<int>(stage_); }
  [[nodiscard]] int count() const { return static_cast<int>(rows_.size()); }
  [[nodiscard]] int late() const;
  void take(std::vector<JobCard> cards);
  [[nodiscard]] const std::vector<JobCard>& cards() const { return rows_; }

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QHash<int, QByteArray> roleNames() const override { return jobCardRoles(); }

 signals:
  void countChanged();

 private:
  friend struct KeyedRows;
  const Work& work_;
  weavelog::Stage stage_;
  std::vector<JobCard> rows_;
};
