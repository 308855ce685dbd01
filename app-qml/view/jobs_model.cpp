#include "app-qml/view/jobs_model.h"

#include <QQmlEngine>

#include "app-qml/view/app_device.h"
#include "app-qml/view/provided.h"

JobsModel::JobsModel(Work& work, QObject* parent) : QAbstractListModel(parent), work_(work) {
  connect(&work_, &Work::changed, this, &JobsModel::refresh);
}

JobsModel* JobsModel::create(QQmlEngine* engine, QJSEngine*) {
  return new JobsModel(provided<AppDevice>(engine)->work());  // the engine takes it over
}

std::optional<weavelog::BookId> JobsModel::scope() const {
  return todayOnly_ ? std::optional(work_.event()) : std::nullopt;
}

int JobsModel::count() const {
  if (count_ < 0) count_ = static_cast<int>(weavelog::count_jobs(work_.ledger(), scope()));
  return count_;
}

void JobsModel::setTodayOnly(bool todayOnly) {
  if (todayOnly_ == todayOnly) return;
  beginResetModel();
  todayOnly_ = todayOnly;
  pages_.clear();
  count_ = -1;
  endResetModel();
  emit todayOnlyChanged();
  emit countChanged();
}

int JobsModel::rowsHeld() const {
  int held = 0;
  for (const Page& page : pages_) held += static_cast<int>(page.rows.size());
  return held;
}

int JobsModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : count();
}

QVariant JobsModel::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
  const JobCard* found = card(index.row());
  return found == nullptr ? QVariant() : jobCardData(work_, *found, role);
}

const JobCard* JobsModel::card(int row) const {
  const int number = row / pageRows;
  const auto within = static_cast<std::size_t>(row % pageRows);
  auto at =
      std::find_if(pages_.begin(), pages_.end(), [&](const Page& page) { return page.number == number; });
  if (at == pages_.end()) {
    std::optional<weavelog::JobKey> after;
    if (number > 0) {
      // The page before is usually at hand, and its last row says where this one begins.
      const auto before = std::find_if(pages_.begin(), pages_.end(),
                                       [&](const Page& page) { return page.number == number - 1; });
      after = before != pages_.end() && before->rows.size() == pageRows
                  ? std::optional(before->rows.back().row.key)
                  : weavelog::job_key_at(work_.ledger(), scope(), std::int64_t{number} * pageRows - 1);
      if (!after) return nullptr;
    }
    Page page{number, {}};
    for (auto& one : weavelog::page_of_jobs(work_.ledger(), scope(), after, pageRows))
      page.rows.push_back(jobCard(work_, std::move(one)));
    pages_.push_front(std::move(page));
    if (pages_.size() > mostPages) pages_.pop_back();
    at = pages_.begin();
  } else if (at != pages_.begin()) {
    std::rotate(pages_.begin(), at, at + 1);
    at = pages_.begin();
  }
  return within < at->rows.size() ? &at->rows[within] : nullptr;
}

void JobsModel::refresh() {
  if (count_ < 0) return;  // nobody has looked yet
  const int count = static_cast<int>(weavelog::count_jobs(work_.ledger(), scope()));
  const int before = count_;
  if (count > before) {
    // New jobs come in at the top; where an exchange brings old ones too, dataChanged below puts that right.
    beginInsertRows({}, 0, count - before - 1);
    pages_.clear();
    count_ = count;
    endInsertRows();
  } else if (count < before) {
    beginRemoveRows({}, count, before - 1);
    pages_.clear();
    count_ = count;
    endRemoveRows();
  } else {
    pages_.clear();
  }
  if (count > 0) emit dataChanged(index(0, 0), index(count - 1, 0));
  if (count != before) emit countChanged();
}
