#include <functional>
#include <map>

#include "core/base/iso_time.h"
#include "core/base/text.h"
#include "core/model/queries.h"
#include "sync/carry/known_as.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/host_talk.h"
#include "sync/cli/render.h"
#include "sync/net/exchange_guest.h"

namespace weavelog::cli {
namespace {

struct DeviceArguments {
  std::string device, name, role;
  int seconds = 30;
};

bool answered(const GuestStatus& status) { return status.session.devices || status.fault || status.session.fault; }

/// What is to be done with a device: here, or asked of the host; nothing: only look who is enrolled.
struct DeviceWish {
  std::function<Outcome<>(DeviceList&)> here;
  std::function<void(ExchangeGuest&)> there;
};

/// Those enrolled here, if any are; else those at the host, if this is a head's device there. Afterwards, if something was to be done.
Outcome<std::vector<EnrolledDevice>> enrolled(Context& context, int seconds, const DeviceWish& wish = {}) {
  DeviceList& own = context.station().devices();
  if (auto here = own.devices(); !here.empty()) {
    if (!wish.here) return here;
    if (auto done = wish.here(own); !done) return fail(done.error());
    return own.devices();
  }
  const auto status = talk_with_host(context, {}, seconds, [&](ExchangeGuest& guest) {
    if (wish.there)
      wish.there(guest);
    else
      guest.wish_devices();
    (void)guest.wait(std::chrono::seconds(seconds), answered);
  });
  if (!status) return fail(status.error());
  if (!status->session.devices) return fail(why_not(*status, Address{}, seconds));
  return *status->session.devices;
}

Outcome<EnrolledDevice> choose_enrolled(Context& context, const DeviceArguments& arguments) {
  const auto known = enrolled(context, arguments.seconds);
  if (!known) return fail(known.error());
  std::vector<EnrolledDevice> meant;
  for (const EnrolledDevice& device : *known)
    if (search_key(device.name) == search_key(arguments.device) ||
        (arguments.device.size() >= 6 && to_hex(device.key).starts_with(arguments.device)))
      meant.push_back(device);
  const std::string where = "device \"" + arguments.device + "\"";
  if (meant.empty()) return fail(FaultCode::not_found, "no such device is enrolled", where, "`devices` lists them");
  if (meant.size() > 1)
    return fail(FaultCode::bad_input, "several devices are called so", where, "give the beginning of its key, as `devices` lists it");
  return meant.front();
}

json::value devices_json(Context& context, const std::vector<EnrolledDevice>& devices, std::string& text) {
  json::array list;
  ToldTimes told(context);
  std::map<PublicKey, KnownAuthor> writers;
  for (const KnownAuthor& known : context.ledger().authors()) {
    const auto [found, fresh] = writers.try_emplace(known.card.key, known);
    if (!fresh) found->second.wrong_clock = found->second.wrong_clock || known.wrong_clock;
  }
  const auto line = [&](const PublicKey& key, const std::string& name, const EnrolledDevice* device, bool wrong_clock) {
    json::object one{{"key", to_hex(key)}, {"name", name}};
    text += name + "  " + to_hex(key).substr(0, 12);
    if (device != nullptr) {
      one["role"] = name_of(device->role);
      one["since"] = iso_utc(device->since);
      one["revoked"] = device->revoked ? json::value(iso_utc(*device->revoked)) : json::value();
      one["late_entries"] = device->late_entries;
      text += "  " + std::string(name_of(device->role));
      if (device->revoked) text += ", revoked " + told(*device->revoked);
      if (device->late_entries > 0)
        text += ", " + std::to_string(device->late_entries) + " entries came later by way of others";
    }
    one["wrong_clock"] = wrong_clock;
    text += wrong_clock ? ", its clock was far ahead\n" : "\n";
    list.push_back(std::move(one));
  };
  for (const EnrolledDevice& device : devices) {
    const auto writer = writers.find(device.key);
    line(device.key, device.name, &device, writer != writers.end() && writer->second.wrong_clock);
    writers.erase(device.key);
  }
  for (const auto& [key, writer] : writers) line(key, writer.card.device, nullptr, writer.wrong_clock);
  return list;
}

Outcome<Ending> devices(Context& context, const DeviceArguments& arguments) {
  const auto host = context.host();
  std::vector<EnrolledDevice> known;
  if (!context.station().devices().devices().empty() || (host && host->role == Role::head)) {
    auto asked = enrolled(context, arguments.seconds);
    if (!asked) return fail(asked.error());
    known = std::move(*asked);
  }
  std::string text;
  const auto list = devices_json(context, known, text);
  context.answer(list, text);
  return Ending::done;
}

Outcome<Ending> revoke(Context& context, const DeviceArguments& arguments) {
  const auto device = choose_enrolled(context, arguments);
  if (!device) return fail(device.error());
  const auto now = enrolled(context, arguments.seconds,
                            {[&](DeviceList& list) { return list.revoke(device->key); }, [&](ExchangeGuest& guest) { guest.wish_revocation(device->key); }});
  if (!now) return fail(now.error());
  std::string text;
  const auto list = devices_json(context, *now, text);
  context.answer(list, "revoked: " + device->name + "\n" + text);
  return Ending::done;
}

Outcome<Ending> change_device(Context& context, const DeviceArguments& arguments) {
  if (arguments.name.empty() && arguments.role.empty())
    return fail(FaultCode::bad_input, "nothing is to be changed", "device", "give --name or --role");
  std::optional<Role> role;
  if (!arguments.role.empty()) {
    const auto parsed = parse_role(arguments.role);
    if (!parsed) return fail(parsed.error());
    role = *parsed;
  }
  const auto device = choose_enrolled(context, arguments);
  if (!device) return fail(device.error());
  const auto now = enrolled(context, arguments.seconds,
                            {[&](DeviceList& list) -> Outcome<> {
                               if (!arguments.name.empty())
                                 if (auto named = list.rename(device->key, arguments.name); !named) return named;
                               return role ? list.set_role(device->key, *role) : Outcome<>{};
                             },
                             [&](ExchangeGuest& guest) { guest.wish_change(device->key, arguments.name, role); }});
  if (!now) return fail(now.error());
  std::string text;
  const auto list = devices_json(context, *now, text);
  context.answer(list, text);
  return Ending::done;
}

// --------------------------------------------------------------------------------------------------------
// open codes

struct CodeArguments {
  std::string withdraw;
};

Outcome<Ending> codes(Context& context, const CodeArguments& arguments) {
  DeviceList& devices = context.station().devices();
  if (!arguments.withdraw.empty()) {
    const bool all = arguments.withdraw == "all";
    std::vector<InvitationNumber> meant;
    std::vector<std::string> named;
    for (const OpenInvitation& one : devices.open_invitations())
      if (all || (arguments.withdraw.size() >= 4 && to_hex(one.number).starts_with(arguments.withdraw))) {
        meant.push_back(one.number);
        named.push_back(to_hex(one.number) + " (" + name_of(one.role) + ")");
      }
    const std::string where = "code \"" + shortened(arguments.withdraw, 40) + "\"";
    if (meant.empty() && !all) return fail(FaultCode::not_found, "no such code is open", where, "`codes` lists them");
    // A code that was not meant would shut out somebody who has it in hand.
    if (meant.size() > 1 && !all)
      return fail(FaultCode::bad_input, several_words(named), where, "give more of the number; none was withdrawn");
    for (const InvitationNumber& number : meant)
      if (auto gone = devices.withdraw(number); !gone) return fail(gone.error());
  }
  json::array list;
  std::string text;
  ToldTimes told(context);
  for (const OpenInvitation& one : devices.open_invitations()) {
    const std::string by = one.asked_by ? device_name(context.ledger(), devices, *one.asked_by) : std::string();
    list.push_back(json::object{{"number", to_hex(one.number)}, {"role", name_of(one.role)}, {"expires", iso_utc(one.expires)},
                                {"asked_by", one.asked_by ? json::value(to_hex(*one.asked_by)) : json::value()}, {"wrong_tries", one.wrong_tries}});
    text += to_hex(one.number) + "  " + name_of(one.role) + ", until " + told(one.expires) + (by.empty() ? "" : ", asked for by " + by) +
            (one.wrong_tries > 0 ? ", wrong tries: " + std::to_string(one.wrong_tries) : "") + "\n";
  }
  context.answer(list, text.empty() ? "no code is open" : text);
  return Ending::done;
}

// --------------------------------------------------------------------------------------------------------
// who has a book

struct HolderArguments {
  std::string player;
};

Outcome<Ending> holders(Context& context, const HolderArguments& arguments) {
  std::optional<BookId> only;
  if (!arguments.player.empty()) {
    const auto book = choose_player(context, arguments.player);
    if (!book) return fail(book.error());
    only = *book;
  }
  json::array list;
  std::string text;
  ToldTimes told(context);
  for (const Exchanged& one : context.station().peers().exchanged(only)) {
    const auto player = find_player(context.ledger(), one.book);
    const std::string name = player ? name_text(player->family_name, player->given_name, player->native_name) : std::string();
    const std::string device = device_name(context.ledger(), context.station().devices(), one.peer);
    const KnownAs known = known_as(context.ledger(), context.station().devices(), one.peer);
    list.push_back(json::object{{"book", one.book.hex()}, {"player", name}, {"device", device}, {"key", to_hex(one.peer)}, {"known_as", name_of(known)},
                                {"sent", one.entries.sent}, {"received", one.entries.received}, {"first", iso_utc(one.first)}, {"last", iso_utc(one.last)}});
    text += name + "  " + device + " (" + to_hex(one.peer).substr(0, 12) + ", " + std::string(name_of(known)) + ")  " + std::to_string(one.entries.sent) +
            " sent, " + std::to_string(one.entries.received) + " received, last " + told(one.last) + "\n";
  }
  for (const HandedOn& one : context.station().peers().handed(only)) {
    const auto player = find_player(context.ledger(), one.book);
    const std::string name = player ? name_text(player->family_name, player->given_name, player->native_name) : std::string();
    list.push_back(json::object{{"book", one.book.hex()}, {"player", name}, {"as", name_of(one.as)}, {"receiver", one.receiver}, {"times", one.times},
                                {"first", iso_utc(one.first)}, {"last", iso_utc(one.last)}});
    text += name + "  " + std::string(name_of(one.as)) + (one.receiver.empty() ? "" : " for " + one.receiver) + "  " + std::to_string(one.times) +
            (one.times == 1 ? " time" : " times") + ", last " + told(one.last) + "\n";
  }
  context.answer(list, text.empty() ? "nothing about players has crossed between this device and another one" : text);
  return Ending::done;
}

}  // namespace

void add_device_commands(CLI::App& app, Work& chosen) {
  const auto add_seconds = [](CLI::App& command, DeviceArguments& arguments) {
    command.add_option("--seconds", arguments.seconds, "How long to try")->check(CLI::Range(1, 3600))->capture_default_str();
    command.footer("--json: an array of {key, name, role, since, revoked, late_entries, wrong_clock}; of devices that only wrote\n"
                   "what is held here: {key, name, wrong_clock}.");
  };
  add_command<DeviceArguments>(
      app, chosen, "devices",
      "Who is enrolled: at this server's folder, or asked from the event server by its head; and who wrote what is held here",
      devices, add_seconds);
  add_command<DeviceArguments>(app, chosen, "revoke",
                               "As head of the room: shut a lost or foreign device out, at once; what it wrote stays", revoke,
                               [&](CLI::App& command, DeviceArguments& arguments) {
                                 command.add_option("DEVICE", arguments.device, "NAME or six or more characters of its key")->required();
                                 add_seconds(command, arguments);
                               });
  add_command<DeviceArguments>(app, chosen, "device-set", "As head of the room: give a device another name or role", change_device,
                               [&](CLI::App& command, DeviceArguments& arguments) {
                                 command.add_option("DEVICE", arguments.device, "NAME or six or more characters of its key")->required();
                                 command.add_option("--name", arguments.name, "What the room calls it, until it pairs anew");
                                 command.add_option("--role", arguments.role, "head, desk, stringer or reader");
                                 add_seconds(command, arguments);
                               });
  add_command<CodeArguments>(app, chosen, "codes", "Codes for pairing that are open at this server's folder: for which role, until when, and who asked for them", codes,
                             [](CLI::App& command, CodeArguments& arguments) {
                               command.add_option("--withdraw", arguments.withdraw, "Four or more characters of one code's number, or all: nobody pairs with it any more");
                               command.footer("Codes that a device asked for go with it when it is revoked or is no head any more.\n"
                                              "--json: an array of {number, role, expires, asked_by (key, null: this device itself), wrong_tries}.");
                             });
  add_command<HolderArguments>(
      app, chosen, "holders", "Which devices were given players' books by this one or gave them to it, and what was made of them for others", holders,
      [](CLI::App& command, HolderArguments& arguments) {
        command.add_option("PLAYER", arguments.player, "NAME or number of one player; default: all");
        command.footer("Exchanges with other devices and servers, and the bundles, backups and player cards that were made here. Erased with the book.\n"
                       "--json: an array of {book, player, device, key, known_as, sent, received (entries), first, last}, and of\n"
                       "{book, player, as (bundle, backup, card), receiver, times, first, last}.");
      });
}

}  // namespace weavelog::cli
