#pragma once
// What the devices have promised: which entries whoever wrote or confirmed them must hold from then on, and
// what people meant to write. Kept by the simulator beside the devices, so that it can't be lost with them.

#include <functional>
#include <map>
#include <set>
#include <span>
#include <vector>

#include "core/log/author.h"
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
  PublicKey author_key{};         ///< zeros: it is only known that somebody confirmed it
  std::vector<Write> writes;      ///< as stored; empty: as above
  /// What its writes replaced, as its writer had it: places in all() of the entries, in the order of the writes and of their dots. Under a
  /// number that was given twice a dot alone does not say what it names.
  std::vector<std::vector<std::size_t>> replaced;
};

class Promises {
 public:
  static constexpr std::size_t kUnknown = ~std::size_t{0};
  /// Which of several entries of one number its writer holds.
  using HeldBody = std::function<Digest(const EntryKey& key)>;

  /// The call that wrote it has returned. True if the author's number was given to another entry before: a
  /// fork.
  bool acknowledge(const EntryKey& key, const Digest& body, std::size_t device, const PublicKey& author, std::vector<Write> writes,
                   const HeldBody& held);
  /// The device has confirmed that it is on its disk.
  void confirm(const EntryKey& key, const Digest& body, std::size_t device);
  /// The device knows that these books are forgotten: it need not hold anything of them any more.
  void release(std::size_t device, const std::set<BookId>& books);
  /// A person tried to write this; whether it was written nobody knows, for the device stopped meanwhile.
  void attempt(const BookId& book, std::vector<Write> writes) { attempts_.emplace_back(book, std::move(writes)); }
  /// The device holds this of its own, which it need not have acknowledged: its number is given.
  void found(const EntryKey& key, const Digest& body, const PublicKey& author, const std::vector<Write>& writes);

  [[nodiscard]] const std::vector<Promise>& all() const { return all_; }
  /// Places in all() of the entries that were given that number.
  [[nodiscard]] std::span<const std::size_t> under(const EntryKey& key) const;
  /// Places of what that key's devices said in a book, as far as it is known what it says.
  [[nodiscard]] std::span<const std::size_t> said_by(const BookId& book, const PublicKey& author) const;
  [[nodiscard]] bool by_person(const EntryKey& key, const Digest& body) const;
  /// True if a person at that device wrote into the book, as far as the device must hold it.
  [[nodiscard]] bool wrote_in(const BookId& book, std::size_t device) const;
  /// True if it is what somebody tried to write into that book.
  [[nodiscard]] bool attempted(const BookId& book, const std::vector<Write>& writes) const;
  [[nodiscard]] const std::vector<std::pair<BookId, std::vector<Write>>>& attempts() const { return attempts_; }
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
  void note_words(std::size_t at, const PublicKey& author, std::vector<Write> writes);
  std::vector<Promise> all_;
  std::map<EntryKey, std::vector<std::size_t>> by_key_;
  std::map<std::pair<BookId, PublicKey>, std::vector<std::size_t>> said_;
  std::vector<std::pair<BookId, std::vector<Write>>> attempts_;
  std::set<std::pair<BookId, AuthorId>> forks_;
};

}  // namespace weavelog::sim
