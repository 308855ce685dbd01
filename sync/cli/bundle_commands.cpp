// bundle make, read, show: books in a file.

#include <iostream>
#include <map>
#include <set>

#include "core/base/iso_time.h"
#include "core/base/text.h"
#include "core/model/queries.h"
#include "core/people/consent.h"
#include "sync/carry/carried_file.h"
#include "sync/carry/receipt.h"
#include "sync/cli/bundle_commands.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/render.h"
#include "sync/trust/proquint.h"
#include "sync/trust/rights.h"

namespace weavelog::cli {
namespace {

/// The first line of a file, or of standard input for "-".
Outcome<std::string> first_line(const std::string& file) {
  std::string line;
  if (file == "-") {
    std::getline(std::cin, line);
  } else {
    const auto bytes = read_small_file(file, 64 * 1024);
    if (!bytes) return fail(bytes.error());
    line = std::string(as_text(*bytes));
  }
  return line.substr(0, line.find_first_of("\r\n"));
}

struct Opening {
  std::string file;
  std::string passphrase_from;
};

void add_opening(CLI::App& command, Opening& opening) {
  command.add_option("FILE", opening.file, "The bundle")->required();
  command.add_option("--passphrase-from", opening.passphrase_from, "A file whose first line is the passphrase; - for standard input");
}

struct Opened {
  DeviceKey key;
  OpenWith with;
  ByteSource source;
};

Outcome<Opened> open_file(Context& context, const Opening& opening) {
  auto source = read_carried_file(opening.file);
  if (!source) return fail(source.error());
  Opened out{context.ledger().key(), {}, std::move(*source)};
  if (!opening.passphrase_from.empty()) {
    auto words = first_line(opening.passphrase_from);
    if (!words) return fail(words.error());
    out.with.passphrase = std::move(*words);
  }
  return out;
}

json::array hex_list(const std::vector<BookId>& books) {
  json::array out;
  for (const BookId& book : books) out.emplace_back(book.hex());
  return out;
}

// -------------------------------------------------------------------------------------------------------
// make

struct MakeArguments {
  std::string file, event, to, passphrase_from, for_event, note;
  std::vector<std::string> players;
  bool all = false, backup = false, words = false, replace = false, estimate = false;
};

/// A device by name or by the beginning of its key: enrolled here, a host, or one whose entries are held; or any by its whole key.
Outcome<std::pair<PublicKey, std::string>> choose_device(Context& context, const std::string& wanted) {
  std::map<PublicKey, std::string> known{{context.ledger().self().key, context.ledger().self().device}};
  for (const KnownDevice& one : known_devices(context.ledger(), context.station().devices())) known[one.key] = one.name;
  for (const EnrolledDevice& device : context.station().devices().devices()) known[device.key] = device.name;  // revoked ones are told so
  std::vector<std::pair<PublicKey, std::string>> meant;
  for (const auto& [key, name] : known)
    if (search_key(name) == search_key(wanted) || (wanted.size() >= 6 && to_hex(key).starts_with(wanted))) meant.emplace_back(key, name);
  const std::string where = "device \"" + wanted + "\"";
  if (meant.size() > 1) return fail(FaultCode::bad_input, "several devices are called so", where, "give the beginning of its key");
  if (meant.size() == 1) return meant.front();
  if (PublicKey key{}; from_hex(wanted, key)) return std::pair(key, wanted.substr(0, 12));
  return fail(FaultCode::not_found, "no such device is known here", where, "give its key, which `bundle key` shows on it");
}

Outcome<std::vector<BookId>> chosen_books(Context& context, const MakeArguments& arguments) {
  std::vector<BookId> out;
  if (arguments.all || arguments.backup)
    for (const BookInfo& book : context.ledger().books()) out.push_back(book.id);
  if (!arguments.event.empty()) {
    const auto event = context.event(arguments.event == "." ? "" : arguments.event);
    if (!event) return fail(event.error());
    out.push_back(*event);
    const auto players = players_at(context.ledger(), *event);
    out.insert(out.end(), players.begin(), players.end());
  }
  for (const std::string& player : arguments.players) {
    const auto book = choose_player(context, player);
    if (!book) return fail(book.error());
    out.push_back(*book);
  }
  if (out.empty()) return fail(FaultCode::bad_input, "nothing was chosen", "bundle", "give --player, --event, --all or --backup");
  return out;
}

Outcome<Ending> bundle_make(Context& context, const MakeArguments& arguments) {
  BundleWish wish;
  auto books = chosen_books(context, arguments);
  if (!books) return fail(books.error());
  wish.books = std::move(*books);
  wish.note = arguments.note;
  wish.leave_out = arguments.players.empty();
  wish.backup = arguments.backup;
  wish.pictures = &context.station().contents();
  if (!arguments.for_event.empty()) {
    const auto room = context.event(arguments.for_event == "." ? "" : arguments.for_event);
    if (!room) return fail(room.error());
    wish.room = *room;
  }
  wish.may_leave = [&](const BookId& book, BookKind kind) { return may_cross(context.ledger(), book, kind, wish.room); };
  std::string words, receiver = "whoever knows the passphrase";
  if (!arguments.to.empty()) {
    auto device = choose_device(context, arguments.to);
    if (!device) return fail(device.error());
    wish.receiver = device->first;
    receiver = device->second;
  } else if (!arguments.passphrase_from.empty()) {
    auto typed = first_line(arguments.passphrase_from);
    if (!typed) return fail(typed.error());
    wish.receiver = ForPassphrase{std::move(*typed), {}};
  } else if (arguments.words) {
    words = make_passphrase();
    wish.receiver = ForPassphrase{words, {}};
  } else if (!arguments.estimate) {
    return fail(FaultCode::bad_input, "nobody was named who can open it", "bundle", "give --to, --words or --passphrase-from");
  }
  const auto size = bundle_size(context.ledger(), wish);
  if (!size) return fail(size.error());
  json::object out{{"file", arguments.file},       {"books", size->books},   {"entries", size->entries},
                   {"pictures", size->pictures}, {"backup", wish.backup}, {"left_out", hex_list(size->left_out)}};
  std::string left;
  if (!size->left_out.empty()) left = "\nleft out because of what the players agreed to: " + counted(size->left_out.size(), "book", "books");
  if (arguments.estimate) {
    out["about_bytes"] = size->bytes;
    context.answer(out, counted(size->books, "book", "books") + ", " + counted(size->entries, "entry", "entries") + ", about " +
                            std::to_string((size->bytes + 1023) / 1024) + " KB" + left);
    return Ending::done;
  }
  if (arguments.file.empty()) return fail(FaultCode::bad_input, "no file was named", "bundle", "give the FILE to write");
  std::optional<MadeBundle> made;
  auto written = write_carried_file(arguments.file, arguments.replace, [&](const ByteSink& sink) -> Outcome<> {
    auto done = make_bundle(context.ledger(), context.station().devices(), wish, sink);
    if (!done) return fail(done.error());
    made = std::move(*done);
    return {};
  });
  if (!written) return fail(written.error());
  if (auto kept = remember_bundle(context.ledger(), *made, receiver); !kept) return fail(kept.error());
  if (auto noted = note_bundle(context.station().peers(), wish, *made, receiver); !noted) return fail(noted.error());
  out["books"] = made->books;
  out["entries"] = made->entries;
  out["pictures"] = made->pictures;
  out["pictures_gone"] = made->pictures_gone;
  if (made->pictures_gone > 0) left += "\nnot in it, because they were gone or damaged: " + counted(made->pictures_gone, "picture", "pictures");
  out["bundle"] = made->id.hex();
  out["bytes"] = made->bytes;
  out["receiver"] = receiver;
  if (!words.empty()) out["words"] = words;
  context.answer(out, "written: " + arguments.file + ", " + counted(made->books, "book", "books") + ", " +
                          std::to_string((made->bytes + 1023) / 1024) + " KB, for " + receiver + left +
                          (words.empty() ? "" : "\nIt opens with these words; tell them, do not send them along: " + words));
  return Ending::done;
}

// -------------------------------------------------------------------------------------------------------
// read

struct ReadArguments {
  Opening opening;
  std::string receipt;
  bool stranger = false, in_its_room = false;
};

json::object maker_json(const AuthorCard& maker, KnownAs known) {
  return {{"device", maker.device}, {"key", to_hex(maker.key)}, {"words", fingerprint_words(maker.key)}, {"known_as", name_of(known)}};
}

Outcome<Ending> read(Context& context, const ReadArguments& arguments) {
  auto opened = open_file(context, arguments.opening);
  if (!opened) return fail(opened.error());
  opened->with.device = &opened->key;
  TakeOptions options;
  options.ledger = &context.ledger();
  options.devices = &context.station().devices();
  options.peers = &context.station().peers();
  options.from_stranger = arguments.stranger;
  options.pictures = &context.station().contents();
  options.room = context.room();
  if (arguments.in_its_room) {
    auto source = read_carried_file(arguments.opening.file);
    if (!source) return fail(source.error());
    const auto reader = BundleReader::open(std::move(*source), opened->with);
    if (!reader) return fail(reader.error());
    options.room = reader->manifest().room;
  }
  options.may_take = [&](const BookId& book, BookKind kind, const BookId& room) { return may_cross(context.ledger(), book, kind, room); };
  options.rights = rights_in(options.room);
  if (!arguments.receipt.empty()) {
    auto source = read_carried_file(arguments.opening.file);
    if (!source) return fail(source.error());
    if (const auto head = BundleHead::read(*source); head && !free_for_receipt(arguments.receipt, head->id))
      return fail(FaultCode::conflict, "a file of this name exists, and it is no receipt of this bundle", arguments.receipt, "choose another name; nothing was taken in");
  }
  const auto taken = take_bundle(opened->source, opened->with, options);
  if (!taken) return fail(taken.error());
  json::object out{{"bundle", taken->id.hex()},
                   {"maker", maker_json(taken->manifest.maker, taken->maker)},
                   {"made", iso_utc(taken->manifest.made)},
                   {"note", taken->manifest.note},
                   {"books", taken->books_read},
                   {"entries", taken->entries},
                   {"applied", taken->applied},
                   {"known", taken->known},
                   {"quarantined", taken->quarantined},
                   {"forks", taken->forks},
                   {"withheld", hex_list(taken->withheld)},
                   {"forgotten", hex_list(taken->forgotten)},
                   {"not_begun", hex_list(taken->not_begun)},
                   {"erased", taken->erased},
                   {"backup", taken->manifest.backup},
                   {"pictures", taken->pictures},
                   {"pictures_failed", taken->pictures_failed},
                   {"pictures_gone", taken->pictures_gone},
                   {"complete", taken->complete()},
                   {"fault", taken->fault ? json::value(fault_json(*taken->fault)) : json::value()}};
  const BundleManifest& manifest = taken->manifest;
  std::string text = "from \"" + manifest.maker.device + "\" (" + std::string(name_of(taken->maker)) + "), made " + ToldTimes(context)(manifest.made) + ": " +
                     counted(taken->books_read, "book", "books") + ", " + counted(taken->applied, "new entry", "new entries") + ", " +
                     std::to_string(taken->known) + " known before";
  if (taken->pictures > 0) text += "\npictures: " + std::to_string(taken->pictures);
  if (taken->pictures_failed > 0) text += "\nnot stored: " + counted(taken->pictures_failed, "picture", "pictures");
  if (taken->pictures_gone > 0) text += "\nnot in it, since its maker had them no more: " + counted(taken->pictures_gone, "picture", "pictures");
  if (!taken->withheld.empty())
    text += "\nleft out, because the players said here that nobody may pass it on: " + counted(taken->withheld.size(), "book", "books");
  if (!taken->forgotten.empty()) text += "\nleft out, because they were forgotten: " + counted(taken->forgotten.size(), "book", "books");
  if (!taken->not_begun.empty())
    text += "\nleft out, because only the head of the room may bring books of another event: " + counted(taken->not_begun.size(), "book", "books");
  if (taken->erased > 0) text += "\nforgotten here too, because they withdrew: " + counted(taken->erased, "player", "players");
  if (taken->quarantined > 0) text += "\nput aside with a reason (see `quarantine`): " + counted(taken->quarantined, "entry", "entries");
  for (const std::string& device : taken->wrong_clocks) text += "\nthe clock of \"" + device + "\" was far ahead";
  if (taken->fault) text += "\nnot all of it: " + taken->fault->message();
  if (!arguments.receipt.empty()) {
    const auto sealed = seal_receipt(receipt_of(context.ledger(), *taken), context.ledger().key(), taken->manifest.maker.key);
    if (!sealed) return fail(sealed.error());
    auto written = write_carried_file(arguments.receipt, true, [&](const ByteSink& sink) { return sink(*sealed); });
    if (!written) return fail(written.error());
    out["receipt"] = arguments.receipt;
    text += "\nthe receipt for whoever made it: " + arguments.receipt;
  }
  context.answer(out, text);
  return taken->fault ? Ending::fault : Ending::done;
}

// -------------------------------------------------------------------------------------------------------
// show

Outcome<Ending> show(Context& context, const Opening& opening) {
  auto opened = open_file(context, opening);
  if (!opened) return fail(opened.error());
  opened->with.device = &opened->key;
  const auto head = BundleHead::read(opened->source);
  if (!head) return fail(head.error());
  const bool ours = head->is_for(opened->key.public_key());
  json::object out{{"bundle", head->id.hex()}, {"for_device", head->for_device}, {"for_this_device", ours}, {"format", head->format}};
  const char* opens = !head->for_device ? ", opens with a passphrase" : ours ? ", for this device" : ", for another device";
  std::string text = "bundle " + head->id.hex() + opens;
  if (!(head->for_device ? ours : opened->with.passphrase.has_value())) {
    context.answer(out, text);
    return Ending::done;
  }
  // The head was read: from the beginning again.
  auto source = read_carried_file(opening.file);
  if (!source) return fail(source.error());
  auto reader = BundleReader::open(std::move(*source), opened->with);
  if (!reader) return fail(reader.error());
  const BundleManifest manifest = reader->manifest();
  std::uint64_t entries = 0;
  std::set<BookId> books;
  std::optional<Fault> fault;
  for (;;) {
    const auto message = reader->next();
    if (!message) {
      fault = message.error();
      break;
    }
    if (!*message) break;
    if (const Entries* held = entries_in(**message)) {
      entries += held->batch.entries.size();
      for (const BatchBook& book : held->batch.books) books.insert(book.id);
    }
  }
  const bool whole = !fault && reader->end() == ChunkEnd::whole;
  const KnownAs known = known_as(context.ledger(), context.station().devices(), manifest.maker.key);
  out["maker"] = maker_json(manifest.maker, known);
  out["made"] = iso_utc(manifest.made);
  out["note"] = manifest.note;
  out["backup"] = manifest.backup;
  out["room"] = manifest.room ? json::value(manifest.room.hex()) : json::value();
  out["books"] = books.size();
  out["entries"] = entries;
  out["whole"] = whole;
  text += "\nmade by \"" + manifest.maker.device + "\" (" + std::string(name_of(known)) + ", " + fingerprint_words(manifest.maker.key) + ") at " +
          ToldTimes(context)(manifest.made) + (manifest.note.empty() ? "" : ": " + manifest.note) + "\n" + counted(books.size(), "book", "books") + ", " +
          counted(entries, "entry", "entries") + (whole ? "" : fault ? "; " + fault->message() : "; it is cut short or damaged after that");
  context.answer(out, text);
  return whole ? Ending::done : Ending::fault;
}

}  // namespace

void add_bundle_commands(CLI::App& app, Work& chosen) {
  CLI::App& bundle = *app.add_subcommand("bundle", "Carry books in a file: no network needed");
  bundle.require_subcommand(1);
  bundle.footer("Each of them explains its own --json with --help.");
  add_command<MakeArguments>(bundle, chosen, "make", "Write a bundle", bundle_make, [](CLI::App& command, MakeArguments& arguments) {
    command.add_option("FILE", arguments.file, "The new file");
    command.add_option("--player", arguments.players, "A player; may be given several times");
    command.add_option("--event", arguments.event, "An event with its players; . for the one in use");
    auto* all = command.add_flag("--all", arguments.all, "Everything that may leave");
    auto* backup = command.add_flag("--backup", arguments.backup,
                                    "Everything, the private kit, all pictures and players who agreed to nothing included: for this device or one "
                                    "that takes its place, which other devices refuse");
    backup->excludes(all)->excludes("--player")->excludes("--event");
    auto* to = command.add_option("--to", arguments.to, "The device that can open it: its name if known here, or its key");
    auto* words = command.add_flag("--words", arguments.words, "It opens with words that are made up and told");
    auto* from = command.add_option("--passphrase-from", arguments.passphrase_from,
                                    "It opens with the first line of that file; - for standard input");
    to->excludes(words)->excludes(from);
    words->excludes(from);
    command.add_option("--for-event", arguments.for_event,
                       "The receiver works in that event's room, so players who agreed to that room only go along; . for the one in use");
    command.add_option("--note", arguments.note, "For whoever opens it");
    command.add_flag("--replace", arguments.replace, "Take the place of a file that is there");
    command.add_flag("--estimate", arguments.estimate, "Write nothing, say how large it would be");
    command.footer(
        "Players who withdrew or agreed to another room stay behind: named ones are refused, of many they are left out.\n"
        "--json: one object: file, bundle, books, entries, pictures, pictures_gone, backup, bytes (or about_bytes), left_out, receiver, words.");
  });
  add_command<ReadArguments>(bundle, chosen, "read", "Take a bundle in", read, [](CLI::App& command, ReadArguments& arguments) {
    add_opening(command, arguments.opening);
    command.add_option("--receipt", arguments.receipt, "Write a receipt into that file, for whoever made the bundle");
    command.add_flag("--from-stranger", arguments.stranger, "Also from a device that is not known here");
    command.add_flag("--in-its-room", arguments.in_its_room, "This device works in the room for which the bundle was made");
    command.footer(
        "What a damaged file still holds is taken in; take it in again later to go on.\n"
        "--json: one object: bundle, maker: {device, key, words, known_as}, made, note, books, entries, applied, known, quarantined,\n"
        "forks, withheld, forgotten, not_begun, erased, backup, pictures, pictures_failed, pictures_gone, complete, fault, receipt. Exit code 1 if not all of it could be read.");
  });
  add_command<Opening>(bundle, chosen, "show", "What is in a bundle, without taking it in", show,
                       [](CLI::App& command, Opening& arguments) {
                         add_opening(command, arguments);
                         command.footer(
                             "--json: one object: bundle, for_device, for_this_device, format and, if it can be opened, maker, made, note, backup,\n"
                             "room, books, entries, whole. Exit code 1 if it is not whole.");
                       });
  add_bundle_kept_commands(bundle, chosen);
}

}  // namespace weavelog::cli
