#include "tests/sim/branches.h"

#include <algorithm>

namespace weavelog::sim {
namespace {

bool same_words(const Write& a, const Write& b) {
  return a.entity == b.entity && a.kind == b.kind && a.tag == b.tag && a.value == b.value;
}

bool says_all(const std::vector<Write>& said, const std::vector<Write>& wanted) {
  return std::all_of(wanted.begin(), wanted.end(), [&](const Write& write) {
    return std::any_of(said.begin(), said.end(), [&](const Write& one) { return same_words(one, write); });
  });
}

}  // namespace

Branches::Source Branches::source_of(const Promise& said) {
  return {said.key.book, said.key.author, &said.writes, &said.replaced};
}

Branches::Branches(const Room& room, Device& device, const std::vector<HeldEntry>& held, const std::vector<HeldEntry>& aside)
    : room_(room), device_(device), held_(held), aside_(aside) {
  for (const HeldEntry& entry : aside) aside_bodies_.insert({entry.key, entry.body});
  if (room.promises.forks() == 0) return;
  for (const HeldEntry& entry : held) held_bodies_.emplace(entry.key, entry.body);
  gather_own();
}

std::size_t Branches::promise_of(const EntryKey& key, const Digest& body) const {
  for (const std::size_t at : room_.promises.under(key))
    if (room_.promises.all()[at].body == body) return at;
  return Promises::kUnknown;
}

void Branches::gather_own() {
  if (std::none_of(aside_.begin(), aside_.end(), [&](const HeldEntry& one) { return one.author_key == device_.key(); })) return;
  for (const bool aside : {false, true})
    for (const HeldEntry& held : aside ? aside_ : held_) {
      if (held.author_key != device_.key()) continue;
      auto entry = decode_entry(held.bytes, held.key.author);
      if (!entry) continue;
      Own own{&held, entry->stamp, std::move(entry->writes), promise_of(held.key, held.body), aside, false};
      // A branch of its former life that it is given later is the others', which hold it: it is kept and shown, not said again.
      own.to_stand = aside && held.reason.starts_with("own entry of a copied device");
      own_.push_back(std::move(own));
    }
}

// ------------------------------------------------------------------------------------------------ what is said again

std::uint64_t Branches::parted_at(const BookId& book, const AuthorId& author) const {
  for (std::uint64_t seq = 1;; ++seq) {
    const auto known = room_.promises.under({book, author, seq});
    if (known.size() > 1) return seq;
    if (known.empty() && !held_bodies_.contains({book, author, seq})) return seq;
  }
}

void Branches::may_replace(const Source& said, std::size_t index, bool strict, std::set<Dot>& out) const {
  const std::vector<Dot>& dots = (*said.writes)[index].replaces;
  const auto& all = room_.promises.all();
  for (std::size_t i = 0; i < dots.size(); ++i) {
    const Dot& dot = dots[i];
    // What somebody tried to write, and what became of it nobody saw: whose it was is not known, so that every branch may be its own.
    if ((said.author && dot.author != *said.author) || dot.seq < parted_at(said.book, dot.author)) {
      out.insert(dot);
      continue;
    }
    const EntryKey named{said.book, dot.author, dot.seq};
    const std::size_t meant = said.replaced == nullptr || said.replaced->empty() ? Promises::kUnknown : (*said.replaced)[index][i];
    const auto stands = held_bodies_.find(named);
    // Where the number is the other branch's here, its word was never seen.
    if (!strict || meant == Promises::kUnknown || (stands != held_bodies_.end() && stands->second == all[meant].body)) out.insert(dot);
    const auto through = [&](std::size_t at) {
      if (dot.index < all[at].writes.size()) may_replace(source_of(all[at]), dot.index, strict, out);
    };
    if (meant != Promises::kUnknown) {
      through(meant);
    } else {
      for (const std::size_t at : room_.promises.under(named)) through(at);
    }
  }
}

bool Branches::says_again(const Source& said, const std::vector<Write>& writes, bool strict) const {
  if (!says_all(*said.writes, writes)) return false;
  return std::all_of(writes.begin(), writes.end(), [&](const Write& write) {
    const auto source = std::find_if(said.writes->begin(), said.writes->end(), [&](const Write& one) { return same_words(one, write); });
    std::set<Dot> allowed;
    may_replace(said, static_cast<std::size_t>(source - said.writes->begin()), strict, allowed);
    return std::all_of(write.replaces.begin(), write.replaces.end(), [&](const Dot& dot) { return allowed.contains(dot); });
  });
}

bool Branches::said_again(const HeldEntry& entry, const std::vector<Write>& writes) const {
  if (!room_.promises.forked(entry.key.book)) return false;
  const bool strict = entry.written_here && entry.author_key == device_.key();
  for (const std::size_t at : room_.promises.said_by(entry.key.book, entry.author_key)) {
    const Promise& said = room_.promises.all()[at];
    if (said.by_person && room_.promises.forked(said.key.book, said.key.author) && says_again(source_of(said), writes, strict)) return true;
  }
  for (const auto& [book, tried] : room_.promises.attempts())
    if (book == entry.key.book && says_again({book, std::nullopt, &tried, nullptr}, writes, false)) return true;
  return false;
}

// ------------------------------------------------------------------------------------------------ that it is said again

bool Branches::takes_back(const Own& by, const Own& said, std::uint32_t index) const {
  if (by.held->key.book != said.held->key.book) return false;
  const Dot wanted{said.held->key.author, said.held->key.seq, index};
  for (std::size_t i = 0; i < by.writes.size(); ++i)
    for (std::size_t j = 0; j < by.writes[i].replaces.size(); ++j) {
      if (by.writes[i].replaces[j] != wanted) continue;
      if (by.promise == Promises::kUnknown || said.promise == Promises::kUnknown) return true;
      const auto& replaced = room_.promises.all()[by.promise].replaced;
      if (replaced.empty() || replaced[i][j] == Promises::kUnknown || replaced[i][j] == said.promise) return true;
    }
  return false;
}

std::vector<Write> Branches::not_taken_back(const Own& said) const {
  std::vector<Write> out;
  for (std::uint32_t i = 0; i < said.writes.size(); ++i)
    if (std::none_of(own_.begin(), own_.end(), [&](const Own& by) { return takes_back(by, said, i); })) out.push_back(said.writes[i]);
  return out;
}

void Branches::check_words_stand() const {
  for (const Own& said : own_) {
    if (!said.to_stand) continue;
    const auto same = held_bodies_.find(said.held->key);
    if (same != held_bodies_.end() && same->second == said.held->body) continue;
    const std::vector<Write> wanted = not_taken_back(said);
    if (wanted.empty()) continue;
    // In the book; or put aside itself, and then held to the same.
    const bool stands = std::any_of(own_.begin(), own_.end(), [&](const Own& one) {
      return (!one.aside || one.to_stand) && one.held->key.book == said.held->key.book && one.held->key.author != said.held->key.author &&
             one.stamp > said.stamp && says_all(one.writes, wanted);
    });
    if (!stands)
      throw Violation("not said again", device_.name + " has put its entry " + std::to_string(said.held->key.seq) + " of " +
                                            said.held->key.author.hex() + " in book " + said.held->key.book.hex() +
                                            " aside, and its words are not in the book again");
  }
}

// ------------------------------------------------------------------------------------------------ that it is shown

void Branches::check_shown() const {
  const Promises& promises = room_.promises;
  std::set<std::pair<BookId, AuthorId>> shown;
  for (const Fork& fork : device_.ledger().forks()) {
    const EntryKey key{fork.book, fork.author.id(), fork.seq};
    shown.insert({key.book, key.author});
    if (promises.under(key).size() < 2 && room_.hostile_key() != fork.author.key)
      throw Violation("fork shown", device_.name + " shows a fork at number " + std::to_string(key.seq) + " of " + key.author.hex() +
                                        " in book " + key.book.hex() + ", which was given once");
  }
  for (const HeldEntry& one : aside_) {
    const auto here = held_bodies_.find(one.key);
    if (here == held_bodies_.end() || here->second == one.body || shown.contains({one.key.book, one.key.author})) continue;
    // Its proof was garbled on the way: then nobody has shown that the author said it.
    if (one.reason.find("signature does not cover") != std::string::npos) continue;
    const std::size_t other = promise_of(one.key, one.body);
    if (other != Promises::kUnknown && !promises.all()[other].writes.empty())
      throw Violation("fork not shown", device_.name + " has met two entries of number " + std::to_string(one.key.seq) + " of " +
                                            one.key.author.hex() + " in book " + one.key.book.hex() + " and shows no fork");
  }
}

}  // namespace weavelog::sim
