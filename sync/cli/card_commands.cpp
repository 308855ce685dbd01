// card make, show, read: one player on one QR code.

#include <iostream>

#include "core/base/iso_time.h"
#include "core/desk/phrases.h"
#include "core/model/field_json.h"
#include "sync/carry/card_intake.h"
#include "sync/carry/carried_file.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/qr_svg.h"
#include "sync/cli/render.h"
#include "sync/trust/proquint.h"

namespace weavelog::cli {
namespace {

struct CardMakeArguments {
  std::string player, svg;
};

Outcome<Ending> card_make(Context& context, const CardMakeArguments& arguments) {
  const auto book = choose_player(context, arguments.player);
  if (!book) return fail(book.error());
  const auto made = make_card(context.ledger(), *book);
  if (!made) return fail(made.error());
  if (auto noted = context.station().peers().note_handed(HandedAs::card, {}, {&*book, 1}, context.now()); !noted) return fail(noted.error());
  json::object out{{"text", made->text},
                   {"characters", made->text.size()},
                   {"setups", made->card.setups().size()},
                   {"setups_left_out", made->card.setups_left_out},
                   {"rackets", made->card.rackets().size()},
                   {"rackets_left_out", made->card.rackets_left_out}};
  std::string text = made->text;
  if (!arguments.svg.empty()) {
    const auto drawing = qr_svg(made->text);
    if (!drawing) return fail(drawing.error());
    if (auto done = write_carried_file(arguments.svg, true, [&](const ByteSink& sink) { return sink(as_bytes(drawing->svg)); }); !done)
      return fail(done.error());
    out["svg"] = arguments.svg;
    out["version"] = drawing->version;
    text = "written: " + arguments.svg + ", a code of version " + std::to_string(drawing->version);
  }
  if (made->card.setups_left_out + made->card.rackets_left_out > 0)
    text += "\nthere was no room for " + std::to_string(made->card.setups_left_out) + " older setups and " +
            std::to_string(made->card.rackets_left_out) + " rackets";
  context.answer(out, text);
  return Ending::done;
}

struct CardArguments {
  std::string text, from;
  bool confirm = false, accept_newer = false;
};

Outcome<PlayerCard> scanned(const CardArguments& arguments) {
  std::string text = arguments.text;
  if (arguments.from == "-") {
    std::getline(std::cin, text);
  } else if (!arguments.from.empty()) {
    const auto bytes = read_small_file(arguments.from, 64 * 1024);
    if (!bytes) return fail(bytes.error());
    text = std::string(as_text(*bytes));
  } else if (text.empty()) {
    return fail(FaultCode::bad_input, "no card was given", "player card", "give its text, or --from FILE");
  }
  return read_card(text);
}

template <class S>
json::array list_json(const std::vector<S>& list) {
  json::array out;
  for (const S& one : list) out.push_back(fields_json(one));
  return out;
}

json::array lines_json(const CardFindings& findings) {
  json::array out;
  for (const CardLine& line : findings.lines) {
    const FieldInfo* field = model_registry().find(line.tag);
    json::object one{{"verdict", name_of(line.verdict)}, {"kind", model_registry().name_of(line.kind)}, {"of", line.of},
                     {"field", field != nullptr ? field->name : ""}, {"ours", text_of(line.ours)}, {"card", text_of(line.cards)}};
    one["ours_at"] = line.ours_at == 0 ? json::value() : json::value(iso_utc(line.ours_at));
    one["card_at"] = iso_utc(line.cards_at);
    out.push_back(std::move(one));
  }
  return out;
}

json::object card_json(const PlayerCard& card, const CardFindings& findings) {
  return {{"book", card.book.hex()},
          {"player", fields_json(card.person())},
          {"setups", list_json(card.setups())},
          {"setups_left_out", card.setups_left_out},
          {"rackets", list_json(card.rackets())},
          {"rackets_left_out", card.rackets_left_out},
          {"made", iso_utc(card.made)},
          {"device", card.device},
          {"key", to_hex(card.key)},
          {"words", fingerprint_words(card.key)},
          {"known_as", name_of(findings.signer)},
          {"held", findings.held},
          {"taken_before", findings.taken.has_value()},
          {"clock_ahead", findings.ahead},
          {"lines", lines_json(findings)}};
}

std::string words(const Language& language, std::string_view field, const Value& value) {
  return is_cleared(value) ? "nothing" : value_words(language, field, value);
}

std::string card_text(Context& context, const PlayerCard& card, const CardFindings& findings) {
  const Language language = context.language_for(card.person());
  std::string out = listed_name(card.person()) + "\nsigned by \"" + card.device + "\" (" + std::string(name_of(findings.signer)) + ", " +
                    fingerprint_words(card.key) + ") at " + ToldTimes(context, language)(card.made) + (findings.taken ? "; taken in before" : "") + "\n";
  if (findings.ahead) out += "its clock is ahead of this device's: what it calls newer may not be\n";
  for (const Setup& setup : card.setups()) out += "setup " + setup_words(language, setup.name) + "\n" + agreed_text(language, setup);
  if (card.setups_left_out > 0) out += "and " + std::to_string(card.setups_left_out) + " older setups that had no room\n";
  for (const Racket& racket : card.rackets()) out += "racket " + racket.label + " " + racket.maker + " " + racket.model + "\n";
  for (const CardLine& line : findings.lines) {
    if (line.verdict == CardVerdict::fresh) continue;
    const FieldInfo* field = model_registry().find(line.tag);
    const std::string_view name = field != nullptr ? field->name : std::string_view();
    out += std::string(line.verdict == CardVerdict::newer   ? "newer on the card: "
                       : line.verdict == CardVerdict::older ? "newer here, stays: "
                                                            : "an open question, stays: ") +
           (line.of.empty() ? "" : line.of + ", ") + field_words(language, name) + ": here " + words(language, name, line.ours) + ", card " +
           words(language, name, line.cards) + "\n";
  }
  return out + "Ask the player before stringing by a card; the maker's instructions for frame and string come first.";
}

Outcome<Ending> show(Context& context, const CardArguments& arguments) {
  const auto card = scanned(arguments);
  if (!card) return fail(card.error());
  const auto findings = weigh_card(context.ledger(), context.station().devices(), *card);
  if (!findings) return fail(findings.error());
  context.answer(card_json(*card, *findings), card_text(context, *card, *findings));
  return Ending::done;
}

Outcome<Ending> read(Context& context, const CardArguments& arguments) {
  const auto card = scanned(arguments);
  if (!card) return fail(card.error());
  const auto findings = weigh_card(context.ledger(), context.station().devices(), *card);
  if (!findings) return fail(findings.error());
  json::object out = card_json(*card, *findings);
  std::string text = card_text(context, *card, *findings);
  if (findings->signer == KnownAs::stranger && !arguments.confirm) {
    out["stored"] = false;
    text += "\nThis device does not know who signed it. Nothing was stored; add --confirm when the player says that it is right";
    context.answer(out, text);
    return Ending::needs_answer;
  }
  const auto draft = take_card(context.ledger(), context.station().devices(), *card, arguments.accept_newer);
  if (!draft) return fail(draft.error());
  if (!draft->empty())
    if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
  const std::size_t waiting = arguments.accept_newer ? 0 : findings->count(CardVerdict::newer);
  out["stored"] = !draft->empty();
  out["waiting"] = waiting;
  text += draft->empty() ? "\nnothing new to store" : "\nstored";
  if (waiting > 0) text += "; " + std::to_string(waiting) + " newer values were left: add --accept-newer when the player says so";
  context.answer(out, text);
  return Ending::done;
}

void add_card_options(CLI::App& command, CardArguments& arguments) {
  command.add_option("TEXT", arguments.text, "What the code says, WEAVELOG:CARD:...");
  command.add_option("--from", arguments.from, "A file that holds it; - for standard input");
}

constexpr const char* kCardJson =
    "--json: one object: book, player, setups, setups_left_out, rackets, rackets_left_out, made, device, key, words, known_as, held,\n"
    "taken_before, clock_ahead, lines: [{verdict (fresh, newer, older, question), kind, of, field, ours, ours_at, card, card_at}]";

}  // namespace

void add_card_commands(CLI::App& app, Work& chosen) {
  CLI::App& card = *app.add_subcommand("card", "Carry a player on one QR code: no network needed");
  card.require_subcommand(1);
  card.footer("Each of them explains its own --json with --help.");
  add_command<CardMakeArguments>(card, chosen, "make", "Make a player's card", card_make, [](CLI::App& command, CardMakeArguments& arguments) {
    command.add_option("PLAYER", arguments.player, "A name that finds exactly one, or six or more characters of the book's number")->required();
    command.add_option("--svg", arguments.svg, "Draw the code into that file");
    command.footer(
        "Whoever sees a card can read it. Newest setups first.\n"
        "--json: one object: text, characters, setups, setups_left_out, rackets, rackets_left_out, svg, version.");
  });
  add_command<CardArguments>(card, chosen, "show", "What a card says, and how it compares with what is held here", show,
                             [](CLI::App& command, CardArguments& arguments) {
                               add_card_options(command, arguments);
                               command.footer(std::string(kCardJson) + ".");
                             });
  add_command<CardArguments>(card, chosen, "read", "Take a card in", read, [](CLI::App& command, CardArguments& arguments) {
    add_card_options(command, arguments);
    command.add_flag("--confirm", arguments.confirm, "The player says that it is right: also from a device that is not known here");
    command.add_flag("--accept-newer", arguments.accept_newer, "Let what is newer on the card take the place of what is held here");
    command.footer(std::string(kCardJson) + ", stored, waiting.\nExit code 3 if nothing was stored because a stranger signed it.");
  });
}

}  // namespace weavelog::cli
