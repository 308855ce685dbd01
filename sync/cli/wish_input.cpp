#include "sync/cli/wish_input.h"

namespace weavelog::cli {
namespace {

Outcome<> set_tension(Agreed& agreed, StringPart part, const std::string& typed, const Typing& typing,
                      const std::string& where) {
  if (typed.empty()) return {};
  // "-1kg" changes by that much; the unit of a bare "-1" is the one agreed.
  const bool change = typed.front() == '-' || typed.front() == '+';
  const Unit usual = change ? tension_unit_of(agreed).value_or(typing.tension_unit) : typing.tension_unit;
  const auto quantity = quantity_from(typed, usual, where);
  if (!quantity) return fail(quantity.error());
  if (change) {
    auto changed = adjusted(agreed, {part, *quantity});
    if (!changed) return fail(changed.error());
    agreed = std::move(*changed);
    return {};
  }
  if (part != StringPart::crosses) agreed.mains_tension = *quantity;
  if (part != StringPart::mains) agreed.crosses_tension = *quantity;
  return {};
}

}  // namespace

void add_wish_options(CLI::App& command, WishArguments& arguments) {
  command.add_option("--mains", arguments.mains, "Tension of the mains: 24kg, or -1kg for one kilo less");
  command.add_option("--crosses", arguments.crosses, "Tension of the crosses, likewise");
  command.add_option("--both", arguments.both, "Tension of both, likewise");
  command.add_option("--set", arguments.set, "FIELD=VALUE of the wish; may be given several times")
      ->expected(1)
      ->multi_option_policy(CLI::MultiOptionPolicy::TakeAll);
}

Outcome<Agreed> with_wish(const Agreed& agreed, const WishArguments& arguments, const Typing& typing) {
  Agreed wish = agreed;
  if (auto set = set_fields(wish, std::span<const std::string>(arguments.set), typing); !set)
    return fail(set.error());
  if (auto set = set_tension(wish, StringPart::both, arguments.both, typing, "--both"); !set)
    return fail(set.error());
  if (auto set = set_tension(wish, StringPart::mains, arguments.mains, typing, "--mains"); !set)
    return fail(set.error());
  if (auto set = set_tension(wish, StringPart::crosses, arguments.crosses, typing, "--crosses"); !set)
    return fail(set.error());
  return wish;
}

std::string wish_footer() {
  return "Fields for --set: " + field_names<Agreed>() + ".\nSupply is reel or set, owner is room or player.";
}

}  // namespace weavelog::cli
