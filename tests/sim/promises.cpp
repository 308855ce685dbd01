#include "tests/sim/promises.h"

#include <algorithm>

namespace weavelog::sim {

std::size_t Promises::place(const EntryKey& key, const Digest& body) {
  auto& places = by_key_[key];
  for (const std::size_t at : places)
    if (all_[at].body == body) return at;
  if (!places.empty()) forks_.insert({key.book, key.author});
  places.push_back(all_.size());
  all_.push_back({key, body, {}, false});
  return places.back();
}

bool Promises::acknowledge(const EntryKey& key, const Digest& body, std::size_t device) {
  const std::size_t at = place(key, body);
  all_[at].holders.insert(device);
  all_[at].by_person = true;
  all_[at].writer = device;
  return by_key_[key].size() > 1;
}

void Promises::confirm(const EntryKey& key, const Digest& body, std::size_t device) {
  all_[place(key, body)].holders.insert(device);
}

void Promises::release(std::size_t device, const std::set<BookId>& books) {
  for (Promise& promise : all_)
    if (books.contains(promise.key.book)) promise.holders.erase(device);
}

void Promises::attempt(const BookId& book, std::vector<Write> writes) {
  say(book, writes);
  attempts_.emplace_back(book, std::move(writes));
}

bool Promises::by_person(const EntryKey& key, const Digest& body) const {
  const auto found = by_key_.find(key);
  return found != by_key_.end() &&
         std::any_of(found->second.begin(), found->second.end(),
                     [&](std::size_t at) { return all_[at].body == body && all_[at].by_person; });
}

bool Promises::wrote_in(const BookId& book, std::size_t device) const {
  return std::any_of(all_.begin(), all_.end(), [&](const Promise& one) {
    return one.key.book == book && one.by_person && one.writer == device && one.holders.contains(device);
  });
}

bool Promises::attempted(const BookId& book, const std::vector<Write>& writes) const {
  return std::any_of(attempts_.begin(), attempts_.end(),
                     [&](const auto& tried) { return tried.first == book && tried.second == writes; });
}

bool Promises::said_before(const BookId& book, const std::vector<Write>& writes) const {
  const auto same = [](const Write& a, const Write& b) {
    return a.entity == b.entity && a.kind == b.kind && a.tag == b.tag && a.value == b.value;
  };
  return std::any_of(said_.begin(), said_.end(), [&](const auto& tried) {
    return tried.first == book && std::all_of(writes.begin(), writes.end(), [&](const Write& write) {
             return std::any_of(tried.second.begin(), tried.second.end(),
                                [&](const Write& one) { return same(one, write); });
           });
  });
}

bool Promises::forked(const BookId& book) const {
  return std::any_of(forks_.begin(), forks_.end(), [&](const auto& fork) { return fork.first == book; });
}

std::vector<std::size_t> Promises::held_by(std::size_t device) const {
  std::vector<std::size_t> out;
  for (std::size_t at = 0; at < all_.size(); ++at)
    if (all_[at].holders.contains(device)) out.push_back(at);
  return out;
}

void Promises::now_holds(std::size_t device, const std::vector<std::size_t>& places) {
  for (Promise& promise : all_) promise.holders.erase(device);
  for (const std::size_t at : places) all_[at].holders.insert(device);
}

}  // namespace weavelog::sim
