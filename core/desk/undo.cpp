#include "core/desk/undo.h"

#include <algorithm>
#include <map>
#include <set>

#include "core/model/fields.h"
#include "core/model/stage_now.h"

namespace weavelog {
namespace {

std::string field_name(FieldTag tag) {
  const FieldInfo* info = model_registry().find(tag);
  return info ? std::string(info->name) : "field " + std::to_string(static_cast<std::uint32_t>(tag));
}

/// What a write replaced: nothing for a first value. Fails if there were different answers.
Outcome<Value> value_before(const Ledger& ledger, const BookId& book, const Write& write) {
  std::optional<Value> before;
  for (const Dot& dot : write.replaces) {
    const auto entry = ledger.entry(book, dot.author, dot.seq);
    if (!entry || dot.index >= entry->writes.size())
      return fail(FaultCode::not_found, "what stood there before is not known here", field_name(write.tag),
                  "set it by hand");
    const Value& value = entry->writes[dot.index].value;
    if (before && *before != value)
      return fail(FaultCode::refused, "this closed an open question, which cannot be opened again",
                  field_name(write.tag), "give the other answer as a change");
    before = value;
  }
  return before.value_or(Value{});
}

bool refers_to(const EntityState& state, const std::set<EntityId>& made) {
  for (const Cell& cell : state.cells) {
    const Value& value = cell.latest().value;
    if (const auto* id = std::get_if<EntityId>(&value); id && made.contains(*id)) return true;
    if (cell.tag == tag_of<StageMark>(&StageMark::after))
      if (const auto* ids = std::get_if<Bytes>(&value))
        for (const EntityId& id : split_ids(*ids))
          if (made.contains(id)) return true;
  }
  return false;
}

/// True if no cell holds anything but what this entry wrote.
bool made_by(const EntityState& state, const AuthorId& author, std::uint64_t seq) {
  return std::all_of(state.cells.begin(), state.cells.end(), [&](const Cell& cell) {
    return std::all_of(cell.values.begin(), cell.values.end(), [&](const CellValue& held) {
      return held.dot.author == author && held.dot.seq == seq;
    });
  });
}

/// It is what the field says, and nothing was said beside it: but for what an undo left empty, where the same thing was made once more
/// (what is kept of a racket on the bench has one number for every time).
bool stands_alone(const Cell& cell, const Dot& dot) {
  const CellValue* ours = cell.find(dot);
  return ours != nullptr && std::all_of(cell.values.begin(), cell.values.end(), [&](const CellValue& held) {
    return &held == ours || (is_cleared(held.value) && held.stamp < ours->stamp);
  });
}

}  // namespace

Outcome<Draft> undo(const Ledger& ledger, const BookId& book, std::uint64_t seq) {
  const AuthorId self = ledger.self().id();
  const auto info = ledger.book(book);
  const auto entry = ledger.entry(book, self, seq);
  if (!info || !entry)
    return fail(FaultCode::not_found, "this device has no such action", "action " + std::to_string(seq),
                "only what was done here can be undone here");

  Draft draft(book, info->kind, kActUndo);
  std::map<EntityId, EntityState> states;
  for (EntityState& state : ledger.entities(book)) states.emplace(state.id, std::move(state));

  std::set<EntityId> made;
  for (std::uint32_t i = 0; i < entry->writes.size(); ++i) {
    const Write& write = entry->writes[i];
    const auto state = states.find(write.entity);
    const Cell* cell = state == states.end() ? nullptr : state->second.find(write.tag);
    if (!cell || !stands_alone(*cell, Dot{self, seq, i}))
      return fail(FaultCode::conflict, "it was changed again since", field_name(write.tag),
                  "change it by hand");
    auto before = value_before(ledger, book, write);
    if (!before) return fail(before.error());
    if (made_by(state->second, self, seq)) made.insert(write.entity);
    draft.put(state->second, write.tag, std::move(*before));
  }
  for (const auto& [id, state] : states)
    if (!made.contains(id) && refers_to(state, made))
      return fail(FaultCode::conflict, "work has gone on from there",
                  std::string(model_registry().name_of(state.kind)) + " " + id.hex(),
                  "undo the later steps first, or step back with a reason");
  return draft;
}

std::optional<std::uint64_t> last_action(const Ledger& ledger, const BookId& book, std::size_t look_back) {
  const AuthorId self = ledger.self().id();
  const Heads heads = ledger.heads(book);
  const auto head =
      std::find_if(heads.begin(), heads.end(), [&](const Head& held) { return held.author == self; });
  if (head == heads.end()) return std::nullopt;
  std::set<std::uint64_t> undone;
  for (std::uint64_t seq = head->seq; seq > 0 && look_back > 0; --seq, --look_back) {
    const auto entry = ledger.entry(book, self, seq);
    if (!entry) return std::nullopt;
    const bool taken_back = undone.contains(seq);
    if (entry->action == kActUndo) {
      // An undo that was itself undone has no effect left. Its writes replace exactly those of the entry it
      // reversed.
      if (!taken_back)
        for (const Write& write : entry->writes)
          for (const Dot& dot : write.replaces)
            if (dot.author == self) undone.insert(dot.seq);
      continue;
    }
    if (!taken_back) return seq;
  }
  return std::nullopt;
}

}  // namespace weavelog
