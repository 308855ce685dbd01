// backup, restore.

#include "core/model/queries.h"
#include "core/store/backup.h"
#include "sync/carry/carried_file.h"
#include "sync/cli/commands.h"
#include "sync/cli/render.h"
#include "sync/trust/key_file.h"

namespace weavelog::cli {
namespace {

struct BackupArguments {
  std::string file;
};

struct RestoreArguments {
  std::string file;
  bool overwrite = false;
};

std::filesystem::path ledger_of(const Settings& settings) {
  return std::filesystem::path(settings.folder) / "ledger.db";
}

Outcome<Ending> backup(const Settings& settings, const BackupArguments& arguments) {
  const auto key_file = std::filesystem::path(settings.folder) / "device.key";
  std::optional<DeviceKey> key;
  if (std::error_code none; std::filesystem::exists(key_file, none)) {
    auto loaded = load_or_create_key(key_file);
    if (!loaded) return fail(loaded.error());
    key = std::move(*loaded);
  }
  if (auto done = back_up(ledger_of(settings), arguments.file, key ? &*key : nullptr); !done)
    return fail(done.error());
  std::error_code ignored;
  const auto bytes = std::filesystem::file_size(arguments.file, ignored);
  Context(settings).answer(json::object{{"file", arguments.file}, {"bytes", bytes}},
                           "written and checked: " + arguments.file +
                               "\nIt holds every player's data, but not this device's key. Keep it safe.");
  return Ending::done;
}

/// Backups of the other kind, and what colleagues send, are taken in by another command.
Outcome<> refuse_bundle(const std::string& file) {
  const auto source = read_carried_file(file);
  Bytes begin(kBundleMagic.size());
  const auto got = source ? (*source)(begin) : Outcome<std::size_t>(0);
  if (got && *got == begin.size() && as_text(begin) == kBundleMagic)
    return fail(FaultCode::bad_input, "this is a bundle, and `restore` takes what `backup` wrote", file, "take it in with `bundle read`; a backup among bundles too");
  return {};
}

Outcome<Ending> restore_here(const Settings& settings, const RestoreArguments& arguments) {
  if (auto none = refuse_bundle(arguments.file); !none) return fail(none.error());
  std::error_code error;
  if (std::filesystem::create_directories(settings.folder, error))
    std::filesystem::permissions(settings.folder, std::filesystem::perms::owner_all, error);
  const auto done =
      restore(arguments.file, ledger_of(settings), arguments.overwrite, {DeviceList::carry_revocations, DeviceList::withdraw_open});
  if (!done) return fail(done.error());
  // Opened once, so that what is wrong with it shows now.
  Context context(settings);
  if (auto opened = context.open(); !opened) return fail(opened.error());
  const VerifyReport report = context.ledger().verify();
  json::array faults;
  std::string text = "restored: " + std::to_string(count_players(context.ledger())) + " players, " +
                     std::to_string(report.entries) +
                     " entries; from here on this device writes as a new author";
  if (done->replaced)
    text += "\nwhat was here before is kept in " + done->replaced->string() +
            "; it still holds whoever was in it, so remove it once all is well";
  if (!done->carried) {
    text += std::string("\n") + (done->replaced ? "what was here before held nothing, or can't be read" : "nothing was here before") +
            ": a player who was forgotten since the backup was made is in it, and has to be forgotten again (`forget`)";
    if (!context.station().devices().devices().empty())
      text += "; who was revoked or got another role since then must be so again (`devices`), and its open invitation codes were withdrawn";
  }
  for (const std::string& fault : report.faults) {
    faults.push_back(json::string(fault));
    text += "\n" + fault;
  }
  if (const std::string line = not_compared_line(report); !line.empty()) text += "\n" + line;
  context.answer(
      json::object{{"players", count_players(context.ledger())},
                   {"entries", report.entries},
                   {"well", report.faults.empty()},
                   {"faults", std::move(faults)},
                   {"not_compared", report.not_compared},
                   {"carried", done->carried},
                   {"replaced", done->replaced ? json::value(done->replaced->string()) : json::value()}},
      text);
  return report.faults.empty() ? Ending::done : Ending::fault;
}

template <class Arguments>
void set_work(CLI::App& command, FolderWork& chosen, const std::shared_ptr<Arguments>& arguments,
              Outcome<Ending> (*run)(const Settings&, const Arguments&)) {
  command.callback([&chosen, arguments, run] {
    chosen = [arguments, run](const Settings& settings) { return run(settings, *arguments); };
  });
}

}  // namespace

void add_backup_commands(CLI::App& app, FolderWork& chosen) {
  CLI::App* out = app.add_subcommand(
      "backup", "Copy the database into a new file, also while another program has it open");
  const auto to = std::make_shared<BackupArguments>();
  out->add_option("FILE", to->file, "The new file; never overwritten")->required();
  out->footer("--json: one object: file, bytes.");
  set_work(*out, chosen, to, backup);
  CLI::App* in = app.add_subcommand("restore", "Put a backup into this device's folder");
  const auto from = std::make_shared<RestoreArguments>();
  in->add_option("FILE", from->file, "A file that `backup` wrote")->required();
  in->add_flag("--overwrite", from->overwrite,
               "Take the place of the database that is there; it is kept under another name");
  in->footer("--json: one object: players, entries, well, faults, not_compared, carried (who is revoked, forgotten and invited, from what was here before), replaced.");
  set_work(*in, chosen, from, restore_here);
}

}  // namespace weavelog::cli
