#include "tests/sim/world.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>

#include "core/desk/event_book.h"
#include "core/store/database.h"
#include "tests/sim/forgetting.h"
#include "tests/sim/invariants.h"
#include "tests/sim/reference.h"

namespace weavelog::sim {
namespace {

constexpr UnixMs kBegin = 1'937'556'000'000;  // 2031-05-26T10:00:00Z

void sort_as_stored(std::vector<Write>& writes) {
  std::stable_sort(writes.begin(), writes.end(),
                   [](const Write& a, const Write& b) { return a.entity < b.entity; });
}

std::string short_of(const BookId& book) {
  return book.hex().substr(26);
}

/// What a healthy disk must never answer.
bool blames_disk(const Fault& fault) {
  return fault.code == FaultCode::io || fault.code == FaultCode::no_space ||
         fault.code == FaultCode::damaged || fault.code == FaultCode::locked;
}

}  // namespace

World::World(const Plan& plan, bool keep_trace) : plan_(plan), room_(keep_trace), network_(room_), carriers_(room_) {
  room_.time.now = kBegin;
  room_.servers = plan.servers;
  make_devices();
}

void World::make_devices() {
  Random random(plan_.seed ^ 0x5eed);
  const std::size_t count = plan_.servers + plan_.tablets + (plan_.hostile ? 1 : 0);
  for (std::size_t i = 0; i < count; ++i) {
    Device::Making making;
    making.number = making.key_number = i;
    making.duty = i < plan_.servers                   ? Duty::server
                  : i < plan_.servers + plan_.tablets ? Duty::tablet
                                                      : Duty::hostile;
    making.seed = random.next();
    making.sector = plan_.sector;
    making.page = plan_.page;
    making.one_connection = plan_.one_connection;
    if (plan_.mixed_programs && making.duty != Duty::hostile)
      making.program = static_cast<Program>(random.below(3));
    room_.devices.push_back(std::make_unique<Device>(making, room_.time));
    Device& device = *room_.devices.back();
    if (making.duty != Duty::server) device.host = random.below(plan_.servers);
    start(i);
    if (making.duty != Duty::server) continue;
    device.event = device.ledger().create_book_id();
    EventInfo event;
    event.name = "Harbour Open " + std::to_string(i);
    if (plan_.all_kinds) event.currency = "EUR";
    auto draft = new_event(device.event, event, device.clock.now());
    if (!draft) throw std::logic_error(draft.error().message());
    const Act act{std::move(*draft), "opens the event", {}};
    if (const auto committed = device.work().commit(act.draft)) remember(act, *committed, device, i);
  }
}

std::string World::time_text() const {
  const UnixMs seconds = (room_.time.now - kBegin) / 1000;
  const auto two = [](UnixMs value) { return (value < 10 ? "0" : "") + std::to_string(value); };
  return "day " + std::to_string(seconds / 86'400 + 1) + " " + two(seconds / 3600 % 24) + ":" +
         two(seconds / 60 % 60) + ":" + two(seconds % 60);
}

std::size_t World::place_of(std::size_t number, std::uint64_t salt) const {
  const std::size_t place = number % (plan_.servers + plan_.tablets);
  const auto clone = clones_.find(place);
  return clone != clones_.end() && (salt & 1) != 0 ? clone->second : place;
}

void World::play() {
  for (const Event& event : plan_.events) {
    network_.run_until(room_.time.now + event.wait);
    bury();
    seed_libraries(event.salt);
    perform(event);
    bury();
    learn();
  }
}

void World::perform(const Event& event) {
  Random random(event.salt);
  const std::size_t place = place_of(event.device, event.salt);
  Device& device = room_.device(place);
  room_.trace.line("#" + std::to_string(event.number) + " " + time_text() + " " + device.name +
                   (device.up() ? "" : " (down)") + ": " + std::string(name_of(event.kind)));
  try {
    if (is_act(event.kind)) return act(event, device, place, random);
    switch (event.kind) {
      case EventKind::look:
        return look(device, random);
      case EventKind::tick_books:
        return tick_books(device, random);
      case EventKind::forget:
        return forget(device, place, random);
      case EventKind::make_bundle:
      case EventKind::take_bundle:
      case EventKind::read_receipt:
      case EventKind::make_card:
      case EventKind::scan_card:
        return carry(event, device, place, random);
      case EventKind::connect:
        return meet_some(event, place, random);
      case EventKind::hang_up:
        network_.hang_up(some_link(random));
        return;
      case EventKind::cut:
        network_.cut(some_link(random));
        return;
      case EventKind::corrupt:
        if (const auto found = network_.links().find(some_link(random)); found != network_.links().end())
          found->second.flip_next = true;
        return;
      case EventKind::repeat:
        if (const auto found = network_.links().find(some_link(random)); found != network_.links().end())
          found->second.repeat_next = true;
        return;
      case EventKind::part:
        room_.parted.insert({place, event.other % room_.devices.size()});
        if (random.chance(600)) room_.parted.insert({event.other % room_.devices.size(), place});
        return;
      case EventKind::heal:
        room_.parted.clear();
        return;
      case EventKind::lie:
        return lie(random);
      case EventKind::revoke:
        return revoke(place, event.other);
      default:
        return trouble(event, device, random);
    }
  } catch (const SQLite::Exception& error) {
    room_.blame_disk(error);
  }
}

// ------------------------------------------------------------------------------------------------ people

void World::act(const Event& event, Device& device, std::size_t place, Random& random) {
  start(place);  // whoever wants to work turns it on
  if (!device.up()) return;
  auto wanted = act_of(event.kind, device, random);
  // Nothing to do of that kind: something else, so that devices are as busy as people are.
  for (const EventKind instead :
       {EventKind::step, EventKind::change_agreed, EventKind::change_plain, EventKind::new_player})
    if (!wanted) wanted = act_of(instead, device, random);
  if (wanted) carry_out(*wanted, device, place);
}

void World::carry_out(const Act& wanted, Device& device, std::size_t place) {
  const auto committed = device.work().commit(wanted.draft);
  if (!committed || device.gone()) {
    // Nobody was told that it is stored; it may be all the same.
    std::vector<Write> writes = wanted.draft.writes();
    sort_as_stored(writes);
    room_.promises.attempt(wanted.draft.book(), std::move(writes));
    device.tried_in.insert(wanted.draft.book());
    room_.trace.line("   " + wanted.what + ": " +
                     (device.gone() ? "stops in the middle" : committed.error().message()));
    if (!device.gone() && !device.disk.in_trouble() && blames_disk(committed.error()))
      throw Violation("act", device.name + " cannot write: " + committed.error().message());
    return;
  }
  remember(wanted, *committed, device, place);
  ++room_.counts.acts;
  room_.counts.actions.insert(wanted.draft.action());
  if (device.take_grown()) network_.wake(place);
}

/// Where there is no network.
void World::carry(const Event& event, Device& device, std::size_t place, Random& random) {
  start(place);
  if (!device.up()) return;
  heed_letting_go(room_, place);
  switch (event.kind) {
    case EventKind::make_bundle:
      carriers_.make_bundle(place, event.other, random);
      break;
    case EventKind::take_bundle:
      carriers_.take_bundle(place, random);
      break;
    case EventKind::read_receipt:
      carriers_.read_receipts(place);
      break;
    case EventKind::make_card:
      carriers_.make_card(place, random);
      break;
    default:
      if (const auto wanted = carriers_.scan_card(place, random)) carry_out(*wanted, device, place);
  }
  if (!device.gone() && device.take_grown()) network_.wake(place);
}

void World::remember(const Act& act, const Committed& committed, Device& device, std::size_t place) {
  const EntryKey key{act.draft.book(), committed.dot.author, committed.dot.seq};
  if (device.forgot.contains(key.book))
    throw Violation("forgotten came back", device.name + " writes into forgotten book " + key.book.hex());
  room_.trace.line("   " + act.what + ": entry " + std::to_string(key.seq) + " of " +
                   key.author.hex().substr(0, 6) + " in book " + short_of(key.book));
  // It counts from here on, whatever happens at the next look.
  Entry said;
  said.seq = key.seq;
  said.stamp = committed.stamp;
  said.schema = device.ledger().registry().schema();
  said.action = act.draft.action();
  said.writes = act.draft.writes();
  sort_as_stored(said.writes);
  const Bytes body = encode_entry(said, key.author);
  const auto held = [&](const EntryKey& named) {
    try {
      const auto entry = device.ledger().entry(named.book, named.author, named.seq);
      if (entry) return digest_of(encode_entry(*entry, named.author));
    } catch (const SQLite::Exception& error) {
      room_.blame_disk(error);  // what was acknowledged counts all the same
    }
    return Digest{};
  };
  const bool given_before = room_.promises.acknowledge(key, digest_of(body), place, device.key(), said.writes, held);
  // What is stored is what the person saw and said, and closes nothing else.
  const auto entry = device.ledger().entry(key.book, key.author, key.seq);
  if (!entry) throw Violation("lost", device.name + " acknowledged an entry that it does not hold");
  if (encode_entry(*entry, key.author) != body)
    throw Violation("other words", device.name + " stored something else than was said");
  if (act.closes) {
    std::vector<Dot> seen;
    for (const CellValue& value : act.closes->cell.values) seen.push_back(value.dot);
    std::vector<Dot> closed = said.writes.front().replaces;
    std::sort(closed.begin(), closed.end());
    std::sort(seen.begin(), seen.end());
    if (closed != seen)
      throw Violation("closes unseen", "closing a question closed other answers than those that were seen");
  }
  device.latest_wall = std::max(device.latest_wall, device.clock.now());
  const bool just_after = committed.stamp.raw == act.draft.newest_replaced().raw + 1;
  if (!just_after && committed.stamp.wall_ms() > device.latest_wall + HybridClock::kTooFarAhead + 1000)
    throw Violation("dragged clock", device.name + " stamps " +
                                         std::to_string(committed.stamp.wall_ms() - device.latest_wall) +
                                         " ms ahead of all that its clock ever showed");
  if (given_before) {
    ++room_.counts.forks;
    room_.trace.line("   a fork: that number was given before");
    if (!device.unaware)
      throw Violation("number reused", device.name + " gave a number twice although it could know better");
  }
}

void World::look(Device& device, Random& random) {
  if (!device.up()) return;
  device.seen_questions = device.ledger().open_questions();
  device.seen_record.reset();
  const auto books = books_at(device, kPlayerBook);
  if (books.empty()) return;
  if (auto record = load_player(device.ledger(), random.pick(books)))
    device.seen_record = std::move(*record);
}

void World::tick_books(Device& device, Random& random) {
  if (!device.up() || !device.host) return;
  if (random.chance(200)) {
    device.host = random.below(plan_.servers);
    device.work().set_host(room_.device(*device.host).key());
  }
  const auto books = books_at(device);
  if (books.empty()) return;
  const auto ticked = device.work().tick({random.pick(books), random.pick(books)});
  if (!ticked && !device.gone() && !device.disk.in_trouble() && blames_disk(ticked.error()))
    throw Violation("act", device.name + " cannot tick: " + ticked.error().message());
}

/// A player withdraws at this desk.
void World::forget(Device& device, std::size_t place, Random& random) {
  start(place);
  if (!device.up()) return;
  const auto books = books_at(device, kPlayerBook);
  if (books.empty()) return;
  const BookId book = random.pick(books);
  room_.orders.insert({book, device.key()});
  const auto report = device.ledger().forget(book);
  room_.trace.line("   book " + short_of(book) + ": " + (report ? "forgotten" : report.error().message()));
  if (!report || device.gone()) {
    if (!device.gone() && !device.disk.in_trouble() && blames_disk(report.error()))
      throw Violation("act", device.name + " cannot forget: " + report.error().message());
    return;
  }
  ++room_.counts.forgotten;
  heed_forgetting(room_, place);
  if (!device.forgot.contains(book))
    throw Violation("stub lost", device.name + " forgot book " + book.hex() + " and does not know it");
  check_stays_forgotten(device);
  if (!report->not_yet_gone) {
    check_bytes_gone(device);
  } else if (!device.disk.in_trouble()) {
    throw Violation("not gone", device.name + ": " + report->not_yet_gone->message());
  }
  if (device.take_grown()) network_.wake(place);
}

// ------------------------------------------------------------------------------------------------ meetings

std::size_t World::some_link(Random& random) {
  if (network_.links().empty()) return 0;
  auto at = network_.links().begin();
  std::advance(at, static_cast<std::ptrdiff_t>(random.below(network_.links().size())));
  return at->first;
}

void World::meet_some(const Event& event, std::size_t place, Random& random) {
  Visit visit{event.other % plan_.servers, place};
  const Device& guest = room_.device(place);
  if (guest.host && random.chance(800)) visit.server = *guest.host;
  if (random.chance(700)) {
    std::vector<std::size_t> old;
    for (const auto& [number, link] : network_.links())
      if (link.ends[0].device == visit.guest && link.ends[1].device == visit.server) old.push_back(number);
    for (const std::size_t number : old) network_.hang_up(number);
  }
  LinkTemper temper;
  const std::uint64_t manner = random.below(10);
  temper.fastest = manner < 5 ? 1 : manner < 8 ? 100 : 5'000;
  temper.slowest = manner < 5 ? 50 : manner < 8 ? 3'000 : 60'000;
  temper.batch_bytes = 300 + static_cast<std::size_t>(random.below(random.chance(500) ? 2'000 : 40'000));
  temper.salt = random.next();
  network_.connect(visit, temper);
}

void World::lie(Random& random) {
  if (!plan_.hostile) return;
  const std::size_t place = plan_.servers + plan_.tablets;
  Device& liar = room_.device(place);
  if (!liar.up()) return;
  act(Event{0, random.chance(300) ? EventKind::new_player : EventKind::change_plain, 0, 0, 0, 0}, liar, place,
      random);
  LinkTemper temper{1, 200, 500 + static_cast<std::size_t>(random.below(4'000)), true, random.next()};
  if (network_.connect({random.below(plan_.servers), place}, temper) != nullptr) ++room_.counts.lies;
}

void World::revoke(std::size_t place, std::size_t other) {
  const Visit visit{other % plan_.servers, place};
  Device& server = room_.device(visit.server);
  if (place < plan_.servers || !server.up() || !room_.paired.contains(visit)) return;
  const auto revoked = server.station().devices().revoke(room_.device(place).key());
  if (!revoked || server.gone()) return;
  ++room_.counts.revocations;
  network_.note_revoked(visit.server, room_.device(place).key());
  for (std::size_t i = 0; i < room_.devices.size(); ++i)
    if (room_.device(i).key_number == room_.device(place).key_number) room_.revoked.insert({visit.server, i});
}

// ------------------------------------------------------------------------------------------------ machines

void World::trouble(const Event& event, Device& device, Random& random) {
  const std::size_t place = place_of(event.device, event.salt);
  switch (event.kind) {
    case EventKind::end_program:
      network_.drop_all_of(place);
      return device.end();
    case EventKind::kill:
      return stop(place, Stop::kill);
    case EventKind::power_cut:
      return stop(place, Stop::power);
    case EventKind::stop_at:
      return device.disk.stop_after(1 + random.below(random.chance(500) ? 12 : 120),
                                    random.chance(700) ? Stop::power : Stop::kill);
    case EventKind::disk_full:
      return device.disk.set_capacity(device.disk.bytes() + random.below(30'000));
    case EventKind::disk_errors:
      return device.disk.fail_after(1 + random.below(40), 1 + random.below(3));
    case EventKind::disk_read_only:
      return device.disk.set_read_only(true);
    case EventKind::disk_unreadable:
      if (random.chance(400)) return device.disk.set_unreadable(true);
      return device.disk.misread_after(1 + random.below(60), 1 + random.below(3));
    case EventKind::sabotage: {
      if (!device.up()) return;
      const auto done = device.ledger().transact([](Connection& db) {
        db.raw().exec("DELETE FROM entry WHERE position=(SELECT max(e.position) FROM entry e JOIN book b ON b.n=e.book WHERE b.kind=1)");
      });
      if (!done) throw std::logic_error(done.error().message());
      return;
    }
    case EventKind::disk_well:
      device.disk.set_read_only(false);
      device.disk.set_unreadable(false);
      return device.disk.set_capacity({});
    case EventKind::start:
      for (std::size_t i = 0; i < room_.devices.size(); ++i) start(i);
      return;
    case EventKind::clock:
      return move_clock(device, random);
    case EventKind::copy_file:
      return copy(place);
    case EventKind::restore_file:
      return restore(place, random);
    case EventKind::clone:
      return clone(place);
    default:
      throw std::logic_error("an event that nobody carries out");
  }
}

void World::move_clock(Device& device, Random& random) {
  device.latest_wall = std::max(device.latest_wall, device.clock.now());
  constexpr UnixMs kHour = 3'600'000;
  switch (random.below(6)) {
    case 0:
      device.clock.set(0);
      break;
    case 1:
      device.clock.set(253'370'764'800'000);  // the year 9999
      break;
    case 2:
      device.clock.jump(random.between(-400, 400) * 24 * kHour);
      break;
    case 3:
      device.clock.jump(random.between(-2 * kHour, 2 * kHour));
      break;
    default:
      device.clock.set(room_.time.now);
  }
  device.latest_wall = std::max(device.latest_wall, device.clock.now());
}

void World::copy(std::size_t place) {
  Device& device = room_.device(place);
  if (device.gone()) return;
  // Whom it may have lost with an older copy, it does not know by this one either.
  std::set<Visit> paired = room_.paired;
  std::erase_if(paired, [&](const Visit& visit) { return room_.unsure.contains(visit); });
  copies_[place] = {device.disk.image(), room_.promises.held_by(place), device.latest_wall, device.forgot, std::move(paired)};
}

void World::restore(std::size_t place, Random&) {
  const auto found = copies_.find(place);
  if (found == copies_.end()) return;
  Device& device = room_.device(place);
  stop(place, Stop::kill);
  device.disk.start();
  device.disk.load(found->second.image);
  room_.promises.now_holds(place, found->second.promised);
  device.forgot = found->second.forgot;
  ++device.restores;
  ++room_.counts.restores;
  // Whom it enrolled since the copy was made it need not know any more.
  const auto knew = [&](const Visit& visit) {
    return std::any_of(found->second.paired.begin(), found->second.paired.end(), [&](const Visit& one) {
      return one.server == place && room_.device(one.guest).key_number == room_.device(visit.guest).key_number;
    });
  };
  for (const Visit& visit : room_.paired)
    if (visit.server == place && !knew(visit)) room_.unsure.insert(visit);
  start(place);
  if (!device.up()) return;
  device.forget_knowing();
  if (place >= plan_.servers) return;
  // The server knows of enrolments and revocations what it knew then.
  std::erase_if(room_.revoked, [&](const Visit& visit) { return visit.server == place; });
  note_revoked(place);
}

void World::note_revoked(std::size_t server) {
  for (const EnrolledDevice& known : room_.device(server).station().devices().devices())
    for (std::size_t guest = 0; guest < room_.devices.size(); ++guest)
      if (known.revoked && room_.device(guest).key() == known.key) room_.revoked.insert({server, guest});
}

void World::clone(std::size_t place) {
  Device& source = room_.device(place);
  if (source.making.duty != Duty::tablet || clones_.contains(place) || clones_.size() >= 2 || !source.up() ||
      place >= plan_.servers + plan_.tablets)
    return;
  Device::Making making = source.making;
  const std::size_t fresh = room_.devices.size();
  making.number = 100 + fresh;
  making.seed ^= 0xc10e;
  room_.devices.push_back(std::make_unique<Device>(making, room_.time));
  Device& clone = *room_.devices.back();
  clone.disk.load(source.disk.image());
  clone.latest_wall = std::max(source.latest_wall, source.clock.now());
  clone.host = source.host;
  clone.forgot = source.forgot;
  clone.not_to_stay = source.not_to_stay;
  clone.tried_in = source.tried_in;
  clones_[place] = fresh;
  room_.promises.now_holds(fresh, room_.promises.held_by(place));
  for (std::size_t server = 0; server < plan_.servers; ++server) {
    if (room_.paired.contains({server, place})) room_.paired.insert({server, fresh});
    if (room_.unsure.contains({server, place})) room_.unsure.insert({server, fresh});
    if (room_.revoked.contains({server, place})) room_.revoked.insert({server, fresh});
  }
  ++room_.counts.restores;
  start(fresh);
  if (clone.up()) clone.forget_knowing();
  source.forget_knowing();
}

void World::stop(std::size_t place, Stop how) {
  Device& device = room_.device(place);
  network_.drop_all_of(place);
  if (device.up()) ++room_.counts.stops;
  device.die(how);
}

void World::bury() {
  for (std::size_t i = 0; i < room_.devices.size(); ++i) {
    Device& device = room_.device(i);
    if (!device.gone() || !device.up()) continue;
    room_.trace.line("   " + device.name + " has stopped");
    stop(i, Stop::kill);
  }
}

void World::start(std::size_t place) {
  Device& device = room_.device(place);
  if (device.up()) return;
  if (device.gone()) device.disk.start();
  if (device.start()) {
    if (device.host) device.work().set_host(room_.device(*device.host).key());
    try {
      heed_forgetting(room_, place);
      check_stays_forgotten(device);
      look_for_tried(device);
      // A revocation during which its power went may stand all the same.
      if (place < plan_.servers) {
        note_revoked(place);
        check_enrolled(room_, place);
      }
    } catch (const SQLite::Exception& error) {
      room_.blame_disk(error);
    }
    return;
  }
  room_.trace.line("   " + device.name + " does not start: " + device.fault->message());
  if (!device.gone() && !device.disk.in_trouble())
    throw Violation("start", device.name + " does not start: " + device.fault->message());
}

/// What was stored although nobody was told took a number of its author's.
void World::look_for_tried(Device& device) {
  if (device.tried_in.empty()) return;
  std::set<AuthorId> own;
  for (const KnownAuthor& one : device.ledger().authors())
    if (one.card.key == device.key()) own.insert(one.card.id());
  for (; !device.tried_in.empty(); device.tried_in.erase(device.tried_in.begin())) {
    const BookId book = *device.tried_in.begin();
    for (const BookEntry& held : entries_of(device.ledger(), book))
      if (own.contains(held.author)) 
        room_.promises.found({book, held.author, held.entry.seq}, held.body, device.key(), held.entry.writes);
  }
}

void World::learn() {
  for (const auto& device : room_.devices)
    if (device->up() && device->unaware) try {
        device->ask_whether_it_knows();
      } catch (const SQLite::Exception& error) {
        room_.blame_disk(error);
      }
}

// ------------------------------------------------------------------------------------------------ the whole

Result run(const Plan& plan, bool keep_trace) {
  Result result;
  std::optional<World> world;
  const auto broken = [&](const Violation& violation) {
    result.violation = violation;
    if (world) world->room().trace.line("VIOLATION " + violation.invariant + ": " + violation.what());
  };
  try {
    prepare_devices();
    seed_libraries(plan.seed);
    world.emplace(plan, keep_trace);
    world->play();
    world->come_together();
    check_everything(world->room());
  } catch (const Violation& violation) {
    broken(violation);
  } catch (const std::exception& error) {
    broken(Violation("exception", error.what()));
  }
  if (!world) return result;
  Room& room = world->room();
  for (const auto& device : room.devices) room.counts.lost_bytes += device->disk.lost_bytes();
  result.counts = room.counts;
  result.trace = room.trace.lines();
  result.digest = room.trace.finish();
  return result;
}

}  // namespace weavelog::sim
