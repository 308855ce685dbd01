#pragma once
// The numbers of Weavelog's own books, entities and actions, and the one field registry. Numbers are stored
// and sent: add new ones in the gaps, never renumber, never reuse. Field tags stand in the tables of player.h
// and event.h.

#include "core/log/registry.h"

namespace weavelog {

inline constexpr BookKind kPlayerBook{1};  ///< one player: person, rackets, setups, jobs of every event
inline constexpr BookKind kEventBook{2};   ///< team, entry list, prices of one event
inline constexpr BookKind kKitBook{3};     ///< the stringer's own bag; never leaves the owner's devices

// Player book. Tags of a kind lie in a hundred of their own: person 100 to 199, racket 200 to 299, ...
inline constexpr EntityKind kPerson{1};
inline constexpr EntityKind kRacket{2};
inline constexpr EntityKind kSetup{3};
inline constexpr EntityKind kDropOff{4};
inline constexpr EntityKind kJob{5};
inline constexpr EntityKind kStageMark{6};
inline constexpr EntityKind kConsentGiven{7};
inline constexpr EntityKind kFrameFinding{8};
inline constexpr EntityKind kBenchRecord{9};
inline constexpr EntityKind kCheckResult{10};
inline constexpr EntityKind kReading{11};
inline constexpr EntityKind kPhoto{12};
inline constexpr EntityKind kBookLink{13};
inline constexpr EntityKind kOtherName{14};
inline constexpr EntityKind kCardTaken{19};
// 15 to 18 (tags 1500 to 1899) are kept for what else belongs to a player.

// Event book. Tags: event 2000 to 2099, team member 2100 to 2199, ...
inline constexpr EntityKind kEvent{20};
inline constexpr EntityKind kTeamMember{21};
inline constexpr EntityKind kEntryListItem{22};
inline constexpr EntityKind kPrice{23};
inline constexpr EntityKind kMachine{24};
inline constexpr EntityKind kMachineCare{25};
inline constexpr EntityKind kStockItem{26};
inline constexpr EntityKind kStockMove{27};
inline constexpr EntityKind kCharge{28};
inline constexpr EntityKind kPayment{29};
inline constexpr EntityKind kDayClose{30};
inline constexpr EntityKind kShift{31};
inline constexpr EntityKind kListStep{32};
inline constexpr EntityKind kDraw{33};
inline constexpr EntityKind kDrawLine{34};
inline constexpr EntityKind kMatch{35};
inline constexpr EntityKind kHomeBench{36};
inline constexpr EntityKind kBenchWish{37};
inline constexpr EntityKind kPlanRules{38};
inline constexpr EntityKind kDayPlace{39};
inline constexpr EntityKind kQualityRules{60};
// 61 to 79 (tags 6100 to 7999) are kept for what else belongs to an event; 40 to 59 (tags 4000 to 5999) for the kit book.

/// What the person did, for the history and for undo.
inline constexpr ActionKind kActEdit{1};  ///< fields of anything, by hand
inline constexpr ActionKind kActNewPlayer{2};
inline constexpr ActionKind kActDropOff{3};
inline constexpr ActionKind kActStage{4};
inline constexpr ActionKind kActStepBack{5};
inline constexpr ActionKind kActCloseQuestion{6};
inline constexpr ActionKind kActUndo{7};
inline constexpr ActionKind kActConsent{8};
inline constexpr ActionKind kActNewEvent{9};
inline constexpr ActionKind kActImportEntryList{10};
inline constexpr ActionKind kActImportPrices{11};
inline constexpr ActionKind kActTeam{12};
inline constexpr ActionKind kActLinkEntry{13};
inline constexpr ActionKind kActImportJobs{14};
inline constexpr ActionKind kActInspect{16};
inline constexpr ActionKind kActFrameAnswer{17};
inline constexpr ActionKind kActFrameOverride{18};
inline constexpr ActionKind kActFrameMended{19};
inline constexpr ActionKind kActCharge{20};
inline constexpr ActionKind kActDiscount{21};
inline constexpr ActionKind kActPayment{22};
inline constexpr ActionKind kActReverse{23};
inline constexpr ActionKind kActCloseDay{24};
inline constexpr ActionKind kActStock{25};
inline constexpr ActionKind kActStockUse{26};
inline constexpr ActionKind kActTakeCard{30};
inline constexpr ActionKind kActBench{31};
inline constexpr ActionKind kActReading{32};
inline constexpr ActionKind kActCheck{33};
inline constexpr ActionKind kActPhoto{34};
inline constexpr ActionKind kActMachine{35};
inline constexpr ActionKind kActMachineCare{36};
inline constexpr ActionKind kActShift{37};
inline constexpr ActionKind kActList{38};
inline constexpr ActionKind kActDraw{39};
inline constexpr ActionKind kActMatch{40};
inline constexpr ActionKind kActBenches{41};
inline constexpr ActionKind kActDayPlan{42};
inline constexpr ActionKind kActNewTime{43};
inline constexpr ActionKind kActLinkBooks{44};
inline constexpr ActionKind kActOtherName{45};

/// Built once from the tables beside the structs; schema version 1.
[[nodiscard]] const FieldRegistry& model_registry();
/// "drop_off", "stage", ...; "" for a number of a newer version.
[[nodiscard]] std::string_view name_of(ActionKind action);

}  // namespace weavelog
