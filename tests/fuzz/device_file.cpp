// The file of a whole device that something damaged, with the log beside it that a killed program left: the ledger, the tables of the
// model, who is enrolled, what is remembered of peers. A log's checksums are made right, or SQLite would pass over what was changed. Opening
// it gives a device or a fault; what is read and written afterwards is a value, a fault or SQLite's exception, never a crash or a hang.

#include <SQLiteCpp/SQLiteCpp.h>

#include <fstream>
#include <iterator>

#include "core/model/event.h"
#include "core/model/fields.h"
#include "core/model/player.h"
#include "core/model/queries.h"
#include "core/model/tables.h"
#include "sync/exchange/peer_store.h"
#include "sync/trust/device_list.h"
#include "tests/fuzz/devices.h"
#include "tests/fuzz/target_list.h"

namespace weavelog::fuzz {
namespace {

namespace fs = std::filesystem;

constexpr UnixMs kThen = 1'800'000'000'000;
// SQLite's file format, section 4 (https://www.sqlite.org/fileformat2.html#walformat).
constexpr std::size_t kLogHead = 32, kFrameHead = 24;
constexpr std::uint32_t kMostPages = 256;

struct DeviceFile {
  std::unique_ptr<Ledger> ledger;
  std::unique_ptr<DeviceList> devices;
  std::unique_ptr<PeerStore> peers;
};

Outcome<DeviceFile> open_file(const fs::path& file, const WallClock& clock) {
  LedgerOptions options;
  options.file = file;
  options.registry = &model_registry();
  options.clock = &clock;
  options.key = fixed_key(1);
  options.device_name = "one";
  options.projections = {std::make_shared<ModelTables>()};
  DeviceFile out;
  auto ledger = Ledger::open(std::move(options));
  if (!ledger) return fail(ledger.error());
  out.ledger = std::move(*ledger);
  auto devices = DeviceList::open(*out.ledger, fixed_key(1));
  if (!devices) return fail(devices.error());
  out.devices = std::move(*devices);
  auto peers = PeerStore::open(*out.ledger);
  if (!peers) return fail(peers.error());
  out.peers = std::move(*peers);
  return out;
}

template <class T>
T need(Outcome<T> made, const char* what) {
  must_hold(made.has_value(), what);
  if constexpr (!std::is_void_v<T>) return std::move(*made);
}

/// A player with a racket, a setup and a job, and the event that it is at.
void write_books(Ledger& ledger, std::uint8_t first) {
  const BookId event = book_of(20), player = book_of(first);
  Draft opening(event, kEventBook, kActNewEvent);
  EventInfo info;
  info.name = "Harbour Open";
  info.first_day = "2027-01-10";
  info.last_day = "2027-01-20";
  info.time_zone = "Europe/Paris";
  (void)put_new(opening, info, kThen);
  EntryListItem entry;
  entry.family_name = "Žofie";
  entry.player = player;
  (void)put_new(opening, entry, kThen);
  (void)need(ledger.append(opening), "an event");
  Draft draft(player, kPlayerBook, kActDropOff);
  Person person;
  person.family_name = "Žofie";
  person.given_name = "Mira";
  (void)put_new(draft, person, kThen);
  Setup setup;
  setup.name = "day";
  setup.mains_string = "Tarnbrook Silk";
  setup.mains_tension = Quantity{{245, 1}, Unit::kilogram_force};
  const EntityState kept = put_new(draft, setup, kThen);
  Job job;
  static_cast<Agreed&>(job) = setup;
  job.setup = kept.id;
  job.event = event;
  job.at = kThen;
  job.tag_number = first;
  const EntityState made = put_new(draft, job, kThen);
  StageMark mark;
  mark.job = made.id;
  mark.stage = Stage::received;
  mark.at = kThen;
  (void)put_new(draft, mark, kThen);
  (void)need(ledger.append(draft), "a drop-off");
}

void write_others(DeviceFile& device, std::uint8_t first) {
  const PublicKey other = fixed_key(first).public_key();
  const Invitation invitation = need(device.devices->invite(Role::stringer), "an invitation");
  admit(*device.devices, invitation.secret, other, "tablet");
  (void)need(device.devices->invite(Role::desk), "an invitation");
  (void)device.devices->admit(number_of(invitation.secret), {}, {}, fixed_key(90).public_key(), "stranger");  // counts as a wrong try
  if (first % 2 == 0) need(device.devices->revoke(other), "a revocation");
  KnownHost host;
  host.key = other;
  host.name = "desk";
  host.address.host = "192.0.2.7";
  need(device.devices->remember_host(host), "a host");
  const std::int64_t peer = need(device.peers->number_of(other), "a peer");
  need(device.peers->widen(peer, {book_of(first), book_of(20)}), "a scope");
  Agreement agreement;
  agreement.token.fill(first);
  agreement.position = device.ledger->position();
  agreement.books = 2;
  agreement.at = kThen;
  need(device.peers->agree(peer, agreement, {{book_of(first), {2, 1}}}), "an agreement");
  const BookId handed[] = {book_of(first)};
  need(device.peers->note_handed(HandedAs::bundle, "the room", handed, kThen), "a bundle");
  need(device.peers->tell(peer, 1), "what was told");
  need(device.peers->decline(peer, {book_of(first)}), "what was declined");
  need(device.ledger->remember("room draft", as_bytes("[1]")), "a small thing");
}

Bytes bytes_of(const fs::path& file) {
  std::ifstream in(file, std::ios::binary);
  return Bytes(std::istreambuf_iterator<char>(in), {});
}

struct Sound {
  Bytes file, log;
};

/// The file as it was closed once, and the log of what came after.
Sound made_sound() {
  const FuzzFolder home;
  const ManualClock clock(kThen);
  const fs::path file = home / "seed.db";
  {
    DeviceFile device = need(open_file(file, clock), "a new device");
    write_books(*device.ledger, 1);
    write_others(device, 3);
    (void)need(device.ledger->forget(book_of(9), kPlayerBook), "a book forgotten");
  }
  DeviceFile device = need(open_file(file, clock), "a device that goes on");
  write_books(*device.ledger, 2);
  write_others(device, 4);
  Sound out{bytes_of(file), bytes_of(file.string() + "-wal")};
  must_hold(out.log.size() > kLogHead + kFrameHead, "nothing is in the log");
  return out;
}

const Sound& sound() {
  static const Sound held = made_sound();
  return held;
}

std::uint32_t number_at(const Bytes& bytes, std::size_t at) {
  return std::uint32_t{bytes[at]} << 24 | std::uint32_t{bytes[at + 1]} << 16 | std::uint32_t{bytes[at + 2]} << 8 | bytes[at + 3];
}
void put_number(Bytes& bytes, std::size_t at, std::uint32_t number) {
  for (std::size_t i = 0; i < 4; ++i) bytes[at + i] = static_cast<std::uint8_t>(number >> (24 - 8 * i));
}

/// Checksums as SQLite has them: over pairs of words in the order of bytes that the first word of the log names.
class LogSum {
 public:
  explicit LogSum(bool big_first) : big_first_(big_first) {}
  void add(const Bytes& bytes, std::size_t at, std::size_t size) {
    for (std::size_t i = 0; i + 8 <= size; i += 8) {
      one_ += word(bytes, at + i) + two_;
      two_ += word(bytes, at + i + 4) + one_;
    }
  }
  void put(Bytes& bytes, std::size_t at) const {
    put_number(bytes, at, one_);
    put_number(bytes, at + 4, two_);
  }

 private:
  [[nodiscard]] std::uint32_t word(const Bytes& bytes, std::size_t at) const {
    const std::uint32_t big = number_at(bytes, at);
    return big_first_ ? big : __builtin_bswap32(big);
  }
  bool big_first_;
  std::uint32_t one_ = 0, two_ = 0;
};

/// The log with its checksums, salts and size of page as they have to be, so that SQLite believes what stands in its pages. Their numbers
/// stay small: a page far out would only make a file of terabytes.
void make_right(Bytes& log, const Bytes& whole) {
  if (log.size() < kLogHead) return;
  std::copy_n(whole.begin(), 24, log.begin());
  const std::size_t page = number_at(log, 8);
  LogSum sum((number_at(log, 0) & 1) != 0);
  sum.add(log, 0, 24);
  sum.put(log, 24);
  for (std::size_t at = kLogHead; at + kFrameHead + page <= log.size(); at += kFrameHead + page) {
    put_number(log, at, 1 + (number_at(log, at) + kMostPages - 1) % kMostPages);
    put_number(log, at + 4, number_at(log, at + 4) % kMostPages);
    std::copy_n(whole.begin() + 16, 8, log.begin() + static_cast<std::ptrdiff_t>(at) + 8);
    sum.add(log, at, 8);
    sum.add(log, at + kFrameHead, page);
    sum.put(log, at + 16);
  }
}

template <class Read>
void guarded(Read read) {
  try {
    read();
  } catch (const SQLite::Exception&) {
    // what reads of a damaged file are to throw
  }
}

void use(DeviceFile& device) {
  Ledger& ledger = *device.ledger;
  guarded([&] { (void)ledger.verify(); });
  guarded([&] {
    for (const BookInfo& book : ledger.books()) {
      (void)ledger.entities(book.id);
      (void)ledger.missing(book.id, {}, 1 << 20);
      (void)history_of(ledger, book.id, 5);
      (void)find_player(ledger, book.id);
      (void)entry_list(ledger, book.id);
      (void)count_by_stage(ledger, book.id);
      (void)board_jobs(ledger, book.id, true);
    }
  });
  guarded([&] { (void)ledger.open_questions(); });
  guarded([&] { (void)ledger.quarantine(); });
  guarded([&] { (void)ledger.forgotten(); });
  guarded([&] { (void)ledger.forks(); });
  guarded([&] { (void)ledger.remembered("room draft"); });
  guarded([&] { (void)find_players(ledger, "zof", 5); });
  guarded([&] { (void)all_events(ledger); });
  guarded([&] { (void)find_jobs_by_tag(ledger, 1); });
  for (const std::uint8_t number : {std::uint8_t{3}, std::uint8_t{4}}) {
    const PublicKey key = fixed_key(number).public_key();
    guarded([&] { (void)device.devices->member(key); });
    guarded([&] { (void)device.devices->host(key); });
    guarded([&] { (void)device.devices->may_order_forgetting(key); });
    guarded([&] { (void)device.devices->admit({}, {}, {}, key, "tablet"); });
  }
  guarded([&] { (void)device.devices->devices(); });
  guarded([&] { (void)device.devices->open_invitations(); });
  guarded([&] { (void)device.devices->hosts(); });
  guarded([&] { (void)device.devices->invite(Role::head); });
  for (const std::int64_t peer : {1, 2}) {
    guarded([&] { (void)device.peers->agreement(peer); });
    guarded([&] { (void)device.peers->scope(peer); });
    guarded([&] { (void)device.peers->scope_after(peer, 1); });
    guarded([&] { (void)device.peers->told(peer); });
    guarded([&] { (void)device.peers->declined(peer); });
    guarded([&] { (void)device.peers->widen(peer, {book_of(1)}); });
    guarded([&] { (void)device.peers->agree(peer, {}, {{book_of(1), {1, 1}}}); });
  }
  guarded([&] { (void)device.peers->exchanged(); });
  guarded([&] { (void)device.peers->handed(); });
  guarded([&] {
    Draft draft(book_of(1), kPlayerBook, kActEdit);
    Racket racket;
    racket.maker = "Ostrova";
    (void)put_new(draft, racket, kThen);
    (void)ledger.append(draft);
  });
  guarded([&] { (void)ledger.forget(book_of(2)); });
  guarded([&] { (void)ledger.rebuild(); });
}

}  // namespace

/// How (1 byte), then changes: places (3 bytes) and what stands there (1 byte).
void run_device(ByteView input) {
  const Sound& whole = sound();
  static const FuzzFolder home;
  Input in(input);
  const std::uint8_t how = in.byte();
  const bool in_log = (how & 1) != 0, made_right = (how & 2) != 0;
  Sound now = whole;
  Bytes& bytes = in_log ? now.log : now.file;
  if ((how & 4) != 0) bytes.resize(in.pick(bytes.size()));
  if ((how & 8) != 0) now.log.clear();
  while (!in.empty() && !bytes.empty()) {
    const std::size_t at = ((static_cast<std::size_t>(in.byte()) << 16) | (static_cast<std::size_t>(in.byte()) << 8) | in.byte()) % bytes.size();
    bytes[at] = in.byte();
  }
  if (in_log && made_right) make_right(now.log, whole.log);
  const fs::path file = home / "ledger.db";
  for (const char* end : {"", "-wal", "-shm", "-journal"}) fs::remove(file.string() + end);
  const auto write = [&](const Bytes& what, const std::string& name) {
    std::ofstream(name, std::ios::binary).write(reinterpret_cast<const char*>(what.data()), static_cast<std::streamsize>(what.size()));
  };
  write(now.file, file);
  if (!now.log.empty()) write(now.log, file.string() + "-wal");
  const ManualClock clock(kThen + 100'000);
  bool first = true;
  for (int turn = 0; turn < 2; ++turn) {
    guarded([&] {
      auto device = open_file(file, clock);
      if (!device) return must_hold(!device.error().what.empty(), "a fault without words");
      if (first && in_log && made_right && now.log != whole.log && device->ledger->book(book_of(2))) note_reached("device: a changed log is read");
      first = false;
      if (turn == 0) use(*device);
    });
  }
}

std::vector<Bytes> seeds_device() {
  const Sound& whole = sound();
  std::vector<Bytes> out{{0}, {1}, {3}, {8}};
  const auto change = [](Bytes& one, std::size_t at, std::uint8_t value) {
    one.insert(one.end(), {static_cast<std::uint8_t>(at >> 16), static_cast<std::uint8_t>(at >> 8), static_cast<std::uint8_t>(at), value});
  };
  const auto pages = [&](std::uint8_t how, std::size_t size, std::size_t page, std::size_t begin) {
    for (std::size_t at = begin; at + page <= size; at += 7 * page)  // every seventh: there are hundreds
      for (const std::size_t offset : {std::size_t{3}, std::size_t{8}, page - 96}) {
        Bytes one{how};
        change(one, at + offset, 0x41);
        out.push_back(std::move(one));
      }
  };
  pages(0, whole.file.size(), 4096, 0);
  pages(3, whole.log.size(), 4096 + kFrameHead, kLogHead);
  // Frames of the log for another page, and one that ends the transaction early.
  for (const std::size_t at : {kLogHead + 3, kLogHead + 7, kLogHead + 2 * (kFrameHead + 4096) + 3}) {
    Bytes one{3};
    change(one, at, 5);
    out.push_back(std::move(one));
  }
  return out;
}

}  // namespace weavelog::fuzz
