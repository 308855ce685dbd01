#include "sync/cli/entered.h"

#include "core/base/text.h"
#include "core/model/queries.h"
#include "core/model/tables.h"
#include "core/people/name_found.h"
#include "sync/cli/render.h"

namespace weavelog::cli {
namespace {

constexpr std::size_t kMostShown = 20;

}  // namespace

std::string entered_text(Context& context, const std::string& typed) {
  const std::string key = search_key(typed);
  const auto event = context.event();
  if (key.empty() || !event) return {};
  std::string text;
  std::size_t found = 0;
  for (const EntryRow& row : entry_list(context.ledger(), *event)) {
    if (row.held_here || !name_found(search_words(row.family_name, row.given_name, row.native_name), key)) continue;
    if (++found > kMostShown) continue;
    text += name_text(row.family_name, row.given_name, row.native_name) + (row.country.empty() ? "" : " (" + row.country + ")") +
            "  is on the entry list" + (row.draw.empty() ? "" : ", " + row.draw) + ", and no player here yet\n";
  }
  if (found > kMostShown) text += "and " + std::to_string(found - kMostShown) + " more\n";
  if (found > 0)
    text += "The first `drop-off` makes players of them; an exchange or a bundle brings what others hold of them, `arrival` shows whom this device knows.\n";
  return text;
}

}  // namespace weavelog::cli
