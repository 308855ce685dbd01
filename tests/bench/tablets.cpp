#include "tests/bench/tablets.h"

#include <algorithm>
#include <chrono>

#include "tests/bench/room.h"

namespace weavelog::bench {
namespace {

constexpr std::size_t kAtATime = 8;
constexpr std::chrono::minutes kPatience{2};

void await(const ExchangeGuest& guest, const std::string& what) {
  if (guest.wait(kPatience, has_agreed)) return;
  const auto fault = guest.status().fault;
  throw std::runtime_error(what + (fault ? ": " + fault->message() : ": no agreement in time"));
}

}  // namespace

void Tablets::add(const std::vector<std::string>& codes) {
  const std::size_t first = tablets_.size();
  tablets_.resize(first + codes.size());
  for (std::size_t from = first; from < tablets_.size(); from += kAtATime) {
    const std::size_t to = std::min(tablets_.size(), from + kAtATime);
    for (std::size_t i = from; i < to; ++i) {
      const std::string name = "tablet " + std::to_string(i);
      tablets_[i].station = open_station(below_ / name, name);
      tablets_[i].guest = std::make_unique<ExchangeGuest>(
          *tablets_[i].station, ExchangeGuest::to_pair(must(PairingCode::parse(codes[i - first]))), nullptr);
    }
    for (std::size_t i = from; i < to; ++i) {
      await(*tablets_[i].guest, "pairing of tablet " + std::to_string(i));
      // A pairing is not tried again; the known host is.
      tablets_[i].guest.reset();
      const KnownHost host = tablets_[i].station->devices().hosts().at(0);
      tablets_[i].guest =
          std::make_unique<ExchangeGuest>(*tablets_[i].station, ExchangeGuest::to_return(host), nullptr);
    }
  }
}

void Tablets::await_all() const {
  for (std::size_t i = 0; i < tablets_.size(); ++i) await(*tablets_[i].guest, "tablet " + std::to_string(i));
}

bool Tablets::hold_the_same() const {
  const auto same = [](const BookInfo& a, const BookInfo& b) { return a.id == b.id && a.heads == b.heads; };
  const auto first = holdings(tablets_.front().station->ledger());
  return std::all_of(tablets_.begin() + 1, tablets_.end(), [&](const Tablet& tablet) {
    const auto its = holdings(tablet.station->ledger());
    return std::equal(first.begin(), first.end(), its.begin(), its.end(), same);
  });
}

std::size_t Tablets::errors() const {
  return static_cast<std::size_t>(std::count_if(tablets_.begin(), tablets_.end(), [](const Tablet& tablet) {
    return tablet.guest->status().fault || tablet.guest->status().session.quarantined != 0;
  }));
}

std::vector<BookInfo> holdings(const Ledger& ledger) {
  auto books = ledger.books();
  std::sort(books.begin(), books.end(), [](const BookInfo& a, const BookInfo& b) { return a.id < b.id; });
  return books;
}

}  // namespace weavelog::bench
