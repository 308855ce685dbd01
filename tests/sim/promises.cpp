#include "tests/sim/promises.h"

#include <algorithm>

namespace weavelog::sim {

std::size_t Promises::place(const EntryKey& key, const Digest& body) {
  auto& places = by_key_[key];
  for (const std::size_t at : places)
    if (all_[at].body == body) return at;
  if (!places.empty()) forks_.insert({key.book, key.author});
  places.push_back(all_.size());
  all_.push_back({key, body, {}, false, 0, {}, {}, {}});
  return places.back();
}

void Promises::note_words(std::size_t at, const PublicKey& author, std::vector<Write> writes) {
  if (!all_[at].writes.empty()) return;
  all_[at].author_key = author;
  all_[at].writes = std::move(writes);
  said_[{all_[at].key.book, author}].push_back(at);
}

bool Promises::acknowledge(const EntryKey& key, const Digest& body, std::size_t device, const PublicKey& author,
                           std::vector<Write> writes, const HeldBody& held) {
  const std::size_t at = place(key, body);
  all_[at].holders.insert(device);
  all_[at].by_person = true;
  all_[at].writer = device;
  std::vector<std::vector<std::size_t>> replaced;
  for (const Write& write : writes)
    for (auto& places = replaced.emplace_back(); const Dot& dot : write.replaces) {
      const EntryKey named{key.book, dot.author, dot.seq};
      const auto known = under(named);
      std::size_t meant = known.size() == 1 ? known.front() : kUnknown;
      if (known.size() > 1)
        for (const Digest digest = held(named); const std::size_t one : known)
          if (all_[one].body == digest) meant = one;
      places.push_back(meant);
    }
  note_words(at, author, std::move(writes));
  all_[at].replaced = std::move(replaced);
  return by_key_[key].size() > 1;
}

void Promises::found(const EntryKey& key, const Digest& body, const PublicKey& author, const std::vector<Write>& writes) {
  note_words(place(key, body), author, writes);
}

std::span<const std::size_t> Promises::under(const EntryKey& key) const {
  const auto found = by_key_.find(key);
  return found == by_key_.end() ? std::span<const std::size_t>() : found->second;
}

std::span<const std::size_t> Promises::said_by(const BookId& book, const PublicKey& author) const {
  const auto found = said_.find({book, author});
  return found == said_.end() ? std::span<const std::size_t>() : found->second;
}

void Promises::confirm(const EntryKey& key, const Digest& body, std::size_t device) {
  all_[place(key, body)].holders.insert(device);
}

void Promises::release(std::size_t device, const std::set<BookId>& books) {
  for (Promise& promise : all_)
    if (books.contains(promise.key.book)) promise.holders.erase(device);
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
