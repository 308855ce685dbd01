#include "sync/carry/bundle_sight.h"

#include <algorithm>
#include <unordered_map>

#include "core/base/salted_hash.h"

namespace weavelog {
namespace {

class Look {
 public:
  Look(const TakeOptions& options, BundleSight& sight) : options_(options), sight_(sight) {}

  void at(const Batch& batch) {
    std::vector<const Heads*> heads;
    for (const BatchBook& book : batch.books) heads.push_back(&held(book));
    sight_.entries += batch.entries.size();
    for (const BatchEntry& entry : batch.entries) {
      if (entry.book >= heads.size() || entry.author >= batch.authors.size()) continue;
      if (left_out_.contains(batch.books[entry.book].id)) continue;
      const AuthorId author = batch.authors[entry.author].id();
      const Heads& ours = *heads[entry.book];
      const auto there = std::find_if(ours.begin(), ours.end(), [&](const Head& head) { return head.author == author; });
      if (there == ours.end() || there->seq < entry.seq) ++sight_.new_entries;
    }
  }

 private:
  /// What is held here of the book; it is counted when it is met first.
  const Heads& held(const BatchBook& book) {
    const auto [at, first] = held_.try_emplace(book.id);
    if (!first) return at->second;
    ++sight_.books;
    ++sight_.kinds[book.kind];
    const bool here = options_.ledger->book(book.id).has_value();
    if (here) at->second = options_.ledger->heads(book.id);
    if (options_.ledger->is_forgotten(book.id)) {
      sight_.forgotten.push_back(book.id);
      left_out_.insert(book.id);
    } else if (here && !sight_.manifest.backup && !options_.may_take(book.id, book.kind, sight_.manifest.room)) {
      sight_.withheld.push_back(book.id);
      left_out_.insert(book.id);
    } else if (!may_begin(sight_.manifest, options_, book)) {
      sight_.not_begun.push_back(book.id);
      left_out_.insert(book.id);
    } else if (!here) {
      ++sight_.new_books;
    }
    return at->second;
  }

  const TakeOptions& options_;
  BundleSight& sight_;
  std::unordered_map<BookId, Heads, SaltedIdHash> held_;
  std::set<BookId> left_out_;
};

}  // namespace

Outcome<BundleSight> look_into(ByteSource source, const OpenWith& with, const TakeOptions& options, const std::function<void(const Batch&)>& seen) {
  auto reader = BundleReader::open(std::move(source), with);
  if (!reader) return fail(reader.error());
  BundleSight sight;
  sight.id = reader->head().id;
  sight.for_device = reader->head().for_device;
  sight.manifest = reader->manifest();
  sight.maker = known_as(*options.ledger, *options.devices, sight.manifest.maker.key);
  if (const auto may = may_bring(*reader, options); !may) sight.refused = may.error();
  Look look(options, sight);
  for (;;) {
    const auto message = reader->next();
    if (!message) {
      sight.fault = message.error();
      sight.end = ChunkEnd::altered;
      return sight;
    }
    if (!*message) {
      sight.end = reader->end();
      return sight;
    }
    if (const Entries* entries = entries_in(**message)) {
      look.at(entries->batch);
      if (seen) seen(entries->batch);
    } else if (const auto* part = std::get_if<ContentPart>(&**message)) {
      if (part->offset == 0) ++sight.pictures;
    }
    if (options.go_on && !options.go_on(sight.entries)) {
      sight.fault = Fault{FaultCode::refused, "stopped by hand", "bundle", ""};
      return sight;
    }
  }
}

}  // namespace weavelog
