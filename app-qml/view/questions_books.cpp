// QuestionsModel, continued: what linked books of one person say differently.

#include <algorithm>

#include "app-qml/view/model_text.h"
#include "app-qml/view/questions_model.h"
#include "core/desk/phrases.h"

void QuestionsModel::addBooks(std::vector<Row>& rows) const {
  const auto& language = work_.language();
  for (const auto& group : weavelog::all_linked_books(work_.ledger())) {
    if (group.here.size() < 2) continue;
    const auto person = weavelog::load_person(work_.ledger(), group.here.front());
    if (!person) continue;
    for (const auto& difference : weavelog::differences(*person)) {
      Row row;
      row.kind = Books;
      row.difference = difference;
      row.question.cell.tag = difference.field;
      // The same one, whichever of them answered last.
      const auto first = std::min_element(difference.answers.begin(), difference.answers.end(), [](const auto& a, const auto& b) { return a.book < b.book; });
      row.book = first->book;
      row.entity = first->entity;
      row.name = difference.name;
      row.player = qtext(weavelog::listed_name(person->records.front().person.now));
      row.field = fieldLabel(language, difference.name);
      row.subject = qtext(weavelog::setup_words(language, difference.subject));
      for (const auto& answer : difference.answers) {
        row.form.take(difference.name, answer.value);
        // Which book it is tells where that player was strung for last.
        const auto player = weavelog::find_player(work_.ledger(), answer.book);
        row.answers.append(QVariantMap{{QStringLiteral("text"), qtext(weavelog::value_words(language, difference.name, answer.value))},
                                       {QStringLiteral("device"), QString()},
                                       {QStringLiteral("event"), player ? qtext(player->last_event) : QString()},
                                       {QStringLiteral("at"), work_.timeText(answer.at)},
                                       {QStringLiteral("dot"), idText(answer.book) + QString::number(answer.at)}});
      }
      rows.push_back(std::move(row));
    }
  }
}

bool QuestionsModel::settleBooks(const Row& row, const weavelog::Value& value, const QString& say) {
  const auto person = weavelog::load_person(work_.ledger(), row.book);
  if (!person) return work_.commit(weavelog::fail(person.error()), {});
  const auto drafts = weavelog::settle(*person, row.difference, value);
  if (!drafts) return work_.commit(weavelog::fail(drafts.error()), {});
  // What stands in two books can't be taken back by one undo: nothing is offered then.
  for (const auto& draft : *drafts)
    if (!work_.commit(draft, drafts->size() == 1 ? say : QString())) return false;
  return true;
}
