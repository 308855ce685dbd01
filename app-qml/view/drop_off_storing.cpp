#include "app-qml/view/drop_off_storing.h"

#include <set>

#include "app-qml/view/drop_off_questions.h"
#include "app-qml/view/model_text.h"
#include "core/desk/tags.h"
#include "core/model/event.h"
#include "core/model/queries.h"

weavelog::Language languageOf(const DropOffState& state) {
  return weavelog::Language::from(state.language.toStdString()).value_or(weavelog::Language{});
}

weavelog::DropOffRequest requestOf(const DropOffState& state, const weavelog::PlayerRecord& record, const Work& work) {
  weavelog::DropOffRequest out;
  out.id = idFrom<weavelog::EntityId>(state.id);
  if (state.fresh) out.new_person = state.person;
  out.drop_off = state.dropOff;
  out.drop_off.event = work.event();
  out.drop_off.at = work.now();
  for (const auto& event : weavelog::all_events(work.ledger())) {
    if (event.book != work.event()) continue;
    out.drop_off.event_name = event.name;
    out.drop_off.place = event.place;
  }
  for (std::size_t i = 0; i < state.lines.size(); ++i) {
    if (!state.lines[i].picked) continue;
    out.lines.push_back(state.lines[i].asked);
    out.lines.back().settled = settledOf(state, record, i);
  }
  if (work.event()) {
    std::set<std::int64_t> given;
    for (auto& line : out.lines) {
      line.tag_number = weavelog::next_tag(work.ledger(), work.event(), given);
      given.insert(*line.tag_number);
    }
  }
  out.time_zone = work.zone();
  out.language = languageOf(state);
  out.device = work.ledger().self().id();
  if (state.consent != weavelog::ConsentChoice::unsaid)
    out.consent = weavelog::ConsentSaid{state.consent, weavelog::consent_text(out.language, state.consent)};
  return out;
}

QVariantList tagsOf(const weavelog::DropOffRequest& request, const weavelog::PlayerRecord& record) {
  QVariantList tags;
  for (const auto& line : request.lines) {
    const auto* racket = line.made ? &*line.made : &record.racket(line.racket)->now;
    tags.append(QVariantMap{{"tag", line.tag_number ? QString::number(*line.tag_number) : QString()},
                            {"racket", racketText(*racket)}});
  }
  return tags;
}

bool linkEntry(Work& work, const weavelog::EntityId& entry, const weavelog::BookId& player) {
  const auto held = work.ledger().entity(work.event(), entry);
  if (!held || weavelog::from_state<weavelog::EntryListItem>(*held).player == player) return true;
  weavelog::Draft draft(work.event(), weavelog::kEventBook, weavelog::kActLinkEntry);
  draft.put(*held, weavelog::tag_of<weavelog::EntryListItem>(&weavelog::EntryListItem::player), player);
  // Past the work: what is offered to be taken back stays what a person did last.
  const auto linked = work.workplace().commit(draft);
  if (!linked) work.tell(linked.error());
  return linked.has_value();
}

void linkEntryOf(const DropOffState& state, Work& work) {
  if (state.fresh && state.entry) (void)linkEntry(work, state.entry, state.book);
}
