#pragma once

#include <QAbstractItemModel>
#include <algorithm>
#include <vector>

// Brings the rows of a list model up to date with the fewest signals, so that a list on the screen keeps its
// place and its focus while other tablets' changes come in.
//
// `Row` needs key() (equality tells rows apart) and operator==. `Model` befriends this and gives `rows_`.
struct KeyedRows {
  template <class Model, class Row>
  static void update(Model& model, std::vector<Row> wanted) {
    auto& rows = model.rows_;
    const auto has = [](const std::vector<Row>& in, const Row& row) {
      return std::any_of(in.begin(), in.end(), [&](const Row& one) { return one.key() == row.key(); });
    };
    for (std::size_t i = rows.size(); i-- > 0;) {
      if (has(wanted, rows[i])) continue;
      model.beginRemoveRows({}, static_cast<int>(i), static_cast<int>(i));
      rows.erase(rows.begin() + static_cast<std::ptrdiff_t>(i));
      model.endRemoveRows();
    }
    for (std::size_t i = 0; i < wanted.size(); ++i) {
      const auto at = std::find_if(rows.begin() + static_cast<std::ptrdiff_t>(i), rows.end(),
                                   [&](const Row& one) { return one.key() == wanted[i].key(); });
      const int to = static_cast<int>(i);
      if (at == rows.end()) {
        model.beginInsertRows({}, to, to);
        rows.insert(rows.begin() + to, std::move(wanted[i]));
        model.endInsertRows();
        continue;
      }
      if (const int from = static_cast<int>(at - rows.begin()); from != to) {
        model.beginMoveRows({}, from, from, {}, to);
        std::rotate(rows.begin() + to, rows.begin() + from, rows.begin() + from + 1);
        model.endMoveRows();
      }
      if (rows[i] == wanted[i]) continue;
      rows[i] = std::move(wanted[i]);
      emit model.dataChanged(model.index(to, 0), model.index(to, 0));
    }
  }
};
