#include "app-qml/view/drop_off_draft.h"

#include <algorithm>

#include "app-qml/view/model_text.h"
#include "core/base/localised.h"
#include "core/desk/adjust.h"
#include "core/desk/check_setup.h"
#include "core/desk/first_time.h"
#include "core/desk/last_time.h"
#include "core/desk/phrases.h"
#include "core/desk/stages.h"
#include "core/model/event.h"
#include "core/model/queries.h"

namespace {

constexpr std::string_view draftsKey = "app.drop_offs";
constexpr int keepMs = 150;
constexpr weavelog::UnixMs minute = 60'000;
constexpr weavelog::UnixMs quarter = 15 * minute;
constexpr std::size_t mostRackets = 24;

const std::vector<std::string_view>& quantityFields() {
  static const std::vector<std::string_view> fields{"mains_tension", "crosses_tension"};
  return fields;
}

std::optional<weavelog::Quantity>* tensionOf(weavelog::Agreed& agreed, std::string_view field) {
  if (field == "mains_tension") return &agreed.mains_tension;
  if (field == "crosses_tension") return &agreed.crosses_tension;
  return nullptr;
}

weavelog::Unit unitOfField(std::string_view field, weavelog::Unit tension) {
  if (field.ends_with("_gauge")) return weavelog::Unit::millimetre;
  if (field.ends_with("_prestretch")) return weavelog::Unit::percent;
  return tension;
}

// Whether the read-back has words of this language: otherwise its numbers would be told in one and the rest
// in another.
bool spoken(const QString& tag) {
  const auto language = weavelog::Language::from(tag.toStdString());
  const auto all = weavelog::desk_words().languages();
  return language &&
         std::any_of(all.begin(), all.end(), [&](const auto& one) { return one.base() == language->base(); });
}

}  // namespace

DropOffDraft::DropOffDraft(Work& work, QObject* parent) : QObject(parent), work_(work) {
  if (const auto kept = work_.ledger().remembered(draftsKey))
    others_ = dropOffsFrom(
        QByteArray(reinterpret_cast<const char*>(kept->data()), static_cast<qsizetype>(kept->size())));
  keepSoon_.setSingleShot(true);
  keepSoon_.setInterval(keepMs);
  connect(&keepSoon_, &QTimer::timeout, this, &DropOffDraft::keep);
  connect(&work_, &Work::changed, this, [this] {
    if (!state_) return;
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
  const auto left = std::find_if(others_.begin(), others_.end(),
                                 [&](const DropOffState& other) { return other.book == player; });
  if (left != others_.end()) return resume(left->id);
  DropOffState state;
  state.book = player;
  state.asWhole = asWhole;
  state.person = loaded->person.now;
  state.language = qtext(loaded->person.now.language);
  start(std::move(state));
  fillLines();
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
  if (state.id.isEmpty()) state.id = idText(weavelog::make_id<weavelog::EntityId>(work_.now()));
  if (state.begun == 0) state.begun = work_.now();
  if (!spoken(state.language)) state.language = qtext(work_.language().tag());
  state_ = std::move(state);
  scope_ = -1;
  wanted_ = false;
  readRecord();
}

void DropOffDraft::readRecord() {
  auto loaded = weavelog::load_player(work_.ledger(), state_->book);
  record_ = loaded ? std::move(*loaded) : weavelog::record_of(state_->book, {}, {});
}

// The rackets of last time first and picked, then the player's others.
void DropOffDraft::fillLines() {
  const auto last = weavelog::rackets_of_last_drop_off(record_);
  std::vector<weavelog::EntityId> rackets = last;
  for (const auto& racket : record_.rackets)
    if (std::find(rackets.begin(), rackets.end(), racket.id()) == rackets.end())
      rackets.push_back(racket.id());
  for (const auto& racket : rackets) {
    Line line;
    const auto before = weavelog::same_as_last_time(record_, racket);
    if (before) line.asked = weavelog::line_from(*before);
    line.asked.racket = racket;
    line.picked = std::find(last.begin(), last.end(), racket) != last.end() && stageOf(line) < 0;
    state_->lines.push_back(std::move(line));
  }
  if (pickedCount() == 0 && std::none_of(state_->lines.begin(), state_->lines.end(),
                                         [this](const Line& line) { return stageOf(line) < 0; }))
    addRacket();
}

bool DropOffDraft::resume(const QString& id) {
  const auto at =
      std::find_if(others_.begin(), others_.end(), [&](const DropOffState& other) { return other.id == id; });
  if (at == others_.end()) return false;
  DropOffState state = std::move(*at);
  others_.erase(at);
  leave();
  start(std::move(state));
  for (Line& line : state_->lines)
    if (stageOf(line) >= 0) line.picked = false;
  emit edited();
  emit unfinishedChanged();
  return true;
}

void DropOffDraft::discard(const QString& id) {
  if (state_ && state_->id == id) state_.reset();
  std::erase_if(others_, [&](const DropOffState& other) { return other.id == id; });
  keep();
  emit edited();
  emit unfinishedChanged();
}

void DropOffDraft::leave() {
  if (!state_) return;
  others_.insert(others_.begin(), std::move(*state_));
  state_.reset();
  keep();
  emit edited();
  emit unfinishedChanged();
}

void DropOffDraft::touch() {
  if (!keepSoon_.isActive()) keepSoon_.start();
  emit edited();
}

void DropOffDraft::keep() {
  keepSoon_.stop();
  std::vector<DropOffState> all = others_;
  if (state_) all.insert(all.begin(), *state_);
  const QByteArray bytes = toBytes(all);
  const auto view = weavelog::ByteView(reinterpret_cast<const std::uint8_t*>(bytes.constData()),
                                       static_cast<std::size_t>(bytes.size()));
  if (auto kept = work_.ledger().remember(draftsKey, view); !kept) work_.tell(kept.error());
}

QVariantList DropOffDraft::unfinished() const {
  QVariantList all;
  for (const auto& state : others_)
    all.append(QVariantMap{
        {"id", state.id},
        {"player", qtext(weavelog::listed_name(state.person))},
        {"rackets", static_cast<int>(std::count_if(state.lines.begin(), state.lines.end(),
                                                   [](const Line& line) { return line.picked; }))},
        {"day", work_.timeText(state.begun)}});
  return all;
}

// --- the rackets

const weavelog::Racket* DropOffDraft::racketOf(const Line& line) const {
  if (line.asked.made) return &*line.asked.made;
  const auto* known = record_.racket(line.asked.racket);
  return known ? &known->now : nullptr;
}

int DropOffDraft::stageOf(const Line& line) const {
  if (line.asked.made || !line.asked.racket) return -1;
  for (const auto& job : record_.jobs) {
    if (job.now.racket != line.asked.racket) continue;
    const auto stage = record_.stage_of(job.id()).stage;
    if (weavelog::is_open(stage)) return static_cast<int>(stage);
  }
  return -1;
}

QVariantList DropOffDraft::rackets() const {
  QVariantList all;
  if (!state_) return all;
  for (const Line& line : state_->lines) {
    const auto* racket = racketOf(line);
    const auto& wish = line.asked.agreed;
    all.append(
        QVariantMap{{"label", racket ? qtext(racket->label) : QString()},
                    {"model", racket ? qtext(racket->maker + " " + racket->model).simplified() : QString()},
                    {"fields", editables(racket ? *racket : weavelog::Racket{})},
                    {"picked", line.picked},
                    {"stage", stageOf(line)},
                    {"made", line.asked.made.has_value()},
                    {"mains", saidText(work_.language(), wish.mains_tension)},
                    {"crosses", saidText(work_.language(), wish.crosses_tension)}});
  }
  return all;
}

int DropOffDraft::pickedCount() const {
  return state_ ? static_cast<int>(std::count_if(state_->lines.begin(), state_->lines.end(),
                                                 [](const Line& line) { return line.picked; }))
                : 0;
}

void DropOffDraft::pick(int racket, bool picked) {
  if (!state_ || racket < 0 || racket >= static_cast<int>(state_->lines.size())) return;
  Line& line = state_->lines[static_cast<std::size_t>(racket)];
  if (picked && stageOf(line) >= 0) return;
  line.picked = picked;
  if (!picked && scope_ == racket) scope_ = -1;
  touch();
}

void DropOffDraft::addRacket() {
  if (!state_ || state_->lines.size() >= mostRackets) return;
  Line line;
  // The next one is wanted like the one before it, as a rule.
  const auto like =
      std::find_if(state_->lines.rbegin(), state_->lines.rend(), [](const Line& one) { return one.picked; });
  if (like != state_->lines.rend()) {
    line.asked.agreed = like->asked.agreed;
    line.asked.setup = like->asked.setup;
    line.asked.last_time = like->asked.last_time;
  } else if (const auto before = weavelog::same_as_last_time(record_, {}); before && before->questions.empty()) {
    // None is picked, as when all the others are in the room: like the player's newest.
    line.asked = weavelog::line_from(*before);
    line.asked.racket = {};
  }
  line.asked.made = weavelog::Racket{};
  int number = 0;
  for (const Line& one : state_->lines)
    if (const auto* racket = racketOf(one)) number = std::max(number, qtext(racket->label).toInt());
  line.asked.made->label = std::to_string(std::max(number, static_cast<int>(state_->lines.size())) + 1);
  if (!line.asked.setup) line.asked.keep_as = tr("Usual").toStdString();
  line.picked = true;
  state_->lines.push_back(std::move(line));
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
  scope_ = state_ && scope >= 0 && scope < static_cast<int>(state_->lines.size()) ? scope : -1;
  emit edited();
}

QStringList DropOffDraft::differing() const {
  QStringList names;
  const auto lines = inScope();
  for (std::size_t i = 1; i < lines.size(); ++i)
    for (const auto& change : weavelog::compare(lines[0]->asked.agreed, lines[i]->asked.agreed))
      if (!names.contains(qtext(change.name))) names.append(qtext(change.name));
  return names;
}

QVariantMap DropOffDraft::wish() const {
  const auto lines = inScope();
  QVariantMap out = editables(lines.empty() ? weavelog::Agreed{} : lines.front()->asked.agreed);
  const QVariantMap nothing = editables(weavelog::Agreed{});
  for (const auto& name : differing()) out.insert(name, nothing.value(name));
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
  QVariantMap out;
  const auto lines = inScope();
  for (const auto field : quantityFields()) {
    weavelog::Unit unit = weavelog::Unit::none;
    for (const Line* line : lines) {
      weavelog::Agreed agreed = line->asked.agreed;
      if (const auto* said = tensionOf(agreed, field); said && *said) unit = (*said)->unit;
    }
    out.insert(qtext(field), qtext(weavelog::symbol_of(unit == weavelog::Unit::none ? tensionUnit() : unit)));
  }
  return out;
}

void DropOffDraft::set(const QString& field, const QVariant& value) {
  const std::string name = field.toStdString();
  const auto unit = unitOfField(
      name, weavelog::unit_from(units().value(field).toString().toStdString()).value_or(tensionUnit()));
  bool taken = false;
  for (Line* line : inScope()) taken = takeEdited(line->asked.agreed, name, value, unit) || taken;
  if (taken) touch();
}

void DropOffDraft::setUnit(const QString& field, const QString& unit) {
  const auto wanted = weavelog::unit_from(unit.toStdString());
  if (!wanted) return;
  newUnit_ = *wanted;
  if (state_ && state_->fresh) state_->person.tension_unit = *wanted;
  for (Line* line : inScope()) {
    auto* said = tensionOf(line->asked.agreed, field.toStdString());
    if (said && *said) (*said)->unit = *wanted;
  }
  touch();
}

void DropOffDraft::adjust(const QString& part, const QString& by) {
  const auto amount = weavelog::Decimal::parse(by.toStdString());
  if (!amount) return;
  weavelog::TensionChange change;
  change.part = part == QLatin1String("mains") ? weavelog::StringPart::mains : weavelog::StringPart::crosses;
  const std::string field = part.toStdString() + "_tension";
  for (Line* line : inScope()) {
    const auto* said = tensionOf(line->asked.agreed, field);
    change.by = {*amount, said && *said ? (*said)->unit : tensionUnit()};
    const auto changed = weavelog::adjusted(line->asked.agreed, change);
    if (!changed) {
      work_.tell(changed.error());
      break;
    }
    line->asked.agreed = *changed;
    // 25.0 and 25 are one tension; what was said is kept where it was a whole step.
    if (auto* now = tensionOf(line->asked.agreed, field); now && *now)
      (*now)->amount = (*now)->amount.trimmed();
  }
  touch();
}

QStringList DropOffDraft::steps(const QString& part) const {
  const auto unit =
      weavelog::unit_from(units().value(part + QStringLiteral("_tension")).toString().toStdString());
  if (unit == weavelog::Unit::newton) return {"-10", "-5", "5", "10"};
  if (unit == weavelog::Unit::pound_force) return {"-2", "-1", "1", "2"};
  return {"-1", "-0.5", "0.5", "1"};
}

void DropOffDraft::sameForCrosses() {
  for (Line* line : inScope()) {
    auto& wish = line->asked.agreed;
    wish.crosses_string = wish.mains_string;
    wish.crosses_gauge = wish.mains_gauge;
    wish.crosses_supply = wish.mains_supply;
    wish.crosses_owner = wish.mains_owner;
  }
  touch();
}

void DropOffDraft::askAll() {
  if (!state_ || state_->asWhole) return;
  state_->asWhole = true;
  touch();
}

QVariantList DropOffDraft::changes() const {
  QVariantList all;
  for (const Line* line : inScope()) {
    if (!line->asked.last_time) continue;
    for (const auto& change : weavelog::compare(*line->asked.last_time, line->asked.agreed)) {
      const QVariantMap row{
          {"label", fieldLabel(work_.language(), change.name)},
          {"before", qtext(weavelog::value_words(work_.language(), change.name, change.before))},
          {"after", qtext(weavelog::value_words(work_.language(), change.name, change.after))}};
      if (!all.contains(row)) all.append(row);
    }
  }
  return all;
}

QVariantMap DropOffDraft::findings() const {
  QVariantMap out;
  for (const Line* line : inScope()) {
    for (const auto& finding : weavelog::check_setup(line->asked.agreed, racketOf(*line))) {
      if (finding.code == "missing" && !wanted_) continue;
      const QString field = qtext(finding.field);
      if (out.contains(field)) continue;
      out.insert(field, QVariantMap{{"what", qtext(finding.what(work_.language()))},
                                    {"toDo", qtext(finding.what_to_do(work_.language()))},
                                    {"refused", finding.refused}});
    }
  }
  return out;
}

QStringList DropOffDraft::stillNeeded() const {
  QStringList words;
  if (!state_) return words;
  for (const Line& line : state_->lines) {
    if (!line.picked) continue;
    weavelog::FirstTimeAnswers answers;
    answers.person = state_->fresh ? state_->person : record_.person.now;
    answers.agreed = line.asked.agreed;
    for (const auto& question : weavelog::still_needed(answers)) {
      const QString word = qtext(weavelog::field_words(work_.language(), question.field));
      if (!words.contains(word)) words.append(word);
    }
  }
  return words;
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
  const auto at = work_.now() + minutes * minute;
  state_->dropOff.ready_by = (at + quarter - 1) / quarter * quarter;
  touch();
}

void DropOffDraft::moveReady(int minutes) {
  if (!state_) return;
  if (!state_->dropOff.ready_by) return readyIn(60);
  state_->dropOff.ready_by = std::max(*state_->dropOff.ready_by + minutes * minute, work_.now());
  touch();
}

void DropOffDraft::noReadyTime() {
  if (!state_) return;
  state_->dropOff.ready_by.reset();
  touch();
}

// --- read back and store

weavelog::DropOffRequest DropOffDraft::request() const {
  weavelog::DropOffRequest out;
  if (state_->fresh) out.new_person = state_->person;
  out.drop_off = state_->dropOff;
  out.drop_off.event = work_.event();
  out.drop_off.at = work_.now();
  for (const auto& event : weavelog::all_events(work_.ledger())) {
    if (event.book != work_.event()) continue;
    out.drop_off.event_name = event.name;
    out.drop_off.place = event.place;
  }
  for (const Line& line : state_->lines)
    if (line.picked) out.lines.push_back(line.asked);
  if (work_.event()) {
    std::int64_t tag = weavelog::highest_tag(work_.ledger(), work_.event());
    for (auto& line : out.lines) line.tag_number = ++tag;
  }
  out.time_zone = work_.zone();
  out.language = readBackLanguage();
  out.device = work_.ledger().self().id();
  return out;
}

weavelog::Language DropOffDraft::readBackLanguage() const {
  return weavelog::Language::from(state_ ? state_->language.toStdString() : std::string())
      .value_or(weavelog::Language{});
}

QVariantMap DropOffDraft::answers() const {
  return {{"yes", qtext(weavelog::desk_words().say(readBackLanguage(), "read_back.yes"))},
          {"no", qtext(weavelog::desk_words().say(readBackLanguage(), "read_back.no"))}};
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
  return state_ ? qtext(weavelog::read_back_of(record_, request())) : QString();
}

bool DropOffDraft::prepareReadBack() {
  if (!state_) return false;
  wanted_ = true;
  bool sound = pickedCount() > 0 && stillNeeded().isEmpty();
  for (std::size_t i = 0; i < state_->lines.size() && sound; ++i) {
    const Line& line = state_->lines[i];
    if (!line.picked) continue;
    sound = weavelog::require_sound(line.asked.agreed, racketOf(line)).has_value();
    // The racket in which the trouble lies is the one that is looked at then.
    if (!sound && pickedCount() > 1) scope_ = static_cast<int>(i);
  }
  emit edited();
  return sound;
}

int DropOffDraft::troublePart() const {
  if (!state_) return -1;
  if (pickedCount() == 0 || (state_->fresh && state_->person.family_name.empty())) return 0;
  int part = 3;
  for (const Line& line : state_->lines) {
    if (!line.picked) continue;
    for (const auto& finding : weavelog::check_setup(line.asked.agreed, racketOf(line)))
      if (finding.refused)
        part =
            std::min(part, finding.field.ends_with("_string") || finding.field.ends_with("_gauge") ? 1 : 2);
  }
  return part == 3 ? -1 : part;
}

bool DropOffDraft::store(const QString& shown) {
  if (!state_) return false;
  const auto wanted = request();
  std::optional<std::string> confirmed;
  if (!shown.isEmpty()) confirmed = shown.toStdString();
  const int count = pickedCount();
  if (!work_.commit(weavelog::drop_off(record_, wanted, confirmed, work_.who().toStdString()),
                    tr("Rackets taken in: %1").arg(count)))
    return false;
  tags_.clear();
  for (const auto& line : wanted.lines) {
    const auto* racket = line.made ? &*line.made : &record_.racket(line.racket)->now;
    tags_.append(QVariantMap{{"tag", line.tag_number ? QString::number(*line.tag_number) : QString()},
                             {"racket", racketText(*racket)}});
  }
  linkEntry();
  state_.reset();
  keep();
  emit stored();
  emit edited();
  return true;
}

// The entry list says from now on which book is this player's. A failure costs the link only, not the
// drop-off.
void DropOffDraft::linkEntry() {
  if (!state_->fresh || !state_->entry) return;
  const auto entry = work_.ledger().entity(work_.event(), state_->entry);
  if (!entry) return;
  auto item = weavelog::from_state<weavelog::EntryListItem>(*entry);
  item.player = state_->book;
  weavelog::Draft draft(work_.event(), weavelog::kEventBook, weavelog::kActLinkEntry);
  weavelog::put_changes(draft, *entry, item);
  if (const auto linked = work_.workplace().commit(draft); !linked) work_.tell(linked.error());
}
