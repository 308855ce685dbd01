#include "core/model/fields.h"

#include <array>

#include "core/model/bench.h"
#include "core/model/draw.h"
#include "core/model/event.h"
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
namespace {

constexpr auto kKinds = std::to_array<KindInfo>({
    {kPerson, "person"},
    {kRacket, "racket"},
    {kSetup, "setup"},
    {kDropOff, "drop_off"},
    {kJob, "job"},
    {kStageMark, "stage_mark"},
    {kConsentGiven, "consent_given"},
    {kFrameFinding, "frame_finding"},
    {kBenchRecord, "bench_record"},
    {kCheckResult, "check_result"},
    {kReading, "reading"},
    {kPhoto, "photo"},
    {kBookLink, "book_link"},
    {kOtherName, "other_name"},
    {kCardTaken, "card_taken"},
    {kEvent, "event"},
    {kTeamMember, "team_member"},
    {kEntryListItem, "entry"},
    {kPrice, "price"},
    {kMachine, "machine"},
    {kMachineCare, "machine_care"},
    {kStockItem, "stock_item"},
    {kStockMove, "stock_move"},
    {kCharge, "charge"},
    {kPayment, "payment"},
    {kDayClose, "day_close"},
    {kShift, "shift"},
    {kListStep, "list_step"},
    {kDraw, "draw"},
    {kDrawLine, "draw_line"},
    {kMatch, "match"},
    {kHomeBench, "home_bench"},
    {kBenchWish, "bench_wish"},
    {kPlanRules, "plan_rules"},
    {kDayPlace, "day_place"},
    {kQualityRules, "quality_rules"},
});

struct NamedAction {
  ActionKind action;
  std::string_view name;
};
constexpr auto kActions = std::to_array<NamedAction>({
    {kActEdit, "edit"},
    {kActNewPlayer, "new_player"},
    {kActDropOff, "drop_off"},
    {kActNewTime, "new_time"},
    {kActLinkBooks, "link_books"},
    {kActOtherName, "other_name"},
    {kActStage, "stage"},
    {kActStepBack, "step_back"},
    {kActCloseQuestion, "close_question"},
    {kActUndo, "undo"},
    {kActConsent, "consent"},
    {kActNewEvent, "new_event"},
    {kActImportEntryList, "import_entry_list"},
    {kActImportPrices, "import_prices"},
    {kActTeam, "team"},
    {kActLinkEntry, "link_entry"},
    {kActImportJobs, "import_jobs"},
    {kActTakeCard, "take_card"},
    {kActInspect, "inspect"},
    {kActFrameAnswer, "frame_answer"},
    {kActFrameOverride, "frame_override"},
    {kActFrameMended, "frame_mended"},
    {kActCharge, "charge"},
    {kActDiscount, "discount"},
    {kActPayment, "payment"},
    {kActReverse, "reverse"},
    {kActCloseDay, "close_day"},
    {kActStock, "stock"},
    {kActStockUse, "stock_use"},
    {kActMachine, "machine"},
    {kActMachineCare, "machine_care"},
    {kActShift, "shift"},
    {kActBench, "bench"},
    {kActReading, "reading"},
    {kActCheck, "check"},
    {kActPhoto, "photo"},
    {kActList, "list"},
    {kActDraw, "draw"},
    {kActMatch, "match"},
    {kActBenches, "benches"},
    {kActDayPlan, "day_plan"},
});

template <class... Structs>
std::vector<FieldInfo> fields_of() {
  std::vector<FieldInfo> fields;
  (for_each_field<Structs>([&](FieldTag tag, std::string_view name, bool guarded, auto) {
     fields.push_back({tag, Described<Structs>::kind, name, guarded});
   }),
   ...);
  return fields;
}

}  // namespace

const FieldRegistry& model_registry() {
  static const FieldRegistry registry(1, kKinds,
                                      fields_of<Person, Racket, Setup, DropOff, Job, StageMark, ConsentGiven, FrameFinding, BenchRecord,
                                                CheckResult, Reading, Photo, BookLink, OtherName, CardTaken,
                                                EventInfo, TeamMember, EntryListItem, Price, Machine, MachineCare, StockItem, StockMove,
                                                Charge, Payment, DayClose, Shift, ListStep, DrawSheet, DrawPlace, MatchRecord,
                                                BenchPlace, BenchAsk, PlanRules, DayPlace, QualityRules>(),
                                      kPlayerBook);
  return registry;
}

std::string_view name_of(ActionKind action) {
  for (const NamedAction& named : kActions)
    if (named.action == action) return named.name;
  return {};
}

}  // namespace weavelog
