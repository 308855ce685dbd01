#include "tests/bench/workload/replica.h"

#include <stdexcept>

#include "core/model/player.h"
#include "core/model/queries.h"
#include "core/model/stage_now.h"
#include "core/model/tables.h"
#include "core/store/database.h"
#include "tests/bench/room.h"
#include "tests/bench/workload/fields.h"

namespace weavelog::bench {
namespace {

constexpr UnixMs kStart = 1'700'000'000'000;

std::string record_of(const EntityState& state) {
  return state.get_as<std::string>(record_tag(state.kind)).value_or(std::string());
}

/// Calls visit(state) for every entity of every player, book by book.
template <class Visit>
void each_entity(const Ledger& ledger, Visit&& visit) {
  for (const BookInfo& book : ledger.books(kPlayerBook)) visit(ledger.entities(book.id));
}

void add_mark(StateDigest& digest, const std::string& job, const EntityState& state) {
  const auto mark = from_state<StageMark>(state);
  const auto word = state.get_as<std::string>(kEventWord).value_or(std::string(word_of(mark.stage)));
  const Value* value = state.get(kEventValue);
  digest.event(job, word, mark.at.value_or(0), mark.by,
               typed_of(value != nullptr ? Said::integer : Said::text, value));
}

}  // namespace

Replica::Replica(const std::filesystem::path& folder, const std::string& name, Connections connections)
    : clock_(kStart), database_(folder / "ledger.db") {
  StationOptions options;
  options.folder = folder;
  options.one_thread = connections == Connections::one;
  options.device_name = name;
  options.registry = &workload_registry();
  options.projections = {std::make_shared<ModelTables>()};
  options.clock = &clock_;
  station_ = must(Station::open(std::move(options)));
}

const Replica::Place& Replica::place(const std::string& record) const {
  const auto found = places_.find(record);
  if (found == places_.end()) throw std::runtime_error("a record that nothing made: " + record);
  return found->second;
}

/// One action in the making. Its states are those that its maker sees before it.
class Replica::Making {
 public:
  Making(Replica& replica, const Action& action) : replica_(replica), action_(action) {}

  Draft draft() {
    const auto& first = action_.writes.front();
    std::string player(first.record);
    for (const Operation& write : action_.writes)
      if (write.record.front() == 'p')
        player = write.record;
      else if (write.name == "player")
        player = write.value.substr(2);
    // An action that makes a player has a book of its own.
    const auto known = replica_.places_.find(player);
    const BookId book =
        known == replica_.places_.end() ? replica_.station().ledger().create_book_id() : known->second.book;
    ActionKind kind = known == replica_.places_.end() ? kActNewPlayer : kActEdit;
    for (const Operation& write : action_.writes)
      if (write.name == "player")
        kind = kActDropOff;
      else if (write.event && kind == kActEdit)
        kind = kActStage;
    Draft draft(book, kPlayerBook, kind);
    for (const Operation& write : action_.writes) put(draft, write);
    return draft;
  }

 private:
  void put(Draft& draft, const Operation& write) {
    const bool of_player = write.record.front() == 'p';
    if (write.record != record_) enter(draft, std::string(write.record), of_player);
    if (write.event) return put_event(draft, write);
    if (write.name == "player") return;  // the book says so
    const WorkloadField* field = find_field(of_player ? player_fields() : job_fields(), write.name);
    if (field == nullptr) throw std::runtime_error("a field that is not known: " + std::string(write.name));
    draft.put(field->kind == kSetup ? setup() : main(), field->tag, value_of(field->said, write.value));
  }

  /// The record's states as they are seen; those of a new one have no cells.
  void enter(Draft& draft, const std::string& record, bool of_player) {
    record_ = record;
    main_.reset();
    setup_.reset();
    const auto [found, fresh] = replica_.places_.try_emplace(record);
    place_ = &found->second;
    if (!fresh) return;
    main_ = new_entity(draft.book(), of_player ? kPerson : kJob, action_.time);
    *place_ = {draft.book(), main_->id, {}, {}};
    if (of_player) {
      setup_ = new_entity(draft.book(), kSetup, action_.time);
      place_->setup = setup_->id;
    }
    draft.put(*main_, record_tag(main_->kind), record);
  }

  const EntityState& main() { return seen(main_, place_->entity); }
  const EntityState& setup() { return seen(setup_, place_->setup); }
  const EntityState& seen(std::optional<EntityState>& held, const EntityId& id) {
    if (!held) held = replica_.station().ledger().entity(place_->book, id);
    return held.value();
  }

  void put_event(Draft& draft, const Operation& write) {
    StageMark mark;
    mark.job = place_->entity;
    // A word that the model has no stage for is one on which somebody waits once more.
    const Stage known = stage_of(write.name);
    mark.stage = known == Stage::none ? Stage::waiting : known;
    mark.at = write.time;
    mark.by = write.staff;
    mark.after = place_->newest;
    const EntityState made = put_new(draft, mark, action_.time);
    if (known == Stage::none) draft.put(made, kEventWord, std::string(write.name));
    if (write.value != "s:") draft.put(made, kEventValue, value_of(Said::integer, write.value));
    place_->newest.assign(made.id.bytes.begin(), made.id.bytes.end());
  }

  Replica& replica_;
  const Action& action_;
  std::string record_;
  Place* place_ = nullptr;
  std::optional<EntityState> main_, setup_;
};

void Replica::apply(const Action& action) {
  clock_.set(action.time);
  (void)must(station_->ledger().append(Making(*this, action).draft()));
}

void Replica::finish() {
  station_->ledger().read([](Connection&) {});
}

void Replica::find_records() {
  each_entity(station_->ledger(), [&](const std::vector<EntityState>& entities) {
    std::unordered_map<EntityId, std::vector<PlacedMark>, IdHash> marks;
    EntityId setup;
    for (const EntityState& state : entities) {
      if (state.kind == kSetup) setup = state.id;
      if (auto mark = placed_mark(state); state.kind == kStageMark && mark)
        marks[mark->mark.job].push_back(std::move(*mark));
    }
    for (const EntityState& state : entities) {
      if (state.kind == kPerson) places_[record_of(state)] = {state.book, state.id, setup, {}};
      if (state.kind == kJob)
        places_[record_of(state)] = {state.book, state.id, {}, join_ids(stage_now(marks[state.id]).newest)};
    }
  });
}

std::string Replica::digest(const std::set<std::string>& left_out) const {
  StateDigest digest;
  each_entity(station_->ledger(), [&](const std::vector<EntityState>& entities) {
    std::string player;
    std::unordered_map<EntityId, std::string, IdHash> jobs;
    for (const EntityState& state : entities) {
      if (state.kind == kPerson) player = record_of(state);
      if (state.kind == kJob) jobs[state.id] = record_of(state);
    }
    for (const EntityState& state : entities) {
      if (state.kind == kStageMark) {
        add_mark(digest, jobs.at(from_state<StageMark>(state).job), state);
        continue;
      }
      const bool job = state.kind == kJob;
      const std::string& record = job ? jobs.at(state.id) : player;
      if (job) digest.field(record, "player", "s:" + player);
      for (const WorkloadField& field : job ? job_fields() : player_fields())
        if (field.kind == state.kind && state.find(field.tag) != nullptr &&
            !left_out.contains(record + "\t" + std::string(field.name)))
          digest.field(record, field.name, typed_of(field.said, state.get(field.tag)));
    }
  });
  return digest.text();
}

bool Replica::holds_both(const Contended& contended) const {
  const Place& where = place(contended.record);
  const bool of_player = contended.record.front() == 'p';
  const WorkloadField* field = find_field(of_player ? player_fields() : job_fields(), contended.field);
  const auto state = station_->ledger().entity(where.book, of_player ? where.setup : where.entity);
  const Cell* cell = field != nullptr && state ? state->find(field->tag) : nullptr;
  if (cell == nullptr) return false;
  bool a = false, b = false;
  for (const CellValue& held : cell->values) {
    const std::string typed = typed_of(field->said, &held.value);
    a = a || typed == contended.of_a;
    b = b || typed == contended.of_b;
  }
  return a && b;
}

Reading read_player(Ledger& ledger, const BookId& book) {
  Reading out;
  for (const EntityState& setup : ledger.entities(book, kSetup)) out.cells += setup.cells.size();
  const auto marks = ledger.entities(book, kStageMark);
  for (const JobRow& row : history_of(ledger, book, 10)) {
    const auto job = ledger.entity(book, row.job);
    out.cells += job.value().cells.size();
    ++out.jobs;
    for (const EntityState& mark : marks)
      if (mark.get_as<EntityId>(tag_of<StageMark>(&StageMark::job)) == row.job) ++out.events;
  }
  return out;
}

}  // namespace weavelog::bench
