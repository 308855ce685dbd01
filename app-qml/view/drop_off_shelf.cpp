#include "app-qml/view/drop_off_shelf.h"

#include <algorithm>

#include "app-qml/view/model_text.h"
#include "core/model/queries.h"

namespace {

constexpr std::string_view draftsKey = "app.drop_offs";

}  // namespace

DropOffShelf::DropOffShelf(Work& work) : work_(work) {
  if (const auto kept = work_.ledger().remembered(draftsKey))
    left_ = dropOffsFrom(
        QByteArray(reinterpret_cast<const char*>(kept->data()), static_cast<qsizetype>(kept->size())));
  // A program that was killed after it had stored one, and before it had taken it off: or the same rackets could be taken in twice.
  std::erase_if(left_, [&](const DropOffState& state) {
    return work_.ledger().entity(state.book, idFrom<weavelog::EntityId>(state.id)).has_value();
  });
}

void DropOffShelf::put(DropOffState state) {
  left_.insert(left_.begin(), std::move(state));
}

std::optional<DropOffState> DropOffShelf::take(std::vector<DropOffState>::iterator at) {
  if (at == left_.end()) return std::nullopt;
  DropOffState state = std::move(*at);
  left_.erase(at);
  return state;
}

std::optional<DropOffState> DropOffShelf::take(const QString& id) {
  return take(
      std::find_if(left_.begin(), left_.end(), [&](const DropOffState& state) { return state.id == id; }));
}

std::optional<DropOffState> DropOffShelf::takeOf(const weavelog::BookId& player) {
  return take(std::find_if(left_.begin(), left_.end(),
                           [&](const DropOffState& state) { return state.book == player; }));
}

void DropOffShelf::keep(const std::optional<DropOffState>& present) {
  // Who was forgotten meanwhile, here or elsewhere, is not written down again.
  const auto gone = [&](const DropOffState& state) { return work_.ledger().is_forgotten(state.book); };
  std::erase_if(left_, gone);
  std::vector<DropOffState> all = left_;
  if (present && !gone(*present)) all.insert(all.begin(), *present);
  const QByteArray bytes = toBytes(all);
  const auto view = weavelog::ByteView(reinterpret_cast<const std::uint8_t*>(bytes.constData()),
                                       static_cast<std::size_t>(bytes.size()));
  if (auto kept = work_.ledger().remember(draftsKey, view); !kept) work_.tell(kept.error());
}

QVariantList DropOffShelf::listed() const {
  QVariantList all;
  for (const auto& state : left_)
    all.append(QVariantMap{{"id", state.id},
                           {"player", qtext(weavelog::listed_name(state.person))},
                           {"rackets", static_cast<int>(std::count_if(
                                           state.lines.begin(), state.lines.end(),
                                           [](const DropOffState::Line& line) { return line.picked; }))},
                           {"day", work_.timeText(state.begun)}});
  return all;
}
