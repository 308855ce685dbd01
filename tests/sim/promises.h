#pragma once
// What the devices have promised: which entries whoever wrote or confirmed them must hold from then on, and
// what people meant to write. Kept by the simulator beside the devices, so that it can't be lost with them.

#include <map>
#include <set>
#include <vector>

#include "core/log/entry.h"

namespace weavelog::sim {

struct EntryKey {
  BookId book;
  AuthorId author;
  std::uint64_t seq = 0;
  auto operator<=>(const EntryKey&) const = default;
};

struct Promise {
  EntryKey key;
  Digest body{};
  std::set<std::size_t> holders;  ///< devices that must hold it
  bool by_person = false;         ///< a simulated person wrote it
  std::size_t writer = 0;         ///< and at which device
};

class Promises {
 public:
  /// The call that wrote it has returned. True if the author's number was given to another entry before: a
  /// fork.
  bool acknowledge(const EntryKey& key, const Digest& body, std::size_t device);
  /// The device has confirmed that it is on its disk.
  void confirm(const EntryKey& key, const Digest& body, std::size_t device);
  /// The device knows that these books are forgotten: it need not hold anything of them any more.
  void release(std::size_t device, const std::set<BookId>& books);
  /// A person tried to write this; whether it was written nobody knows, for the device stopped meanwhile.
  void attempt(const BookId& book, std::vector<Write> writes);
  /// The device holds this of its own, which it need not have acknowledged: its number is given.
  void found(const EntryKey& key, const Digest& body) { (void)place(key, body); }
  /// A person did this, whatever became of it.
  void say(const BookId& book, std::vector<Write> writes) { said_.emplace_back(book, std::move(writes)); }

  [[nodiscard]] const std::vector<Promise>& all() const { return all_; }
  [[nodiscard]] bool by_person(const EntryKey& key, const Digest& body) const;
  /// True if people wrote into the book at this device, and it must still hold that.
  [[nodiscard]] bool wrote_in(const BookId& book, std::size_t device) const;
  [[nodiscard]] bool attempted(const BookId& book, const std::vector<Write>& writes) const;
  /// The same with other values replaced, or a part of it: what a copied device says again of its branch of a
  /// fork.
  [[nodiscard]] bool said_before(const BookId& book, const std::vector<Write>& writes) const;
  /// True if one number of the author's in this book was given to two entries.
  [[nodiscard]] bool forked(const BookId& book, const AuthorId& author) const {
    return forks_.contains({book, author});
  }
  [[nodiscard]] bool forked(const BookId& book) const;
  [[nodiscard]] std::size_t forks() const { return forks_.size(); }

  /// Places in all() of what the device holds, and the device put back to holding just those.
  [[nodiscard]] std::vector<std::size_t> held_by(std::size_t device) const;
  void now_holds(std::size_t device, const std::vector<std::size_t>& places);

 private:
  std::size_t place(const EntryKey& key, const Digest& body);
  std::vector<Promise> all_;
  std::map<EntryKey, std::vector<std::size_t>> by_key_;
  std::vector<std::pair<BookId, std::vector<Write>>> attempts_;
  std::vector<std::pair<BookId, std::vector<Write>>> said_;
  std::set<std::pair<BookId, AuthorId>> forks_;
};

}  // namespace weavelog::sim
