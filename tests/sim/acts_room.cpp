// What the room writes into its event's book: money, stock, prices, machines, shifts, draws.

#include "core/desk/draws.h"
#include "core/desk/event_book.h"
#include "core/desk/machines.h"
#include "core/desk/money.h"
#include "core/desk/prices.h"
#include "core/desk/room_benches.h"
#include "core/desk/shifts.h"
#include "core/desk/stock.h"
#include "core/desk/work_list.h"
#include "core/model/fields.h"
#include "tests/sim/acts_parts.h"

namespace weavelog::sim {
namespace {

constexpr UnixMs kHour = 3'600'000;
constexpr const char* kZone = "Europe/Oslo";

struct Here {
  Device& device;
  EventRecord event;
  std::string by;
  UnixMs at = 0;
  [[nodiscard]] const Ledger& ledger() const { return device.ledger(); }
};

std::optional<Act> priced(const Here& room, Random& random) {
  if (!room.event.prices.empty() && random.chance(500))
    return made(set_price(room.event, std::string(random.pick(kJobServices)), random.between(1, 60) * 50), "changes a price");
  std::string csv = "service,amount,currency\n";
  for (const std::string_view service : kJobServices) csv += std::string(service) + "," + std::to_string(random.between(2, 40)) + ".50,EUR\n";
  const auto list = read_price_list(csv);
  if (!list) return std::nullopt;
  ImportDrafts drafts = import_prices(room.event, list->rows, room.at);
  if (drafts.drafts.empty()) return std::nullopt;
  return made(std::move(drafts.drafts.front()), "brings prices in");
}

std::optional<Act> paper(const Here& room, Random& random) {
  if (room.event.entries.empty() || random.chance(500)) return priced(room, random);
  const auto books = books_at(room.device, kPlayerBook);
  if (books.empty()) return std::nullopt;
  const std::pair<EntityId, BookId> link{random.pick(room.event.entries).id(), random.pick(books)};
  return made(link_entries(room.event, std::span(&link, 1)), "says who an entry is");
}

std::optional<Act> money(const Here& room, Random& random) {
  if (room.event.prices.empty()) return priced(room, random);
  const auto record = some_player(room.device, random);
  if (!record || record->jobs.empty()) return std::nullopt;
  const EntityId job = random.pick(record->jobs).id();
  switch (random.below(10)) {
    case 0:
      return made(discount(room.ledger(), room.event, record->book, job, random.between(1, 10) * 100, "a regular", room.by, room.at), "takes something off");
    case 1:
    case 2:
      return made(take_payment(room.event, record->book, random.between(1, 100) * 50, random.chance(500) ? PaidBy::cash : PaidBy::card, "", room.by, room.at),
                  "takes a payment");
    case 3: {
      const auto lines = money_between(room.ledger(), room.event.book, 0, room.at + 1);
      if (lines.empty()) return std::nullopt;
      return made(reverse(room.ledger(), room.event, random.pick(lines).id, "a slip", room.by, room.at), "reverses a line");
    }
    case 4: {
      const std::string day = day_at(room.at, kZone);
      const auto bounds = bounds_of_day(day, kZone);
      if (!bounds) return std::nullopt;
      const auto lines = money_between(room.ledger(), room.event.book, bounds->from, bounds->until);
      return made(close_day(room.event, day, lines, random.between(0, 100) * 50, "", room.by, room.at), "closes a day over " + std::to_string(lines.size()));
    }
    case 5:
      return made(charge_sale(room.event, record->book, {"overgrip", 350, random.between(1, 5), ""}, room.by, room.at), "sells something");
    default:
      return made(charge_jobs(room.ledger(), room.event, *record, std::span(&job, 1), room.by, room.at), "charges a job");
  }
}

std::optional<Act> stock(const Here& room, Random& random) {
  const auto levels = stock_levels(room.ledger(), room.event.book, 0);
  if (levels.empty() || (levels.size() < 6 && random.chance(150))) {
    StockItem item;
    item.name = one_of(kStrings, random);
    item.gauge = Quantity{Decimal{125, 2}, Unit::millimetre};
    item.supply = Supply::reel;
    item.owner = StringOwner::room;
    return made(add_stock_item(room.event.book, item, room.at, 200'000, room.by), "puts a reel into stock");
  }
  const EntityId item = random.pick(levels).item.id();
  if (random.chance(400)) {
    constexpr std::array kWhys{StockWhy::received, StockWhy::counted, StockWhy::spoilt};
    return made(move_stock(room.event.book, {item, random.pick(kWhys), random.between(1, 200) * 1000, "", room.by, room.at}), "moves stock");
  }
  const auto record = some_player(room.device, random);
  if (!record || record->jobs.empty()) return std::nullopt;
  const EntityId job = random.pick(record->jobs).id();
  auto uses = suggest_uses(*record, job, levels);
  if (uses.empty()) uses.push_back({item, "bed", random.between(10, 13) * 1000});
  return made(use_for_job(room.event.book, job, uses, room.by, room.at), "takes string for a job");
}

std::optional<Act> in_the_room(const Here& room, Random& random) {
  const BookId& book = room.event.book;
  const auto machines = load_machines(room.ledger(), book);
  switch (random.below(4)) {
    case 0: {
      const auto shifts = load_shifts(room.ledger(), book);
      if (!shifts.empty() && random.chance(200)) return made(remove_shift(book, random.pick(shifts)), "takes a shift off");
      if (room.event.team.empty()) return std::nullopt;
      const UnixMs from = room.at + random.between(0, 48) * kHour;
      const Shift wanted{random.pick(room.event.team).id(), from, from + random.between(2, 10) * kHour, ""};
      if (!shifts.empty() && random.chance(500)) return made(change_shift(room.event, random.pick(shifts), wanted), "changes a shift");
      return made(add_shift(room.event, wanted, room.at), "plans a shift");
    }
    case 1: {
      const auto steps = list_steps(room.ledger(), book);
      const WorkList list = random.chance(500) ? WorkList::bench : WorkList::check;
      if (!steps.empty() && random.chance(200)) return made(usual_list(book, steps, list), "takes the usual list");
      return made(add_step(book, steps, list, "step " + std::to_string(random.below(12)), {}, room.at), "adds a step to a list");
    }
    case 2: {
      Machine machine;
      machine.name = std::to_string(1 + random.below(6));
      machine.kind = MachineKind::constant_pull;
      machine.clean_every = random.between(5, 30);
      if (!machines.empty() && random.chance(300)) return made(change_machine(book, machines, random.pick(machines), machine), "changes a machine");
      return made(add_machine(book, machines, machine, room.at), "sets a machine up");
    }
    default: {
      if (machines.empty()) return std::nullopt;
      MachineCare care;
      care.machine = random.pick(machines).id();
      care.what = random.chance(600) ? CareKind::clamps_cleaned : CareKind::out_of_order;
      care.note = "it slips";
      care.by = room.by;
      care.at = room.at;
      return made(note_care(book, care, room.at), "notes what was done to a machine");
    }
  }
}

std::optional<Act> new_draw(const Here& room, std::span<const HeldDraw> held, Random& random) {
  NewDraw wanted;
  wanted.name = "Singles " + std::to_string(random.below(4));
  const std::size_t lines = random.chance(500) ? 4 : 8;
  for (std::size_t i = 0; i < lines; ++i) {
    BracketLine line;
    line.player = std::string(kFamilies[i % kFamilies.size()]) + " " + kGivens[i % kGivens.size()];
    line.seed = i == 0 ? std::optional<std::int64_t>(1) : std::nullopt;
    wanted.lines.push_back(std::move(line));
  }
  return made(add_draw(room.event.book, held, wanted, room.at), "draws " + std::to_string(lines) + " lines");
}

std::optional<Act> benches(const Here& room, Random& random) {
  const BookId& book = room.event.book;
  const BenchBook said = load_bench_book(room.ledger(), book);
  if (random.chance(200)) {
    PlanRules rules = said.rules.now;
    rules.chances = random.chance(500) ? "seed" : "even";
    rules.hard_places = random.chance(500) ? 4 : 2;
    return made(set_plan_rules(book, said, rules), "sets the rules of planning");
  }
  const auto plan = RoomBenches::make(room.ledger(), book);
  if (!plan || (*plan)->benches().people().empty() || (*plan)->benches().benches().empty()) return std::nullopt;
  return made((*plan)->move(random.below((*plan)->benches().people().size()), random.below((*plan)->benches().benches().size()), random.chance(300), room.by, room.at),
              "gives a player a home bench");
}

std::optional<Act> drawn(const Here& room, Random& random) {
  const auto held = event_draws(room.ledger(), room.event.book);
  if (held.empty() || (held.size() < 3 && random.chance(80))) return new_draw(room, held, random);
  const HeldDraw& draw = random.pick(held);
  const std::size_t line = random.below(std::max<std::size_t>(1, draw.lines.size()));
  switch (random.below(8)) {
    case 0:
      return made(withdraw_line(draw, line, room.at), "withdraws a player");
    case 1:
      return made(take_back_winner(draw, 1, random.below(2)), "takes a result back");
    case 2: {
      PlaySaid said;
      said.court = "Court " + std::to_string(1 + random.below(5));
      said.not_before = room.at + random.between(1, 30) * kHour;
      return made(set_play(draw, 1, random.below(2), said), "says where a match is played");
    }
    case 3:
      return random.chance(200) ? made(remove_draw(draw), "takes a draw away") : benches(room, random);
    case 4:
      return benches(room, random);
    default:
      return made(note_winner(draw, {static_cast<int>(1 + random.below(2)), line, EndOfMatch::played, "6-4 6-4", room.by, room.at}), "notes who won");
  }
}

}  // namespace

std::optional<Act> act_in_room(EventKind kind, Device& device, Random& random) {
  const BookId book = event_here(device);
  if (!book) return std::nullopt;
  auto record = load_event(device.ledger(), book);
  if (!record) return std::nullopt;
  const Here room{device, std::move(*record), one_of(kStringers, random), device.clock.now()};
  switch (kind) {
    case EventKind::money:
      return money(room, random);
    case EventKind::stock:
      return stock(room, random);
    case EventKind::papers:
      return paper(room, random);
    case EventKind::room:
      return in_the_room(room, random);
    default:
      return drawn(room, random);
  }
}

}  // namespace weavelog::sim
