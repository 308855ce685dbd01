#include "app-qml/view/person_links.h"

#include <algorithm>

#include "app-qml/view/job_cards.h"
#include "app-qml/view/model_text.h"
#include "core/desk/other_names.h"
#include "core/desk/phrases.h"

namespace {

// Where a book had its newest job, and when; else when it was last written to is not known, and nothing is said.
QString newestJob(const weavelog::PlayerRecord& record, const weavelog::Language& language, const std::string& zone) {
  const weavelog::Loaded<weavelog::Job>* newest = nullptr;
  for (const auto& job : record.jobs)
    if (newest == nullptr || job.now.at.value_or(0) > newest->now.at.value_or(0)) newest = &job;
  if (newest == nullptr) return {};
  const auto* handOver = record.drop_off(newest->now.drop_off);
  const QString event = handOver ? qtext(handOver->now.event_name) : QString(), day = dayText(language, newest->now.at, zone);
  return event.isEmpty() ? day : day.isEmpty() ? event : event + QStringLiteral(", ") + day;
}

}  // namespace

PersonLinks::PersonLinks(Work& work, QObject* parent) : QObject(parent), work_(work), finder_(work, false) {
  connect(&work_, &Work::changed, this, &PersonLinks::refresh);
}

void PersonLinks::show(const weavelog::BookId& book) {
  book_ = book;
  refresh();
}

void PersonLinks::refresh() {
  person_ = {};
  open_.clear();
  books_.clear();
  differences_.clear();
  names_.clear();
  if (book_)
    if (auto person = weavelog::load_person(work_.ledger(), book_)) person_ = std::move(*person);
  std::vector<weavelog::BookId> known{book_};
  for (const auto& record : person_.records)
    if (record.book != book_) known.push_back(record.book);
  finder_.leaveOut(std::move(known));
  const auto& language = work_.language();
  for (std::size_t i = 1; i < person_.records.size(); ++i) {
    const auto& record = person_.records[i];
    const QString rackets = tr("%n racket(s)", "", static_cast<int>(record.jobs.size())), last = newestJob(record, language, work_.zone());
    books_.append(QVariantMap{{"book", idText(record.book)},
                              {"name", qtext(weavelog::listed_name(record.person.now))},
                              {"about", last.isEmpty() ? rackets : rackets + QStringLiteral(" · ") + last},
                              {"here", true}});
  }
  for (const auto& other : person_.elsewhere)
    books_.append(QVariantMap{{"book", idText(other)}, {"name", QString()}, {"about", QString()}, {"here", false}});
  open_ = weavelog::differences(person_);
  for (const auto& one : open_) {
    QVariantList answers;
    for (const auto& answer : one.answers) {
      const auto record = std::find_if(person_.records.begin(), person_.records.end(), [&](const auto& held) { return held.book == answer.book; });
      answers.append(QVariantMap{{"text", qtext(weavelog::value_words(language, one.name, answer.value))},
                                 {"about", newestJob(*record, language, work_.zone())}});
    }
    differences_.append(QVariantMap{
        {"field", fieldLabel(language, one.name)}, {"subject", qtext(weavelog::setup_words(language, one.subject))}, {"answers", answers}});
  }
  if (!person_.records.empty())
    for (const auto& name : person_.records.front().other_names)
      names_.append(QVariantMap{{"id", idText(name.id())}, {"text", qtext(weavelog::other_name_words(name.now))}, {"why", static_cast<int>(name.now.why)}});
  emit changed();
}

bool PersonLinks::commit(const weavelog::Outcome<std::vector<weavelog::Draft>>& drafts, const QString& say) {
  if (!drafts) {
    work_.tell(drafts.error());
    return false;
  }
  // What stands in two books can't be taken back by one undo: the page has the way back.
  for (const auto& draft : *drafts)
    if (!work_.commit(draft, drafts->size() == 1 ? say : QString())) return false;
  return true;
}

bool PersonLinks::link(const QString& other, const QString& by, const QString& say) {
  return commit(weavelog::say_of_books(work_.ledger(), book_, bookOf(other), weavelog::LinkSaid::same_person, by.trimmed().toStdString(), work_.now()), say);
}

bool PersonLinks::sayDifferent(const QString& other, const QString& by, const QString& say) {
  return commit(weavelog::say_of_books(work_.ledger(), book_, bookOf(other), weavelog::LinkSaid::other_person, by.trimmed().toStdString(), work_.now()), say);
}

bool PersonLinks::part(const QString& by, const QString& say) {
  return commit(weavelog::part_book(work_.ledger(), book_, by.trimmed().toStdString(), work_.now()), say);
}

bool PersonLinks::settle(int difference, int answer, const QString& say) {
  const auto at = static_cast<std::size_t>(difference), chosen = static_cast<std::size_t>(answer);
  if (at >= open_.size() || chosen >= open_[at].answers.size()) return false;
  return commit(weavelog::settle(person_, open_[at], open_[at].answers[chosen].value), say);
}

bool PersonLinks::addName(const QString& family, const QString& given, const QString& native, int why, const QString& by, const QString& say) {
  if (person_.records.empty()) return false;
  weavelog::OtherName name;
  name.family_name = family.trimmed().toStdString();
  name.given_name = given.trimmed().toStdString();
  name.native_name = native.trimmed().toStdString();
  name.why = static_cast<weavelog::NameWhy>(why);
  return work_.commit(weavelog::add_other_name(person_.records.front(), name, by.trimmed().toStdString(), work_.now()), say);
}

bool PersonLinks::dropName(const QString& id, const QString& say) {
  return !person_.records.empty() && work_.commit(weavelog::drop_other_name(person_.records.front(), entityOf(id)), say);
}
