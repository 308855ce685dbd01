#pragma once
// A desk that charges by a price list, and the other tablet of its room.

#include "core/desk/money.h"
#include "core/desk/prices.h"
#include "tests/core/desk/desk_room.h"

namespace weavelog::testing {

struct Till : Desk {
  BookId book = first_drop_off(3);
  std::vector<EntityId> jobs;

  explicit Till(const std::string& currency = "EUR", std::vector<std::pair<std::string, std::int64_t>> prices = usual()) {
    append(new_event(event, {"Harbour Open", "", "2031-05-26", "2031-06-08", "Europe/Lisbon", currency, {}}, clock.now()));
    for (const auto& [service, amount] : prices) add(event, Price{service, amount, currency}, kEventBook);
    for (const auto& job : load(book).jobs) jobs.push_back(job.id());
  }
  static std::vector<std::pair<std::string, std::int64_t>> usual() {
    return {{"Labour", 2000}, {"string", 1801}, {"string Tarnbrook Silk", 4505}, {"stencil", 150}, {"rush", 800}, {"on-court rush", 1500},
            {"grommet strip", 1200}, {"tubing", 75}};
  }
  [[nodiscard]] EventRecord at_event() const { return must(load_event(*ledger, event)); }
  [[nodiscard]] std::vector<MoneyRow> lines() const { return money_of_player(*ledger, event, book); }
  [[nodiscard]] JobPrice price(std::size_t n = 0) const { return must(price_of(at_event(), load(book), jobs.at(n))); }
  void set(std::size_t n, const std::function<void(Job&)>& work) { change<Job>(book, jobs.at(n), work); }
  [[nodiscard]] Outcome<Draft> charge(std::size_t n = 0) const {
    return charge_jobs(*ledger, at_event(), load(book), std::span(&jobs.at(n), 1), "Mara", clock.now());
  }
  [[nodiscard]] std::int64_t due() const {
    const auto accounts = accounts_of(lines());
    return accounts.empty() ? 0 : accounts.front().due();
  }
};

inline void own_strings(Job& job, const std::string& mains, const std::string& crosses) {
  job.mains_string = mains;
  job.crosses_string = crosses;
  job.mains_owner = job.crosses_owner = StringOwner::room;
  job.racket_stencil.clear();
  job.string_stencil.clear();
  job.rush = Rush::none;
}

/// The other tablet of a room: what was written until now is there, and what either writes meets at the end.
struct Apart {
  Till& here;
  Tablet there{"Bench tablet"};
  explicit Apart(Till& till) : here(till) { meet(); }
  static void bring(const Ledger& from, Ledger& to) {
    for (const BookInfo& book : from.books()) (void)must(to.ingest(from.missing(book.id, to.heads(book.id), 1 << 30), 0));
  }
  void meet() {
    bring(*here.ledger, *there.ledger);
    bring(*there.ledger, *here.ledger);
    bring(*here.ledger, *there.ledger);
  }
  void charge_there() {
    there.append(charge_jobs(*there.ledger, must(load_event(*there.ledger, here.event)), must(load_player(*there.ledger, here.book)),
                             std::span(&here.jobs[0], 1), "Bo", there.clock.now()));
  }
  void price_there(const std::string& service, std::int64_t minor) {
    there.append(set_price(must(load_event(*there.ledger, here.event)), service, minor));
  }
};

}  // namespace weavelog::testing
