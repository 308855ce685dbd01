#pragma once

#include <QVariant>

#include <optional>
#include <vector>

#include "app-qml/view/drop_off_state.h"
#include "app-qml/view/work.h"

// The drop-offs that were left unfinished, newest first, on disk together with the one in the making.
class DropOffShelf {
 public:
  // Reads what the last run left; what cannot be read is not there, nor what was stored before that run was killed. `work` must outlive it.
  explicit DropOffShelf(Work& work);

  void put(DropOffState state);
  // Takes one off the shelf; nothing if there is none.
  [[nodiscard]] std::optional<DropOffState> take(const QString& id);
  [[nodiscard]] std::optional<DropOffState> takeOf(const weavelog::BookId& player);
  // Writes all down, `present` before them. A failure is told.
  void keep(const std::optional<DropOffState>& present);
  // [{id, player, rackets, day}]
  [[nodiscard]] QVariantList listed() const;

 private:
  [[nodiscard]] std::optional<DropOffState> take(std::vector<DropOffState>::iterator at);

  Work& work_;
  std::vector<DropOffState> left_;
};
