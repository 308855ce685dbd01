#pragma once

#include <QVariant>

#include "app-qml/view/drop_off_state.h"
#include "app-qml/view/drop_off_wish.h"
#include "app-qml/view/work.h"
#include "core/desk/player_record.h"
#include "core/desk/questions.h"

// Open questions on what the picked rackets go by. Nobody's answer is taken unsaid: until one is chosen here, the field says nothing and
// nothing can be read back. One that is answered elsewhere meanwhile goes by that answer; its card stays and says so until it was read.

struct DraftQuestion {
  weavelog::OpenQuestion question;
  std::string_view field;           // name in the registry
  std::vector<std::size_t> lines;   // that go by it, as indices
  const DropOffState::Settled* settled = nullptr;  // what was chosen; of the state
  const DropOffState::Asked* seen = nullptr;       // of the state
  [[nodiscard]] bool closed() const { return seen != nullptr && seen->closed; }  // elsewhere: `question` says only what it was about
};

// Brings the state up to what the record says: which questions are open, and where one was closed elsewhere, its answer is what is asked for,
// whatever was chosen here.
void followQuestions(DropOffState& state, const weavelog::PlayerRecord& record, const Work& work);
// In the order in which they came; the pointers are valid until the state changes.
[[nodiscard]] std::vector<DraftQuestion> draftQuestions(const DropOffState& state, const weavelog::PlayerRecord& record);
// Names of the fields that nothing is chosen for yet, of the lines given.
[[nodiscard]] QStringList openFields(const DropOffState& state, const weavelog::PlayerRecord& record, WishLines lines);
// Which page of the questions the first open field stands on: 1 strings, 2 tensions and making, 3 finish; -1: nothing is open.
[[nodiscard]] int partInQuestion(const DropOffState& state, const weavelog::PlayerRecord& record);
// The same of any field of the page; -1 for one that is not among the questions.
[[nodiscard]] int partOfField(std::string_view field);

// [{key, field (label), subject, rackets ("1, 2"), part, entry, units, answers [{text, device, event, at, dot}], chosen, closed, unlike}]; chosen:
// which of the answers, their number for another one (then `other` and `unit` say it), -1 for none yet. `entry`: see AnswerForm. closed: how
// it was answered elsewhere, like one of the answers, empty while it is open; unlike: what was chosen here, where that was another answer.
[[nodiscard]] QVariantList listedQuestions(const DropOffState& state, const weavelog::PlayerRecord& record, const Work& work);
// Chooses one of the answers. False: there is no such question or answer.
bool settleQuestion(DropOffState& state, const weavelog::PlayerRecord& record, const Work& work, int question, int answer);
// Chooses another answer. Faults: bad_input, and nothing is chosen then.
[[nodiscard]] weavelog::Outcome<> settleOtherwise(DropOffState& state, const weavelog::PlayerRecord& record, const Work& work, int question,
                                                  const QString& text, const QString& unit);
// It was read which questions were answered elsewhere.
void questionsRead(DropOffState& state);
// Nothing is chosen any more.
void reopenQuestion(DropOffState& state, const weavelog::PlayerRecord& record, int question);
// What was chosen for a line, as it is read back.
[[nodiscard]] std::vector<weavelog::SettledField> settledOf(const DropOffState& state, const weavelog::PlayerRecord& record, std::size_t line);
// A field of what is asked for, by its name; a cleared value says nothing.
void putInto(weavelog::Agreed& agreed, std::string_view field, const weavelog::Value& value);
// The entries that close what was chosen.
[[nodiscard]] weavelog::Outcome<std::vector<weavelog::Draft>> closings(const DropOffState& state, const weavelog::PlayerRecord& record);
