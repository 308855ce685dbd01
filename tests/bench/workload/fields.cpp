#include "tests/bench/workload/fields.h"

#include <algorithm>
#include <array>
#include <cstring>
#include <deque>
#include <stdexcept>
#include <vector>

#include "core/model/player.h"

namespace weavelog::bench {
namespace {

constexpr FieldTag own(EntityKind kind, std::uint32_t number) {
  return FieldTag{static_cast<std::uint32_t>(kind) * 100 + 70 + number};
}

const auto kPlayerFields = std::to_array<WorkloadField>({
    {"familyName", kPerson, tag_of<Person>(&Person::family_name), Said::text},
    {"givenName", kPerson, tag_of<Person>(&Person::given_name), Said::text},
    {"country", kPerson, tag_of<Person>(&Person::country), Said::text},
    {"hand", kPerson, tag_of<Person>(&Person::hand), Said::hand},
    {"circuitId", kPerson, tag_of<Person>(&Person::tour_number), Said::text},
    {"mainString", kSetup, tag_of<Setup>(&Agreed::mains_string), Said::text},
    {"mainTension", kSetup, tag_of<Setup>(&Agreed::mains_tension), Said::kilograms},
    {"preStretch", kSetup, tag_of<Setup>(&Agreed::mains_prestretch), Said::percent},
    {"crossString", kSetup, tag_of<Setup>(&Agreed::crosses_string), Said::text},
    {"crossTension", kSetup, tag_of<Setup>(&Agreed::crosses_tension), Said::kilograms},
    {"knots", kSetup, tag_of<Setup>(&Agreed::knots), Said::integer},
    {"note", kSetup, tag_of<Setup>(&Agreed::note), Said::text},
    {"frame", kSetup, own(kSetup, 1), Said::text},
    {"frameWeight", kSetup, own(kSetup, 2), Said::integer},
    {"balance", kSetup, own(kSetup, 3), Said::integer},
    {"grip", kSetup, own(kSetup, 4), Said::text},
    {"pattern", kSetup, own(kSetup, 5), Said::text},
    {"stencil", kSetup, own(kSetup, 6), Said::flag},
    {"dampener", kSetup, own(kSetup, 7), Said::flag},
    {"updatedAt", kSetup, own(kSetup, 8), Said::integer},
});

const auto kJobFields = std::to_array<WorkloadField>({
    {"event", kJob, tag_of<Job>(&Job::event), Said::event},
    {"createdAt", kJob, tag_of<Job>(&Job::at), Said::integer},
    {"dueAt", kJob, tag_of<Job>(&Job::ready_by), Said::integer},
    {"mainString", kJob, tag_of<Job>(&Agreed::mains_string), Said::text},
    {"mainTension", kJob, tag_of<Job>(&Agreed::mains_tension), Said::kilograms},
    {"preStretch", kJob, tag_of<Job>(&Agreed::mains_prestretch), Said::percent},
    {"crossString", kJob, tag_of<Job>(&Agreed::crosses_string), Said::text},
    {"crossTension", kJob, tag_of<Job>(&Agreed::crosses_tension), Said::kilograms},
    {"knots", kJob, tag_of<Job>(&Agreed::knots), Said::integer},
    {"note", kJob, tag_of<Job>(&Agreed::note), Said::text},
    {"day", kJob, own(kJob, 1), Said::integer},
    {"racketNo", kJob, own(kJob, 2), Said::integer},
    {"frame", kJob, own(kJob, 3), Said::text},
    {"pattern", kJob, own(kJob, 4), Said::text},
    {"stencil", kJob, own(kJob, 5), Said::flag},
    {"priority", kJob, own(kJob, 6), Said::integer},
    {"createdBy", kJob, own(kJob, 7), Said::text},
    {"status", kJob, own(kJob, 8), Said::text},
    {"stringer", kJob, own(kJob, 9), Said::text},
    {"machine", kJob, own(kJob, 10), Said::text},
    {"price", kJob, own(kJob, 11), Said::integer},
    {"paid", kJob, own(kJob, 12), Said::flag},
    {"measured", kJob, own(kJob, 13), Said::integer},
    {"updatedAt", kJob, own(kJob, 14), Said::integer},
});

struct NamedStage {
  Stage stage;
  std::string_view word;
};
constexpr auto kStageWords = std::to_array<NamedStage>({
    {Stage::received, "received"},
    {Stage::waiting, "queued"},
    {Stage::inspected, "assigned"},
    {Stage::cut_out, "mounted"},
    {Stage::on_machine, "mains"},
    {Stage::strung, "crosses"},
    {Stage::checked, "checked"},
    {Stage::collected, "delivered"},
});

/// An event's name of up to sixteen characters is the id of its book.
BookId event_id(std::string_view name) {
  BookId id;
  if (name.size() > id.bytes.size()) throw std::runtime_error("an event's name of more than 16 characters");
  std::memcpy(id.bytes.data(), name.data(), name.size());
  return id;
}

std::string event_name(const BookId& id) {
  const auto end = std::find(id.bytes.begin(), id.bytes.end(), 0);
  return {id.bytes.begin(), end};
}

}  // namespace

std::span<const WorkloadField> player_fields() {
  return kPlayerFields;
}
std::span<const WorkloadField> job_fields() {
  return kJobFields;
}

const WorkloadField* find_field(std::span<const WorkloadField> fields, std::string_view name) {
  const auto found = std::find_if(fields.begin(), fields.end(),
                                  [&](const WorkloadField& field) { return field.name == name; });
  return found == fields.end() ? nullptr : &*found;
}

FieldTag record_tag(EntityKind kind) {
  return own(kind, 0);
}

Stage stage_of(std::string_view word) {
  for (const NamedStage& named : kStageWords)
    if (named.word == word) return named.stage;
  return Stage::none;
}

std::string_view word_of(Stage stage) {
  for (const NamedStage& named : kStageWords)
    if (named.stage == stage) return named.word;
  return {};
}

Value value_of(Said said, std::string_view typed) {
  const std::string_view plain = typed.substr(2);
  const auto bad = [&] {
    return std::runtime_error("a value that does not fit its field: " + std::string(typed));
  };
  switch (said) {
    case Said::text:
      return plain.empty() ? Value{} : Value{std::string(plain)};
    case Said::flag:
      return plain == "1";
    case Said::hand:
      return static_cast<std::int64_t>(plain == "R" ? Hand::right : Hand::left);
    case Said::event:
      return event_id(plain);
    case Said::integer:
    case Said::kilograms:
    case Said::percent:
      break;
  }
  const auto amount = Decimal::parse(plain);
  if (!amount) throw bad();
  if (said != Said::integer)
    return Quantity{*amount, said == Said::percent ? Unit::percent : Unit::kilogram_force};
  if (amount->scale != 0) throw bad();
  return amount->mantissa;
}

std::string typed_of(Said said, const Value* value) {
  if (value == nullptr) return "s:";
  switch (said) {
    case Said::text:
      return "s:" + std::get<std::string>(*value);
    case Said::flag:
      return std::get<bool>(*value) ? "b:1" : "b:0";
    case Said::hand:
      return std::get<std::int64_t>(*value) == static_cast<std::int64_t>(Hand::right) ? "s:R" : "s:L";
    case Said::event:
      return "s:" + event_name(std::get<BookId>(*value));
    case Said::integer:
      return "n:" + std::to_string(std::get<std::int64_t>(*value));
    case Said::kilograms:
    case Said::percent:
      break;
  }
  return "n:" + std::get<Quantity>(*value).amount.text();
}

const FieldRegistry& workload_registry() {
  static std::deque<std::string> names;  // the registry keeps views
  static const FieldRegistry registry = [] {
    const auto& model = model_registry();
    std::vector<KindInfo> kinds;
    std::vector<FieldInfo> fields(model.fields().begin(), model.fields().end());
    for (FieldInfo& field : fields) {
      if (kinds.empty() || kinds.back().kind != field.entity)
        kinds.push_back({field.entity, model.name_of(field.entity)});
      if (field.name == "note" && (field.entity == kJob || field.entity == kSetup)) field.guarded = true;
    }
    for (const auto list : {player_fields(), job_fields()})
      for (const WorkloadField& field : list)
        if (model.find(field.tag) == nullptr)
          fields.push_back(
              {field.tag, field.kind, names.emplace_back("workload_" + std::string(field.name))});
    fields.push_back({record_tag(kPerson), kPerson, "record"});
    fields.push_back({record_tag(kJob), kJob, "record"});
    fields.push_back({kEventWord, kStageMark, "word"});
    fields.push_back({kEventValue, kStageMark, "value"});
    return FieldRegistry(model.schema(), kinds, fields);
  }();
  return registry;
}

}  // namespace weavelog::bench
