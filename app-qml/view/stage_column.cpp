#include "app-qml/view/stage_column.h"

StageColumn::StageColumn(const Work& work, weavelog::Stage stage, QObject* parent)
    : QAbstractListModel(parent), work_(work), stage_(stage) {}

int StageColumn::late() const {
  return static_cast<int>(std::count_if(rows_.begin(), rows_.end(),
                                        [](const JobCard& card) { return card.due == JobCard::Due::late; }));
}

void StageColumn::take(std::vector<JobCard> cards) {
  KeyedRows::update(*this, std::move(cards));
  emit countChanged();
}

int StageColumn::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : count();
}

QVariant StageColumn::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
  return jobCardData(work_, rows_[static_cast<std::size_t>(index.row())], role);
}
