#include "sync/carry/outgoing.h"

#include <boost/json.hpp>

#include "sync/carry/carried_file.h"
#include "sync/carry/receipt.h"

namespace weavelog {
namespace {

namespace fs = std::filesystem;
namespace json = boost::json;

constexpr std::string_view kKept = "carry.outgoing";

void discard(const fs::path& file) {
  std::error_code ignored;
  fs::remove(file, ignored);
}

bool is_there(const fs::path& file) {
  std::error_code ignored;
  return fs::exists(fs::symlink_status(file, ignored));
}

json::object written(const Outgoing& one) {
  return {{"id", one.id.hex()},
          {"for", one.for_device ? to_hex(*one.for_device) : std::string()},
          {"target", one.target.string()},
          {"receiver", one.receiver},
          {"note", one.note},
          {"backup", one.backup},
          {"made", one.made},
          {"books", static_cast<std::int64_t>(one.books)},
          {"entries", static_cast<std::int64_t>(one.entries)},
          {"bytes", static_cast<std::int64_t>(one.bytes)},
          {"pictures_gone", static_cast<std::int64_t>(one.pictures_gone)}};
}

std::optional<Outgoing> read(ByteView kept) {
  boost::system::error_code error;
  const json::value parsed = json::parse(as_text(kept), error);
  if (error || !parsed.is_object()) return std::nullopt;
  const json::object& held = parsed.get_object();
  const auto text = [&](std::string_view name) {
    const json::value* found = held.if_contains(name);
    return found != nullptr && found->is_string() ? std::string(found->get_string()) : std::string();
  };
  const auto number = [&](std::string_view name) {
    const json::value* found = held.if_contains(name);
    return found != nullptr && found->is_int64() ? found->get_int64() : 0;
  };
  const auto id = BundleId::from_hex(text("id"));
  if (!id) return std::nullopt;
  const json::value* backup = held.if_contains("backup");
  Outgoing out;
  out.id = *id;
  if (PublicKey key{}; from_hex(text("for"), key)) out.for_device = key;
  out.target = text("target");
  out.receiver = text("receiver");
  out.note = text("note");
  out.backup = backup != nullptr && backup->is_bool() && backup->get_bool();
  out.made = number("made");
  out.books = static_cast<std::uint64_t>(number("books"));
  out.entries = static_cast<std::uint64_t>(number("entries"));
  out.bytes = static_cast<std::uint64_t>(number("bytes"));
  out.pictures_gone = static_cast<std::uint64_t>(number("pictures_gone"));
  return out;
}

tl::unexpected<Fault> none_waits() {
  return fail(FaultCode::not_found, "no bundle waits to be brought anywhere", "bundle", "make it again; it may have held somebody who was forgotten");
}

}  // namespace

OutgoingBundle::OutgoingBundle(Station& station) : station_(station), folder_(station.folder() / "outgoing") {
  // In the same transaction; if that fails the bundle is gone all the same, and can be made again. Of this object nothing is held.
  station_.ledger().erase_with([folder = folder_](Connection&, const BookId&) {
    std::error_code ignored;
    fs::remove_all(folder, ignored);
  });
  const auto kept = waiting();
  std::error_code ignored;
  for (fs::directory_iterator at(folder_, ignored), end; !ignored && at != end; at.increment(ignored))
    if (!kept || at->path() != file(kept->id)) discard(at->path());
}

fs::path OutgoingBundle::file(const BundleId& id) const { return folder_ / (id.hex() + ".bundle"); }

Outcome<> OutgoingBundle::keep(const std::optional<Outgoing>& one) {
  return station_.ledger().remember(kKept, as_bytes(one ? json::serialize(written(*one)) : std::string()));
}

std::optional<Outgoing> OutgoingBundle::kept() const {
  const auto bytes = station_.ledger().remembered(kKept);
  return bytes && !bytes->empty() ? read(*bytes) : std::nullopt;
}

std::optional<Outgoing> OutgoingBundle::waiting() const {
  auto one = kept();
  if (!one || !is_there(file(one->id))) return std::nullopt;
  return one;
}

Outcome<Outgoing> OutgoingBundle::make(const BundleWish& wish, const std::string& receiver, const fs::path& target) {
  if (waiting()) return fail(FaultCode::conflict, "another bundle waits to be brought to its place", "bundle", "bring it there first, or give it up");
  if (is_there(target)) return fail(FaultCode::conflict, "there is a file of that name already", target.string(), "choose another name");
  if (const auto before = kept()) discard(part_of_carried_file(before->target));
  std::error_code error;
  fs::create_directories(folder_, error);
  if (error) return fail(FaultCode::io, "the folder can't be made: " + error.message(), folder_.string(), "look at this device's disk");
  fs::permissions(folder_, fs::perms::owner_all, error);
  std::optional<MadeBundle> made;
  const fs::path coming = folder_ / "coming";
  auto done = write_carried_file(coming, true, [&](const ByteSink& sink) -> Outcome<> {
    auto bundle = make_bundle(station_.ledger(), station_.devices(), wish, sink);
    if (!bundle) return fail(bundle.error());
    made = std::move(*bundle);
    return {};
  });
  if (!done) return fail(done.error());
  Outgoing one;
  one.id = made->id;
  one.for_device = made->for_device;
  one.target = target;
  one.receiver = receiver;
  one.note = made->manifest.note;
  one.backup = wish.backup;
  one.made = made->manifest.made;
  one.books = made->books;
  one.entries = made->entries;
  one.bytes = made->bytes;
  one.pictures_gone = made->pictures_gone;
  fs::rename(coming, file(one.id), error);
  if (error) {
    discard(coming);
    return fail(FaultCode::io, "the bundle can't be kept: " + error.message(), folder_.string(), "look at this device's disk");
  }
  if (auto kept = keep(one); !kept) {
    discard(file(one.id));
    return fail(kept.error());
  }
  if (auto noted = note_bundle(station_.peers(), wish, *made, receiver); !noted) return fail(noted.error());
  return one;
}

Outcome<Outgoing> OutgoingBundle::bring(const std::function<bool(std::uint64_t)>& go_on) {
  const auto one = waiting();
  if (!one) return none_waits();
  // Somebody can be forgotten while a slow stick is written: what is copied may hold them, so nothing of it may stay there.
  const auto still_waits = [&] { return is_there(file(one->id)); };
  const auto copied =
      copy_carried_file(file(one->id), one->target, [&](std::uint64_t bytes) { return still_waits() && (!go_on || go_on(bytes)); });
  if (!still_waits()) {
    discard(part_of_carried_file(one->target));
    if (copied) discard(one->target);
    return none_waits();
  }
  if (!copied) return fail(copied.error());
  MadeBundle made;
  made.id = one->id;
  made.for_device = one->for_device;
  made.manifest.made = one->made;
  made.manifest.note = one->note;
  made.books = one->books;
  made.entries = one->entries;
  if (auto kept = remember_bundle(station_.ledger(), made, one->receiver); !kept) return fail(kept.error());
  if (auto kept = keep({}); !kept) return fail(kept.error());
  discard(file(one->id));
  return *one;
}

Outcome<> OutgoingBundle::bring_to(const fs::path& target) {
  auto one = waiting();
  if (!one) return none_waits();
  if (one->target == target) return {};
  if (is_there(target)) return fail(FaultCode::conflict, "there is a file of that name already", target.string(), "choose another name");
  discard(part_of_carried_file(one->target));
  one->target = target;
  return keep(one);
}

Outcome<> OutgoingBundle::give_up() {
  // Also where forgetting somebody erased it here: what has come of it may still lie there.
  if (const auto one = kept()) {
    discard(part_of_carried_file(one->target));
    discard(file(one->id));
  }
  return keep({});
}

fs::path free_name(const fs::path& folder, const std::string& name) {
  fs::path out = folder / (name + ".weavelog");
  for (int number = 2; is_there(out); ++number) out = folder / (name + "-" + std::to_string(number) + ".weavelog");
  return out;
}

}  // namespace weavelog
