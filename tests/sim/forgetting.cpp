#include "tests/sim/forgetting.h"

#include "core/store/database.h"
#include "tests/sim/acts.h"

namespace weavelog::sim {

void heed_forgetting(Room& room, std::size_t place) {
  Device& device = room.device(place);
  std::set<BookId> stubs;
  for (const Forgotten& one : device.ledger().forgotten()) {
    stubs.insert(one.stub.book);
    if (one.stub.kind != kPlayerBook)
      throw Violation("forgot too much",
                      device.name + " forgot book " + one.stub.book.hex() + ", which is about nobody");
    if (!room.orders.contains({one.stub.book, one.stub.key}) && room.hostile_key() != one.stub.key)
      throw Violation("forgot too much",
                      device.name + " forgot book " + one.stub.book.hex() + ", which nobody ordered");
  }
  for (const BookId& book : device.forgot)
    if (!stubs.contains(book))
      throw Violation("stub lost",
                      device.name + " does not know any more that book " + book.hex() + " is forgotten");
  if (stubs.empty()) return;
  if (stubs.size() > device.forgot.size())
    room.trace.line("   " + device.name + " knows " + std::to_string(stubs.size()) + " forgotten books");
  room.promises.release(place, stubs);
  device.forgot = std::move(stubs);
}

void heed_letting_go(Room& room, std::size_t place) {
  Device& device = room.device(place);
  std::set<BookId> gone;
  for (const BookId& book : device.not_to_stay)
    if (!device.ledger().book(book) && !room.promises.wrote_in(book, place)) gone.insert(book);
  if (!gone.empty()) room.promises.release(place, gone);
}

void check_stays_forgotten(Device& device) {
  for (const BookId& book : device.forgot)
    device.ledger().read([&](Connection& db) {
      auto& query = db.statement("SELECT count(*) FROM entry WHERE book=(SELECT n FROM book WHERE id=?)");
      bind_blob(query, 1, book.bytes);
      if (query.executeStep() && query.getColumn(0).getInt() > 0)
        throw Violation("forgotten came back", device.name + " holds " + query.getColumn(0).getString() +
                                                   " entries of forgotten book " + book.hex());
    });
}

bool may_miss_forgetting(const Device& one, const Device& other) {
  return (one.making.program == Program::older || other.making.program == Program::older) && one.forgot != other.forgot;
}

namespace {

/// Words that came in a garbled or forged batch under a book that is not theirs are put aside there, and nobody can
/// tell whose they are.
bool under_another_book(Device& device, const BookId& book) {
  bool out = false;
  device.ledger().read([&](Connection& db) {
    auto& query = db.statement("SELECT 1 FROM quarantine WHERE book<>? AND instr(body, CAST(? AS BLOB))>0");
    bind_blob(query, 1, book.bytes);
    query.bind(2, mark_of(book));
    out = query.executeStep();
  });
  return out;
}

/// The file with words of a forgotten book, and the book.
std::optional<std::pair<std::string, BookId>> bytes_left(Device& device) {
  for (const BookId& book : device.forgot)
    if (std::string file = device.disk.file_with(mark_of(book)); !file.empty() && !under_another_book(device, book))
      return std::pair(std::move(file), book);
  return std::nullopt;
}

}  // namespace

bool are_bytes_gone(Device& device) { return !bytes_left(device); }

void check_bytes_gone(Device& device) {
  if (const auto left = bytes_left(device))
    throw Violation("not gone",
                    left->first + " of " + device.name + " still has words of forgotten book " + left->second.hex());
}

}  // namespace weavelog::sim
