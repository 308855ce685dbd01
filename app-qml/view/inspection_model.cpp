#include "app-qml/view/inspection_model.h"

#include <QQmlEngine>
#include <algorithm>
#include <utility>

#include "app-qml/view/app_device.h"
#include "app-qml/view/job_cards.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "app-qml/view/word_list.h"
#include "core/base/text.h"
#include "core/desk/phrases.h"

namespace {

using weavelog::FrameFault;
using weavelog::FrameFinding;
using weavelog::FrameHold;
using weavelog::FramePart;
using weavelog::FrameRemedy;
using weavelog::Stage;

QVariantMap option(int value, const std::string& text) {
  return {{QStringLiteral("value"), value}, {QStringLiteral("text"), firstUpper(QString::fromStdString(text))}};
}

QString listed(const QStringList& parts) { return joined(parts, QStringLiteral(", ")); }

bool before(Stage stage) {
  return stage == Stage::received || stage == Stage::inspected || stage == Stage::waiting;
}

}  // namespace

InspectionModel::InspectionModel(Work& work, QObject* parent) : QObject(parent), work_(work) {
  speak();
  connect(&work_, &Work::changed, this, &InspectionModel::refresh);
}

InspectionModel* InspectionModel::create(QQmlEngine* engine, QJSEngine*) {
  return new InspectionModel(provided<AppDevice>(engine)->work());  // the engine takes it over
}

void InspectionModel::speak() {
  spoken_ = work_.language();
  places_.clear();
  faults_.clear();
  remedies_.clear();
  int index = 0;
  for (const auto& place : frame::places())
    places_.append(option(index++, weavelog::place_words(spoken_, place.part, place.clock())));
  for (const auto& choice : weavelog::choices(FrameFault{}))
    if (choice.value != FrameFault::unsaid)
      faults_.append(option(static_cast<int>(choice.value), weavelog::desk_words().say(spoken_, "frame_fault." + std::string(choice.name))));
  for (const auto& choice : weavelog::choices(FrameRemedy{}))
    if (choice.value != FrameRemedy::unsaid)
      remedies_.append(option(static_cast<int>(choice.value), weavelog::remedy_words(spoken_, choice.value)));
  emit wordsChanged();
}

void InspectionModel::show(const QString& book, const QString& job) {
  book_ = bookOf(book);
  job_ = entityOf(job);
  clearForm();
  refresh();
  if (hasJob_) emit asked();
}

void InspectionModel::showFirst(const QString& name) {
  const std::string wanted = weavelog::search_key(name.toStdString());
  for (const auto stage : {Stage::waiting, Stage::inspected, Stage::received, Stage::cut_out})
    for (const auto& row : weavelog::jobs_at_stage(work_.ledger(), work_.event(), stage))
      if (weavelog::search_key(playerOf(row).toStdString()).starts_with(wanted)) return show(idText(row.book), idText(row.job));
}

void InspectionModel::refresh() {
  if (spoken_ != work_.language()) {
    speak();
    emit formChanged();
  }
  const auto record = book_ ? weavelog::load_player(work_.ledger(), book_) : weavelog::fail(weavelog::FaultCode::not_found, "");
  const auto* job = record ? record->job(job_) : nullptr;
  hasJob_ = job != nullptr;
  open_ = canBeSound_ = doubted_ = false;
  holding_ = 0;
  const auto shownBefore = std::pair(std::exchange(findings_, {}), std::exchange(history_, {}));
  caution_.clear();
  if (job != nullptr) describe(*record, *job);
  followAsking();
  if (shownBefore.first != findings_ || shownBefore.second != history_) emit findingsChanged();
  emit changed();
}

void InspectionModel::describe(const weavelog::PlayerRecord& record, const weavelog::Loaded<weavelog::Job>& job) {
  player_ = QString::fromStdString(weavelog::listed_name(record.person.now));
  const auto* racket = record.racket(job.now.racket);
  racket_ = racket != nullptr ? racketText(racket->now) : QString();
  tag_ = job.now.tag_number ? QString::number(*job.now.tag_number) : QString();
  language_ = qtext(record.person.now.language).left(2);
  const auto now = record.stage_of(job_);
  stage_ = now.stage;
  open_ = !now.clash && before(now.stage);
  int number = 0;
  bool foundNow = false;
  for (const auto& finding : record.findings) {
    if (finding.now.racket != job.now.racket) continue;
    foundNow = foundNow || finding.now.job == job_;
    if (finding.now.mended_at) continue;
    auto made = row(record, finding);
    made.insert(QStringLiteral("number"), ++number);
    if (made[QStringLiteral("hold")].toInt() != 0) ++holding_;
    findings_.append(made);
  }
  for (const auto* finding : weavelog::findings_of(record, job.now.racket, true)) {
    if (!finding->now.mended_at) continue;
    const QString mended = tr("put right by %1, %2").arg(qtext(finding->now.mended_by), work_.timeText(finding->now.mended_at));
    history_.append(QVariantMap{{QStringLiteral("text"), firstUpper(qtext(weavelog::finding_words(work_.language(), finding->now)))},
                                {QStringLiteral("detail"), listed({detailOf(record, finding->now), mended})}});
  }
  canBeSound_ = open_ && now.stage == Stage::received && !foundNow;
  doubted_ = weavelog::doubt_about(record, job.now.racket).has_value();
  if ((doubted_ || fault_ == FrameFault::crack) && !shown_.was_shown(job_.hex(), weavelog::Caution::cracked_frame))
    caution_ = qtext(weavelog::caution_text(work_.language(), weavelog::Caution::cracked_frame));
}

QString InspectionModel::detailOf(const weavelog::PlayerRecord& record, const FrameFinding& finding) const {
  QString event;
  if (const auto* job = record.job(finding.job); job != nullptr && finding.job != job_)
    if (const auto* dropOff = record.drop_off(job->now.drop_off)) event = qtext(dropOff->now.event_name);
  return listed({qtext(finding.by), work_.timeText(finding.at), event});
}

QVariantMap InspectionModel::row(const weavelog::PlayerRecord& record, const weavelog::Loaded<FrameFinding>& finding) const {
  const FrameFinding& now = finding.now;
  const bool earlier = now.job != job_;
  const auto hold = earlier ? FrameHold::none : weavelog::holding_of(record, finding);
  const bool asks = now.proposal != FrameRemedy::unsaid;
  const bool answered = now.answer != FrameRemedy::unsaid && hold != FrameHold::two_answers;
  const auto remedy = [&](FrameRemedy value) { return qtext(weavelog::remedy_words(work_.language(), value)); };
  return {{QStringLiteral("id"), idText(finding.id())},
          {QStringLiteral("text"), firstUpper(qtext(weavelog::finding_words(work_.language(), now)))},
          {QStringLiteral("detail"), detailOf(record, now)},
          {QStringLiteral("part"), static_cast<int>(now.part)},
          {QStringLiteral("minutes"), now.clock_minutes ? static_cast<int>(*now.clock_minutes) : -1},
          {QStringLiteral("asks"), asks && !earlier},
          {QStringLiteral("proposal"), asks ? remedy(now.proposal) : QString()},
          {QStringLiteral("answer"), answered ? remedy(now.answer) : QString()},
          {QStringLiteral("answered"),
           answered ? tr("said by %1, taken by %2, %3").arg(qtext(now.answered_by), qtext(now.answer_taken_by), work_.timeText(now.answered_at))
                    : QString()},
          {QStringLiteral("hold"), static_cast<int>(hold)},
          {QStringLiteral("overridden"),
           now.override_at
               ? tr("%1 answers for going on, %2: %3").arg(qtext(now.override_by), work_.timeText(now.override_at), qtext(now.override_reason))
               : QString()},
          {QStringLiteral("earlier"), earlier}};
}

int InspectionModel::place() const {
  const auto& all = frame::places();
  const auto at = std::find(all.begin(), all.end(), place_);
  return at == all.end() ? -1 : static_cast<int>(at - all.begin());
}

void InspectionModel::setPlace(int index) {
  const auto& all = frame::places();
  const auto wanted = index < 0 || index >= static_cast<int>(all.size()) ? FramePlace{} : all[static_cast<std::size_t>(index)];
  if (wanted == place_) return;
  place_ = wanted;
  emit formChanged();
}

void InspectionModel::tap(double x, double y) {
  const auto tapped = frame::placeAt(x, y);
  if (!tapped.said() || tapped == place_) return;
  place_ = tapped;
  emit formChanged();
}

void InspectionModel::stepPlace(int by) {
  const int count = static_cast<int>(frame::places().size());
  const int at = place();
  setPlace(at < 0 ? 0 : ((at + by) % count + count) % count);
}

QPointF InspectionModel::pointOf(int part, int minutes, double inside) const {
  return frame::pointOf({static_cast<FramePart>(part), minutes}, inside);
}

void InspectionModel::setFault(int fault) {
  if (fault == this->fault() || fault < 0 || weavelog::name_of_choice(static_cast<FrameFault>(fault)).empty()) return;
  fault_ = static_cast<FrameFault>(fault);
  emit formChanged();
  refresh();  // the caution
}

void InspectionModel::setProposal(int proposal) {
  if (proposal == proposal_ || proposal < -1 || (proposal >= 0 && weavelog::name_of_choice(static_cast<FrameRemedy>(proposal)).empty())) return;
  proposal_ = proposal;
  emit formChanged();
}

void InspectionModel::setNote(const QString& note) {
  if (note == note_) return;
  note_ = note;
  emit formChanged();
}

bool InspectionModel::isBegun() const {
  return place_.said() || fault_ != FrameFault::unsaid || proposal_ >= 0 || !note_.trimmed().isEmpty();
}

InspectionModel::Missing InspectionModel::missing() const {
  if (!place_.said()) return Missing::Place;
  if (fault_ == FrameFault::unsaid) return Missing::Fault;
  if (fault_ == FrameFault::other && weavelog::is_blank(note_.toStdString())) return Missing::Note;
  return proposal_ < 0 ? Missing::Proposal : Missing::Nothing;
}

weavelog::FoundOnFrame InspectionModel::found() const {
  return {fault_, place_.part, place_.clock(), static_cast<FrameRemedy>(std::max(proposal_, 0)), note_.trimmed().toStdString()};
}

QString InspectionModel::summary() const {
  if (!place_.said()) return {};
  if (fault_ == FrameFault::unsaid) return firstUpper(qtext(weavelog::place_words(work_.language(), place_.part, place_.clock())));
  FrameFinding finding;
  finding.fault = fault_;
  finding.part = place_.part;
  finding.clock_minutes = place_.clock();
  return firstUpper(qtext(weavelog::finding_words(work_.language(), finding)));
}

void InspectionModel::clearForm() {
  place_ = {};
  fault_ = FrameFault::unsaid;
  proposal_ = -1;
  note_.clear();
  emit formChanged();
}

void InspectionModel::cautionRead() {
  (void)shown_.first_time(job_.hex(), weavelog::Caution::cracked_frame);
  refresh();
}

bool InspectionModel::ask(const QString& finding) {
  const auto record = weavelog::load_player(work_.ledger(), book_);
  const auto* asked = record ? record->finding(entityOf(finding)) : nullptr;
  if (asked == nullptr) return false;
  asking_ = Asking{book_, asked->id(), asked->seen};
  followAsking();
  return true;
}

void InspectionModel::followAsking() {
  const auto before = std::exchange(askingShown_, {});
  if (asking_) {
    const auto record = weavelog::load_player(work_.ledger(), asking_->book);
    const auto* finding = record ? record->finding(asking_->finding) : nullptr;
    QString meanwhile;
    if (finding == nullptr) {
      meanwhile = tr("It is not there any more.");
    } else if (finding->seen.cells != asking_->seen.cells) {
      const auto said = row(*record, *finding);
      const QString answer = said[QStringLiteral("answer")].toString();
      const QString mended =
          finding->now.mended_at ? tr("put right by %1, %2").arg(qtext(finding->now.mended_by), work_.timeText(finding->now.mended_at)) : QString();
      meanwhile = listed({answer, answer.isEmpty() ? QString() : said[QStringLiteral("answered")].toString(),
                          said[QStringLiteral("overridden")].toString(), firstUpper(mended)});
      if (meanwhile.isEmpty()) meanwhile = tr("Two different answers were taken: ask again.");
    }
    askingShown_ = {{QStringLiteral("player"), record ? QString::fromStdString(weavelog::listed_name(record->person.now)) : QString()},
                    {QStringLiteral("meanwhile"), meanwhile}};
  }
  if (askingShown_ != before) emit askingChanged();
}

weavelog::BookId InspectionModel::bookOfFinding(const weavelog::EntityId& finding) const {
  return asking_ && asking_->finding == finding ? asking_->book : book_;
}

bool InspectionModel::answeredMeanwhile() {
  followAsking();  // what came in this moment too
  const QString meanwhile = askingShown_[QStringLiteral("meanwhile")].toString();
  if (meanwhile.isEmpty()) return false;
  work_.tell({weavelog::FaultCode::conflict, tr("this was answered elsewhere meanwhile: %1").arg(meanwhile).toStdString(), {},
              tr("ask again if it does not hold").toStdString()});
  return true;
}

template <class Make>
bool InspectionModel::commit(const weavelog::BookId& book, Make make, const QString& say) {
  const auto record = weavelog::load_player(work_.ledger(), book);
  if (!record) return work_.commit(weavelog::fail(record.error()), {});
  return work_.commit(make(*record), say);
}

template <class Make>
bool InspectionModel::commitSaid(const QString& finding, Make make, const QString& say) {
  const auto id = entityOf(finding);
  const auto write = [&](const auto& record) { return make(record, id); };
  if (!asking_ || asking_->finding != id) return commit(book_, write, say);
  if (answeredMeanwhile()) return false;
  const auto asking = std::exchange(asking_, std::nullopt);
  if (commit(asking->book, write, say)) return true;
  asking_ = asking;
  followAsking();
  return false;
}

bool InspectionModel::noteFinding(const QString& say) {
  if (missing() != Missing::Nothing) return false;
  const auto one = found();
  if (!commit(book_, [&](const auto& record) { return weavelog::inspect(record, job_, std::span(&one, 1), work_.who().toStdString(), work_.now()); },
              say))
    return false;
  clearForm();
  return true;
}

bool InspectionModel::sound(const QString& say) {
  return commit(book_, [&](const auto& record) { return weavelog::inspect(record, job_, {}, work_.who().toStdString(), work_.now()); }, say);
}

bool InspectionModel::answer(const QString& finding, int remedy, const QString& saidBy, const QString& takenBy, const QString& say) {
  const weavelog::FrameAnswer said{static_cast<FrameRemedy>(remedy), saidBy.trimmed().toStdString(), takenBy.trimmed().toStdString(), work_.now()};
  return commitSaid(finding, [&](const auto& record, const auto& id) { return weavelog::answer_finding(record, id, said); }, say);
}

bool InspectionModel::letGoOn(const QString& finding, const QString& by, const QString& reason, const QString& say) {
  return commitSaid(
      finding,
      [&](const auto& record, const auto& id) {
        return weavelog::override_finding(record, id, by.trimmed().toStdString(), reason.trimmed().toStdString(), work_.now());
      },
      say);
}

bool InspectionModel::mend(const QString& finding, const QString& by, const QString& say) {
  return commit(
      book_, [&](const auto& record) { return weavelog::mend_finding(record, entityOf(finding), by.trimmed().toStdString(), work_.now()); }, say);
}

QVariantMap InspectionModel::question(const QString& finding, const QString& language) const {
  const auto record = weavelog::load_player(work_.ledger(), bookOfFinding(entityOf(finding)));
  const auto* asked = record ? record->finding(entityOf(finding)) : nullptr;
  const auto spoken = weavelog::Language::from(language.toStdString());
  if (asked == nullptr || !spoken) return {};
  const auto& words = weavelog::desk_words();
  QVariantList remedies;
  for (const auto& choice : weavelog::choices(FrameRemedy{})) {
    if (choice.value == FrameRemedy::unsaid) continue;
    std::string text = weavelog::remedy_words(*spoken, choice.value);
    if (choice.value == asked->now.proposal) text = words.say(*spoken, "inspection.ask.proposed", {{"remedy", text}});
    remedies.append(option(static_cast<int>(choice.value), text));
  }
  const auto* racket = record->racket(asked->now.racket);
  const std::string label = racket != nullptr ? racketText(racket->now).toStdString() : std::string();
  const bool crack = asked->now.fault == FrameFault::crack;
  return {{QStringLiteral("title"), qtext(label.empty() ? words.say(*spoken, "inspection.ask.no_racket")
                                                        : words.say(*spoken, "inspection.ask.title", {{"racket", label}}))},
          {QStringLiteral("question"), qtext(weavelog::finding_question(*spoken, asked->now))},
          {QStringLiteral("caution"),
           crack ? qtext(weavelog::caution_for_player(*spoken, weavelog::Caution::cracked_frame)) : QString()},
          {QStringLiteral("choose"), qtext(words.say(*spoken, "inspection.ask.choose"))},
          {QStringLiteral("who"), qtext(words.say(*spoken, "inspection.ask.who"))},
          {QStringLiteral("later"), qtext(words.say(*spoken, "inspection.ask.later"))},
          {QStringLiteral("yes"), qtext(words.say(*spoken, "inspection.ask.yes"))},
          {QStringLiteral("remedies"), remedies}};
}

QVariantList InspectionModel::findingsOn(const QString& book, const QString& job) const {
  const auto record = weavelog::load_player(work_.ledger(), bookOf(book));
  const auto* held = record ? record->job(entityOf(job)) : nullptr;
  QVariantList out;
  if (held == nullptr) return out;
  for (const auto* finding : weavelog::findings_of(*record, held->now.racket)) {
    const auto& now = finding->now;
    const auto decided = now.override_at && now.answer == FrameRemedy::unsaid ? FrameRemedy::unsaid : now.answer;
    out.append(QVariantMap{
        {QStringLiteral("text"), firstUpper(qtext(weavelog::finding_words(work_.language(), now)))},
        {QStringLiteral("detail"),
         decided != FrameRemedy::unsaid
             ? tr("The player's answer: %1").arg(qtext(weavelog::remedy_words(work_.language(), decided)))
             : now.override_at ? tr("%1 answers for going on, %2: %3").arg(qtext(now.override_by), work_.timeText(now.override_at),
                                                                          qtext(now.override_reason))
                               : listed({qtext(now.by), work_.timeText(now.at)})}});
  }
  return out;
}
