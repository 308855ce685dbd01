// DropOffDraft, continued: what is asked before the read-back, the read-back itself, and storing.

#include "app-qml/view/consent_words.h"
#include "app-qml/view/answer_form.h"
#include "app-qml/view/drop_off_draft.h"
#include "app-qml/view/drop_off_findings.h"
#include "app-qml/view/drop_off_questions.h"
#include "app-qml/view/drop_off_storing.h"
#include "app-qml/view/model_text.h"
#include "core/desk/phrases.h"

// --- open questions

QVariantList DropOffDraft::questions() const {
  return state_ ? listedQuestions(*state_, record_, work_) : QVariantList();
}

QStringList DropOffDraft::openFields() const {
  return state_ ? ::openFields(*state_, record_, inScope()) : QStringList();
}

bool DropOffDraft::settle(int question, int answer) {
  if (!state_ || !settleQuestion(*state_, record_, work_, question, answer)) return false;
  touch();
  return true;
}

QString DropOffDraft::settleOtherwise(int question, const QString& text, const QString& unit) {
  if (!state_) return {};
  const bool said = !text.trimmed().isEmpty();
  const auto settled = said ? ::settleOtherwise(*state_, record_, work_, question, text, unit) : weavelog::Outcome<>{};
  if (!said || !settled) reopenQuestion(*state_, record_, question);
  touch();
  return settled ? QString() : inOneLine(settled.error());
}

bool DropOffDraft::askedFirst(const QStringList& fields) {
  const auto open = openFields();
  if (std::none_of(fields.begin(), fields.end(), [&](const QString& field) { return open.contains(field); })) return false;
  emit questionFirst();
  return true;
}

// --- read back and store

QVariantMap DropOffDraft::answers() const {
  const auto language = state_ ? languageOf(*state_) : weavelog::Language{};
  return {{"yes", qtext(weavelog::desk_words().say(language, "read_back.yes"))},
          {"no", qtext(weavelog::desk_words().say(language, "read_back.no"))}};
}

bool DropOffDraft::consentOpen() const {
  return state_ && (state_->fresh || record_.person.now.consent == weavelog::ConsentChoice::unsaid);
}

bool DropOffDraft::consentFirst() const {
  return consentOpen() && state_->asWhole && !consentLater_ &&
         state_->consent == weavelog::ConsentChoice::unsaid;
}

int DropOffDraft::consent() const {
  return state_ ? static_cast<int>(state_->consent) : 0;
}

void DropOffDraft::answerConsent(int choice) {
  if (!state_) return;
  state_->consent = static_cast<weavelog::ConsentChoice>(choice);
  consentLater_ = choice == 0;
  touch();
}

QVariantMap DropOffDraft::consentWords() const {
  return ::consentWords(state_ ? languageOf(*state_) : weavelog::Language{}, false);
}

QString DropOffDraft::language() const {
  return state_ ? state_->language.section(u'-', 0, 0) : QString();
}

void DropOffDraft::setLanguage(const QString& language) {
  if (!state_ || !weavelog::Language::from(language.toStdString())) return;
  state_->language = language;
  touch();
}

QString DropOffDraft::readBack() const {
  return state_ ? qtext(weavelog::read_back_of(record_, requestOf(*state_, record_, work_))) : QString();
}

bool DropOffDraft::prepareReadBack() {
  if (!state_) return false;
  wanted_ = true;
  if (pickedCount() == 0 || !mistyped_.isEmpty() || !stillNeeded().isEmpty() || partInQuestion(*state_, record_) >= 0) {
    emit edited();
    return false;
  }
  // Their cards stood on the page; what is answered elsewhere from now on was not seen.
  questionsRead(*state_);
  const int refused = firstRefused(*state_, record_);
  // The racket in which the trouble lies is the one that is looked at then.
  if (refused >= 0 && pickedCount() > 1) scope_ = refused;
  emit edited();
  return refused < 0;
}

int DropOffDraft::troublePart() const {
  if (!state_) return -1;
  if (!mistyped_.isEmpty()) return std::max(partOfField(mistyped_.first().toStdString()), 0);
  const int part = partInTheWay(*state_, record_), asked = partInQuestion(*state_, record_);
  return asked >= 0 && (part < 0 || asked < part) ? asked : part;
}

void DropOffDraft::pointAtTrouble() {
  if (!mistyped_.isEmpty()) emit fieldFirst(mistyped_.first());
}

// Taken in before there was an event: the numbers come with it, while they are still on the screen.
void DropOffDraft::readTags() {
  if (!untagged_ || !work_.event()) return;
  const auto record = weavelog::load_player(work_.ledger(), untagged_);
  if (!record || record->drop_offs.empty() || record->drop_offs.back().now.event != work_.event()) return;
  untagged_ = {};
  tags_.clear();
  for (const auto& job : record->jobs)
    if (job.now.drop_off == record->drop_offs.back().id())
      if (const auto* racket = record->racket(job.now.racket))
        tags_.append(QVariantMap{{"tag", job.now.tag_number ? QString::number(*job.now.tag_number) : QString()}, {"racket", racketText(racket->now)}});
  emit edited();
}

bool DropOffDraft::store(const QString& shown) {
  if (!state_) return false;
  auto wanted = requestOf(*state_, record_, work_);
  std::optional<std::string> confirmed;
  if (!shown.isEmpty()) confirmed = shown.toStdString();
  // The yes to the read-back is the yes to the consent beside it.
  if (!confirmed) wanted.consent.reset();
  // Another answer came in while the player was reading.
  if (partInQuestion(*state_, record_) >= 0)
    return work_.commit(weavelog::fail(weavelog::FaultCode::conflict, tr("another answer has come in").toStdString(), {},
                                       tr("choose one of them and read back again").toStdString()), {});
  const auto asked = draftQuestions(*state_, record_);
  if (std::any_of(asked.begin(), asked.end(), [](const auto& one) { return one.closed(); }))
    return work_.commit(weavelog::fail(weavelog::FaultCode::conflict, tr("a question was answered at another tablet meanwhile").toStdString(), {},
                                       tr("look at the answer and read back again").toStdString()), {});
  const int count = pickedCount();
  const auto draft = weavelog::drop_off(record_, wanted, confirmed, work_.who().toStdString());
  if (draft && !state_->fresh) {
    // Before the drop-off itself, which is what an undo then takes back: a question that is closed can't be opened again.
    auto beside = weavelog::consent_beside(work_.ledger(), record_.book, wanted);
    if (!beside) return work_.commit(weavelog::fail(beside.error()), {});
    if (confirmed) {
      // Unconfirmed, it is only what this desk goes by.
      auto closed = closings(*state_, record_);
      if (!closed) return work_.commit(weavelog::fail(closed.error()), {});
      std::move(closed->begin(), closed->end(), std::back_inserter(*beside));
    }
    for (const auto& said : *beside)
      if (!work_.commit(said, {})) return false;
  }
  if (!work_.commit(draft, tr("Rackets taken in: %1").arg(count))) return false;
  tags_ = tagsOf(wanted, record_);
  untagged_ = work_.event() ? weavelog::BookId{} : record_.book;
  linkEntryOf(*state_, work_);
  state_.reset();
  keep();
  emit stored();
  emit edited();
  return true;
}
