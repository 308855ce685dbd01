#include "core/held/held_words.h"

#include <algorithm>
#include <array>

#include "core/base/local_time.h"
#include "core/desk/export.h"
#include "core/desk/inspection.h"
#include "core/desk/money.h"
#include "core/desk/phrases.h"
#include "core/desk/work_list.h"
#include "core/model/draw.h"
#include "core/model/event.h"
#include "core/model/money.h"
#include "core/model/stock.h"

namespace weavelog {
namespace {

/// The prefix of a choice's words, and whose words they are.
struct ChoiceWords {
  const Phrases& (*phrases)();
  std::string_view prefix;
};
constexpr ChoiceWords words_of(Hand) { return {held_phrasebook, "hand."}; }
constexpr ChoiceWords words_of(ConsentChoice) { return {desk_words, "consent."}; }
constexpr ChoiceWords words_of(Supply) { return {desk_words, "choice."}; }
constexpr ChoiceWords words_of(StringOwner) { return {desk_words, "choice."}; }
constexpr ChoiceWords words_of(Rush) { return {held_phrasebook, "rush."}; }
constexpr ChoiceWords words_of(EntryVia) { return {held_phrasebook, "via."}; }
constexpr ChoiceWords words_of(Stage) { return {desk_words, "stage."}; }
constexpr ChoiceWords words_of(FrameFault) { return {desk_words, "frame_fault."}; }
constexpr ChoiceWords words_of(FramePart) { return {held_phrasebook, "part."}; }
constexpr ChoiceWords words_of(FrameRemedy) { return {desk_words, "remedy."}; }
constexpr ChoiceWords words_of(ReadingKind) { return {desk_words, "reading."}; }
constexpr ChoiceWords words_of(PaidBy) { return {held_phrasebook, "paid."}; }
constexpr ChoiceWords words_of(StockWhy) { return {held_phrasebook, "stock."}; }
constexpr ChoiceWords words_of(StringMaterial) { return {held_phrasebook, "material."}; }
constexpr ChoiceWords words_of(LinkSaid) { return {held_phrasebook, "link."}; }
constexpr ChoiceWords words_of(NameWhy) { return {held_phrasebook, "why."}; }

bool is_moment(std::string_view field) {
  constexpr std::array<std::string_view, 5> others{"at", "ready_by", "begin", "ready", "withdrawn"};
  return field.ends_with("_at") || std::find(others.begin(), others.end(), field) != others.end();
}

/// Steps by their words, each on a line; of a check with the sign before it.
std::string steps_said(const Language& language, const std::string& lines, bool signs) {
  std::string out;
  for (std::string& name : split_names(lines)) {
    if (!out.empty()) out += '\n';
    if (signs && !name.empty() && (name.front() == '+' || name.front() == '-')) {
      out += name.front() == '+' ? "✓ " : "✗ ";
      name.erase(0, 1);
    }
    out += step_words(language, name);
  }
  return out;
}

class HeldTeller {
 public:
  HeldTeller(const Ledger& ledger, const PlayerRecord& record, const Language& language, const std::string& zone)
      : ledger_(ledger), record_(record), language_(language), zone_(zone), time_(zone), authors_(ledger.authors()) {}

  std::vector<HeldSection> tell() {
    if (record_.person.id()) section("person", std::span(&record_.person, 1));
    section("consents", std::span(record_.consents));
    section("other_names", std::span(record_.other_names));
    section("links", std::span(record_.links));
    section("rackets", std::span(record_.rackets));
    section("setups", std::span(record_.setups));
    section("drop_offs", std::span(record_.drop_offs));
    section("jobs", std::span(record_.jobs));
    section("findings", std::span(record_.findings));
    section("benches", std::span(record_.benches));
    section("checks", std::span(record_.checks));
    section("readings", std::span(record_.readings));
    section("photos", std::span(record_.photos));
    section("cards", std::span(record_.cards));
    tell_questions();
    tell_events();
    tell_earlier();
    return std::move(out_);
  }

 private:
  /// What one kind of entity is called, which words its fields have, and how its rows are told.
  struct Kind {
    EntityKind kind;
    std::string_view name;  ///< of its section, and prefix of those labels that are its own
    std::vector<HeldRow> (HeldTeller::*rows)(const EntityState&) const;
  };
  template <class S>
  static constexpr Kind kind_of(std::string_view name) {
    return {Described<S>::kind, name, &HeldTeller::rows_of<S>};
  }
  static std::span<const Kind> kinds() {
    static constexpr Kind all[] = {
        kind_of<Person>("person"),          kind_of<Racket>("rackets"),         kind_of<Setup>("setups"),         kind_of<DropOff>("drop_offs"),
        kind_of<Job>("jobs"),               kind_of<StageMark>("marks"),        kind_of<ConsentGiven>("consents"), kind_of<FrameFinding>("findings"),
        kind_of<BenchRecord>("benches"),    kind_of<CheckResult>("checks"),     kind_of<Reading>("readings"),     kind_of<Photo>("photos"),
        kind_of<BookLink>("links"),         kind_of<OtherName>("other_names"),  kind_of<CardTaken>("cards"),      kind_of<EntryListItem>("entries"),
        kind_of<Charge>("charges"),         kind_of<Payment>("payments"),       kind_of<DrawPlace>("draw_lines"), kind_of<BenchPlace>("home_benches"),
        kind_of<BenchAsk>("bench_wishes"),  kind_of<DayPlace>("told_day"),      kind_of<StockItem>("stock_items"), kind_of<StockMove>("stock_moves")};
    return all;
  }
  static const Kind* find(EntityKind kind) {
    const auto all = kinds();
    const auto found = std::find_if(all.begin(), all.end(), [&](const Kind& one) { return one.kind == kind; });
    return found == all.end() ? nullptr : &*found;
  }

  [[nodiscard]] std::string say(std::string_view key, const PhraseArgs& args = {}) const { return held_phrasebook().say(language_, key, args); }

  /// A field that means something else in this kind has a label of its own there.
  [[nodiscard]] std::string label(std::string_view kind, std::string_view field) const {
    for (const std::string& key : {std::string(kind) + "." + std::string(field), "field." + std::string(field)})
      if (held_phrasebook().has(key)) return say(key);
    return field_words(language_, field);
  }

  [[nodiscard]] std::string moment(UnixMs at) const {
    return date_text(time_.day_of(at)) + " " + localised(language_, Moment{at, zone_, Moment::Form::time_of_day});
  }

  // --- a value, by its type

  [[nodiscard]] std::string said(std::string_view field, const std::string& text) const {
    if (field == "steps_done") return steps_said(language_, text, false);
    if (field == "items") return steps_said(language_, text, true);
    return text;
  }
  [[nodiscard]] std::string said(std::string_view, const std::optional<Quantity>& quantity) const {
    return quantity ? localised(language_, *quantity) : std::string();
  }
  [[nodiscard]] std::string said(std::string_view field, const std::optional<std::int64_t>& number) const {
    if (!number) return {};
    if (is_moment(field)) return moment(*number);
    if (field == "size") return say("bytes", {{"n", *number}});
    if (field == "clock_minutes") return std::to_string(*number / 60 == 0 ? 12 : *number / 60) + (*number % 60 < 10 ? ":0" : ":") + std::to_string(*number % 60);
    return std::to_string(*number);
  }
  [[nodiscard]] std::string said(std::string_view, const std::optional<bool>& truth) const {
    return truth ? say(*truth ? "yes" : "no") : std::string();
  }
  [[nodiscard]] std::string said(std::string_view field, const Bytes& bytes) const {
    if (bytes.empty() || field == "after") return {};
    if (field.ends_with("device")) {
      for (const KnownAuthor& known : authors_)
        if (const AuthorId id = known.card.id(); std::equal(bytes.begin(), bytes.end(), id.bytes.begin(), id.bytes.end())) return known.card.device;
    }
    return to_hex(bytes);
  }
  [[nodiscard]] std::string said(std::string_view, Unit unit) const { return unit == Unit::none ? std::string() : std::string(symbol_of(unit)); }
  template <class Enum>
  requires std::is_enum_v<Enum>
  [[nodiscard]] std::string said(std::string_view, Enum choice) const {
    if (choice == Enum{}) return {};
    const std::string_view name = name_of_choice(choice);
    if constexpr (requires { words_of(choice); }) {
      const ChoiceWords words = words_of(choice);
      const std::string key = std::string(words.prefix) + std::string(name);
      if (!name.empty() && words.phrases().has(key)) return words.phrases().say(language_, key);
    }
    return name.empty() ? say("newer", {{"number", static_cast<std::int64_t>(choice)}}) : std::string(name);
  }
  [[nodiscard]] std::string said(std::string_view, const EntityId& id) const {
    if (!id) return {};
    const std::string title = title_of(id);
    return title.empty() ? name_anywhere(id) : title;
  }
  [[nodiscard]] std::string said(std::string_view, const BookId& book) const {
    if (!book || book == record_.book) return {};  // the player's own
    if (const auto info = ledger_.book(book)) {
      if (info->kind == kEventBook) {
        for (const EntityState& state : ledger_.entities(book, kEvent))
          if (exists(state)) return from_state<EventInfo>(state).name;
      }
      if (info->kind == kPlayerBook) {
        for (const EntityState& state : ledger_.entities(book, kPerson))
          if (exists(state)) return listed_name(from_state<Person>(state));
      }
    }
    return say("elsewhere", {{"book", book.hex()}});
  }

  // --- what an identifier stands for

  [[nodiscard]] std::string title_of(const EntityId& id) const {
    if (const auto* racket = record_.racket(id)) return title(*racket);
    if (const auto* setup = record_.setup(id)) return title(*setup);
    if (const auto* drop_off = record_.drop_off(id)) return title(*drop_off);
    if (const auto* job = record_.job(id)) return title(*job);
    if (const auto* finding = record_.finding(id)) return title(*finding);
    return {};
  }
  /// Machines, stringers, draws and strings of events: what they are called there.
  [[nodiscard]] std::string name_anywhere(const EntityId& id) const {
    for (const BookInfo& book : ledger_.books(kEventBook)) {
      const auto state = ledger_.entity(book.id, id);
      if (!state) continue;
      for (const Cell& cell : state->cells) {
        const FieldInfo* info = model_registry().find(cell.tag);
        const auto* name = std::get_if<std::string>(&cell.latest().value);
        if (info != nullptr && info->name == "name" && name != nullptr) return *name;
      }
    }
    return id.hex();
  }

  [[nodiscard]] static std::string joined(std::initializer_list<std::string> parts) {
    std::string out;
    for (const std::string& part : parts) {
      if (part.empty()) continue;
      if (!out.empty()) out += ", ";
      out += part;
    }
    return out;
  }
  [[nodiscard]] std::string day(const std::optional<std::int64_t>& at) const { return at ? date_text(time_.day_of(*at)) : std::string(); }

  [[nodiscard]] std::string title(const Loaded<Person>& held) const { return listed_name(held.now); }
  [[nodiscard]] std::string title(const Loaded<Racket>& held) const {
    const std::string model = held.now.maker + (held.now.maker.empty() || held.now.model.empty() ? "" : " ") + held.now.model;
    return joined({held.now.label.empty() ? std::string() : say("racket", {{"label", held.now.label}}), model});
  }
  [[nodiscard]] std::string title(const Loaded<Setup>& held) const { return setup_words(language_, held.now.name); }
  [[nodiscard]] std::string title(const Loaded<DropOff>& held) const { return joined({day(held.now.at), held.now.event_name}); }
  [[nodiscard]] std::string title(const Loaded<Job>& held) const {
    const auto* racket = record_.racket(held.now.racket);
    return joined({held.now.tag_number ? say("tag", {{"number", *held.now.tag_number}}) : std::string(), racket ? title(*racket) : std::string(),
                   day(held.now.at)});
  }
  [[nodiscard]] std::string title(const Loaded<FrameFinding>& held) const { return finding_words(language_, held.now); }
  template <class S>
  [[nodiscard]] std::string title(const Loaded<S>& held) const {
    std::string of;
    if constexpr (requires { held.now.job; }) of = title_of(held.now.job);
    if constexpr (requires { held.now.at; }) return joined({of, of.empty() ? day(held.now.at) : std::string()});
    return of;
  }

  // --- rows

  /// What a field says beside others of its line, or of that kind alone; "" where its value says all.
  template <class S>
  [[nodiscard]] std::string said_of(const S& held, std::string_view field) const {
    if constexpr (requires { held.amount_minor, held.currency; })
      if (field == "amount_minor" && held.amount_minor && !held.currency.empty()) return money_words(language_, *held.amount_minor, held.currency);
    if constexpr (std::is_same_v<S, Setup>)
      if (field == "name") return setup_words(language_, held.name);
    return {};
  }
  template <class S>
  std::vector<HeldRow> rows_of(const EntityState& state) const {
    const S held = from_state<S>(state);
    const Kind* kind = find(Described<S>::kind);
    std::vector<HeldRow> out;
    for_each_field<S>([&](FieldTag, std::string_view field, bool, auto member) {
      std::string value = said(field, held.*member);
      if (std::string better = said_of(held, field); !better.empty()) value = std::move(better);
      if (!value.empty()) out.push_back({label(kind->name, field), std::move(value)});
    });
    // An event is noted with its name, for where its book is not.
    if constexpr (std::is_same_v<S, DropOff>) {
      const auto again = std::find_if(out.rbegin(), out.rend(), [&](const HeldRow& row) { return row.said == held.event_name; });
      if (again != out.rend() && std::count_if(out.begin(), out.end(), [&](const HeldRow& row) { return row == *again; }) > 1) out.erase(std::next(again).base());
    }
    // Of a newer version.
    for (const Cell& cell : state.cells)
      if (!model_registry().find(cell.tag) && !is_cleared(cell.latest().value))
        out.push_back({say("newer", {{"number", static_cast<std::int64_t>(cell.tag)}}), text_of(cell.latest().value)});
    return out;
  }
  [[nodiscard]] std::vector<HeldRow> rows(const EntityState& state) const {
    if (const Kind* kind = find(state.kind)) return (this->*kind->rows)(state);
    std::vector<HeldRow> out;
    for (const Cell& cell : state.cells) {
      const FieldInfo* info = model_registry().find(cell.tag);
      if (!is_cleared(cell.latest().value))
        out.push_back({info != nullptr ? label({}, info->name) : say("newer", {{"number", static_cast<std::int64_t>(cell.tag)}}), text_of(cell.latest().value)});
    }
    return out;
  }

  HeldSection& begin(std::string_view name) {
    out_.push_back({say("section." + std::string(name)), {}});
    return out_.back();
  }

  template <class S>
  void section(std::string_view name, std::span<const Loaded<S>> list) {
    if (list.empty()) return;
    HeldSection& into = begin(name);
    for (const auto& held : list) {
      HeldPart part{title(held), rows_of<S>(held.seen), {}};
      if constexpr (std::is_same_v<S, Job>) add_marks(part, held.id());
      if constexpr (std::is_same_v<S, Photo>) part.picture = held.now.content;
      into.parts.push_back(std::move(part));
    }
  }

  /// Where a racket was when, below what was agreed for it.
  void add_marks(HeldPart& part, const EntityId& job) const {
    for (const PlacedMark& placed : record_.marks) {
      if (placed.mark.job != job) continue;
      part.rows.push_back({said({}, placed.mark.stage),
                           joined({placed.mark.at ? moment(*placed.mark.at) : std::string(), placed.mark.by, placed.mark.reason,
                                   placed.mark.machine ? name_anywhere(placed.mark.machine) : std::string()})});
    }
  }

  /// One field alone, as its row says it.
  [[nodiscard]] std::vector<HeldRow> row_of(const EntityState& of, FieldTag tag, const CellValue& value) const {
    EntityState alone = of;
    alone.cells = {Cell{tag, {value}}};
    return rows(alone);
  }
  /// "Jobs: Tag 14, racket 2", as far as there is something to call it by.
  [[nodiscard]] std::string whose(EntityKind kind, const EntityId& id) const {
    const Kind* known = find(kind);
    const std::string title = title_of(id);
    if (known == nullptr) return title;
    return say("section." + std::string(known->name)) + (title.empty() ? std::string() : ": " + title);
  }
  [[nodiscard]] std::string written_by(const Dot& dot, Stamp stamp) const {
    for (const KnownAuthor& known : authors_)
      if (known.card.id() == dot.author) return joined({moment(stamp.wall_ms()), known.card.device});
    return moment(stamp.wall_ms());
  }

  void tell_questions() {
    if (record_.questions.empty()) return;
    HeldSection& into = begin("questions");
    for (const OpenQuestion& question : record_.questions) {
      EntityState of;
      of.id = question.entity;
      of.kind = question.kind;
      HeldPart part{whose(question.kind, question.entity), {}, {}};
      for (const CellValue& answer : question.cell.values) {
        auto told = row_of(of, question.cell.tag, answer);
        for (HeldRow& row : told) part.rows.push_back({std::move(row.what), row.said + " (" + written_by(answer.dot, answer.stamp) + ")"});
      }
      into.parts.push_back(std::move(part));
    }
  }

  void tell_events() {
    for (const EventHolding& event : held_in_events(ledger_, record_)) {
      out_.push_back({say("event", {{"name", event.name}}), {}});
      for (const EntityState& state : event.entities) {
        const Kind* kind = find(state.kind);
        out_.back().parts.push_back({kind != nullptr ? say("section." + std::string(kind->name)) : std::string(), rows(state), {}});
      }
    }
  }

  /// Everything written that stands nowhere any more: replaced, taken back, or undone.
  void tell_earlier() {
    std::map<EntityId, EntityState> now;
    for (EntityState& state : ledger_.entities(record_.book)) now.emplace(state.id, std::move(state));
    const auto stands = [&](const EntityId& entity, FieldTag tag, const Dot& dot) {
      const auto found = now.find(entity);
      if (found == now.end()) return false;
      for (const Cell& cell : found->second.cells)
        if (cell.tag == tag)
          return std::any_of(cell.values.begin(), cell.values.end(), [&](const CellValue& held) { return held.dot == dot; });
      return false;
    };
    std::vector<HeldPart> earlier;
    for (const WrittenEntry& written : written_entries(ledger_, record_.book)) {
      const Entry& entry = written.entry;
      std::map<EntityId, HeldPart> parts;
      for (std::uint32_t i = 0; i < entry.writes.size(); ++i) {
        const Write& write = entry.writes[i];
        const Dot dot{written.author, entry.seq, i};
        if (is_cleared(write.value) || stands(write.entity, write.tag, dot)) continue;
        EntityState of;
        of.id = write.entity;
        of.kind = write.kind;
        auto told = row_of(of, write.tag, {dot, entry.stamp, write.value});
        if (told.empty()) continue;
        HeldPart& part = parts[write.entity];
        if (part.title.empty()) part.title = joined({written_by(dot, entry.stamp), whose(write.kind, write.entity)});
        std::move(told.begin(), told.end(), std::back_inserter(part.rows));
      }
      for (auto& [id, part] : parts) earlier.push_back(std::move(part));
    }
    if (earlier.empty()) return;
    begin("earlier").parts = std::move(earlier);
  }

  const Ledger& ledger_;
  const PlayerRecord& record_;
  const Language& language_;
  const std::string& zone_;
  LocalTime time_;
  std::vector<KnownAuthor> authors_;
  std::vector<HeldSection> out_;
};

}  // namespace

const Phrases& held_phrasebook() {
  static const Phrases words({held_phrases()});
  return words;
}

std::vector<HeldSection> held_words(const Ledger& ledger, const PlayerRecord& record, const Language& language, const std::string& zone) {
  return HeldTeller(ledger, record, language, zone).tell();
}

}  // namespace weavelog
