#include <algorithm>
#include <iostream>
#include <iterator>

#include "core/base/text.h"
#include "core/desk/last_time.h"
#include "core/people/arrival.h"
#include "sync/cli/ask_first.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/hand_over.h"
#include "sync/cli/render.h"
#include "sync/cli/wish_input.h"

namespace weavelog::cli {
namespace {

struct DropOffArguments {
  std::string player;
  std::vector<std::string> person;
  bool new_player = false;
  std::string rackets;
  std::vector<std::string> racket;
  std::string keep_as;
  bool from_stdin = false;
  WishArguments wish;
  DeskArguments desk;
};

constexpr std::size_t kMostInput = 1024 * 1024;
constexpr auto kRacketParts = std::to_array<std::string_view>({"agreed", "keep_as", "tag_number"});
constexpr auto kRequestParts = std::to_array<std::string_view>({"player", "rackets", "agreed", "keep_as"});

Outcome<json::object> input_of(const DropOffArguments& arguments) {
  if (!arguments.from_stdin) return json::object();
  std::string text;
  for (char c; text.size() <= kMostInput && std::cin.get(c);) text.push_back(c);
  if (text.size() > kMostInput)
    return fail(FaultCode::bad_input, "more than a mebibyte came in", "standard input", "send one drop-off");
  boost::system::error_code error;
  json::value value = json::parse(text, error);
  if (error || !value.is_object())
    return fail(FaultCode::bad_input, error ? "no JSON: " + error.message() : "the JSON is not an object",
                "standard input", "see `weavelog-cli drop-off --help`");
  return std::move(value.as_object());
}

/// A member that has to be of one kind, nothing if it is not there.
template <class T>
Outcome<const T*> member(const json::object& object, std::string_view name,
                         const T* (json::value::*held)() const noexcept, const char* expected) {
  const auto* found = object.if_contains(name);
  if (!found) return nullptr;
  if (const T* value = (found->*held)()) return value;
  return fail(FaultCode::bad_input, std::string("this has to be ") + expected, std::string(name),
              "see `weavelog-cli drop-off --help`");
}
Outcome<const json::object*> object_in(const json::object& object, std::string_view name) {
  return member<json::object>(object, name, &json::value::if_object, "an object");
}

/// Builds the request up out of the JSON and what was typed.
class Request {
 public:
  Request(Context& context, const DropOffArguments& arguments) : context_(context), arguments_(arguments) {}

  Outcome<Ending> run() {
    auto input = input_of(arguments_);
    if (!input) return fail(input.error());
    input_ = std::move(*input);
    if (auto done = find_player(); !done) return fail(done.error());
    if (may_be_known()) return ask_who();
    auto desk = set_desk(context_, person_, arguments_.desk);
    if (!desk) return fail(desk.error());
    desk_ = std::move(*desk);
    if (auto set = set_fields(desk_.request.drop_off, input_, desk_.typing, {}, kRequestParts); !set)
      return fail(set.error());
    if (new_) desk_.request.new_person = person_;
    if (auto added = add_rackets(); !added) return fail(added.error());
    if (!open_.empty()) return ask_first(context_, record_, open_);
    return answer_hand_over(context_, record_, std::move(desk_), arguments_.desk);
  }

 private:
  Outcome<> find_player() {
    std::string known = arguments_.player;
    const json::object* described = nullptr;
    if (const auto* player = input_.if_contains("player")) {
      if (const auto* text = player->if_string())
        known = std::string(text->subview());
      else if (const auto* object = player->if_object())
        described = object;
      else
        return fail(FaultCode::bad_input, "this has to be a text or an object", "player",
                    "see `weavelog-cli drop-off --help`");
    }
    if (!known.empty()) {
      auto record = load_chosen(context_, known);
      if (!record) return fail(record.error());
      record_ = std::move(*record);
      person_ = record_.person.now;
      return {};
    }
    new_ = true;
    record_ = record_of(context_.ledger().create_book_id(), {}, {});
    const Typing typing{"UTC", context_.now(), Unit::none};
    if (described)
      if (auto set = set_fields(person_, *described, typing, "player"); !set) return set;
    if (auto set = set_fields(person_, std::span<const std::string>(arguments_.person), typing); !set)
      return set;
    if (is_blank(person_.family_name) && is_blank(person_.native_name))
      return fail(FaultCode::bad_input, "it is not said whose rackets these are", "player",
                  "give --player for a known one, or --person family_name=... for a new one");
    return {};
  }

  /// A person who seems to be here already must not get a second book by a slip.
  bool may_be_known() {
    if (!new_ || arguments_.new_player) return false;
    match_ = index_of_players(context_.ledger()).match(facts_of(person_));
    return match_.band != MatchBand::new_person;
  }

  Outcome<Ending> ask_who() {
    json::array candidates;
    std::string text =
        "this may be a player who is known here already; use --player, or --new if it is another:\n";
    ToldTimes told(context_);
    for (const Candidate& candidate : match_.candidates) {
      const auto row = weavelog::find_player(context_.ledger(), candidate.book);
      if (!row) continue;
      candidates.push_back(row_json(*row));
      text += row_text(*row, told) + "\n";
    }
    context_.answer(json::object{{"stored", false}, {"candidates", std::move(candidates)}}, text);
    return Ending::needs_answer;
  }

  Outcome<> add_rackets() {
    const auto list = member<json::array>(input_, "rackets", &json::value::if_array, "an array");
    if (!list) return fail(list.error());
    if (*list)
      for (const json::value& racket : **list)
        if (auto added = add_piped(racket); !added) return added;
    return add_typed();
  }

  Outcome<> add_piped(const json::value& value) {
    const std::string place = "racket " + std::to_string(desk_.request.lines.size() + 1);
    json::object described;
    if (const auto* text = value.if_string())
      described["label"] = *text;
    else if (const auto* object = value.if_object())
      described = *object;
    else
      return fail(FaultCode::bad_input, "this has to be a label or an object", place,
                  "see `weavelog-cli drop-off --help`");
    const auto* label = described.if_contains("label");
    const auto text = label ? typed_form(*label, place) : Outcome<std::string>(next_label());
    if (!text) return fail(text.error());
    DropOffLine line = line_for(*text);
    if (line.made) {
      if (auto set = set_fields(*line.made, described, desk_.typing, place, kRacketParts); !set) return set;
      line.made->label = *text;
    }
    const auto own = object_in(described, "agreed");
    if (!own) return fail(own.error());
    if (const auto* tag = described.if_contains("tag_number")) {
      const auto typed = typed_form(*tag, place);
      if (!typed) return fail(typed.error());
      const auto number = whole_from(*typed, place + ", tag_number");
      if (!number) return fail(number.error());
      line.tag_number = *number;
    }
    return add(std::move(line), *own, described, place);
  }

  Outcome<> add_typed() {
    const std::string& wanted = arguments_.rackets;
    if (wanted.empty()) return {};
    if (wanted.find_first_not_of("0123456789") == std::string::npos) {
      const auto count = whole_from(wanted, "--rackets");
      if (!count || *count < 1 || *count > 50)
        return fail(FaultCode::bad_input, "\"" + wanted + "\" is no number of rackets", "--rackets",
                    "say 1 to 50, or labels");
      for (std::int64_t i = 0; i < *count; ++i)
        if (auto added = add_labelled(next_label()); !added) return added;
      return {};
    }
    std::size_t begin = 0;
    while (begin < wanted.size()) {
      const std::size_t end = std::min(wanted.find(',', begin), wanted.size());
      std::string label(trimmed(std::string_view(wanted).substr(begin, end - begin)));
      if (label.starts_with('#')) label.erase(0, 1);
      if (auto added = add_labelled(label); !added) return added;
      begin = end + 1;
    }
    return {};
  }

  Outcome<> add_labelled(const std::string& label) {
    DropOffLine line = line_for(label);
    if (line.made)
      if (auto set = set_fields(*line.made, std::span<const std::string>(arguments_.racket), desk_.typing);
          !set)
        return set;
    return add(std::move(line), nullptr, {}, "racket " + label);
  }

  /// The player's racket of that label, or a new one.
  DropOffLine line_for(const std::string& label) {
    DropOffLine line;
    for (const auto& racket : record_.rackets)
      if (!label.empty() && search_key(racket.now.label) == search_key(label)) line.racket = racket.id();
    if (!line.racket) {
      line.made = Racket{};
      line.made->label = label;
    }
    return line;
  }

  /// Fills in the wish: as last time, then what is common to all, then the racket's own, then what was typed.
  Outcome<> add(DropOffLine line, const json::object* own, const json::object& described,
                const std::string& place) {
    if (!new_) {
      if (const auto last = same_as_last_time(record_, line.racket)) {
        open_.insert(open_.end(), last->questions.begin(), last->questions.end());
        if (!open_.empty()) return {};
        line.agreed = last->proposal;
        line.last_time = last->as_strung;
        line.setup = last->setup;
      }
    }
    const auto common = object_in(input_, "agreed");
    if (!common) return fail(common.error());
    if (*common)
      if (auto set = set_fields(line.agreed, **common, desk_.typing, "agreed"); !set) return set;
    if (own)
      if (auto set = set_fields(line.agreed, *own, desk_.typing, place + ", agreed"); !set) return set;
    auto wish = with_wish(line.agreed, arguments_.wish, desk_.typing);
    if (!wish) return fail(wish.error());
    line.agreed = std::move(*wish);
    line.keep_as = arguments_.keep_as.empty() ? "=usual" : arguments_.keep_as;
    for (const json::object* object : {static_cast<const json::object*>(&input_), &described})
      if (const auto* name = object->if_contains("keep_as"))
        if (const auto* text = name->if_string()) line.keep_as = std::string(text->subview());
    desk_.request.lines.push_back(std::move(line));
    return {};
  }

  /// The lowest number that is no label yet.
  std::string next_label() const {
    for (int number = 1;; ++number) {
      const std::string label = std::to_string(number);
      const auto taken = [&](const std::string& other) { return other == label; };
      const bool used =
          std::any_of(record_.rackets.begin(), record_.rackets.end(),
                      [&](const auto& racket) { return taken(racket.now.label); }) ||
          std::any_of(desk_.request.lines.begin(), desk_.request.lines.end(),
                      [&](const DropOffLine& line) { return line.made && taken(line.made->label); });
      if (!used) return label;
    }
  }

  Context& context_;
  const DropOffArguments& arguments_;
  json::object input_;
  PlayerRecord record_;
  Person person_;
  bool new_ = false;
  std::vector<OpenQuestion> open_;  ///< that a wish would go by
  MatchResult match_;
  DeskSetting desk_;
};

Outcome<Ending> take_in(Context& context, const DropOffArguments& arguments) {
  return Request(context, arguments).run();
}

}  // namespace

void add_drop_off_commands(CLI::App& app, Work& chosen) {
  add_command<DropOffArguments>(
      app, chosen, "drop-off", "Take rackets in: of a new player with everything asked, or of a known one",
      take_in, [](CLI::App& command, DropOffArguments& arguments) {
        command.add_option("--player", arguments.player,
                           "A known player: a name that finds exactly one, or the book's number");
        command
            .add_option("--person", arguments.person,
                        "FIELD=VALUE of a new player; may be given several times")
            ->expected(1)
            ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
        command.add_flag("--new", arguments.new_player,
                         "It is a new player although one of that name is known");
        command.add_option("--rackets", arguments.rackets,
                           "How many new ones, or labels parted by commas (\"#3\" for a label of digits)");
        command
            .add_option("--racket", arguments.racket,
                        "FIELD=VALUE of every new racket; may be given several times")
            ->expected(1)
            ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
        command.add_option("--keep-as", arguments.keep_as,
                           "Name under which the wish is kept as a setup; default: usual");
        command.add_flag("--stdin", arguments.from_stdin,
                         "Read a JSON object from standard input; options come on top of it");
        add_wish_options(command, arguments.wish);
        add_desk_options(command, arguments.desk);
        command.footer(
            "JSON: {\"player\": PLAYER or {fields of a new one}, \"agreed\": {fields of the wish}, "
            "\"keep_as\": name, \"ready_by\",\n"
            "\"rush\", \"brought_by\", \"collected_by\", \"place\", \"note\", \"rackets\": [label, or "
            "{\"label\", fields of the racket,\n"
            "\"agreed\": {what differs}, \"tag_number\"}]}. Quantities are texts: \"24.5 kg\".\n"
            "Fields of a player: " +
            field_names<Person>() + ".\nFields of a racket: " + field_names<Racket>() + ".\n" +
            wish_footer() + "\n" + hand_over_footer() +
            "\nA new player who may be known already: candidates instead, exit code 3, nothing stored.\n"
            "Open questions on what a wish goes by: open_questions instead, exit code 3, nothing stored.");
      });
}

}  // namespace weavelog::cli
