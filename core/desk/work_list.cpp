#include "core/desk/work_list.h"

#include <algorithm>
#include <array>

#include "core/base/text.h"
#include "core/desk/made_from.h"
#include "core/desk/phrases.h"
#include "core/model/stage_now.h"

namespace weavelog {
namespace {

constexpr std::string_view kPracticeSign = "=";
constexpr std::int64_t kOrderStep = 10;

// Common practice, no source; a frame's and a machine's instructions come before it. The words are phrases "step.KEY".
constexpr std::array<std::string_view, 9> kBenchPractice{
    "bench.release", "bench.supports", "bench.side_supports", "bench.order",  "bench.starting_clamp",
    "bench.clamps",  "bench.knots",    "bench.straighten",    "bench.marks",
};
constexpr std::array<std::string_view, 8> kCheckPractice{
    "check.racket", "check.weave", "check.missed", "check.knots", "check.marks", "check.grommets", "check.straight", "check.stencil",
};

std::span<const std::string_view> practice(WorkList list) {
  if (list == WorkList::bench) return kBenchPractice;
  if (list == WorkList::check) return kCheckPractice;
  return {};
}

std::string ListStep::*text_for(std::string_view language) {
  if (language == "en") return &ListStep::text_en;
  if (language == "de") return &ListStep::text_de;
  if (language == "fr") return &ListStep::text_fr;
  if (language == "es") return &ListStep::text_es;
  return nullptr;
}

/// A step of the room's own is named by its words.
std::string name_of(const ListStep& step) {
  if (!step.key.empty()) return std::string(kPracticeSign) + step.key;
  for (const std::string* text : {&step.text, &step.text_en, &step.text_de, &step.text_fr, &step.text_es})
    if (!text->empty()) return *text;
  return {};
}

/// The line of common practice under the identifier that it has in that event, on whichever device it is written down.
EntityId id_in(const BookId& event, std::string_view key) { return made_from(EntityId{event.bytes}, "weavelog list step 1", key); }

/// A list about to be changed: every line of it with what is held of it.
struct Line {
  EntityState seen;
  ListStep now;
};
std::vector<Line> lines_of(const BookId& event, std::span<const Loaded<ListStep>> steps, WorkList list) {
  std::vector<Line> lines;
  for (const WorkStep& step : work_list(steps, list, true)) {
    Line& line = lines.emplace_back();
    line.now = step.step;
    const auto held = std::find_if(steps.begin(), steps.end(), [&](const Loaded<ListStep>& one) { return one.id() == step.id; });
    if (step.id && held != steps.end()) {
      line.seen = held->seen;
    } else {
      line.seen.book = event;
      line.seen.kind = kListStep;
      line.seen.id = id_in(event, step.step.key);
    }
  }
  return lines;
}

Draft written(const BookId& event, std::vector<Line>& lines) {
  Draft draft(event, kEventBook, kActList);
  std::int64_t order = 0;
  for (Line& line : lines) {
    line.now.order = order += kOrderStep;
    put_changes(draft, line.seen, line.now);
  }
  return draft;
}

Outcome<> check_place(std::optional<std::size_t> place, std::size_t count) {
  if (place && (*place < 1 || *place > count))
    return fail(FaultCode::bad_input, "there is no such place in the list", std::to_string(*place), "give 1 to " + std::to_string(count));
  return {};
}

Outcome<std::string> words_from(std::string_view text) {
  auto clean = clean_text(text, "step");
  if (!clean) return fail(clean.error());
  if (clean->size() > kLongestStep)
    return fail(FaultCode::bad_input, "these words are too long to be read at the bench", "step",
                "say it in " + std::to_string(kLongestStep) + " bytes at most");
  if (clean->find('\n') != std::string::npos)
    return fail(FaultCode::bad_input, "a step is one line", "step", "make two steps of it");
  if (clean->starts_with(kPracticeSign))
    return fail(FaultCode::bad_input, "a step's words do not begin with an equals sign", "step", "put a word before it");
  return clean;
}

Fault taken(const std::string& text) {
  return {FaultCode::bad_input, "the list has a step of these words", text, "say what is different about it"};
}

Fault no_list() { return {FaultCode::bad_input, "there is no such list", "list", "give bench or check"}; }

}  // namespace

std::vector<WorkStep> work_list(std::span<const Loaded<ListStep>> steps, WorkList list, bool off_too) {
  std::vector<WorkStep> out;
  for (const Loaded<ListStep>& held : steps)
    if (held.now.list == list) out.push_back({held.id(), name_of(held.now), held.now, held.now.key.empty()});
  if (out.empty()) {
    std::int64_t order = 0;
    for (const std::string_view key : practice(list)) {
      ListStep step;
      step.list = list;
      step.key = key;
      step.order = order += kOrderStep;
      out.push_back({{}, name_of(step), std::move(step), false});
    }
  }
  // What has lost its words on one device while another gave it none can't be shown.
  std::erase_if(out, [&](const WorkStep& step) { return step.name.empty() || (step.step.off.value_or(false) && !off_too); });
  std::sort(out.begin(), out.end(), [](const WorkStep& a, const WorkStep& b) {
    return std::pair(a.step.order.value_or(0), a.id) < std::pair(b.step.order.value_or(0), b.id);
  });
  return out;
}

std::vector<Loaded<ListStep>> list_steps(const Ledger& ledger, const BookId& event) {
  std::vector<Loaded<ListStep>> out;
  for (EntityState& state : ledger.entities(event, kListStep))
    if (exists(state)) out.emplace_back(std::move(state));
  return out;
}

std::string step_words(const Language& language, const ListStep& step) {
  const auto own = text_for(language.base());
  if (own != nullptr && !(step.*own).empty()) return step.*own;
  if (!step.text.empty()) return step.text;
  return step_words(language, name_of(step));
}

std::string step_words(const Language& language, std::string_view name) {
  if (!name.starts_with(kPracticeSign)) return std::string(name);
  const std::string key = "step." + std::string(name.substr(kPracticeSign.size()));
  return desk_words().has(key) ? desk_words().say(language, key) : key;  // of a newer version
}

Outcome<Draft> change_step(const BookId& event, std::span<const Loaded<ListStep>> steps, WorkList list, std::string_view name,
                           const StepChange& change) {
  std::vector<Line> lines = lines_of(event, steps, list);
  auto line = std::find_if(lines.begin(), lines.end(), [&](const Line& one) { return name_of(one.now) == name; });
  if (line == lines.end()) return fail(FaultCode::not_found, "the list has no such step", std::string(name), "look at the list again");
  if (auto placed = check_place(change.place, lines.size()); !placed) return fail(placed.error());
  const std::vector<Line> before = lines;
  if (change.text) {
    auto member = change.language ? text_for(*change.language) : &ListStep::text;
    if (member == nullptr) return fail(FaultCode::bad_input, "steps are told in English, German, French and Spanish", *change.language,
                                       "give en, de, fr or es, or the words for every language");
    const auto text = words_from(*change.text);
    if (!text) return fail(text.error());
    line->now.*member = *text;
    if (name_of(line->now).empty())
      return fail(FaultCode::bad_input, "a step of the room's own needs words", "step", "turn it off instead");
    for (const Line& other : lines)
      if (&other != &*line && name_of(other.now) == name_of(line->now)) return fail(taken(*text));
  }
  if (change.off) line->now.off = *change.off;
  if (change.place) {
    Line moved = std::move(*line);
    lines.erase(line);
    lines.insert(lines.begin() + static_cast<std::ptrdiff_t>(*change.place - 1), std::move(moved));
  }
  const auto same = [](const Line& a, const Line& b) {
    ListStep x = a.now, y = b.now;
    if (!x.off.value_or(false)) x.off.reset();
    if (!y.off.value_or(false)) y.off.reset();
    return x == y;
  };
  if (std::equal(lines.begin(), lines.end(), before.begin(), before.end(), same))
    return fail(FaultCode::bad_input, "the step is so already", std::string(name), "nothing needs to be done");
  return written(event, lines);
}

Outcome<Draft> add_step(const BookId& event, std::span<const Loaded<ListStep>> steps, WorkList list, const std::string& text,
                        std::optional<std::size_t> place, UnixMs at) {
  std::vector<Line> lines = lines_of(event, steps, list);
  if (practice(list).empty()) return fail(no_list());
  const auto turned_off = std::find_if(lines.begin(), lines.end(), [&](const Line& one) {
    return one.now.off.value_or(false) && one.now.key.empty() && name_of(one.now) == text;
  });
  if (turned_off != lines.end()) return change_step(event, steps, list, text, {.off = false, .place = place.value_or(lines.size())});
  if (lines.size() >= kMostSteps)
    return fail(FaultCode::bad_input, "a list has " + std::to_string(kMostSteps) + " steps at most", "list", "change one that is there");
  if (auto placed = check_place(place, lines.size() + 1); !placed) return fail(placed.error());
  const auto words = words_from(text);
  if (!words) return fail(words.error());
  if (is_blank(*words)) return fail(FaultCode::bad_input, "the step has no words", "step", "say what is to be done");
  for (const Line& other : lines)
    if (name_of(other.now) == *words) return fail(taken(*words));
  Line line;
  line.seen = new_entity(event, kListStep, at);
  line.now.list = list;
  line.now.text = *words;
  lines.insert(lines.begin() + static_cast<std::ptrdiff_t>(place ? *place - 1 : lines.size()), std::move(line));
  return written(event, lines);
}

Outcome<Draft> usual_list(const BookId& event, std::span<const Loaded<ListStep>> steps, WorkList list) {
  if (practice(list).empty()) return fail(no_list());
  const Fault usual{FaultCode::bad_input, "the list is the usual one already", "list", "nothing needs to be done"};
  if (std::none_of(steps.begin(), steps.end(), [&](const Loaded<ListStep>& one) { return one.now.list == list; })) return fail(usual);
  std::vector<Line> held = lines_of(event, steps, list), lines;
  for (const std::string_view key : practice(list)) {
    const auto found = std::find_if(held.begin(), held.end(), [&](const Line& one) { return one.now.key == key; });
    Line& line = lines.emplace_back();
    if (found != held.end()) {
      line.seen = found->seen;
    } else {  // of a newer version than the one that wrote the list down
      line.seen.book = event;
      line.seen.kind = kListStep;
      line.seen.id = id_in(event, key);
    }
    line.now.list = list;
    line.now.key = key;
  }
  for (Line& line : held) {
    if (!line.now.key.empty()) continue;
    line.now.off = true;
    lines.push_back(std::move(line));
  }
  Draft draft = written(event, lines);
  if (draft.empty()) return fail(usual);
  return draft;
}

std::string join_names(std::span<const std::string> names) {
  std::string out;
  for (const std::string& name : names) out.append(out.empty() ? "" : "\n").append(name);
  return out;
}

std::vector<std::string> split_names(std::string_view lines) {
  std::vector<std::string> out;
  while (!lines.empty()) {
    const auto end = lines.find('\n');
    if (const auto name = lines.substr(0, end); !name.empty()) out.emplace_back(name);
    lines = end == std::string_view::npos ? std::string_view{} : lines.substr(end + 1);
  }
  return out;
}

}  // namespace weavelog
