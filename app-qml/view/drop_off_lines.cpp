#include "app-qml/view/drop_off_lines.h"

#include <algorithm>

#include "app-qml/view/drop_off_questions.h"
#include "app-qml/view/model_text.h"
#include "core/base/text.h"
#include "core/desk/last_time.h"
#include "core/desk/phrases.h"
#include "core/desk/stages.h"

using Line = DropOffState::Line;

namespace {

constexpr auto usualSetup = "=usual";

std::string setupNameOf(const Line& line, const weavelog::PlayerRecord& record) {
  const auto* setup = record.setup(line.asked.setup);
  return setup != nullptr ? setup->now.name : line.asked.keep_as;
}

// Which group each line is of, in order of their first racket.
template <class LinePointer>
std::vector<int> groupsOf(const std::vector<LinePointer>& lines) {
  std::vector<int> groups;
  std::vector<const weavelog::Agreed*> wishes;
  for (const auto* line : lines) {
    const auto& wish = line->asked.agreed;
    const auto same = std::find_if(wishes.begin(), wishes.end(), [&](const auto* one) {
      return one->mains_tension == wish.mains_tension && one->crosses_tension == wish.crosses_tension;
    });
    groups.push_back(static_cast<int>(same - wishes.begin()));
    if (same == wishes.end()) wishes.push_back(&wish);
  }
  return groups;
}

bool sameRacket(const weavelog::Racket& a, const weavelog::Racket& b) {
  const auto alike = [](const std::string& x, const std::string& y) { return weavelog::search_key(x) == weavelog::search_key(y); };
  return alike(a.label, b.label) && alike(a.maker, b.maker) && alike(a.model, b.model);
}

// What was last in another book, asked for in this one: by this book's setup of the same name and wish, else kept under that name.
weavelog::DropOffLine takenInto(const weavelog::PlayerRecord& record, const weavelog::PlayerRecord& other, const weavelog::LastTime& before,
                                const weavelog::EntityId& racket) {
  weavelog::DropOffLine out = weavelog::line_from(before);
  // What is open in that book can't be closed in this one: it is asked anew.
  for (const auto& question : before.questions)
    if (const auto* field = weavelog::model_registry().find(question.cell.tag)) putInto(out.agreed, field->name, {});
  const auto* theirs = other.setup(before.setup);
  out.racket = racket;
  out.setup = {};
  out.keep_as = theirs != nullptr ? theirs->now.name : std::string(usualSetup);
  for (const auto& setup : record.setups)
    if (setup.now.name == out.keep_as && static_cast<const weavelog::Agreed&>(setup.now) == out.agreed) out.setup = setup.id(), out.keep_as.clear();
  return out;
}

}  // namespace

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

void addLinesOfOtherBooks(std::vector<Line>& lines, const weavelog::PersonBooks& books) {
  const auto& record = books.records.front();
  for (std::size_t i = 1; i < books.records.size(); ++i) {
    const auto& other = books.records[i];
    for (const auto& racket : other.rackets) {
      const auto known = std::find_if(lines.begin(), lines.end(), [&](const Line& line) {
        const auto* one = racketOf(line, record);
        return one != nullptr && sameRacket(*one, racket.now);
      });
      const auto before = weavelog::same_as_last_time(other, racket.id());
      if (known != lines.end()) {
        const auto here = weavelog::same_as_last_time(record, known->asked.racket);
        // What was strung on another racket says nothing of this one.
        if (known->asked.made || !before || !before->own_racket || (here && here->own_racket && here->at >= before->at)) continue;
        known->asked = takenInto(record, other, *before, known->asked.racket);
        continue;
      }
      Line line;
      if (before) line.asked = takenInto(record, other, *before, {});
      if (line.asked.keep_as.empty() && !line.asked.setup) line.asked.keep_as = usualSetup;
      line.asked.made = racket.now;
      lines.push_back(std::move(line));
    }
  }
}

Line oneMore(const std::vector<Line>& lines, const weavelog::PlayerRecord& record) {
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
  if (!line.asked.setup) line.asked.keep_as = usualSetup;
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

QVariantList tensionGroups(const std::vector<const Line*>& lines, const weavelog::PlayerRecord& record, const weavelog::Language& language) {
  QVariantList out;
  const auto groups = groupsOf(lines);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const auto* racket = racketOf(*lines[i], record);
    const QString label = racket != nullptr && !racket->label.empty() ? qtext(racket->label) : QString::number(i + 1);
    const QString key = qtext(setupNameOf(*lines[i], record));
    if (groups[i] == out.size()) {
      out.append(QVariantMap{{"rackets", label},
                             {"mains", saidText(language, lines[i]->asked.agreed.mains_tension)},
                             {"crosses", saidText(language, lines[i]->asked.agreed.crosses_tension)},
                             {"key", key}});
      continue;
    }
    auto group = out[groups[i]].toMap();
    group["rackets"] = group["rackets"].toString() + QStringLiteral(", ") + label;
    if (group["key"].toString() != key) group["key"] = QString();
    out[groups[i]] = group;
  }
  for (auto& one : out) {
    auto group = one.toMap();
    group["name"] = qtext(weavelog::setup_words(language, group["key"].toString().toStdString()));
    one = group;
  }
  return out;
}

bool nameTensionGroup(const std::vector<Line*>& lines, int group, const QString& name, const weavelog::PlayerRecord& record) {
  bool found = false;
  const auto groups = groupsOf(lines);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    if (groups[i] != group) continue;
    found = true;
    auto& asked = lines[i]->asked;
    asked.setup = {};
    asked.keep_as.clear();
    if (name.isEmpty()) {
      if (const auto before = weavelog::same_as_last_time(record, asked.made ? weavelog::EntityId{} : asked.racket)) asked.setup = before->setup;
      if (!asked.setup) asked.keep_as = usualSetup;
      continue;
    }
    for (const auto& held : record.setups)
      if (qtext(held.now.name) == name && static_cast<const weavelog::Agreed&>(held.now) == asked.agreed) asked.setup = held.id();
    if (!asked.setup) asked.keep_as = name.toStdString();
  }
  return found;
}
