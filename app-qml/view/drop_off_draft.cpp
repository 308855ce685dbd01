#include "app-qml/view/drop_off_draft.h"

#include <algorithm>
#include <utility>

#include "app-qml/view/drop_off_findings.h"
#include "app-qml/view/drop_off_lines.h"
#include "app-qml/view/drop_off_questions.h"
#include "app-qml/view/drop_off_wish.h"
#include "app-qml/view/model_text.h"
#include "core/base/local_time.h"
#include "core/base/localised.h"
#include "core/desk/adjust.h"
#include "core/desk/phrases.h"
#include "core/log/entity_id.h"
#include "core/model/queries.h"

namespace {

constexpr int keepMs = 150;
constexpr weavelog::UnixMs quarter = 15 * weavelog::kMinuteMs;
constexpr std::size_t mostRackets = 24;

// Whether the read-back has words of this language: otherwise its numbers would be told in one and the rest
// in another.
bool spoken(const QString& tag) {
  const auto language = weavelog::Language::from(tag.toStdString());
  const auto all = weavelog::desk_words().languages();
  return language &&
         std::any_of(all.begin(), all.end(), [&](const auto& one) { return one.base() == language->base(); });
}

}  // namespace

DropOffDraft::DropOffDraft(Work& work, QObject* parent) : QObject(parent), work_(work), shelf_(work) {
  keepSoon_.setSingleShot(true);
  keepSoon_.setInterval(keepMs);
  connect(&keepSoon_, &QTimer::timeout, this, &DropOffDraft::keep);
  connect(&work_, &Work::changed, this, [this] {
    if (!state_) return readTags();
    readRecord();
    emit edited();
  });
}

DropOffDraft::~DropOffDraft() {
  if (keepSoon_.isActive()) keep();
}

// --- begin, leave, resume

bool DropOffDraft::begin(const weavelog::BookId& player, bool asWhole) {
  auto loaded = weavelog::load_player(work_.ledger(), player);
  if (!loaded) return false;
  leave();
  // One that was left for this player is gone on with: nobody answers twice.
  if (auto left = shelf_.takeOf(player)) {
    goOn(std::move(*left));
    return true;
  }
  DropOffState state;
  state.book = player;
  state.asWhole = asWhole;
  state.person = loaded->person.now;
  state.language = qtext(loaded->person.now.language);
  start(std::move(state));
  state_->lines = linesOfLastTime(record_, work_.event());
  if (std::all_of(state_->lines.begin(), state_->lines.end(),
                  [this](const Line& line) { return openStageOf(line, record_, work_.event()) >= 0; }))
    addRacket();
  if (const auto person = weavelog::load_person(work_.ledger(), player)) addLinesOfOtherBooks(state_->lines, *person);
  touch();
  return true;
}

void DropOffDraft::beginNew(const weavelog::Person& person, const weavelog::EntityId& entry,
                            const QString& tensionUnit) {
  leave();
  DropOffState state;
  state.book = work_.ledger().create_book_id();
  state.fresh = true;
  state.asWhole = true;
  state.entry = entry;
  state.person = person;
  if (state.person.tension_unit == weavelog::Unit::none)
    state.person.tension_unit =
        weavelog::unit_from(tensionUnit.toStdString()).value_or(weavelog::Unit::kilogram_force);
  state.language = qtext(person.language);
  start(std::move(state));
  addRacket();
}

void DropOffDraft::start(DropOffState state) {
  if (state.id.isEmpty()) state.id = idText(weavelog::make_entity_id(weavelog::kDropOff, work_.now()));
  if (state.begun == 0) state.begun = work_.now();
  if (!spoken(state.language)) state.language = qtext(work_.language().tag());
  state_ = std::move(state);
  scope_ = -1;
  wanted_ = false;
  consentLater_ = false;
  mistyped_.clear();
  readRecord();
}

void DropOffDraft::readRecord() {
  auto loaded = weavelog::load_player(work_.ledger(), state_->book);
  record_ = loaded ? std::move(*loaded) : weavelog::record_of(state_->book, {}, {});
  followQuestions(*state_, record_, work_);
}

bool DropOffDraft::resume(const QString& id) {
  auto left = shelf_.take(id);
  if (!left) return false;
  leave();
  goOn(std::move(*left));
  return true;
}

void DropOffDraft::goOn(DropOffState state) {
  start(std::move(state));
  for (Line& line : state_->lines)
    if (openStageOf(line, record_, work_.event()) >= 0) line.picked = false;
  emit edited();
  emit unfinishedChanged();
}

void DropOffDraft::discard(const QString& id) {
  if (state_ && state_->id == id) state_.reset();
  (void)shelf_.take(id);
  keep();
  emit edited();
  emit unfinishedChanged();
}

void DropOffDraft::leave() {
  if (!state_) return;
  shelf_.put(std::move(*state_));
  state_.reset();
  keep();
  emit edited();
  emit unfinishedChanged();
}

void DropOffDraft::touch() {
  before_.reset();
  if (!keepSoon_.isActive()) keepSoon_.start();
  emit edited();
}

void DropOffDraft::keep() {
  keepSoon_.stop();
  shelf_.keep(state_);
}

// --- the rackets

QVariantList DropOffDraft::rackets() const {
  if (!state_) return {};
  QVariantList out = listedLines(state_->lines, record_, work_.event(), work_.language());
  for (qsizetype i = 0; i < out.size(); ++i) {
    const Line* line = &state_->lines[static_cast<std::size_t>(i)];
    const auto open = ::openFields(*state_, record_, {&line, 1});
    auto shown = out[i].toMap();
    for (const char* part : {"mains", "crosses"})
      if (open.contains(QString::fromLatin1(part) + QStringLiteral("_tension"))) shown.insert(QString::fromLatin1(part), QStringLiteral("?"));
    out[i] = shown;
  }
  return out;
}

int DropOffDraft::pickedCount() const {
  return state_ ? static_cast<int>(std::count_if(state_->lines.begin(), state_->lines.end(),
                                                 [](const Line& line) { return line.picked; }))
                : 0;
}

void DropOffDraft::pick(int racket, bool picked) {
  if (!state_ || racket < 0 || racket >= static_cast<int>(state_->lines.size())) return;
  Line& line = state_->lines[static_cast<std::size_t>(racket)];
  if (picked && openStageOf(line, record_, work_.event()) >= 0) return;
  line.picked = picked;
  if (!picked && scope_ == racket) scope_ = -1;
  touch();
}

void DropOffDraft::addRacket() {
  if (!state_ || state_->lines.size() >= mostRackets) return;
  state_->lines.push_back(oneMore(state_->lines, record_));
  touch();
}

void DropOffDraft::removeRacket(int racket) {
  if (!state_ || racket < 0 || racket >= static_cast<int>(state_->lines.size())) return;
  const auto at = state_->lines.begin() + racket;
  if (!at->asked.made) return;
  state_->lines.erase(at);
  scope_ = -1;
  touch();
}

void DropOffDraft::setRacket(int racket, const QString& field, const QVariant& value) {
  if (!state_ || racket < 0 || racket >= static_cast<int>(state_->lines.size())) return;
  auto& made = state_->lines[static_cast<std::size_t>(racket)].asked.made;
  if (made && takeEdited(*made, field.toStdString(), value, weavelog::Unit::none)) touch();
}

// --- the player

QString DropOffDraft::player() const {
  if (!state_) return {};
  return qtext(weavelog::listed_name(state_->fresh ? state_->person : record_.person.now));
}

QVariantMap DropOffDraft::person() const {
  return editables(state_ ? state_->person : weavelog::Person{});
}

void DropOffDraft::setPerson(const QString& field, const QVariant& value) {
  if (!state_ || !state_->fresh) return;
  if (!takeEdited(state_->person, field.toStdString(), value, weavelog::Unit::none)) return;
  if (field == QLatin1String("language") && spoken(value.toString()))
    state_->language = qtext(state_->person.language);
  touch();
}

weavelog::BookId DropOffDraft::book() const {
  return state_ ? state_->book : weavelog::BookId{};
}

std::optional<weavelog::PersonFacts> DropOffDraft::newcomer() const {
  if (!state_ || !state_->fresh) return std::nullopt;
  auto facts = weavelog::facts_of(state_->person);
  for (const Line& line : state_->lines) {
    const auto& asked = line.asked;
    if (asked.made && !(asked.made->maker.empty() && asked.made->model.empty()))
      facts.rackets.push_back(qtext(asked.made->maker + " " + asked.made->model).simplified().toStdString());
    for (const auto* string : {&asked.agreed.mains_string, &asked.agreed.crosses_string})
      if (!string->empty()) facts.strings.push_back(*string);
  }
  return facts;
}

bool DropOffDraft::saysNothing() const {
  if (!state_ || state_->lines.size() > 1) return false;
  return std::all_of(state_->lines.begin(), state_->lines.end(), [](const Line& line) {
    auto racket = line.asked.made.value_or(weavelog::Racket{});
    racket.label.clear();
    return line.asked.agreed == weavelog::Agreed{} && racket == weavelog::Racket{};
  });
}

void DropOffDraft::turnInto(const weavelog::BookId& player) {
  const auto loaded = weavelog::load_player(work_.ledger(), player);
  if (!state_ || !state_->fresh || !loaded) return;
  DropOffState state = std::move(*state_);
  state.book = player;
  state.fresh = false;
  state.entry = {};
  state.person = loaded->person.now;
  if (!state.person.language.empty()) state.language = qtext(state.person.language);
  start(std::move(state));
  touch();
}

// --- what is asked for

std::vector<DropOffDraft::Line*> DropOffDraft::inScope() {
  std::vector<Line*> lines;
  if (!state_) return lines;
  for (std::size_t i = 0; i < state_->lines.size(); ++i)
    if (scope_ < 0 ? state_->lines[i].picked : static_cast<int>(i) == scope_)
      lines.push_back(&state_->lines[i]);
  return lines;
}

std::vector<const DropOffDraft::Line*> DropOffDraft::inScope() const {
  std::vector<const Line*> lines;
  if (!state_) return lines;
  for (std::size_t i = 0; i < state_->lines.size(); ++i)
    if (scope_ < 0 ? state_->lines[i].picked : static_cast<int>(i) == scope_)
      lines.push_back(&state_->lines[i]);
  return lines;
}

void DropOffDraft::setScope(int scope) {
  if (scope == scope_) return;
  before_.reset();
  scope_ = state_ && scope >= 0 && scope < static_cast<int>(state_->lines.size()) ? scope : -1;
  emit edited();
}

QStringList DropOffDraft::differing() const {
  return differingFields(inScope());
}

QVariantMap DropOffDraft::apart() const {
  return apartTexts(inScope(), work_.language());
}

QVariantList DropOffDraft::groups() const {
  return tensionGroups(inScope(), record_, work_.language());
}

void DropOffDraft::nameGroup(int group, const QString& name) {
  if (nameTensionGroup(inScope(), group, name.simplified().left(60), record_)) touch();
}

QVariantMap DropOffDraft::wish() const {
  QVariantMap out = wishOf(inScope());
  // While it is open which answer holds, none of them is shown as the wish.
  const QVariantMap nothing = editables(weavelog::Agreed{});
  for (const auto& name : openFields()) out.insert(name, nothing.value(name));
  return out;
}

weavelog::Unit DropOffDraft::tensionUnit() const {
  if (state_) {
    for (const Line& line : state_->lines)
      if (const auto unit = weavelog::tension_unit_of(line.asked.agreed)) return *unit;
    const auto& person = state_->fresh ? state_->person : record_.person.now;
    if (person.tension_unit != weavelog::Unit::none) return person.tension_unit;
  }
  return newUnit_;
}

QVariantMap DropOffDraft::units() const {
  return unitsOf(inScope(), tensionUnit());
}

weavelog::Unit DropOffDraft::unitOf(const QString& field) const {
  return weavelog::unit_from(units().value(field).toString().toStdString()).value_or(tensionUnit());
}

void DropOffDraft::set(const QString& field, const QVariant& value) {
  if (askedFirst({field})) return;
  const auto lines = inScope();
  const bool emptied = value.typeId() == QMetaType::QString && value.toString().isEmpty();
  auto before = std::exchange(before_, std::nullopt);
  if (before && before->field != field) before.reset();
  const bool differs = differing().contains(field);
  if (emptied && before) {
    for (std::size_t i = 0; i < lines.size(); ++i) copyWish(before->agreed[i], lines[i]->asked.agreed, field);
    return touch();
  }
  if (emptied && differs) return;
  if (differs) {
    before = Before{field, {}};
    for (const Line* line : lines) before->agreed.push_back(line->asked.agreed);
  }
  if (setWish(lines, field, value, unitOf(field))) touch();
  before_ = std::move(before);
}

void DropOffDraft::stepEach(const QString& field, const QString& by, const QString& least, const QString& most) {
  if (askedFirst({field})) return;
  stepWish(inScope(), field, by, least, most, tensionUnit());
  touch();
}

void DropOffDraft::mistyped(const QString& field, const QString& text) {
  mistyped_.removeAll(field);
  if (!text.isEmpty()) mistyped_.append(field);
}

QString DropOffDraft::usualFirst(const QString& field) const {
  return ::usualFirst(field.toStdString(), unitOf(field));
}

void DropOffDraft::setUnit(const QString& field, const QString& unit) {
  const auto wanted = weavelog::unit_from(unit.toStdString());
  if (!wanted || askedFirst({field})) return;
  newUnit_ = *wanted;
  if (state_ && state_->fresh) state_->person.tension_unit = *wanted;
  setWishUnit(inScope(), field, *wanted);
  touch();
}

void DropOffDraft::adjust(const QString& part, const QString& by) {
  const auto amount = weavelog::Decimal::parse(by.toStdString());
  if (!amount || askedFirst({part + QStringLiteral("_tension")})) return;
  if (const auto taken = adjustWish(inScope(), part, *amount, tensionUnit()); !taken)
    work_.tell(taken.error());
  touch();
}

void DropOffDraft::spread(int each, const QString& by) {
  const auto amount = weavelog::Decimal::parse(by.toStdString());
  const auto lines = inScope();
  if (!amount || each < 1 || lines.size() < 2 || askedFirst({"mains_tension", "crosses_tension"})) return;
  const weavelog::Agreed first = lines.front()->asked.agreed;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    auto& agreed = lines[i]->asked.agreed;
    agreed.mains_tension = first.mains_tension;
    agreed.crosses_tension = first.crosses_tension;
    for (std::size_t step = 0; step < i / static_cast<std::size_t>(each); ++step)
      for (const char* part : {"mains", "crosses"}) {
        const auto& said = part[0] == 'm' ? first.mains_tension : first.crosses_tension;
        if (!said) continue;
        if (const auto taken = adjustWish({&lines[i], 1}, QString::fromLatin1(part), *amount, tensionUnit()); !taken) work_.tell(taken.error());
      }
  }
  touch();
}

QStringList DropOffDraft::steps(const QString& part) const {
  return usualSteps(unitOf(part + QStringLiteral("_tension")));
}

void DropOffDraft::sameForCrosses() {
  if (askedFirst({"mains_string", "mains_gauge", "crosses_string", "crosses_gauge"})) return;
  sameStringForCrosses(inScope());
  touch();
}

void DropOffDraft::askAll() {
  if (!state_ || state_->asWhole) return;
  state_->asWhole = true;
  touch();
}

QVariantList DropOffDraft::changes() const {
  QVariantList out;
  QStringList open;
  for (const auto& name : openFields()) open.append(fieldLabel(work_.language(), name.toStdString()));
  for (const auto& change : changesOf(inScope(), work_.language()))
    if (!open.contains(change.toMap()["label"].toString())) out.append(change);
  return out;
}

QVariantMap DropOffDraft::findings() const {
  return findingsOf(inScope(), record_, work_.language(), wanted_);
}

QVariantList DropOffDraft::cautions() const {
  return state_ ? cautionsOf(*state_, record_, work_.language()) : QVariantList();
}

QStringList DropOffDraft::stillNeeded() const {
  return state_ ? stillNeededFor(*state_, record_, work_.language()) : QStringList();
}

// --- when

QString DropOffDraft::readyBy() const {
  if (!state_ || !state_->dropOff.ready_by) return {};
  return qtext(weavelog::localised(work_.language(), weavelog::Moment{*state_->dropOff.ready_by, work_.zone(),
                                                                      weavelog::Moment::Form::time_of_day}));
}

QString DropOffDraft::readyDay() const {
  return state_ ? dayText(work_.language(), state_->dropOff.ready_by, work_.zone()) : QString();
}

int DropOffDraft::rush() const {
  return state_ ? static_cast<int>(state_->dropOff.rush) : 0;
}

QVariantMap DropOffDraft::dropOff() const {
  return editables(state_ ? state_->dropOff : weavelog::DropOff{});
}

void DropOffDraft::setDropOff(const QString& field, const QVariant& value) {
  if (state_ && takeEdited(state_->dropOff, field.toStdString(), value, weavelog::Unit::none)) touch();
}

void DropOffDraft::readyIn(int minutes) {
  if (!state_) return;
  const auto at = work_.now() + minutes * weavelog::kMinuteMs;
  state_->dropOff.ready_by = (at + quarter - 1) / quarter * quarter;
  touch();
}

void DropOffDraft::moveReady(int minutes) {
  if (!state_) return;
  if (!state_->dropOff.ready_by) return readyIn(60);
  // No earlier than the next quarter of an hour: "now" has passed when the player confirms it, and would be refused.
  state_->dropOff.ready_by = std::max(*state_->dropOff.ready_by + minutes * weavelog::kMinuteMs, (work_.now() / quarter + 1) * quarter);
  touch();
}

std::optional<weavelog::UnixMs> DropOffDraft::readyAt() const { return state_ ? state_->dropOff.ready_by : std::nullopt; }

void DropOffDraft::readyAt(weavelog::UnixMs at) {
  if (!state_) return;
  state_->dropOff.ready_by = at;
  touch();
}

std::vector<DropOffDraft::Asked> DropOffDraft::asked() const {
  std::vector<Asked> out;
  if (!state_) return out;
  for (const Line& line : state_->lines) {
    if (!line.picked) continue;
    Asked one{line.asked.agreed, {}};
    const auto* known = line.asked.made ? nullptr : record_.racket(line.asked.racket);
    const weavelog::Racket* racket = line.asked.made ? &*line.asked.made : known != nullptr ? &known->now : nullptr;
    if (racket != nullptr && racket->mains_count && racket->crosses_count)
      one.pattern = std::to_string(*racket->mains_count) + "x" + std::to_string(*racket->crosses_count);
    out.push_back(std::move(one));
  }
  return out;
}

void DropOffDraft::noReadyTime() {
  if (!state_) return;
  state_->dropOff.ready_by.reset();
  touch();
}
