#include "app-qml/view/drop_off_lines.h"

#include <algorithm>

#include "app-qml/view/model_text.h"
#include "core/desk/last_time.h"
#include "core/desk/stages.h"

using Line = DropOffState::Line;

const weavelog::Racket* racketOf(const Line& line, const weavelog::PlayerRecord& record) {
  if (line.asked.made) return &*line.asked.made;
  const auto* known = record.racket(line.asked.racket);
  return known ? &known->now : nullptr;
}

int openStageOf(const Line& line, const weavelog::PlayerRecord& record, const weavelog::BookId& event) {
  if (line.asked.made || !line.asked.racket) return -1;
  for (const auto& job : record.jobs) {
    if (job.now.racket != line.asked.racket || job.now.event != event) continue;
    const auto stage = record.stage_of(job.id()).stage;
    if (weavelog::is_open(stage)) return static_cast<int>(stage);
  }
  return -1;
}

std::vector<Line> linesOfLastTime(const weavelog::PlayerRecord& record, const weavelog::BookId& event) {
  const auto last = weavelog::rackets_of_last_drop_off(record);
  std::vector<weavelog::EntityId> rackets = last;
  for (const auto& racket : record.rackets)
    if (std::find(rackets.begin(), rackets.end(), racket.id()) == rackets.end())
      rackets.push_back(racket.id());
  std::vector<Line> lines;
  for (const auto& racket : rackets) {
    Line line;
    const auto before = weavelog::same_as_last_time(record, racket);
    if (before) line.asked = weavelog::line_from(*before);
    line.asked.racket = racket;
    line.picked =
        std::find(last.begin(), last.end(), racket) != last.end() && openStageOf(line, record, event) < 0;
    lines.push_back(std::move(line));
  }
  return lines;
}

Line oneMore(const std::vector<Line>& lines, const weavelog::PlayerRecord& record, const QString& usualName) {
  Line line;
  // The next one is wanted like the one before it, as a rule.
  const auto like = std::find_if(lines.rbegin(), lines.rend(), [](const Line& one) { return one.picked; });
  if (like != lines.rend()) {
    line.asked.agreed = like->asked.agreed;
    line.asked.setup = like->asked.setup;
    line.asked.last_time = like->asked.last_time;
  } else if (const auto before = weavelog::same_as_last_time(record, {});
             before && before->questions.empty()) {
    // None is picked, as when all the others are in the room: like the player's newest.
    line.asked = weavelog::line_from(*before);
    line.asked.racket = {};
  }
  line.asked.made = weavelog::Racket{};
  int number = 0;
  for (const Line& one : lines)
    if (const auto* racket = racketOf(one, record)) number = std::max(number, qtext(racket->label).toInt());
  line.asked.made->label = std::to_string(std::max(number, static_cast<int>(lines.size())) + 1);
  if (!line.asked.setup) line.asked.keep_as = usualName.toStdString();
  line.picked = true;
  return line;
}

QVariantList listedLines(const std::vector<Line>& lines, const weavelog::PlayerRecord& record,
                         const weavelog::BookId& event, const weavelog::Language& language) {
  QVariantList all;
  for (const Line& line : lines) {
    const auto* racket = racketOf(line, record);
    const auto& wish = line.asked.agreed;
    all.append(
        QVariantMap{{"label", racket ? qtext(racket->label) : QString()},
                    {"model", racket ? qtext(racket->maker + " " + racket->model).simplified() : QString()},
                    {"fields", editables(racket ? *racket : weavelog::Racket{})},
                    {"picked", line.picked},
                    {"stage", openStageOf(line, record, event)},
                    {"made", line.asked.made.has_value()},
                    {"mains", saidText(language, wish.mains_tension)},
                    {"crosses", saidText(language, wish.crosses_tension)}});
  }
  return all;
}
