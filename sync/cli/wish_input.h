#pragma once
// A wish as it is typed: tensions with --mains, --crosses and --both, everything else with --set FIELD=VALUE.

#include <CLI/CLI.hpp>
#include <string>
#include <vector>

#include "core/desk/adjust.h"
#include "sync/cli/field_input.h"

namespace weavelog::cli {

struct WishArguments {
  std::string mains;  ///< "24kg", or "-1kg" for that much less
  std::string crosses;
  std::string both;
  std::vector<std::string> set;
};

void add_wish_options(CLI::App& command, WishArguments& arguments);

/// The wish with what was typed. A change by an amount needs a tension to start from, in its unit. Faults:
/// bad_input.
[[nodiscard]] Outcome<Agreed> with_wish(const Agreed& agreed, const WishArguments& arguments,
                                        const Typing& typing);

/// For help: the fields that --set knows.
[[nodiscard]] std::string wish_footer();

}  // namespace weavelog::cli
