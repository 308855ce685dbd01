#include "app-qml/view/drop_off_findings.h"

#include <algorithm>

#include "app-qml/view/drop_off_lines.h"
#include "app-qml/view/model_text.h"
#include "core/desk/cautions.h"
#include "core/desk/check_setup.h"
#include "core/desk/first_time.h"
#include "core/desk/phrases.h"

QVariantMap findingsOf(WishLines lines, const weavelog::PlayerRecord& record,
                       const weavelog::Language& language, bool missing) {
  QVariantMap out;
  for (const auto* line : lines) {
    for (const auto& finding : weavelog::check_setup(line->asked.agreed, racketOf(*line, record))) {
      if (finding.code == "missing" && !missing) continue;
      const QString field = qtext(finding.field);
      if (out.contains(field)) continue;
      out.insert(field, QVariantMap{{"what", qtext(finding.what(language))},
                                    {"toDo", qtext(finding.what_to_do(language))},
                                    {"refused", finding.refused}});
    }
  }
  return out;
}

QVariantList cautionsOf(const DropOffState& state, const weavelog::PlayerRecord& record,
                        const weavelog::Language& language) {
  struct Said {
    weavelog::Caution caution;
    QStringList rackets, written;
  };
  std::vector<Said> all;
  for (const auto& line : state.lines) {
    if (!line.picked) continue;
    const auto* racket = racketOf(line, record);
    const auto known = line.asked.made ? weavelog::EntityId{} : line.asked.racket;
    for (const auto caution : weavelog::cautions_at_desk(record, known, racket, line.asked.agreed)) {
      auto at =
          std::find_if(all.begin(), all.end(), [&](const Said& said) { return said.caution == caution; });
      if (at == all.end()) at = all.insert(all.end(), Said{caution, {}, {}});
      if (caution == weavelog::Caution::arm_pain) continue;
      if (racket != nullptr && !racket->label.empty()) at->rackets.append(qtext(racket->label));
      const auto doubt = weavelog::doubt_about(record, known);
      if (caution == weavelog::Caution::cracked_frame && doubt && !doubt->empty())
        at->written.append(qtext(*doubt));
    }
  }
  QVariantList out;
  for (const auto& said : all)
    out.append(QVariantMap{{"rackets", said.rackets.join(QStringLiteral(", "))},
                           {"text", qtext(weavelog::caution_text(language, said.caution))},
                           {"written", said.written.join(QStringLiteral("\n"))}});
  return out;
}

QStringList stillNeededFor(const DropOffState& state, const weavelog::PlayerRecord& record,
                           const weavelog::Language& language) {
  QStringList words;
  for (const auto& line : state.lines) {
    if (!line.picked) continue;
    weavelog::FirstTimeAnswers answers;
    answers.person = state.fresh ? state.person : record.person.now;
    answers.agreed = line.asked.agreed;
    for (const auto& question : weavelog::still_needed(answers)) {
      const QString word = qtext(weavelog::field_words(language, question.field));
      if (!words.contains(word)) words.append(word);
    }
  }
  return words;
}

int firstRefused(const DropOffState& state, const weavelog::PlayerRecord& record) {
  const auto at = std::find_if(state.lines.begin(), state.lines.end(), [&](const auto& line) {
    return line.picked && !weavelog::require_sound(line.asked.agreed, racketOf(line, record));
  });
  return at == state.lines.end() ? -1 : static_cast<int>(at - state.lines.begin());
}

int partInTheWay(const DropOffState& state, const weavelog::PlayerRecord& record) {
  const bool nonePicked =
      std::none_of(state.lines.begin(), state.lines.end(), [](const auto& line) { return line.picked; });
  if (nonePicked || (state.fresh && state.person.family_name.empty())) return 0;
  int part = 3;
  for (const auto& line : state.lines) {
    if (!line.picked) continue;
    for (const auto& finding : weavelog::check_setup(line.asked.agreed, racketOf(line, record)))
      if (finding.refused)
        part =
            std::min(part, finding.field.ends_with("_string") || finding.field.ends_with("_gauge") ? 1 : 2);
  }
  return part == 3 ? -1 : part;
}
