#include <utility>

#include "core/model/bench.h"
#include "core/model/draw.h"
#include "core/model/event.h"
#include "core/model/field.h"
#include "core/model/frame.h"
#include "core/model/link.h"
#include "core/model/list_step.h"
#include "core/model/machine.h"
#include "core/model/money.h"
#include "core/model/photo.h"
#include "core/model/player.h"
#include "core/model/quality_rules.h"
#include "core/model/shift.h"
#include "core/model/stock.h"

namespace weavelog {

template <class S>
void FieldWork<S>::load(S& out, const EntityState& state) {
  for_each_field<S>([&](FieldTag tag, std::string_view, bool, auto member) {
    if (const Value* value = state.get(tag)) from_value(*value, out.*member);
  });
}

template <class S>
void FieldWork<S>::put_changes(Draft& draft, const EntityState& seen, const S& wanted) {
  const S before = from_state<S>(seen);
  for_each_field<S>([&](FieldTag tag, std::string_view, bool, auto member) {
    Value value = to_value(wanted.*member);
    if (value != to_value(before.*member)) draft.put(seen, tag, std::move(value));
  });
}

template <class S>
std::vector<Change> FieldWork<S>::compare(const S& before, const S& after) {
  std::vector<Change> changes;
  for_each_field<S>([&](FieldTag tag, std::string_view name, bool guarded, auto member) {
    Value old_value = to_value(before.*member);
    Value new_value = to_value(after.*member);
    if (old_value != new_value)
      changes.push_back({tag, name, guarded, std::move(old_value), std::move(new_value)});
  });
  return changes;
}

template struct FieldWork<Person>;
template struct FieldWork<Racket>;
template struct FieldWork<Agreed>;
template struct FieldWork<Setup>;
template struct FieldWork<DropOff>;
template struct FieldWork<Job>;
template struct FieldWork<StageMark>;
template struct FieldWork<ConsentGiven>;
template struct FieldWork<FrameFinding>;
template struct FieldWork<BenchRecord>;
template struct FieldWork<CheckResult>;
template struct FieldWork<Reading>;
template struct FieldWork<Photo>;
template struct FieldWork<BookLink>;
template struct FieldWork<OtherName>;
template struct FieldWork<CardTaken>;
template struct FieldWork<EventInfo>;
template struct FieldWork<TeamMember>;
template struct FieldWork<EntryListItem>;
template struct FieldWork<Price>;
template struct FieldWork<Machine>;
template struct FieldWork<MachineCare>;
template struct FieldWork<Shift>;
template struct FieldWork<StockItem>;
template struct FieldWork<StockMove>;
template struct FieldWork<Charge>;
template struct FieldWork<Payment>;
template struct FieldWork<DayClose>;
template struct FieldWork<ListStep>;
template struct FieldWork<DrawSheet>;
template struct FieldWork<DrawPlace>;
template struct FieldWork<MatchRecord>;
template struct FieldWork<BenchPlace>;
template struct FieldWork<BenchAsk>;
template struct FieldWork<PlanRules>;
template struct FieldWork<DayPlace>;
template struct FieldWork<QualityRules>;

}  // namespace weavelog
