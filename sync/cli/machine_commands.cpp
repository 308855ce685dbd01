// machines, machine-add, machine-set, machine-care: what the room strings on.

#include "core/base/iso_time.h"
#include "core/base/localised.h"
#include "core/desk/machines.h"
#include "core/model/field_json.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/field_input.h"
#include "sync/cli/told_times.h"

namespace weavelog::cli {
namespace {

struct MachineArguments {
  std::string event, name, kind, maker, model, whose, max, prestretch, every, note, machine, care, asked, read, by, at;
};

json::object machine_json(const MachineNow& now, std::size_t number) {
  json::object out = fields_json(now.machine.now);
  out["number"] = number;
  out["machine"] = now.machine.id().hex();
  out["out_of_order"] = now.out_of_order.has_value();
  if (now.out_of_order) out["reason"] = now.out_of_order->note;
  out["strung_since_cleaning"] = now.strung;
  out["cleaning_due"] = now.cleaning_due;
  if (now.cleaned_at) out["cleaned_at"] = iso_utc(*now.cleaned_at);
  if (now.calibration) {
    out["calibration"] = fields_json(*now.calibration);
    if (const auto off = now.off_per_mille()) out["off_per_mille"] = *off;
  }
  return out;
}

std::string machine_text(const Language& language, const MachineNow& now, std::size_t number, ToldTimes& told) {
  const Machine& machine = now.machine.now;
  std::string text = std::to_string(number) + "  " + machine.name + ", " + std::string(name_of_choice(machine.kind));
  for (const std::string& part : {machine.maker, machine.model})
    if (!part.empty()) text += " " + part;
  if (machine.max_tension) text += ", to " + localised(language, *machine.max_tension);
  if (!machine.prestretch.empty()) text += ", pre-stretch " + machine.prestretch + " %";
  text += "\n   " + std::to_string(now.strung) + " strung since its clamps were cleaned";
  if (now.cleaning_due) text += "  (clean them now)";
  if (now.calibration && now.calibration->asked && now.calibration->read) {
    text += "\n   calibrated: " + localised(language, *now.calibration->asked) + " set, " + localised(language, *now.calibration->read) + " read";
    if (now.calibration->at) text += ", " + told(*now.calibration->at);
  }
  if (now.out_of_order) text += "\n   OUT OF ORDER: " + now.out_of_order->note + " (" + now.out_of_order->by + ")";
  return text + "\n";
}

Outcome<Ending> tell_machines(Context& context, const BookId& event) {
  json::array list;
  std::string text;
  ToldTimes told(context);
  for (const MachineNow& now : event_machines(context.ledger(), event, context.zone_of(event), context.now())) {
    list.push_back(machine_json(now, list.size() + 1));
    text += machine_text(context.language(), now, list.size(), told);
  }
  context.answer(list, text.empty() ? "no machine yet; `machine-add` adds one\n" : text);
  return Ending::done;
}

Outcome<Ending> store_machines(Context& context, const BookId& event, const Outcome<Draft>& draft) {
  if (!draft) return fail(draft.error());
  if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
  return tell_machines(context, event);
}

Outcome<> read_tension(const std::string& text, const char* where, std::optional<Quantity>& out) {
  if (text.empty()) return {};
  const auto tension = quantity_from(text, Unit::none, where);
  if (!tension) return fail(tension.error());
  out = *tension;
  return {};
}

/// Takes over what was said.
Outcome<> read_machine(const MachineArguments& arguments, Machine& machine) {
  for (const auto& [said, member] : {std::pair(&arguments.name, &machine.name), std::pair(&arguments.maker, &machine.maker),
                                     std::pair(&arguments.model, &machine.model), std::pair(&arguments.whose, &machine.whose),
                                     std::pair(&arguments.prestretch, &machine.prestretch), std::pair(&arguments.note, &machine.note)}) {
    if (said->empty()) continue;
    auto text = cleaned(*said, "machine");
    if (!text) return fail(text.error());
    *member = std::move(*text);
  }
  if (!arguments.kind.empty()) {
    const auto kind = choice_from<MachineKind>(arguments.kind);
    if (!kind || *kind == MachineKind::unsaid) return no_choice(arguments.kind, "kind", {"constant_pull", "lockout", "drop_weight"});
    machine.kind = *kind;
  }
  if (!arguments.every.empty()) {
    const auto every = whole_from(arguments.every, "clean every");
    if (!every) return fail(every.error());
    machine.clean_every = *every;
  }
  return read_tension(arguments.max, "max tension", machine.max_tension);
}

Outcome<Ending> show(Context& context, const MachineArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  return tell_machines(context, *event);
}

Outcome<Ending> add(Context& context, const MachineArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  Machine machine;
  if (auto read = read_machine(arguments, machine); !read) return fail(read.error());
  return store_machines(context, *event, add_machine(*event, load_machines(context.ledger(), *event), machine, context.now()));
}

Outcome<Ending> set(Context& context, const MachineArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  const auto machine = choose_machine(context, *event, arguments.machine);
  if (!machine) return fail(machine.error());
  Machine wanted = machine->machine.now;
  if (auto read = read_machine(arguments, wanted); !read) return fail(read.error());
  return store_machines(context, *event, change_machine(*event, load_machines(context.ledger(), *event), machine->machine, wanted));
}

Outcome<Ending> care(Context& context, const MachineArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  const auto machine = choose_machine(context, *event, arguments.machine);
  if (!machine) return fail(machine.error());
  MachineCare done;
  const auto what = choice_from<CareKind>(arguments.care);
  if (!what || *what == CareKind::unsaid)
    return no_choice(arguments.care, "care", {"clamps_cleaned", "calibrated", "out_of_order", "back_in_order"});
  done.machine = machine->machine.id();
  done.what = *what;
  done.by = arguments.by.empty() ? context.ledger().self().device : arguments.by;
  done.note = arguments.note;
  if (!arguments.at.empty()) {
    const auto at = moment_from(arguments.at, context.zone_of(*event), context.now());
    if (!at) return fail(at.error());
    done.at = *at;
  }
  if (auto read = read_tension(arguments.asked, "asked", done.asked); !read) return fail(read.error());
  if (auto read = read_tension(arguments.read, "read", done.read); !read) return fail(read.error());
  return store_machines(context, *event, note_care(*event, done, context.now()));
}

void add_machine_event(CLI::App& command, MachineArguments& arguments) {
  command.add_option("--event", arguments.event, "NAME or number of the event; default: the one in use");
  command.footer(
      "--json: an array of the machines: [{number, machine, name, kind, maker, model, whose, max_tension, prestretch, clean_every,\n"
      "out_of_order, reason, strung_since_cleaning, cleaning_due, cleaned_at, calibration, off_per_mille, note}].");
}
void add_description(CLI::App& command, MachineArguments& arguments) {
  command.add_option("--maker", arguments.maker, "Who made it");
  command.add_option("--model", arguments.model, "Its model");
  command.add_option("--whose", arguments.whose, "The stringer who brought it");
  command.add_option("--max", arguments.max, "The highest tension that its maker allows, with its unit");
  command.add_option("--pre-stretch", arguments.prestretch, "What can be set, per cent: \"0 10 20\"");
  command.add_option("--clean-every", arguments.every, "Clamps are due after so many rackets; default: every evening");
  command.add_option("--note", arguments.note, "A remark");
  add_machine_event(command, arguments);
}

}  // namespace

void add_machine_commands(CLI::App& app, Work& chosen) {
  add_command<MachineArguments>(app, chosen, "machines", "The machines of the room, and what they need", show, add_machine_event);
  add_command<MachineArguments>(app, chosen, "machine-add", "A machine that the room has", add,
                                [](CLI::App& command, MachineArguments& arguments) {
                                  command.add_option("NAME", arguments.name, "As the room calls it")->required();
                                  command.add_option("KIND", arguments.kind, "constant_pull, lockout, drop_weight")->required();
                                  add_description(command, arguments);
                                });
  add_command<MachineArguments>(app, chosen, "machine-set", "Change what is said of a machine", set,
                                [](CLI::App& command, MachineArguments& arguments) {
                                  command.add_option("MACHINE", arguments.machine, "Its name or number in `machines`")->required();
                                  command.add_option("--name", arguments.name, "A new name");
                                  command.add_option("--kind", arguments.kind, "constant_pull, lockout, drop_weight");
                                  add_description(command, arguments);
                                });
  add_command<MachineArguments>(
      app, chosen, "machine-care", "Clamps cleaned, a calibration, out of order or back", care, [](CLI::App& command, MachineArguments& arguments) {
        command.add_option("MACHINE", arguments.machine, "Its name or number in `machines`")->required();
        command.add_option("CARE", arguments.care, "clamps_cleaned, calibrated, out_of_order, back_in_order")->required();
        command.add_option("--asked", arguments.asked, "Of a calibration: the tension that was set, with its unit");
        command.add_option("--read", arguments.read, "and what the gauge showed");
        command.add_option("--note", arguments.note, "The reason, or a remark");
        command.add_option("--by", arguments.by, "Who does it; default: the device's name");
        command.add_option("--at", arguments.at, "When; default: now");
        add_machine_event(command, arguments);
      });
}

}  // namespace weavelog::cli
