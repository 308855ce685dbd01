// bundle receipt, list, key: who has what was made here.

#include "core/base/iso_time.h"
#include "core/model/queries.h"
#include "sync/carry/carried_file.h"
#include "sync/carry/receipt.h"
#include "sync/cli/bundle_commands.h"
#include "sync/cli/render.h"
#include "sync/trust/proquint.h"

namespace weavelog::cli {
namespace {

struct ReceiptArguments {
  std::string file;
};

/// Anybody can sign a receipt under any name: who is not known here is told so.
std::string called(const std::string& device, KnownAs known) {
  const char* standing = known == KnownAs::stranger ? " (not known here)" : known == KnownAs::revoked ? " (revoked)" : "";
  return "\"" + device + "\"" + standing;
}

Outcome<Ending> receipt(Context& context, const ReceiptArguments& arguments) {
  const auto bytes = read_small_file(arguments.file, kMaxReceiptBytes);
  if (!bytes) return fail(bytes.error());
  const DeviceList& devices = context.station().devices();
  const auto read_one = open_receipt(*bytes, context.ledger().key());
  if (!read_one) return fail(read_one.error());
  if (auto kept = remember_receipt(context.ledger(), devices, *read_one); !kept) return fail(kept.error());
  const KnownAs known = known_as(context.ledger(), devices, read_one->by.key);
  const std::string by = called(known == KnownAs::stranger ? read_one->by.device : device_name(context.ledger(), devices, read_one->by.key), known);
  json::array lacking;
  std::string text;
  for (const ReceiptLine& line : compare_receipt(context.ledger(), *read_one)) {
    if (!line.held || (line.lacking == 0 && line.parted == 0)) continue;
    const auto player = find_player(context.ledger(), line.book);
    const std::string name = player ? name_text(player->family_name, player->given_name, player->native_name) : line.book.hex();
    lacking.push_back(json::object{{"book", line.book.hex()}, {"name", name}, {"entries", line.lacking}, {"parted", line.parted}});
    text += "\n" + name + ": " + counted(line.lacking, "entry", "entries") + " here that are not there yet" +
            (line.parted > 0 ? ", and another branch there" : "");
  }
  context.answer(json::object{{"bundle", read_one->bundle.hex()},
                              {"device", read_one->by.device},
                              {"key", to_hex(read_one->by.key)},
                              {"known_as", name_of(known)},
                              {"at", iso_utc(read_one->at)},
                              {"complete", read_one->complete},
                              {"books", read_one->books.size()},
                              {"lacking", std::move(lacking)}},
                 by + " took " + (read_one->complete ? "all of it" : "a part of it") + " in at " +
                     ToldTimes(context)(read_one->at) + ": " + counted(read_one->books.size(), "book", "books") + text);
  return Ending::done;
}

struct Nothing {};

Outcome<Ending> list(Context& context, const Nothing&) {
  json::array out;
  std::string text;
  ToldTimes told(context);
  for (const HandedOver& made : bundles_made(context.ledger(), context.station().devices())) {
    json::array taken;
    text += told(made.made) + "  " + made.id.hex().substr(0, 12) + "  for " + made.receiver + ", " + counted(made.books, "book", "books") +
            (made.note.empty() ? "" : ": " + made.note) + "\n";
    for (const HandedOver::Taken& one : made.taken) {
      taken.push_back(json::object{
          {"device", one.device}, {"key", to_hex(one.by)}, {"known_as", name_of(one.known)}, {"at", iso_utc(one.at)}, {"complete", one.complete}, {"books", one.books}});
      text += "    " + told(one.at) + "  taken in by " + called(one.device, one.known) + (one.complete ? "" : ", not all of it") + "\n";
    }
    out.push_back(json::object{{"bundle", made.id.hex()},
                               {"made", iso_utc(made.made)},
                               {"receiver", made.receiver},
                               {"note", made.note},
                               {"books", made.books},
                               {"entries", made.entries},
                               {"taken", std::move(taken)}});
  }
  context.answer(out, text.empty() ? "no bundle was made here" : text);
  return Ending::done;
}

Outcome<Ending> key(Context& context, const Nothing&) {
  const AuthorCard self = context.ledger().self();
  context.answer(json::object{{"device", self.device}, {"key", to_hex(self.key)}, {"words", fingerprint_words(self.key)}}, to_hex(self.key));
  return Ending::done;
}

}  // namespace

void add_bundle_kept_commands(CLI::App& bundle, Work& chosen) {
  add_command<ReceiptArguments>(bundle, chosen, "receipt", "Read the receipt of a bundle that was made here", receipt,
                                [](CLI::App& command, ReceiptArguments& arguments) {
                                  command.add_option("FILE", arguments.file, "What `bundle read --receipt` wrote")->required();
                                  command.footer(
                                      "--json: one object: bundle, device, key, known_as, at, complete, books, lacking: [{book, name, entries, parted}].");
                                });
  add_command<Nothing>(bundle, chosen, "list", "Bundles that were made here, and who took them in", list, [](CLI::App& command, Nothing&) {
    command.footer("--json: an array of {bundle, made, receiver, note, books, entries, taken: [{device, key, known_as, at, complete, books}]}.");
  });
  add_command<Nothing>(bundle, chosen, "key", "This device's key, for whoever makes a bundle for it", key, [](CLI::App& command, Nothing&) {
    command.footer("--json: one object: device, key, words.");
  });
}

}  // namespace weavelog::cli
