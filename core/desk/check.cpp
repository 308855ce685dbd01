#include "core/desk/check.h"

#include <algorithm>
#include <array>
#include <set>

#include "core/base/text.h"
#include "core/desk/bench.h"
#include "core/desk/phrases.h"
#include "core/desk/stages.h"
#include "core/desk/work_list.h"

namespace weavelog {
namespace {

// Most faults of a bed need it cut out again; a knot can be made again on the machine.
constexpr std::array kBackFromStrung{Stage::cut_out, Stage::on_machine, Stage::inspected};
constexpr std::array kFromLater{Stage::cut_out, Stage::on_machine, Stage::inspected, Stage::strung};

std::string place_of(const Loaded<Job>& job) {
  return job.now.tag_number ? "tag " + std::to_string(*job.now.tag_number) : "job " + job.id().hex();
}

Outcome<> check_found(const CheckFound& found, std::span<const Stage> ways, const std::string& place) {
  if (found.items.empty()) return fail(FaultCode::bad_input, "nothing was looked at", place, "go through the list of the check");
  if (found.items.size() > kMostSteps) return fail(FaultCode::bad_input, "that is more than a list has", place, "look at the list again");
  std::set<std::string_view> names;
  bool passed = true;
  for (const CheckedItem& item : found.items) {
    if (is_blank(item.name) || item.name.find('\n') != std::string::npos)
      return fail(FaultCode::bad_input, "an item without a name", place, "choose one of the list");
    if (!names.insert(item.name).second) return fail(FaultCode::bad_input, "an item was looked at twice", item.name, "say it once");
    passed = passed && item.ok;
  }
  if (passed) {
    if (!is_blank(found.reason) || found.back_to != Stage::none)
      return fail(FaultCode::bad_input, "all is in order, and yet the racket is to go back", place, "say what is not in order");
    return {};
  }
  if (is_blank(found.reason))
    return fail(FaultCode::bad_input, "it was not said why the racket is done again", place, "say what whoever does it should know");
  if (std::find(ways.begin(), ways.end(), found.back_to) == ways.end())
    return fail(FaultCode::bad_input, "it was not said where the racket goes back to", place, "choose cut_out, on_machine or inspected");
  return {};
}

}  // namespace

std::span<const Stage> redo_stages(Stage now) {
  if (now == Stage::strung) return kBackFromStrung;
  if (now == Stage::checked || now == Stage::stencilled || now == Stage::ready) return kFromLater;
  return {};
}

Outcome<Draft> check_racket(const PlayerRecord& record, const EntityId& id, const CheckFound& found) {
  const Loaded<Job>* job = record.job(id);
  if (!job) return fail(FaultCode::not_found, "no such job", id.hex(), "look at the board again");
  const StageNow now = record.stage_of(id);
  if (now.clash)
    return fail(FaultCode::conflict, "two people moved this racket on while apart", place_of(*job),
                "look where it is, then set its stage with a reason");
  const auto ways = redo_stages(now.stage);
  if (ways.empty())
    return fail(FaultCode::refused, "a racket that is " + std::string(name_of_choice(now.stage)) + " is not checked", place_of(*job),
                "check it once it is strung and before it is collected");
  if (auto checked = check_found(found, ways, place_of(*job)); !checked) return fail(checked.error());
  const bool passed = found.back_to == Stage::none;
  const Stage to = !passed ? found.back_to : now.stage == Stage::strung ? Stage::checked : now.stage;
  if (to != now.stage)  // for its rules alone: the entry is a check
    if (const auto step = take_step(record, std::span(&id, 1), {to, found.by, found.reason, found.at}); !step) return fail(step.error());

  CheckResult result;
  result.job = id;
  result.items = join_items(found.items);
  result.passed = passed;
  result.by = found.by;
  result.at = found.at;
  result.reason = found.reason;
  result.back_to = found.back_to;
  Draft draft(record.book, kPlayerBook, kActCheck);
  (void)put_new(draft, result, found.at);
  if (to != now.stage) {
    StageMark mark{id, to, found.at, found.by, found.reason, join_ids(now.newest)};
    if (to == Stage::on_machine) mark.machine = machine_of(record, id).machine;  // back to where it was strung
    (void)put_new(draft, mark, found.at);
  }
  return draft;
}

std::vector<const Loaded<CheckResult>*> checks_of(const PlayerRecord& record, const EntityId& job) {
  std::vector<const Loaded<CheckResult>*> own;
  for (const auto& held : record.checks)
    if (held.now.job == job) own.push_back(&held);
  std::stable_sort(own.begin(), own.end(), [](const auto* a, const auto* b) { return a->now.at.value_or(0) > b->now.at.value_or(0); });
  return own;
}

std::vector<CheckedItem> checked_items(const CheckResult& check) {
  std::vector<CheckedItem> items;
  for (const std::string& line : split_names(check.items))
    if (line.size() > 1 && (line[0] == '+' || line[0] == '-')) items.push_back({line.substr(1), line[0] == '+'});
  return items;
}

std::string join_items(std::span<const CheckedItem> items) {
  std::vector<std::string> lines;
  for (const CheckedItem& item : items) lines.push_back((item.ok ? "+" : "-") + item.name);
  return join_names(lines);
}

std::string check_words(const Language& language, const CheckResult& check) {
  if (check.passed.value_or(false)) return desk_words().say(language, "check_result.passed");
  std::string wrong;
  std::int64_t count = 0;
  for (const CheckedItem& item : checked_items(check)) {
    if (item.ok) continue;
    wrong.append(wrong.empty() ? "" : "; ").append(step_words(language, item.name));
    ++count;
  }
  return desk_words().say(language, "check_result.failed",
                          {{"items", wrong}, {"count", count}, {"reason", check.reason}});
}

}  // namespace weavelog
