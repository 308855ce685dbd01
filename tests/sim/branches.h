#pragma once
// Forks: what must hold where one number was given to two entries, because a device was copied or put back. Its own branch is put aside
// and its words are said again; nobody else's words are touched; the fork is shown.

#include <map>
#include <set>

#include "tests/sim/held.h"
#include "tests/sim/room.h"

namespace weavelog::sim {

/// One device's part in that. Must not outlive what it is given.
class Branches {
 public:
  Branches(const Room& room, Device& device, const std::vector<HeldEntry>& held, const std::vector<HeldEntry>& aside);

  /// True if the entry says again what somebody with the same key said in a branch, and replaces nothing but what that replaced: not what
  /// stands in the other branch, nor what others said meanwhile. What a word of the branch replaced in the branch was replaced through it.
  [[nodiscard]] bool said_again(const HeldEntry& entry, const std::vector<Write>& writes) const;
  /// True if this very entry was put aside.
  [[nodiscard]] bool put_aside(const EntryKey& key, const Digest& body) const { return aside_bodies_.contains({key, body}); }
  /// The first number of the chain that was given twice, or the end of it.
  [[nodiscard]] std::uint64_t parted_at(const BookId& book, const AuthorId& author) const;
  /// What the device itself said in a branch from which it stepped back was said again, but for what it took back itself. Throws a Violation.
  void check_words_stand() const;
  /// Whoever has met both branches shows the fork, and no fork is shown that is none. Throws a Violation.
  void check_shown() const;

 private:
  /// What this device's key said here.
  struct Own {
    const HeldEntry* held = nullptr;
    Stamp stamp;
    std::vector<Write> writes;
    std::size_t promise = Promises::kUnknown;
    bool aside = false;
    bool to_stand = false;  ///< the device stepped back from it
  };

  /// What somebody said.
  struct Source {
    BookId book;
    std::optional<AuthorId> author;
    const std::vector<Write>* writes = nullptr;
    const std::vector<std::vector<std::size_t>>* replaced = nullptr;  ///< as in Promise
  };
  [[nodiscard]] static Source source_of(const Promise& said);

  void gather_own();
  [[nodiscard]] std::vector<Write> not_taken_back(const Own& said) const;
  [[nodiscard]] bool takes_back(const Own& by, const Own& said, std::uint32_t index) const;
  void may_replace(const Source& said, std::size_t index, bool strict, std::set<Dot>& out) const;
  [[nodiscard]] bool says_again(const Source& said, const std::vector<Write>& writes, bool strict) const;
  [[nodiscard]] std::size_t promise_of(const EntryKey& key, const Digest& body) const;

  const Room& room_;
  Device& device_;
  const std::vector<HeldEntry>& held_;
  const std::vector<HeldEntry>& aside_;
  std::set<std::pair<EntryKey, Digest>> aside_bodies_;
  std::map<EntryKey, Digest> held_bodies_;
  std::vector<Own> own_;
};

}  // namespace weavelog::sim
