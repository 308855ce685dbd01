// Ledger::ingest: what comes from another device is proved, checked, and applied, or put aside with a reason.

#include <algorithm>
#include <iterator>
#include <map>
#include <set>
#include <tuple>

#include "core/base/parallel.h"
#include "core/store/aside.h"
#include "core/store/entry_rules.h"
#include "core/store/ledger_impl.h"

namespace weavelog {
namespace {

/// More than ten times what any program puts into a batch.
constexpr std::size_t kMostEntriesInBatch = 100'000;
constexpr std::int64_t kNoBook = 0;  ///< row numbers begin at 1

/// One book of the batch.
struct Shelf {
  std::int64_t number = kNoBook;
  bool forgotten = false;
  bool other_kind = false;  ///< than here
};

/// One chain of the batch.
struct Chain {
  std::vector<std::size_t> entries;  ///< places in Batch::entries that are new here, in order of seq
  std::vector<Digest> bodies;        ///< digests of their bodies
  std::vector<Digest> hashes;        ///< of the chain up to each of them, once it is proved
  const Seal* seal = nullptr;        ///< that proves the last of them
  std::vector<const Seal*> seals;    ///< all that the batch has of it
  std::int64_t book = 0;
  std::int64_t author = 0;
  ChainRow head;            ///< moves on as entries are applied
  std::size_t applied = 0;  ///< of `entries`
  std::uint64_t forked = 0;         ///< the first number under which another entry stands here; 0: none
  std::vector<std::size_t> branch;  ///< places in Batch::entries from there on
  bool gap = false;         ///< later entries came without those between
  bool too_early = false;   ///< what an entry replaces is not here yet
  std::string stopped;      ///< why the rest is put aside; empty while all is well
};

class Intake {
 public:
  Intake(Ledger::Impl& ledger, Connection& db, const Batch& batch, std::int64_t from)
      : ledger_(ledger),
        db_(db),
        batch_(batch),
        from_(from),
        applier_(db, *ledger.options.registry, ledger.options.projections, ledger.entities),
        aside_(db, batch, ids_, *ledger.options.clock) {}

  /// Once it is on disk.
  void keep() {
    if (rewrote_) {
      ledger_.forget_what_was_read();
    } else {
      applier_.keep();
      if (report_.position != 0) ledger_.known_newest.move_to(report_.position);
    }
  }

  IngestReport run() {
    check_bounds();
    auto& forks = db_.statement("SELECT EXISTS(SELECT 1 FROM fork)");
    forks_known_ = forks.executeStep() && forks.getColumn(0).getInt() != 0;
    auto& awaited = db_.statement("SELECT EXISTS(SELECT 1 FROM awaited)");
    some_awaited_ = awaited.executeStep() && awaited.getColumn(0).getInt() != 0;
    number_books_and_authors();
    gather_chains();
    prove();
    for (std::size_t i = 0; i < batch_.entries.size(); ++i) take(i);
    applier_.finish();
    store_seals();
    if (!late_branches_.empty()) rewrite();
    for (const auto& [book, id] : late_branches_)
      if (const auto newest = ledger_.put_in_causal_order(db_, book, id)) report_.position = *newest;
    settle_clock();
    return report_;
  }

 private:
  using ChainKey = std::pair<std::uint32_t, std::uint32_t>;

  /// Rows are about to change by another hand than the applier's: what the writer remembers of them is no longer true.
  void rewrite() {
    rewrote_ = true;
    ledger_.forget_what_was_read();
  }

  void check_bounds() const {
    const auto bad = [](const char* what) { throw Abort{{FaultCode::malformed, what, "batch", "the sender is faulty; nothing was taken"}}; };
    if (batch_.entries.size() > kMostEntriesInBatch) bad("more entries than a batch holds");
    for (const auto& entry : batch_.entries) {
      if (entry.book >= batch_.books.size() || entry.author >= batch_.authors.size()) bad("an entry of a book or author that is not listed");
      if (entry.body.size() > kMaxEntryBytes) bad("an entry of more than 256 KiB");
      if (entry.seq == 0 || entry.seq > INT64_MAX) bad("an entry number out of range");
    }
    for (const auto& seal : batch_.seals)
      if (seal.book >= batch_.books.size() || seal.author >= batch_.authors.size() || seal.seq > INT64_MAX)
        bad("a seal of a book or author that is not listed");
  }

  [[nodiscard]] bool is_read_ahead() const { return batch_.ahead.bodies.size() == batch_.entries.size(); }
  [[nodiscard]] Digest digest_at(std::size_t i) const {
    return is_read_ahead() ? batch_.ahead.bodies[i].digest : digest_of(batch_.entries[i].body);
  }
  /// Null if it is still to be decoded, or can't be.
  [[nodiscard]] const Entry* read_ahead(std::size_t i) const {
    return is_read_ahead() && batch_.ahead.bodies[i].entry ? &*batch_.ahead.bodies[i].entry : nullptr;
  }
  /// The author signed that the chain has this hash where the seal is. `seal` is one of the batch's.
  [[nodiscard]] bool good_for(const Seal& seal, const AuthorCard& author, const Digest& hash) const {
    const auto place = static_cast<std::size_t>(&seal - batch_.seals.data());
    if (place < batch_.ahead.signs.size() && batch_.ahead.signs[place] == hash) return true;
    return verify(author.key, seal_message(seal.seq, hash), seal.signature);
  }

  /// Looks up only: a book comes into being with its first entry that is proved, so that forged ones leave no trace but in
  /// the quarantine.
  void number_books_and_authors() {
    std::vector<bool> used_authors(batch_.authors.size());
    for (const auto& entry : batch_.entries) used_authors[entry.author] = true;
    authors_.resize(batch_.authors.size());
    for (const BatchBook& book : batch_.books) {
      auto& query = db_.statement("SELECT n, kind, forgotten FROM book WHERE id=?");
      bind_blob(query, 1, book.id.bytes);
      Shelf& shelf = books_.emplace_back();
      if (!query.executeStep()) continue;
      shelf.number = query.getColumn(0).getInt64();
      shelf.other_kind = query.getColumn(1).getInt() != static_cast<int>(book.kind);
      shelf.forgotten = query.getColumn(2).getInt() != 0;  // stays away and holds nothing else up
    }
    for (std::size_t i = 0; i < batch_.authors.size(); ++i) {
      ids_.push_back(batch_.authors[i].id());
      if (used_authors[i]) authors_[i] = ledger_.author_number(db_, batch_.authors[i]);
    }
  }

  void gather_chains() {
    for (std::size_t i = 0; i < batch_.entries.size(); ++i) {
      const auto& entry = batch_.entries[i];
      if (books_[entry.book].forgotten) {
        ++report_.forgotten;
        continue;
      }
      if (books_[entry.book].other_kind) {
        report_.other_kind = true;
        put_aside(i, kOtherKind);
        continue;
      }
      const auto [found, fresh] = chains_.try_emplace({entry.book, entry.author});
      Chain& chain = found->second;
      if (fresh) {
        chain.book = books_[entry.book].number;
        chain.author = *authors_[entry.author];
        const auto& book = batch_.books[entry.book];
        chain.head = ledger_.chain(db_, chain.book, chain.author, chain_start(book.id, book.kind, ids_[entry.author]));
        next_[found->first] = chain.head.seq + 1;
      }
      std::uint64_t& next = next_.at(found->first);
      if (chain.forked != 0) {
        if (entry.seq == chain.forked + chain.branch.size()) chain.branch.push_back(i);
        continue;
      }
      if (entry.seq < next) {
        if (entry.seq > chain.head.seq) continue;  // doubled within the batch
        if (stored_body(chain, entry.seq) == entry.body) {
          ++report_.known;
        } else {
          chain.forked = entry.seq;
          chain.branch.push_back(i);
        }
        continue;
      }
      if (entry.seq > next && forks_known_ && ledger_.in_fork(db_, chain.book, chain.author, entry.seq)) {
        put_aside(i, kBranchBeyond);
        continue;
      }
      if (entry.seq > next || chain.gap) {
        report_.gaps = chain.gap = true;
        continue;
      }
      ++next;
      chain.entries.push_back(i);
      chain.bodies.push_back(digest_at(i));
    }
    for (const auto& seal : batch_.seals) {
      const auto found = chains_.find({seal.book, seal.author});
      if (found != chains_.end()) found->second.seals.push_back(&seal);
    }
    for (auto& [key, chain] : chains_)
      if (chain.forked != 0) settle_fork(key, chain);
  }

  /// The sender holds another branch of this chain. Ours to mend if we wrote it; else what came is put aside.
  void settle_fork(const ChainKey& key, Chain& chain) {
    const auto& book = batch_.books[key.first];
    const AuthorCard& card = batch_.authors[key.second];
    const ChainRow parted{chain.forked - 1, ledger_.chain_hash(db_, chain.book, chain.author,
                                                               chain_start(book.id, book.kind, ids_[key.second]), chain.forked - 1)};
    std::vector<Digest> bodies;
    for (const std::size_t i : chain.branch) bodies.push_back(digest_at(i));
    // Only what the author signed is another branch; anything else is noise of a faulty peer.
    const bool proved = sealed(card, chain, parted, chain.branch, bodies);
    if (proved) {
      forks_known_ = true;
      const int said = ledger_.note_fork(db_, chain.book, chain.author, chain.forked);
      if (card.key == ledger_.options.key.public_key() && said < 2) {
        auto words = ledger_.standing_words(db_, chain.book, book.id, book.kind, ids_[key.second], chain.forked);
        std::move(words.begin(), words.end(), std::back_inserter(again_));
        ledger_.count_words_said_again(db_, chain.book, chain.author);
        took_own_back_ = took_own_back_ || ids_[key.second] == ledger_.self_id;
        if (said == 0) {
          rewrite();
          ledger_.step_back(db_, chain.book, book.id, chain.author, parted);
          chain.head = parted;
          chain.entries = chain.branch;
          chain.bodies = std::move(bodies);
          return;
        }
      }
      report_.forks.emplace_back(book.id, ids_[key.second]);
    }
    for (const std::size_t i : chain.branch) put_aside(i, proved ? kForked : kBranchUnproved);
  }

  /// True if the author signed the hash that these bodies, of the entries at those places of the batch, and the digests after them, lead
  /// to; the seal that says so becomes the chain's.
  [[nodiscard]] bool sealed(const AuthorCard& author, Chain& chain, const ChainRow& from, const std::vector<std::size_t>& places,
                            const std::vector<Digest>& bodies) const {
    for (const Seal* seal : chain.seals)
      if (seal->seq == from.seq + bodies.size() + seal->tail.size()) chain.seal = seal;
    if (chain.seal == nullptr) return false;
    Digest hash = from.hash;
    chain.hashes.clear();
    chain.hashes.reserve(bodies.size());
    // From its first entry on, a chain's hashes are the same whoever works them out: up to an entry that was not part of that.
    bool known = from.seq == 0 && is_read_ahead();
    for (std::size_t i = 0; i < bodies.size(); ++i) {
      const auto ahead = known ? batch_.ahead.bodies[places[i]].chain : std::nullopt;
      known = ahead.has_value();
      chain.hashes.push_back(hash = ahead ? *ahead : chain_next(hash, bodies[i]));
    }
    for (const Digest& body : chain.seal->tail) hash = chain_next(hash, body);
    return good_for(*chain.seal, author, hash);
  }

  /// One signature check a chain: the author signed the hash that these entries, and the digests after them, lead to.
  void prove() {
    std::vector<std::pair<const AuthorCard*, Chain*>> asked;
    for (auto& [key, chain] : chains_)
      if (!chain.entries.empty()) asked.emplace_back(&batch_.authors[key.second], &chain);
    std::vector<std::uint8_t> proved(asked.size());
    const auto prove_one = [&](std::size_t i) {
      Chain& chain = *asked[i].second;
      proved[i] = sealed(*asked[i].first, chain, chain.head, chain.entries, chain.bodies) ? 1 : 0;
    };
    const auto& signs = batch_.ahead.signs;
    if (signs.size() == batch_.seals.size() && std::all_of(signs.begin(), signs.end(), [](const auto& sign) { return sign.has_value(); })) {
      for (std::size_t i = 0; i < asked.size(); ++i) prove_one(i);  // not worth a thread: the signatures were checked before
    } else {
      in_parallel(asked.size(), prove_one);
    }
    for (std::size_t i = 0; i < asked.size(); ++i)
      if (proved[i] == 0) refuse(*asked[i].second);
  }

  void refuse(Chain& chain) {
    chain.stopped = kUnproved;
    for (const std::size_t i : chain.entries) put_aside(i, chain.stopped);
    chain.entries.clear();
    chain.bodies.clear();
  }

  void take(std::size_t i) {
    const auto& incoming = batch_.entries[i];
    const auto found = chains_.find({incoming.book, incoming.author});
    if (found == chains_.end()) return;
    Chain& chain = found->second;
    if (chain.applied == chain.entries.size() || chain.entries[chain.applied] != i) return;
    chain.book = books_[incoming.book].number;  // another chain may have begun the book meanwhile
    if (!chain.stopped.empty()) {
      put_aside(i, chain.stopped, chain.too_early);
      chain.entries.erase(chain.entries.begin() + static_cast<std::ptrdiff_t>(chain.applied));
      return;
    }
    const AuthorId& author = ids_[incoming.author];
    std::optional<Entry> decoded;
    const Entry* entry = read_ahead(i);
    std::string reason;
    if (entry == nullptr) {
      auto now = decode_entry(incoming.body, author);
      if (now) {
        entry = &decoded.emplace(std::move(*now));
      } else {
        reason = now.error().message();
      }
    }
    if (entry != nullptr)
      reason = entry->seq != incoming.seq ? "its number inside differs from the one it came under" : broken_rule(chain, i, *entry);
    if (!reason.empty()) {
      // It may be all right, and only come too early: two copies of one device look like one to their host, which does not send
      // back to either what came from the other. So the sender hears that it is not taken, and sends what is lacking and this again.
      if (reason == kNotSentBefore || reason == kNotAfter) report_.gaps = chain.too_early = true;
      put_aside(i, reason, chain.too_early);
      chain.entries.erase(chain.entries.begin() + static_cast<std::ptrdiff_t>(chain.applied));
      chain.stopped = "follows an entry of its author that was refused: " + reason;
      return;
    }
    if (chain.book == kNoBook) {
      const auto& book = batch_.books[incoming.book];
      chain.book = books_[incoming.book].number = ledger_.book_number(db_, book.id, book.kind);
      applier_.begins(chain.book);
    }
    chain.head = {incoming.seq, chain.hashes[chain.applied]};
    report_.position = ledger_.insert_entry(db_, chain.book, chain.author, chain.head, from_, incoming.body);
    aside_.take_out(i);
    await(chain.book);
    applier_.apply(chain.book, batch_.books[incoming.book].id, author, *entry);
    if (incoming.seq % kSealEvery == 0) keep_waypoint(incoming.author, chain);
    ++chain.applied;
    ++report_.applied;
    if (author == ledger_.self_id) took_own_back_ = true;
    // What goes on from this branch may have been taken while the other one stood here, or none.
    const bool expected = was_awaited(chain.book, author, incoming.seq);
    const bool parted = forks_known_ && ledger_.in_fork(db_, chain.book, chain.author, incoming.seq);
    if (parted || expected) late_branches_.emplace(chain.book, batch_.books[incoming.book].id);
    if (parted && !expected && batch_.authors[incoming.author].key == ledger_.options.key.public_key()) keep_what_was_not_meant(chain, incoming, *entry);
    if (ledger_.clock.too_far_ahead(entry->stamp)) {
      if (std::find(report_.wrong_clocks.begin(), report_.wrong_clocks.end(), author) == report_.wrong_clocks.end())
        report_.wrong_clocks.push_back(author);
    } else {
      newest_ = std::max(newest_, entry->stamp);
    }
  }

  /// An entry of another branch of a chain of ours, which takes the place of ours. What stands here already and replaces its numbers meant what
  /// our branch said under them, or nobody can tell; so that no answer goes unseen, what this branch says under them is said again.
  void keep_what_was_not_meant(const Chain& chain, const BatchEntry& incoming, const Entry& entry) {
    const BatchBook& book = batch_.books[incoming.book];
    const AuthorId& author = ids_[incoming.author];
    const std::set<Dot>& replaced = replaced_here(chain.book, author);
    for (std::uint32_t i = 0; i < entry.writes.size(); ++i) {
      Write write = entry.writes[i];
      // What the branch itself takes back is not said again; what it replaced of its own stays replaced by it.
      for (const Dot& dot : write.replaces) std::erase_if(not_meant_, [&](const NotMeant& held) { return held.words.book == book.id && held.dot == dot; });
      const Dot dot{author, entry.seq, i};
      if (!replaced.contains(dot)) continue;
      std::erase_if(write.replaces, [&](const Dot& other) { return other.author == author && ledger_.in_fork(db_, chain.book, chain.author, other.seq); });
      not_meant_.push_back({dot, {book.id, book.kind, entry.action, {std::move(write)}, entry.stamp}});
    }
  }

  /// The author's numbers that entries of this book replace: of others, and those that were written here. Our twin, who has our key, knows of its own branch.
  const std::set<Dot>& replaced_here(std::int64_t book, const AuthorId& author) {
    const auto [known, fresh] = replaced_here_.try_emplace({book, author});
    if (!fresh) return known->second;
    auto& query = db_.statement(
        "SELECT a.id, e.body FROM link l JOIN entry e ON e.position=l.position JOIN author a ON a.n=l.author WHERE l.book=? AND (e.source=0 OR a.key<>?)");
    query.bind(1, book);
    bind_blob(query, 2, ledger_.options.key.public_key());
    while (query.executeStep()) {
      const auto by = AuthorId::from_bytes(blob_of(query, 0));
      const auto held = by ? decode_entry(blob_of(query, 1), *by) : Outcome<Entry>(fail(FaultCode::damaged, "an author's id", ""));
      if (!held) damaged(held.error().message());
      for (const Write& write : held->writes)
        for (const Dot& dot : write.replaces)
          if (dot.author == author && *by != author) known->second.insert(dot);
    }
    return known->second;
  }

  /// The author's seal at the chain's head, if the batch has it: kept for those to whom a part of the chain is handed on.
  void keep_waypoint(std::uint32_t author, const Chain& chain) {
    for (const Seal* seal : chain.seals)
      if (seal->seq == chain.head.seq && good_for(*seal, batch_.authors[author], chain.head.hash))
        return ledger_.store_waypoint(db_, chain.book, chain.author, seal->seq, seal->signature);
  }

  /// Empty, or what the entry (at that place of the batch) breaks: it must come after everything that it replaces, and that must be here.
  std::string broken_rule(const Chain& chain, std::size_t place, const Entry& entry) {
    if (writes_a_field_twice(entry)) return "it writes one field twice";
    awaits_.clear();
    Stamp newest;
    bool some_unknown = false, replaces_any = false;
    std::optional<bool> again;
    const auto comes_again = [&] { return again ? *again : *(again = aside_.holds(place, true)); };
    for (const Write& write : entry.writes) {
      if (write.replaces.empty()) continue;
      const Cell* cell = nullptr;
      if (chain.book != kNoBook) cell = applier_.state(chain.book, batch_.books[batch_.entries[place].book].id, write.entity).find(write.tag);
      for (const Dot& dot : write.replaces) {
        const CellValue* held = cell != nullptr ? cell->find(dot) : nullptr;
        const std::optional<Stamp> replaced = held != nullptr ? std::optional(held->stamp) : stored_stamp(chain.book, dot);
        if (is_forked(chain.book, dot)) {
          // The number has two entries: which of them is meant, and its stamp, can't be told here. If none is here, that goes in before this.
          if (!replaced && !note_awaited(chain.book, dot)) return kNotSentBefore;
          some_unknown = true;
          continue;
        }
        // Its sender heard that something is lacking here, and has nothing more: what is meant stands in another branch of that chain,
        // of which nobody has told us. It is replaced when it comes.
        if (!replaced || entry.stamp <= *replaced) {
          if (!comes_again()) return replaced ? kNotAfter : kNotSentBefore;
          if (!replaced && !note_awaited(chain.book, dot)) return kNotSentBefore;
          some_unknown = true;
          continue;
        }
        replaces_any = true;
        newest = std::max(newest, *replaced);
      }
    }
    if (stamp_can_be(entry.stamp, newest, some_unknown)) return {};
    // What stands here under such a number can be another entry than the one that is meant, of a chain that parted unseen.
    if (!replaces_any || !stamp_can_be(entry.stamp, newest, true)) return "its time stamp is one that no clock gives";
    return comes_again() ? std::string() : kNotAfter;
  }

  bool is_forked(std::int64_t book, const Dot& dot) {
    if (!forks_known_) return false;
    const auto author = ledger_.find_author(db_, dot.author);
    return author && ledger_.in_fork(db_, book, *author, dot.seq);
  }

  /// False if these are more than an entry can mean. A number that is here, with another entry than the one that is meant, does not come.
  bool note_awaited(std::int64_t book, const Dot& dot) {
    if (is_here(book, dot)) return true;
    awaits_.insert({dot.author, dot.seq});
    return awaits_.size() <= kMaxWritesPerEntry;
  }

  bool is_here(std::int64_t book, const Dot& dot) {
    const auto author = ledger_.find_author(db_, dot.author);
    if (book == kNoBook || !author) return false;
    auto& query = db_.statement(kBodyInChain);
    query.bind(1, book);
    query.bind(2, *author);
    query.bind(3, static_cast<std::int64_t>(dot.seq));
    return query.executeStep();
  }

  /// The entry that is being taken replaces these numbers, which are not here.
  void await(std::int64_t book) {
    for (const auto& [author, seq] : awaits_) {
      auto& add = db_.statement("INSERT OR IGNORE INTO awaited(book, author, seq) VALUES(?,?,?)");
      add.bind(1, book);
      bind_blob(add, 2, author.bytes);
      add.bind(3, static_cast<std::int64_t>(seq));
      add.exec();
      some_awaited_ = true;
      // Others know a word of ours that this copy of us never gave: it must not give that number to another.
      if (author == ledger_.self_id) took_own_back_ = true;
    }
    awaits_.clear();
  }

  bool was_awaited(std::int64_t book, const AuthorId& author, std::uint64_t seq) {
    if (!some_awaited_) return false;
    auto& remove = db_.statement("DELETE FROM awaited WHERE book=? AND author=? AND seq=?");
    remove.bind(1, book);
    bind_blob(remove, 2, author.bytes);
    remove.bind(3, static_cast<std::int64_t>(seq));
    return remove.exec() > 0;
  }

  std::optional<Stamp> stored_stamp(std::int64_t book, const Dot& dot) {
    if (book == kNoBook) return std::nullopt;
    // One entry can name thousands of writes of another.
    const auto known = stored_.find({book, dot.author, dot.seq});
    if (known != stored_.end()) return dot.index < known->second.writes ? std::optional(known->second.stamp) : std::nullopt;
    const auto author = ledger_.find_author(db_, dot.author);
    if (!author) return std::nullopt;
    auto& query = db_.statement(kBodyInChain);
    query.bind(1, book);
    query.bind(2, *author);
    query.bind(3, static_cast<std::int64_t>(dot.seq));
    if (!query.executeStep()) return std::nullopt;
    const auto entry = decode_entry(blob_of(query, 0), dot.author);
    if (!entry) return std::nullopt;
    if (stored_.size() >= kMostStored) stored_.clear();
    stored_.emplace(std::tuple(book, dot.author, dot.seq), StoredEntry{entry->stamp, entry->writes.size()});
    return dot.index < entry->writes.size() ? std::optional(entry->stamp) : std::nullopt;
  }

  Bytes stored_body(const Chain& chain, std::uint64_t seq) {
    auto& query = db_.statement(kBodyInChain);
    query.bind(1, chain.book);
    query.bind(2, chain.author);
    query.bind(3, static_cast<std::int64_t>(seq));
    if (!query.executeStep()) return {};
    const ByteView held = blob_of(query, 0);
    return Bytes(held.begin(), held.end());
  }

  void put_aside(std::size_t i, const std::string& reason, bool comes_again = false) {
    if (proves_author(reason)) heed_own_numbers(i);
    if (aside_.put(i, reason, comes_again)) ++report_.quarantined;
  }

  /// As in `await`, and already while who speaks of a number of ours waits.
  void heed_own_numbers(std::size_t i) {
    if (took_own_back_) return;
    const auto& incoming = batch_.entries[i];
    const auto entry = decode_entry(incoming.body, ids_[incoming.author]);
    if (!entry) return;
    for (const Write& write : entry->writes)
      for (const Dot& dot : write.replaces)
        if (dot.author == ledger_.self_id && !is_here(books_[incoming.book].number, dot)) took_own_back_ = true;
  }

  void store_seals() {
    for (auto& [key, chain] : chains_) {
      if (chain.applied == 0) continue;
      report_.applied_by.emplace_back(batch_.authors[key.second], chain.applied);
      if (ids_[key.second] == ledger_.self_id) continue;  // we seal our own whenever we hand it over
      Bytes tail;
      for (std::size_t i = chain.applied; i < chain.bodies.size(); ++i) tail.insert(tail.end(), chain.bodies[i].begin(), chain.bodies[i].end());
      for (const Digest& digest : chain.seal->tail) tail.insert(tail.end(), digest.begin(), digest.end());
      auto& put = db_.statement("UPDATE chain SET sealed=?, signature=?, tail=? WHERE book=? AND author=?");
      put.bind(1, static_cast<std::int64_t>(chain.seal->seq));
      bind_blob(put, 2, chain.seal->signature);
      bind_blob(put, 3, tail);
      put.bind(4, chain.book);
      put.bind(5, chain.author);
      put.exec();
    }
  }

  void settle_clock() {
    for (const AuthorId& author : report_.wrong_clocks) {
      auto& flag = db_.statement("UPDATE author SET wrong_clock=1 WHERE id=?");
      bind_blob(flag, 1, author.bytes);
      flag.exec();
    }
    if (newest_ > ledger_.clock.last()) (void)ledger_.clock.witness(newest_);
    if (report_.applied > 0) ledger_.store_clock(db_, report_.position);
    if (took_own_back_) {
      rewrite();
      ledger_.new_incarnation(db_);
    }
    const NotMeant* last = nullptr;
    for (NotMeant& held : not_meant_) {
      // Of one entry they are one again. Numbers begin anew in every book.
      if (last != nullptr && last->words.book == held.words.book && last->dot.author == held.dot.author && last->dot.seq == held.dot.seq) {
        again_.back().writes.push_back(std::move(held.words.writes.front()));
      } else {
        again_.push_back(held.words);
      }
      last = &held;
    }
    if (again_.empty()) return;
    rewrite();
    for (NewEntry& words : again_) say_again(std::move(words));
  }

  /// What words replace when they are said again can be more than what they replaced, and not fit beside them any more: then they are said in two entries, and
  /// an answer too many is left standing beside them.
  void say_again(NewEntry words) {
    while (encode_entry({INT64_MAX, kNewestStamp, ledger_.options.registry->schema(), words.action, words.writes}, ledger_.self_id).size() > kMaxEntryBytes) {
      if (words.writes.size() > 1) {
        const auto half = words.writes.begin() + static_cast<std::ptrdiff_t>(words.writes.size() / 2);
        NewEntry first{words.book, words.kind, words.action, {words.writes.begin(), half}, words.after};
        words.writes.erase(words.writes.begin(), half);
        say_again(std::move(first));
        continue;
      }
      std::vector<Dot>& replaces = words.writes.front().replaces;
      if (replaces.empty()) break;
      replaces.resize(replaces.size() / 2);
    }
    auto own = ledger_.own_book(db_, words.book, words.kind);
    report_.position = ledger_.append(db_, words, own).position;
    ledger_.write_late(db_);
    ledger_.late.reset();
  }

  Ledger::Impl& ledger_;
  Connection& db_;
  const Batch& batch_;
  std::int64_t from_;
  Applier applier_;
  IngestReport report_;
  std::vector<Shelf> books_;
  std::vector<std::optional<std::int64_t>> authors_;
  std::vector<AuthorId> ids_;
  Aside aside_;
  std::map<ChainKey, Chain> chains_;
  std::map<ChainKey, std::uint64_t> next_;
  Stamp newest_;
  std::map<std::int64_t, BookId> late_branches_;  ///< books into which a branch of a fork came
  bool forks_known_ = false;  ///< hardly ever: then nothing has to be looked up for every value replaced
  bool some_awaited_ = false;
  std::set<std::pair<AuthorId, std::uint64_t>> awaits_;  ///< what the entry that is being judged replaces and is not here
  struct StoredEntry {
    Stamp stamp;
    std::size_t writes = 0;
  };
  static constexpr std::size_t kMostStored = 10'000;
  std::map<std::tuple<std::int64_t, AuthorId, std::uint64_t>, StoredEntry> stored_;  ///< of the ledger, that were asked for
  bool took_own_back_ = false;
  std::vector<NewEntry> again_;  ///< words of ours to be said again
  struct NotMeant {
    Dot dot;
    NewEntry words;  ///< of one write
  };
  std::vector<NotMeant> not_meant_;  ///< keep_what_was_not_meant
  std::map<std::pair<std::int64_t, AuthorId>, std::set<Dot>> replaced_here_;
  bool rewrote_ = false;
};

}  // namespace

Outcome<IngestReport> Ledger::ingest(const Batch& batch, std::int64_t from) {
  IngestReport report;
  const auto before = [&] {
    const std::lock_guard guard(impl_->self_mutex);
    return std::tuple(impl_->self, impl_->self_id, impl_->self_number);
  }();
  std::optional<Intake> intake;
  const auto work = [&](Connection& db) {
    const PublicKey& ours = impl_->options.key.public_key();
    if (std::any_of(batch.authors.begin(), batch.authors.end(), [&](const AuthorCard& author) { return author.key == ours; }))
      impl_->own_books.clear();
    intake.emplace(*impl_, db, batch, from);
    report = intake->run();
  };
  auto written = impl_->write_on(work, [&] { intake->keep(); });
  if (!written) {
    // The transaction is undone; if it had begun a new incarnation, that is too.
    const std::lock_guard guard(impl_->self_mutex);
    std::tie(impl_->self, impl_->self_id, impl_->self_number) = before;
    return fail(written.error());
  }
  if (report.position != 0) impl_->announce(report.position);
  return report;
}

}  // namespace weavelog
