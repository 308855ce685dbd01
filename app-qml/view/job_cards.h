#pragma once

#include <QByteArray>
#include <QHash>
#include <QVariant>

#include <optional>

#include "app-qml/view/work.h"
#include "core/model/queries.h"

// One job as the lists show it. Times are told in the event's zone; everything that the language decides is a
// role of its own, so that a card is laid out in QML and not glued together here.
struct JobCard {
  // How the promise stands: danger once the time is over, attention in the last half hour.
  enum class Due { none, calm, soon, late };

  weavelog::JobRow row;
  QString readyBy;
  Due due = Due::none;

  [[nodiscard]] const weavelog::EntityId& key() const { return row.job; }
  bool operator==(const JobCard& other) const;
};

[[nodiscard]] JobCard jobCard(const Work& work, weavelog::JobRow row);
// "Nowak Ewa", family name first; the native name if there is no other.
[[nodiscard]] QString playerOf(const weavelog::JobRow& row);
[[nodiscard]] JobCard::Due dueOf(const std::optional<std::int64_t>& readyBy, weavelog::Stage stage,
                                 weavelog::UnixMs now);
// The step that a room takes most often from here; none at the end of the way, and where a person has to say something first.
[[nodiscard]] weavelog::Stage usualStep(weavelog::Stage stage);

[[nodiscard]] QHash<int, QByteArray> jobCardRoles();
[[nodiscard]] QVariant jobCardData(const Work& work, const JobCard& card, int role);

// The ids of QML's text; none for a text that is none.
[[nodiscard]] weavelog::BookId bookOf(const QString& hex);
[[nodiscard]] weavelog::EntityId entityOf(const QString& hex);
// "25 / 24 kg"; each with its unit where the units differ, "" for nothing said.
[[nodiscard]] QString tensionText(const Work& work, const std::optional<weavelog::Quantity>& mains, const std::optional<weavelog::Quantity>& crosses);
// "24,5 kg", "" for nothing said.
[[nodiscard]] QString quantityText(const Work& work, const std::optional<weavelog::Quantity>& quantity);
