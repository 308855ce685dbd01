#include "core/model/choices.h"

#include <array>

namespace weavelog {
namespace {

constexpr auto kHands =
    std::to_array<Choice<Hand>>({{Hand::unsaid, "unsaid"}, {Hand::right, "right"}, {Hand::left, "left"}});
constexpr auto kConsents =
    std::to_array<Choice<ConsentChoice>>({{ConsentChoice::unsaid, "unsaid"},
                                          {ConsentChoice::this_room, "this_room"},
                                          {ConsentChoice::events_entered, "events_entered"},
                                          {ConsentChoice::any_room, "any_room"},
                                          {ConsentChoice::withdrawn, "withdrawn"}});
constexpr auto kSupplies =
    std::to_array<Choice<Supply>>({{Supply::unsaid, "unsaid"}, {Supply::reel, "reel"}, {Supply::set, "set"}});
constexpr auto kOwners = std::to_array<Choice<StringOwner>>(
    {{StringOwner::unsaid, "unsaid"}, {StringOwner::room, "room"}, {StringOwner::player, "player"}});
constexpr auto kRushes =
    std::to_array<Choice<Rush>>({{Rush::none, "none"}, {Rush::rush, "rush"}, {Rush::on_court, "on_court"}});
constexpr auto kVias = std::to_array<Choice<EntryVia>>({{EntryVia::unsaid, "unsaid"},
                                                        {EntryVia::direct, "direct"},
                                                        {EntryVia::qualifier, "qualifier"},
                                                        {EntryVia::lucky_loser, "lucky_loser"},
                                                        {EntryVia::wild_card, "wild_card"},
                                                        {EntryVia::alternate, "alternate"}});
constexpr auto kRoles = std::to_array<Choice<TeamRole>>({{TeamRole::unsaid, "unsaid"},
                                                         {TeamRole::head, "head"},
                                                         {TeamRole::desk, "desk"},
                                                         {TeamRole::stringer, "stringer"},
                                                         {TeamRole::reader, "reader"}});
constexpr auto kStages = std::to_array<Choice<Stage>>({{Stage::none, "none"},
                                                       {Stage::received, "received"},
                                                       {Stage::inspected, "inspected"},
                                                       {Stage::waiting, "waiting"},
                                                       {Stage::cut_out, "cut_out"},
                                                       {Stage::on_machine, "on_machine"},
                                                       {Stage::strung, "strung"},
                                                       {Stage::checked, "checked"},
                                                       {Stage::stencilled, "stencilled"},
                                                       {Stage::ready, "ready"},
                                                       {Stage::collected, "collected"},
                                                       {Stage::aside, "aside"}});
constexpr auto kStockWhys = std::to_array<Choice<StockWhy>>({{StockWhy::unsaid, "unsaid"},
                                                             {StockWhy::received, "received"},
                                                             {StockWhy::used, "used"},
                                                             {StockWhy::counted, "counted"},
                                                             {StockWhy::spoilt, "spoilt"},
                                                             {StockWhy::returned, "returned"},
                                                             {StockWhy::taken_away, "taken_away"}});
constexpr auto kWorkLists =
    std::to_array<Choice<WorkList>>({{WorkList::unsaid, "unsaid"}, {WorkList::bench, "bench"}, {WorkList::check, "check"}});
constexpr auto kReadingKinds = std::to_array<Choice<ReadingKind>>({{ReadingKind::unsaid, "unsaid"},
                                                                   {ReadingKind::tension_head, "tension_head"},
                                                                   {ReadingKind::bed_stiffness, "bed_stiffness"},
                                                                   {ReadingKind::tone, "tone"}});
constexpr auto kLinkSaids = std::to_array<Choice<LinkSaid>>(
    {{LinkSaid::unsaid, "unsaid"}, {LinkSaid::same_person, "same_person"}, {LinkSaid::other_person, "other_person"}});
constexpr auto kNameWhys = std::to_array<Choice<NameWhy>>({{NameWhy::unsaid, "unsaid"},
                                                           {NameWhy::former, "former"},
                                                           {NameWhy::married, "married"},
                                                           {NameWhy::short_form, "short_form"},
                                                           {NameWhy::other_spelling, "other_spelling"}});
constexpr auto kStringMaterials = std::to_array<Choice<StringMaterial>>({{StringMaterial::unsaid, "unsaid"},
                                                                         {StringMaterial::natural_gut, "natural_gut"},
                                                                         {StringMaterial::multifilament, "multifilament"},
                                                                         {StringMaterial::synthetic_gut, "synthetic_gut"},
                                                                         {StringMaterial::polyester, "polyester"},
                                                                         {StringMaterial::aramid, "aramid"}});
constexpr auto kPaidBys = std::to_array<Choice<PaidBy>>({{PaidBy::unsaid, "unsaid"},
                                                         {PaidBy::cash, "cash"},
                                                         {PaidBy::card, "card"},
                                                         {PaidBy::room_account, "room_account"},
                                                         {PaidBy::prize_money, "prize_money"}});
constexpr auto kMachineKinds = std::to_array<Choice<MachineKind>>({{MachineKind::unsaid, "unsaid"},
                                                                   {MachineKind::constant_pull, "constant_pull"},
                                                                   {MachineKind::lockout, "lockout"},
                                                                   {MachineKind::drop_weight, "drop_weight"}});
constexpr auto kDrawKinds = std::to_array<Choice<DrawKind>>({{DrawKind::unsaid, "unsaid"},
                                                             {DrawKind::knock_out, "knock_out"},
                                                             {DrawKind::qualifying, "qualifying"},
                                                             {DrawKind::round_robin, "round_robin"}});
constexpr auto kMatchEnds = std::to_array<Choice<EndOfMatch>>({{EndOfMatch::unsaid, "unsaid"},
                                                             {EndOfMatch::played, "played"},
                                                             {EndOfMatch::walkover, "walkover"},
                                                             {EndOfMatch::retired, "retired"},
                                                             {EndOfMatch::disqualified, "disqualified"}});
constexpr auto kCareKinds = std::to_array<Choice<CareKind>>({{CareKind::unsaid, "unsaid"},
                                                             {CareKind::clamps_cleaned, "clamps_cleaned"},
                                                             {CareKind::calibrated, "calibrated"},
                                                             {CareKind::out_of_order, "out_of_order"},
                                                             {CareKind::back_in_order, "back_in_order"}});
constexpr auto kFrameFaults = std::to_array<Choice<FrameFault>>({{FrameFault::unsaid, "unsaid"},
                                                                 {FrameFault::crack, "crack"},
                                                                 {FrameFault::dent, "dent"},
                                                                 {FrameFault::grommet_split, "grommet_split"},
                                                                 {FrameFault::grommet_missing, "grommet_missing"},
                                                                 {FrameFault::bumper_worn, "bumper_worn"},
                                                                 {FrameFault::sharp_hole, "sharp_hole"},
                                                                 {FrameFault::other, "other"}});
constexpr auto kFrameParts = std::to_array<Choice<FramePart>>({{FramePart::unsaid, "unsaid"},
                                                               {FramePart::head, "head"},
                                                               {FramePart::throat, "throat"},
                                                               {FramePart::shaft, "shaft"},
                                                               {FramePart::handle, "handle"}});
constexpr auto kFrameRemedies = std::to_array<Choice<FrameRemedy>>({{FrameRemedy::unsaid, "unsaid"},
                                                                    {FrameRemedy::string_anyway, "string_anyway"},
                                                                    {FrameRemedy::tube, "tube"},
                                                                    {FrameRemedy::replace_strip, "replace_strip"},
                                                                    {FrameRemedy::do_not_string, "do_not_string"}});
static_assert(kStages.size() == kStageCount);

}  // namespace

std::span<const Choice<Hand>> choices(Hand) {
  return kHands;
}
std::span<const Choice<ConsentChoice>> choices(ConsentChoice) {
  return kConsents;
}
std::span<const Choice<Supply>> choices(Supply) {
  return kSupplies;
}
std::span<const Choice<StringOwner>> choices(StringOwner) {
  return kOwners;
}
std::span<const Choice<Rush>> choices(Rush) {
  return kRushes;
}
std::span<const Choice<EntryVia>> choices(EntryVia) {
  return kVias;
}
std::span<const Choice<TeamRole>> choices(TeamRole) {
  return kRoles;
}
std::span<const Choice<Stage>> choices(Stage) {
  return kStages;
}
std::span<const Choice<StockWhy>> choices(StockWhy) {
  return kStockWhys;
}
std::span<const Choice<WorkList>> choices(WorkList) {
  return kWorkLists;
}
std::span<const Choice<ReadingKind>> choices(ReadingKind) {
  return kReadingKinds;
}
std::span<const Choice<LinkSaid>> choices(LinkSaid) {
  return kLinkSaids;
}
std::span<const Choice<NameWhy>> choices(NameWhy) {
  return kNameWhys;
}
std::span<const Choice<StringMaterial>> choices(StringMaterial) {
  return kStringMaterials;
}
std::span<const Choice<PaidBy>> choices(PaidBy) {
  return kPaidBys;
}
std::span<const Choice<MachineKind>> choices(MachineKind) {
  return kMachineKinds;
}
std::span<const Choice<DrawKind>> choices(DrawKind) {
  return kDrawKinds;
}
std::span<const Choice<EndOfMatch>> choices(EndOfMatch) {
  return kMatchEnds;
}
std::span<const Choice<CareKind>> choices(CareKind) {
  return kCareKinds;
}
std::span<const Choice<FrameFault>> choices(FrameFault) {
  return kFrameFaults;
}
std::span<const Choice<FramePart>> choices(FramePart) {
  return kFrameParts;
}
std::span<const Choice<FrameRemedy>> choices(FrameRemedy) {
  return kFrameRemedies;
}

}  // namespace weavelog
